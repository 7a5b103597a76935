Feature: At the gate
  A machine with a good result for everything that is asked passes. Whatever one of these results is taken away from it, or turns
  bad, that check alone holds the machine, and says what to do.

  Background:
    Given a motorcycle with one hydraulic disc in front and a rod drum behind

  Scenario: everything asked for the road test is good
    Given a machine ready for road-test
    Then the road-test is released
    And the road-test is released until 2026-11-25

  Scenario: everything asked for an engine run, a ride and the new owner is good
    Given a machine ready for first-start, indoor-run, road-test, hand-over
    Then the first-start is released
    And the indoor-run is released
    And the road-test is released
    And the hand-over is released

  Scenario: everything asked of a machine on show is good
    Given a machine ready for on-show
    Then the on-show is released

  Scenario: everything asked of a machine that is sold as it stands is good
    Given a machine ready for non-runner
    Then the non-runner is released

  @brakes.pad-fit
  Scenario: a pad sits loose in its caliper
    Given a machine ready for road-test
    And nothing is written for brakes.pad-fit
    And front-brake/caliper seen pad-fit loose
    Then the road-test is blocked by brakes.pad-fit alone
    And brakes.pad-fit is fault at front-brake/caliper
    And it is cleared by "Seat the pads"

  @tyres.cord
  Scenario: nobody looked for the cord of the tyres
    Given a machine ready for road-test
    And nothing is written for tyres.cord
    Then the road-test is blocked by tyres.cord alone
    And the first step to road-test is "cord"

  @controls.idle-at-locks
  Scenario: the engine speed at full lock was not tried
    Given a machine ready for road-test
    And nothing is written for controls.idle-at-locks
    Then the road-test is blocked by controls.idle-at-locks alone

  @electrics.horn
  Scenario: the horn was not tried
    Given a machine ready for road-test
    And nothing is written for electrics.horn
    Then the road-test is blocked by electrics.horn alone
    And the first step to road-test is "horn"

  @engine.knock
  Scenario: nobody listened to the warm engine
    Given a machine ready for road-test
    And nothing is written for engine.knock
    Then the road-test is blocked by engine.knock alone

  @fuel.drip-tray
  Scenario: the drip tray was not looked at
    Given a machine ready for first-start
    And nothing is written for fuel.drip-tray
    Then the first-start is blocked by fuel.drip-tray alone
    And the first step to first-start is "drip tray"

  @oil.gearbox
  Scenario: the oil of the gearbox was not looked at
    Given a machine ready for road-test
    And nothing is written for oil.gearbox
    Then the road-test is blocked by oil.gearbox alone

  @steering.head-play
  Scenario: the steering head was not tried
    Given a machine ready for road-test
    And nothing is written for steering.head-play
    Then the road-test is blocked by steering.head-play alone
    And the first step to road-test is "Steering, head"

  @transmission.clutch-drag
  Scenario: the clutch was not tried for drag
    Given a machine ready for road-test
    And nothing is written for transmission.clutch-drag
    Then the road-test is blocked by transmission.clutch-drag alone

  @fasteners.torque-arm
  Scenario: no record of torquing the torque arm of the rear brake
    Given a machine ready for road-test
    And nothing is written for fasteners.torque-arm
    Then the road-test is blocked by fasteners.torque-arm alone

  @record.identity
  Scenario: the number on the frame was not read
    Given a machine ready for road-test
    And nothing is written for record.identity
    Then the road-test is blocked by record.identity alone

  @roadtest.insured
  Scenario: the insurance was not looked up
    Given a machine ready for road-test
    And nothing is written for roadtest.insured
    Then the road-test is blocked by roadtest.insured alone

  @air.instrument
  Scenario: the meter was not tried
    Given a machine ready for indoor-run
    And nothing is written for air.instrument
    Then the indoor-run is blocked by air.instrument alone

  @show.cap-sealed
  Scenario: nobody looked whether the filler cap is sealed
    Given a machine ready for on-show
    And nothing is written for show.cap-sealed
    Then the on-show is blocked by show.cap-sealed alone

  @handover.spokes-after-ride
  Scenario: nobody tapped the spokes after the ride
    Given a machine ready for hand-over
    And nothing is written for handover.spokes-after-ride
    Then the hand-over is blocked by handover.spokes-after-ride alone

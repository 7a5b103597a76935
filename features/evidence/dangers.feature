Feature: A known fault closes every gate it bears on

  Rule: A known fault closes gates that do not ask for it

    Scenario: a noise heard at the last run
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise knocks
      Then the first-start is closed by engine.knock
      And the indoor-run is closed by engine.knock
      And the road-test is closed by engine.knock
      And the hand-over is closed by engine.knock
      And the on-show is not closed by engine.knock
      And the non-runner is not closed by engine.knock

    Scenario: told of it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine told running-noise knocks
      Then the first-start is closed by engine.knock

    Scenario: told of it, and found good since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine told running-noise knocks
      And tom wrote that engine tried running-noise even
      Then the first-start is not closed by engine.knock

    Scenario: missing, stale and in doubt close only where they are asked for
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise even 31 days ago
      Then the first-start is not closed by engine.knock
      And engine.knock is stale

    Scenario: a defect after the ride
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried road-test open-defect
      Then the road-test is closed by handover.ride-result
      And the first-start is closed by handover.ride-result
      And the on-show is not closed by handover.ride-result
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: a pump that does not deliver, and oil in the petrol for the run
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried oil-delivery bubbles
      And fuel/petrol measured oil-poured 200 mL ± 6 mL
      And fuel/petrol measured petrol-poured 5 L ± 0.1 L
      Then the first-start is not closed by oil.delivery
      And the road-test is closed by oil.delivery

    Scenario: a pump that does not deliver, and petrol alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried oil-delivery bubbles
      Then the first-start is closed by oil.delivery
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried oil-delivery bubbles
      And tom wrote that oil/pump tried oil-delivery from-every-pipe
      Then oil.delivery is fault

    Scenario Outline: the answer decides
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips <found>
      Then the first-start is <closed> by controls.grips
      And the road-test is closed by controls.grips

      Examples:
        | found              | closed     |
        | binds-the-throttle | closed     |
        | split              | not closed |

    Scenario Outline: a tight cable opens the throttle, a loose one does not
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle measured throttle-play <play> ± 0.2 mm
      Then the indoor-run is <closed> by controls.throttle-play
      And the road-test is closed by controls.throttle-play

      Examples:
        | play  | closed     |
        | 0 mm  | closed     |
        | 40 mm | not closed |

    Scenario Outline: a short and a flat battery
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery measured leakage-current <current> ± 20 mA
      Then the first-start is <closed> by electrics.leakage
      And the hand-over is closed by electrics.leakage

      Examples:
        | current | closed     |
        | 900 mA  | not closed |
        | 990 mA  | closed     |
        | 3000 mA | closed     |

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery measured leakage-current 990 mA ± 20 mA
      Then electrics.leakage is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

  Rule: What is proven keeps a gate open

    Scenario: petrol that leaks closes the show
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel tried leak-at-rest drips
      Then the on-show is closed by fuel.leak
      And the non-runner is not closed by fuel.leak

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel tried leak-at-rest drips
      And tom wrote that fuel tried leak-at-rest dry
      Then fuel.leak is fault

    Scenario: an empty tank cannot leak
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel tried leak-at-rest drips
      And fuel/tank was drained
      And fuel/tank seen tank-content empty
      Then the on-show is not closed by fuel.leak
      And the first-start is closed by fuel.leak

    Scenario: what an old reading of something else shows says nothing about it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control measured braking-force 300 N ± 10 N 40 days ago
      And rear-brake/control measured braking-force 200 N ± 10 N 40 days ago
      And machine measured mass-with-rider 246 kg ± 1 kg 40 days ago
      And fuel tried leak-at-rest drips
      And fuel/tank was drained
      And fuel/tank seen tank-content empty
      Then the on-show is not closed by fuel.leak

    Scenario: measured empty
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel tried leak-at-rest drips
      And fuel/tank measured fuel-volume 0 L ± 0.1 L
      Then the on-show is not closed by fuel.leak

    Scenario: filled again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel tried leak-at-rest drips
      And fuel/tank was drained
      And fuel/tank seen tank-content empty
      And fuel/tank was filled
      Then the on-show is closed by fuel.leak

    Scenario: two looks that contradict each other prove nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel tried leak-at-rest drips
      And fuel/tank seen tank-content fuel-left
      And fuel/tank seen tank-content empty
      Then the on-show is closed by fuel.leak
      And handover.tank-drained is fault

    Scenario: acid, and the battery taken out
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen battery-case leaking
      And electrics/battery seen battery-leads battery-taken-out
      Then the non-runner is not closed by electrics.battery-level
      And the first-start is closed by electrics.battery-level

    Scenario: acid, and the battery in the machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen battery-case leaking
      Then the non-runner is closed by electrics.battery-level

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen battery-case leaking
      And tom wrote that electrics/battery seen battery-case dry-and-whole
      Then electrics.battery-level is fault

    Scenario: a dry oil pipe, and the oil in the petrol
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is oiled by oil-injection
      And oil/pump tried oil-delivery a-pipe-dry
      Then the first-start is closed by oil.delivery
      And the road-test is closed by oil.delivery

  Rule: Age lifts no fault of a part, and neither does a poor instrument

    Scenario Outline: heard long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise knocks <ago> days ago
      Then engine.knock is fault
      And the first-start is closed by engine.knock

      Examples:
        | ago |
        | 30  |
        | 31  |
        | 400 |

    Scenario: found out of tolerance after a bad reading
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 0.9 mm ± 0.1 mm 30 days ago
      And the instrument was found out of tolerance 1 day ago
      Then brakes.pad-thickness is fault at front-brake/caliper/inner-pad

    Scenario: what the day brought goes with the day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room seen way-out locked 1 day ago
      Then the first-start is not closed by air.way-out
      And air.way-out is stale

    Scenario: a fault of today
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room seen way-out locked
      Then the first-start is closed by air.way-out
      And it holds first-start, indoor-run and no other gate

  Rule: A fault ends by work that mends, certainly done after it

    Scenario: mended
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise knocks 2 days ago
      And engine/top-end was repaired 1 day ago
      Then engine.knock is stale
      And the first-start is not closed by engine.knock

    Scenario Outline: what mends nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <place> <verb> <what> <found> 2 days ago
      And <part> was <work> 1 day ago
      Then the first-start is closed by <check>

      Examples:
        | place               | verb  | what             | found       | part              | work      | check                    |
        | engine              | tried | running-noise    | knocks      | engine/crankcase  | damaged   | engine.knock             |
        | machine             | tried | road-test        | open-defect | machine           | ridden    | handover.ride-result     |
        | fuel/tap            | seen  | tap-position     | leaking     | fuel/tank         | filled    | handover.tap-closed      |
        | electrics/battery   | seen  | battery-case     | cracked     | electrics/battery | charged   | electrics.battery-level  |

    Scenario: looked at again without work
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise knocks 2 days ago
      And tom wrote that engine tried running-noise even 1 day ago
      Then engine.knock is fault

    Scenario: the cause examined, and found good by another person
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And tom wrote that engine tried running-noise even 1 day ago
      Then engine.knock is met

    Scenario: the cause examined, and found good by the same person
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And engine tried running-noise even 1 day ago
      Then engine.knock is fault

    Scenario: found good before the cause was examined
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise knocks 3 days ago
      And tom wrote that engine tried running-noise even 2 days ago
      And engine was examined 1 day ago
      Then engine.knock is fault

    Scenario: examined before the noise
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine was examined 3 days ago
      And engine tried running-noise knocks 2 days ago
      And tom wrote that engine tried running-noise even 1 day ago
      Then engine.knock is fault

    Scenario Outline: examined where one person works alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And engine tried running-noise even <ago> ago
      Then engine.knock is <state>

      Examples:
        | ago    | state |
        | 1 day  | met   |
        | 2 days | fault |

    Scenario: where nothing was broken a look ends it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen not-to-be-ridden-tag missing 2 days ago
      And machine seen not-to-be-ridden-tag fitted 1 day ago
      Then handover.tag is met

    Scenario: papers, and no document named
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen papers incomplete 2 days ago
      And machine seen papers complete 1 day ago
      Then handover.papers is fault

  Rule: What a ride brought to light wants another ride

    Scenario: mended after the ride
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden 3 days ago
      And machine tried road-test open-defect 2 days ago
      And headlamp was adjusted 1 day ago
      Then handover.ride-result is stale
      And handover.ridden is stale
      And the road-test is not closed by handover.ride-result

    Scenario: ridden since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden 3 days ago
      And machine tried road-test open-defect 3 days ago
      And headlamp was adjusted 2 days ago
      And machine was ridden 1 day ago
      Then handover.ridden is met

  Rule: A fault worked out from several readings does not mend itself

    Scenario Outline: too weak a brake on the rollers, some time ago
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control measured braking-force <force> ± 30 N <ago> days ago
      And machine measured mass-with-rider 260 kg ± 2 kg <ago> days ago
      Then brakes.efficiency-single is <state> at front-brake/control
      And the road-test is <closed> by brakes.efficiency-single

      Examples:
        | force | ago | state | closed     |
        | 300 N | 30  | fault | closed     |
        | 300 N | 31  | fault | closed     |
        | 300 N | 400 | fault | closed     |
        | 900 N | 31  | stale | not closed |

    Scenario: filling the tank does not mend the brake
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control measured braking-force 300 N ± 30 N 2 days ago
      And machine measured mass-with-rider 260 kg ± 2 kg 2 days ago
      And fuel/tank was filled 1 day ago
      Then brakes.efficiency-single is fault at front-brake/control

    Scenario: work on the brake does
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control measured braking-force 300 N ± 30 N 2 days ago
      And machine measured mass-with-rider 260 kg ± 2 kg 2 days ago
      And front-brake was repaired 1 day ago
      Then brakes.efficiency-single is stale at front-brake/control
      And the road-test is not closed by brakes.efficiency-single

    Scenario Outline: measured again
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control measured braking-force 300 N ± 30 N 500 days ago
      And front-brake/control measured braking-force 900 N ± 30 N <ago> days ago
      And machine measured mass-with-rider 260 kg ± 2 kg <ago> days ago
      Then brakes.efficiency-single is fault at front-brake/control

      Examples:
        | ago |
        | 2   |
        | 400 |

    Scenario: heard of long ago, and never measured
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control told braking-force 300 N 400 days ago
      And machine measured mass-with-rider 260 kg ± 2 kg 400 days ago
      Then brakes.efficiency-single is stale at front-brake/control

    Scenario: measured long ago, and heard of since
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control measured braking-force 300 N ± 30 N 400 days ago
      And machine measured mass-with-rider 260 kg ± 2 kg 400 days ago
      And front-brake/control told braking-force 900 N 300 days ago
      Then brakes.efficiency-single is fault at front-brake/control

    Scenario: the meter was out of tolerance
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control measured braking-force 300 N ± 30 N 2 days ago
      And the instrument was found out of tolerance 1 day ago
      And machine measured mass-with-rider 260 kg ± 2 kg 2 days ago
      Then brakes.efficiency-single is fault at front-brake/control

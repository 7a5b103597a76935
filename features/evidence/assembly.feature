Feature: What work reaches

  Rule: Work that cannot be done without other work undoes what that would undo

    Scenario: a tube does not come out without its wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spindle was torqued
      And front-wheel/spindle was torqued
      And rear-wheel/tube was replaced
      Then tyres.spindle-torque is stale at rear-wheel/spindle
      And tyres.spindle-torque is met at front-wheel/spindle

    Scenario: torqued once more, the wheel is in
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spindle was torqued
      And rear-wheel/tube was replaced
      And rear-wheel/spindle was torqued
      Then tyres.spindle-torque is met at rear-wheel/spindle

    Scenario: a chain is not set without slackening the spindle
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake tried walking-pace-stop stops
      And front-brake tried walking-pace-stop stops
      And transmission/chain was adjusted
      Then brakes.walking-pace is stale at rear-brake
      And brakes.walking-pace is met at front-brake

  Rule: Implied work proves nothing and mends nothing

    Scenario: a bolt tightened elsewhere mends no brake
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried walking-pace-stop weak
      And front-wheel/spindle was tightened
      And front-brake tried walking-pace-stop stops
      Then brakes.walking-pace is fault at front-brake

    Scenario: a clip tightened on the part mends its leak
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel tried leak-at-rest weeps 3 days ago
      And fuel/hose was tightened 2 days ago
      And fuel measured watched-for 12 min ± 0.5 min
      And fuel tried leak-at-rest dry
      Then fuel.leak is met

    Scenario: taking the wheel out for its tube mends no stop lamp, though it sets the rod
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/stop-lamp-switch tried stop-lamp dark
      And rear-wheel/tube was replaced
      Then brakes.stop-lamp is fault at rear-brake/stop-lamp-switch

  Rule: Wear and markings outlive taking a part off and putting it back

    Scenario: pads out and in
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And front-brake/caliper/inner-pad was removed
      And front-brake/caliper/inner-pad was refitted
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad

    Scenario: other pads
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And front-brake/caliper/inner-pad was replaced
      Then brakes.pad-thickness is stale at front-brake/caliper/inner-pad

  Rule: Tightening by feel makes a torque worthless

    Scenario: a caliper bolt nipped up
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/bolts was torqued
      And front-brake/caliper/bolts was tightened
      Then brakes.caliper-bolts is stale at front-brake/caliper/bolts

  Rule: Work on the whole machine is work on every part of it

    Scenario: stripped
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/bolts was torqued
      And machine was stripped
      Then brakes.caliper-bolts is stale at front-brake/caliper/bolts

    Scenario: another frame
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spindle was torqued
      And frame was replaced
      Then tyres.spindle-torque is stale at rear-wheel/spindle

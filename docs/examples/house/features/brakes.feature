Feature: What this house asks of brakes besides

  Rule: Pads keep more than the trade asks

    Scenario Outline: on both sides of the limit of the house
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness <thickness>
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad
      And the limit came from "Hollow Vale house rules"

      Examples:
        | thickness       | state |
        | 2.4 mm ± 0.1 mm | fault |
        | 2.5 mm ± 0.1 mm | doubt |
        | 2.6 mm ± 0.1 mm | doubt |
        | 2.7 mm ± 0.1 mm | met   |

    Scenario Outline: from its first day on
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is <day>
      And front-brake/caliper/inner-pad measured thickness 2.0 mm ± 0.1 mm
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad

      Examples:
        | day        | state |
        | 2026-11-24 | met   |
        | 2026-11-25 | fault |

  @house.cam-lever-photo
  Rule: The cam lever of the rear drum is photographed

    Scenario: a picture is kept
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever seen cam-lever-photo kept
      Then house.cam-lever-photo is met

    Scenario: the mark cannot be seen on it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever seen cam-lever-photo mark-hidden
      Then house.cam-lever-photo is fault

    Scenario: no picture
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then house.cam-lever-photo is missing
      And the road-test is blocked

    Scenario: the lever came off afterwards
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever seen cam-lever-photo kept 3 days ago
      And rear-brake/cam-lever was removed 2 days ago
      Then house.cam-lever-photo is stale

    Scenario: a drum in front brings up nothing behind
      Given a motorcycle with a rod drum in front and one hydraulic disc behind
      Then house.cam-lever-photo is not applicable

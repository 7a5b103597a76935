Feature: What this house asks of every machine

  @house.bench-photo
  Rule: Every machine is photographed as it came in

    Scenario Outline: the picture
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen bench-photo <picture>
      Then house.bench-photo is <state>

      Examples:
        | picture | state |
        | kept    | met   |
        | blurred | fault |

    Scenario: no picture
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then house.bench-photo is missing

Feature: Brake fluid that has drawn water
  Fluid drawn out of the reservoir and boiled in a tester tells what two hard stops would tell too late. Nobody has to test it; who
  did, and found it low, does not ride on it.

  @brakes.fluid-boiling
  Rule: Fluid that was tested boils no sooner than its grade may when wet

    Scenario Outline: held to the grade that was filled in
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked DOT-3
      And front-brake/hydraulic/fluid seen grade-filled <grade>
      And front-brake/hydraulic/fluid measured fluid-boiling <boils> ± 5 °C
      Then brakes.fluid-boiling is <state>

      # 49 CFR 571.116, wet boiling points: DOT 3 140 °C, DOT 4 155 °C, DOT 5 and DOT 5.1 180 °C; read in a copy. U of the tester is common practice.
      Examples:
        | grade   | boils  | state |
        | DOT-3   | 130 °C | fault |
        | DOT-3   | 140 °C | doubt |
        | DOT-3   | 145 °C | doubt |
        | DOT-3   | 146 °C | met   |
        | DOT-4   | 145 °C | fault |
        | DOT-4   | 155 °C | doubt |
        | DOT-4   | 160 °C | doubt |
        | DOT-4   | 161 °C | met   |
        | DOT-5.1 | 170 °C | fault |
        | DOT-5.1 | 180 °C | doubt |
        | DOT-5.1 | 185 °C | doubt |
        | DOT-5.1 | 186 °C | met   |
        | DOT-5   | 170 °C | fault |
        | DOT-5   | 180 °C | doubt |
        | DOT-5   | 185 °C | doubt |
        | DOT-5   | 186 °C | met   |

    Scenario Outline: the grade is not known: held to the highest
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid measured fluid-boiling <boils> ± 5 °C
      Then brakes.fluid-boiling is <state>

      Examples:
        | boils  | state |
        | 170 °C | fault |
        | 190 °C | met   |

    Scenario: nobody tested it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.fluid-boiling is not applicable

    Scenario: does not apply to a brake without fluid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/hydraulic/fluid measured fluid-boiling 120 °C ± 5 °C
      Then brakes.fluid-boiling is not applicable

    Scenario: low
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      And front-brake/hydraulic/fluid measured fluid-boiling 140 °C ± 5 °C
      Then brakes.fluid-boiling is fault
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody was told that it is good
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      And front-brake/hydraulic/fluid told fluid-boiling 200 °C
      Then brakes.fluid-boiling is missing
      And it holds road-test, hand-over and no other gate

    Scenario: judged by boiling a little in a spoon, not with a tester
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      And front-brake/hydraulic/fluid tried fluid-boiling 200 °C
      Then brakes.fluid-boiling is missing

    Scenario: tested and good
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      And front-brake/hydraulic/fluid measured fluid-boiling 200 °C ± 5 °C
      Then brakes.fluid-boiling is met
      And it holds until 2027-11-25

    Scenario: low, and tested again without new fluid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      And front-brake/hydraulic/fluid measured fluid-boiling 140 °C ± 5 °C
      And front-brake/hydraulic/fluid measured fluid-boiling 200 °C ± 5 °C
      Then brakes.fluid-boiling is fault

    Scenario Outline: low, and new fluid filled in
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid measured fluid-boiling 140 °C ± 5 °C 3 days ago
      And front-brake/hydraulic was <work> 2 days ago
      And front-brake/hydraulic/fluid seen grade-filled DOT-4 1 day ago
      And front-brake/hydraulic/fluid measured fluid-boiling 240 °C ± 5 °C 1 day ago
      Then brakes.fluid-boiling is <state>

      Examples:
        | work    | state |
        | filled  | met   |
        | drained | met   |
        | bled    | fault |

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      And front-brake/hydraulic/fluid measured fluid-boiling 200 °C ± 5 °C <ago> months ago
      Then brakes.fluid-boiling is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      And front-brake/hydraulic/fluid measured fluid-boiling 200 °C ± 5 °C
      And front-brake/hydraulic was <work>
      Then brakes.fluid-boiling is stale

      Examples:
        | work      |
        | drained   |
        | filled    |
        | topped-up |
        | opened    |

    Scenario: found low, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And front-brake/hydraulic/fluid measured fluid-boiling 100 °C ± 5 °C
      Then the road-test is blocked by brakes.fluid-boiling alone

# Printed general tables differ by about 30 % for the same size and class (several read).
Feature: Torque figures

  @fasteners.torque-figures
  Rule: It is written where the torque figures came from

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures maker
      Then fasteners.torque-figures is met
      And it does not lapse by itself

    Scenario Outline: what else is in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures <found>
      Then fasteners.torque-figures is met at machine/fasteners

      Examples:
        | found         |
        | general-table |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures <found>
      Then fasteners.torque-figures is fault at machine/fasteners

      Examples:
        | found   |
        | by-feel |
        | unknown |

    Scenario: a later good look ends it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures by-feel
      And tom wrote that machine/fasteners seen torque-figures maker
      Then fasteners.torque-figures is met

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.torque-figures is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners told torque-figures maker
      Then fasteners.torque-figures is missing at machine/fasteners

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures maker
      And <point> was <work>
      Then fasteners.torque-figures is stale at machine/fasteners

      Examples:
        | point             | work     |
        | machine/fasteners | replaced |

    Scenario: figures from the maker
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures maker
      And machine seen deviations listed
      Then fasteners.torque-figures is met
      And it notes nothing

    Scenario: figures from a general table
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures general-table
      Then fasteners.torque-figures is met
      And it notes "good to about 30 % only"

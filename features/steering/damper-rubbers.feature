Feature: Rubbers of the rear dampers
  A rubber that hardened or cracked in years of standing lets the damper knock and the rear wheel wander. A blunt tool pressed
  into it tells: good rubber gives and comes back.

  @steering.damper-rubbers
  Rule: The rubbers in the eyes of the dampers are supple

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-fork/dampers seen damper-rubbers <found>
      Then steering.damper-rubbers is met
      And it holds until 2027-11-25

      Examples:
        | found            |
        | supple-and-whole |
        | none-fitted      |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-fork/dampers seen damper-rubbers <found>
      Then steering.damper-rubbers is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found   |
        | cracked |
        | hard    |
        | missing |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then steering.damper-rubbers is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-fork/dampers told damper-rubbers supple-and-whole
      Then steering.damper-rubbers is missing

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-fork/dampers seen damper-rubbers cracked
      And tom wrote that rear-fork/dampers seen damper-rubbers supple-and-whole
      Then steering.damper-rubbers is fault

    Scenario: hard, and replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-fork/dampers seen damper-rubbers hard 3 days ago
      And rear-fork/dampers was replaced 2 days ago
      And rear-fork/dampers seen damper-rubbers supple-and-whole 1 day ago
      Then steering.damper-rubbers is met

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-fork/dampers seen damper-rubbers supple-and-whole <ago> months ago
      Then steering.damper-rubbers is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario: rear-fork/dampers was replaced since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-fork/dampers seen damper-rubbers supple-and-whole
      And rear-fork/dampers was replaced
      Then steering.damper-rubbers is stale

    Scenario Outline: how long it stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since <since>
      And controls/grips tried grips tight-and-whole
      Then steering.damper-rubbers is <state>

      # 24 months: common practice
      Examples:
        | since      | state          |
        | 2024-11-24 | missing        |
        | 2024-11-25 | not applicable |
        | unknown    | missing        |
        | no         | not applicable |

    Scenario: a machine that is not said to have stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips tight-and-whole
      Then steering.damper-rubbers is not applicable

    Scenario: a machine without rear dampers
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing rigid
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then steering.damper-rubbers is not applicable

    Scenario: not looked at on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And a machine ready for road-test
      And nothing is written for steering.damper-rubbers
      Then the road-test is blocked by steering.damper-rubbers alone

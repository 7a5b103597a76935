Feature: Ignition advanced by hand
  A lever on the bar that looks like a throttle moves the ignition. Left on full advance, the kick-starter comes back.

  @controls.advance-lever
  Rule: The ignition lever moves the timing and stays where it is put

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever tried advance-lever <f0>
      And controls/advance-lever seen retard-side <f1>
      Then controls.advance-lever is met
      And it holds until 2027-11-25

      Examples:
        | f0                  | f1                 |
        | whole-way-and-stays | marked             |
        | whole-way-and-stays | known-to-the-rider |

    Scenario Outline: advance lever not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever tried advance-lever <found>
      And controls/advance-lever seen retard-side marked
      Then controls.advance-lever is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found             |
        | moves-by-itself   |
        | sticks            |
        | moves-nothing     |
        | not-the-whole-way |

    Scenario Outline: retard side not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever seen retard-side <found>
      And controls/advance-lever tried advance-lever whole-way-and-stays
      Then controls.advance-lever is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found   |
        | unknown |

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      Then controls.advance-lever is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: advance lever not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever seen retard-side marked
      Then controls.advance-lever is missing

    Scenario: advance lever looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever seen retard-side marked
      And controls/advance-lever seen advance-lever whole-way-and-stays
      Then controls.advance-lever is missing

    Scenario: advance lever known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever seen retard-side marked
      And controls/advance-lever told advance-lever whole-way-and-stays
      Then controls.advance-lever is missing

    Scenario: retard side not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever tried advance-lever whole-way-and-stays
      Then controls.advance-lever is missing

    Scenario: retard side known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever tried advance-lever whole-way-and-stays
      And controls/advance-lever told retard-side marked
      Then controls.advance-lever is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever tried advance-lever moves-by-itself
      And controls/advance-lever seen retard-side marked
      And tom wrote that controls/advance-lever tried advance-lever whole-way-and-stays
      Then controls.advance-lever is fault

    Scenario Outline: what was wrong, and was put right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever tried advance-lever <f0> 3 days ago
      And controls/advance-lever seen retard-side <f1> 3 days ago
      And <place> was <work> 2 days ago
      And controls/advance-lever tried advance-lever whole-way-and-stays 1 day ago
      And controls/advance-lever seen retard-side marked 1 day ago
      Then controls.advance-lever is <state>

      Examples:
        | f0     | f1     | place                  | work       | state |
        | sticks | marked | controls/advance-lever | lubricated | met   |

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever tried advance-lever whole-way-and-stays <ago> months ago
      And controls/advance-lever seen retard-side marked <ago> months ago
      Then controls.advance-lever is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever tried advance-lever whole-way-and-stays
      And controls/advance-lever seen retard-side marked
      And <point> was <work>
      Then controls.advance-lever is stale

      Examples:
        | point                  | work     |
        | ignition/points        | damaged  |
        | controls/advance-lever | adjusted |
        | controls/advance-lever | replaced |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And controls/advance-lever tried advance-lever whole-way-and-stays
      And controls/advance-lever seen retard-side marked
      And <point> was <work>
      Then controls.advance-lever is met

      Examples:
        | point       | work    |
        | front-wheel | removed |

    Scenario: does not apply to a machine without one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.advance-lever is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part advance-lever
      And a machine ready for first-start
      And nothing is written for controls.advance-lever
      Then the first-start is blocked by controls.advance-lever alone

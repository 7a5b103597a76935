Feature: Generator belt
  A belt outside the engine drives the generator of some machines; where it breaks it winds itself round what turns beside it.

  @electrics.generator-belt
  Rule: The belt of the generator is whole and tight

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt seen generator-belt whole-dry-and-guarded
      And electrics/charging/belt tried generator-belt-tension right
      Then electrics.generator-belt is met
      And it holds until 2027-11-25

    Scenario Outline: generator belt not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt seen generator-belt <found>
      And electrics/charging/belt tried generator-belt-tension right
      Then electrics.generator-belt is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found         |
        | cracked       |
        | frayed        |
        | oily          |
        | rubs          |
        | guard-missing |

    Scenario Outline: generator belt tension not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt tried generator-belt-tension <found>
      And electrics/charging/belt seen generator-belt whole-dry-and-guarded
      Then electrics.generator-belt is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found |
        | slack |
        | tight |

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      Then electrics.generator-belt is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: generator belt not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt tried generator-belt-tension right
      Then electrics.generator-belt is missing

    Scenario: generator belt known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt tried generator-belt-tension right
      And electrics/charging/belt told generator-belt whole-dry-and-guarded
      Then electrics.generator-belt is missing

    Scenario: generator belt tension not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt seen generator-belt whole-dry-and-guarded
      Then electrics.generator-belt is missing

    Scenario: generator belt tension looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt seen generator-belt whole-dry-and-guarded
      And electrics/charging/belt seen generator-belt-tension right
      Then electrics.generator-belt is missing

    Scenario: generator belt tension known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt seen generator-belt whole-dry-and-guarded
      And electrics/charging/belt told generator-belt-tension right
      Then electrics.generator-belt is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt seen generator-belt cracked
      And electrics/charging/belt tried generator-belt-tension right
      And tom wrote that electrics/charging/belt seen generator-belt whole-dry-and-guarded
      Then electrics.generator-belt is fault

    Scenario Outline: what was wrong, and was put right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt seen generator-belt <f0> 3 days ago
      And electrics/charging/belt tried generator-belt-tension <f1> 3 days ago
      And <place> was <work> 2 days ago
      And electrics/charging/belt seen generator-belt whole-dry-and-guarded 1 day ago
      And electrics/charging/belt tried generator-belt-tension right 1 day ago
      Then electrics.generator-belt is <state>

      Examples:
        | f0                    | f1    | place                   | work     | state |
        | whole-dry-and-guarded | slack | electrics/charging/belt | adjusted | met   |
        | frayed                | right | electrics/charging/belt | replaced | met   |

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt seen generator-belt whole-dry-and-guarded <ago> months ago
      And electrics/charging/belt tried generator-belt-tension right <ago> months ago
      Then electrics.generator-belt is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt seen generator-belt whole-dry-and-guarded
      And electrics/charging/belt tried generator-belt-tension right
      And <point> was <work>
      Then electrics.generator-belt is stale

      Examples:
        | point                   | work      |
        | electrics/charging/belt | tightened |
        | electrics/charging/belt | adjusted  |
        | electrics/charging/belt | replaced  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And electrics/charging/belt seen generator-belt whole-dry-and-guarded
      And electrics/charging/belt tried generator-belt-tension right
      And <point> was <work>
      Then electrics.generator-belt is met

      Examples:
        | point       | work    |
        | front-wheel | removed |

    Scenario: does not apply to a machine without one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.generator-belt is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part generator-belt
      And a machine ready for road-test
      And nothing is written for electrics.generator-belt
      Then the road-test is blocked by electrics.generator-belt alone

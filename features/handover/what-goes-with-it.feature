Feature: What goes with it
  Keys, papers, the list of recalls, and the list of what is not as it was made.

  @handover.keys
  Rule: All keys are there

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen keys <found>
      Then handover.keys is met at machine

      Examples:
        | found     |
        | all-there |
        | none-made |

    Scenario: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen keys missing
      Then handover.keys is fault at machine

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen keys missing
      And tom wrote that machine seen keys all-there
      Then handover.keys is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.keys is missing at machine
      And it holds hand-over, non-runner and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine told keys all-there
      Then handover.keys is missing at machine

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen keys all-there <ago> days ago
      Then handover.keys is <state> at machine

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

  @handover.papers
  Rule: The papers name this machine

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen papers complete
      Then handover.papers is met at machine

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen papers <found>
      Then handover.papers is fault at machine

      Examples:
        | found              |
        | missing            |
        | incomplete         |
        | of-another-machine |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.papers is missing at machine
      And it holds hand-over, non-runner and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine told papers complete
      Then handover.papers is missing at machine

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen papers complete <ago> days ago
      Then handover.papers is <state> at machine

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen papers complete
      And <point> was <work>
      Then handover.papers is stale at machine

      Examples:
        | point            | work     |
        | engine           | replaced |
        | frame            | replaced |
        | engine/crankcase | replaced |
        | frame/lugs       | replaced |

  @handover.recall
  Rule: No recall is open

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen recall-search <found>
      Then handover.recall is met at machine

      Examples:
        | found             |
        | none-open         |
        | no-list-covers-it |

    Scenario: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen recall-search open
      Then handover.recall is fault at machine
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen recall-search open
      And tom wrote that machine seen recall-search none-open
      Then handover.recall is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.recall is missing at machine
      And it holds hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine told recall-search none-open
      Then handover.recall is missing at machine

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen recall-search none-open <ago> days ago
      Then handover.recall is <state> at machine

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: the new owner is told
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen recall-search <found>
      Then handover.recall is met
      And it notes nothing but "<note>"

      Examples:
        | found             | note                               |
        | none-open         | searches the list again every year |
        | no-list-covers-it | nobody keeps one                   |

  @handover.deviations
  Rule: Deviations and parts that are not original are listed

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen deviations <found>
      Then handover.deviations is met at machine

      Examples:
        | found      |
        | listed     |
        | none-known |

    Scenario: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen deviations not-listed
      Then handover.deviations is fault at machine

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen deviations not-listed
      And tom wrote that machine seen deviations listed
      Then handover.deviations is fault

    Scenario: the new owner is told that there is a list
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen deviations listed
      Then handover.deviations is met
      And it notes nothing but "on a list that goes with the machine"

    Scenario: nothing to tell
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen deviations none-known
      And machine/fasteners seen torque-figures maker
      Then handover.deviations is met
      And it notes nothing

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.deviations is missing at machine
      And it holds hand-over, non-runner and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine told deviations listed
      Then handover.deviations is missing at machine

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen deviations listed <ago> months ago
      Then handover.deviations is <state> at machine

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen deviations listed
      And <point> was <work>
      Then handover.deviations is stale at machine

      Examples:
        | point                  | work     |
        | front-fork             | replaced |
        | frame                  | replaced |
        | engine                 | replaced |
        | fuel                   | replaced |
        | engine/crankcase       | replaced |
        | fuel/tank              | replaced |
        | frame/lugs             | replaced |
        | frame/sidecar-fittings | removed  |
        | frame/sidecar-fittings | refitted |
        | frame/sidecar-fittings | replaced |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen deviations listed
      And <point> was <work>
      Then handover.deviations is met at machine

      Examples:
        | point                  | work     |
        | engine/crankcase/seals | replaced |
        | fuel/tank/cap          | replaced |
        | front-fork/oil         | replaced |
        | front-fork/spring      | replaced |

    Scenario: the list goes with the machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen deviations listed
      Then handover.deviations is met
      And it notes "on a list that goes with the machine"
      And it holds until 2027-11-25

Feature: Fuel pump
  Petrol under pressure sprays where a carburettor only drips, and a pump that runs on feeds the fire.

  @fuel.pump
  Rule: The pump stops with the engine, and its unions are dry

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump tried pump-stops <f0>
      And fuel/pump seen pump-unions <f1>
      Then fuel.pump is met

      Examples:
        | f0                   | f1                 |
        | stops-by-itself      | dry-under-pressure |
        | driven-by-the-engine | dry-under-pressure |

    Scenario Outline: pump stops not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump tried pump-stops <found>
      And fuel/pump seen pump-unions dry-under-pressure
      Then fuel.pump is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found   |
        | runs-on |

    Scenario Outline: pump unions not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump seen pump-unions <found>
      And fuel/pump tried pump-stops stops-by-itself
      Then fuel.pump is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found                      |
        | weeps                      |
        | leaks                      |
        | hose-not-for-the-pressure  |
        | clips-not-for-the-pressure |

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      Then fuel.pump is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: pump stops not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump seen pump-unions dry-under-pressure
      Then fuel.pump is missing

    Scenario: pump stops looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump seen pump-unions dry-under-pressure
      And fuel/pump seen pump-stops stops-by-itself
      Then fuel.pump is missing

    Scenario: pump stops known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump seen pump-unions dry-under-pressure
      And fuel/pump told pump-stops stops-by-itself
      Then fuel.pump is missing

    Scenario: pump unions not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump tried pump-stops stops-by-itself
      Then fuel.pump is missing

    Scenario: pump unions known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump tried pump-stops stops-by-itself
      And fuel/pump told pump-unions dry-under-pressure
      Then fuel.pump is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump tried pump-stops runs-on
      And fuel/pump seen pump-unions dry-under-pressure
      And tom wrote that fuel/pump tried pump-stops stops-by-itself
      Then fuel.pump is fault

    Scenario Outline: what was wrong, and was put right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump tried pump-stops <f0> 3 days ago
      And fuel/pump seen pump-unions <f1> 3 days ago
      And <place> was <work> 2 days ago
      And fuel/pump tried pump-stops stops-by-itself 1 day ago
      And fuel/pump seen pump-unions dry-under-pressure 1 day ago
      Then fuel.pump is <state>

      Examples:
        | f0              | f1                 | place     | work      | state |
        | stops-by-itself | weeps              | fuel/pump | tightened | met   |
        | runs-on         | dry-under-pressure | fuel/pump | repaired  | met   |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump tried pump-stops stops-by-itself
      And fuel/pump seen pump-unions dry-under-pressure
      And <point> was <work>
      Then fuel.pump is stale

      Examples:
        | point     | work      |
        | fuel/pump | adjusted  |
        | fuel/pump | replaced  |
        | fuel/pump | tightened |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump tried pump-stops stops-by-itself
      And fuel/pump seen pump-unions dry-under-pressure
      And <point> was <work>
      Then fuel.pump is met

      Examples:
        | point       | work    |
        | front-wheel | removed |

    Scenario: does not apply to a carburettor fed by its own weight
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.pump is not applicable

    Scenario: does not apply to an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.pump is not applicable

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has carburettors 0
      And the record is a job-record/1
      Then fuel.pump is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And a machine ready for first-start
      And nothing is written for fuel.pump
      Then the first-start is blocked by fuel.pump alone

    Scenario: an engine with injection whose description does not mention a pump
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has carburettors 0
      Then fuel.pump is missing

    Scenario Outline: how long the trial is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part fuel-pump
      And fuel/pump tried pump-stops stops-by-itself <ago> days ago
      And fuel/pump seen pump-unions dry-under-pressure
      Then fuel.pump is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

Feature: The lamps of a sidecar
  Somebody stands ahead of the outfit and then behind it. Without a white lamp and a red one at its outer side, what comes
  towards others at night looks like a solo machine.

  @electrics.sidecar-lamps
  Rule: The sidecar shows white ahead and red behind

    Scenario Outline: sidecar lamps in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And electrics/sidecar-lamps tried sidecar-lamps <found>
      Then electrics.sidecar-lamps is met
      And it holds until 2026-12-25

      Examples:
        | found                  |
        | white-ahead-red-behind |

    Scenario Outline: sidecar lamps not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And electrics/sidecar-lamps tried sidecar-lamps <found>
      Then electrics.sidecar-lamps is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found        |
        | dark         |
        | dim          |
        | wrong-colour |
        | hidden       |
        | not-fitted   |

    Scenario: sidecar lamps known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And electrics/sidecar-lamps told sidecar-lamps white-ahead-red-behind
      Then electrics.sidecar-lamps is missing

    Scenario: sidecar lamps looked at but not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And electrics/sidecar-lamps seen sidecar-lamps white-ahead-red-behind
      Then electrics.sidecar-lamps is missing

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      Then electrics.sidecar-lamps is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And electrics/sidecar-lamps tried sidecar-lamps dark
      And tom wrote that electrics/sidecar-lamps tried sidecar-lamps white-ahead-red-behind
      Then electrics.sidecar-lamps is fault

    Scenario: sidecar lamps dark, and repaired
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And electrics/sidecar-lamps tried sidecar-lamps dark 3 days ago
      And electrics/sidecar-lamps was repaired 2 days ago
      And electrics/sidecar-lamps tried sidecar-lamps white-ahead-red-behind 1 day ago
      Then electrics.sidecar-lamps is met

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And electrics/sidecar-lamps tried sidecar-lamps white-ahead-red-behind <ago> days ago
      Then electrics.sidecar-lamps is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario: electrics/sidecar-lamps was opened since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And electrics/sidecar-lamps tried sidecar-lamps white-ahead-red-behind
      And electrics/sidecar-lamps was opened
      Then electrics.sidecar-lamps is stale

    Scenario: does not apply to a solo machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.sidecar-lamps is not applicable

    Scenario: does not apply to an outfit without lamps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And the equipment has lamps no
      Then electrics.sidecar-lamps is not applicable

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And the record is a job-record/1
      Then electrics.sidecar-lamps is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And a machine ready for road-test
      And nothing is written for electrics.sidecar-lamps
      Then the road-test is blocked by electrics.sidecar-lamps alone

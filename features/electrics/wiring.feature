Feature: Wiring
  Followed by hand from end to end. A machine without a battery has wires, too.

  @electrics.insulation
  Rule: The insulation is whole along the loom

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring seen insulation whole
      Then electrics.insulation is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring seen insulation <found>
      Then electrics.insulation is fault

      Examples:
        | found         |
        | chafed        |
        | cracked       |
        | melted        |
        | bare          |
        | twisted-joint |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring seen insulation chafed
      And tom wrote that electrics/wiring seen insulation whole
      Then electrics.insulation is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.insulation is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring told insulation whole
      Then electrics.insulation is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring seen insulation whole <ago> months ago
      Then electrics.insulation is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring seen insulation whole
      And <point> was <work>
      Then electrics.insulation is stale

      Examples:
        | point                     | work     |
        | electrics/wiring          | repaired |
        | electrics/wiring/lighting | opened   |
        | headlamp                  | opened   |
        | headlamp/shell            | opened   |
        | machine                   | damaged  |

    Scenario: asked without a battery as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the battery has 0 volts
      And electrics/wiring seen insulation whole
      Then electrics.insulation is met

  @electrics.loom-run
  Rule: The loom runs free from lock to lock

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring tried loom-run free-lock-to-lock
      Then electrics.loom-run is met
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring seen loom-run free-lock-to-lock
      Then electrics.loom-run is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring tried loom-run <found>
      Then electrics.loom-run is fault

      Examples:
        | found        |
        | taut         |
        | pinched      |
        | rubs         |
        | near-exhaust |
        | near-chain   |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring tried loom-run taut
      And tom wrote that electrics/wiring tried loom-run free-lock-to-lock
      Then electrics.loom-run is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.loom-run is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring told loom-run free-lock-to-lock
      Then electrics.loom-run is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring tried loom-run free-lock-to-lock <ago> months ago
      Then electrics.loom-run is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring tried loom-run free-lock-to-lock
      And <point> was <work>
      Then electrics.loom-run is stale

      Examples:
        | point                     | work     |
        | electrics/wiring          | repaired |
        | electrics/wiring/lighting | opened   |
        | headlamp                  | opened   |
        | headlamp/shell            | opened   |
        | steering/handlebar        | refitted |
        | steering/yokes            | refitted |
        | steering/head             | opened   |
        | front-fork                | removed  |
        | fuel/tank                 | removed  |
        | machine                   | damaged  |
        | steering/handlebar        | adjusted |
        | fuel/tank                 | adjusted |
        | controls/levers           | damaged  |
        | electrics/warning-lamps   | damaged  |

    Scenario: asked without a battery as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the battery has 0 volts
      And electrics/wiring tried loom-run free-lock-to-lock
      Then electrics.loom-run is met

  @electrics.connectors
  Rule: Every connector is clean and tight

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring tried connectors clean-and-tight
      Then electrics.connectors is met
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring seen connectors clean-and-tight
      Then electrics.connectors is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring tried connectors <found>
      Then electrics.connectors is fault

      Examples:
        | found      |
        | corroded   |
        | loose      |
        | overheated |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring tried connectors corroded
      And tom wrote that electrics/wiring tried connectors clean-and-tight
      Then electrics.connectors is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring tried connectors overheated
      Then electrics.connectors is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.connectors is missing
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring told connectors clean-and-tight
      Then electrics.connectors is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring tried connectors clean-and-tight <ago> months ago
      Then electrics.connectors is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/wiring tried connectors clean-and-tight
      And <point> was <work>
      Then electrics.connectors is stale

      Examples:
        | point                     | work     |
        | electrics/wiring          | repaired |
        | electrics/wiring/lighting | opened   |
        | headlamp                  | opened   |
        | headlamp/shell            | opened   |
        | electrics/charging        | repaired |
        | ignition/coils            | replaced |
        | ignition/box              | damaged  |
        | ignition/cylinder-1/coil  | damaged  |

    Scenario: asked without a battery as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the battery has 0 volts
      And electrics/wiring tried connectors clean-and-tight
      Then electrics.connectors is met

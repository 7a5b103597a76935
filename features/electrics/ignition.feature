Feature: Ignition
  The spark proves a coil; its resistance only supports that. Asked for every cylinder; a coil that feeds two plugs is written at both.

  @electrics.spark
  Rule: Every plug gives a strong spark

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1 tried spark strong
      Then electrics.spark is met at ignition/cylinder-1
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1 seen spark strong
      Then electrics.spark is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1 tried spark <found>
      Then electrics.spark is fault at ignition/cylinder-1

      Examples:
        | found     |
        | weak      |
        | irregular |
        | none      |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1 tried spark weak
      And tom wrote that ignition/cylinder-1 tried spark strong
      Then electrics.spark is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.spark is missing at ignition/cylinder-1
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1 told spark strong
      Then electrics.spark is missing at ignition/cylinder-1

    Scenario: capacitor discharge
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition/cylinder-1 tried spark strong
      Then electrics.spark is met
      And it notes "high voltage that kills"

    Scenario: one cylinder of two
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And ignition/cylinder-1 tried spark strong
      Then electrics.spark is missing
      And electrics.spark is met at ignition/cylinder-1

    Scenario: a magneto
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is magneto
      And the battery has 0 volts
      And ignition/cylinder-1 tried spark strong
      Then electrics.spark is met

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1 tried spark strong <ago> months ago
      Then electrics.spark is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1 tried spark strong
      And <point> was <work>
      Then electrics.spark is stale

      Examples:
        | point                     | work     |
        | ignition/cylinder-1       | opened   |
        | ignition/cylinder-1/coil  | replaced |
        | ignition/cylinder-1/cap   | replaced |
        | ignition/cylinder-1/lead  | replaced |
        | ignition                  | stripped |
        | ignition/coils            | replaced |
        | ignition/points           | replaced |
        | ignition/box              | replaced |
        | electrics/wiring          | repaired |
        | electrics/wiring/ignition | opened   |
        | electrics/ignition-switch | replaced |

    Scenario Outline: work that leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And ignition/cylinder-1 tried spark strong
      And <point> was <work>
      Then electrics.spark is met at ignition/cylinder-1

      Examples:
        | point                     | work     |
        | ignition/cylinder-2/cap   | replaced |
        | electrics/wiring/lighting | opened   |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then electrics.spark is not applicable

  @electrics.coil-primary
  Rule: The coil's primary winding is inside its figure

    Scenario Outline: on both sides of both limits, at 20 °C
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured primary-resistance <reading> Ω ± <u> Ω
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-primary is <state>

      # 0.15 Ω to 6 Ω, every kind of coil: common practice
      Examples:
        | reading | u    | state |
        | 0.10    | 0.04 | fault |
        | 0.15    | 0.04 | doubt |
        | 0.20    | 0.04 | met   |
        | 5.8     | 0.1  | met   |
        | 6.0     | 0.1  | doubt |
        | 6.1     | 0.1  | fault |

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured primary-resistance 0.20 Ω ± 0.04 Ω
      And there was the defect "not as it should be"
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      And tom wrote that ignition/cylinder-1/coil measured primary-resistance 0.20 Ω ± 0.04 Ω
      Then electrics.coil-primary is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil tried primary-resistance 0.18 Ω
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-primary is missing

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured primary-resistance 0.20 Ω ± 0.04 Ω
      And ignition/cylinder-1/coil tried coil-temperature 20 °C
      Then electrics.coil-primary is missing

    Scenario Outline: a warm coil is brought to 20 °C
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says electrics.coil-primary at most 4.2 Ω
      And ignition/cylinder-1/coil measured primary-resistance 4.85 Ω ± 0.05 Ω
      And ignition/cylinder-1/coil measured coil-temperature <temperature> °C ± 1 °C
      Then electrics.coil-primary is <state>
      And the limit came from "Lark 250 workshop manual"

      # 4.85 Ω ÷ (1 + 0.00393 × (t − 20 °C)): 4.34 Ω at 50 °C, 4.19 Ω at 60 °C, 4.05 Ω at 70 °C, each within 0.05 Ω; the figure is invented
      Examples:
        | temperature | state |
        | 20          | fault |
        | 50          | fault |
        | 60          | doubt |
        | 70          | met   |

    Scenario: the record is silent about the maker
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no word from the maker on electrics.coil-primary
      And ignition/cylinder-1/coil measured primary-resistance 4.2 Ω ± 0.1 Ω
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-primary is missing

    Scenario: nobody measured the winding
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-primary is missing
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: nobody measured the temperature
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured primary-resistance 4.2 Ω ± 0.1 Ω
      Then electrics.coil-primary is missing

    Scenario: a temperature no coil has
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured primary-resistance 4.2 Ω ± 0.1 Ω
      And ignition/cylinder-1/coil measured coil-temperature 200 °C ± 1 °C
      Then electrics.coil-primary is doubt
      And it says "coil temperature 200 °C is not possible"

    Scenario: one cylinder of two
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And ignition/cylinder-1/coil measured primary-resistance 4.2 Ω ± 0.1 Ω
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-primary is missing
      And electrics.coil-primary is met at ignition/cylinder-1/coil

    Scenario: electronic ignition has a coil as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition/cylinder-1/coil measured primary-resistance 4.2 Ω ± 0.1 Ω
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-primary is met
      And it holds until 2027-11-25

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured primary-resistance 4.2 Ω ± 0.1 Ω <ago> months ago
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C <ago> months ago
      Then electrics.coil-primary is <state> at ignition/cylinder-1/coil

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured primary-resistance 4.2 Ω ± 0.1 Ω
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      And <point> was <work>
      Then electrics.coil-primary is stale

      Examples:
        | point                    | work     |
        | ignition/cylinder-1/coil | replaced |
        | ignition/coils           | replaced |
        | ignition/cylinder-1      | stripped |
        | ignition/coils           | repaired |
        | ignition/coils           | stripped |
        | ignition/coils           | damaged  |

    Scenario: not asked of a magneto, whose coil turns inside
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is magneto
      Then electrics.coil-primary is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then electrics.coil-primary is not applicable

  @electrics.coil-secondary
  Rule: The coil's secondary winding is inside its figure

    Scenario Outline: on both sides of both limits, at 20 °C
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured secondary-resistance <reading> kΩ ± <u> kΩ
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-secondary is <state>

      # 2 kΩ to 30 kΩ, every kind of coil: common practice
      Examples:
        | reading | u   | state |
        | 1.9     | 0.1 | fault |
        | 2.0     | 0.1 | doubt |
        | 2.2     | 0.1 | met   |
        | 29.4    | 0.5 | met   |
        | 30.0    | 0.5 | doubt |
        | 30.5    | 0.5 | fault |

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured secondary-resistance 2.2 kΩ ± 0.1 kΩ
      And there was the defect "not as it should be"
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      And tom wrote that ignition/cylinder-1/coil measured secondary-resistance 2.2 kΩ ± 0.1 kΩ
      Then electrics.coil-secondary is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil tried secondary-resistance 2.2 kΩ
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-secondary is missing

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured secondary-resistance 2.2 kΩ ± 0.1 kΩ
      And ignition/cylinder-1/coil tried coil-temperature 20 °C
      Then electrics.coil-secondary is missing

    Scenario Outline: a warm coil is brought to 20 °C
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says electrics.coil-secondary at least 6.3 kΩ
      And ignition/cylinder-1/coil measured secondary-resistance 7.3 kΩ ± 0.05 kΩ
      And ignition/cylinder-1/coil measured coil-temperature <temperature> °C ± 1 °C
      Then electrics.coil-secondary is <state>
      And the limit came from "Lark 250 workshop manual"

      # 7.3 kΩ ÷ (1 + 0.00393 × (t − 20 °C)): 7.60 kΩ at 10 °C, 6.31 kΩ at 60 °C, 6.10 kΩ at 70 °C, each within 0.05 kΩ; the figure is invented
      Examples:
        | temperature | state |
        | 10          | met   |
        | 20          | met   |
        | 60          | doubt |
        | 70          | fault |

    Scenario: the record is silent about the maker
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no word from the maker on electrics.coil-secondary
      And ignition/cylinder-1/coil measured secondary-resistance 7.5 kΩ ± 0.1 kΩ
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-secondary is missing

    Scenario: nobody measured the winding
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-secondary is missing
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: nobody measured the temperature
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured secondary-resistance 7.5 kΩ ± 0.1 kΩ
      Then electrics.coil-secondary is missing

    Scenario: a temperature no coil has
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured secondary-resistance 7.5 kΩ ± 0.1 kΩ
      And ignition/cylinder-1/coil measured coil-temperature 200 °C ± 1 °C
      Then electrics.coil-secondary is doubt
      And it says "coil temperature 200 °C is not possible"

    Scenario: one cylinder of two
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And ignition/cylinder-1/coil measured secondary-resistance 7.5 kΩ ± 0.1 kΩ
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-secondary is missing
      And electrics.coil-secondary is met at ignition/cylinder-1/coil

    Scenario: electronic ignition has a coil as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition/cylinder-1/coil measured secondary-resistance 7.5 kΩ ± 0.1 kΩ
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-secondary is met
      And it holds until 2027-11-25

    Scenario: readings taken too far apart
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition/cylinder-1/coil measured secondary-resistance 7.5 kΩ ± 0.1 kΩ 3 hours ago
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-secondary is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured secondary-resistance 7.5 kΩ ± 0.1 kΩ <ago> months ago
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C <ago> months ago
      Then electrics.coil-secondary is <state> at ignition/cylinder-1/coil

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured secondary-resistance 7.5 kΩ ± 0.1 kΩ
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      And <point> was <work>
      Then electrics.coil-secondary is stale

      Examples:
        | point                    | work     |
        | ignition/cylinder-1/coil | replaced |
        | ignition/coils           | replaced |
        | ignition/cylinder-1      | stripped |
        | ignition/coils           | repaired |
        | ignition/coils           | stripped |
        | ignition/coils           | damaged  |

    Scenario: not asked of a magneto, whose coil turns inside
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is magneto
      Then electrics.coil-secondary is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then electrics.coil-secondary is not applicable

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured secondary-resistance 2.2 kΩ ± 0.1 kΩ
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      Then electrics.coil-secondary is met at ignition/cylinder-1/coil
      And it says "between 2 kΩ and 30 kΩ (common practice)"

  @electrics.plug-cap
  Rule: The resistance of every plug cap is low enough

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/cap measured cap-resistance <reading> kΩ ± 0.1 kΩ
      Then electrics.plug-cap is <state>

      # 10 kΩ and a quarter above: common practice
      Examples:
        | reading | state |
        | 0.0     | met   |
        | 12.3    | met   |
        | 12.5    | doubt |
        | 12.6    | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/cap measured cap-resistance 12.6 kΩ ± 0.1 kΩ
      And tom wrote that ignition/cylinder-1/cap measured cap-resistance 0.0 kΩ ± 0.1 kΩ
      Then electrics.plug-cap is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/cap tried cap-resistance 0.0 kΩ
      Then electrics.plug-cap is missing

    Scenario: the maker's figure replaces it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says electrics.plug-cap at most 6 kΩ
      And ignition/cylinder-1/cap measured cap-resistance 7.0 kΩ ± 0.1 kΩ
      Then electrics.plug-cap is fault
      And the limit came from "Lark 250 workshop manual"

    Scenario: the record is silent about the maker
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no word from the maker on electrics.plug-cap
      And ignition/cylinder-1/cap measured cap-resistance 5.1 kΩ ± 0.1 kΩ
      Then electrics.plug-cap is missing

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.plug-cap is missing
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: one cylinder of two
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And ignition/cylinder-1/cap measured cap-resistance 5.1 kΩ ± 0.1 kΩ
      Then electrics.plug-cap is missing
      And electrics.plug-cap is met at ignition/cylinder-1/cap

    Scenario: a magneto
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is magneto
      And ignition/cylinder-1/cap measured cap-resistance 5.1 kΩ ± 0.1 kΩ
      Then electrics.plug-cap is met
      And it holds until 2027-11-25

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/cap measured cap-resistance 5.1 kΩ ± 0.1 kΩ <ago> months ago
      Then electrics.plug-cap is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/cap measured cap-resistance 5.1 kΩ ± 0.1 kΩ
      And <point> was <work>
      Then electrics.plug-cap is stale

      Examples:
        | point                   | work     |
        | ignition/cylinder-1/cap | replaced |
        | ignition                | stripped |

    Scenario Outline: work that leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/cap measured cap-resistance 5.1 kΩ ± 0.1 kΩ
      And <point> was <work>
      Then electrics.plug-cap is met

      Examples:
        | point                    | work     |
        | ignition/cylinder-1/lead | replaced |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then electrics.plug-cap is not applicable

  @electrics.plug-lead
  Rule: Plug lead and cap are dry, whole and tight

    Scenario: plug lead in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead tried plug-cap-fit tight
      And ignition/cylinder-1/lead seen plug-lead whole-and-dry
      Then electrics.plug-lead is met
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead seen plug-cap-fit tight
      And ignition/cylinder-1/lead seen plug-lead whole-and-dry
      Then electrics.plug-lead is missing

    Scenario Outline: plug lead: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead tried plug-cap-fit tight
      And ignition/cylinder-1/lead seen plug-lead <found>
      Then electrics.plug-lead is fault

      Examples:
        | found   |
        | cracked |
        | chafed  |
        | burnt   |
        | damp    |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead tried plug-cap-fit tight
      And ignition/cylinder-1/lead seen plug-lead cracked
      And tom wrote that ignition/cylinder-1/lead seen plug-lead whole-and-dry
      Then electrics.plug-lead is fault

    Scenario: nobody looked at plug lead
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead tried plug-cap-fit tight
      Then electrics.plug-lead is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so of plug lead
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead tried plug-cap-fit tight
      And ignition/cylinder-1/lead told plug-lead whole-and-dry
      Then electrics.plug-lead is missing

    Scenario: plug cap fit in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead seen plug-lead whole-and-dry
      And ignition/cylinder-1/lead tried plug-cap-fit tight
      Then electrics.plug-lead is met

    Scenario Outline: plug cap fit: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead seen plug-lead whole-and-dry
      And ignition/cylinder-1/lead tried plug-cap-fit <found>
      Then electrics.plug-lead is fault

      Examples:
        | found   |
        | loose   |
        | cracked |

    Scenario: nobody tried at plug cap fit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead seen plug-lead whole-and-dry
      Then electrics.plug-lead is missing

    Scenario: somebody says so of plug cap fit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead seen plug-lead whole-and-dry
      And ignition/cylinder-1/lead told plug-cap-fit tight
      Then electrics.plug-lead is missing

    Scenario: one cylinder of two
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And ignition/cylinder-1/lead seen plug-lead whole-and-dry
      And ignition/cylinder-1/lead tried plug-cap-fit tight
      Then electrics.plug-lead is missing
      And electrics.plug-lead is met at ignition/cylinder-1/lead

    Scenario: a magneto
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is magneto
      And ignition/cylinder-1/lead seen plug-lead whole-and-dry
      And ignition/cylinder-1/lead tried plug-cap-fit tight
      Then electrics.plug-lead is met

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead seen plug-lead whole-and-dry <ago> months ago
      And ignition/cylinder-1/lead tried plug-cap-fit tight <ago> months ago
      Then electrics.plug-lead is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead seen plug-lead whole-and-dry
      And ignition/cylinder-1/lead tried plug-cap-fit tight
      And <point> was <work>
      Then electrics.plug-lead is stale

      Examples:
        | point                    | work     |
        | ignition/cylinder-1/lead | replaced |
        | ignition/cylinder-1/cap  | replaced |
        | ignition                 | stripped |
        | fuel/tank                | removed  |
        | machine                  | damaged  |
        | engine/head              | damaged  |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then electrics.plug-lead is not applicable

Feature: Direction indicators and horn
  What is fitted must work, whatever the age; what must be fitted depends on territory and first registration.

  @electrics.indicators-fitted
  Rule: The machine carries as many direction indicators as the law asks of its age

    Scenario Outline: by territory and first registration
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And the machine is first registered <registered>
      And electrics/indicators seen indicators-fitted <count> times
      Then electrics.indicators-fitted is <state>

      # GB inspection manual 1.5, COMAR 29.02.01.17 A and StVZO § 54, each read in a copy; FMVSS 108 from memory
      Examples:
        | territory | registered | count | state |
        | GB        | 1986-08-01 | 0     | fault |
        | GB        | 1986-08-01 | 3     | fault |
        | GB        | 1986-08-01 | 4     | met   |
        | US-VA     | 1973-01-01 | 0     | fault |
        | US-VA     | 1973-01-01 | 4     | met   |
        | US-MD     | 1973-01-01 | 3     | fault |
        | US-MD     | 1973-01-01 | 4     | met   |
        | DE        | 1962-01-01 | 1     | fault |
        | DE        | 1962-01-01 | 2     | met   |
        | DE        | 1986-12-31 | 2     | met   |
        | DE        | 1987-01-01 | 3     | fault |
        | DE        | 1987-01-01 | 4     | met   |
        | IT        | 1986-08-01 | 0     | missing |
        | IT        | 1986-08-01 | 4     | missing |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is GB
      And the machine is first registered 1986-08-01
      And electrics/indicators seen indicators-fitted 0 times
      And tom wrote that electrics/indicators seen indicators-fitted 4 times
      Then electrics.indicators-fitted is fault

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is GB
      And the machine is first registered 1986-08-01
      And electrics/indicators told indicators-fitted 4 times
      Then electrics.indicators-fitted is missing

    Scenario Outline: older than the law asks
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And the machine is first registered <registered>
      And the equipment has indicators no
      Then electrics.indicators-fitted is not applicable

      Examples:
        | territory | registered |
        | GB        | 1986-07-31 |
        | US-VA     | 1972-12-31 |
        | US-MD     | 1972-12-31 |
        | DE        | 1961-12-31 |

    Scenario Outline: an outfit is asked, a moped is not
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a <kind>
      And the machine is first registered 1990-05-01
      And the equipment has indicators no
      And electrics/indicators seen indicators-fitted 0 times
      Then electrics.indicators-fitted is <state>

      # not up to 50 km/h: GB inspection manual 1.5, read in a copy
      Examples:
        | kind               | state          |
        | motorcycle-sidecar | fault          |
        | moped              | not applicable |
        | moped-3w           | not applicable |

    Scenario: GB, a machine without lamps may be ridden by day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1990-05-01
      And the equipment has lamps no
      And the equipment has indicators no
      Then electrics.indicators-fitted is not applicable

    Scenario: no local code is loaded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is JP
      And electrics/indicators seen indicators-fitted 4 times
      Then electrics.indicators-fitted is missing
      And it says "ask the licensed inspector"

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1990-05-01
      Then electrics.indicators-fitted is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1990-05-01
      And electrics/indicators seen indicators-fitted 4 times
      And <point> was <work>
      Then electrics.indicators-fitted is stale

      Examples:
        | point                      | work     |
        | electrics/indicators       | removed  |
        | electrics/indicators/left  | removed  |
        | electrics/indicators/right | replaced |

    Scenario: counted twice, and differently
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1990-05-02
      And the equipment has indicators yes
      And electrics/indicators seen indicators-fitted 4 times
      And electrics/indicators seen indicators-fitted 6 times
      Then electrics.indicators-fitted is doubt at electrics/indicators

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is GB
      And the machine is first registered 1986-08-01
      And electrics/indicators seen indicators-fitted 4 times
      Then electrics.indicators-fitted is met at electrics/indicators
      And it says "at least 4 (MOT inspection manual: motorcycles (older edition, classes 1 and 2), 1.5, read in a copy)"
      And it says "also at least 0 (common practice)"
      And it does not lapse by itself

    Scenario: what it is held against in Germany
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And the machine is first registered 1962-01-01
      And electrics/indicators seen indicators-fitted 2 times
      Then electrics.indicators-fitted is met at electrics/indicators
      And it says "at least 2 (StVZO, § 54, read in a copy)"
      And it says "also at least 0 (common practice)"

    Scenario: what it is held against in Maryland
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-MD
      And the machine is first registered 1973-01-01
      And electrics/indicators seen indicators-fitted 4 times
      Then electrics.indicators-fitted is met at electrics/indicators
      And it says "at least 4 (COMAR 29.02.01.17, A, read in a copy)"
      And it says "also at least 0 (common practice)"

    Scenario: what it is held against in Virginia
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And the machine is first registered 1973-01-01
      And electrics/indicators seen indicators-fitted 4 times
      Then electrics.indicators-fitted is met at electrics/indicators
      And it says "at least 4 (FMVSS 108, 49 CFR 571.108, motorcycles, from memory)"
      And it says "also at least 0 (common practice)"

    Scenario: Germany, the first day of registration that asks for four
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And the machine is first registered 1987-01-01
      And electrics/indicators seen indicators-fitted 4 times
      Then electrics.indicators-fitted is met
      And it says "at least 4 (StVZO, § 54, read in a copy); also at least 0 (common practice)."

  @electrics.indicators
  Rule: All indicators of one side flash together, and nothing else

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/indicators/left tried indicators all-flash
      Then electrics.indicators is met at electrics/indicators/left

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/indicators/left tried indicators <found>
      Then electrics.indicators is fault at electrics/indicators/left

      Examples:
        | found             |
        | dark              |
        | one-dark          |
        | steady            |
        | other-lamps-flash |
        | wrong-colour      |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/indicators/left tried indicators dark
      And tom wrote that electrics/indicators/left tried indicators all-flash
      Then electrics.indicators is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      Then electrics.indicators is missing at electrics/indicators/left
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/indicators/left told indicators all-flash
      Then electrics.indicators is missing at electrics/indicators/left

    Scenario: both sides
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/indicators/left tried indicators all-flash
      And electrics/indicators/right tried indicators all-flash
      Then electrics.indicators is met

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/indicators/left seen indicators all-flash
      And electrics/indicators/right seen indicators all-flash
      Then electrics.indicators is missing

    Scenario: one side only
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/indicators/left tried indicators all-flash
      Then electrics.indicators is missing

    Scenario: what is fitted must work, whatever the age
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And the machine is first registered 1930-12-31
      And electrics/indicators/left tried indicators dark
      Then electrics.indicators is fault

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/indicators/left tried indicators all-flash <ago> days ago
      And electrics/indicators/right tried indicators all-flash <ago> days ago
      Then electrics.indicators is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/indicators/left tried indicators all-flash
      And electrics/indicators/right tried indicators all-flash
      And <point> was <work>
      Then electrics.indicators is stale at electrics/indicators/left

      Examples:
        | point                     | work     |
        | electrics/indicators/left | replaced |
        | electrics/indicators      | refitted |
        | headlamp                  | opened   |
        | headlamp/shell            | opened   |
        | electrics/switches        | repaired |
        | electrics/flasher         | replaced |
        | electrics/wiring          | repaired |
        | electrics/wiring/signals  | opened   |
        | steering/handlebar        | refitted |
        | machine                   | damaged  |

    Scenario Outline: work that leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/indicators/left tried indicators all-flash
      And electrics/indicators/right tried indicators all-flash
      And <point> was <work>
      Then electrics.indicators is met at electrics/indicators/left

      Examples:
        | point                      | work     |
        | headlamp/bulb              | replaced |
        | electrics/indicators/right | replaced |
        | electrics/wiring/lighting  | opened   |

    Scenario: not asked where none are fitted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators no
      Then electrics.indicators is not applicable

  @electrics.indicator-rate
  Rule: The indicators flash neither too slowly nor too fast

    Scenario Outline: on both sides of both limits
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/flasher tried flashes-in-a-minute <count> times
      Then electrics.indicator-rate is <state>

      # 60 to 120 in a minute: StVZO § 54 (1), read; GB inspection manual 1.5, read in a copy
      Examples:
        | count | state |
        | 59    | fault |
        | 60    | met   |
        | 120   | met   |
        | 121   | fault |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/flasher tried flashes-in-a-minute 59 times
      And tom wrote that electrics/flasher tried flashes-in-a-minute 60 times
      Then electrics.indicator-rate is fault

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/flasher seen flashes-in-a-minute 60 times
      Then electrics.indicator-rate is missing

    Scenario: nobody counted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      Then electrics.indicator-rate is missing
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/flasher tried flashes-in-a-minute 85 times <ago> months ago
      Then electrics.indicator-rate is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/flasher tried flashes-in-a-minute 85 times
      And <point> was <work>
      Then electrics.indicator-rate is stale

      Examples:
        | point                     | work     |
        | electrics/flasher         | replaced |
        | electrics/indicators/left | replaced |
        | electrics/battery         | replaced |
        | electrics/charging        | repaired |
        | electrics/wiring/signals  | opened   |
        | electrics/charging        | adjusted |

    Scenario: not asked where none are fitted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators no
      Then electrics.indicator-rate is not applicable

    Scenario: counted twice, and differently
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/flasher tried flashes-in-a-minute 80 times
      And electrics/flasher tried flashes-in-a-minute 100 times
      Then electrics.indicator-rate is doubt at electrics/flasher

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has indicators yes
      And electrics/flasher tried flashes-in-a-minute 60 times
      Then electrics.indicator-rate is met at electrics/flasher
      And it says "between 60 and 120 (MOT inspection manual: motorcycles (older edition, classes 1 and 2), 1.5, read in a copy)"
      And it says "also between 60 and 120 (common practice)"
      And it holds until 2027-11-25

    Scenario: what it is held against in Germany
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And the equipment has indicators yes
      And electrics/flasher tried flashes-in-a-minute 60 times
      Then electrics.indicator-rate is met at electrics/flasher
      And it says "between 60 and 120 (StVZO, § 54 (1), read in the official text)"
      And it says "also between 60 and 120 (common practice)"

  @electrics.horn
  Rule: The horn is loud and within reach

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/horn tried horn loud
      Then electrics.horn is met

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/horn seen horn loud
      Then electrics.horn is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/horn tried horn <found>
      Then electrics.horn is fault

      Examples:
        | found        |
        | silent       |
        | faint        |
        | stutters     |
        | two-tone     |
        | out-of-reach |
        | not-fitted   |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/horn tried horn silent
      And tom wrote that electrics/horn tried horn loud
      Then electrics.horn is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.horn is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/horn told horn loud
      Then electrics.horn is missing

    Scenario: a machine that never had one needs one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has horn no
      And the machine is first registered 1926-05-01
      And electrics/horn tried horn not-fitted
      Then electrics.horn is fault

    Scenario: a bulb horn on a machine without a battery
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the battery has 0 volts
      And electrics/horn tried horn loud
      Then electrics.horn is met

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/horn tried horn loud <ago> days ago
      Then electrics.horn is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/horn tried horn loud
      And <point> was <work>
      Then electrics.horn is stale

      Examples:
        | point                    | work     |
        | electrics/horn           | replaced |
        | electrics/horn           | adjusted |
        | headlamp                 | opened   |
        | electrics/switches       | repaired |
        | electrics/wiring         | repaired |
        | electrics/wiring/signals | opened   |
        | steering/handlebar       | refitted |
        | machine                  | damaged  |
        | headlamp/shell           | opened   |
        | steering/handlebar       | adjusted |

    Scenario Outline: work that leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/horn tried horn loud
      And <point> was <work>
      Then electrics.horn is met

      Examples:
        | point                     | work     |
        | headlamp/bulb             | replaced |
        | electrics/wiring/lighting | opened   |

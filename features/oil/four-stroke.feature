Feature: Four-stroke oil
  Enough of it, new enough, and going round.

  @oil.engine
  Rule: The engine oil is between its marks and clean

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil seen engine-oil-level between-the-marks
      And oil/engine-oil seen engine-oil-look clean
      Then oil.engine is met at oil/engine-oil

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil told engine-oil-level between-the-marks
      And oil/engine-oil seen engine-oil-look clean
      Then oil.engine is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil seen engine-oil-level between-the-marks
      And oil/engine-oil told engine-oil-look clean
      Then oil.engine is missing

    Scenario Outline: what is wrong with the engine oil level
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil seen engine-oil-level <found>
      And oil/engine-oil seen engine-oil-look clean
      Then oil.engine is fault at oil/engine-oil

      Examples:
        | found     |
        | low       |
        | empty     |
        | over-full |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil seen engine-oil-level low
      And oil/engine-oil seen engine-oil-look clean
      And tom wrote that oil/engine-oil seen engine-oil-level between-the-marks
      Then oil.engine is fault

    Scenario: found so, and then filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil seen engine-oil-level low
      And oil/engine-oil seen engine-oil-look clean
      And tom wrote that oil was filled
      Then oil.engine is stale

    Scenario Outline: what is wrong with the engine oil look
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil seen engine-oil-level between-the-marks
      And oil/engine-oil seen engine-oil-look <found>
      Then oil.engine is fault at oil/engine-oil

      Examples:
        | found         |
        | milky         |
        | sludge        |
        | metal-inside  |
        | petrol-inside |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      Then oil.engine is missing at oil/engine-oil
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the engine oil level is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil seen engine-oil-look clean
      Then oil.engine is missing at oil/engine-oil

    Scenario: the engine oil look is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil seen engine-oil-level between-the-marks
      Then oil.engine is missing at oil/engine-oil

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil told engine-oil-level between-the-marks
      And oil/engine-oil told engine-oil-look clean
      Then oil.engine is missing at oil/engine-oil

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil seen engine-oil-level between-the-marks <ago> days ago
      And oil/engine-oil seen engine-oil-look clean <ago> days ago
      Then oil.engine is <state> at oil/engine-oil

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil seen engine-oil-level between-the-marks
      And oil/engine-oil seen engine-oil-look clean
      And <point> was <work>
      Then oil.engine is stale at oil/engine-oil

      Examples:
        | point               | work      |
        | oil/engine-oil      | removed   |
        | oil/tank            | removed   |
        | oil/tank            | drained   |
        | oil/engine-oil      | drained   |
        | oil/tank            | filled    |
        | oil/engine-oil      | filled    |
        | oil/tank            | topped-up |
        | oil/engine-oil      | topped-up |
        | engine              | refitted  |
        | transmission/clutch | replaced  |
        | machine             | ridden    |
        | machine             | damaged   |
        | engine/crankcase    | damaged   |
        | engine/cylinder-1   | damaged   |
        | engine/head         | damaged   |
        | engine/top-end      | damaged   |
        | engine/valves       | damaged   |

    Scenario: not asked of a two-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.engine is not applicable

    Scenario: milky oil is drained, not topped up
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And a machine ready for first-start
      And nothing is written for oil.engine
      And oil/engine-oil seen engine-oil-look milky
      Then oil.engine is fault
      And for first-start oil is to be drained first

  @oil.engine-age
  Rule: The engine oil is new enough

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil was filled <ago> months ago
      Then oil.engine-age is <state> at oil/engine-oil

      # 12 months: common practice
      Examples:
        | ago | state |
        | 3   | met   |
        | 12  | met   |
        | 13  | fault |

    Scenario Outline: to the day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil was filled <ago> days ago
      Then oil.engine-age is <state> at oil/engine-oil

      # 25 November 2025 to 25 November 2026 is 365 days
      Examples:
        | ago | state |
        | 365 | met   |
        | 366 | fault |

    Scenario: no record that it was done
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      Then oil.engine-age is missing at oil/engine-oil
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil was filled
      And <point> was <work>
      Then oil.engine-age is stale at oil/engine-oil

      Examples:
        | point          | work    |
        | oil/engine-oil | removed |
        | oil/tank       | drained |
        | oil/engine-oil | drained |

    Scenario: not asked of a two-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.engine-age is not applicable

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And oil/engine-oil was filled 3 months ago
      Then oil.engine-age is met at oil/engine-oil
      And it says "at most 12 months (common practice)"

  @oil.arrives
  Rule: The pump brings oil before the first spark

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And oil/pump tried oil-arrives return-seen
      Then oil.arrives is met at oil/pump

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And oil/pump seen oil-arrives return-seen
      Then oil.arrives is missing

    Scenario: also in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And oil/pump tried oil-arrives pressure-shown
      Then oil.arrives is met at oil/pump

    Scenario: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And oil/pump tried oil-arrives nothing
      Then oil.arrives is fault at oil/pump
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And oil/pump tried oil-arrives nothing
      And tom wrote that oil/pump tried oil-arrives return-seen
      Then oil.arrives is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      Then oil.arrives is missing at oil/pump
      And it holds first-start, indoor-run and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And oil/pump told oil-arrives return-seen
      Then oil.arrives is missing at oil/pump

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And oil/pump tried oil-arrives return-seen <ago> days ago
      Then oil.arrives is <state> at oil/pump

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And oil/pump tried oil-arrives return-seen
      And <point> was <work>
      Then oil.arrives is stale at oil/pump

      Examples:
        | point             | work     |
        | oil/pump          | removed  |
        | oil/tank          | removed  |
        | oil/lines         | removed  |
        | oil/tank          | drained  |
        | oil/lines         | drained  |
        | oil/tank          | filled   |
        | oil/lines         | filled   |
        | engine            | refitted |
        | engine/crankcase  | damaged  |
        | engine/cylinder-1 | damaged  |
        | engine/head       | damaged  |
        | engine/top-end    | damaged  |
        | engine/valves     | damaged  |

    Scenario: not asked of a two-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.arrives is not applicable

    Scenario: not asked of total loss
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by total-loss
      Then oil.arrives is not applicable

  @oil.pressure-sign
  Rule: With the engine running the oil goes round

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      And oil/pump tried oil-pressure-sign gauge-in-range
      Then oil.pressure-sign is met at oil/pump

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      And oil/pump seen oil-pressure-sign gauge-in-range
      Then oil.pressure-sign is missing

    Scenario Outline: other signs of it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      And oil/pump tried oil-pressure-sign <found>
      Then oil.pressure-sign is met at oil/pump

      Examples:
        | found       |
        | lamp-out    |
        | return-seen |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      And oil/pump tried oil-pressure-sign <found>
      Then oil.pressure-sign is fault at oil/pump

      Examples:
        | found     |
        | gauge-low |
        | lamp-on   |
        | no-return |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      And oil/pump tried oil-pressure-sign gauge-low
      And tom wrote that oil/pump tried oil-pressure-sign gauge-in-range
      Then oil.pressure-sign is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      And oil/pump tried oil-pressure-sign gauge-low
      Then oil.pressure-sign is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      Then oil.pressure-sign is missing at oil/pump
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      And oil/pump told oil-pressure-sign gauge-in-range
      Then oil.pressure-sign is missing at oil/pump

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      And oil/pump tried oil-pressure-sign gauge-in-range <ago> days ago
      Then oil.pressure-sign is <state> at oil/pump

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      And oil/pump tried oil-pressure-sign gauge-in-range
      And <point> was <work>
      Then oil.pressure-sign is stale at oil/pump

      Examples:
        | point             | work     |
        | oil/pump          | removed  |
        | oil/tank          | removed  |
        | oil/lines         | removed  |
        | oil/tank          | drained  |
        | oil/lines         | drained  |
        | engine            | refitted |
        | engine/crankcase  | damaged  |
        | engine/cylinder-1 | damaged  |
        | engine/head       | damaged  |
        | engine/top-end    | damaged  |
        | engine/valves     | damaged  |

    Scenario: not asked of a two-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.pressure-sign is not applicable

    Scenario: not asked of total loss
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by total-loss
      Then oil.pressure-sign is not applicable

  @oil.drip-feed
  Rule: The total-loss feed drips

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by total-loss
      And oil/pump tried drip-feed drips-as-set
      Then oil.drip-feed is met at oil/pump

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by total-loss
      And oil/pump seen drip-feed drips-as-set
      Then oil.drip-feed is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by total-loss
      And oil/pump tried drip-feed <found>
      Then oil.drip-feed is fault at oil/pump

      Examples:
        | found         |
        | dry           |
        | runs-through  |
        | glass-clouded |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by total-loss
      And oil/pump tried drip-feed dry
      And tom wrote that oil/pump tried drip-feed drips-as-set
      Then oil.drip-feed is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by total-loss
      Then oil.drip-feed is missing at oil/pump
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by total-loss
      And oil/pump told drip-feed drips-as-set
      Then oil.drip-feed is missing at oil/pump

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by total-loss
      And oil/pump tried drip-feed drips-as-set <ago> days ago
      Then oil.drip-feed is <state> at oil/pump

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by total-loss
      And oil/pump tried drip-feed drips-as-set
      And <point> was <work>
      Then oil.drip-feed is stale at oil/pump

      Examples:
        | point             | work     |
        | oil/pump          | removed  |
        | oil/tank          | removed  |
        | oil/tank          | drained  |
        | oil/pump          | drained  |
        | oil/tank          | adjusted |
        | oil/pump          | adjusted |
        | engine            | refitted |
        | engine/crankcase  | damaged  |
        | engine/cylinder-1 | damaged  |
        | engine/head       | damaged  |
        | engine/top-end    | damaged  |
        | engine/valves     | damaged  |

    Scenario: not asked of a dry sump
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      Then oil.drip-feed is not applicable

    Scenario: not asked of a two-stroke with a pump
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.drip-feed is not applicable

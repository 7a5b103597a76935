Feature: Gearbox and fork oil

  @oil.gearbox
  Rule: The gearbox oil is at its mark and clean

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil seen gearbox-oil-level at-the-mark
      And transmission/gearbox/oil seen gearbox-oil-look clean
      Then oil.gearbox is met at transmission/gearbox/oil
      And it holds until 2027-05-25

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil told gearbox-oil-level at-the-mark
      And transmission/gearbox/oil seen gearbox-oil-look clean
      Then oil.gearbox is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil seen gearbox-oil-level at-the-mark
      And transmission/gearbox/oil told gearbox-oil-look clean
      Then oil.gearbox is missing

    Scenario: a dry sump has a gearbox of its own
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      Then oil.gearbox is missing at transmission/gearbox/oil
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: what is wrong with the gearbox oil level
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil seen gearbox-oil-level <found>
      And transmission/gearbox/oil seen gearbox-oil-look clean
      Then oil.gearbox is fault at transmission/gearbox/oil

      Examples:
        | found     |
        | low       |
        | empty     |
        | over-full |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil seen gearbox-oil-level low
      And transmission/gearbox/oil seen gearbox-oil-look clean
      And tom wrote that transmission/gearbox/oil seen gearbox-oil-level at-the-mark
      Then oil.gearbox is fault

    Scenario: found so, and then filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil seen gearbox-oil-level low
      And transmission/gearbox/oil seen gearbox-oil-look clean
      And tom wrote that transmission/gearbox was filled
      Then oil.gearbox is stale

    Scenario Outline: what is wrong with the gearbox oil look
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil seen gearbox-oil-level at-the-mark
      And transmission/gearbox/oil seen gearbox-oil-look <found>
      Then oil.gearbox is fault at transmission/gearbox/oil

      Examples:
        | found         |
        | milky         |
        | burnt         |
        | metal-inside  |
        | petrol-inside |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.gearbox is missing at transmission/gearbox/oil

    Scenario: the gearbox oil level is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil seen gearbox-oil-look clean
      Then oil.gearbox is missing at transmission/gearbox/oil

    Scenario: the gearbox oil look is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil seen gearbox-oil-level at-the-mark
      Then oil.gearbox is missing at transmission/gearbox/oil

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil told gearbox-oil-level at-the-mark
      And transmission/gearbox/oil told gearbox-oil-look clean
      Then oil.gearbox is missing at transmission/gearbox/oil

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil seen gearbox-oil-level at-the-mark <ago> months ago
      And transmission/gearbox/oil seen gearbox-oil-look clean <ago> months ago
      Then oil.gearbox is <state> at transmission/gearbox/oil

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil seen gearbox-oil-level at-the-mark
      And transmission/gearbox/oil seen gearbox-oil-look clean
      And <point> was <work>
      Then oil.gearbox is stale at transmission/gearbox/oil

      Examples:
        | point                    | work      |
        | transmission/gearbox/oil | removed   |
        | transmission/gearbox/oil | drained   |
        | transmission/gearbox/oil | filled    |
        | transmission/gearbox/oil | topped-up |
        | transmission/clutch      | removed   |
        | machine                  | damaged   |

    Scenario: not asked of a wet sump, which shares its oil
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      Then oil.gearbox is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then oil.gearbox is not applicable

    Scenario: milky oil is drained, not topped up
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for first-start
      And nothing is written for oil.gearbox
      And transmission/gearbox/oil seen gearbox-oil-look milky
      Then oil.gearbox is fault
      And for first-start transmission/gearbox is to be drained first

  @oil.gearbox-age
  Rule: The gearbox oil is new enough

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil was filled <ago> months ago
      Then oil.gearbox-age is <state> at transmission/gearbox/oil

      # 24 months: common practice
      Examples:
        | ago | state |
        | 6   | met   |
        | 24  | met   |
        | 25  | fault |

    Scenario Outline: to the day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil was filled <ago> days ago
      Then oil.gearbox-age is <state> at transmission/gearbox/oil

      # 25 November 2024 to 25 November 2026 is 730 days
      Examples:
        | ago | state |
        | 730 | met   |
        | 731 | fault |

    Scenario: no record that it was done
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.gearbox-age is missing at transmission/gearbox/oil
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil was filled
      And <point> was <work>
      Then oil.gearbox-age is stale at transmission/gearbox/oil

      Examples:
        | point                    | work    |
        | transmission/gearbox/oil | removed |
        | transmission/gearbox     | drained |
        | transmission/gearbox/oil | drained |

    Scenario: not asked of a wet sump, which shares its oil
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by wet-sump
      Then oil.gearbox-age is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then oil.gearbox-age is not applicable

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil was filled 6 months ago
      Then oil.gearbox-age is met at transmission/gearbox/oil
      And it says "at most 24 months (common practice)"

  @oil.fork
  Rule: The fork oil is new enough

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/oil was filled <ago> months ago
      Then oil.fork is <state> at front-fork/oil

      # 24 months: common practice
      Examples:
        | ago | state |
        | 6   | met   |
        | 24  | met   |
        | 25  | fault |

    Scenario Outline: to the day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/oil was filled <ago> days ago
      Then oil.fork is <state> at front-fork/oil

      # 25 November 2024 to 25 November 2026 is 730 days
      Examples:
        | ago | state |
        | 730 | met   |
        | 731 | fault |

    Scenario: no record that it was done
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.fork is missing at front-fork/oil
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/oil was filled
      And <point> was <work>
      Then oil.fork is stale at front-fork/oil

      Examples:
        | point          | work     |
        | front-fork/oil | removed  |
        | front-fork     | drained  |
        | front-fork/oil | drained  |
        | front-fork     | opened   |
        | front-fork     | stripped |
        | front-fork     | repaired |
        | front-fork     | replaced |

    Scenario Outline: taken off and put back it still counts
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/oil was filled
      And front-fork was <work>
      Then oil.fork is met at front-fork/oil

      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: not asked of a girder fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      Then oil.fork is not applicable

    Scenario: not asked of a rigid front
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing rigid
      Then oil.fork is not applicable

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/oil was filled
      And front-fork was removed
      Then oil.fork is met at front-fork/oil
      And it says "at most 24 months (common practice)"

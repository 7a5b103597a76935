Feature: Ignition
  Plugs, points, and the moment of the spark.

  @engine.spark-plugs
  Rule: The plugs are the right ones, and sound

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/plugs seen spark-plugs right-and-sound
      Then engine.spark-plugs is met at ignition/plugs
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/plugs seen spark-plugs <found>
      Then engine.spark-plugs is fault at ignition/plugs

      Examples:
        | found            |
        | wrong-reach      |
        | wrong-heat-range |
        | worn             |
        | cracked          |
        | loose            |
        | thread-damaged   |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/plugs seen spark-plugs wrong-reach
      And tom wrote that ignition/plugs seen spark-plugs right-and-sound
      Then engine.spark-plugs is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.spark-plugs is missing at ignition/plugs
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/plugs told spark-plugs right-and-sound
      Then engine.spark-plugs is missing at ignition/plugs

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/plugs seen spark-plugs right-and-sound <ago> months ago
      Then engine.spark-plugs is <state> at ignition/plugs

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/plugs seen spark-plugs right-and-sound
      And <point> was <work>
      Then engine.spark-plugs is stale at ignition/plugs

      Examples:
        | point          | work      |
        | ignition/plugs | replaced  |
        | engine/head    | replaced  |
        | ignition/plugs | tightened |
        | ignition/plugs | loosened  |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/plugs seen spark-plugs right-and-sound
      And <point> was <work>
      Then engine.spark-plugs is met at ignition/plugs

      Examples:
        | point | work |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.spark-plugs is not applicable

  @engine.points-gap
  Rule: The contact points open as far as they should

    Scenario Outline: on both sides of the limits
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/points measured points-gap <gap>
      Then engine.points-gap is <state> at ignition/points

      # 0.30 mm to 0.50 mm: common practice
      Examples:
        | gap                | state |
        | 0.29 mm ± 0.02 mm  | fault |
        | 0.30 mm ± 0.02 mm  | doubt |
        | 0.32 mm ± 0.02 mm  | doubt |
        | 0.33 mm ± 0.02 mm  | met   |
        | 0.47 mm ± 0.02 mm  | met   |
        | 0.48 mm ± 0.02 mm  | doubt |
        | 0.50 mm ± 0.02 mm  | doubt |
        | 0.51 mm ± 0.02 mm  | fault |
        | 15 thou ± 0.8 thou | met   |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/points measured points-gap 0.29 mm ± 0.02 mm
      And tom wrote that ignition/points measured points-gap 0.33 mm ± 0.02 mm
      Then engine.points-gap is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/points tried points-gap 0.33 mm
      Then engine.points-gap is missing

    Scenario Outline: a magneto's points open less
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is magneto
      And ignition/points measured points-gap <gap>
      Then engine.points-gap is <state> at ignition/points

      # 0.25 mm to 0.40 mm: common practice
      Examples:
        | gap                | state |
        | 0.24 mm ± 0.02 mm  | fault |
        | 0.25 mm ± 0.02 mm  | doubt |
        | 0.28 mm ± 0.02 mm  | met   |
        | 12 thou ± 0.8 thou | met   |
        | 0.40 mm ± 0.02 mm  | doubt |
        | 0.41 mm ± 0.02 mm  | fault |

    Scenario: the maker sets another end
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says engine.points-gap at most 0.40 mm
      And ignition/points measured points-gap 0.45 mm ± 0.02 mm
      Then engine.points-gap is fault at ignition/points
      And the limit came from "Lark 250 workshop manual"

    Scenario: nobody looked in the manual
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no word from the maker on engine.points-gap
      And ignition/points measured points-gap 0.40 mm ± 0.02 mm
      Then engine.points-gap is missing at ignition/points

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.points-gap is missing at ignition/points
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: judged by eye
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/points seen points-gap 0.40 mm
      Then engine.points-gap is missing at ignition/points

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/points measured points-gap 0.40 mm ± 0.02 mm <ago> months ago
      Then engine.points-gap is <state> at ignition/points

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/points measured points-gap 0.40 mm ± 0.02 mm
      And <point> was <work>
      Then engine.points-gap is stale at ignition/points

      Examples:
        | point           | work     |
        | ignition/points | replaced |
        | ignition/points | adjusted |
        | ignition/points | cleaned  |
        | ignition        | repaired |

    Scenario: not asked of electronic ignition
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      Then engine.points-gap is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.points-gap is not applicable

    Scenario: too wide a gap is set
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for first-start
      And nothing is written for engine.points-gap
      And ignition/points measured points-gap 0.80 mm ± 0.01 mm
      Then engine.points-gap is fault
      And for first-start ignition/points is to be adjusted first

    Scenario: what it is held against, points gap
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/points measured points-gap 0.33 mm ± 0.02 mm
      Then engine.points-gap is met at ignition/points
      And it says "between 0.30 mm and 0.50 mm (common practice)"
      And it holds until 2027-11-25

  @engine.timing
  Rule: The points open at the maker's mark

    Scenario Outline: on both sides of the limits
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition measured timing-off-the-mark <angle>
      Then engine.timing is <state> at ignition

      # 2 ° either way: common practice
      Examples:
        | angle        | state |
        | -3 ° ± 1 °   | fault |
        | -2 ° ± 1 °   | doubt |
        | -1 ° ± 1 °   | doubt |
        | -0.5 ° ± 1 ° | met   |
        | 0 ° ± 1 °    | met   |
        | 0.5 ° ± 1 °  | met   |
        | 1 ° ± 1 °    | doubt |
        | 2 ° ± 1 °    | doubt |
        | 3 ° ± 1 °    | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition measured timing-off-the-mark -3 ° ± 1 °
      And tom wrote that ignition measured timing-off-the-mark -0.5° ± 1°
      Then engine.timing is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition tried timing-off-the-mark -0.5 °
      Then engine.timing is missing

    Scenario: a magneto as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is magneto
      And ignition measured timing-off-the-mark 0 ° ± 1 °
      Then engine.timing is met at ignition
      And it holds until 2027-11-25

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.timing is missing at ignition
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition told timing-off-the-mark 0 °
      Then engine.timing is missing at ignition

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition measured timing-off-the-mark 0 ° ± 1 ° <ago> months ago
      Then engine.timing is <state> at ignition

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition measured timing-off-the-mark 0 ° ± 1 °
      And <point> was <work>
      Then engine.timing is stale at ignition

      Examples:
        | point                         | work      |
        | ignition                      | removed   |
        | ignition                      | adjusted  |
        | ignition/points               | replaced  |
        | ignition/points               | adjusted  |
        | ignition/points               | cleaned   |
        | engine/head                   | removed   |
        | engine/top-end                | replaced  |
        | engine/crankcase              | opened    |
        | engine/valves                 | replaced  |
        | engine                        | stripped  |
        | electrics/charging/alternator | adjusted  |
        | electrics/charging/alternator | loosened  |
        | electrics/charging/alternator | tightened |
        | engine/cam-drive              | damaged   |

    Scenario Outline: what leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition measured timing-off-the-mark 0 ° ± 1 °
      And <point> was <work>
      Then engine.timing is met at ignition

      Examples:
        | point                   | work     |
        | engine                  | removed  |
        | engine                  | refitted |
        | ignition/plugs          | replaced |
        | ignition/plugs          | cleaned  |
        | ignition/plugs          | removed  |
        | ignition/plugs          | refitted |
        | ignition/cylinder-1/cap | removed  |
        | ignition/cylinder-1/cap | refitted |
        | ignition/cylinder-1/cap | replaced |
        | ignition/cylinder-1/cap | repaired |
        | ignition/cylinder-1/cap | stripped |
        | ignition/cylinder-1/cap | opened   |

    Scenario: not asked of electronic ignition
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      Then engine.timing is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.timing is not applicable

    Scenario: timing off the mark is set
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for first-start
      And nothing is written for engine.timing
      And ignition measured timing-off-the-mark 6 ° ± 0.5 °
      Then engine.timing is fault
      And for first-start ignition is to be adjusted first

  @engine.timing-running
  Rule: Electronic ignition sparks on the mark under the strobe

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition tried strobe-timing on-the-mark
      Then engine.timing-running is met at ignition
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition tried strobe-timing <found>
      Then engine.timing-running is fault at ignition

      Examples:
        | found      |
        | early      |
        | late       |
        | wanders    |
        | no-advance |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition tried strobe-timing early
      And tom wrote that ignition tried strobe-timing on-the-mark
      Then engine.timing-running is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition tried strobe-timing early
      Then engine.timing-running is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      Then engine.timing-running is missing at ignition
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition told strobe-timing on-the-mark
      Then engine.timing-running is missing at ignition

    Scenario: looking is not trying
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition seen strobe-timing on-the-mark
      Then engine.timing-running is missing at ignition

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition tried strobe-timing on-the-mark <ago> months ago
      Then engine.timing-running is <state> at ignition

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition tried strobe-timing on-the-mark
      And <point> was <work>
      Then engine.timing-running is stale at ignition

      Examples:
        | point            | work     |
        | ignition         | replaced |
        | ignition         | adjusted |
        | engine/head      | removed  |
        | engine/top-end   | replaced |
        | engine/crankcase | opened   |
        | engine/valves    | replaced |
        | engine           | stripped |

    Scenario Outline: what leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And ignition tried strobe-timing on-the-mark
      And <point> was <work>
      Then engine.timing-running is met at ignition

      Examples:
        | point                   | work     |
        | engine                  | removed  |
        | engine                  | refitted |
        | ignition/plugs          | replaced |
        | ignition/plugs          | removed  |
        | ignition/plugs          | refitted |
        | ignition/plugs          | cleaned  |
        | ignition/cylinder-1/cap | removed  |
        | ignition/cylinder-1/cap | refitted |
        | ignition/cylinder-1/cap | replaced |
        | ignition/cylinder-1/cap | repaired |
        | ignition/cylinder-1/cap | stripped |
        | ignition/cylinder-1/cap | opened   |

    Scenario: not asked of contact points
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.timing-running is not applicable

    Scenario: not asked of a magneto
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is magneto
      Then engine.timing-running is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.timing-running is not applicable

    Scenario: a late spark is set at the pick-up plate
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the ignition is electronic
      And a machine ready for road-test
      And nothing is written for engine.timing-running
      And ignition tried strobe-timing late
      Then engine.timing-running is fault
      And for road-test ignition is to be adjusted first

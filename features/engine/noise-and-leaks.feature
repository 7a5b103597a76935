Feature: Noise and leaks
  What the ear and a clean sheet of paper tell.

  @engine.knock
  Rule: The warm engine runs without knock

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise even
      Then engine.knock is met at engine

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise <found>
      Then engine.knock is fault at engine

      Examples:
        | found   |
        | knocks  |
        | slaps   |
        | rattles |
        | squeals |

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.knock is missing at engine
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine told running-noise even
      Then engine.knock is missing at engine

    Scenario: looking is not trying
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen running-noise even
      Then engine.knock is missing at engine

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise even <ago> days ago
      Then engine.knock is <state> at engine

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise even
      And <point> was <work>
      Then engine.knock is stale at engine

      Examples:
        | point             | work     |
        | engine/head       | removed  |
        | engine/top-end    | replaced |
        | engine/cylinder-1 | repaired |
        | engine            | stripped |
        | engine/valves     | refitted |
        | engine/valves     | adjusted |
        | engine/crankcase  | opened   |
        | ignition          | replaced |
        | ignition          | adjusted |
        | ignition/box      | damaged  |
        | ignition/coils    | damaged  |
        | ignition/points   | damaged  |
        | ignition/points   | adjusted |
        | engine            | refitted |
        | engine/cam-drive  | damaged  |

    Scenario: the seller tells of a knock
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine told running-noise knocks
      Then engine.knock is fault at engine

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.knock is not applicable

  @engine.leak-standing
  Rule: The standing engine is dry

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-standing <found>
      Then engine.leak-standing is met at engine

      Examples:
        | found  |
        | dry    |
        | misted |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-standing <found>
      Then engine.leak-standing is fault at engine

      Examples:
        | found         |
        | oil-drips     |
        | oil-runs      |
        | coolant-drips |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-standing oil-drips
      And tom wrote that engine seen leaks-standing dry
      Then engine.leak-standing is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.leak-standing is missing at engine
      And it holds first-start, indoor-run and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine told leaks-standing dry
      Then engine.leak-standing is missing at engine

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-standing dry <ago> days ago
      Then engine.leak-standing is <state> at engine

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-standing dry
      And <point> was <work>
      Then engine.leak-standing is stale at engine

      Examples:
        | point                         | work     |
        | engine/head                   | removed  |
        | engine/top-end                | replaced |
        | engine/cylinder-1             | repaired |
        | engine                        | stripped |
        | engine/crankcase              | opened   |
        | engine/valves                 | refitted |
        | engine/cooling                | opened   |
        | oil/lines                     | replaced |
        | oil/pump                      | removed  |
        | machine                       | damaged  |
        | oil/tank                      | removed  |
        | electrics/charging/alternator | damaged  |
        | engine/cooling                | drained  |
        | engine/cooling                | filled   |
        | oil/engine-oil                | drained  |
        | transmission/clutch           | damaged  |
        | transmission/gearbox          | drained  |
        | controls/kick-starter         | damaged  |

    Scenario: a ride does not undo it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-standing dry
      And machine was ridden
      Then engine.leak-standing is met at engine

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.leak-standing is not applicable

  @engine.leak-warm
  Rule: The engine is dry after it has run warm

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-warm <found>
      Then engine.leak-warm is met at engine

      Examples:
        | found  |
        | dry    |
        | misted |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-warm <found>
      Then engine.leak-warm is fault at engine

      Examples:
        | found         |
        | oil-drips     |
        | oil-runs      |
        | coolant-drips |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-warm oil-drips
      And tom wrote that engine seen leaks-warm dry
      Then engine.leak-warm is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-warm oil-runs
      Then engine.leak-warm is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.leak-warm is missing at engine
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine told leaks-warm dry
      Then engine.leak-warm is missing at engine

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-warm dry <ago> days ago
      Then engine.leak-warm is <state> at engine

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-warm dry
      And <point> was <work>
      Then engine.leak-warm is stale at engine

      Examples:
        | point                         | work     |
        | engine/head                   | removed  |
        | engine/top-end                | replaced |
        | engine/cylinder-1             | repaired |
        | engine                        | stripped |
        | engine/crankcase              | opened   |
        | engine/valves                 | refitted |
        | engine/cooling                | opened   |
        | oil/lines                     | replaced |
        | oil/pump                      | removed  |
        | machine                       | damaged  |
        | machine                       | ridden   |
        | oil/tank                      | removed  |
        | electrics/charging/alternator | damaged  |
        | engine/cooling                | drained  |
        | engine/cooling                | filled   |
        | oil/engine-oil                | drained  |
        | transmission/clutch           | damaged  |
        | transmission/gearbox          | drained  |
        | controls/kick-starter         | damaged  |

    Scenario: dry before it ran is another thing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen leaks-standing dry
      Then engine.leak-warm is missing at engine

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.leak-warm is not applicable

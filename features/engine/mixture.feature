Feature: Mixture and idle
  Filter, joints behind the carburettor, and carburettors that pull together.

  @engine.air-filter
  Rule: The air filter is clean and whole

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake/air-filter seen air-filter <found>
      Then engine.air-filter is met at engine/intake/air-filter

      Examples:
        | found            |
        | clean-and-sealed |
        | none-by-design   |

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake/air-filter seen air-filter clean-and-sealed
      Then engine.air-filter is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake/air-filter seen air-filter <found>
      Then engine.air-filter is fault at engine/intake/air-filter

      Examples:
        | found      |
        | dirty      |
        | torn       |
        | crumbling  |
        | not-sealed |
        | missing    |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake/air-filter seen air-filter dirty
      And tom wrote that engine/intake/air-filter seen air-filter clean-and-sealed
      Then engine.air-filter is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.air-filter is missing at engine/intake/air-filter
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake/air-filter told air-filter clean-and-sealed
      Then engine.air-filter is missing at engine/intake/air-filter

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake/air-filter seen air-filter clean-and-sealed <ago> months ago
      Then engine.air-filter is <state> at engine/intake/air-filter

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake/air-filter seen air-filter clean-and-sealed
      And <point> was <work>
      Then engine.air-filter is stale at engine/intake/air-filter

      Examples:
        | point                    | work     |
        | engine/intake/air-filter | replaced |
        | engine/intake            | removed  |
        | fuel/carburettors        | refitted |
        | engine                   | refitted |
        | engine/intake/air-filter | cleaned  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake/air-filter seen air-filter clean-and-sealed
      And <point> was <work>
      Then engine.air-filter is met at engine/intake/air-filter

      Examples:
        | point  | work    |
        | engine | cleaned |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.air-filter is not applicable

  @engine.intake-seal
  Rule: No air gets in behind the carburettor

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake seen intake-joints whole-and-tight
      Then engine.intake-seal is met at engine/intake
      And it holds until 2027-05-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake seen intake-joints <found>
      Then engine.intake-seal is fault at engine/intake

      Examples:
        | found          |
        | cracked        |
        | hardened       |
        | loose          |
        | gasket-missing |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake seen intake-joints cracked
      And tom wrote that engine/intake seen intake-joints whole-and-tight
      Then engine.intake-seal is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.intake-seal is missing at engine/intake
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake told intake-joints whole-and-tight
      Then engine.intake-seal is missing at engine/intake

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake seen intake-joints whole-and-tight <ago> months ago
      Then engine.intake-seal is <state> at engine/intake

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake seen intake-joints whole-and-tight
      And <point> was <work>
      Then engine.intake-seal is stale at engine/intake

      Examples:
        | point             | work      |
        | engine/top-end    | replaced  |
        | engine/cylinder-1 | repaired  |
        | engine            | stripped  |
        | engine/intake     | replaced  |
        | fuel/carburettors | removed   |
        | engine/mounts     | damaged   |
        | engine/mounts     | adjusted  |
        | fuel/carburettors | loosened  |
        | fuel/carburettors | tightened |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.intake-seal is not applicable

    Scenario Outline: work that leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/intake seen intake-joints whole-and-tight
      And engine/intake/air-filter was <work>
      Then engine.intake-seal is met

      Examples:
        | work     |
        | removed  |
        | refitted |

  @engine.slides-together
  Rule: All throttles lift together

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors tried throttle-lift together
      Then engine.slides-together is met at fuel/carburettors
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors tried throttle-lift <found>
      Then engine.slides-together is fault at fuel/carburettors

      Examples:
        | found      |
        | apart      |
        | one-sticks |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors tried throttle-lift apart
      And tom wrote that fuel/carburettors tried throttle-lift together
      Then engine.slides-together is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors tried throttle-lift one-sticks
      Then engine.slides-together is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      Then engine.slides-together is missing at fuel/carburettors
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors told throttle-lift together
      Then engine.slides-together is missing at fuel/carburettors

    Scenario: looking is not trying
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors seen throttle-lift together
      Then engine.slides-together is missing at fuel/carburettors

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors tried throttle-lift together <ago> months ago
      Then engine.slides-together is <state> at fuel/carburettors

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors tried throttle-lift together
      And <point> was <work>
      Then engine.slides-together is stale at fuel/carburettors

      Examples:
        | point             | work     |
        | fuel/carburettors | stripped |
        | fuel/carburettors | adjusted |
        | controls/throttle | replaced |
        | controls/throttle | adjusted |

    Scenario: a four-stroke as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors tried throttle-lift together
      Then engine.slides-together is met at fuel/carburettors

    Scenario: not asked of one carburettor
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      Then engine.slides-together is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.slides-together is not applicable

    Scenario: throttles that lift apart are set
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has carburettors 2
      And a machine ready for road-test
      And nothing is written for engine.slides-together
      And fuel/carburettors tried throttle-lift apart
      Then engine.slides-together is fault
      And for road-test fuel/carburettors is to be adjusted first

  @engine.carburettors-synchronised
  Rule: The carburettors of a four-stroke pull alike

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors measured vacuum-difference <difference>
      Then engine.carburettors-synchronised is <state> at fuel/carburettors

      # 10 mbar: common practice
      Examples:
        | difference       | state |
        | 0 mbar ± 2 mbar  | met   |
        | 7 mbar ± 2 mbar  | met   |
        | 8 mbar ± 2 mbar  | doubt |
        | 10 mbar ± 2 mbar | doubt |
        | 11 mbar ± 2 mbar | fault |
        | 1 kPa ± 0.2 kPa  | doubt |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors measured vacuum-difference 11 mbar ± 2 mbar
      And tom wrote that fuel/carburettors measured vacuum-difference 0 hPa ± 2 hPa
      Then engine.carburettors-synchronised is fault

    Scenario: the maker allows more
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And the maker says engine.carburettor-balance at most 27 mbar
      And fuel/carburettors measured vacuum-difference 15 mbar ± 2 mbar
      Then engine.carburettors-synchronised is met at fuel/carburettors
      And the limit came from "Lark 250 workshop manual"
      And it holds until 2027-11-25

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      Then engine.carburettors-synchronised is missing at fuel/carburettors
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: set by ear
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors tried vacuum-difference 0 mbar
      Then engine.carburettors-synchronised is missing at fuel/carburettors

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors measured vacuum-difference 5 mbar ± 2 mbar <ago> months ago
      Then engine.carburettors-synchronised is <state> at fuel/carburettors

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And fuel/carburettors measured vacuum-difference 5 mbar ± 2 mbar
      And <point> was <work>
      Then engine.carburettors-synchronised is stale at fuel/carburettors

      Examples:
        | point             | work     |
        | fuel/carburettors | stripped |
        | fuel/carburettors | adjusted |
        | controls/throttle | replaced |
        | controls/throttle | adjusted |
        | fuel/carburettors | cleaned  |
        | engine/intake     | replaced |
        | engine/head       | removed  |
        | engine/top-end    | replaced |
        | engine/cylinder-1 | repaired |
        | engine            | stripped |
        | engine/valves     | refitted |
        | engine/valves     | adjusted |
        | ignition          | adjusted |

    Scenario: not asked of one carburettor
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      Then engine.carburettors-synchronised is not applicable

    Scenario: not asked of a two-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      Then engine.carburettors-synchronised is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.carburettors-synchronised is not applicable

    Scenario: carburettors that pull unlike are balanced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And a machine ready for road-test
      And nothing is written for engine.carburettors-synchronised
      And fuel/carburettors measured vacuum-difference 40 hPa ± 1 hPa
      Then engine.carburettors-synchronised is fault
      And for road-test fuel/carburettors is to be adjusted first

  @engine.idle
  Rule: The warm engine idles steadily

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried idle steady
      Then engine.idle is met at engine

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried idle <found>
      Then engine.idle is fault at engine

      Examples:
        | found    |
        | hunts    |
        | stalls   |
        | races    |
        | hangs-up |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried idle hunts
      And tom wrote that engine tried idle steady
      Then engine.idle is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried idle races
      Then engine.idle is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.idle is missing at engine
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine told idle steady
      Then engine.idle is missing at engine

    Scenario: looking is not trying
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen idle steady
      Then engine.idle is missing at engine

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried idle steady <ago> days ago
      Then engine.idle is <state> at engine

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried idle steady
      And <point> was <work>
      Then engine.idle is stale at engine

      Examples:
        | point                    | work     |
        | fuel/carburettors        | stripped |
        | fuel/carburettors        | adjusted |
        | controls/throttle        | replaced |
        | controls/throttle        | adjusted |
        | fuel/carburettors        | cleaned  |
        | ignition                 | replaced |
        | ignition                 | adjusted |
        | ignition/points          | adjusted |
        | engine/intake            | refitted |
        | engine/crankcase         | opened   |
        | engine                   | removed  |
        | engine/head              | removed  |
        | engine/top-end           | replaced |
        | engine/cylinder-1        | repaired |
        | engine                   | stripped |
        | engine/valves            | refitted |
        | engine/valves            | adjusted |
        | engine/intake/air-filter | cleaned  |
        | exhaust                  | damaged  |
        | engine/cam-drive         | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried idle steady
      And <point> was <work>
      Then engine.idle is met at engine

      Examples:
        | point  | work    |
        | engine | cleaned |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.idle is not applicable

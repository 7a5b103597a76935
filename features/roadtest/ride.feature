Feature: The ride
  A route that somebody knows, a way back, and enough aboard to get round it.

  @roadtest.route
  Rule: The route is agreed, and somebody waits

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen route agreed
      And ride seen somebody-waiting knows-route-and-hour
      Then roadtest.route is met

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told route agreed
      And ride seen somebody-waiting knows-route-and-hour
      Then roadtest.route is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen route agreed
      And ride told somebody-waiting knows-route-and-hour
      Then roadtest.route is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen route <route>
      And ride seen somebody-waiting <who>
      Then roadtest.route is fault

      Examples:
        | route       | who                  |
        | none        | knows-route-and-hour |
        | busy        | knows-route-and-hour |
        | no-way-back | knows-route-and-hour |
        | agreed      | nobody               |

    Scenario: a route that nobody else was told of
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen route agreed
      Then roadtest.route is missing

    Scenario: somebody waits, and where is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen somebody-waiting knows-route-and-hour
      Then roadtest.route is missing

    Scenario: nothing was agreed
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.route is missing
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told route agreed
      And ride told somebody-waiting knows-route-and-hour
      Then roadtest.route is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen route agreed <ago> days ago
      And ride seen somebody-waiting knows-route-and-hour <ago> days ago
      Then roadtest.route is <state>

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

  @roadtest.recovery
  Rule: Machine and rider can be fetched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen recovery arranged
      Then roadtest.recovery is met at ride

    Scenario: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen recovery none
      Then roadtest.recovery is fault at ride

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.recovery is missing at ride
      And it holds road-test and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told recovery arranged
      Then roadtest.recovery is missing at ride

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen recovery arranged <ago> days ago
      Then roadtest.recovery is <state> at ride

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

  @roadtest.fuel-enough
  Rule: There is fuel for the route and a reserve

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen fuel-for-the-ride enough-and-reserve
      Then roadtest.fuel-enough is met at fuel/tank

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen fuel-for-the-ride <found>
      Then roadtest.fuel-enough is fault at fuel/tank

      Examples:
        | found        |
        | too-little   |
        | unknown-fuel |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen fuel-for-the-ride too-little
      And tom wrote that fuel/tank seen fuel-for-the-ride enough-and-reserve
      Then roadtest.fuel-enough is fault

    Scenario: found so, and then filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen fuel-for-the-ride too-little
      And tom wrote that fuel/tank was filled
      Then roadtest.fuel-enough is stale

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen fuel-for-the-ride unknown-fuel
      Then roadtest.fuel-enough is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.fuel-enough is missing at fuel/tank
      And it holds road-test and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank told fuel-for-the-ride enough-and-reserve
      Then roadtest.fuel-enough is missing at fuel/tank

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen fuel-for-the-ride enough-and-reserve <ago> days ago
      Then roadtest.fuel-enough is <state> at fuel/tank

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen fuel-for-the-ride enough-and-reserve
      And <point> was <work>
      Then roadtest.fuel-enough is stale at fuel/tank

      Examples:
        | point       | work      |
        | fuel/tank   | drained   |
        | fuel        | opened    |
        | fuel/petrol | drained   |
        | fuel/tank   | filled    |
        | fuel/tank   | topped-up |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen fuel-for-the-ride enough-and-reserve
      And <point> was <work>
      Then roadtest.fuel-enough is met at fuel/tank

      Examples:
        | point     | work     |
        | fuel/tank | removed  |
        | fuel/tank | refitted |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then roadtest.fuel-enough is not applicable

    Scenario: fuel nobody knows is drained, not diluted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for roadtest.fuel-enough
      And fuel/tank seen fuel-for-the-ride unknown-fuel
      Then roadtest.fuel-enough is fault
      And for road-test fuel/tank is to be drained first

  @roadtest.charge-enough
  Rule: There is charge for the route and a reserve

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And electrics/battery seen charge-for-the-ride enough-and-reserve
      Then roadtest.charge-enough is met at electrics/battery

    Scenario: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And electrics/battery seen charge-for-the-ride too-little
      Then roadtest.charge-enough is fault at electrics/battery

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And electrics/battery seen charge-for-the-ride too-little
      And tom wrote that electrics/battery seen charge-for-the-ride enough-and-reserve
      Then roadtest.charge-enough is fault

    Scenario: found so, and then charged
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And electrics/battery seen charge-for-the-ride too-little
      And tom wrote that electrics/battery was charged
      Then roadtest.charge-enough is stale

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then roadtest.charge-enough is missing at electrics/battery
      And it holds road-test and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And electrics/battery told charge-for-the-ride enough-and-reserve
      Then roadtest.charge-enough is missing at electrics/battery

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And electrics/battery seen charge-for-the-ride enough-and-reserve <ago> days ago
      Then roadtest.charge-enough is <state> at electrics/battery

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And electrics/battery seen charge-for-the-ride enough-and-reserve
      And <point> was <work>
      Then roadtest.charge-enough is stale at electrics/battery

      Examples:
        | point             | work     |
        | electrics/battery | replaced |
        | electrics         | opened   |

    Scenario: not asked of a machine with a combustion engine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.charge-enough is not applicable

  @roadtest.engine-warm
  Rule: The engine was warmed up today and runs cleanly

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried warm-up runs-cleanly
      Then roadtest.engine-warm is met at engine

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen warm-up runs-cleanly
      Then roadtest.engine-warm is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried warm-up <found>
      Then roadtest.engine-warm is fault at engine

      Examples:
        | found         |
        | stumbles      |
        | will-not-idle |
        | overheats     |
        | knocks        |
        | leaks         |

    Scenario: found so, and then filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried warm-up stumbles
      And tom wrote that oil was filled
      Then roadtest.engine-warm is stale

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried warm-up leaks
      Then roadtest.engine-warm is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.engine-warm is missing at engine
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: the owner says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine told warm-up runs-cleanly
      Then roadtest.engine-warm is missing at engine

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried warm-up runs-cleanly <ago> days ago
      Then roadtest.engine-warm is <state> at engine

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried warm-up runs-cleanly
      And <point> was <work>
      Then roadtest.engine-warm is stale at engine

      Examples:
        | point                    | work     |
        | engine                   | opened   |
        | engine                   | repaired |
        | fuel                     | repaired |
        | ignition                 | replaced |
        | controls/throttle        | replaced |
        | engine/crankcase         | damaged  |
        | engine/head              | damaged  |
        | engine/intake            | damaged  |
        | engine/intake/air-filter | damaged  |
        | engine/top-end           | damaged  |
        | engine/valves            | damaged  |
        | engine/cylinder-1        | damaged  |
        | ignition                 | adjusted |
        | ignition/box             | damaged  |
        | ignition/coils           | damaged  |
        | ignition/points          | damaged  |
        | fuel/carburettors        | damaged  |
        | fuel/carburettors        | adjusted |
        | fuel/carburettors        | cleaned  |
        | engine/cam-drive         | damaged  |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then roadtest.engine-warm is not applicable

    Scenario: an engine that stumbles: the carburettors are looked to first
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for roadtest.engine-warm
      And engine tried warm-up stumbles
      Then roadtest.engine-warm is fault
      And for road-test fuel/carburettors is to be adjusted first

Feature: Tap, float and tank
  What holds petrol back, and what lies in it.

  @fuel.tap-shuts
  Rule: The tap holds the petrol back

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap measured watched-for 11 min ± 0.1 min
      And fuel/tap tried tap-shut dry
      Then fuel.tap-shuts is met at fuel/tap
      And it holds until 2027-05-25

    Scenario: worked on while it was watched
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap measured watched-for 11 min ± 0.1 min
      And fuel/tap tried tap-shut dry
      And tom wrote that fuel/tap was refitted 92 minutes ago
      Then fuel.tap-shuts is stale

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap tried watched-for 11 min
      And fuel/tap tried tap-shut dry
      Then fuel.tap-shuts is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap measured watched-for 11 min ± 0.1 min
      And fuel/tap seen tap-shut dry
      Then fuel.tap-shuts is missing

    Scenario: watched again for longer
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap measured watched-for 11 min ± 0.1 min
      And fuel/tap tried tap-shut dry
      And fuel/tap measured watched-for 15 min ± 0.1 min
      And fuel/tap tried tap-shut dry
      Then fuel.tap-shuts is met at fuel/tap

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap measured watched-for <time>
      And fuel/tap tried tap-shut dry
      Then fuel.tap-shuts is <state> at fuel/tap

      # 10 minutes: common practice
      Examples:
        | time               | state |
        | 9.5 min ± 0.1 min  | fault |
        | 10 min ± 0.1 min   | doubt |
        | 10.1 min ± 0.1 min | doubt |
        | 10.2 min ± 0.1 min | met   |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap measured watched-for 9.5 min ± 0.1 min
      And fuel/tap tried tap-shut dry
      And tom wrote that fuel/tap measured watched-for 11 min ± 0.1 min
      Then fuel.tap-shuts is fault

    Scenario: a vacuum tap is tried too
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has fuel-tap vacuum
      And fuel/tap measured watched-for 11 min ± 0.1 min
      And fuel/tap tried tap-shut drips
      Then fuel.tap-shuts is fault at fuel/tap
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap measured watched-for 11 min ± 0.1 min
      And fuel/tap tried tap-shut <found>
      Then fuel.tap-shuts is fault at fuel/tap

      Examples:
        | found |
        | drips |
        | runs  |

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.tap-shuts is missing at fuel/tap
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the watched for is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap tried tap-shut dry
      Then fuel.tap-shuts is missing at fuel/tap

    Scenario: the tap shut is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap measured watched-for 11 min ± 0.1 min
      Then fuel.tap-shuts is missing at fuel/tap

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap measured watched-for 11 min ± 0.1 min
      And fuel/tap told tap-shut dry
      Then fuel.tap-shuts is missing at fuel/tap

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap measured watched-for 11 min ± 0.1 min <ago> months ago
      And fuel/tap tried tap-shut dry <ago> months ago
      Then fuel.tap-shuts is <state> at fuel/tap

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap measured watched-for 11 min ± 0.1 min
      And fuel/tap tried tap-shut dry
      And <point> was <work>
      Then fuel.tap-shuts is stale at fuel/tap

      Examples:
        | point     | work     |
        | fuel/tap  | removed  |
        | fuel/tap  | cleaned  |
        | fuel/tap  | adjusted |
        | machine   | damaged  |
        | fuel/tank | replaced |
        | fuel/tank | repaired |

    Scenario: not asked without a tap
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has fuel-tap none
      Then fuel.tap-shuts is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.tap-shuts is not applicable

  @fuel.tap-positions
  Rule: The tap moves and flows

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap tried tap-positions all-found-and-flowing
      Then fuel.tap-positions is met at fuel/tap
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap seen tap-positions all-found-and-flowing
      Then fuel.tap-positions is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap tried tap-positions <found>
      Then fuel.tap-positions is fault at fuel/tap

      Examples:
        | found      |
        | stuck      |
        | loose      |
        | no-flow    |
        | no-reserve |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap tried tap-positions stuck
      And tom wrote that fuel/tap tried tap-positions all-found-and-flowing
      Then fuel.tap-positions is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap tried tap-positions stuck
      Then fuel.tap-positions is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.tap-positions is missing at fuel/tap
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap told tap-positions all-found-and-flowing
      Then fuel.tap-positions is missing at fuel/tap

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap tried tap-positions all-found-and-flowing <ago> months ago
      Then fuel.tap-positions is <state> at fuel/tap

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap tried tap-positions all-found-and-flowing
      And <point> was <work>
      Then fuel.tap-positions is stale at fuel/tap

      Examples:
        | point     | work     |
        | fuel/tap  | removed  |
        | fuel/tap  | cleaned  |
        | fuel/tap  | adjusted |
        | fuel/tank | replaced |
        | fuel/tank | repaired |

    Scenario: not asked without a tap
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has fuel-tap none
      Then fuel.tap-positions is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.tap-positions is not applicable

  @fuel.float
  Rule: The float needles hold

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for 11 min ± 0.1 min
      And fuel/carburettors tried flooding none
      Then fuel.float is met at fuel/carburettors

    Scenario: worked on while it was watched
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for 11 min ± 0.1 min
      And fuel/carburettors tried flooding none
      And tom wrote that fuel/carburettors was refitted 92 minutes ago
      Then fuel.float is stale

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors tried watched-for 11 min
      And fuel/carburettors tried flooding none
      Then fuel.float is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for 11 min ± 0.1 min
      And fuel/carburettors seen flooding none
      Then fuel.float is missing

    Scenario: watched again for longer
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for 11 min ± 0.1 min
      And fuel/carburettors tried flooding none
      And fuel/carburettors measured watched-for 15 min ± 0.1 min
      And fuel/carburettors tried flooding none
      Then fuel.float is met at fuel/carburettors

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for <time>
      And fuel/carburettors tried flooding none
      Then fuel.float is <state> at fuel/carburettors

      # 10 minutes: common practice
      Examples:
        | time               | state |
        | 9.5 min ± 0.1 min  | fault |
        | 10 min ± 0.1 min   | doubt |
        | 10.1 min ± 0.1 min | doubt |
        | 10.2 min ± 0.1 min | met   |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for 9.5 min ± 0.1 min
      And fuel/carburettors tried flooding none
      And tom wrote that fuel/carburettors measured watched-for 11 min ± 0.1 min
      Then fuel.float is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for 9.5 min ± 0.1 min
      And fuel/carburettors tried flooding none
      Then fuel.float is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for 11 min ± 0.1 min
      And fuel/carburettors tried flooding <found>
      Then fuel.float is fault at fuel/carburettors

      Examples:
        | found        |
        | overflows    |
        | gasket-weeps |
        | sticks       |

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.float is missing at fuel/carburettors
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the watched for is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors tried flooding none
      Then fuel.float is missing at fuel/carburettors

    Scenario: the flooding is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for 11 min ± 0.1 min
      Then fuel.float is missing at fuel/carburettors

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for 11 min ± 0.1 min
      And fuel/carburettors told flooding none
      Then fuel.float is missing at fuel/carburettors

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for 11 min ± 0.1 min <ago> days ago
      And fuel/carburettors tried flooding none <ago> days ago
      Then fuel.float is <state> at fuel/carburettors

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors measured watched-for 11 min ± 0.1 min
      And fuel/carburettors tried flooding none
      And <point> was <work>
      Then fuel.float is stale at fuel/carburettors

      Examples:
        | point             | work     |
        | fuel/carburettors | removed  |
        | fuel/carburettors | cleaned  |
        | fuel/carburettors | adjusted |
        | machine           | damaged  |

    Scenario: not asked without a carburettor
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has carburettors 0
      Then fuel.float is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.float is not applicable

  @fuel.carburettors-clean
  Rule: The carburettors are clean inside

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors seen carburettor-inside clean
      Then fuel.carburettors-clean is met at fuel/carburettors
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors seen carburettor-inside <found>
      Then fuel.carburettors-clean is fault at fuel/carburettors

      Examples:
        | found    |
        | gummed   |
        | corroded |
        | water    |
        | dirt     |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors seen carburettor-inside gummed
      And tom wrote that fuel/carburettors seen carburettor-inside clean
      Then fuel.carburettors-clean is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.carburettors-clean is missing at fuel/carburettors
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors told carburettor-inside clean
      Then fuel.carburettors-clean is missing at fuel/carburettors

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors seen carburettor-inside clean <ago> months ago
      Then fuel.carburettors-clean is <state> at fuel/carburettors

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors seen carburettor-inside clean
      And <point> was <work>
      Then fuel.carburettors-clean is stale at fuel/carburettors

      Examples:
        | point             | work     |
        | fuel/carburettors | replaced |
        | fuel/tank         | replaced |
        | fuel/tank         | repaired |
        | fuel/carburettors | cleaned  |
        | fuel/carburettors | opened   |

    Scenario Outline: taken off and put back it still counts
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/carburettors seen carburettor-inside clean
      And fuel/carburettors was <work>
      Then fuel.carburettors-clean is met at fuel/carburettors

      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: not asked without a carburettor
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has carburettors 0
      Then fuel.carburettors-clean is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.carburettors-clean is not applicable

  @fuel.tank-inside
  Rule: The tank is clean inside

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen tank-inside clean
      Then fuel.tank-inside is met at fuel/tank
      And it holds until 2027-11-25

    Scenario: lined, and the lining fast
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen tank-inside lined-and-fast
      Then fuel.tank-inside is met at fuel/tank

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen tank-inside <found>
      Then fuel.tank-inside is fault at fuel/tank

      Examples:
        | found        |
        | rusty        |
        | water        |
        | sludge       |
        | lining-loose |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen tank-inside rusty
      And tom wrote that fuel/tank seen tank-inside clean
      Then fuel.tank-inside is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.tank-inside is missing at fuel/tank
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank told tank-inside clean
      Then fuel.tank-inside is missing at fuel/tank

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen tank-inside clean <ago> months ago
      Then fuel.tank-inside is <state> at fuel/tank

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen tank-inside clean
      And <point> was <work>
      Then fuel.tank-inside is stale at fuel/tank

      Examples:
        | point     | work     |
        | fuel/tank | replaced |
        | machine   | damaged  |
        | fuel/tank | cleaned  |

    Scenario Outline: taken off and put back it still counts
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen tank-inside clean
      And fuel/tank was <work>
      Then fuel.tank-inside is met at fuel/tank

      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.tank-inside is not applicable

  @fuel.cap
  Rule: The cap seals and breathes

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap tried cap-seal dry-when-tipped
      And fuel/cap tried cap-vent open
      Then fuel.cap is met at fuel/cap
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap seen cap-seal dry-when-tipped
      And fuel/cap tried cap-vent open
      Then fuel.cap is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap tried cap-seal dry-when-tipped
      And fuel/cap seen cap-vent open
      Then fuel.cap is missing

    Scenario Outline: what is wrong with the cap seal
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap tried cap-seal <found>
      And fuel/cap tried cap-vent open
      Then fuel.cap is fault at fuel/cap

      Examples:
        | found          |
        | weeps          |
        | will-not-close |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap tried cap-seal weeps
      And fuel/cap tried cap-vent open
      And tom wrote that fuel/cap tried cap-seal dry-when-tipped
      Then fuel.cap is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap tried cap-seal weeps
      And fuel/cap tried cap-vent open
      Then fuel.cap is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario: what is wrong with the cap vent
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap tried cap-seal dry-when-tipped
      And fuel/cap tried cap-vent blocked
      Then fuel.cap is fault at fuel/cap

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.cap is missing at fuel/cap
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the cap seal is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap tried cap-vent open
      Then fuel.cap is missing at fuel/cap

    Scenario: the cap vent is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap tried cap-seal dry-when-tipped
      Then fuel.cap is missing at fuel/cap

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap told cap-seal dry-when-tipped
      And fuel/cap told cap-vent open
      Then fuel.cap is missing at fuel/cap

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap tried cap-seal dry-when-tipped <ago> months ago
      And fuel/cap tried cap-vent open <ago> months ago
      Then fuel.cap is <state> at fuel/cap

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/cap tried cap-seal dry-when-tipped
      And fuel/cap tried cap-vent open
      And <point> was <work>
      Then fuel.cap is stale at fuel/cap

      Examples:
        | point     | work      |
        | fuel/cap  | removed   |
        | fuel/tank | replaced  |
        | fuel/tank | repaired  |
        | machine   | damaged   |
        | fuel      | filled    |
        | fuel      | topped-up |
        | fuel      | drained   |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.cap is not applicable

  @fuel.filter
  Rule: The filter is clean and of the right kind

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/filter seen fuel-filter clean-gravity-type
      Then fuel.filter is met at fuel/filter
      And it holds until 2027-11-25

    Scenario: a clean strainer alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/filter seen fuel-filter clean-strainer
      Then fuel.filter is met at fuel/filter

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/filter seen fuel-filter <found>
      Then fuel.filter is fault at fuel/filter

      Examples:
        | found           |
        | dirty           |
        | wrong-way-round |
        | injection-type  |
        | missing         |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/filter seen fuel-filter dirty
      And tom wrote that fuel/filter seen fuel-filter clean-gravity-type
      Then fuel.filter is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.filter is missing at fuel/filter
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/filter told fuel-filter clean-gravity-type
      Then fuel.filter is missing at fuel/filter

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/filter seen fuel-filter clean-gravity-type <ago> months ago
      Then fuel.filter is <state> at fuel/filter

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/filter seen fuel-filter clean-gravity-type
      And <point> was <work>
      Then fuel.filter is stale at fuel/filter

      Examples:
        | point       | work     |
        | fuel/tap    | refitted |
        | fuel/hose   | replaced |
        | fuel/filter | cleaned  |
        | fuel/tank   | replaced |
        | fuel/tank   | repaired |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/filter seen fuel-filter clean-gravity-type
      And <point> was <work>
      Then fuel.filter is met at fuel/filter

      Examples:
        | point       | work    |
        | fuel/filter | removed |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.filter is not applicable

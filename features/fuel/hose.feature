Feature: Fuel hose
  The rubber between tank and carburettor: its age, its state, its grade and its way.

  @fuel.hose-age
  Rule: No fuel hose is too old

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen date-mark 2024-05
      Then fuel.hose-age is met at fuel/hose

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen date-mark 2024-05
      And there was the defect "not as it should be"
      And tom wrote that fuel/hose seen date-mark 2024-05
      Then fuel.hose-age is fault

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen date-mark <mark>
      Then fuel.hose-age is <state> at fuel/hose

      # 4 years: common practice; on 25 November 2026 a hose of 25 November 2022 is just 4 years old,
      # and a month or year counts from its first day
      Examples:
        | mark       | state |
        | 2022-12    | met   |
        | 2022-11-25 | met   |
        | 2022-11-24 | fault |
        | 2022-11    | fault |
        | 1974       | fault |

    Scenario: it lapses by itself
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2028-05-11
      And fuel/hose seen date-mark 2024-05-10 3 years ago
      Then fuel.hose-age is fault at fuel/hose
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.hose-age is missing at fuel/hose
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose told date-mark 2024-05
      Then fuel.hose-age is missing at fuel/hose

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen date-mark 2024-05
      And <point> was <work>
      Then fuel.hose-age is met at fuel/hose

      Examples:
        | point     | work    |
        | fuel/hose | removed |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.hose-age is not applicable

  @fuel.hose-condition
  Rule: Every fuel hose is supple and whole

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose tried fuel-hose supple-and-whole
      Then fuel.hose-condition is met at fuel/hose
      And it holds until 2027-05-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen fuel-hose supple-and-whole
      Then fuel.hose-condition is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose tried fuel-hose <found>
      Then fuel.hose-condition is fault at fuel/hose

      Examples:
        | found    |
        | hard     |
        | cracked  |
        | swollen  |
        | softened |
        | weeping  |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose tried fuel-hose hard
      And tom wrote that fuel/hose tried fuel-hose supple-and-whole
      Then fuel.hose-condition is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose tried fuel-hose hard
      Then fuel.hose-condition is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.hose-condition is missing at fuel/hose
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose told fuel-hose supple-and-whole
      Then fuel.hose-condition is missing at fuel/hose

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose tried fuel-hose supple-and-whole <ago> months ago
      Then fuel.hose-condition is <state> at fuel/hose

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose tried fuel-hose supple-and-whole
      And <point> was <work>
      Then fuel.hose-condition is stale at fuel/hose

      Examples:
        | point   | work    |
        | machine | damaged |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose tried fuel-hose supple-and-whole
      And <point> was <work>
      Then fuel.hose-condition is met at fuel/hose

      Examples:
        | point     | work    |
        | fuel/hose | removed |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.hose-condition is not applicable

  @fuel.hose-grade
  Rule: The hose is made for the petrol in the tank

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol without
      And fuel/hose seen fuel-hose-marking ethanol-proof
      Then fuel.hose-grade is met at fuel/hose
      And it does not lapse by itself

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol told ethanol without
      And fuel/hose seen fuel-hose-marking ethanol-proof
      Then fuel.hose-grade is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol without
      And fuel/hose told fuel-hose-marking ethanol-proof
      Then fuel.hose-grade is missing

    Scenario: a hose for plain petrol, and petrol without ethanol
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol without
      And fuel/hose seen fuel-hose-marking plain-petrol
      Then fuel.hose-grade is met at fuel/hose

    Scenario: ethanol in a hose made for it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol with
      And fuel/hose seen fuel-hose-marking ethanol-proof
      Then fuel.hose-grade is met at fuel/hose

    Scenario: ethanol in a hose for plain petrol
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol with
      And fuel/hose seen fuel-hose-marking plain-petrol
      Then fuel.hose-grade is fault at fuel/hose
      And it says "petrol with ethanol in a hose that is not made for it"
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario: nobody knows what is in the tank
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol unknown
      And fuel/hose seen fuel-hose-marking ethanol-proof
      Then fuel.hose-grade is fault at fuel/hose

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol unknown
      And fuel/hose seen fuel-hose-marking ethanol-proof
      And tom wrote that fuel/petrol seen ethanol without
      Then fuel.hose-grade is fault

    Scenario: found so, and then filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol unknown
      And fuel/hose seen fuel-hose-marking ethanol-proof
      And tom wrote that fuel was filled
      Then fuel.hose-grade is stale

    Scenario: no marking on the hose
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol without
      And fuel/hose seen fuel-hose-marking unmarked
      Then fuel.hose-grade is fault at fuel/hose

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.hose-grade is missing at fuel/hose
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the petrol is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen fuel-hose-marking ethanol-proof
      Then fuel.hose-grade is missing at fuel/hose

    Scenario: the hose is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol without
      Then fuel.hose-grade is missing at fuel/hose

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol told ethanol without
      And fuel/hose told fuel-hose-marking ethanol-proof
      Then fuel.hose-grade is missing at fuel/hose

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol without
      And fuel/hose seen fuel-hose-marking ethanol-proof
      And <point> was <work>
      Then fuel.hose-grade is stale at fuel/hose

      Examples:
        | point | work      |
        | fuel  | filled    |
        | fuel  | topped-up |
        | fuel  | drained   |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/petrol seen ethanol without
      And fuel/hose seen fuel-hose-marking ethanol-proof
      And <point> was <work>
      Then fuel.hose-grade is met at fuel/hose

      Examples:
        | point     | work    |
        | fuel/hose | removed |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.hose-grade is not applicable

  @fuel.hose-run
  Rule: Every fuel hose is clipped and clear

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen hose-clips right-and-tight
      And fuel/hose seen fuel-hose-run clear
      Then fuel.hose-run is met at fuel/hose
      And it holds until 2027-11-25

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose told hose-clips right-and-tight
      And fuel/hose seen fuel-hose-run clear
      Then fuel.hose-run is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen hose-clips right-and-tight
      And fuel/hose told fuel-hose-run clear
      Then fuel.hose-run is missing

    Scenario Outline: what is wrong with the hose clips
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen hose-clips <found>
      And fuel/hose seen fuel-hose-run clear
      Then fuel.hose-run is fault at fuel/hose

      Examples:
        | found        |
        | missing      |
        | loose        |
        | wire-twisted |
        | biting-in    |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen hose-clips missing
      And fuel/hose seen fuel-hose-run clear
      And tom wrote that fuel/hose seen hose-clips right-and-tight
      Then fuel.hose-run is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen hose-clips missing
      And fuel/hose seen fuel-hose-run clear
      Then fuel.hose-run is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario Outline: what is wrong with the fuel hose run
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen hose-clips right-and-tight
      And fuel/hose seen fuel-hose-run <found>
      Then fuel.hose-run is fault at fuel/hose

      Examples:
        | found        |
        | near-exhaust |
        | rubbing      |
        | kinked       |
        | stretched    |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.hose-run is missing at fuel/hose
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the hose clips is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen fuel-hose-run clear
      Then fuel.hose-run is missing at fuel/hose

    Scenario: the fuel hose run is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen hose-clips right-and-tight
      Then fuel.hose-run is missing at fuel/hose

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose told hose-clips right-and-tight
      And fuel/hose told fuel-hose-run clear
      Then fuel.hose-run is missing at fuel/hose

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen hose-clips right-and-tight <ago> months ago
      And fuel/hose seen fuel-hose-run clear <ago> months ago
      Then fuel.hose-run is <state> at fuel/hose

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen hose-clips right-and-tight
      And fuel/hose seen fuel-hose-run clear
      And <point> was <work>
      Then fuel.hose-run is stale at fuel/hose

      Examples:
        | point             | work     |
        | fuel/hose         | removed  |
        | fuel/tank         | removed  |
        | fuel/tap          | refitted |
        | fuel/filter       | replaced |
        | fuel/carburettors | opened   |
        | exhaust           | stripped |
        | machine           | damaged  |
        | fuel/tank         | adjusted |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen hose-clips right-and-tight
      And fuel/hose seen fuel-hose-run clear
      And <point> was <work>
      Then fuel.hose-run is met at fuel/hose

      Examples:
        | point         | work     |
        | fuel/tank/cap | removed  |
        | fuel/tank/cap | refitted |
        | fuel/tank/cap | replaced |
        | fuel/tank/cap | repaired |
        | fuel/tank/cap | stripped |
        | fuel/tank/cap | opened   |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.hose-run is not applicable

  @fuel.metal-pipe
  Rule: Metal pipe has no date, and is whole and tight

    Scenario: copper from tap to carburettor
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen fuel-line all-metal
      And fuel/hose seen metal-pipe whole
      Then fuel.metal-pipe is met at fuel/hose
      And it holds until 2027-05-25
      And fuel.hose-age is not applicable
      And fuel.hose-condition is not applicable
      And fuel.hose-grade is not applicable

    Scenario: nobody looked along it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen fuel-line all-metal
      Then fuel.metal-pipe is missing at fuel/hose
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: what is wrong with it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen fuel-line all-metal
      And fuel/hose seen metal-pipe <found>
      Then fuel.metal-pipe is fault at fuel/hose

      Examples:
        | found       |
        | cracked     |
        | kinked      |
        | chafed      |
        | corroded    |
        | loose-union |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen fuel-line all-metal
      And fuel/hose seen metal-pipe cracked
      And tom wrote that fuel/hose seen metal-pipe whole
      Then fuel.metal-pipe is fault

    Scenario Outline: a piece of rubber in it, or hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose <line>
      And fuel/hose seen metal-pipe whole
      Then fuel.metal-pipe is not applicable
      And fuel.hose-age is missing
      And fuel.hose-condition is missing
      And fuel.hose-grade is missing

      Examples:
        | line                       |
        | seen fuel-line part-rubber |
        | told fuel-line all-metal   |

    Scenario: a hard hose stays a hard hose until it was replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose tried fuel-hose hard
      And fuel/hose seen fuel-line all-metal
      And fuel/hose seen metal-pipe whole
      Then fuel.hose-condition is fault
      And fuel.metal-pipe is not applicable

    Scenario: metal in place of an old hose
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen date-mark 1998-05
      And fuel/hose was replaced
      And fuel/hose seen fuel-line all-metal
      And fuel/hose seen metal-pipe whole
      Then fuel.metal-pipe is met
      And fuel.hose-age is not applicable

    Scenario: a new line is looked at anew
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen fuel-line all-metal
      And fuel/hose seen metal-pipe whole
      And fuel/hose was replaced
      Then fuel.metal-pipe is not applicable
      And fuel.hose-age is missing

    Scenario: worked on since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen fuel-line all-metal
      And fuel/hose seen metal-pipe whole
      And fuel/hose was repaired
      Then fuel.metal-pipe is stale

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen fuel-line all-metal
      And fuel/hose seen metal-pipe whole <ago> months ago
      Then fuel.metal-pipe is <state>

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

  @fuel.metal-pipe
  Rule: A metal pipe that leaks closes every gate with petrol on board

    Scenario: cracked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose seen fuel-line all-metal
      And fuel/hose seen metal-pipe cracked
      Then fuel.metal-pipe is fault
      And it holds first-start, indoor-run, road-test, hand-over, on-show and no other gate

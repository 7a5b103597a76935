Feature: What the rider holds, stands on and looks into

  @controls.footrests
  Rule: The footrests hold

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/footrests tried footrests tight-and-whole
      Then controls.footrests is met at controls/footrests
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/footrests seen footrests tight-and-whole
      Then controls.footrests is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/footrests tried footrests <found>
      Then controls.footrests is fault at controls/footrests

      Examples:
        | found          |
        | loose          |
        | bent           |
        | cracked        |
        | missing        |
        | rubber-missing |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/footrests tried footrests loose
      And tom wrote that controls/footrests tried footrests tight-and-whole
      Then controls.footrests is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.footrests is missing at controls/footrests
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/footrests told footrests tight-and-whole
      Then controls.footrests is missing at controls/footrests

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/footrests tried footrests tight-and-whole <ago> months ago
      Then controls.footrests is <state> at controls/footrests

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/footrests tried footrests tight-and-whole
      And <point> was <work>
      Then controls.footrests is stale at controls/footrests

      Examples:
        | point              | work     |
        | controls/footrests | removed  |
        | controls/footrests | adjusted |
        | exhaust            | removed  |
        | frame              | refitted |
        | machine            | damaged  |
        | frame/lugs         | damaged  |

    Scenario: asked of an electric machine as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.footrests is missing at controls/footrests

  @controls.pillion-rests
  Rule: The passenger has a rest for each foot

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/pillion-rests tried pillion-rests-holding 2 times
      Then controls.pillion-rests is met at controls/pillion-rests
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/pillion-rests seen pillion-rests-holding 2 times
      Then controls.pillion-rests is missing

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/pillion-rests tried pillion-rests-holding <rests>
      Then controls.pillion-rests is <state> at controls/pillion-rests

      # one on each side: common practice
      Examples:
        | rests   | state |
        | 0 times | fault |
        | 1 times | fault |
        | 2 times | met   |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/pillion-rests tried pillion-rests-holding 0 times
      And tom wrote that controls/pillion-rests tried pillion-rests-holding 2 times
      Then controls.pillion-rests is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.pillion-rests is missing at controls/pillion-rests
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/pillion-rests told pillion-rests-holding 2 times
      Then controls.pillion-rests is missing at controls/pillion-rests

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/pillion-rests tried pillion-rests-holding 2 times <ago> months ago
      Then controls.pillion-rests is <state> at controls/pillion-rests

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/pillion-rests tried pillion-rests-holding 2 times
      And <point> was <work>
      Then controls.pillion-rests is stale at controls/pillion-rests

      Examples:
        | point                  | work     |
        | controls/pillion-rests | removed  |
        | exhaust                | removed  |
        | frame                  | refitted |
        | machine                | damaged  |
        | frame/lugs             | damaged  |

    Scenario: not asked of a machine with one seat
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it has 1 seat
      Then controls.pillion-rests is not applicable

    Scenario: counted twice, and differently
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/pillion-rests tried pillion-rests-holding 2 times
      And controls/pillion-rests tried pillion-rests-holding 3 times
      Then controls.pillion-rests is doubt at controls/pillion-rests

  @controls.grips
  Rule: The grips are tight

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips tight-and-whole
      Then controls.grips is met at controls/grips
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips seen grips tight-and-whole
      Then controls.grips is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips <found>
      Then controls.grips is fault at controls/grips

      Examples:
        | found              |
        | turns              |
        | split              |
        | missing            |
        | binds-the-throttle |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips turns
      And tom wrote that controls/grips tried grips tight-and-whole
      Then controls.grips is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips binds-the-throttle
      Then controls.grips is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.grips is missing at controls/grips
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips told grips tight-and-whole
      Then controls.grips is missing at controls/grips

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips tight-and-whole <ago> months ago
      Then controls.grips is <state> at controls/grips

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips tight-and-whole
      And <point> was <work>
      Then controls.grips is stale at controls/grips

      Examples:
        | point             | work    |
        | controls/grips    | removed |
        | controls/throttle | removed |
        | machine           | damaged |

    Scenario: asked of an electric machine as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.grips is missing at controls/grips

  @controls.levers
  Rule: The levers are whole and within reach

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers seen lever-ends whole
      And controls/levers tried lever-reach within-reach
      Then controls.levers is met at controls/levers
      And it holds until 2027-11-25

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers told lever-ends whole
      And controls/levers tried lever-reach within-reach
      Then controls.levers is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers seen lever-ends whole
      And controls/levers seen lever-reach within-reach
      Then controls.levers is missing

    Scenario: made without ball ends
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers seen lever-ends made-without
      And controls/levers tried lever-reach within-reach
      Then controls.levers is met at controls/levers

    Scenario Outline: what is wrong with the ends
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers seen lever-ends <found>
      And controls/levers tried lever-reach within-reach
      Then controls.levers is fault at controls/levers

      Examples:
        | found      |
        | broken-off |
        | sharp      |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers seen lever-ends broken-off
      And controls/levers tried lever-reach within-reach
      And tom wrote that controls/levers seen lever-ends whole
      Then controls.levers is fault

    Scenario Outline: what is wrong with the reach
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers seen lever-ends whole
      And controls/levers tried lever-reach <found>
      Then controls.levers is fault at controls/levers

      Examples:
        | found          |
        | too-far        |
        | meets-the-grip |
        | fouls-the-tank |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.levers is missing at controls/levers
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the lever ends is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers tried lever-reach within-reach
      Then controls.levers is missing at controls/levers

    Scenario: the lever reach is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers seen lever-ends whole
      Then controls.levers is missing at controls/levers

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers told lever-ends whole
      And controls/levers told lever-reach within-reach
      Then controls.levers is missing at controls/levers

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers seen lever-ends whole <ago> months ago
      And controls/levers tried lever-reach within-reach <ago> months ago
      Then controls.levers is <state> at controls/levers

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/levers seen lever-ends whole
      And controls/levers tried lever-reach within-reach
      And <point> was <work>
      Then controls.levers is stale at controls/levers

      Examples:
        | point                                 | work     |
        | controls/levers                       | removed  |
        | controls/levers                       | adjusted |
        | controls/clutch                       | removed  |
        | front-brake/control                   | refitted |
        | steering/handlebar                    | replaced |
        | machine                               | damaged  |
        | steering/handlebar                    | adjusted |
        | steering/handlebar/clamps             | loosened |
        | front-brake/hydraulic/master-cylinder | damaged  |
        | front-brake/hydraulic/master-cylinder | loosened |

    Scenario: asked of an electric machine as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.levers is missing at controls/levers

  @controls.mirrors
  Rule: The mirrors show the road behind

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors tried mirrors-showing-behind 1 times
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is met at controls/mirrors

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors seen mirrors-showing-behind 1 times
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors tried mirrors-showing-behind 1 times
      And controls/mirrors seen mirror-hold all-hold
      Then controls.mirrors is missing

    Scenario Outline: where no law sets a number, one that is fitted has to serve
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors tried mirrors-showing-behind <mirrors>
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is <state> at controls/mirrors

      # one: common practice; Great Britain asks none of a two-wheeler (regulation 33, read in a copy)
      Examples:
        | mirrors | state |
        | 0 times | fault |
        | 1 times | met   |
        | 2 times | met   |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors tried mirrors-showing-behind 0 times
      And controls/mirrors tried mirror-hold all-hold
      And tom wrote that controls/mirrors tried mirrors-showing-behind 1 times
      Then controls.mirrors is fault

    Scenario Outline: where a law sets a number
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And controls/mirrors tried mirrors-showing-behind <mirrors>
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is <state> at controls/mirrors

      # one: Va. Code 46.2-1082; two: Md. Code Transp. 22-403; both read in a copy
      Examples:
        | territory | mirrors | state |
        | US-VA     | 0 times | fault |
        | US-VA     | 1 times | met   |
        | US-MD     | 1 times | fault |
        | US-MD     | 2 times | met   |

    Scenario Outline: where the number depends on the first registration
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And the machine is first registered <registered>
      And controls/mirrors tried mirrors-showing-behind <mirrors>
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is <state> at controls/mirrors
      And the limit came from "StVZO"

      # two from 1 January 1990, one before: StVZO § 56, read in a copy
      Examples:
        | registered | mirrors | state |
        | 1989-12-31 | 0 times | fault |
        | 1989-12-31 | 1 times | met   |
        | 1990-01-01 | 1 times | fault |
        | 1990-01-01 | 2 times | met   |

    Scenario Outline: none fitted where the law asks for one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has mirrors 0
      And the territory is <territory>
      Then controls.mirrors is missing at controls/mirrors

      Examples:
        | territory |
        | DE        |
        | US-VA     |
        | US-MD     |

    Scenario: none fitted, and no local code to say whether one must be
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has mirrors 0
      And the territory is JP
      Then controls.mirrors is missing at controls/mirrors
      And it says "no local code for it"
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors tried mirrors-showing-behind 1 times
      And controls/mirrors tried mirror-hold <found>
      Then controls.mirrors is fault at controls/mirrors

      Examples:
        | found       |
        | one-turns   |
        | one-cracked |
        | one-blind   |

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.mirrors is missing at controls/mirrors

    Scenario: the mirrors showing behind is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is missing at controls/mirrors

    Scenario: the mirror hold is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors tried mirrors-showing-behind 1 times
      Then controls.mirrors is missing at controls/mirrors

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors told mirrors-showing-behind 1 times
      And controls/mirrors told mirror-hold all-hold
      Then controls.mirrors is missing at controls/mirrors

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors tried mirrors-showing-behind 1 times <ago> days ago
      And controls/mirrors tried mirror-hold all-hold <ago> days ago
      Then controls.mirrors is <state> at controls/mirrors

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors tried mirrors-showing-behind 1 times
      And controls/mirrors tried mirror-hold all-hold
      And <point> was <work>
      Then controls.mirrors is stale at controls/mirrors

      Examples:
        | point              | work     |
        | controls/mirrors   | removed  |
        | controls/mirrors   | adjusted |
        | steering/handlebar | removed  |
        | machine            | damaged  |
        | steering/handlebar | adjusted |
        | controls/levers    | damaged  |
        | controls/levers    | adjusted |

    Scenario: not asked where none is fitted and none must be
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has mirrors 0
      Then controls.mirrors is not applicable

    Scenario: asked where the Union sets no number and the law there is not known
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has mirrors 0
      And the territory is IT
      Then controls.mirrors is missing
      And it says "no local code for it in this rule book (territory IT)"

    Scenario: counted twice, and differently
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors tried mirrors-showing-behind 1 times
      And controls/mirrors tried mirrors-showing-behind 2 times
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is doubt at controls/mirrors

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/mirrors tried mirrors-showing-behind 1 times
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is met at controls/mirrors
      And it says "at least 1 (common practice)"

    Scenario: what it is held against in Germany
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And the machine is first registered 1989-12-31
      And controls/mirrors tried mirrors-showing-behind 1 times
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is met at controls/mirrors
      And it says "at least 1 (StVZO, § 56, as in force before the European rules, read in a copy)"
      And it says "also at least 1 (common practice)"

    Scenario: what it is held against in Maryland
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-MD
      And controls/mirrors tried mirrors-showing-behind 2 times
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is met at controls/mirrors
      And it says "at least 2 (Md. Code Transp. 22-403, (c), read in a copy)"
      And it says "also at least 1 (common practice)"

    Scenario: what it is held against in Virginia
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And controls/mirrors tried mirrors-showing-behind 1 times
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is met at controls/mirrors
      And it says "at least 1 (Va. Code 46.2-1082, read in a copy)"
      And it says "also at least 1 (common practice)"

    Scenario: Germany, the first day of registration that asks for two
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And the machine is first registered 1990-01-01
      And controls/mirrors tried mirrors-showing-behind 2 times
      And controls/mirrors tried mirror-hold all-hold
      Then controls.mirrors is met at controls/mirrors
      And it says "at least 2 (StVZO, § 56, as in force before the European rules, read in a copy); mirror hold all hold; also at least 1 (common practice)."

  @controls.speedometer
  Rule: A speedometer works where the law asks for one

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/speedometer tried speedometers-reading 1 times
      Then controls.speedometer is met at controls/speedometer
      And it says "reg 35"

    Scenario Outline: a second clock that works does no harm
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered <registered>
      And controls/speedometer tried speedometers-reading 2 times
      Then controls.speedometer is met at controls/speedometer
      And it says "reg 35"

      Examples:
        | registered |
        | 1970-05-01 |
        | 1985-05-01 |

    Scenario: described without one, and nobody counted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has speedometer no
      Then controls.speedometer is missing at controls/speedometer
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: described without one, and none is there
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has speedometer no
      And controls/speedometer tried speedometers-reading 0 times
      Then controls.speedometer is fault at controls/speedometer
      And it holds road-test, hand-over and no other gate

    Scenario: described with one, which does not work
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/speedometer tried speedometers-reading 0 times
      Then controls.speedometer is fault at controls/speedometer

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the record is a job-record/1
      Then controls.speedometer is not applicable

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/speedometer tried speedometers-reading 0 times
      And tom wrote that controls/speedometer tried speedometers-reading 1 times
      Then controls.speedometer is fault

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/speedometer seen speedometers-reading 1 times
      Then controls.speedometer is missing

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/speedometer told speedometers-reading 1 times
      Then controls.speedometer is missing

    Scenario: counted twice, and differently
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/speedometer tried speedometers-reading 1 times
      And controls/speedometer tried speedometers-reading 2 times
      Then controls.speedometer is doubt

    Scenario Outline: Great Britain, by first registration, size and speed
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered <registered>
      And the engine displaces <size>
      And the top speed is <speed>
      And the equipment has speedometer no
      Then controls.speedometer is <state>

      # Construction and Use Regulations 1986, regulation 35, read as of 1 October 1994
      Examples:
        | registered | size   | speed  | state          |
        | 1937-09-30 | 500 cc | 70 mph | not applicable |
        | 1937-10-01 | 500 cc | 70 mph | missing        |
        | 1937-10-01 | 100 cc | 40 mph | not applicable |
        | 1937-10-01 | 101 cc | 40 mph | missing        |
        | 1937-10-01 | 500 cc | 25 mph | not applicable |
        | 1937-10-01 | 500 cc | 26 mph | missing        |
        | 1984-03-31 | 100 cc | 40 mph | not applicable |
        | 1984-03-31 | 101 cc | 40 mph | missing        |
        | 1984-04-01 | 100 cc | 40 mph | missing        |
        | 1984-04-01 | 49 cc  | 25 mph | not applicable |
        | 1984-04-01 | 49 cc  | 26 mph | missing        |

    Scenario Outline: Great Britain, a second one does no harm, and one law asks for it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered <registered>
      And controls/speedometer tried speedometers-reading <working>
      Then controls.speedometer is met
      And it says "reg 35, read in the official text); also at least 1 (common practice)."

      Examples:
        | registered | working |
        | 1984-03-31 | 1 times |
        | 1984-03-31 | 2 times |
        | 1984-04-01 | 1 times |
        | 1984-04-01 | 2 times |

    Scenario: Great Britain, an electric machine is not spared by its size
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And the machine is first registered 1970-05-01
      And the equipment has speedometer no
      Then controls.speedometer is missing

    Scenario Outline: where the law asks it of every machine, or is not known
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And the machine is first registered 1930-05-01
      And controls/speedometer tried speedometers-reading <working>
      Then controls.speedometer is <state>
      And it says "<why>"

      # StVZO § 57, read in a copy; Md. Code Transp. 23-104 (a), read
      Examples:
        | territory | working | state   | why               |
        | DE        | 0 times | fault   | at least 1        |
        | DE        | 1 times | met     | StVZO, § 57       |
        | DE        | 2 times | met     | StVZO, § 57       |
        | US-MD     | 0 times | fault   | at least 1        |
        | US-MD     | 1 times | met     | Transp. 23-104    |
        | US-MD     | 2 times | met     | Transp. 23-104    |
        | IT        | 0 times | fault   | at least 1        |
        | IT        | 1 times | missing | no local code for |

    Scenario: not asked where the rules were searched and have no item about it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And the equipment has speedometer no
      Then controls.speedometer is not applicable

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/speedometer tried speedometers-reading 1 times <ago> days ago
      Then controls.speedometer is <state>

      Examples:
        | ago | state |
        | 365 | met   |
        | 366 | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/speedometer tried speedometers-reading 1 times
      And <point> was <work>
      Then controls.speedometer is stale

      Examples:
        | point                | work     |
        | controls/speedometer | removed  |
        | controls/speedometer | adjusted |
        | front-wheel          | refitted |
        | machine              | damaged  |

Feature: Lamps
  What is fitted must work, whatever the age; what must be fitted depends on territory and first registration. The stop lamp stands with the brakes.

  @electrics.headlamps-fitted
  Rule: The machine carries as many headlamps as the law asks of its age

    Scenario Outline: GB, by first registration
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered <registered>
      And headlamp seen headlamps-fitted <count> times
      Then electrics.headlamps-fitted is <state>

      # one from 1 January 1931: GB inspection manual 4.1.1, read
      Examples:
        | registered | count | state |
        | 1931-01-01 | 0     | fault |
        | 1931-01-01 | 1     | met   |
        | 1974-06-14 | 1     | met   |
        | 1974-06-14 | 2     | met   |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1931-01-01
      And headlamp seen headlamps-fitted 0 times
      And tom wrote that headlamp seen headlamps-fitted 1 times
      Then electrics.headlamps-fitted is fault

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1931-01-01
      And headlamp told headlamps-fitted 1 times
      Then electrics.headlamps-fitted is missing

    Scenario: GB, before a headlamp was asked for
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1930-12-31
      Then electrics.headlamps-fitted is not applicable

    Scenario: GB, a machine without lamps may be ridden by day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      Then electrics.headlamps-fitted is not applicable

    Scenario Outline: elsewhere
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And the equipment has lamps <lamps>
      And headlamp seen headlamps-fitted <count> times
      Then electrics.headlamps-fitted is <state>

      # Virginia 19VAC30-70-360 A 1, read; Maryland Transp. 22-203 and StVZO § 50 from memory;
      # where the law there is not known, none is bad by any: common practice
      Examples:
        | territory | lamps | count | state |
        | US-VA     | yes   | 1     | met   |
        | US-VA     | no    | 0     | fault |
        | US-MD     | yes   | 1     | met   |
        | US-MD     | no    | 0     | fault |
        | DE        | yes   | 1     | met   |
        | DE        | no    | 0     | fault |
        | FR        | yes   | 1     | missing |
        | FR        | no    | 0     | fault |

    Scenario: no local code is loaded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is JP
      And headlamp seen headlamps-fitted 1 times
      Then electrics.headlamps-fitted is missing
      And it says "ask the licensed inspector"

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.headlamps-fitted is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp seen headlamps-fitted 1 times
      And <point> was <work>
      Then electrics.headlamps-fitted is stale

      Examples:
        | point    | work     |
        | headlamp | replaced |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp seen headlamps-fitted 1 times
      And <point> was <work>
      Then electrics.headlamps-fitted is met

      Examples:
        | point    | work    |
        | headlamp | removed |

    Scenario: counted twice, and differently
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp seen headlamps-fitted 1 times
      And headlamp seen headlamps-fitted 2 times
      Then electrics.headlamps-fitted is doubt at headlamp

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1931-01-01
      And headlamp seen headlamps-fitted 1 times
      Then electrics.headlamps-fitted is met at headlamp
      And it says "at least 1 (MOT inspection manual: motorcycles, 4.1.1, read in the official text)"
      And it says "also at least 1 (common practice)"
      And it does not lapse by itself

    Scenario: what it is held against in Germany
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And the equipment has lamps yes
      And headlamp seen headlamps-fitted 1 times
      Then electrics.headlamps-fitted is met at headlamp
      And it says "at least 1 (StVZO, § 50, from memory)"
      And it says "also at least 1 (common practice)"

    Scenario: what it is held against in Maryland
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-MD
      And the equipment has lamps yes
      And headlamp seen headlamps-fitted 1 times
      Then electrics.headlamps-fitted is met at headlamp
      And it says "at least 1 (Md. Code Transp. 22-203, motorcycles, from memory)"
      And it says "also at least 1 (common practice)"

    Scenario: what it is held against in Virginia
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And the equipment has lamps yes
      And headlamp seen headlamps-fitted 1 times
      Then electrics.headlamps-fitted is met at headlamp
      And it says "at least 1 (19VAC30-70-360, A 1, read in the official text)"
      And it says "also at least 1 (common practice)"

  @electrics.daylight-only
  Rule: A machine without lamps cannot be taken for one with lamps

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      And headlamp seen lamps <found>
      Then electrics.daylight-only is met
      And it notes "daylight"

      Examples:
        | found     |
        | taken-off |
        | blanked   |

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      And headlamp told lamps taken-off
      Then electrics.daylight-only is missing

    Scenario: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      And headlamp seen lamps left-on-and-dark
      Then electrics.daylight-only is fault

    Scenario: a later good look ends it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      And headlamp seen lamps left-on-and-dark
      And tom wrote that headlamp seen lamps taken-off
      Then electrics.daylight-only is met

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      Then electrics.daylight-only is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: before a headlamp was asked for
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      And the machine is first registered 1930-12-31
      And headlamp seen lamps taken-off
      Then electrics.daylight-only is met
      And it notes "daylight"
      And it does not lapse by itself

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      And headlamp seen lamps blanked
      And <point> was <work>
      Then electrics.daylight-only is met

      Examples:
        | point    | work     |
        | headlamp | refitted |

    Scenario: not asked of a machine with lamps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.daylight-only is not applicable

    Scenario: not asked where lamps must be there
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      And the territory is US-VA
      Then electrics.daylight-only is not applicable

  @electrics.headlamp-dip
  Rule: The headlamp gives a steady dipped beam

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried dipped-beam bright
      Then electrics.headlamp-dip is met

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp seen dipped-beam bright
      Then electrics.headlamp-dip is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried dipped-beam <found>
      Then electrics.headlamp-dip is fault

      Examples:
        | found        |
        | dark         |
        | dim          |
        | flickers     |
        | wrong-beam   |
        | not-fitted   |
        | wrong-colour |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried dipped-beam dark
      And tom wrote that headlamp tried dipped-beam bright
      Then electrics.headlamp-dip is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.headlamp-dip is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp told dipped-beam bright
      Then electrics.headlamp-dip is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried dipped-beam bright <ago> days ago
      Then electrics.headlamp-dip is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried dipped-beam bright
      And <point> was <work>
      Then electrics.headlamp-dip is stale

      Examples:
        | point                     | work     |
        | headlamp                  | opened   |
        | headlamp/shell            | opened   |
        | headlamp                  | removed  |
        | headlamp/bulb             | replaced |
        | electrics/switches        | repaired |
        | electrics/wiring          | repaired |
        | electrics/wiring/lighting | opened   |
        | machine                   | damaged  |

    Scenario Outline: work that leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried dipped-beam bright
      And <point> was <work>
      Then electrics.headlamp-dip is met

      Examples:
        | point                    | work     |
        | electrics/wiring/signals | opened   |
        | electrics/tail-lamp      | replaced |
        | headlamp                 | adjusted |

    Scenario: not asked of a machine without lamps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      Then electrics.headlamp-dip is not applicable

    Scenario: what is fitted must work, whatever the age
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1930-12-31
      And headlamp tried dipped-beam dark
      Then electrics.headlamp-dip is fault

    Scenario: direct lighting
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the battery has 0 volts
      And headlamp tried dipped-beam bright
      Then electrics.headlamp-dip is met

  @electrics.headlamp-main
  Rule: The headlamp gives a steady main beam and changes over cleanly

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried main-beam bright
      Then electrics.headlamp-main is met

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp seen main-beam bright
      Then electrics.headlamp-main is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried main-beam <found>
      Then electrics.headlamp-main is fault

      Examples:
        | found        |
        | dark         |
        | dim          |
        | flickers     |
        | stays-on     |
        | dark-between |
        | wrong-colour |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried main-beam dark
      And tom wrote that headlamp tried main-beam bright
      Then electrics.headlamp-main is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.headlamp-main is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp told main-beam bright
      Then electrics.headlamp-main is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried main-beam bright <ago> days ago
      Then electrics.headlamp-main is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried main-beam bright
      And <point> was <work>
      Then electrics.headlamp-main is stale

      Examples:
        | point                     | work     |
        | headlamp                  | opened   |
        | headlamp/shell            | opened   |
        | headlamp                  | removed  |
        | headlamp/bulb             | replaced |
        | electrics/switches        | repaired |
        | electrics/wiring          | repaired |
        | electrics/wiring/lighting | opened   |
        | machine                   | damaged  |

    Scenario Outline: work that leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried main-beam bright
      And <point> was <work>
      Then electrics.headlamp-main is met

      Examples:
        | point                    | work     |
        | electrics/wiring/signals | opened   |
        | electrics/tail-lamp      | replaced |
        | headlamp                 | adjusted |

    Scenario: not asked of a machine without lamps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      Then electrics.headlamp-main is not applicable

    Scenario: what is fitted must work, whatever the age
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1930-12-31
      And headlamp tried main-beam dark
      Then electrics.headlamp-main is fault

    Scenario: direct lighting
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the battery has 0 volts
      And headlamp tried main-beam bright
      Then electrics.headlamp-main is met

    Scenario Outline: a machine without main beam
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a <kind>
      And the machine is first registered <registered>
      And headlamp tried main-beam none-fitted
      Then electrics.headlamp-main is <state>

      # no headlamp before 1931, no main beam up to 50 km/h: GB inspection manual 4.1.1, read
      Examples:
        | kind               | registered | state |
        | motorcycle         | 1931-01-01 | fault |
        | motorcycle-sidecar | 1950-05-01 | fault |
        | motorcycle         | 1930-12-31 | met   |
        | moped              | 1971-12-31 | met   |
        | moped-3w           | 1990-05-01 | met   |

  @electrics.headlamp-aim
  Rule: The beam falls as it should and points ahead

    Scenario Outline: GB, on both sides of both limits
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp measured beam-fall <fall> % ± 0.1 %
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is <state>
      And the limit came from "MOT inspection manual"

      # common part of the bands for every kind and height of lamp: GB inspection manual 4.1.2, read in a copy
      Examples:
        | fall | state |
        | 1.20 | fault |
        | 1.25 | doubt |
        | 1.40 | met   |
        | 1.85 | met   |
        | 2.00 | doubt |
        | 2.05 | fault |

    Scenario Outline: GB, a cut-off, by height
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp seen beam-pattern cut-off
      And headlamp measured lamp-height <height>
      And headlamp measured beam-fall <fall> % ± 0.1 %
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is <state>
      And the limit came from "MOT inspection manual"

      # GB inspection manual 4.1.2 (2022), read in a copy; no law sets it
      Examples:
        | height          | fall | state |
        | 780 mm ± 10 mm  | 0.45 | fault |
        | 780 mm ± 10 mm  | 0.50 | doubt |
        | 780 mm ± 10 mm  | 0.65 | met   |
        | 780 mm ± 10 mm  | 2.60 | met   |
        | 780 mm ± 10 mm  | 2.75 | doubt |
        | 780 mm ± 10 mm  | 2.80 | fault |
        | 900 mm ± 10 mm  | 1.20 | fault |
        | 900 mm ± 10 mm  | 1.25 | doubt |
        | 900 mm ± 10 mm  | 1.40 | met   |
        | 900 mm ± 10 mm  | 2.60 | met   |
        | 900 mm ± 10 mm  | 2.80 | fault |

    Scenario Outline: GB, a hot spot, by height
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp seen beam-pattern hot-spot
      And headlamp measured lamp-height <height>
      And headlamp measured beam-fall <fall> % ± 0.1 %
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is <state>

      # GB inspection manual 4.1.2 (2022), read in a copy; no law sets it
      Examples:
        | height          | fall | state |
        | 780 mm ± 10 mm  | 0.15 | met   |
        | 780 mm ± 10 mm  | 1.85 | met   |
        | 780 mm ± 10 mm  | 2.00 | doubt |
        | 780 mm ± 10 mm  | 2.05 | fault |
        | 900 mm ± 10 mm  | 0.15 | met   |
        | 900 mm ± 10 mm  | 2.60 | met   |
        | 900 mm ± 10 mm  | 2.75 | doubt |
        | 900 mm ± 10 mm  | 2.80 | fault |

    Scenario Outline: GB, a lamp at 850 mm, or too close to it: what all bands allow
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp seen beam-pattern cut-off
      And headlamp measured lamp-height <height>
      And headlamp measured beam-fall <fall> % ± 0.1 %
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is <state>
      And the limit came from "MOT inspection manual"

      # GB inspection manual 4.1.2 (2022), read in a copy; no law sets it
      Examples:
        | height          | fall | state |
        | 850 mm ± 10 mm  | 0.65 | fault |
        | 845 mm ± 10 mm  | 0.65 | fault |
        | 855 mm ± 10 mm  | 2.60 | fault |
        | 850 mm ± 10 mm  | 1.40 | met   |
        | 840 mm ± 10 mm  | 0.65 | fault |
        | 839 mm ± 10 mm  | 0.65 | met   |
        | 861 mm ± 10 mm  | 2.60 | met   |

    Scenario Outline: GB, kind or height not seen, or seen of another lamp: what all bands allow
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp <first>
      And headlamp <then>
      And headlamp measured beam-fall 0.65 % ± 0.1 %
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is fault

      Examples:
        | first                               | then                                |
        | seen beam-pattern cut-off           | seen beam-pattern none              |
        | measured lamp-height 780 mm ± 10 mm | measured lamp-height 790 mm ± 10 mm |
        | told beam-pattern cut-off           | measured lamp-height 780 mm ± 10 mm |
        | seen beam-pattern cut-off           | told lamp-height 780 mm             |

    Scenario: GB, another lamp since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp seen beam-pattern cut-off
      And headlamp measured lamp-height 780 mm ± 10 mm
      And headlamp was replaced
      And headlamp measured beam-fall 0.65 % ± 0.1 %
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is fault

    Scenario Outline: kind and height count where the code has bands for them, and nowhere else
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And headlamp seen beam-pattern cut-off
      And headlamp measured lamp-height 780 mm ± 10 mm
      And headlamp measured beam-fall <fall> % ± 0.1 %
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is <state>

      Examples:
        | territory | fall | state |
        | DE        | 0.20 | met   |
        | US-VA     | 1.10 | met   |
        | US-VA     | 1.80 | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp measured beam-fall 1.20 % ± 0.1 %
      And headlamp tried beam-direction straight
      And tom wrote that headlamp measured beam-fall 1.40 % ± 0.1 %
      Then electrics.headlamp-aim is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried beam-fall 1.40 %
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp measured beam-fall 1.40 % ± 0.1 %
      And headlamp seen beam-direction straight
      Then electrics.headlamp-aim is missing

    Scenario Outline: Virginia, on both sides of both limits
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And headlamp measured beam-fall <fall> % ± 0.1 %
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is <state>

      # four inches at 25 ft, 4/300 = 1.33 %: 19VAC30-70-360 A 7, read, the distance from memory; not above level: common practice
      Examples:
        | fall  | state |
        | -0.10 | fault |
        | 0.00  | doubt |
        | 0.15  | met   |
        | 1.20  | met   |
        | 1.33  | doubt |
        | 1.40  | fault |

    Scenario Outline: elsewhere, on both sides of both limits
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And headlamp measured beam-fall <fall> % ± 0.1 %
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is <state>

      # 0 % to 2.75 %: common practice
      Examples:
        | fall  | state |
        | -0.10 | fault |
        | 0.00  | doubt |
        | 0.15  | met   |
        | 2.60  | met   |
        | 2.75  | doubt |
        | 2.80  | fault |

    Scenario Outline: to one side
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp measured beam-fall 1.6 % ± 0.2 %
      And headlamp tried beam-direction <found>
      Then electrics.headlamp-aim is fault

      Examples:
        | found            |
        | towards-oncoming |
        | off-the-road     |

    Scenario: nobody measured the fall
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: nobody tried the direction
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp measured beam-fall 1.6 % ± 0.2 %
      Then electrics.headlamp-aim is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp measured beam-fall 1.6 % ± 0.2 % <ago> months ago
      And headlamp tried beam-direction straight <ago> months ago
      Then electrics.headlamp-aim is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp measured beam-fall 1.6 % ± 0.2 %
      And headlamp tried beam-direction straight
      And <point> was <work>
      Then electrics.headlamp-aim is stale

      Examples:
        | point                  | work     |
        | headlamp               | opened   |
        | headlamp               | removed  |
        | headlamp/bulb          | replaced |
        | headlamp               | adjusted |
        | steering/yokes         | refitted |
        | front-fork             | refitted |
        | front-fork             | opened   |
        | rear-wheel/tyre        | replaced |
        | machine                | damaged  |
        | headlamp/shell         | opened   |
        | frame/sidecar-fittings | adjusted |
        | rear-fork/dampers      | adjusted |
        | rear-fork/dampers      | repaired |
        | rear-fork/dampers      | replaced |
        | rear-fork/dampers      | stripped |
        | steering/yokes/clamps  | adjusted |
        | frame/sidecar-fittings | damaged  |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp measured beam-fall 1.6 % ± 0.2 %
      And headlamp tried beam-direction straight
      And <point> was <work>
      Then electrics.headlamp-aim is met

      Examples:
        | point     | work    |
        | rear-fork | removed |

    Scenario Outline: a wheel that only comes out leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp measured beam-fall 1.6 % ± 0.2 %
      And headlamp tried beam-direction straight
      And <point> was <work>
      Then electrics.headlamp-aim is met

      Examples:
        | point       | work     |
        | front-wheel | removed  |
        | front-wheel | refitted |

    Scenario: not asked of a machine without lamps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      Then electrics.headlamp-aim is not applicable

    Scenario: a lamp that points too low is turned up
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for electrics.headlamp-aim
      And headlamp measured beam-fall 4 % ± 0.1 %
      Then electrics.headlamp-aim is fault
      And for road-test headlamp is to be adjusted first

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp measured beam-fall 1.40 % ± 0.1 %
      And headlamp tried beam-direction straight
      Then electrics.headlamp-aim is met at headlamp
      And it says "between 1.25 % and 2 % (MOT inspection manual: motorcycles, 4.1.2, read in a copy)"
      And it says "also between 0 % and 2.75 % (common practice)"
      And it holds until 2027-11-25

  @electrics.tail-lamp
  Rule: The tail lamp shows a steady red light

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/tail-lamp tried tail-lamp bright-red
      Then electrics.tail-lamp is met

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/tail-lamp seen tail-lamp bright-red
      Then electrics.tail-lamp is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/tail-lamp tried tail-lamp <found>
      Then electrics.tail-lamp is fault

      Examples:
        | found        |
        | dark         |
        | dim          |
        | flickers     |
        | faded-lens   |
        | not-fitted   |
        | wrong-colour |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/tail-lamp tried tail-lamp dark
      And tom wrote that electrics/tail-lamp tried tail-lamp bright-red
      Then electrics.tail-lamp is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.tail-lamp is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/tail-lamp told tail-lamp bright-red
      Then electrics.tail-lamp is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/tail-lamp tried tail-lamp bright-red <ago> days ago
      Then electrics.tail-lamp is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/tail-lamp tried tail-lamp bright-red
      And <point> was <work>
      Then electrics.tail-lamp is stale

      Examples:
        | point                     | work     |
        | electrics/tail-lamp       | replaced |
        | electrics/stop-lamp       | replaced |
        | headlamp                  | opened   |
        | headlamp/shell            | opened   |
        | electrics/switches        | repaired |
        | electrics/wiring          | repaired |
        | electrics/wiring/lighting | opened   |
        | machine                   | damaged  |

    Scenario Outline: work that leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/tail-lamp tried tail-lamp bright-red
      And <point> was <work>
      Then electrics.tail-lamp is met

      Examples:
        | point                    | work     |
        | headlamp/bulb            | replaced |
        | electrics/horn           | replaced |
        | electrics/wiring/signals | opened   |

    Scenario: not asked of a machine without lamps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      Then electrics.tail-lamp is not applicable

    Scenario: what is fitted must work, whatever the age
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1930-12-31
      And electrics/tail-lamp tried tail-lamp dark
      Then electrics.tail-lamp is fault

    Scenario: direct lighting
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the battery has 0 volts
      And electrics/tail-lamp tried tail-lamp bright-red
      Then electrics.tail-lamp is met

  @electrics.plate-lamp
  Rule: The number plate is lit

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/plate-lamp tried plate-lamp plate-readable
      Then electrics.plate-lamp is met

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/plate-lamp seen plate-lamp plate-readable
      Then electrics.plate-lamp is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/plate-lamp tried plate-lamp <found>
      Then electrics.plate-lamp is fault

      Examples:
        | found            |
        | dark             |
        | dim              |
        | shines-rearwards |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/plate-lamp tried plate-lamp dark
      And tom wrote that electrics/plate-lamp tried plate-lamp plate-readable
      Then electrics.plate-lamp is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.plate-lamp is missing
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/plate-lamp told plate-lamp plate-readable
      Then electrics.plate-lamp is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/plate-lamp tried plate-lamp plate-readable <ago> days ago
      Then electrics.plate-lamp is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/plate-lamp tried plate-lamp plate-readable
      And <point> was <work>
      Then electrics.plate-lamp is stale

      Examples:
        | point                     | work     |
        | electrics/plate-lamp      | replaced |
        | electrics/tail-lamp       | replaced |
        | headlamp                  | opened   |
        | headlamp/shell            | opened   |
        | electrics/switches        | repaired |
        | electrics/wiring          | repaired |
        | electrics/wiring/lighting | opened   |
        | machine                   | damaged  |

    Scenario Outline: work that leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/plate-lamp tried plate-lamp plate-readable
      And <point> was <work>
      Then electrics.plate-lamp is met

      Examples:
        | point                    | work     |
        | headlamp/bulb            | replaced |
        | electrics/horn           | replaced |
        | electrics/wiring/signals | opened   |

    Scenario: not asked of a machine without lamps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      Then electrics.plate-lamp is not applicable

    Scenario: what is fitted must work, whatever the age
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1930-12-31
      And electrics/plate-lamp tried plate-lamp dark
      Then electrics.plate-lamp is fault

    Scenario: direct lighting
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the battery has 0 volts
      And electrics/plate-lamp tried plate-lamp plate-readable
      Then electrics.plate-lamp is met

    Scenario Outline: a machine without a plate lamp
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered <registered>
      And electrics/plate-lamp tried plate-lamp none-fitted
      Then electrics.plate-lamp is <state>

      # with the headlamp, from 1931: common practice after GB inspection manual 4.1.1
      Examples:
        | registered | state |
        | 1930-12-31 | met   |
        | 1931-01-01 | fault |

  @electrics.position-lamp
  Rule: The pilot lamp shows a steady light

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp/pilot tried position-lamp bright
      Then electrics.position-lamp is met

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp/pilot seen position-lamp bright
      Then electrics.position-lamp is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp/pilot tried position-lamp <found>
      Then electrics.position-lamp is fault

      Examples:
        | found        |
        | dark         |
        | dim          |
        | flickers     |
        | wrong-colour |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp/pilot tried position-lamp dark
      And tom wrote that headlamp/pilot tried position-lamp bright
      Then electrics.position-lamp is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.position-lamp is missing
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp/pilot told position-lamp bright
      Then electrics.position-lamp is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp/pilot tried position-lamp bright <ago> days ago
      Then electrics.position-lamp is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp/pilot tried position-lamp bright
      And <point> was <work>
      Then electrics.position-lamp is stale

      Examples:
        | point                     | work     |
        | headlamp/pilot            | replaced |
        | headlamp                  | removed  |
        | headlamp                  | opened   |
        | headlamp/shell            | opened   |
        | electrics/switches        | repaired |
        | electrics/wiring          | repaired |
        | electrics/wiring/lighting | opened   |
        | machine                   | damaged  |

    Scenario Outline: work that leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp/pilot tried position-lamp bright
      And <point> was <work>
      Then electrics.position-lamp is met

      Examples:
        | point                    | work     |
        | headlamp/bulb            | replaced |
        | electrics/horn           | replaced |
        | electrics/wiring/signals | opened   |

    Scenario: not asked of a machine without lamps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      Then electrics.position-lamp is not applicable

    Scenario: what is fitted must work, whatever the age
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1930-12-31
      And headlamp/pilot tried position-lamp dark
      Then electrics.position-lamp is fault

    Scenario: direct lighting
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the battery has 0 volts
      And headlamp/pilot tried position-lamp bright
      Then electrics.position-lamp is met

    Scenario: none is fitted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And headlamp/pilot tried position-lamp none-fitted
      Then electrics.position-lamp is met

  @electrics.warning-lamps
  Rule: Every warning lamp comes on and goes out as it should

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/warning-lamps tried warning-lamps all-as-they-should
      Then electrics.warning-lamps is met

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/warning-lamps seen warning-lamps all-as-they-should
      Then electrics.warning-lamps is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/warning-lamps tried warning-lamps <found>
      Then electrics.warning-lamps is fault

      Examples:
        | found        |
        | dark         |
        | stays-on     |
        | wrong-colour |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/warning-lamps tried warning-lamps dark
      And tom wrote that electrics/warning-lamps tried warning-lamps all-as-they-should
      Then electrics.warning-lamps is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.warning-lamps is missing
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/warning-lamps told warning-lamps all-as-they-should
      Then electrics.warning-lamps is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/warning-lamps tried warning-lamps all-as-they-should <ago> days ago
      Then electrics.warning-lamps is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/warning-lamps tried warning-lamps all-as-they-should
      And <point> was <work>
      Then electrics.warning-lamps is stale

      Examples:
        | point                     | work     |
        | electrics/warning-lamps   | replaced |
        | electrics/wiring/signals  | opened   |
        | electrics/charging        | repaired |
        | headlamp                  | opened   |
        | headlamp/shell            | opened   |
        | electrics/switches        | repaired |
        | electrics/wiring          | repaired |
        | electrics/wiring/lighting | opened   |
        | machine                   | damaged  |
        | electrics/charging        | adjusted |

    Scenario Outline: work that leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/warning-lamps tried warning-lamps all-as-they-should
      And <point> was <work>
      Then electrics.warning-lamps is met

      Examples:
        | point          | work     |
        | headlamp/bulb  | replaced |
        | electrics/horn | replaced |

    Scenario: not asked of a machine without lamps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      Then electrics.warning-lamps is not applicable

    Scenario: what is fitted must work, whatever the age
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1930-12-31
      And electrics/warning-lamps tried warning-lamps dark
      Then electrics.warning-lamps is fault

    Scenario: direct lighting
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the battery has 0 volts
      And electrics/warning-lamps tried warning-lamps all-as-they-should
      Then electrics.warning-lamps is met

    Scenario: none is fitted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/warning-lamps tried warning-lamps none-fitted
      Then electrics.warning-lamps is met

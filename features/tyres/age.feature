# A code is week and year; week 1 is the first full week from a Sunday (49 CFR 574.5, read in a copy):
# 4716 is the week from 2016-11-20, 4720 from 2020-11-22, 4621 from 2021-11-14, and 4826 begins on 2026-11-29.
# There is no week 54, and 2016 had no week 53. Ten, six and five years are common practice.
Feature: The age of a tyre

  @tyres.age
  Rule: No tyre is ten years old
    Scenario: made last year
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And rear-wheel/tyre seen date-code 1025
      Then tyres.age is met
      And it holds until 2035-03-08

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And there was the defect "not as it should be"
      And rear-wheel/tyre seen date-code 1025
      And tom wrote that front-wheel/tyre seen date-code 1025
      Then tyres.age is fault

    Scenario Outline: the day before, the day itself and the day after
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is <day>
      And front-wheel/tyre seen date-code <code>
      Then tyres.age is <state> at front-wheel/tyre
      Examples:
        | day        | code | state |
        | 2026-11-19 | 4716 | met   |
        | 2026-11-20 | 4716 | fault |
        | 2026-11-21 | 4716 | fault |

    Scenario Outline: three digits are older than any limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code <code>
      Then tyres.age is fault at front-wheel/tyre
      And it says "over 25 years old"
      Examples:
        | code |
        | 031  |
        | 209  |
        | 529  |

    Scenario Outline: no code that can be read
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code <code>
      Then tyres.age is missing at front-wheel/tyre
      Examples:
        | code      |
        | none      |
        | illegible |
        | 5420      |
        | 5316      |
        | 4826      |
        | 12345     |

    Scenario: nobody read a code
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.age is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: told by the seller
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told date-code 1025
      Then tyres.age is missing at front-wheel/tyre

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And front-wheel/tyre was replaced
      Then tyres.age is stale at front-wheel/tyre

    Scenario: the new tyre read
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1016
      And front-wheel/tyre was replaced
      And front-wheel/tyre seen date-code 1025
      Then tyres.age is met at front-wheel/tyre

    Scenario: over five years old is a note, not a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-11-22
      And front-wheel/tyre seen date-code 4621
      And rear-wheel/tyre seen date-code 1025
      Then tyres.age is met
      And it notes "older than 5 y"

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And rear-wheel/tyre seen date-code 1025
      And front-wheel was <work>
      Then tyres.age is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario Outline: examined every year when it is older than five years
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is <day>
      And front-wheel/tyre seen date-code <code>
      And rear-wheel/tyre seen date-code <code>
      Then tyres.age is met
      And it notes "examine it every year"

      # week 1 of 2000 begins on 2000-01-02, the first Sunday
      Examples:
        | day        | code |
        | 2005-01-03 | 0100 |
        | 2026-11-15 | 4621 |

    Scenario: five years to the day is not older than five years
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-11-14
      And front-wheel/tyre seen date-code 4621
      And rear-wheel/tyre seen date-code 1025
      Then tyres.age is met
      And it notes nothing

    Scenario: too old a tyre is replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for tyres.age
      And front-wheel/tyre seen date-code 1515
      Then tyres.age is fault
      And for road-test front-wheel/tyre is to be replaced first

    Scenario: a week that has not come yet is none in which the tyre was made
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 0127
      Then tyres.age is missing at front-wheel/tyre
      And it says "names no week in which the tyre can have been made"

  @tyres.age-hand-over
  Rule: A tyre goes to a new owner only while it passes on its date
    Scenario: made last year
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And rear-wheel/tyre seen date-code 1025
      Then tyres.age-hand-over is met
      And it holds until 2031-03-09

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And there was the defect "not as it should be"
      And rear-wheel/tyre seen date-code 1025
      And tom wrote that front-wheel/tyre seen date-code 1025
      Then tyres.age-hand-over is fault

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told date-code 1025
      And rear-wheel/tyre told date-code 1025
      Then tyres.age-hand-over is missing

    Scenario Outline: the day before, the day itself and the day after
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is <day>
      And front-wheel/tyre seen date-code <code>
      Then tyres.age-hand-over is <state> at front-wheel/tyre
      Examples:
        | day        | code | state |
        | 2026-11-21 | 4720 | met   |
        | 2026-11-22 | 4720 | met   |
        | 2026-11-23 | 4720 | fault |

    Scenario Outline: three digits are older than any limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code <code>
      Then tyres.age-hand-over is fault at front-wheel/tyre
      And it says "over 25 years old"
      Examples:
        | code |
        | 031  |

    Scenario Outline: no code that can be read
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code <code>
      Then tyres.age-hand-over is missing at front-wheel/tyre
      Examples:
        | code      |
        | none      |
        | illegible |

    Scenario: nobody read a code
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.age-hand-over is missing
      And it holds hand-over and no other gate
      And it is safety-critical

    Scenario: an examination does not carry an aged tyre to a new owner
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And front-wheel/casing seen examination sound
      Then tyres.age-hand-over is fault at front-wheel/tyre

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And front-wheel/tyre was replaced
      Then tyres.age-hand-over is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And rear-wheel/tyre seen date-code 1025
      And front-wheel was <work>
      Then tyres.age-hand-over is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: a tyre too old for a new owner is replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for hand-over
      And nothing is written for tyres.age-hand-over
      And front-wheel/tyre seen date-code 2019
      Then tyres.age-hand-over is fault
      And for hand-over front-wheel/tyre is to be replaced first

  @tyres.aged-examination
  Rule: An aged tyre goes on the road only when it was examined
    Scenario: young tyres pass on their date
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And rear-wheel/tyre seen date-code 1025
      Then tyres.aged-examination is met
      And it holds until 2031-03-09

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And there was the defect "not as it should be"
      And rear-wheel/tyre seen date-code 1025
      And tom wrote that front-wheel/tyre seen date-code 1025
      Then tyres.aged-examination is fault

    Scenario Outline: the day before, the day itself and the day after, not examined
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is <day>
      And front-wheel/tyre seen date-code 4720
      Then tyres.aged-examination is <state> at front-wheel/tyre
      Examples:
        | day        | state   |
        | 2026-11-21 | met     |
        | 2026-11-22 | met     |
        | 2026-11-23 | missing |

    Scenario: an aged tyre examined inside and out
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1025
      And front-wheel/casing seen examination sound 11 months ago
      Then tyres.aged-examination is met
      And it says "examined inside and out"
      And it notes "keeps the speed down"

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told date-code 1018
      And rear-wheel/tyre seen date-code 1025
      And front-wheel/casing seen examination sound 11 months ago
      Then tyres.aged-examination is missing

    Scenario: an aged tyre examined too long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1025
      And front-wheel/casing seen examination sound 13 months ago
      Then tyres.aged-examination is missing at front-wheel/tyre
      And it says "not examined inside and out within twelve months"

    Scenario: an aged tyre examined and not sound
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1025
      And front-wheel/casing seen examination separating
      Then tyres.aged-examination is fault at front-wheel/tyre
      And it holds road-test, hand-over and no other gate

    Scenario Outline: an examination does not stand in for the code
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code <code>
      And front-wheel/casing seen examination sound
      Then tyres.aged-examination is missing at front-wheel/tyre
      Examples:
        | code      |
        | none      |
        | illegible |

    Scenario: no code and nobody examined it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.aged-examination is missing
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And front-wheel/casing seen examination sound
      And front-wheel/tyre was replaced
      Then tyres.aged-examination is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And rear-wheel/tyre seen date-code 1025
      And front-wheel was <work>
      Then tyres.aged-examination is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

  @tyres.casing
  Rule: The casing of an aged tyre is sound inside and out
    Scenario: young tyres need no examination
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1025
      And rear-wheel/tyre seen date-code 1025
      Then tyres.casing is not applicable

    Scenario: both aged tyres examined
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1118
      And front-wheel/casing seen examination sound
      And rear-wheel/casing seen examination sound
      Then tyres.casing is met
      And it holds until 2027-11-25

    Scenario Outline: what the examination shows
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1025
      And front-wheel/casing seen examination <answer>
      Then tyres.casing is fault at front-wheel/tyre
      Examples:
        | answer             |
        | cracked            |
        | separating         |
        | cord-showing       |
        | repaired-unsoundly |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1025
      And front-wheel/casing seen examination cracked
      And tom wrote that front-wheel/casing seen examination sound
      Then tyres.casing is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1025
      And front-wheel/casing seen examination cracked
      Then tyres.casing is fault
      And it holds road-test, hand-over and no other gate

    Scenario: an aged tyre nobody examined
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1025
      Then tyres.casing is missing at front-wheel/tyre

    Scenario: a tyre of unknown age nobody examined
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.casing is missing
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: told that it was examined
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1025
      And front-wheel/casing told examination sound
      Then tyres.casing is missing at front-wheel/tyre

    Scenario: examined too long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1025
      And front-wheel/casing seen examination sound 13 months ago
      Then tyres.casing is stale at front-wheel/tyre

    Scenario: put back on its rim after the examination
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre was removed
      And front-wheel/casing seen examination sound
      And front-wheel/tyre was refitted
      And front-wheel/tyre seen date-code 1018
      Then tyres.casing is met at front-wheel/tyre

    Scenario Outline: work after the examination
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1025
      And front-wheel/casing seen examination sound
      And <point> was <work>
      Then tyres.casing is stale at front-wheel/tyre
      Examples:
        | point            | work     |
        | front-wheel/tyre | repaired |
        | front-wheel/tyre | replaced |
        | front-wheel/tyre | damaged  |
        | machine          | damaged  |

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen date-code 1018
      And rear-wheel/tyre seen date-code 1118
      And front-wheel/casing seen examination sound
      And rear-wheel/casing seen examination sound
      And front-wheel was <work>
      Then tyres.casing is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

Feature: Hydraulics
  Hoses, fluid, seals, and the air that must not be in them.

  @brakes.hose-age
  Rule: No rubber hose is too old

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen date-mark <mark>
      Then brakes.hose-age is <state> at front-brake/hydraulic/hose

      # 6 years: common practice; on 25 November 2026 a hose of 25 November 2020 is just 6 years old,
      # and a month or year counts from its first day
      Examples:
        | mark       | state |
        | 2023-05    | met   |
        | 2020-12    | met   |
        | 2020-11-25 | met   |
        | 2020-11-24 | fault |
        | 2020-11    | fault |
        | 1974       | fault |

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen date-mark 2023-05
      And there was the defect "not as it should be"
      And tom wrote that front-brake/hydraulic/hose seen date-mark 2023-05
      Then brakes.hose-age is fault

    Scenario: it lapses by itself
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2029-05-11
      And front-brake/hydraulic/hose seen date-mark 2023-05-10 4 years ago
      Then brakes.hose-age is fault at front-brake/hydraulic/hose

    Scenario: no legible mark
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.hose-age is missing at front-brake/hydraulic/hose
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: told by the seller
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose told date-mark 2024-05
      Then brakes.hose-age is missing at front-brake/hydraulic/hose

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen date-mark 2023-05
      And <point> was <work>
      Then brakes.hose-age is met at front-brake/hydraulic/hose

      Examples:
        | point                      | work     |
        | front-brake/hydraulic/hose | removed  |
        | front-brake/hydraulic      | refitted |

    Scenario: not asked without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.hose-age is not applicable

    Scenario: work that leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen date-mark 2023-05
      And front-brake/hydraulic was opened
      Then brakes.hose-age is met at front-brake/hydraulic/hose

    Scenario: an old hose is replaced, whatever it looks like
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for brakes.hose-age
      And front-brake/hydraulic/hose seen date-mark 2017-05
      Then brakes.hose-age is fault
      And for road-test front-brake/hydraulic/hose is to be replaced first

  @brakes.hose-condition
  Rule: Every hose is whole

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-condition sound
      Then brakes.hose-condition is met at front-brake/hydraulic/hose
      And it holds until 2027-05-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-condition <found>
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

      Examples:
        | found     |
        | cracked   |
        | chafed    |
        | swollen   |
        | flattened |
        | weeping   |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.hose-condition is missing at front-brake/hydraulic/hose
      And it holds road-test, hand-over and no other gate

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose told hose-condition sound
      Then brakes.hose-condition is missing at front-brake/hydraulic/hose

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-condition sound <ago> months ago
      Then brakes.hose-condition is <state> at front-brake/hydraulic/hose

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-condition sound
      And <point> was <work>
      Then brakes.hose-condition is stale at front-brake/hydraulic/hose

      Examples:
        | point   | work    |
        | machine | damaged |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-condition sound
      And <point> was <work>
      Then brakes.hose-condition is met at front-brake/hydraulic/hose

      Examples:
        | point                      | work     |
        | front-brake/hydraulic/hose | removed  |
        | front-brake/hydraulic      | refitted |

    Scenario: not asked of a machine without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.hose-condition is not applicable

    Scenario: a cracked hose is replaced, not mended
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for brakes.hose-condition
      And front-brake/hydraulic/hose seen hose-condition cracked
      Then brakes.hose-condition is fault
      And for road-test front-brake/hydraulic/hose is to be replaced first

  @brakes.hose-run
  Rule: Every hose runs free over the whole movement

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose tried hose-run free
      Then brakes.hose-run is met at front-brake/hydraulic/hose
      And it does not lapse by itself

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-run free
      Then brakes.hose-run is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose tried hose-run <found>
      Then brakes.hose-run is fault at front-brake/hydraulic/hose

      Examples:
        | found     |
        | twisted   |
        | stretched |
        | pinched   |
        | rubbing   |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose tried hose-run twisted
      And tom wrote that front-brake/hydraulic/hose tried hose-run free
      Then brakes.hose-run is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.hose-run is missing at front-brake/hydraulic/hose
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose told hose-run free
      Then brakes.hose-run is missing at front-brake/hydraulic/hose

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose tried hose-run free
      And <point> was <work>
      Then brakes.hose-run is stale at front-brake/hydraulic/hose

      Examples:
        | point                      | work     |
        | front-brake/hydraulic/hose | removed  |
        | front-brake/hydraulic      | refitted |
        | front-brake/hydraulic      | opened   |
        | front-brake/hydraulic/hose | replaced |
        | front-brake/caliper        | removed  |
        | steering                   | replaced |
        | front-fork                 | replaced |
        | machine                    | damaged  |
        | front-brake/hydraulic/hose | adjusted |
        | headlamp/shell             | opened   |

    Scenario: not asked of a machine without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.hose-run is not applicable

  @brakes.hard-lines
  Rule: The metal lines are sound

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/line seen line-condition sound
      Then brakes.hard-lines is met at front-brake/hydraulic/line
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/line seen line-condition <found>
      Then brakes.hard-lines is fault at front-brake/hydraulic/line

      Examples:
        | found     |
        | rusted    |
        | chafed    |
        | flattened |
        | loose     |
        | weeping   |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/line seen line-condition rusted
      And tom wrote that front-brake/hydraulic/line seen line-condition sound
      Then brakes.hard-lines is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.hard-lines is missing at front-brake/hydraulic/line
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/line told line-condition sound
      Then brakes.hard-lines is missing at front-brake/hydraulic/line

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/line seen line-condition sound <ago> months ago
      Then brakes.hard-lines is <state> at front-brake/hydraulic/line

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/line seen line-condition sound
      And <point> was <work>
      Then brakes.hard-lines is stale at front-brake/hydraulic/line

      Examples:
        | point   | work    |
        | machine | damaged |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/line seen line-condition sound
      And <point> was <work>
      Then brakes.hard-lines is met at front-brake/hydraulic/line

      Examples:
        | point                      | work     |
        | front-brake/hydraulic/line | removed  |
        | front-brake/hydraulic      | refitted |

    Scenario: not asked of a machine without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.hard-lines is not applicable

    Scenario: there are none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/line seen line-condition none-fitted
      Then brakes.hard-lines is met

  @brakes.master-cylinder
  Rule: The master cylinder is dry

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen seal-weep dry
      Then brakes.master-cylinder is met at front-brake/hydraulic/master-cylinder
      And it holds until 2027-05-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen seal-weep <found>
      Then brakes.master-cylinder is fault at front-brake/hydraulic/master-cylinder

      Examples:
        | found   |
        | weeping |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen seal-weep weeping
      And tom wrote that front-brake/hydraulic/master-cylinder seen seal-weep dry
      Then brakes.master-cylinder is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.master-cylinder is missing at front-brake/hydraulic/master-cylinder
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder told seal-weep dry
      Then brakes.master-cylinder is missing at front-brake/hydraulic/master-cylinder

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen seal-weep dry <ago> months ago
      Then brakes.master-cylinder is <state> at front-brake/hydraulic/master-cylinder

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen seal-weep dry
      And <point> was <work>
      Then brakes.master-cylinder is stale at front-brake/hydraulic/master-cylinder

      Examples:
        | point                                 | work     |
        | front-brake/hydraulic/master-cylinder | removed  |
        | front-brake/hydraulic                 | refitted |
        | front-brake/hydraulic                 | opened   |
        | front-brake/hydraulic/hose            | replaced |
        | machine                               | damaged  |

    Scenario: not asked of a machine without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.master-cylinder is not applicable

  @brakes.fluid-grade
  Rule: The fluid is of the grade marked on the reservoir or one that boils later, and silicone never meets glycol

    Scenario Outline: marked and filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked <marked>
      And front-brake/hydraulic/fluid seen grade-filled <filled>
      Then brakes.fluid-grade is <state> at front-brake/hydraulic/fluid

      Examples:
        | marked  | filled  | state |
        | DOT-3   | DOT-3   | met   |
        | DOT-4   | DOT-4   | met   |
        | DOT-5   | DOT-5   | met   |
        | DOT-5.1 | DOT-5.1 | met   |
        | DOT-4   | DOT-3   | fault |
        | DOT-3   | DOT-4   | met   |
        | DOT-3   | DOT-5.1 | met   |
        | DOT-4   | DOT-5.1 | met   |
        | DOT-5.1 | DOT-4   | fault |
        | DOT-5.1 | DOT-3   | fault |
        | DOT-4   | DOT-5   | fault |
        | DOT-5   | DOT-5.1 | fault |
        | DOT-5.1 | DOT-5   | fault |
        | DOT-3-or-DOT-4 | DOT-3   | met   |
        | DOT-3-or-DOT-4 | DOT-4   | met   |
        | DOT-3-or-DOT-4 | DOT-5.1 | met   |
        | DOT-3-or-DOT-4 | DOT-5   | fault |
        | unknown | DOT-4   | fault |
        | DOT-4   | unknown | fault |
        | unknown | unknown | fault |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked unknown
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      And tom wrote that front-brake/hydraulic/master-cylinder seen grade-marked DOT-4
      Then brakes.fluid-grade is fault

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder told grade-marked DOT-3
      And front-brake/hydraulic/fluid seen grade-filled DOT-3
      Then brakes.fluid-grade is missing

    Scenario: found so, and then drained
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked unknown
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      And tom wrote that front-brake/hydraulic was drained
      Then brakes.fluid-grade is stale

    Scenario: filled as marked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked DOT-4
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      Then brakes.fluid-grade is met at front-brake/hydraulic/fluid
      And it says "filled with DOT-4 as marked on the reservoir"
      And it holds until 2028-11-25

    Scenario Outline: silicone and glycol met
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked <marked>
      And front-brake/hydraulic/fluid seen grade-filled <filled>
      Then brakes.fluid-grade is fault at front-brake/hydraulic/fluid
      And it notes "must never meet"

      # silicone must not be mixed with glycol grades: a workshop's advice, read in a copy
      Examples:
        | marked | filled  |
        | DOT-4  | DOT-5   |
        | DOT-5  | DOT-4   |
        | DOT-5  | DOT-5.1 |

    Scenario Outline: fluid came in and its grade was read, and the mark is as it was
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked DOT-4
      And front-brake/hydraulic/fluid was <work>
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      Then brakes.fluid-grade is met at front-brake/hydraulic/fluid

      Examples:
        | work      |
        | drained   |
        | filled    |
        | topped-up |

    Scenario: nobody knows what is in it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked DOT-4
      Then brakes.fluid-grade is missing at front-brake/hydraulic/fluid
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the seller says what is in it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked DOT-4
      And front-brake/hydraulic/fluid told grade-filled DOT-4
      Then brakes.fluid-grade is missing at front-brake/hydraulic/fluid

    Scenario: found unknown
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked DOT-4
      And front-brake/hydraulic/fluid told grade-filled unknown
      Then brakes.fluid-grade is fault

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked DOT-4 <ago> months ago
      And front-brake/hydraulic/fluid seen grade-filled DOT-4 <ago> months ago
      Then brakes.fluid-grade is <state> at front-brake/hydraulic/fluid

      Examples:
        | ago | state |
        | 24  | met   |
        | 25  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked DOT-4
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      And <point> was <work>
      Then brakes.fluid-grade is stale at front-brake/hydraulic/fluid

      Examples:
        | point                       | work      |
        | front-brake/hydraulic/fluid | removed   |
        | front-brake/hydraulic       | refitted  |
        | front-brake/hydraulic       | opened    |
        | front-brake/hydraulic/hose  | replaced  |
        | front-brake/hydraulic       | filled    |
        | front-brake/hydraulic       | topped-up |
        | front-brake/hydraulic       | drained   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/master-cylinder seen grade-marked DOT-4
      And front-brake/hydraulic/fluid seen grade-filled DOT-4
      And <point> was <work>
      Then brakes.fluid-grade is met at front-brake/hydraulic/fluid

      Examples:
        | point                                 | work     |
        | front-brake/hydraulic/master-cylinder | removed  |
        | front-brake/hydraulic/master-cylinder | refitted |

    Scenario: not asked without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.fluid-grade is not applicable

  @brakes.fluid-age
  Rule: The fluid is fresh enough

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid was filled <ago> months ago
      Then brakes.fluid-age is <state> at front-brake/hydraulic/fluid

      # 24 months: common practice
      Examples:
        | ago | state |
        | 6   | met   |
        | 24  | met   |
        | 25  | fault |

    Scenario Outline: to the day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid was filled <ago> days ago
      Then brakes.fluid-age is <state> at front-brake/hydraulic/fluid

      # 25 November 2024 to 25 November 2026 is 730 days
      Examples:
        | ago | state |
        | 730 | met   |
        | 731 | fault |

    Scenario: nobody filled it here
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.fluid-age is missing at front-brake/hydraulic/fluid
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid was filled
      And <point> was <work>
      Then brakes.fluid-age is stale at front-brake/hydraulic/fluid

      Examples:
        | point                       | work     |
        | front-brake/hydraulic/fluid | removed  |
        | front-brake/hydraulic       | refitted |
        | front-brake/hydraulic       | opened   |
        | front-brake/hydraulic/hose  | replaced |
        | front-brake/hydraulic       | drained  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid was filled
      And <point> was <work>
      Then brakes.fluid-age is met at front-brake/hydraulic/fluid

      Examples:
        | point                                 | work     |
        | front-brake/hydraulic/master-cylinder | removed  |
        | front-brake/hydraulic/master-cylinder | refitted |

    Scenario: filled after it was opened
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic was opened
      And front-brake/hydraulic/fluid was filled
      Then brakes.fluid-age is met at front-brake/hydraulic/fluid

    Scenario: not asked without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.fluid-age is not applicable

  @brakes.fluid-level
  Rule: The fluid stands between the marks

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen fluid-level between-the-marks
      Then brakes.fluid-level is met at front-brake/hydraulic/fluid

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen fluid-level <found>
      Then brakes.fluid-level is fault at front-brake/hydraulic/fluid

      Examples:
        | found     |
        | low       |
        | over-full |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen fluid-level low
      And tom wrote that front-brake/hydraulic/fluid seen fluid-level between-the-marks
      Then brakes.fluid-level is fault

    Scenario: found so, and then filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen fluid-level low
      And tom wrote that front-brake/hydraulic was filled
      Then brakes.fluid-level is stale

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.fluid-level is missing at front-brake/hydraulic/fluid
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid told fluid-level between-the-marks
      Then brakes.fluid-level is missing at front-brake/hydraulic/fluid

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen fluid-level between-the-marks <ago> days ago
      Then brakes.fluid-level is <state> at front-brake/hydraulic/fluid

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/fluid seen fluid-level between-the-marks
      And <point> was <work>
      Then brakes.fluid-level is stale at front-brake/hydraulic/fluid

      Examples:
        | point                                 | work      |
        | front-brake/hydraulic/fluid           | removed   |
        | front-brake/hydraulic                 | refitted  |
        | front-brake/hydraulic                 | opened    |
        | front-brake/hydraulic/hose            | replaced  |
        | front-brake/hydraulic                 | bled      |
        | front-brake/hydraulic                 | filled    |
        | front-brake/hydraulic                 | topped-up |
        | front-brake/hydraulic                 | drained   |
        | front-brake/caliper                   | removed   |
        | front-brake/shoes                     | replaced  |
        | front-brake/hydraulic/master-cylinder | adjusted  |

    Scenario: not asked of a machine without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.fluid-level is not applicable

  @brakes.bled
  Rule: The circuit was bled after it was last opened

    Scenario: bled after opening
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic was opened
      And front-brake/hydraulic was bled
      Then brakes.bled is met
      And it does not lapse by itself

    Scenario: opened again after bleeding
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic was bled
      And front-brake/hydraulic/hose was replaced
      Then brakes.bled is stale

    Scenario: nobody bled it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.bled is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: trying it is not bleeding it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic was tested
      Then brakes.bled is missing

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic was bled
      And <point> was <work>
      Then brakes.bled is stale at front-brake/hydraulic

      Examples:
        | point                        | work     |
        | front-brake/hydraulic        | removed  |
        | front-brake                  | refitted |
        | front-brake/hydraulic        | opened   |
        | front-brake/hydraulic/hose   | replaced |
        | front-brake/caliper/pistons  | opened   |
        | front-brake/caliper/pistons  | stripped |
        | front-brake/caliper/pistons  | repaired |
        | front-brake/caliper/pistons  | replaced |
        | front-brake/hydraulic        | drained  |
        | front-brake/hydraulic        | filled   |
        | front-brake/hydraulic/unions | loosened |
        | front-brake/hydraulic/unions | adjusted |

    Scenario Outline: what leaves the circuit closed does not undo it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic was bled
      And <point> was <work>
      Then brakes.bled is met

      Examples:
        | point                                 | work      |
        | front-brake/caliper                   | removed   |
        | front-brake/caliper                   | refitted  |
        | front-brake/caliper/inner-pad         | replaced  |
        | front-wheel                           | removed   |
        | front-brake/hydraulic/fluid           | topped-up |
        | front-brake/hydraulic/master-cylinder | removed   |
        | front-brake/hydraulic/master-cylinder | refitted  |

    Scenario: not asked without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.bled is not applicable

  @brakes.lever-feel
  Rule: The control is firm

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm
      Then brakes.lever-feel is met at front-brake/control

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel <found>
      Then brakes.lever-feel is fault at front-brake/control

      Examples:
        | found             |
        | spongy            |
        | sinks             |
        | comes-to-the-stop |

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.lever-feel is missing at front-brake/control
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control told lever-feel firm
      Then brakes.lever-feel is missing at front-brake/control

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm <ago> days ago
      Then brakes.lever-feel is <state> at front-brake/control

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm
      And <point> was <work>
      Then brakes.lever-feel is stale at front-brake/control

      Examples:
        | point                        | work     |
        | front-brake/control          | removed  |
        | front-brake                  | refitted |
        | front-brake/hydraulic        | opened   |
        | front-brake/hydraulic/hose   | replaced |
        | front-brake/caliper/pistons  | opened   |
        | front-brake/caliper/pistons  | stripped |
        | front-brake/caliper/pistons  | repaired |
        | front-brake/caliper/pistons  | replaced |
        | front-brake/hydraulic        | bled     |
        | front-brake/caliper          | removed  |
        | front-brake/disc             | replaced |
        | front-wheel                  | removed  |
        | machine                      | damaged  |
        | controls/levers              | replaced |
        | controls/levers              | adjusted |
        | front-brake/hydraulic        | drained  |
        | front-brake/stop-lamp-switch | damaged  |

    Scenario: not asked of a machine without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.lever-feel is not applicable

    Scenario: looking is not trying
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control seen lever-feel firm
      Then brakes.lever-feel is missing at front-brake/control

    Scenario Outline: work that undoes it on a hydraulic drum
      Given a motorcycle with a hydraulic drum in front and a cable drum behind
      And front-brake/control tried lever-feel firm
      And <point> was <work>
      Then brakes.lever-feel is stale at front-brake/control

      Examples:
        | point                      | work     |
        | front-brake/control        | removed  |
        | front-brake                | refitted |
        | front-brake/hydraulic      | opened   |
        | front-brake/hydraulic/hose | replaced |
        | front-brake/hydraulic      | bled     |
        | front-brake/shoes          | replaced |
        | front-brake/drum           | replaced |
        | front-wheel                | removed  |

  @brakes.hold-test
  Rule: The control holds under a steady pull

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control measured hold-time <time>
      Then brakes.hold-test is <state> at front-brake/control
      And the limit came from "Maine"

      # 1 minute: Maine 16-222 C.M.R. ch. 1, 190-05, read in a copy
      Examples:
        | time       | state |
        | 59 s ± 1 s | fault |
        | 60 s ± 1 s | doubt |
        | 61 s ± 1 s | doubt |
        | 62 s ± 1 s | met   |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control measured hold-time 59 s ± 1 s
      And tom wrote that front-brake/control measured hold-time 62 s ± 1 s
      Then brakes.hold-test is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried hold-time 62 s
      Then brakes.hold-test is missing

    Scenario: nobody timed it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.hold-test is missing at front-brake/control
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control measured hold-time 70 s ± 1 s <ago> days ago
      Then brakes.hold-test is <state> at front-brake/control

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control measured hold-time 70 s ± 1 s
      And <point> was <work>
      Then brakes.hold-test is stale at front-brake/control

      Examples:
        | point                        | work      |
        | front-brake/control          | removed   |
        | front-brake                  | refitted  |
        | front-brake/hydraulic        | opened    |
        | front-brake/hydraulic/hose   | replaced  |
        | front-brake/caliper/pistons  | opened    |
        | front-brake/caliper/pistons  | stripped  |
        | front-brake/caliper/pistons  | repaired  |
        | front-brake/caliper/pistons  | replaced  |
        | front-brake/hydraulic        | bled      |
        | machine                      | damaged   |
        | front-brake/hydraulic        | drained   |
        | front-brake/hydraulic/unions | tightened |
        | front-brake/hydraulic/unions | torqued   |
        | front-brake/hydraulic/unions | loosened  |
        | front-brake/hydraulic/unions | adjusted  |
        | front-brake/stop-lamp-switch | damaged   |

    Scenario: not asked without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.hold-test is not applicable

  @brakes.leak
  Rule: The circuit stays dry under pressure

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic tried leak-under-pressure dry
      Then brakes.leak is met at front-brake/hydraulic

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic seen leak-under-pressure dry
      Then brakes.leak is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic tried leak-under-pressure <found>
      Then brakes.leak is fault at front-brake/hydraulic

      Examples:
        | found |
        | wet   |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic tried leak-under-pressure wet
      And tom wrote that front-brake/hydraulic tried leak-under-pressure dry
      Then brakes.leak is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.leak is missing at front-brake/hydraulic
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic told leak-under-pressure dry
      Then brakes.leak is missing at front-brake/hydraulic

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic tried leak-under-pressure dry <ago> days ago
      Then brakes.leak is <state> at front-brake/hydraulic

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic tried leak-under-pressure dry
      And <point> was <work>
      Then brakes.leak is stale at front-brake/hydraulic

      Examples:
        | point                        | work      |
        | front-brake/hydraulic        | removed   |
        | front-brake                  | refitted  |
        | front-brake/hydraulic        | opened    |
        | front-brake/hydraulic/hose   | replaced  |
        | front-brake/caliper/pistons  | opened    |
        | front-brake/caliper/pistons  | stripped  |
        | front-brake/caliper/pistons  | repaired  |
        | front-brake/caliper/pistons  | replaced  |
        | front-brake/hydraulic        | bled      |
        | machine                      | damaged   |
        | front-brake/hydraulic/unions | tightened |
        | front-brake/hydraulic        | drained   |
        | front-brake/hydraulic/unions | torqued   |
        | front-brake/hydraulic/unions | loosened  |
        | front-brake/hydraulic/unions | adjusted  |
        | front-brake/stop-lamp-switch | damaged   |

    Scenario: not asked of a machine without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.leak is not applicable

    Scenario: the seller tells of a leak
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic told leak-under-pressure wet
      Then brakes.leak is fault at front-brake/hydraulic

  @brakes.banjo-torque
  Rule: Banjo bolts and unions were torqued after they were last fitted

    Scenario: torqued after fitting
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions was refitted
      And front-brake/hydraulic/unions was torqued
      Then brakes.banjo-torque is met
      And it does not lapse by itself

    Scenario: tightened by feel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions was tightened
      Then brakes.banjo-torque is missing

    Scenario: nobody torqued them
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.banjo-torque is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: undone and not torqued again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions was torqued
      And front-brake/hydraulic/hose was replaced
      Then brakes.banjo-torque is stale

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions was torqued
      And <point> was <work>
      Then brakes.banjo-torque is stale at front-brake/hydraulic/unions

      Examples:
        | point                        | work     |
        | front-brake/hydraulic/unions | removed  |
        | front-brake/hydraulic        | refitted |
        | front-brake/hydraulic        | opened   |
        | front-brake/hydraulic/hose   | replaced |
        | front-brake/caliper/pistons  | opened   |
        | front-brake/caliper/pistons  | stripped |
        | front-brake/caliper/pistons  | repaired |
        | front-brake/caliper/pistons  | replaced |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions was torqued
      And <point> was <work>
      Then brakes.banjo-torque is met at front-brake/hydraulic/unions

      Examples:
        | point                                 | work     |
        | front-brake/hydraulic/master-cylinder | removed  |
        | front-brake/hydraulic/master-cylinder | refitted |

    Scenario: not asked without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.banjo-torque is not applicable

  @brakes.banjo-washers
  Rule: The sealing washers are new since the joint was opened

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions seen sealing-washers new
      Then brakes.banjo-washers is met at front-brake/hydraulic/unions
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions seen sealing-washers <found>
      Then brakes.banjo-washers is fault at front-brake/hydraulic/unions

      Examples:
        | found      |
        | used-again |
        | missing    |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions seen sealing-washers used-again
      And tom wrote that front-brake/hydraulic/unions seen sealing-washers new
      Then brakes.banjo-washers is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.banjo-washers is missing at front-brake/hydraulic/unions
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions told sealing-washers new
      Then brakes.banjo-washers is missing at front-brake/hydraulic/unions

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions seen sealing-washers new
      And <point> was <work>
      Then brakes.banjo-washers is stale at front-brake/hydraulic/unions

      Examples:
        | point                        | work     |
        | front-brake/hydraulic/unions | removed  |
        | front-brake/hydraulic        | refitted |
        | front-brake/hydraulic        | opened   |
        | front-brake/hydraulic/hose   | replaced |
        | front-brake/caliper/pistons  | opened   |
        | front-brake/caliper/pistons  | stripped |
        | front-brake/caliper/pistons  | repaired |
        | front-brake/caliper/pistons  | replaced |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions seen sealing-washers new
      And <point> was <work>
      Then brakes.banjo-washers is met at front-brake/hydraulic/unions

      Examples:
        | point                                 | work     |
        | front-brake/hydraulic/master-cylinder | removed  |
        | front-brake/hydraulic/master-cylinder | refitted |

    Scenario: not asked of a machine without hydraulics
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.banjo-washers is not applicable

    Scenario: never opened here and dry
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions seen sealing-washers undisturbed
      Then brakes.banjo-washers is met

  @brakes.caliper-bolts
  Rule: The caliper bolts were torqued after the caliper was last fitted

    Scenario: torqued after fitting
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper was refitted
      And front-brake/caliper/bolts was torqued
      Then brakes.caliper-bolts is met

    Scenario: refitted after torquing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/bolts was torqued
      And front-brake/caliper was removed
      And front-brake/caliper was refitted
      Then brakes.caliper-bolts is stale

    Scenario: tightened by feel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/bolts was tightened
      Then brakes.caliper-bolts is missing

    Scenario: nobody torqued them
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.caliper-bolts is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/bolts was torqued
      And <point> was <work>
      Then brakes.caliper-bolts is stale at front-brake/caliper/bolts

      Examples:
        | point                     | work     |
        | front-brake/caliper/bolts | removed  |
        | front-brake/caliper       | refitted |

    Scenario: not asked of drums
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.caliper-bolts is not applicable

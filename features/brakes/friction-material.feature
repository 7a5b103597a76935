Feature: Friction material
  What stops the machine wears away. It is measured, and looked at, at every pad and shoe.

  @brakes.pad-thickness
  Rule: Every disc pad keeps enough friction material

    Scenario: good pads
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And front-brake/caliper/outer-pad measured thickness 3.0 mm ± 0.1 mm
      Then brakes.pad-thickness is met
      And it holds until 2027-11-25

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness <thickness>
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad

      # 1.5 mm: common practice, and the GB inspection manual (read in a copy)
      Examples:
        | thickness       | state |
        | 1.4 mm ± 0.1 mm | fault |
        | 1.5 mm ± 0.1 mm | doubt |
        | 1.6 mm ± 0.1 mm | doubt |
        | 1.7 mm ± 0.1 mm | met   |

    Scenario: one worn pad condemns the brake
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And front-brake/caliper/outer-pad measured thickness 1.2 mm ± 0.1 mm
      Then brakes.pad-thickness is fault
      And it says "at least 1.5 mm"

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.pad-thickness is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: one caliper of two was measured
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      And front-brake/left-caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And front-brake/left-caliper/outer-pad measured thickness 3.1 mm ± 0.1 mm
      Then brakes.pad-thickness is met at front-brake/left-caliper/outer-pad
      And brakes.pad-thickness is missing at front-brake/right-caliper/inner-pad
      And brakes.pad-thickness is missing at rear-brake/caliper/inner-pad
      And brakes.pad-thickness is missing

    Scenario: looking is not measuring
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad seen thickness 3.1 mm
      Then brakes.pad-thickness is missing at front-brake/caliper/inner-pad

    Scenario Outline: a stricter figure from the maker replaces practice
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says brakes.pad-thickness at least 2.0 mm
      And front-brake/caliper/inner-pad measured thickness <thickness>
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad
      And the limit came from "Lark 250 workshop manual"

      Examples:
        | thickness       | state |
        | 1.9 mm ± 0.1 mm | fault |
        | 2.2 mm ± 0.1 mm | met   |

    Scenario: a looser figure from the maker does not loosen the law
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says brakes.pad-thickness at least 1.0 mm
      And front-brake/caliper/inner-pad measured thickness 1.3 mm ± 0.1 mm
      Then brakes.pad-thickness is fault at front-brake/caliper/inner-pad
      And the limit came from "inspection manual"

    Scenario: nobody looked for the maker's figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no word from the maker on brakes.pad-thickness
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      Then brakes.pad-thickness is missing at front-brake/caliper/inner-pad

    Scenario Outline: Virginia is stricter
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And front-brake/caliper/inner-pad measured thickness <thickness>
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad
      And the limit came from "19VAC30-70-340"

      # 2/32 in = 1.5875 mm: 19VAC30-70-340 B 4, read in the official text
      Examples:
        | thickness        | state |
        | 1.58 mm ± 0.1 mm | fault |
        | 1.59 mm ± 0.1 mm | doubt |
        | 1.8 mm ± 0.1 mm  | met   |

    Scenario Outline: the Union sets no number, and what the law there sets is not known
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And front-brake/caliper/inner-pad measured thickness <thickness>
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad

      # 1.5 mm: common practice
      Examples:
        | thickness       | state   |
        | 1.5 mm ± 0.1 mm | missing |
        | 1.3 mm ± 0.1 mm | fault   |
        | 1.7 mm ± 0.1 mm | missing |

    Scenario: Germany names linings and gives no number
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And front-brake/caliper/inner-pad measured thickness 1.7 mm ± 0.1 mm
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad
      And the limit came from "common practice"

    Scenario: no local figure is known in Maryland
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-MD
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      Then brakes.pad-thickness is missing at front-brake/caliper/inner-pad

    Scenario Outline: sintered pads may be thinner
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the linings are sintered
      And front-brake/caliper/inner-pad measured thickness <thickness>
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad

      # 1.0 mm: common practice, and the GB inspection manual (read in a copy)
      Examples:
        | thickness       | state |
        | 0.9 mm ± 0.1 mm | fault |
        | 1.0 mm ± 0.1 mm | doubt |
        | 1.2 mm ± 0.1 mm | met   |

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm <ago> months ago
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And <point> was <work>
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad

      Examples:
        | point                         | work     |
        | front-brake/caliper/inner-pad | removed  |
        | front-brake/caliper           | refitted |

    Scenario: not asked of drums
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.pad-thickness is not applicable

    Scenario: a worn pad is replaced, not mended
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for brakes.pad-thickness
      And front-brake/caliper/inner-pad measured thickness 0.9 mm ± 0.1 mm
      Then brakes.pad-thickness is fault
      And for road-test front-brake/caliper/inner-pad is to be replaced first

    Scenario: what it is held against, pad thickness
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 1.7 mm ± 0.1 mm
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad
      And it says "at least 1.5 mm (MOT inspection manual: motorcycles (older edition, classes 1 and 2), brakes, friction material, read in a copy)"
      And it says "also at least 1.5 mm (common practice)"

    Scenario: what it is held against, pad thickness sintered
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the linings are sintered
      And front-brake/caliper/inner-pad measured thickness 1.2 mm ± 0.1 mm
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad
      And it says "at least 1.0 mm (MOT inspection manual: motorcycles (older edition, classes 1 and 2), brakes, sintered friction material, read in a copy)"
      And it says "also at least 1.0 mm (common practice)"

    Scenario: what it is held against in Virginia, pad thickness
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And front-brake/caliper/inner-pad measured thickness 1.8 mm ± 0.1 mm
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad
      And it says "at least 0.0625 in (19VAC30-70-340, B 4, read in the official text)"
      And it says "also at least 1.5 mm (common practice)"

    Scenario: what it is held against in Virginia, sintered pads
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the linings are sintered
      And the territory is US-VA
      And front-brake/caliper/inner-pad measured thickness 1.9 mm ± 0.1 mm
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad
      And it says "at least 0.0625 in (19VAC30-70-340, B 4, read in the official text); also at least 1.0 mm (common practice)."

  @brakes.pad-difference
  Rule: Both pads of a caliper wear alike, or the caliper hangs

    Scenario: alike
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And front-brake/caliper/outer-pad measured thickness 3.0 mm ± 0.1 mm
      Then brakes.pad-difference is met
      And it holds until 2027-11-25

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And there was the defect "not as it should be"
      And front-brake/caliper/outer-pad measured thickness 3.0 mm ± 0.1 mm
      And tom wrote that front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      Then brakes.pad-difference is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad tried thickness 3.1 mm
      And front-brake/caliper/outer-pad measured thickness 3.0 mm ± 0.1 mm
      Then brakes.pad-difference is missing

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And front-brake/caliper/outer-pad tried thickness 3.0 mm
      Then brakes.pad-difference is missing

    Scenario Outline: on both sides of the limit, whichever pad is thicker
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness <inner>
      And front-brake/caliper/outer-pad measured thickness <outer>
      Then brakes.pad-difference is <state> at front-brake/caliper

      # 1.0 mm: common practice; two readings of ± 0.1 mm leave ± 0.15 mm
      Examples:
        | inner           | outer           | state |
        | 3.1 mm ± 0.1 mm | 2.4 mm ± 0.1 mm | met   |
        | 3.1 mm ± 0.1 mm | 2.1 mm ± 0.1 mm | doubt |
        | 3.1 mm ± 0.1 mm | 2.0 mm ± 0.1 mm | fault |
        | 2.4 mm ± 0.1 mm | 3.1 mm ± 0.1 mm | met   |
        | 2.1 mm ± 0.1 mm | 3.1 mm ± 0.1 mm | doubt |
        | 2.0 mm ± 0.1 mm | 3.1 mm ± 0.1 mm | fault |

    Scenario: one pad was not measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      Then brakes.pad-difference is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And front-brake/caliper/outer-pad measured thickness 3.0 mm ± 0.1 mm
      And <point> was <work>
      Then brakes.pad-difference is met at front-brake/caliper

      Examples:
        | point               | work     |
        | front-brake/caliper | removed  |
        | front-brake         | refitted |

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm <ago> months ago
      And front-brake/caliper/outer-pad measured thickness 3.0 mm ± 0.1 mm <ago> months ago
      Then brakes.pad-difference is <state> at front-brake/caliper

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario: not asked of drums
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.pad-difference is not applicable

  @brakes.pad-fit
  Rule: The pads sit on the disc with everything that holds them

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper seen pad-fit seated
      Then brakes.pad-fit is met at front-brake/caliper
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper seen pad-fit <found>
      Then brakes.pad-fit is fault at front-brake/caliper

      Examples:
        | found        |
        | off-the-disc |
        | loose        |
        | pin-missing  |
        | clip-missing |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper seen pad-fit off-the-disc
      And tom wrote that front-brake/caliper seen pad-fit seated
      Then brakes.pad-fit is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.pad-fit is missing at front-brake/caliper
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper told pad-fit seated
      Then brakes.pad-fit is missing at front-brake/caliper

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper seen pad-fit seated
      And <point> was <work>
      Then brakes.pad-fit is stale at front-brake/caliper

      Examples:
        | point               | work     |
        | front-brake/caliper | removed  |
        | front-brake         | refitted |
        | front-brake/disc    | replaced |
        | front-wheel         | removed  |

    Scenario: not asked of a machine with drums only
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.pad-fit is not applicable

  @brakes.caliper-free
  Rule: Pistons go back and the caliper slides

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper tried piston-movement free
      Then brakes.caliper-free is met at front-brake/caliper
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper tried piston-movement <found>
      Then brakes.caliper-free is fault at front-brake/caliper

      Examples:
        | found  |
        | stiff  |
        | seized |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper tried piston-movement stiff
      And tom wrote that front-brake/caliper tried piston-movement free
      Then brakes.caliper-free is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.caliper-free is missing at front-brake/caliper
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper told piston-movement free
      Then brakes.caliper-free is missing at front-brake/caliper

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper tried piston-movement free <ago> months ago
      Then brakes.caliper-free is <state> at front-brake/caliper

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper tried piston-movement free
      And <point> was <work>
      Then brakes.caliper-free is stale at front-brake/caliper

      Examples:
        | point               | work     |
        | front-brake/caliper | removed  |
        | front-brake         | refitted |

    Scenario: not asked of a machine with drums only
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.caliper-free is not applicable

    Scenario: looking is not trying
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper seen piston-movement free
      Then brakes.caliper-free is missing at front-brake/caliper

  @brakes.shoe-lining
  Rule: The brake shoes keep enough lining

    Scenario: good shoes
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/shoes measured thickness 3.5 mm ± 0.1 mm
      And rear-brake/shoes measured thickness 3.4 mm ± 0.1 mm
      Then brakes.shoe-lining is met

    Scenario Outline: on both sides of the limit for bonded linings
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/shoes measured thickness <thickness>
      Then brakes.shoe-lining is <state> at rear-brake/shoes

      # 1.5 mm: common practice, and the GB inspection manual (read in a copy)
      Examples:
        | thickness       | state |
        | 1.4 mm ± 0.1 mm | fault |
        | 1.5 mm ± 0.1 mm | doubt |
        | 1.7 mm ± 0.1 mm | met   |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/shoes measured thickness 1.4 mm ± 0.1 mm
      And tom wrote that rear-brake/shoes measured thickness 1.7 mm ± 0.1 mm
      Then brakes.shoe-lining is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/shoes tried thickness 1.7 mm
      Then brakes.shoe-lining is missing

    Scenario Outline: on both sides of the limit above the rivet heads
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the linings are riveted
      And rear-brake/shoes measured thickness <thickness>
      Then brakes.shoe-lining is <state> at rear-brake/shoes

      # 1.0 mm: common practice
      Examples:
        | thickness       | state |
        | 0.9 mm ± 0.1 mm | fault |
        | 1.0 mm ± 0.1 mm | doubt |
        | 1.2 mm ± 0.1 mm | met   |

    Scenario Outline: Virginia is stricter, bonded or riveted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And the linings are <lining>
      And rear-brake/shoes measured thickness <thickness>
      Then brakes.shoe-lining is <state> at rear-brake/shoes
      And the limit came from "19VAC30-70-340"

      # 2/32 in = 1.5875 mm: 19VAC30-70-340 B 4, read in the official text
      Examples:
        | lining  | thickness        | state |
        | bonded  | 1.58 mm ± 0.1 mm | fault |
        | bonded  | 1.59 mm ± 0.1 mm | doubt |
        | bonded  | 1.8 mm ± 0.1 mm  | met   |
        | riveted | 1.58 mm ± 0.1 mm | fault |
        | riveted | 1.59 mm ± 0.1 mm | doubt |
        | riveted | 1.8 mm ± 0.1 mm  | met   |

    Scenario: the maker's figure replaces practice
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says brakes.shoe-lining at least 2.0 mm
      And rear-brake/shoes measured thickness 1.8 mm ± 0.1 mm
      Then brakes.shoe-lining is fault at rear-brake/shoes
      And the limit came from "Lark 250 workshop manual"

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.shoe-lining is missing at rear-brake/shoes
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/shoes measured thickness 3.5 mm ± 0.1 mm <ago> months ago
      Then brakes.shoe-lining is <state> at rear-brake/shoes

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/shoes measured thickness 3.5 mm ± 0.1 mm
      And <point> was <work>
      Then brakes.shoe-lining is met at rear-brake/shoes

      Examples:
        | point            | work     |
        | rear-brake/shoes | removed  |
        | rear-brake       | refitted |

    Scenario: not asked of discs
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.shoe-lining is not applicable

    Scenario: worn shoes are replaced, not mended
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for brakes.shoe-lining
      And rear-brake/shoes measured thickness 0.7 mm ± 0.1 mm
      Then brakes.shoe-lining is fault
      And for road-test rear-brake/shoes is to be replaced first

    Scenario: what it is held against, shoe lining
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/shoes measured thickness 1.7 mm ± 0.1 mm
      Then brakes.shoe-lining is met at rear-brake/shoes
      And it says "at least 1.5 mm (MOT inspection manual: motorcycles (older edition, classes 1 and 2), brakes, friction material, read in a copy)"
      And it says "also at least 1.5 mm (common practice)"
      And it holds until 2027-11-25

    Scenario: what it is held against, shoe lining riveted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the linings are riveted
      And rear-brake/shoes measured thickness 1.2 mm ± 0.1 mm
      Then brakes.shoe-lining is met at rear-brake/shoes
      And it says "at least 1.0 mm (common practice)"

    Scenario: what it is held against in Virginia, shoe lining
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And the linings are bonded
      And rear-brake/shoes measured thickness 1.8 mm ± 0.1 mm
      Then brakes.shoe-lining is met at rear-brake/shoes
      And it says "at least 0.0625 in (19VAC30-70-340, B 4, read in the official text)"
      And it says "also at least 1.5 mm (common practice)"

    Scenario: what it is held against in Virginia, shoe lining riveted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And the linings are riveted
      And rear-brake/shoes measured thickness 1.8 mm ± 0.1 mm
      Then brakes.shoe-lining is met at rear-brake/shoes
      And it says "at least 0.0625 in (19VAC30-70-340, B 4, read in the official text)"
      And it says "also at least 1.0 mm (common practice)"

  @brakes.friction-condition
  Rule: The friction material is whole and dry

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake seen friction-material whole-and-dry
      Then brakes.friction-condition is met at front-brake

    Scenario: found 366 days ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake seen friction-material whole-and-dry 366 days ago
      Then brakes.friction-condition is stale

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake seen friction-material <found>
      Then brakes.friction-condition is fault at front-brake

      Examples:
        | found       |
        | oiled       |
        | cracked     |
        | glazed      |
        | loose       |
        | rivet-loose |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake seen friction-material oiled
      And tom wrote that front-brake seen friction-material whole-and-dry
      Then brakes.friction-condition is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.friction-condition is missing at front-brake
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake told friction-material whole-and-dry
      Then brakes.friction-condition is missing at front-brake

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake seen friction-material whole-and-dry <ago> months ago
      Then brakes.friction-condition is <state> at front-brake

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake seen friction-material whole-and-dry
      And <point> was <work>
      Then brakes.friction-condition is stale at front-brake

      Examples:
        | point                      | work       |
        | front-brake                | removed    |
        | front-brake/caliper        | removed    |
        | front-brake/hydraulic      | opened     |
        | front-brake/hydraulic/hose | replaced   |
        | front-brake/disc           | replaced   |
        | front-fork                 | replaced   |
        | front-brake/cam-lever      | lubricated |
        | front-brake/drum           | cleaned    |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake seen friction-material whole-and-dry
      And <point> was <work>
      Then brakes.friction-condition is met at front-brake

      Examples:
        | point                                 | work     |
        | front-brake/hydraulic/master-cylinder | removed  |
        | front-brake/hydraulic/master-cylinder | refitted |

    Scenario Outline: work that undoes it behind
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake seen friction-material whole-and-dry
      And <point> was <work>
      Then brakes.friction-condition is stale at rear-brake

      Examples:
        | point            | work     |
        | rear-brake       | removed  |
        | rear-brake/shoes | replaced |
        | rear-brake/drum  | replaced |
        | rear-fork        | replaced |

    Scenario: nothing to brake with
      Given a motorcycle with no brake in front and no brake behind
      Then brakes.friction-condition is not applicable

  @brakes.bedded
  Rule: New friction material is bedded in before anyone brakes hard

    Scenario: bedded in
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad was replaced
      And front-brake was bedded
      Then brakes.bedded is met at front-brake

    Scenario: found 13 months ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad was replaced 13 months ago
      And front-brake was bedded 13 months ago
      Then brakes.bedded is missing

    Scenario: nobody bedded it in
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad was replaced
      Then brakes.bedded is missing at front-brake
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake was bedded
      And <point> was <work>
      Then brakes.bedded is stale at front-brake

      Examples:
        | point                         | work     |
        | front-brake                   | removed  |
        | front-brake/caliper/inner-pad | replaced |
        | front-brake/disc              | replaced |
        | front-brake/disc              | repaired |

    Scenario Outline: renewed shoes undo it as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake was bedded
      And <point> was <work>
      Then brakes.bedded is stale at rear-brake

      Examples:
        | point            | work     |
        | rear-brake/shoes | replaced |
        | rear-brake/shoes | repaired |
        | rear-brake/drum  | replaced |
        | rear-brake/drum  | repaired |

    Scenario: trying the brake is not bedding it in
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake was tested
      Then brakes.bedded is missing at front-brake

    Scenario: nothing to brake with
      Given a motorcycle with no brake in front and no brake behind
      Then brakes.bedded is not applicable

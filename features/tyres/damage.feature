# 25 mm: Construction and Use Regulations 1986 reg 27 (read in a copy).
Feature: Damage to a tyre

  @tyres.cracks
  Rule: Tread and side walls are free of cracks
    Scenario: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cracks none
      And rear-wheel/tyre seen cracks none
      Then tyres.cracks is met
      And it holds until 2027-11-25

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cracks <answer>
      Then tyres.cracks is fault at front-wheel/tyre
      Examples:
        | answer       |
        | in-side-wall |
        | in-tread     |
        | at-bead      |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cracks in-side-wall
      And tom wrote that front-wheel/tyre seen cracks none
      Then tyres.cracks is fault

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cracks none
      Then tyres.cracks is met at front-wheel/tyre
      And tyres.cracks is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cracks none
      And front-wheel/tyre was replaced
      Then tyres.cracks is stale at front-wheel/tyre

    Scenario: the machine fell since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cracks none
      And machine was damaged
      Then tyres.cracks is stale at front-wheel/tyre

    Scenario: told that there are none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told cracks none
      Then tyres.cracks is missing at front-wheel/tyre

    Scenario: looked at too long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cracks none 13 months ago
      Then tyres.cracks is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cracks none
      And rear-wheel/tyre seen cracks none
      And front-wheel was <work>
      Then tyres.cracks is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: a cracked tyre is replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for tyres.cracks
      And front-wheel/tyre seen cracks in-side-wall
      Then tyres.cracks is fault
      And for road-test front-wheel/tyre is to be replaced first

  @tyres.bulge
  Rule: No tyre bulges or comes apart
    Scenario: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bulge none
      And rear-wheel/tyre seen bulge none
      Then tyres.bulge is met
      And it holds until 2027-11-25

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told bulge none
      And rear-wheel/tyre told bulge none
      Then tyres.bulge is missing

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bulge <answer>
      Then tyres.bulge is fault at front-wheel/tyre
      Examples:
        | answer     |
        | bulge      |
        | lump       |
        | separation |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bulge bulge
      And tom wrote that front-wheel/tyre seen bulge none
      Then tyres.bulge is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bulge bulge
      Then tyres.bulge is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over, non-runner and no other gate

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bulge none
      Then tyres.bulge is met at front-wheel/tyre
      And tyres.bulge is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bulge none
      And front-wheel/tyre was replaced
      Then tyres.bulge is stale at front-wheel/tyre

    Scenario: the machine fell since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bulge none
      And machine was damaged
      Then tyres.bulge is stale at front-wheel/tyre

    Scenario: looked at too long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bulge none 13 months ago
      Then tyres.bulge is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bulge none
      And rear-wheel/tyre seen bulge none
      And front-wheel was <work>
      Then tyres.bulge is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: a tyre with a bulge is replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for tyres.bulge
      And front-wheel/tyre seen bulge lump
      Then tyres.bulge is fault
      And for road-test front-wheel/tyre is to be replaced first

  @tyres.cord
  Rule: No ply or cord is laid bare
    Scenario: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cord covered
      And rear-wheel/tyre seen cord covered
      Then tyres.cord is met
      And it holds until 2027-11-25

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told cord covered
      And rear-wheel/tyre told cord covered
      Then tyres.cord is missing

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cord <answer>
      Then tyres.cord is fault at front-wheel/tyre
      Examples:
        | answer               |
        | showing-through-wear |
        | showing-in-a-cut     |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cord showing-through-wear
      And tom wrote that front-wheel/tyre seen cord covered
      Then tyres.cord is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cord showing-through-wear
      Then tyres.cord is fault
      And it holds road-test, on-show, hand-over and no other gate

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cord covered
      Then tyres.cord is met at front-wheel/tyre
      And tyres.cord is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cord covered
      And front-wheel/tyre was replaced
      Then tyres.cord is stale at front-wheel/tyre

    Scenario: the machine fell since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cord covered
      And machine was damaged
      Then tyres.cord is stale at front-wheel/tyre

    Scenario: looked at too long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cord covered 13 months ago
      Then tyres.cord is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen cord covered
      And rear-wheel/tyre seen cord covered
      And front-wheel was <work>
      Then tyres.cord is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: a tyre with its cord showing is replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for tyres.cord
      And front-wheel/tyre seen cord showing-in-a-cut
      Then tyres.cord is fault
      And for road-test front-wheel/tyre is to be replaced first

  @tyres.cut
  Rule: No cut is too long
    Scenario: no cuts
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured cut-length 0 mm ± 1 mm
      And rear-wheel/tyre measured cut-length 0 mm ± 1 mm
      Then tyres.cut is met
      And it holds until 2027-11-25

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre tried cut-length 0 mm
      And rear-wheel/tyre tried cut-length 0 mm
      Then tyres.cut is missing

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured cut-length <length>
      Then tyres.cut is <state> at front-wheel/tyre
      Examples:
        | length       | state |
        | 23 mm ± 1 mm | met   |
        | 24 mm ± 1 mm | doubt |
        | 25 mm ± 1 mm | doubt |
        | 26 mm ± 1 mm | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured cut-length 26 mm ± 1 mm
      And tom wrote that front-wheel/tyre measured cut-length 0 mm ± 1 mm
      Then tyres.cut is fault

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.cut is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured cut-length 0 mm ± 1 mm
      And front-wheel/tyre was replaced
      Then tyres.cut is stale at front-wheel/tyre

    Scenario: the machine fell since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured cut-length 0 mm ± 1 mm
      And rear-wheel/tyre measured cut-length 0 mm ± 1 mm
      And machine was damaged
      Then tyres.cut is stale

    Scenario: measured too long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured cut-length 0 mm ± 1 mm 13 months ago
      Then tyres.cut is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured cut-length 23 mm ± 1 mm
      And front-wheel was <work>
      Then tyres.cut is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: a cut tyre is replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for tyres.cut
      And front-wheel/tyre measured cut-length 40 mm ± 1 mm
      Then tyres.cut is fault
      And for road-test front-wheel/tyre is to be replaced first

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured cut-length 23 mm ± 1 mm
      Then tyres.cut is met at front-wheel/tyre
      And it says "at most 25 mm (The Road Vehicles (Construction and Use) Regulations 1986, reg 27, read in a copy)"
      And it says "also at most 25 mm (common practice)"

  @tyres.repair
  Rule: A repair is sound and only in the tread
    Scenario Outline: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen repair <answer>
      And rear-wheel/tyre seen repair <answer>
      Then tyres.repair is met
      Examples:
        | answer         |
        | none           |
        | sound-in-tread |

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told repair none
      And rear-wheel/tyre told repair none
      Then tyres.repair is missing

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen repair none
      And rear-wheel/tyre seen repair none
      Then tyres.repair is met
      And it does not lapse by itself

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen repair <answer>
      Then tyres.repair is fault at front-wheel/tyre
      Examples:
        | answer            |
        | in-side-wall      |
        | plug-from-outside |
        | unsound           |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen repair in-side-wall
      And tom wrote that front-wheel/tyre seen repair none
      Then tyres.repair is fault

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen repair none
      Then tyres.repair is met at front-wheel/tyre
      And tyres.repair is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: repaired since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen repair none
      And front-wheel/tyre was repaired
      Then tyres.repair is stale at front-wheel/tyre

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen repair none
      And front-wheel/tyre was replaced
      Then tyres.repair is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen repair none
      And rear-wheel/tyre seen repair none
      And front-wheel was <work>
      Then tyres.repair is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

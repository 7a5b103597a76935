# 0.8 mm: FMVSS 119 S6.4 (read). 1.0 mm: Construction and Use Regulations 1986 reg 27 (read in a copy).
# 2/32 in = 1.5875 mm: 19VAC30-70-400 item 5 (read in a copy). Maryland sets 1/32 in = 0.79375 mm, less than the wear bar
# (COMAR 11.14.03.05 A, read). 1.6 mm and 1.0 mm for mopeds: StVZO § 36 (read in a copy).
Feature: The tread of a tyre

  @tyres.tread-depth
  Rule: There is enough tread at the shallowest point
    Scenario: deep enough all round
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And rear-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      Then tyres.tread-depth is met
      And it holds until 2027-11-25

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre tried tread-depth 3.4 mm
      And rear-wheel/tyre tried tread-depth 3.4 mm
      Then tyres.tread-depth is missing

    Scenario Outline: Great Britain
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is GB
      And front-wheel/tyre measured tread-depth <depth>
      Then tyres.tread-depth is <state> at front-wheel/tyre
      And the limit came from "Construction and Use"
      Examples:
        | depth           | state |
        | 0.9 mm ± 0.2 mm | fault |
        | 1.0 mm ± 0.2 mm | doubt |
        | 1.2 mm ± 0.2 mm | doubt |
        | 1.3 mm ± 0.2 mm | met   |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is GB
      And front-wheel/tyre measured tread-depth 0.9 mm ± 0.2 mm
      And tom wrote that front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      Then tyres.tread-depth is fault

    Scenario Outline: the wear bar where the local line is lower
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-MD
      And front-wheel/tyre measured tread-depth <depth>
      Then tyres.tread-depth is <state> at front-wheel/tyre
      And the limit came from "FMVSS 119"
      Examples:
        | depth           | state |
        | 0.7 mm ± 0.2 mm | fault |
        | 0.8 mm ± 0.2 mm | doubt |
        | 1.0 mm ± 0.2 mm | doubt |
        | 1.1 mm ± 0.2 mm | met   |

    Scenario Outline: Virginia
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And front-wheel/tyre measured tread-depth <depth>
      Then tyres.tread-depth is <state> at front-wheel/tyre
      And the limit came from "19VAC30-70-400"
      Examples:
        | depth              | state |
        | 1.5 mm ± 0.2 mm    | fault |
        | 2/32 in ± 0.008 in | doubt |
        | 1.7 mm ± 0.2 mm    | doubt |
        | 1.8 mm ± 0.2 mm    | met   |

    Scenario Outline: Germany
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And front-wheel/tyre measured tread-depth <depth>
      Then tyres.tread-depth is <state> at front-wheel/tyre
      And the limit came from "StVZO"
      Examples:
        | depth           | state |
        | 1.5 mm ± 0.2 mm | fault |
        | 1.6 mm ± 0.2 mm | doubt |
        | 1.8 mm ± 0.2 mm | doubt |
        | 1.9 mm ± 0.2 mm | met   |

    Scenario Outline: the Union sets no number, and a member's law may set more than the wear bar
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And front-wheel/tyre measured tread-depth <depth>
      Then tyres.tread-depth is <state> at front-wheel/tyre

      # 1/32 in: FMVSS 119; Austria's KDV § 4 (4) wants 1.6 mm, from memory, and is not in this rule book
      Examples:
        | territory | depth           | state   |
        | FR        | 0.5 mm ± 0.2 mm | fault   |
        | FR        | 0.8 mm ± 0.2 mm | missing |
        | AT        | 1.1 mm ± 0.2 mm | missing |
        | ES        | 1.1 mm ± 0.2 mm | missing |
        | IE        | 5.0 mm ± 0.2 mm | missing |

    Scenario Outline: a moped in Great Britain needs no more than the wear bar
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a moped
      And front-wheel/tyre measured tread-depth <depth>
      Then tyres.tread-depth is <state> at front-wheel/tyre
      And the limit came from "FMVSS 119"
      Examples:
        | depth           | state |
        | 0.7 mm ± 0.2 mm | fault |
        | 0.8 mm ± 0.2 mm | doubt |
        | 1.0 mm ± 0.2 mm | doubt |
        | 1.1 mm ± 0.2 mm | met   |

    Scenario Outline: a moped in Germany
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a moped
      And the territory is DE
      And front-wheel/tyre measured tread-depth <depth>
      Then tyres.tread-depth is <state> at front-wheel/tyre
      And the limit came from "StVZO"
      Examples:
        | depth           | state |
        | 0.9 mm ± 0.2 mm | fault |
        | 1.0 mm ± 0.2 mm | doubt |
        | 1.2 mm ± 0.2 mm | doubt |
        | 1.3 mm ± 0.2 mm | met   |

    Scenario: a moped where the local code was not searched for mopeds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a moped
      And the territory is US-VA
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And rear-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      Then tyres.tread-depth is missing

    Scenario: a territory without a local code
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is JP
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And rear-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      Then tyres.tread-depth is missing
      And it says "no local code"

    Scenario: the maker asks for more
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.tread-depth at least 2.0 mm
      And front-wheel/tyre measured tread-depth 1.9 mm ± 0.2 mm
      Then tyres.tread-depth is fault at front-wheel/tyre
      And the limit came from "maker"

    Scenario: a smaller figure of the maker loosens nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.tread-depth at least 0.5 mm
      And front-wheel/tyre measured tread-depth 0.9 mm ± 0.2 mm
      Then tyres.tread-depth is fault at front-wheel/tyre

    Scenario: the manual was not searched
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no word from the maker on tyres.tread-depth
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And rear-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      Then tyres.tread-depth is missing

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.tread-depth is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen tread-depth 3 mm
      Then tyres.tread-depth is missing at front-wheel/tyre

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And front-wheel/tyre was replaced
      Then tyres.tread-depth is stale at front-wheel/tyre

    Scenario: measured too long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm 13 months ago
      Then tyres.tread-depth is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And rear-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And front-wheel was <work>
      Then tyres.tread-depth is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: a bald tyre is replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for tyres.tread-depth
      And front-wheel/tyre measured tread-depth 0.4 mm ± 0.1 mm
      Then tyres.tread-depth is fault
      And for road-test front-wheel/tyre is to be replaced first

    Scenario: what it is held against, tread depth
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And rear-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      Then tyres.tread-depth is met at front-wheel/tyre
      And it says "at least 1.0 mm (The Road Vehicles (Construction and Use) Regulations 1986, reg 27, read in a copy)"
      And it says "also at least 0.8 mm (49 CFR 571.119 (FMVSS 119), S6.4, as quoted in NHTSA interpretation GF001832, read in the official text)"

    Scenario: what it is held against, tread depth moped
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a moped
      And front-wheel/tyre measured tread-depth 1.1 mm ± 0.2 mm
      Then tyres.tread-depth is met at front-wheel/tyre
      And it says "at least 0.8 mm (49 CFR 571.119 (FMVSS 119), S6.4, as quoted in NHTSA interpretation GF001832, read in the official text)"

    Scenario: what it is held against in Germany, tread depth
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And front-wheel/tyre measured tread-depth 1.9 mm ± 0.2 mm
      Then tyres.tread-depth is met at front-wheel/tyre
      And it says "at least 1.6 mm (StVZO, § 36, read in a copy)"
      And it says "also at least 0.8 mm (49 CFR 571.119 (FMVSS 119), S6.4, as quoted in NHTSA interpretation GF001832, read in the official text)"

    Scenario: what it is held against in Germany, tread depth moped
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a moped
      And the territory is DE
      And front-wheel/tyre measured tread-depth 1.3 mm ± 0.2 mm
      Then tyres.tread-depth is met at front-wheel/tyre
      And it says "at least 1.0 mm (StVZO, § 36, read in a copy)"
      And it says "also at least 0.8 mm (49 CFR 571.119 (FMVSS 119), S6.4, as quoted in NHTSA interpretation GF001832, read in the official text)"

    Scenario: what it is held against in Maryland
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-MD
      And front-wheel/tyre measured tread-depth 1.1 mm ± 0.2 mm
      Then tyres.tread-depth is met at front-wheel/tyre
      And it says "at least 0.8 mm (49 CFR 571.119 (FMVSS 119), S6.4, as quoted in NHTSA interpretation GF001832, read in the official text)"
      And it says "also at least 0.03125 in (COMAR 11.14.03.05, A (1), tyres without wear indicators, read in the official text)"

    Scenario: what it is held against in Virginia
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      And front-wheel/tyre measured tread-depth 1.8 mm ± 0.2 mm
      Then tyres.tread-depth is met at front-wheel/tyre
      And it says "at least 0.0625 in (19VAC30-70-400, item 5, read in a copy)"
      And it says "also at least 0.8 mm (49 CFR 571.119 (FMVSS 119), S6.4, as quoted in NHTSA interpretation GF001832, read in the official text)"

  @tyres.tread-pattern
  Rule: The tread pattern is plain to see all over
    Scenario: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen tread-pattern visible
      And rear-wheel/tyre seen tread-pattern visible
      Then tyres.tread-pattern is met
      And it holds until 2027-11-25

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told tread-pattern visible
      And rear-wheel/tyre told tread-pattern visible
      Then tyres.tread-pattern is missing

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen tread-pattern <answer>
      Then tyres.tread-pattern is fault at front-wheel/tyre
      Examples:
        | answer    |
        | worn-away |
        | recut     |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen tread-pattern worn-away
      And tom wrote that front-wheel/tyre seen tread-pattern visible
      Then tyres.tread-pattern is fault

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen tread-pattern visible
      Then tyres.tread-pattern is met at front-wheel/tyre
      And tyres.tread-pattern is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen tread-pattern visible
      And front-wheel/tyre was replaced
      Then tyres.tread-pattern is stale at front-wheel/tyre

    Scenario: looked at too long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen tread-pattern visible 13 months ago
      Then tyres.tread-pattern is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen tread-pattern visible
      And rear-wheel/tyre seen tread-pattern visible
      And front-wheel was <work>
      Then tyres.tread-pattern is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: a tyre without pattern is replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for tyres.tread-pattern
      And front-wheel/tyre seen tread-pattern worn-away
      Then tyres.tread-pattern is fault
      And for road-test front-wheel/tyre is to be replaced first

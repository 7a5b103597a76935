# 1.0 mm for an outfit in Great Britain, the wear bar of 0.8 mm for a three-wheeled moped; six years is common practice.
Feature: The third wheel of an outfit

  @tyres.third-wheel
  Rule: The third wheel is fit for the road
    Scenario: a sound third wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is met
      And it holds until 2027-11-25

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel tried tread-depth 3.4 mm
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel told tyre-condition sound
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is missing

    Scenario: found bulged
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition bulged
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over, non-runner and no other gate

    Scenario: found cord showing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition cord-showing
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is fault
      And it holds road-test, on-show, hand-over and no other gate

    Scenario: found cut
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition cut
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is fault

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition sound
      And third-wheel told rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is missing

    Scenario: found cracked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition cracked
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is fault

    Scenario: found corroded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition corroded
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is fault

    Scenario: found rewelded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition rewelded
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is fault

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition sound
      And third-wheel seen wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel told lock fitted
      Then tyres.third-wheel is missing

    Scenario: found ineffective
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock ineffective
      Then tyres.third-wheel is fault

    Scenario: found used before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock used-before
      Then tyres.third-wheel is fault

    Scenario Outline: on both sides of the tread limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a <kind>
      And third-wheel measured tread-depth <depth>
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      Then tyres.third-wheel is <state>
      Examples:
        | kind               | depth           | state |
        | motorcycle-sidecar | 0.9 mm ± 0.2 mm | fault |
        | motorcycle-sidecar | 1.0 mm ± 0.2 mm | doubt |
        | motorcycle-sidecar | 1.3 mm ± 0.2 mm | met   |
        | moped-3w           | 0.7 mm ± 0.2 mm | fault |
        | moped-3w           | 0.8 mm ± 0.2 mm | doubt |
        | moped-3w           | 1.1 mm ± 0.2 mm | met   |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 0.9 mm ± 0.2 mm
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      And tom wrote that third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      Then tyres.third-wheel is fault

    Scenario Outline: what is found at it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition <tyre>
      And third-wheel seen rim-condition <rim>
      And third-wheel tried wheel-rock <rock>
      And third-wheel seen lock <lock>
      Then tyres.third-wheel is fault
      Examples:
        | tyre    | rim    | rock    | lock    |
        | cracked | sound  | no-play | fitted  |
        | sound   | dented | no-play | fitted  |
        | sound   | sound  | play    | fitted  |
        | sound   | sound  | no-play | missing |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      Then tyres.third-wheel is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: only the tread measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      Then tyres.third-wheel is missing

    Scenario Outline: work since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel measured tread-depth 3.4 mm ± 0.2 mm
      And third-wheel seen tyre-condition sound
      And third-wheel seen rim-condition sound
      And third-wheel tried wheel-rock no-play
      And third-wheel seen lock fitted
      And <point> was <work>
      Then tyres.third-wheel is stale
      Examples:
        | point                  | work      |
        | third-wheel            | removed   |
        | third-wheel            | torqued   |
        | machine                | damaged   |
        | third-wheel            | adjusted  |
        | third-wheel            | tightened |
        | frame/sidecar-fittings | damaged   |
        | frame/sidecar-fittings | damaged   |
        | frame/sidecar-fittings | adjusted  |

    Scenario: a solo machine has none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.third-wheel is not applicable

  @tyres.third-wheel-age
  Rule: The tyre of the third wheel passes on its date
    Scenario: made last year
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel seen date-code 1025
      Then tyres.third-wheel-age is met
      And it holds until 2031-03-09

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel seen date-code 1025
      And there was the defect "not as it should be"
      And tom wrote that third-wheel seen date-code 1025
      Then tyres.third-wheel-age is fault

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel told date-code 1025
      Then tyres.third-wheel-age is missing

    Scenario Outline: the day before, the day itself and the day after
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is <day>
      And the machine is a motorcycle-sidecar
      And third-wheel seen date-code <code>
      Then tyres.third-wheel-age is <state> at third-wheel
      Examples:
        | day        | code | state |
        | 2026-11-21 | 4720 | met   |
        | 2026-11-22 | 4720 | met   |
        | 2026-11-23 | 4720 | fault |

    Scenario Outline: three digits are older than any limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel seen date-code <code>
      Then tyres.third-wheel-age is fault at third-wheel
      And it says "over 25 years old"
      Examples:
        | code |
        | 031  |

    Scenario Outline: no code that can be read
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel seen date-code <code>
      Then tyres.third-wheel-age is missing at third-wheel
      Examples:
        | code      |
        | none      |
        | illegible |

    Scenario: nobody read a code
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      Then tyres.third-wheel-age is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel seen date-code 1025
      And third-wheel was replaced
      Then tyres.third-wheel-age is stale

    Scenario: a solo machine has none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.third-wheel-age is not applicable

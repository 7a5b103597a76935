# 4 mm steel, 2 mm alloy: MOT inspection manual for motorcycles 5.2.2 (read); 3 mm up and down is from memory.
# 1 in = 25.4 mm: COMAR 11.14.03.02 C rejects what exceeds it (read).
Feature: Wheels

  @tyres.balance
  Rule: Every wheel is in balance
    Scenario Outline: both wheels tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel tried balance even
      And rear-wheel tried balance even
      And front-wheel seen balance-weights <weights>
      And rear-wheel seen balance-weights <weights>
      Then tyres.balance is met
      Examples:
        | weights     |
        | secure      |
        | none-needed |

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel tried balance even
      And rear-wheel tried balance even
      And front-wheel told balance-weights secure
      And rear-wheel told balance-weights secure
      Then tyres.balance is missing

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel tried balance even
      And rear-wheel tried balance even
      And front-wheel seen balance-weights secure
      And rear-wheel seen balance-weights secure
      Then tyres.balance is met
      And it does not lapse by itself

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel tried balance <balance>
      And front-wheel seen balance-weights <weights>
      Then tyres.balance is fault at front-wheel
      Examples:
        | balance    | weights |
        | heavy-spot | secure  |
        | even       | loose   |
        | even       | missing |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel tried balance heavy-spot
      And front-wheel seen balance-weights secure
      And tom wrote that front-wheel tried balance even
      Then tyres.balance is fault

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel seen balance even
      And front-wheel seen balance-weights secure
      Then tyres.balance is missing at front-wheel

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.balance is missing
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario Outline: work since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel tried balance even
      And front-wheel seen balance-weights secure
      And <point> was <work>
      Then tyres.balance is stale at front-wheel
      Examples:
        | point                       | work      |
        | front-wheel/tyre            | replaced  |
        | front-wheel/tube            | replaced  |
        | front-wheel/rim-tape        | replaced  |
        | front-wheel/spokes          | adjusted  |
        | front-wheel/spokes          | replaced  |
        | front-wheel/balance-weights | removed   |
        | front-wheel/spokes          | tightened |
        | front-wheel/spokes          | torqued   |

    Scenario Outline: a wheel that comes out stays balanced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel tried balance even
      And front-wheel seen balance-weights secure
      And front-wheel was <work>
      Then tyres.balance is met at front-wheel
      Examples:
        | work     |
        | removed  |
        | refitted |

  @tyres.rim-runout-lateral
  Rule: Every rim runs true from side to side
    Scenario: true at both wheels
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels have steel rims
      And front-wheel/rim measured runout-lateral 0.5 mm ± 0.1 mm
      And rear-wheel/rim measured runout-lateral 0.5 mm ± 0.1 mm
      Then tyres.rim-runout-lateral is met
      And it does not lapse by itself

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels have steel rims
      And front-wheel/rim tried runout-lateral 0.5 mm
      And rear-wheel/rim tried runout-lateral 0.5 mm
      Then tyres.rim-runout-lateral is missing

    Scenario Outline: steel rims
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels have steel rims
      And front-wheel/rim measured runout-lateral <runout>
      Then tyres.rim-runout-lateral is <state> at front-wheel/rim
      Examples:
        | runout          | state |
        | 3.8 mm ± 0.1 mm | met   |
        | 3.9 mm ± 0.1 mm | doubt |
        | 4.0 mm ± 0.1 mm | doubt |
        | 4.1 mm ± 0.1 mm | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels have steel rims
      And front-wheel/rim measured runout-lateral 4.1 mm ± 0.1 mm
      And tom wrote that front-wheel/rim measured runout-lateral 0.5 mm ± 0.1 mm
      Then tyres.rim-runout-lateral is fault

    Scenario Outline: alloy rims
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels have alloy rims
      And front-wheel/rim measured runout-lateral <runout>
      Then tyres.rim-runout-lateral is <state> at front-wheel/rim
      Examples:
        | runout          | state |
        | 1.8 mm ± 0.1 mm | met   |
        | 1.9 mm ± 0.1 mm | doubt |
        | 2.0 mm ± 0.1 mm | doubt |
        | 2.1 mm ± 0.1 mm | fault |

    Scenario Outline: cast wheels
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels are cast
      And front-wheel/rim measured runout-lateral <runout>
      Then tyres.rim-runout-lateral is <state> at front-wheel/rim
      Examples:
        | runout          | state |
        | 1.8 mm ± 0.1 mm | met   |
        | 1.9 mm ± 0.1 mm | doubt |
        | 2.0 mm ± 0.1 mm | doubt |
        | 2.1 mm ± 0.1 mm | fault |

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.rim-runout-lateral is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the wheel out by its spindle and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim measured runout-lateral 0.5 mm ± 0.1 mm
      And front-wheel/spindle was removed
      And front-wheel/spindle was refitted
      Then tyres.rim-runout-lateral is met at front-wheel/rim

    Scenario Outline: work since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim measured runout-lateral 0.5 mm ± 0.1 mm
      And <point> was <work>
      Then tyres.rim-runout-lateral is stale at front-wheel/rim
      Examples:
        | point                | work      |
        | front-wheel/spokes   | adjusted  |
        | front-wheel/spokes   | tightened |
        | front-wheel/spokes   | replaced  |
        | front-wheel/bearings | replaced  |
        | front-wheel/rim      | damaged   |
        | machine              | damaged   |
        | front-wheel/spokes   | torqued   |

    Scenario: the maker asks for less
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.rim-runout-lateral-steel at most 2 mm
      And front-wheel/rim measured runout-lateral 2.1 mm ± 0.1 mm
      Then tyres.rim-runout-lateral is fault at front-wheel/rim
      And the limit came from "maker"

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels have steel rims
      And front-wheel/rim measured runout-lateral 3.8 mm ± 0.1 mm
      And front-wheel was <work>
      Then tyres.rim-runout-lateral is met at front-wheel/rim
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: what it is held against, rim runout lateral steel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels have steel rims
      And front-wheel/rim measured runout-lateral 3.8 mm ± 0.1 mm
      Then tyres.rim-runout-lateral is met at front-wheel/rim
      And it says "at most 4 mm (MOT inspection manual: motorcycles, 5.2.2, read in the official text)"
      And it says "also at most 4 mm (common practice)"

    Scenario: what it is held against, rim runout lateral alloy
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels have alloy rims
      And front-wheel/rim measured runout-lateral 1.8 mm ± 0.1 mm
      Then tyres.rim-runout-lateral is met at front-wheel/rim
      And it says "at most 2 mm (MOT inspection manual: motorcycles, 5.2.2, read in the official text)"
      And it says "also at most 2 mm (common practice)"

  @tyres.rim-runout-radial
  Rule: Every rim runs round
    Scenario: true at both wheels
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels have steel rims
      And front-wheel/rim measured runout-radial 0.5 mm ± 0.1 mm
      And rear-wheel/rim measured runout-radial 0.5 mm ± 0.1 mm
      Then tyres.rim-runout-radial is met
      And it does not lapse by itself

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels have steel rims
      And front-wheel/rim tried runout-radial 0.5 mm
      And rear-wheel/rim tried runout-radial 0.5 mm
      Then tyres.rim-runout-radial is missing

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim measured runout-radial <runout>
      Then tyres.rim-runout-radial is <state> at front-wheel/rim
      Examples:
        | runout          | state |
        | 2.8 mm ± 0.1 mm | met   |
        | 2.9 mm ± 0.1 mm | doubt |
        | 3.0 mm ± 0.1 mm | doubt |
        | 3.1 mm ± 0.1 mm | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim measured runout-radial 3.1 mm ± 0.1 mm
      And tom wrote that front-wheel/rim measured runout-radial 0.5 mm ± 0.1 mm
      Then tyres.rim-runout-radial is fault

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.rim-runout-radial is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the wheel out by its spindle and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim measured runout-radial 0.5 mm ± 0.1 mm
      And front-wheel/spindle was removed
      And front-wheel/spindle was refitted
      Then tyres.rim-runout-radial is met at front-wheel/rim

    Scenario Outline: work since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim measured runout-radial 0.5 mm ± 0.1 mm
      And <point> was <work>
      Then tyres.rim-runout-radial is stale at front-wheel/rim
      Examples:
        | point                | work      |
        | front-wheel/spokes   | adjusted  |
        | front-wheel/spokes   | tightened |
        | front-wheel/spokes   | replaced  |
        | front-wheel/bearings | replaced  |
        | front-wheel/rim      | damaged   |
        | machine              | damaged   |
        | front-wheel/spokes   | torqued   |

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim measured runout-radial 2.8 mm ± 0.1 mm
      And front-wheel was <work>
      Then tyres.rim-runout-radial is met at front-wheel/rim
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim measured runout-radial 2.8 mm ± 0.1 mm
      Then tyres.rim-runout-radial is met at front-wheel/rim
      And it says "at most 3 mm (MOT inspection manual: motorcycles, 5.2.2 (the unit and that it is for both materials), from memory)"
      And it says "also at most 3 mm (common practice)"

  @tyres.rim-condition
  Rule: Every rim is free of dents, cracks and eating rust
    Scenario: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim seen rim-condition sound
      And rear-wheel/rim seen rim-condition sound
      Then tyres.rim-condition is met
      And it holds until 2027-11-25

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim told rim-condition sound
      And rear-wheel/rim told rim-condition sound
      Then tyres.rim-condition is missing

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim seen rim-condition <answer>
      Then tyres.rim-condition is fault at front-wheel/rim
      Examples:
        | answer   |
        | dented   |
        | cracked  |
        | corroded |
        | rewelded |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim seen rim-condition dented
      And tom wrote that front-wheel/rim seen rim-condition sound
      Then tyres.rim-condition is fault

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim seen rim-condition sound
      Then tyres.rim-condition is met at front-wheel/rim
      And tyres.rim-condition is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another rim fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim seen rim-condition sound
      And front-wheel/rim was replaced
      Then tyres.rim-condition is stale at front-wheel/rim

    Scenario: the machine fell since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim seen rim-condition sound
      And machine was damaged
      Then tyres.rim-condition is stale at front-wheel/rim

    Scenario: looked at too long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim seen rim-condition sound 13 months ago
      Then tyres.rim-condition is stale at front-wheel/rim

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim seen rim-condition sound
      And rear-wheel/rim seen rim-condition sound
      And front-wheel was <work>
      Then tyres.rim-condition is met at front-wheel/rim
      Examples:
        | work     |
        | removed  |
        | refitted |

  @tyres.spokes
  Rule: Every spoke is there, straight and tight
    Scenario: both wheels tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spokes tried ring even
      And rear-wheel/spokes tried ring even
      Then tyres.spokes is met
      And it holds until 2027-11-25

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spokes tried ring <answer>
      Then tyres.spokes is fault at front-wheel/spokes
      Examples:
        | answer  |
        | loose   |
        | broken  |
        | bent    |
        | missing |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spokes tried ring loose
      And tom wrote that front-wheel/spokes tried ring even
      Then tyres.spokes is fault

    Scenario: nobody tried the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spokes tried ring even
      Then tyres.spokes is met at front-wheel/spokes
      And tyres.spokes is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: adjusted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spokes tried ring even
      And front-wheel/spokes was adjusted
      Then tyres.spokes is stale at front-wheel/spokes

    Scenario: ridden since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spokes tried ring even
      And machine was ridden
      Then tyres.spokes is stale at front-wheel/spokes

    Scenario: the machine fell since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spokes tried ring even
      And machine was damaged
      Then tyres.spokes is stale at front-wheel/spokes

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spokes seen ring even
      Then tyres.spokes is missing at front-wheel/spokes

    Scenario: tried too long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spokes tried ring even 13 months ago
      Then tyres.spokes is stale at front-wheel/spokes

    Scenario: cast wheels have none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels are cast
      Then tyres.spokes is not applicable

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spokes tried ring even
      And rear-wheel/spokes tried ring even
      And front-wheel was <work>
      Then tyres.spokes is met at front-wheel/spokes
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spokes tried ring even
      And rear-wheel/spokes tried ring even
      And front-wheel/spokes was <work>
      Then tyres.spokes is stale at front-wheel/spokes
      Examples:
        | work      |
        | tightened |
        | torqued   |

    Scenario: a slack spoke is tightened
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for tyres.spokes
      And front-wheel/spokes tried ring loose
      Then tyres.spokes is fault
      And for road-test front-wheel/spokes is to be tightened first

  @tyres.bearing-play
  Rule: Every wheel turns smoothly and without play
    Scenario: both wheels tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/bearings tried wheel-rock no-play
      And rear-wheel/bearings tried wheel-rock no-play
      And front-wheel/bearings tried wheel-turn smooth
      And rear-wheel/bearings tried wheel-turn smooth
      Then tyres.bearing-play is met
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/bearings seen wheel-rock no-play
      And rear-wheel/bearings seen wheel-rock no-play
      And front-wheel/bearings tried wheel-turn smooth
      And rear-wheel/bearings tried wheel-turn smooth
      Then tyres.bearing-play is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/bearings tried wheel-rock no-play
      And rear-wheel/bearings tried wheel-rock no-play
      And front-wheel/bearings seen wheel-turn smooth
      And rear-wheel/bearings seen wheel-turn smooth
      Then tyres.bearing-play is missing

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/bearings tried wheel-rock <rock>
      And front-wheel/bearings tried wheel-turn <turn>
      Then tyres.bearing-play is fault at front-wheel/bearings
      Examples:
        | rock    | turn   |
        | play    | smooth |
        | no-play | rough  |
        | no-play | tight  |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/bearings tried wheel-rock play
      And front-wheel/bearings tried wheel-turn smooth
      And tom wrote that front-wheel/bearings tried wheel-rock no-play
      Then tyres.bearing-play is fault

    Scenario: rocked and not turned
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/bearings tried wheel-rock no-play
      And rear-wheel/bearings tried wheel-rock no-play
      Then tyres.bearing-play is missing

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.bearing-play is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/bearings tried wheel-rock no-play
      And front-wheel/bearings tried wheel-turn smooth
      And <point> was <work>
      Then tyres.bearing-play is stale at front-wheel/bearings
      Examples:
        | point                | work     |
        | front-wheel/bearings | replaced |
        | front-wheel/spindle  | removed  |
        | front-wheel          | removed  |
        | machine              | damaged  |

  @tyres.spindle-torque
  Rule: Every spindle is torqued after the wheel went in
    Scenario: both wheels in and torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle was removed
      And front-wheel/spindle was refitted
      And front-wheel/spindle was torqued
      And rear-wheel/spindle was torqued
      Then tyres.spindle-torque is met
      And it does not lapse by itself

    Scenario Outline: work since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle was torqued
      And <point> was <work>
      Then tyres.spindle-torque is stale at front-wheel/spindle
      Examples:
        | point                | work     |
        | front-wheel/spindle  | removed  |
        | front-wheel/spindle  | adjusted |
        | front-wheel          | removed  |
        | front-wheel          | refitted |
        | front-wheel/bearings | replaced |
        | machine              | ridden   |
        | machine              | damaged  |
        | front-wheel/tyre     | replaced |
        | front-wheel/spindle  | loosened |

    Scenario: torqued before the wheel went in is not torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle was torqued
      And front-wheel/spindle was refitted
      Then tyres.spindle-torque is stale at front-wheel/spindle

    Scenario: nobody torqued it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.spindle-torque is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: tightened by feel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle was tightened
      Then tyres.spindle-torque is missing at front-wheel/spindle

  @tyres.spindle-lock
  Rule: Every spindle nut is locked
    Scenario: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle seen lock fitted
      And rear-wheel/spindle seen lock fitted
      Then tyres.spindle-lock is met
      And it does not lapse by itself

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle told lock fitted
      And rear-wheel/spindle told lock fitted
      Then tyres.spindle-lock is missing

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle seen lock <answer>
      Then tyres.spindle-lock is fault at front-wheel/spindle
      Examples:
        | answer      |
        | missing     |
        | ineffective |
        | used-before |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle seen lock missing
      And tom wrote that front-wheel/spindle seen lock fitted
      Then tyres.spindle-lock is fault

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle seen lock fitted
      Then tyres.spindle-lock is met at front-wheel/spindle
      And tyres.spindle-lock is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: torqued since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle seen lock fitted
      And front-wheel/spindle was torqued
      Then tyres.spindle-lock is stale at front-wheel/spindle

    Scenario: the spindle came out since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle seen lock fitted
      And front-wheel/spindle was removed
      Then tyres.spindle-lock is stale at front-wheel/spindle

    Scenario: the wheel came out since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle seen lock fitted
      And front-wheel was removed
      Then tyres.spindle-lock is stale at front-wheel/spindle

    Scenario: the machine fell since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle seen lock fitted
      And machine was damaged
      Then tyres.spindle-lock is stale at front-wheel/spindle

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle seen lock fitted
      And rear-wheel/spindle seen lock fitted
      And front-wheel/spindle was <work>
      Then tyres.spindle-lock is stale at front-wheel/spindle
      Examples:
        | work      |
        | adjusted  |
        | tightened |

  @tyres.alignment
  Rule: The rear wheel follows the front wheel
    Scenario: in line
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/alignment measured wheel-offset 2 mm ± 1 mm
      Then tyres.alignment is met
      And it does not lapse by itself

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/alignment tried wheel-offset 2 mm
      Then tyres.alignment is missing

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And machine/alignment measured wheel-offset <offset>
      Then tyres.alignment is <state>
      Examples:
        | territory | offset         | state |
        | GB        | 24 mm ± 1 mm   | met   |
        | GB        | 1 in ± 0.04 in | doubt |
        | GB        | 26 mm ± 1 mm   | fault |
        | US-MD     | 24 mm ± 1 mm   | met   |
        | US-MD     | 1 in ± 0.04 in | doubt |
        | US-MD     | 26 mm ± 1 mm   | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is GB
      And machine/alignment measured wheel-offset 26 mm ± 1 mm
      And tom wrote that machine/alignment measured wheel-offset 2 mm ± 1 mm
      Then tyres.alignment is fault

    Scenario: a frame offset by design
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.alignment at most 8 mm
      And machine/alignment measured wheel-offset 10 mm ± 1 mm
      Then tyres.alignment is fault
      And the limit came from "maker"

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.alignment is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/alignment measured wheel-offset 2 mm ± 1 mm
      And <point> was <work>
      Then tyres.alignment is stale
      Examples:
        | point                  | work      |
        | front-wheel/spindle    | removed   |
        | rear-wheel/spindle     | adjusted  |
        | rear-wheel             | removed   |
        | rear-wheel             | adjusted  |
        | machine                | damaged   |
        | transmission/chain     | replaced  |
        | transmission/chain     | adjusted  |
        | front-wheel/rim        | damaged   |
        | front-wheel/spindle    | loosened  |
        | front-wheel/spindle    | tightened |
        | front-wheel/spokes     | damaged   |
        | front-wheel/spokes     | adjusted  |
        | front-wheel/spokes     | tightened |
        | front-wheel/spokes     | torqued   |
        | third-wheel            | damaged   |
        | third-wheel            | adjusted  |
        | frame/lugs             | repaired  |
        | frame/lugs             | replaced  |
        | frame/lugs             | stripped  |
        | frame/sidecar-fittings | damaged   |
        | frame/sidecar-fittings | adjusted  |

    Scenario: a tyre is not changed without its wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/alignment measured wheel-offset 2 mm ± 1 mm
      And rear-wheel/tyre was replaced
      Then tyres.alignment is stale

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/alignment measured wheel-offset 2 mm ± 1 mm
      Then tyres.alignment is met at machine/alignment
      And it says "at most 1 in (common practice)"

    Scenario: what it is held against in Maryland
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-MD
      And machine/alignment measured wheel-offset 24 mm ± 1 mm
      Then tyres.alignment is met at machine/alignment
      And it says "at most 1 in (COMAR 11.14.03.02, C, read in the official text)"
      And it says "also at most 1 in (common practice)"

# No play, no roughness and sound stops: COMAR 11.14.03.02 B (read). Turning it raised and with weight on it:
# the older British manual, 2.2 (read in a copy). The rest is common practice.
Feature: Steering
  From the grips down to the head bearings.

  @steering.head-play
  Rule: The steering head has no play

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-play none
      Then steering.head-play is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-play <found>
      Then steering.head-play is fault at steering/head

      Examples:
        | found  |
        | felt   |
        | knocks |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-play felt
      And tom wrote that steering/head tried head-play none
      Then steering.head-play is fault

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.head-play is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head seen head-play none
      Then steering.head-play is missing at steering/head

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-play none <ago> months ago
      Then steering.head-play is <state> at steering/head

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-play none
      And <point> was <work>
      Then steering.head-play is stale at steering/head

      Examples:
        | point                  | work      |
        | steering/head          | replaced  |
        | steering               | removed   |
        | steering/yokes         | refitted  |
        | front-fork             | refitted  |
        | front-fork/left-leg    | removed   |
        | steering/head          | adjusted  |
        | steering/head          | tightened |
        | steering/head/stem-nut | torqued   |
        | machine                | damaged   |
        | steering/head/stem-nut | damaged   |
        | steering/yokes/clamps  | damaged   |
        | steering/yokes/clamps  | loosened  |
        | steering/yokes/clamps  | adjusted  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-play none
      And <point> was <work>
      Then steering.head-play is met at steering/head

      Examples:
        | point              | work     |
        | steering/handlebar | removed  |
        | front-wheel        | refitted |

    Scenario: play in the head is set
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for steering.head-play
      And steering/head tried head-play felt
      Then steering.head-play is fault
      And for road-test steering/head is to be adjusted first

  @steering.head-turn
  Rule: The steering turns smoothly, raised and with weight on it

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-turn-raised smooth
      And steering/head tried head-turn-loaded smooth
      Then steering.head-turn is met
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-turn-raised smooth
      And steering/head seen head-turn-loaded smooth
      Then steering.head-turn is missing

    Scenario Outline: what is wrong with the turn with the wheel raised
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-turn-loaded smooth
      And steering/head tried head-turn-raised <found>
      Then steering.head-turn is fault at steering/head

      Examples:
        | found  |
        | notchy |
        | rough  |
        | tight  |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-turn-loaded smooth
      And steering/head tried head-turn-raised notchy
      And tom wrote that steering/head tried head-turn-raised smooth
      Then steering.head-turn is fault

    Scenario Outline: what is wrong with the turn with weight on the wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-turn-raised smooth
      And steering/head tried head-turn-loaded <found>
      Then steering.head-turn is fault at steering/head

      Examples:
        | found  |
        | notchy |
        | rough  |
        | tight  |

    Scenario: without the turn with the wheel raised
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-turn-loaded smooth
      Then steering.head-turn is missing at steering/head

    Scenario: without the turn with weight on the wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-turn-raised smooth
      Then steering.head-turn is missing at steering/head

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.head-turn is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried: turn with the wheel raised
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-turn-loaded smooth
      And steering/head seen head-turn-raised smooth
      Then steering.head-turn is missing at steering/head

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-turn-raised smooth <ago> months ago
      And steering/head tried head-turn-loaded smooth <ago> months ago
      Then steering.head-turn is <state> at steering/head

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-turn-raised smooth
      And steering/head tried head-turn-loaded smooth
      And <point> was <work>
      Then steering.head-turn is stale at steering/head

      Examples:
        | point                  | work      |
        | steering/head          | replaced  |
        | steering               | removed   |
        | steering/yokes         | refitted  |
        | front-fork             | refitted  |
        | front-fork/left-leg    | removed   |
        | steering/head          | adjusted  |
        | steering/head          | tightened |
        | steering/head/stem-nut | torqued   |
        | machine                | damaged   |
        | steering/damper        | damaged   |
        | steering/damper        | adjusted  |
        | steering/handlebar     | replaced  |
        | steering/handlebar     | stripped  |
        | steering/head/stem-nut | damaged   |
        | steering/yokes/clamps  | damaged   |
        | steering/yokes/clamps  | loosened  |
        | steering/yokes/clamps  | adjusted  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head tried head-turn-raised smooth
      And steering/head tried head-turn-loaded smooth
      And <point> was <work>
      Then steering.head-turn is met at steering/head

      Examples:
        | point              | work    |
        | steering/handlebar | removed |

  @steering.lock-stops
  Rule: A sound stop ends the steering on each side

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/lock-stops seen lock-stops both-stop
      Then steering.lock-stops is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/lock-stops seen lock-stops <found>
      Then steering.lock-stops is fault at steering/lock-stops

      Examples:
        | found         |
        | missing       |
        | bent          |
        | worn          |
        | one-side-only |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/lock-stops seen lock-stops missing
      And tom wrote that steering/lock-stops seen lock-stops both-stop
      Then steering.lock-stops is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.lock-stops is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/lock-stops told lock-stops both-stop
      Then steering.lock-stops is missing at steering/lock-stops

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/lock-stops seen lock-stops both-stop <ago> months ago
      Then steering.lock-stops is <state> at steering/lock-stops

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/lock-stops seen lock-stops both-stop
      And <point> was <work>
      Then steering.lock-stops is stale at steering/lock-stops

      Examples:
        | point               | work     |
        | steering/lock-stops | repaired |
        | steering/lock-stops | adjusted |
        | steering/yokes      | replaced |
        | frame               | repaired |
        | frame/lugs          | repaired |
        | machine             | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/lock-stops seen lock-stops both-stop
      And <point> was <work>
      Then steering.lock-stops is met at steering/lock-stops

      Examples:
        | point              | work    |
        | steering/handlebar | removed |

  @steering.tank-clearance
  Rule: The hand has room between bar and tank

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar tried tank-clearance clear
      Then steering.tank-clearance is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar tried tank-clearance <found>
      Then steering.tank-clearance is fault at steering/handlebar

      Examples:
        | found          |
        | touches        |
        | traps-the-hand |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar tried tank-clearance touches
      And tom wrote that steering/handlebar tried tank-clearance clear
      Then steering.tank-clearance is fault

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.tank-clearance is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar seen tank-clearance clear
      Then steering.tank-clearance is missing at steering/handlebar

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar tried tank-clearance clear <ago> months ago
      Then steering.tank-clearance is <state> at steering/handlebar

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar tried tank-clearance clear
      And <point> was <work>
      Then steering.tank-clearance is stale at steering/handlebar

      Examples:
        | point                     | work     |
        | steering/handlebar        | replaced |
        | steering/handlebar        | adjusted |
        | steering/lock-stops       | adjusted |
        | steering/lock-stops       | repaired |
        | steering/yokes            | refitted |
        | front-fork                | refitted |
        | front-brake/control       | refitted |
        | controls/clutch           | replaced |
        | fuel/tank                 | refitted |
        | machine                   | damaged  |
        | fuel/tank                 | adjusted |
        | controls/levers           | damaged  |
        | controls/levers           | adjusted |
        | steering/handlebar/clamps | loosened |

  @steering.lock-to-lock
  Rule: Nothing pulls or binds from stop to stop

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering tried lock-to-lock free
      Then steering.lock-to-lock is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering tried lock-to-lock <found>
      Then steering.lock-to-lock is fault at steering

      Examples:
        | found            |
        | binds            |
        | stretches-a-hose |
        | pulls-a-cable    |
        | pinches-a-wire   |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering tried lock-to-lock binds
      And tom wrote that steering tried lock-to-lock free
      Then steering.lock-to-lock is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering tried lock-to-lock pulls-a-cable
      Then steering.lock-to-lock is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.lock-to-lock is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering seen lock-to-lock free
      Then steering.lock-to-lock is missing at steering

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering tried lock-to-lock free <ago> months ago
      Then steering.lock-to-lock is <state> at steering

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering tried lock-to-lock free
      And <point> was <work>
      Then steering.lock-to-lock is stale at steering

      Examples:
        | point                      | work     |
        | steering                   | refitted |
        | steering/yokes             | refitted |
        | steering/handlebar         | replaced |
        | steering/handlebar         | adjusted |
        | front-fork                 | refitted |
        | front-fork/left-leg        | refitted |
        | front-brake/hydraulic/hose | replaced |
        | front-brake/cable          | replaced |
        | front-brake/control        | refitted |
        | controls/throttle          | replaced |
        | controls/clutch            | replaced |
        | electrics/wiring           | repaired |
        | headlamp                   | refitted |
        | fuel/tank                  | refitted |
        | machine                    | damaged  |
        | headlamp/shell             | damaged  |
        | fuel/tank                  | adjusted |
        | controls/levers            | damaged  |
        | electrics/warning-lamps    | damaged  |
        | steering/damper            | adjusted |
        | steering/head              | adjusted |
        | front-mudguard             | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering tried lock-to-lock free
      And <point> was <work>
      Then steering.lock-to-lock is met at steering

      Examples:
        | point                 | work    |
        | front-brake/hydraulic | bled    |
        | rear-wheel            | removed |

    Scenario: a pulled cable: the steering and what runs past it are set
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for steering.lock-to-lock
      And steering tried lock-to-lock binds
      Then steering.lock-to-lock is fault
      And for road-test steering is to be adjusted first

  @steering.damper
  Rule: A steering damper works freely, or there is none

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/damper tried steering-damper works-freely
      Then steering.damper is met
      And it holds until 2027-11-25

    Scenario Outline: what else is in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/damper tried steering-damper <found>
      Then steering.damper is met at steering/damper

      Examples:
        | found       |
        | none-fitted |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/damper tried steering-damper <found>
      Then steering.damper is fault at steering/damper

      Examples:
        | found  |
        | binds  |
        | seized |
        | leaks  |
        | loose  |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/damper tried steering-damper binds
      And tom wrote that steering/damper tried steering-damper works-freely
      Then steering.damper is fault

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.damper is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/damper seen steering-damper works-freely
      Then steering.damper is missing at steering/damper

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/damper tried steering-damper works-freely <ago> months ago
      Then steering.damper is <state> at steering/damper

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/damper tried steering-damper works-freely
      And <point> was <work>
      Then steering.damper is stale at steering/damper

      Examples:
        | point           | work      |
        | steering/damper | refitted  |
        | steering/damper | adjusted  |
        | steering/damper | tightened |
        | steering/yokes  | refitted  |
        | front-fork      | refitted  |
        | machine         | damaged   |
        | steering/head   | adjusted  |

  @steering.handlebar
  Rule: The handlebar is straight and whole

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar seen handlebar-condition sound
      Then steering.handlebar is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar seen handlebar-condition <found>
      Then steering.handlebar is fault at steering/handlebar

      Examples:
        | found          |
        | bent           |
        | cracked        |
        | rusted-through |
        | welded         |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar seen handlebar-condition bent
      And tom wrote that steering/handlebar seen handlebar-condition sound
      Then steering.handlebar is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.handlebar is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar told handlebar-condition sound
      Then steering.handlebar is missing at steering/handlebar

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar seen handlebar-condition sound <ago> months ago
      Then steering.handlebar is <state> at steering/handlebar

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar seen handlebar-condition sound
      And <point> was <work>
      Then steering.handlebar is stale at steering/handlebar

      Examples:
        | point              | work     |
        | steering/handlebar | replaced |
        | machine            | damaged  |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar seen handlebar-condition sound
      And <point> was <work>
      Then steering.handlebar is met at steering/handlebar

      Examples:
        | point    | work     |
        | steering | refitted |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar seen handlebar-condition sound
      And <point> was <work>
      Then steering.handlebar is met at steering/handlebar

      Examples:
        | point              | work     |
        | steering/handlebar | adjusted |
        | steering/yokes     | removed  |

  @steering.yokes
  Rule: Both yokes are sound

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/yokes seen yoke-condition sound
      Then steering.yokes is met
      And it holds until 2028-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/yokes seen yoke-condition <found>
      Then steering.yokes is fault at steering/yokes

      Examples:
        | found           |
        | cracked         |
        | bent            |
        | thread-stripped |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/yokes seen yoke-condition cracked
      And tom wrote that steering/yokes seen yoke-condition sound
      Then steering.yokes is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.yokes is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/yokes told yoke-condition sound
      Then steering.yokes is missing at steering/yokes

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/yokes seen yoke-condition sound <ago> months ago
      Then steering.yokes is <state> at steering/yokes

      Examples:
        | ago | state |
        | 24  | met   |
        | 25  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/yokes seen yoke-condition sound
      And <point> was <work>
      Then steering.yokes is stale at steering/yokes

      Examples:
        | point   | work    |
        | machine | damaged |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/yokes seen yoke-condition sound
      And <point> was <work>
      Then steering.yokes is met at steering/yokes

      Examples:
        | point          | work     |
        | steering/yokes | refitted |
        | steering       | removed  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/yokes seen yoke-condition sound
      And <point> was <work>
      Then steering.yokes is met at steering/yokes

      Examples:
        | point      | work    |
        | front-fork | removed |

    Scenario: not asked of a girder fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      Then steering.yokes is not applicable

    Scenario: not asked of a rigid fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing rigid
      Then steering.yokes is not applicable

Feature: Throttle
  It shuts by itself, wherever the bars stand.

  @controls.throttle-return
  Rule: The throttle snaps shut by itself

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-at-left-lock snaps-shut
      And controls/throttle tried return-straight-ahead snaps-shut
      And controls/throttle tried return-at-right-lock snaps-shut
      Then controls.throttle-return is met at controls/throttle

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle seen return-at-left-lock snaps-shut
      And controls/throttle tried return-straight-ahead snaps-shut
      And controls/throttle tried return-at-right-lock snaps-shut
      Then controls.throttle-return is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-at-left-lock snaps-shut
      And controls/throttle seen return-straight-ahead snaps-shut
      And controls/throttle tried return-at-right-lock snaps-shut
      Then controls.throttle-return is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-at-left-lock snaps-shut
      And controls/throttle tried return-straight-ahead snaps-shut
      And controls/throttle seen return-at-right-lock snaps-shut
      Then controls.throttle-return is missing

    Scenario Outline: it hangs at left lock
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-at-left-lock <found>
      And controls/throttle tried return-straight-ahead snaps-shut
      And controls/throttle tried return-at-right-lock snaps-shut
      Then controls.throttle-return is fault at controls/throttle

      Examples:
        | found  |
        | slow   |
        | sticks |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-at-left-lock slow
      And controls/throttle tried return-straight-ahead snaps-shut
      And controls/throttle tried return-at-right-lock snaps-shut
      And tom wrote that controls/throttle tried return-at-left-lock snaps-shut
      Then controls.throttle-return is fault

    Scenario Outline: it hangs straight ahead
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-at-left-lock snaps-shut
      And controls/throttle tried return-straight-ahead <found>
      And controls/throttle tried return-at-right-lock snaps-shut
      Then controls.throttle-return is fault at controls/throttle

      Examples:
        | found  |
        | slow   |
        | sticks |

    Scenario Outline: it hangs at right lock
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-at-left-lock snaps-shut
      And controls/throttle tried return-straight-ahead snaps-shut
      And controls/throttle tried return-at-right-lock <found>
      Then controls.throttle-return is fault at controls/throttle

      Examples:
        | found  |
        | slow   |
        | sticks |

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.throttle-return is missing at controls/throttle
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the return at left lock is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-straight-ahead snaps-shut
      And controls/throttle tried return-at-right-lock snaps-shut
      Then controls.throttle-return is missing at controls/throttle

    Scenario: the return straight ahead is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-at-left-lock snaps-shut
      And controls/throttle tried return-at-right-lock snaps-shut
      Then controls.throttle-return is missing at controls/throttle

    Scenario: the return at right lock is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-at-left-lock snaps-shut
      And controls/throttle tried return-straight-ahead snaps-shut
      Then controls.throttle-return is missing at controls/throttle

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle told return-at-left-lock snaps-shut
      And controls/throttle told return-straight-ahead snaps-shut
      And controls/throttle told return-at-right-lock snaps-shut
      Then controls.throttle-return is missing at controls/throttle

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-at-left-lock snaps-shut <ago> days ago
      And controls/throttle tried return-straight-ahead snaps-shut <ago> days ago
      And controls/throttle tried return-at-right-lock snaps-shut <ago> days ago
      Then controls.throttle-return is <state> at controls/throttle

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-at-left-lock snaps-shut
      And controls/throttle tried return-straight-ahead snaps-shut
      And controls/throttle tried return-at-right-lock snaps-shut
      And <point> was <work>
      Then controls.throttle-return is stale at controls/throttle

      Examples:
        | point              | work       |
        | controls/throttle  | removed    |
        | controls/throttle  | adjusted   |
        | controls/throttle  | lubricated |
        | steering           | removed    |
        | steering/handlebar | removed    |
        | controls/grips     | refitted   |
        | fuel/tank          | replaced   |
        | fuel/carburettors  | opened     |
        | fuel/carburettors  | cleaned    |
        | fuel/carburettors  | adjusted   |
        | oil/pump           | stripped   |
        | headlamp           | repaired   |
        | machine            | damaged    |
        | headlamp/shell     | damaged    |
        | steering/handlebar | adjusted   |
        | oil/pump           | adjusted   |
        | oil/pump-cable     | adjusted   |
        | electrics/switches | damaged    |

    Scenario Outline: the oil pump of a four-stroke has no part of the throttle
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And controls/throttle tried return-at-left-lock snaps-shut
      And controls/throttle tried return-straight-ahead snaps-shut
      And controls/throttle tried return-at-right-lock snaps-shut
      And oil/pump was <work>
      Then controls.throttle-return is met at controls/throttle

      Examples:
        | work     |
        | repaired |
        | replaced |
        | adjusted |

    Scenario: asked of an electric machine as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.throttle-return is missing at controls/throttle

  @controls.throttle-play
  Rule: The throttle cable has its free play

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle measured throttle-play 2.5 mm ± 0.1 mm
      Then controls.throttle-play is met at controls/throttle
      And it holds until 2027-05-25

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried throttle-play 2.5 mm
      Then controls.throttle-play is missing

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle measured throttle-play <play>
      Then controls.throttle-play is <state> at controls/throttle

      # 2 mm to 3 mm: common practice
      Examples:
        | play            | state |
        | 1.9 mm ± 0.1 mm | fault |
        | 2.0 mm ± 0.1 mm | doubt |
        | 2.2 mm ± 0.1 mm | met   |
        | 2.8 mm ± 0.1 mm | met   |
        | 3.0 mm ± 0.1 mm | doubt |
        | 3.1 mm ± 0.1 mm | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle measured throttle-play 1.9 mm ± 0.1 mm
      And tom wrote that controls/throttle measured throttle-play 2.5 mm ± 0.1 mm
      Then controls.throttle-play is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle measured throttle-play 1.9 mm ± 0.1 mm
      Then controls.throttle-play is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: the maker's figure replaces common practice
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says controls.throttle-play at most 6 mm
      And controls/throttle measured throttle-play 5 mm ± 0.1 mm
      Then controls.throttle-play is met at controls/throttle
      And the limit came from "Lark 250 workshop manual"

    Scenario: nobody looked in the maker's manual
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no word from the maker on controls.throttle-play
      And controls/throttle measured throttle-play 2.5 mm ± 0.1 mm
      Then controls.throttle-play is missing at controls/throttle

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.throttle-play is missing at controls/throttle
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle measured throttle-play 2.5 mm ± 0.1 mm <ago> months ago
      Then controls.throttle-play is <state> at controls/throttle

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle measured throttle-play 2.5 mm ± 0.1 mm
      And <point> was <work>
      Then controls.throttle-play is stale at controls/throttle

      Examples:
        | point              | work     |
        | controls/throttle  | removed  |
        | controls/throttle  | adjusted |
        | steering/handlebar | removed  |
        | fuel/carburettors  | refitted |
        | fuel/carburettors  | adjusted |
        | machine            | damaged  |
        | steering/handlebar | adjusted |
        | fuel/tank          | damaged  |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.throttle-play is not applicable

    Scenario: play at the throttle is set
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for controls.throttle-play
      And controls/throttle measured throttle-play 7 mm ± 0.1 mm
      Then controls.throttle-play is fault
      And for road-test controls/throttle is to be adjusted first

  @controls.throttle-cable
  Rule: The throttle cable is free and whole

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle seen throttle-cable free-and-whole
      Then controls.throttle-cable is met at controls/throttle
      And it holds until 2027-05-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle seen throttle-cable <found>
      Then controls.throttle-cable is fault at controls/throttle

      Examples:
        | found        |
        | frayed       |
        | stiff        |
        | kinked       |
        | outer-split  |
        | nipple-loose |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle seen throttle-cable frayed
      And tom wrote that controls/throttle seen throttle-cable free-and-whole
      Then controls.throttle-cable is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.throttle-cable is missing at controls/throttle
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle told throttle-cable free-and-whole
      Then controls.throttle-cable is missing at controls/throttle

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle seen throttle-cable free-and-whole <ago> months ago
      Then controls.throttle-cable is <state> at controls/throttle

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle seen throttle-cable free-and-whole
      And <point> was <work>
      Then controls.throttle-cable is stale at controls/throttle

      Examples:
        | point   | work    |
        | machine | damaged |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle seen throttle-cable free-and-whole
      And <point> was <work>
      Then controls.throttle-cable is met at controls/throttle

      Examples:
        | point             | work    |
        | controls/throttle | removed |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.throttle-cable is not applicable

  @controls.idle-at-locks
  Rule: The revs stay steady from lock to lock

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried idle-at-locks steady
      Then controls.idle-at-locks is met at controls/throttle

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle seen idle-at-locks steady
      Then controls.idle-at-locks is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried idle-at-locks <found>
      Then controls.idle-at-locks is fault at controls/throttle

      Examples:
        | found |
        | rises |
        | dies  |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried idle-at-locks rises
      And tom wrote that controls/throttle tried idle-at-locks steady
      Then controls.idle-at-locks is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried idle-at-locks rises
      Then controls.idle-at-locks is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.idle-at-locks is missing at controls/throttle
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle told idle-at-locks steady
      Then controls.idle-at-locks is missing at controls/throttle

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried idle-at-locks steady <ago> days ago
      Then controls.idle-at-locks is <state> at controls/throttle

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried idle-at-locks steady
      And <point> was <work>
      Then controls.idle-at-locks is stale at controls/throttle

      Examples:
        | point                    | work       |
        | controls/throttle        | removed    |
        | controls/throttle        | adjusted   |
        | controls/throttle        | lubricated |
        | steering                 | removed    |
        | steering/handlebar       | removed    |
        | fuel/tank                | refitted   |
        | fuel/carburettors        | replaced   |
        | fuel/carburettors        | cleaned    |
        | fuel/carburettors        | adjusted   |
        | headlamp                 | opened     |
        | machine                  | damaged    |
        | headlamp/shell           | damaged    |
        | steering/handlebar       | adjusted   |
        | engine/intake/air-filter | damaged    |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.idle-at-locks is not applicable

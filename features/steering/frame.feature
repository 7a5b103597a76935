# All of it is common practice.
Feature: Frame, sidecar fittings and stands
  What everything is bolted to, and what the machine stands on.

  @steering.frame
  Rule: The frame is sound from headstock to stand

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen frame-condition sound
      And frame/lugs seen lug-condition sound
      Then steering.frame is met
      And it holds until 2027-11-25

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen frame-condition sound
      And frame/lugs told lug-condition sound
      Then steering.frame is missing

    Scenario Outline: what is wrong with the tubes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/lugs seen lug-condition sound
      And frame seen frame-condition <found>
      Then steering.frame is fault at frame

      Examples:
        | found              |
        | cracked            |
        | bent               |
        | rusted-through     |
        | repaired-unsoundly |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/lugs seen lug-condition sound
      And frame seen frame-condition cracked
      And tom wrote that frame seen frame-condition sound
      Then steering.frame is fault

    Scenario Outline: what is wrong with the lugs
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen frame-condition sound
      And frame/lugs seen lug-condition <found>
      Then steering.frame is fault at frame

      Examples:
        | found           |
        | cracked         |
        | broken          |
        | worn            |
        | thread-stripped |

    Scenario: without the tubes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/lugs seen lug-condition sound
      Then steering.frame is missing at frame

    Scenario: without the lugs
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen frame-condition sound
      Then steering.frame is missing at frame

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.frame is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/lugs seen lug-condition sound
      And frame told frame-condition sound
      Then steering.frame is missing at frame

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen frame-condition sound <ago> months ago
      And frame/lugs seen lug-condition sound <ago> months ago
      Then steering.frame is <state> at frame

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen frame-condition sound
      And frame/lugs seen lug-condition sound
      And <point> was <work>
      Then steering.frame is stale at frame

      Examples:
        | point      | work     |
        | frame      | repaired |
        | frame/lugs | repaired |
        | machine    | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen frame-condition sound
      And frame/lugs seen lug-condition sound
      And <point> was <work>
      Then steering.frame is met at frame

      Examples:
        | point        | work    |
        | frame/stands | removed |
        | engine       | removed |

    Scenario: a mended lug leaves the look at the tubes standing, and the lugs are looked at again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen frame-condition sound
      And frame/lugs seen lug-condition sound
      And frame/lugs was repaired
      And frame/lugs seen lug-condition sound
      Then steering.frame is met

  @steering.sidecar-fittings
  Rule: The sidecar is held by sound and tight fittings

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings tried sidecar-fittings tight
      Then steering.sidecar-fittings is met
      And it holds until 2027-05-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings tried sidecar-fittings <found>
      Then steering.sidecar-fittings is fault at frame/sidecar-fittings

      Examples:
        | found       |
        | loose       |
        | cracked     |
        | bent        |
        | thread-worn |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings tried sidecar-fittings loose
      And tom wrote that frame/sidecar-fittings tried sidecar-fittings tight
      Then steering.sidecar-fittings is fault

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      Then steering.sidecar-fittings is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings seen sidecar-fittings tight
      Then steering.sidecar-fittings is missing at frame/sidecar-fittings

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings tried sidecar-fittings tight <ago> months ago
      Then steering.sidecar-fittings is <state> at frame/sidecar-fittings

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings tried sidecar-fittings tight
      And <point> was <work>
      Then steering.sidecar-fittings is stale at frame/sidecar-fittings

      Examples:
        | point                  | work     |
        | frame/sidecar-fittings | refitted |
        | third-wheel            | removed  |
        | frame/lugs             | repaired |
        | frame/sidecar-fittings | adjusted |
        | machine                | ridden   |
        | machine                | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings tried sidecar-fittings tight
      And <point> was <work>
      Then steering.sidecar-fittings is met at frame/sidecar-fittings

      Examples:
        | point      | work    |
        | rear-wheel | removed |

    Scenario: not asked of a solo machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.sidecar-fittings is not applicable

  @steering.stand-holds
  Rule: Every stand holds the machine

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-holds holds
      Then steering.stand-holds is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-holds <found>
      Then steering.stand-holds is fault at frame/stands

      Examples:
        | found         |
        | folds         |
        | leans-too-far |
        | slips         |
        | rocks         |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-holds folds
      And tom wrote that frame/stands tried stand-holds holds
      Then steering.stand-holds is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-holds folds
      Then steering.stand-holds is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.stand-holds is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands seen stand-holds holds
      Then steering.stand-holds is missing at frame/stands

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-holds holds <ago> months ago
      Then steering.stand-holds is <state> at frame/stands

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-holds holds
      And <point> was <work>
      Then steering.stand-holds is stale at frame/stands

      Examples:
        | point                  | work     |
        | frame/stands           | refitted |
        | frame/stands           | adjusted |
        | frame/lugs             | repaired |
        | machine                | damaged  |
        | front-wheel            | damaged  |
        | front-wheel/tyre       | replaced |
        | rear-fork/dampers      | damaged  |
        | rear-fork/dampers      | adjusted |
        | frame/sidecar-fittings | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-holds holds
      And <point> was <work>
      Then steering.stand-holds is met at frame/stands

      Examples:
        | point        | work    |
        | frame/stands | torqued |

    Scenario: it stops every gate at which the machine stands by itself
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-holds slips
      Then the first-start is blocked
      And the indoor-run is blocked

    Scenario: not asked of a machine without a stand
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has stands 0
      Then steering.stand-holds is not applicable

  @steering.stand-retracts
  Rule: Every stand goes up by itself and stays up

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-retracts goes-up-and-stays
      And frame/stands seen stand-spring whole
      Then steering.stand-retracts is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong with the return
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands seen stand-spring whole
      And frame/stands tried stand-retracts <found>
      Then steering.stand-retracts is fault at frame/stands

      Examples:
        | found             |
        | hangs             |
        | stays-down        |
        | touches-the-chain |
        | touches-the-tyre  |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands seen stand-spring whole
      And frame/stands tried stand-retracts hangs
      And tom wrote that frame/stands tried stand-retracts goes-up-and-stays
      Then steering.stand-retracts is fault

    Scenario Outline: what is wrong with the spring
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-retracts goes-up-and-stays
      And frame/stands seen stand-spring <found>
      Then steering.stand-retracts is fault at frame/stands

      Examples:
        | found          |
        | cracked        |
        | stretched      |
        | missing        |
        | wrongly-hooked |

    Scenario: without the return
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands seen stand-spring whole
      Then steering.stand-retracts is missing at frame/stands

    Scenario: without the spring
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-retracts goes-up-and-stays
      Then steering.stand-retracts is missing at frame/stands

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.stand-retracts is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands seen stand-spring whole
      And frame/stands seen stand-retracts goes-up-and-stays
      Then steering.stand-retracts is missing at frame/stands

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-retracts goes-up-and-stays
      And frame/stands told stand-spring whole
      Then steering.stand-retracts is missing at frame/stands

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-retracts goes-up-and-stays <ago> months ago
      And frame/stands seen stand-spring whole <ago> months ago
      Then steering.stand-retracts is <state> at frame/stands

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands tried stand-retracts goes-up-and-stays
      And frame/stands seen stand-spring whole
      And <point> was <work>
      Then steering.stand-retracts is stale at frame/stands

      Examples:
        | point            | work      |
        | frame/stands     | refitted  |
        | frame/stands     | adjusted  |
        | frame/stands     | tightened |
        | frame/stands     | torqued   |
        | frame/lugs       | repaired  |
        | machine          | damaged   |
        | front-wheel/tyre | replaced  |

    Scenario: not asked of a machine without a stand
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has stands 0
      Then steering.stand-retracts is not applicable

Feature: After the road test
  What a ride brings to light is looked for after the last ride.

  @handover.ridden
  Rule: It was ridden after the last work that bears on safety

    Scenario: ridden after the work
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper was removed
      And machine was ridden
      Then handover.ridden is met

    Scenario: never ridden
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.ridden is missing
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And <point> was <work>
      Then handover.ridden is stale

      Examples:
        | point                  | work     |
        | front-brake/caliper    | removed  |
        | rear-brake/shoes       | replaced |
        | front-brake/hydraulic  | bled     |
        | rear-wheel             | removed  |
        | rear-wheel/tyre        | replaced |
        | rear-fork              | repaired |
        | front-fork             | opened   |
        | front-fork             | refitted |
        | steering               | opened   |
        | steering               | adjusted |
        | controls/throttle      | replaced |
        | frame                  | repaired |
        | transmission/chain     | replaced |
        | engine                 | opened   |
        | fuel/tank              | removed  |
        | oil                    | opened   |
        | machine                | damaged  |
        | frame/sidecar-fittings | adjusted |

    Scenario Outline: work that leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And <point> was <work>
      Then handover.ridden is met

      Examples:
        | point              | work       |
        | front-wheel/tyre   | inflated   |
        | transmission/chain | lubricated |
        | machine            | cleaned    |
        | machine            | ridden     |
        | controls/mirrors   | removed    |
        | controls/mirrors   | refitted   |
        | controls/mirrors   | replaced   |
        | controls/mirrors   | repaired   |
        | controls/mirrors   | stripped   |
        | controls/mirrors   | opened     |

    Scenario Outline: only another ride shows that a fault of the ride is gone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden 2 days ago
      And transmission/chain tried chain-after-ride <found> 2 days ago
      And transmission/chain was lubricated 1 day ago
      Then handover.ridden is <state>

      Examples:
        | found | state |
        | tight | stale |
        | right | met   |

    Scenario: ridden again since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden 3 days ago
      And transmission/chain tried chain-after-ride tight 3 days ago
      And transmission/chain was lubricated 2 days ago
      And machine was ridden 1 day ago
      Then handover.ridden is met

    Scenario: work of the same kind after the other ride
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden 4 days ago
      And transmission/chain tried chain-after-ride tight 4 days ago
      And transmission/chain was lubricated 3 days ago
      And machine was ridden 2 days ago
      And transmission/chain was lubricated 1 day ago
      Then handover.ridden is met

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden <ago> days ago
      Then handover.ridden is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

  @handover.ride-result
  Rule: The last ride ended with no defect open

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And machine tried road-test no-open-defect
      Then handover.ride-result is met

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And machine tried road-test <found>
      Then handover.ride-result is fault

      Examples:
        | found       |
        | open-defect |
        | broken-off  |

    Scenario: a defect is mended and the machine ridden again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried road-test open-defect
      And front-brake/hydraulic was bled
      And machine was ridden
      And machine tried road-test no-open-defect
      Then handover.ride-result is met

    Scenario Outline: what is done after every ride mends no defect that the ride brought to light
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And machine tried road-test open-defect
      And tom wrote that <part> was <work>
      Then handover.ride-result is fault
      And the road-test is closed by handover.ride-result

      Examples:
        | part                | work      |
        | front-wheel/spindle | torqued   |
        | rear-wheel/spindle  | torqued   |
        | engine/head         | torqued   |
        | engine/mounts       | torqued   |
        | front-wheel/tyre    | inflated  |
        | fuel/petrol         | topped-up |
        | front-brake         | bedded    |

    Scenario: writing a better result without riding again changes nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And machine tried road-test open-defect
      And machine tried road-test no-open-defect
      Then handover.ride-result is fault

    Scenario: no record of what the ride showed
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      Then handover.ride-result is missing
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And machine told road-test no-open-defect
      Then handover.ride-result is missing

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried road-test no-open-defect
      And <point> was <work>
      Then handover.ride-result is stale

      Examples:
        | point                  | work     |
        | machine                | ridden   |
        | front-brake/caliper    | removed  |
        | rear-brake/shoes       | replaced |
        | front-brake/hydraulic  | bled     |
        | rear-wheel             | removed  |
        | rear-wheel/tyre        | replaced |
        | rear-fork              | repaired |
        | front-fork             | opened   |
        | front-fork             | refitted |
        | steering               | opened   |
        | steering               | adjusted |
        | controls/throttle      | replaced |
        | frame                  | repaired |
        | transmission/chain     | replaced |
        | engine                 | opened   |
        | fuel/tank              | removed  |
        | oil                    | opened   |
        | machine                | damaged  |
        | frame/sidecar-fittings | adjusted |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried road-test no-open-defect
      And <point> was <work>
      Then handover.ride-result is met

      Examples:
        | point            | work     |
        | controls/mirrors | removed  |
        | controls/mirrors | refitted |
        | controls/mirrors | replaced |
        | controls/mirrors | repaired |
        | controls/mirrors | stripped |
        | controls/mirrors | opened   |

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried road-test no-open-defect <ago> days ago
      Then handover.ride-result is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen road-test no-open-defect 30 days ago
      Then handover.ride-result is missing

    Scenario Outline: what the ride brought to light is mended at a mudguard
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried road-test open-defect 2 days ago
      And <part> was <work> 1 day ago
      Then handover.ride-result is stale

      Examples:
        | part           | work      |
        | front-mudguard | repaired  |
        | front-mudguard | tightened |
        | rear-mudguard  | replaced  |

  @handover.leaks-after-ride
  Rule: Nothing leaks after the ride

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen leaks-after-ride dry
      Then handover.leaks-after-ride is met at machine

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen leaks-after-ride <found>
      Then handover.leaks-after-ride is fault at machine

      Examples:
        | found        |
        | oil          |
        | fuel         |
        | brake-fluid  |
        | fork-oil     |
        | coolant      |
        | battery-acid |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen leaks-after-ride oil
      And tom wrote that machine seen leaks-after-ride dry
      Then handover.leaks-after-ride is fault

    Scenario: found so, and then tightened
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen leaks-after-ride brake-fluid
      And tom wrote that front-brake was tightened
      Then handover.leaks-after-ride is stale

    Scenario: found so, and then tightened
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen leaks-after-ride fork-oil
      And tom wrote that front-fork was tightened
      Then handover.leaks-after-ride is stale

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen leaks-after-ride oil
      Then handover.leaks-after-ride is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen leaks-after-ride fuel
      Then handover.leaks-after-ride is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen leaks-after-ride battery-acid
      Then handover.leaks-after-ride is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over, non-runner and no other gate

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.leaks-after-ride is missing at machine
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine told leaks-after-ride dry
      Then handover.leaks-after-ride is missing at machine

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen leaks-after-ride dry <ago> days ago
      Then handover.leaks-after-ride is <state> at machine

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen leaks-after-ride dry
      And <point> was <work>
      Then handover.leaks-after-ride is stale at machine

      Examples:
        | point                 | work     |
        | machine               | ridden   |
        | engine                | opened   |
        | fuel/tank             | removed  |
        | oil                   | opened   |
        | transmission/chain    | replaced |
        | front-fork            | opened   |
        | rear-fork             | replaced |
        | front-brake/hydraulic | opened   |
        | machine               | damaged  |

  @handover.fasteners-after-ride
  Rule: What was worked on is still tight after the ride

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried fasteners-after-ride tight
      Then handover.fasteners-after-ride is met at machine

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen fasteners-after-ride tight
      Then handover.fasteners-after-ride is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried fasteners-after-ride <found>
      Then handover.fasteners-after-ride is fault at machine

      Examples:
        | found        |
        | loose        |
        | missing      |
        | lock-missing |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried fasteners-after-ride loose
      And tom wrote that machine tried fasteners-after-ride tight
      Then handover.fasteners-after-ride is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried fasteners-after-ride loose
      Then handover.fasteners-after-ride is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.fasteners-after-ride is missing at machine
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine told fasteners-after-ride tight
      Then handover.fasteners-after-ride is missing at machine

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried fasteners-after-ride tight <ago> days ago
      Then handover.fasteners-after-ride is <state> at machine

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried fasteners-after-ride tight
      And <point> was <work>
      Then handover.fasteners-after-ride is stale at machine

      Examples:
        | point                  | work     |
        | machine                | ridden   |
        | front-brake/caliper    | removed  |
        | rear-brake/shoes       | replaced |
        | front-brake/hydraulic  | bled     |
        | rear-wheel             | removed  |
        | rear-wheel/tyre        | replaced |
        | rear-fork              | repaired |
        | front-fork             | opened   |
        | front-fork             | refitted |
        | steering               | opened   |
        | steering               | adjusted |
        | controls/throttle      | replaced |
        | frame                  | repaired |
        | transmission/chain     | replaced |
        | engine                 | opened   |
        | fuel/tank              | removed  |
        | oil                    | opened   |
        | machine                | damaged  |
        | frame/sidecar-fittings | adjusted |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried fasteners-after-ride tight
      And <point> was <work>
      Then handover.fasteners-after-ride is met at machine

      Examples:
        | point            | work     |
        | controls/mirrors | removed  |
        | controls/mirrors | refitted |
        | controls/mirrors | replaced |
        | controls/mirrors | repaired |
        | controls/mirrors | stripped |
        | controls/mirrors | opened   |

    Scenario: a mudguard that shook loose is tightened
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried fasteners-after-ride loose 2 days ago
      And rear-mudguard was tightened 1 day ago
      Then handover.fasteners-after-ride is stale

  @handover.chain-after-ride
  Rule: Chain or belt still runs true after the ride

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/chain tried chain-after-ride right
      Then handover.chain-after-ride is met at transmission/chain

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/chain seen chain-after-ride right
      Then handover.chain-after-ride is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/chain tried chain-after-ride <found>
      Then handover.chain-after-ride is fault at transmission/chain

      Examples:
        | found       |
        | slack       |
        | tight       |
        | out-of-line |
        | clip-out    |
        | dry         |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/chain tried chain-after-ride slack
      And tom wrote that transmission/chain tried chain-after-ride right
      Then handover.chain-after-ride is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/chain tried chain-after-ride clip-out
      Then handover.chain-after-ride is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.chain-after-ride is missing at transmission/chain
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/chain told chain-after-ride right
      Then handover.chain-after-ride is missing at transmission/chain

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/chain tried chain-after-ride right <ago> days ago
      Then handover.chain-after-ride is <state> at transmission/chain

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/chain tried chain-after-ride right
      And <point> was <work>
      Then handover.chain-after-ride is stale at transmission/chain

      Examples:
        | point                  | work     |
        | machine                | ridden   |
        | transmission/chain     | replaced |
        | transmission/sprockets | replaced |
        | rear-wheel             | removed  |
        | rear-wheel/spindle     | adjusted |
        | rear-fork              | repaired |
        | rear-wheel/spindle     | loosened |

    Scenario: not asked of a shaft
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is shaft
      Then handover.chain-after-ride is not applicable

    Scenario: asked of a belt
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is belt
      Then handover.chain-after-ride is missing

  @handover.spokes-after-ride
  Rule: Spokes are still whole and tight after the ride

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spokes tried spokes-after-ride tight-and-even
      Then handover.spokes-after-ride is met at rear-wheel/spokes

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spokes tried spokes-after-ride <found>
      Then handover.spokes-after-ride is fault at rear-wheel/spokes

      Examples:
        | found  |
        | loose  |
        | broken |
        | uneven |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spokes tried spokes-after-ride loose
      And tom wrote that rear-wheel/spokes tried spokes-after-ride tight-and-even
      Then handover.spokes-after-ride is fault

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spokes seen spokes-after-ride loose
      And tom wrote that rear-wheel/spokes tried spokes-after-ride tight-and-even
      Then handover.spokes-after-ride is missing

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spokes tried spokes-after-ride loose
      Then handover.spokes-after-ride is fault
      And it holds road-test, hand-over and no other gate

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.spokes-after-ride is missing at rear-wheel/spokes
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spokes told spokes-after-ride tight-and-even
      Then handover.spokes-after-ride is missing at rear-wheel/spokes

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spokes tried spokes-after-ride tight-and-even <ago> days ago
      Then handover.spokes-after-ride is <state> at rear-wheel/spokes

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spokes tried spokes-after-ride tight-and-even
      And <point> was <work>
      Then handover.spokes-after-ride is stale at rear-wheel/spokes

      Examples:
        | point             | work     |
        | machine           | ridden   |
        | rear-wheel/spokes | replaced |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spokes tried spokes-after-ride tight-and-even
      And <point> was <work>
      Then handover.spokes-after-ride is met at rear-wheel/spokes

      Examples:
        | point      | work    |
        | rear-wheel | removed |

    Scenario: not asked of cast wheels
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels are cast
      Then handover.spokes-after-ride is not applicable

  @handover.brake-heat
  Rule: No brake is hot after the ride

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried heat-after-ride cool-or-warm
      Then handover.brake-heat is met at front-brake

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried heat-after-ride <found>
      Then handover.brake-heat is fault at front-brake

      Examples:
        | found  |
        | hot    |
        | smells |
        | smokes |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried heat-after-ride hot
      And tom wrote that front-brake tried heat-after-ride cool-or-warm
      Then handover.brake-heat is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried heat-after-ride hot
      Then handover.brake-heat is fault
      And it holds road-test, hand-over and no other gate

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.brake-heat is missing at front-brake
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake told heat-after-ride cool-or-warm
      Then handover.brake-heat is missing at front-brake

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried heat-after-ride cool-or-warm <ago> days ago
      Then handover.brake-heat is <state> at front-brake

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried heat-after-ride cool-or-warm
      And <point> was <work>
      Then handover.brake-heat is stale at front-brake

      Examples:
        | point       | work     |
        | front-brake | removed  |
        | machine     | ridden   |
        | front-brake | repaired |
        | front-wheel | removed  |

    Scenario: asked of every brake
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried heat-after-ride cool-or-warm
      Then handover.brake-heat is missing at rear-brake

    Scenario: not asked where there is no brake
      Given a motorcycle with no brake in front and a rod drum behind
      And rear-brake tried heat-after-ride cool-or-warm
      Then handover.brake-heat is met

    Scenario: looking alone is not enough
      Given a motorcycle with no brake in front and a rod drum behind
      And rear-brake seen heat-after-ride cool-or-warm
      Then handover.brake-heat is missing

    Scenario: nothing to brake with
      Given a motorcycle with no brake in front and no brake behind
      Then handover.brake-heat is not applicable

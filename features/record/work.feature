Feature: Is the work finished, and did somebody else look at it?

  @record.reassembled
  Rule: Whatever was taken off or apart is together again

    Scenario: nothing was taken apart
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic was bled
      Then record.reassembled is met

    Scenario Outline: work left open
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper was <work> 1 day ago
      Then record.reassembled is fault
      And it says "front brake, caliper: <work> 2026-11-24 09:00 by Ida Marrow (e1); no later record that it is together again"

      Examples:
        | work     |
        | removed  |
        | opened   |
        | stripped |

    Scenario Outline: closed by what was done later
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper was removed 2 days ago
      And <point> was <work> 1 day ago
      Then record.reassembled is <state>

      Examples:
        | point                         | work     | state |
        | front-brake/caliper           | refitted | met   |
        | front-brake/caliper           | replaced | met   |
        | front-brake/caliper           | left-off | met   |
        | front-brake                   | refitted | met   |
        | front-brake/caliper           | torqued  | fault |
        | front-brake/caliper/inner-pad | refitted | fault |
        | rear-brake                    | refitted | fault |

    Scenario: taken off again afterwards
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper was removed 3 days ago
      And front-brake/caliper was refitted 2 days ago
      And front-brake/caliper was removed 1 day ago
      Then record.reassembled is fault

    Scenario: loosened and not tightened again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spindle was loosened 1 day ago
      Then record.reassembled is fault
      And it says "rear wheel, spindle: loosened 2026-11-24 09:00 by Ida Marrow (e1) and not entered as tight again"

    Scenario Outline: loosened, and what was done later
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spindle was loosened 2 days ago
      And <point> was <work> 1 day ago
      Then record.reassembled is <state>

      Examples:
        | point               | work      | state |
        | rear-wheel/spindle  | torqued   | met   |
        | rear-wheel/spindle  | tightened | met   |
        | rear-wheel          | refitted  | met   |
        | rear-wheel/spindle  | cleaned   | fault |
        | front-wheel/spindle | torqued   | fault |

    Scenario: drained and not filled again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/gearbox/oil was drained 1 day ago
      Then record.reassembled is fault
      And it says "transmission, gearbox, oil: drained 2026-11-24 09:00 by Ida Marrow (e1) and not entered as filled again"

    Scenario Outline: drained, and what was done later
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <drained> was drained 2 days ago
      And <point> was <work> 1 day ago
      Then record.reassembled is <state>

      Examples:
        | drained                  | point                    | work     | state |
        | transmission/gearbox/oil | transmission/gearbox/oil | filled   | met   |
        | transmission/gearbox     | transmission/gearbox/oil | filled   | met   |
        | transmission/gearbox/oil | transmission/gearbox/oil | cleaned  | fault |
        | transmission/gearbox/oil | front-fork/oil           | filled   | fault |

    Scenario: an empty tank is no fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank was drained 1 day ago
      Then record.reassembled is met

  @record.second-person
  Rule: Somebody else looks at work on brakes, wheels, steering and throttle

    Scenario: nobody worked on them
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then record.second-person is met

    Scenario: nobody else looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And tom wrote that front-brake/caliper was refitted 1 day ago
      And tom wrote that front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      Then record.second-person is missing at front-brake
      And record.second-person is met at rear-brake
      And it says "front brake, caliper: refitted 2026-11-24 09:00 by Tom Fell (e1) and nobody else has looked at it since"

    Scenario Outline: somebody else looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And tom wrote that front-brake/caliper was refitted 2 days ago
      And <entry>
      Then record.second-person is <state> at front-brake

      Examples:
        | entry                                                                            | state   |
        | front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 1 day ago       | met     |
        | front-brake tried walking-pace-stop stops 1 day ago                              | met     |
        | front-brake/hydraulic/hose seen hose-condition sound 1 day ago                   | missing |
        | rear-brake tried walking-pace-stop stops 1 day ago                               | missing |
        | front-brake told walking-pace-stop stops 1 day ago                               | missing |
        | front-brake tried walking-pace-stop stops 3 days ago                             | missing |
        | front-brake/caliper was torqued 1 day ago                                        | missing |
        | tom wrote that front-brake tried walking-pace-stop stops 1 day ago               | missing |

    Scenario Outline: what counts as work of this kind
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And tom wrote that <point> was <work> 1 day ago
      Then record.second-person is <state>

      Examples:
        | point               | work     | state   |
        | steering            | adjusted | missing |
        | controls/throttle   | replaced | missing |
        | rear-wheel/spindle  | torqued  | missing |
        | front-brake         | bled     | missing |
        | front-brake         | cleaned  | met     |
        | front-wheel/tyre    | inflated | met     |
        | front-brake         | removed  | met     |
        | machine             | ridden   | met     |

    Scenario: a tube puts the brake back together
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And tom wrote that rear-wheel/tube was replaced 1 day ago
      Then record.second-person is missing at rear-brake
      And it says "rear wheel, tube: replaced 2026-11-24 09:00 by Tom Fell (e1), which reaches it, and nobody else has looked at it since"
      And record.second-person is missing at rear-wheel
      And record.second-person is met at front-brake

    Scenario: somebody else tried the brake that was reached
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And tom wrote that rear-wheel/tube was replaced 1 day ago
      And rear-brake tried walking-pace-stop stops
      Then record.second-person is met at rear-brake

    Scenario: a third wheel counts with the others
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And tom wrote that third-wheel was refitted 1 day ago
      Then record.second-person is missing at third-wheel
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: one person works alone and says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake/caliper was refitted 1 day ago
      Then record.second-person is met
      And it notes "one person works alone in this workshop"

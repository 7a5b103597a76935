# Straight, no play between what slides, no oil that runs; a mist is not a leak: COMAR 11.14.03.02 (read) and the older British
# manuals (read in copies).
Feature: Front fork and springing
  What carries the front wheel, and what lets it move.

  @steering.fork-straight
  Rule: The front fork is straight and uncracked

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork seen fork-condition straight
      Then steering.fork-straight is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork seen fork-condition <found>
      Then steering.fork-straight is fault at front-fork

      Examples:
        | found   |
        | bent    |
        | twisted |
        | cracked |
        | dented  |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork seen fork-condition bent
      And tom wrote that front-fork seen fork-condition straight
      Then steering.fork-straight is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.fork-straight is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork told fork-condition straight
      Then steering.fork-straight is missing at front-fork

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork seen fork-condition straight <ago> months ago
      Then steering.fork-straight is <state> at front-fork

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork seen fork-condition straight
      And <point> was <work>
      Then steering.fork-straight is stale at front-fork

      Examples:
        | point                | work     |
        | front-fork           | refitted |
        | front-fork/right-leg | refitted |
        | steering/yokes       | refitted |
        | machine              | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork seen fork-condition straight
      And <point> was <work>
      Then steering.fork-straight is met at front-fork

      Examples:
        | point         | work     |
        | front-wheel   | removed  |
        | steering/head | adjusted |

    Scenario Outline: asked of every kind of fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing <kind>
      And front-fork seen fork-condition <found>
      Then steering.fork-straight is <state>

      Examples:
        | kind   | found    | state |
        | girder | straight | met   |
        | girder | bent     | fault |
        | rigid  | straight | met   |
        | rigid  | cracked  | fault |

  @steering.fork-legs
  Rule: Every fork leg is smooth and slides without shake

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen leg-surface smooth
      And front-fork/left-leg tried leg-play none
      And front-fork/right-leg seen leg-surface smooth
      And front-fork/right-leg tried leg-play none
      Then steering.fork-legs is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong with the surface
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg tried leg-play none
      And front-fork/left-leg seen leg-surface <found>
      Then steering.fork-legs is fault at front-fork/left-leg

      Examples:
        | found          |
        | pitted         |
        | scored         |
        | chrome-peeling |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg tried leg-play none
      And front-fork/left-leg seen leg-surface pitted
      And tom wrote that front-fork/left-leg seen leg-surface smooth
      Then steering.fork-legs is fault

    Scenario Outline: what is wrong with the play
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen leg-surface smooth
      And front-fork/left-leg tried leg-play <found>
      Then steering.fork-legs is fault at front-fork/left-leg

      Examples:
        | found  |
        | felt   |
        | knocks |

    Scenario: without the surface
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg tried leg-play none
      Then steering.fork-legs is missing at front-fork/left-leg

    Scenario: without the play
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen leg-surface smooth
      Then steering.fork-legs is missing at front-fork/left-leg

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.fork-legs is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen leg-surface smooth
      And front-fork/left-leg seen leg-play none
      Then steering.fork-legs is missing at front-fork/left-leg

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg tried leg-play none
      And front-fork/left-leg told leg-surface smooth
      Then steering.fork-legs is missing at front-fork/left-leg

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen leg-surface smooth <ago> months ago
      And front-fork/left-leg tried leg-play none <ago> months ago
      Then steering.fork-legs is <state> at front-fork/left-leg

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen leg-surface smooth
      And front-fork/left-leg tried leg-play none
      And <point> was <work>
      Then steering.fork-legs is stale at front-fork/left-leg

      Examples:
        | point               | work     |
        | front-fork/left-leg | opened   |
        | front-fork          | stripped |
        | machine             | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen leg-surface smooth
      And front-fork/left-leg tried leg-play none
      And <point> was <work>
      Then steering.fork-legs is met at front-fork/left-leg

      Examples:
        | point                | work     |
        | front-fork           | removed  |
        | front-fork           | refitted |
        | front-fork/right-leg | opened   |
        | front-fork/oil       | filled   |

    Scenario: not asked of a girder fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      Then steering.fork-legs is not applicable

    Scenario: not asked of a rigid fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing rigid
      Then steering.fork-legs is not applicable

  @steering.fork-seal
  Rule: Every fork leg is dry at its seal

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen seal-ring dry
      And front-fork/right-leg seen seal-ring dry
      Then steering.fork-seal is met
      And it holds until 2027-05-25

    Scenario Outline: what else is in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen seal-ring <found>
      Then steering.fork-seal is met at front-fork/left-leg

      Examples:
        | found      |
        | light-mist |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen seal-ring <found>
      Then steering.fork-seal is fault at front-fork/left-leg

      Examples:
        | found |
        | wet   |
        | runs  |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen seal-ring wet
      And tom wrote that front-fork/left-leg seen seal-ring dry
      Then steering.fork-seal is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.fork-seal is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg told seal-ring dry
      Then steering.fork-seal is missing at front-fork/left-leg

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen seal-ring dry <ago> months ago
      Then steering.fork-seal is <state> at front-fork/left-leg

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen seal-ring dry
      And <point> was <work>
      Then steering.fork-seal is stale at front-fork/left-leg

      Examples:
        | point               | work      |
        | front-fork/left-leg | opened    |
        | front-fork          | refitted  |
        | front-fork/oil      | filled    |
        | front-fork/oil      | topped-up |
        | machine             | ridden    |
        | machine             | damaged   |
        | front-fork          | removed   |
        | front-fork/oil      | drained   |
        | front-fork/left-leg | tightened |
        | front-fork/left-leg | loosened  |

    Scenario Outline: work that reaches it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen seal-ring dry
      And <point> was <work>
      Then steering.fork-seal is stale at front-fork/left-leg

      Examples:
        | point                | work    |
        | front-fork/right-leg | opened  |
        | steering/yokes       | removed |

    Scenario: mist above a brake disc
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork/left-leg seen seal-ring light-mist
      Then steering.fork-seal is met at front-fork/left-leg
      And it notes "above a brake disc"

    Scenario Outline: nothing is said of a disc
      Given a motorcycle with <front> in front and <rear> behind
      And front-fork/left-leg seen seal-ring <found>
      And front-fork/right-leg seen seal-ring dry
      And rear-fork/dampers seen damper-leak light-mist
      Then steering.fork-seal is met
      And it notes nothing

      Examples:
        | front              | rear               | found      |
        | a cable drum       | a rod drum         | light-mist |
        | a cable drum       | one hydraulic disc | light-mist |
        | one hydraulic disc | a rod drum         | dry        |

    Scenario: not asked of a girder fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      Then steering.fork-seal is not applicable

    Scenario: not asked of a rigid fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing rigid
      Then steering.fork-seal is not applicable

  @steering.fork-travel
  Rule: The front goes down and comes back damped

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork tried fork-travel damped
      Then steering.fork-travel is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork tried fork-travel <found>
      Then steering.fork-travel is fault at front-fork

      Examples:
        | found   |
        | sticks  |
        | bounces |
        | knocks  |
        | bottoms |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork tried fork-travel sticks
      And tom wrote that front-fork tried fork-travel damped
      Then steering.fork-travel is fault

    Scenario: found so, and then filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork tried fork-travel sticks
      And tom wrote that front-fork was filled
      Then steering.fork-travel is stale

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.fork-travel is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork seen fork-travel damped
      Then steering.fork-travel is missing at front-fork

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork tried fork-travel damped <ago> months ago
      Then steering.fork-travel is <state> at front-fork

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork tried fork-travel damped
      And <point> was <work>
      Then steering.fork-travel is stale at front-fork

      Examples:
        | point                 | work      |
        | front-fork            | refitted  |
        | front-fork/left-leg   | opened    |
        | front-fork/oil        | filled    |
        | front-fork/oil        | topped-up |
        | front-fork/oil        | drained   |
        | front-fork            | adjusted  |
        | steering/yokes        | refitted  |
        | front-wheel           | refitted  |
        | machine               | damaged   |
        | steering/yokes/clamps | adjusted  |
        | front-wheel/spindle   | adjusted  |
        | front-wheel/spindle   | loosened  |
        | front-wheel/spindle   | tightened |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-fork tried fork-travel damped
      And <point> was <work>
      Then steering.fork-travel is met at front-fork

      Examples:
        | point      | work     |
        | rear-wheel | refitted |

    Scenario: asked of a girder fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork tried fork-travel damped
      Then steering.fork-travel is met

    Scenario: not asked of a rigid fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing rigid
      Then steering.fork-travel is not applicable

  @steering.girder
  Rule: Links and spring of a girder fork are sound

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links tried link-play none
      And front-fork/spring seen fork-spring whole
      Then steering.girder is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong with the links
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/spring seen fork-spring whole
      And front-fork/links tried link-play <found>
      Then steering.girder is fault at front-fork/links

      Examples:
        | found  |
        | felt   |
        | knocks |
        | tight  |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/spring seen fork-spring whole
      And front-fork/links tried link-play felt
      And tom wrote that front-fork/links tried link-play none
      Then steering.girder is fault

    Scenario Outline: what is wrong with the spring
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links tried link-play none
      And front-fork/spring seen fork-spring <found>
      Then steering.girder is fault at front-fork/links

      Examples:
        | found   |
        | cracked |
        | broken  |
        | sagged  |
        | loose   |

    Scenario: without the links
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/spring seen fork-spring whole
      Then steering.girder is missing at front-fork/links

    Scenario: without the spring
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links tried link-play none
      Then steering.girder is missing at front-fork/links

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      Then steering.girder is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/spring seen fork-spring whole
      And front-fork/links seen link-play none
      Then steering.girder is missing at front-fork/links

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links tried link-play none
      And front-fork/spring told fork-spring whole
      Then steering.girder is missing at front-fork/links

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links tried link-play none <ago> months ago
      And front-fork/spring seen fork-spring whole <ago> months ago
      Then steering.girder is <state> at front-fork/links

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links tried link-play none
      And front-fork/spring seen fork-spring whole
      And <point> was <work>
      Then steering.girder is stale at front-fork/links

      Examples:
        | point             | work      |
        | front-fork/links  | stripped  |
        | front-fork        | refitted  |
        | front-fork/spring | replaced  |
        | front-fork/links  | adjusted  |
        | front-fork/links  | tightened |
        | front-fork/links  | torqued   |
        | machine           | damaged   |

    Scenario Outline: links and leaf springs of other forks
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing <fork>
      And front-fork/links tried link-play <found>
      And front-fork/spring seen fork-spring whole
      Then steering.girder is <state>
      And fasteners.girder-spindles is missing
      And steering.fork-legs is not applicable
      And steering.fork-seal is not applicable
      And fasteners.yoke-clamps is not applicable
      And oil.fork is not applicable

      Examples:
        | fork          | found  | state |
        | leading-link  | none   | met   |
        | leading-link  | knocks | fault |
        | trailing-link | none   | met   |
        | trailing-link | felt   | fault |
        | leaf-spring   | none   | met   |
        | leaf-spring   | tight  | fault |

    Scenario Outline: nobody rocked the links of another fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing <fork>
      And a machine ready for road-test
      And nothing is written for steering.girder
      Then the road-test is blocked by steering.girder alone

      Examples:
        | fork          |
        | leading-link  |
        | trailing-link |
        | leaf-spring   |

    Scenario: not asked of a telescopic fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.girder is not applicable

    Scenario: not asked of a rigid fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing rigid
      Then steering.girder is not applicable

# No side movement that can be noticed: COMAR 11.14.03.02 A (read). 1.0 mm at the spindle: common practice.
Feature: Swing arm and rear springing
  What carries the rear wheel, and what lets it move.

  @steering.swing-arm
  Rule: The swing arm turns freely and has hardly any side play

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot measured side-play 0.4 mm ± 0.1 mm
      And rear-fork/pivot tried swing-arm-turn free
      Then steering.swing-arm is met
      And it holds until 2027-11-25

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot tried side-play 0.4 mm
      And rear-fork/pivot tried swing-arm-turn free
      Then steering.swing-arm is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot measured side-play 0.4 mm ± 0.1 mm
      And rear-fork/pivot tried swing-arm-turn <found>
      Then steering.swing-arm is fault at rear-fork/pivot

      Examples:
        | found  |
        | tight  |
        | rough  |
        | notchy |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot measured side-play 0.4 mm ± 0.1 mm
      And rear-fork/pivot tried swing-arm-turn tight
      And tom wrote that rear-fork/pivot tried swing-arm-turn free
      Then steering.swing-arm is fault

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot tried swing-arm-turn free
      And rear-fork/pivot measured side-play <play>
      Then steering.swing-arm is <state>

      # 1.0 mm: common practice
      Examples:
        | play            | state |
        | 0.8 mm ± 0.1 mm | met   |
        | 0.9 mm ± 0.1 mm | doubt |
        | 1.0 mm ± 0.1 mm | doubt |
        | 1.1 mm ± 0.1 mm | fault |

    Scenario: the maker's figure replaces practice
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says steering.swing-arm-play at most 0.5 mm
      And rear-fork/pivot tried swing-arm-turn free
      And rear-fork/pivot measured side-play 0.7 mm ± 0.1 mm
      Then steering.swing-arm is fault
      And the limit came from "Lark 250 workshop manual"

    Scenario: nobody looked for the maker's figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no word from the maker on steering.swing-arm-play
      And rear-fork/pivot tried swing-arm-turn free
      And rear-fork/pivot measured side-play 0.4 mm ± 0.1 mm
      Then steering.swing-arm is missing

    Scenario: to be ridden in Maryland
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-MD
      And rear-fork/pivot tried swing-arm-turn free
      And rear-fork/pivot measured side-play 0.4 mm ± 0.1 mm
      Then steering.swing-arm is met
      And it notes "Maryland allows no side movement"

    Scenario Outline: nothing is said of Maryland
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And rear-fork/pivot tried swing-arm-turn free
      And rear-fork/pivot measured side-play <play>
      Then steering.swing-arm is met
      And it notes nothing

      Examples:
        | territory | play            |
        | US-MD     | 0 mm ± 0.1 mm   |
        | US-VA     | 0.4 mm ± 0.1 mm |
        | GB        | 0.4 mm ± 0.1 mm |

    Scenario: without the side play
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot tried swing-arm-turn free
      Then steering.swing-arm is missing at rear-fork/pivot

    Scenario: without the turning
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot measured side-play 0.4 mm ± 0.1 mm
      Then steering.swing-arm is missing at rear-fork/pivot

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.swing-arm is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot measured side-play 0.4 mm ± 0.1 mm
      And rear-fork/pivot seen swing-arm-turn free
      Then steering.swing-arm is missing at rear-fork/pivot

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot measured side-play 0.4 mm ± 0.1 mm <ago> months ago
      And rear-fork/pivot tried swing-arm-turn free <ago> months ago
      Then steering.swing-arm is <state> at rear-fork/pivot

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot measured side-play 0.4 mm ± 0.1 mm
      And rear-fork/pivot tried swing-arm-turn free
      And <point> was <work>
      Then steering.swing-arm is stale at rear-fork/pivot

      Examples:
        | point           | work      |
        | rear-fork/pivot | replaced  |
        | rear-fork       | refitted  |
        | rear-fork/pivot | adjusted  |
        | rear-fork/pivot | tightened |
        | rear-fork/pivot | torqued   |
        | frame           | repaired  |
        | frame/lugs      | repaired  |
        | machine         | damaged   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot measured side-play 0.4 mm ± 0.1 mm
      And rear-fork/pivot tried swing-arm-turn free
      And <point> was <work>
      Then steering.swing-arm is met at rear-fork/pivot

      Examples:
        | point             | work     |
        | rear-wheel        | removed  |
        | rear-fork/dampers | replaced |

    Scenario: one damper or two
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing single-damper
      And rear-fork/pivot tried swing-arm-turn free
      And rear-fork/pivot measured side-play 0.4 mm ± 0.1 mm
      Then steering.swing-arm is met

    Scenario: a fork on a leaf spring turns on a pivot as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      Then steering.swing-arm is missing
      And fasteners.swing-arm is missing
      And steering.rear-dampers is not applicable
      And fasteners.rear-dampers is not applicable

    Scenario: not asked of a sprung hub
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      Then steering.swing-arm is not applicable
      And fasteners.swing-arm is not applicable
      And steering.rear-travel is missing

    Scenario: not asked of plungers
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      Then steering.swing-arm is not applicable

    Scenario: not asked of a rigid rear
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing rigid
      Then steering.swing-arm is not applicable

  @steering.rear-dampers
  Rule: The rear dampers are dry and sound

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-leak dry
      And rear-fork/dampers seen damper-condition sound
      Then steering.rear-dampers is met
      And it holds until 2027-11-25

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-leak dry
      And rear-fork/dampers told damper-condition sound
      Then steering.rear-dampers is missing

    Scenario Outline: what else is in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-condition sound
      And rear-fork/dampers seen damper-leak <found>
      Then steering.rear-dampers is met at rear-fork/dampers

      Examples:
        | found      |
        | light-mist |

    Scenario Outline: what is wrong with the oil
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-condition sound
      And rear-fork/dampers seen damper-leak <found>
      Then steering.rear-dampers is fault at rear-fork/dampers

      Examples:
        | found |
        | wet   |
        | runs  |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-condition sound
      And rear-fork/dampers seen damper-leak wet
      And tom wrote that rear-fork/dampers seen damper-leak dry
      Then steering.rear-dampers is fault

    Scenario Outline: what is wrong with the condition
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-leak dry
      And rear-fork/dampers seen damper-condition <found>
      Then steering.rear-dampers is fault at rear-fork/dampers

      Examples:
        | found         |
        | cracked       |
        | bent          |
        | bush-worn     |
        | spring-broken |

    Scenario: without the oil
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-condition sound
      Then steering.rear-dampers is missing at rear-fork/dampers

    Scenario: without the condition
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-leak dry
      Then steering.rear-dampers is missing at rear-fork/dampers

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.rear-dampers is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-condition sound
      And rear-fork/dampers told damper-leak dry
      Then steering.rear-dampers is missing at rear-fork/dampers

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-leak dry <ago> months ago
      And rear-fork/dampers seen damper-condition sound <ago> months ago
      Then steering.rear-dampers is <state> at rear-fork/dampers

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-leak dry
      And rear-fork/dampers seen damper-condition sound
      And <point> was <work>
      Then steering.rear-dampers is stale at rear-fork/dampers

      Examples:
        | point             | work     |
        | rear-fork/dampers | replaced |
        | rear-fork         | removed  |
        | machine           | ridden   |
        | machine           | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers seen damper-leak dry
      And rear-fork/dampers seen damper-condition sound
      And <point> was <work>
      Then steering.rear-dampers is met at rear-fork/dampers

      Examples:
        | point             | work    |
        | rear-fork/pivot   | torqued |
        | rear-fork/dampers | torqued |

    Scenario: a single damper
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing single-damper
      And rear-fork/dampers seen damper-leak dry
      And rear-fork/dampers seen damper-condition sound
      Then steering.rear-dampers is met

    Scenario: not asked of plungers
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      Then steering.rear-dampers is not applicable

    Scenario: not asked of a rigid rear
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing rigid
      Then steering.rear-dampers is not applicable

  @steering.plungers
  Rule: Plungers slide without shake

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      And rear-fork/plungers tried plunger-play none
      Then steering.plungers is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      And rear-fork/plungers tried plunger-play <found>
      Then steering.plungers is fault at rear-fork/plungers

      Examples:
        | found  |
        | felt   |
        | knocks |
        | uneven |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      And rear-fork/plungers tried plunger-play felt
      And tom wrote that rear-fork/plungers tried plunger-play none
      Then steering.plungers is fault

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      Then steering.plungers is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      And rear-fork/plungers seen plunger-play none
      Then steering.plungers is missing at rear-fork/plungers

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      And rear-fork/plungers tried plunger-play none <ago> months ago
      Then steering.plungers is <state> at rear-fork/plungers

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      And rear-fork/plungers tried plunger-play none
      And <point> was <work>
      Then steering.plungers is stale at rear-fork/plungers

      Examples:
        | point              | work     |
        | rear-fork/plungers | stripped |
        | rear-fork          | refitted |
        | machine            | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      And rear-fork/plungers tried plunger-play none
      And <point> was <work>
      Then steering.plungers is met at rear-fork/plungers

      Examples:
        | point      | work    |
        | rear-wheel | removed |

    Scenario: not asked of a swing arm
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.plungers is not applicable

    Scenario: not asked of a rigid rear
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing rigid
      Then steering.plungers is not applicable

  @steering.rear-travel
  Rule: The rear goes down and comes back damped

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork tried rear-travel damped
      Then steering.rear-travel is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork tried rear-travel <found>
      Then steering.rear-travel is fault at rear-fork

      Examples:
        | found   |
        | sticks  |
        | bounces |
        | knocks  |
        | bottoms |
        | uneven  |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork tried rear-travel sticks
      And tom wrote that rear-fork tried rear-travel damped
      Then steering.rear-travel is fault

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.rear-travel is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork seen rear-travel damped
      Then steering.rear-travel is missing at rear-fork

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork tried rear-travel damped <ago> months ago
      Then steering.rear-travel is <state> at rear-fork

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork tried rear-travel damped
      And <point> was <work>
      Then steering.rear-travel is stale at rear-fork

      Examples:
        | point             | work     |
        | rear-fork         | refitted |
        | rear-fork/dampers | replaced |
        | rear-fork/dampers | adjusted |
        | machine           | damaged  |

    Scenario Outline: asked of plungers
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      And rear-fork tried rear-travel <found>
      Then steering.rear-travel is <state>

      Examples:
        | found  | state |
        | damped | met   |
        | knocks | fault |

    Scenario: not asked of a rigid rear
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing rigid
      Then steering.rear-travel is not applicable

    Scenario: an uneven rear is set first
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for steering.rear-travel
      And rear-fork tried rear-travel uneven
      Then steering.rear-travel is fault
      And for road-test rear-fork is to be adjusted first

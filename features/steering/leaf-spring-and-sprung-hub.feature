Feature: Leaf spring and sprung hub
  Before swinging arms with dampers came a leaf spring, and for some years a hub with the springs inside. A broken leaf or a worn hub
  steers the machine from behind.

  @steering.leaf-spring
  Rule: The leaves of the rear spring are whole, its clamps and shackles tight

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring seen leaves whole
      And rear-fork/leaf-spring tried shackle-play none
      Then steering.leaf-spring is met
      And it holds until 2027-11-25

    Scenario Outline: leaves not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring seen leaves <found>
      And rear-fork/leaf-spring tried shackle-play none
      Then steering.leaf-spring is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found   |
        | cracked |
        | broken  |
        | shifted |
        | sagged  |

    Scenario Outline: shackle play not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring tried shackle-play <found>
      And rear-fork/leaf-spring seen leaves whole
      Then steering.leaf-spring is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found  |
        | felt   |
        | loose  |
        | seized |

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      Then steering.leaf-spring is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: leaves not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring tried shackle-play none
      Then steering.leaf-spring is missing

    Scenario: leaves known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring tried shackle-play none
      And rear-fork/leaf-spring told leaves whole
      Then steering.leaf-spring is missing

    Scenario: shackle play not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring seen leaves whole
      Then steering.leaf-spring is missing

    Scenario: shackle play looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring seen leaves whole
      And rear-fork/leaf-spring seen shackle-play none
      Then steering.leaf-spring is missing

    Scenario: shackle play known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring seen leaves whole
      And rear-fork/leaf-spring told shackle-play none
      Then steering.leaf-spring is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring seen leaves cracked
      And rear-fork/leaf-spring tried shackle-play none
      And tom wrote that rear-fork/leaf-spring seen leaves whole
      Then steering.leaf-spring is fault

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring seen leaves whole <ago> months ago
      And rear-fork/leaf-spring tried shackle-play none <ago> months ago
      Then steering.leaf-spring is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring seen leaves whole
      And rear-fork/leaf-spring tried shackle-play none
      And <point> was <work>
      Then steering.leaf-spring is stale

      Examples:
        | point                 | work      |
        | rear-fork/leaf-spring | replaced  |
        | rear-fork/leaf-spring | stripped  |
        | rear-fork/leaf-spring | tightened |
        | rear-fork/leaf-spring | adjusted  |
        | rear-fork/leaf-spring | torqued   |
        | rear-fork             | refitted  |
        | machine               | damaged   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And rear-fork/leaf-spring seen leaves whole
      And rear-fork/leaf-spring tried shackle-play none
      And <point> was <work>
      Then steering.leaf-spring is met

      Examples:
        | point       | work    |
        | front-wheel | removed |

    Scenario: does not apply to dampers
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.leaf-spring is not applicable

    Scenario: does not apply to a rigid rear
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing rigid
      Then steering.leaf-spring is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing leaf-spring
      And a machine ready for road-test
      And nothing is written for steering.leaf-spring
      Then the road-test is blocked by steering.leaf-spring alone

  @steering.sprung-hub
  Rule: A sprung hub has no more play than its maker allows, and its case is sound

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub tried hub-rock within-makers-play
      And rear-wheel/sprung-hub seen hub-case sound-and-greased
      Then steering.sprung-hub is met
      And it holds until 2027-05-25

    Scenario Outline: hub rock not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub tried hub-rock <found>
      And rear-wheel/sprung-hub seen hub-case sound-and-greased
      Then steering.sprung-hub is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found          |
        | felt-beyond-it |
        | knocks         |
        | rough          |

    Scenario Outline: hub case not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub seen hub-case <found>
      And rear-wheel/sprung-hub tried hub-rock within-makers-play
      Then steering.sprung-hub is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found           |
        | cracked         |
        | dry             |
        | leaks           |
        | anchorage-loose |

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      Then steering.sprung-hub is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: hub rock not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub seen hub-case sound-and-greased
      Then steering.sprung-hub is missing

    Scenario: hub rock looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub seen hub-case sound-and-greased
      And rear-wheel/sprung-hub seen hub-rock within-makers-play
      Then steering.sprung-hub is missing

    Scenario: hub rock known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub seen hub-case sound-and-greased
      And rear-wheel/sprung-hub told hub-rock within-makers-play
      Then steering.sprung-hub is missing

    Scenario: hub case not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub tried hub-rock within-makers-play
      Then steering.sprung-hub is missing

    Scenario: hub case known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub tried hub-rock within-makers-play
      And rear-wheel/sprung-hub told hub-case sound-and-greased
      Then steering.sprung-hub is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub tried hub-rock felt-beyond-it
      And rear-wheel/sprung-hub seen hub-case sound-and-greased
      And tom wrote that rear-wheel/sprung-hub tried hub-rock within-makers-play
      Then steering.sprung-hub is fault

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub tried hub-rock within-makers-play <ago> months ago
      And rear-wheel/sprung-hub seen hub-case sound-and-greased <ago> months ago
      Then steering.sprung-hub is <state>

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub tried hub-rock within-makers-play
      And rear-wheel/sprung-hub seen hub-case sound-and-greased
      And <point> was <work>
      Then steering.sprung-hub is stale

      Examples:
        | point                 | work     |
        | rear-wheel/sprung-hub | opened   |
        | rear-wheel/sprung-hub | repaired |
        | machine               | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And rear-wheel/sprung-hub tried hub-rock within-makers-play
      And rear-wheel/sprung-hub seen hub-case sound-and-greased
      And <point> was <work>
      Then steering.sprung-hub is met

      Examples:
        | point       | work    |
        | front-wheel | removed |

    Scenario: does not apply to dampers
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.sprung-hub is not applicable

    Scenario: does not apply to a rigid rear
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing rigid
      Then steering.sprung-hub is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing sprung-hub
      And a machine ready for road-test
      And nothing is written for steering.sprung-hub
      Then the road-test is blocked by steering.sprung-hub alone

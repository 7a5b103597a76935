Feature: Fasteners of engine, drive and brakes

  @fasteners.engine-mounts
  Rule: The engine mounts were torqued after the engine was last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/mounts was torqued
      Then fasteners.engine-mounts is met
      And it does not lapse by itself

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.engine-mounts is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/mounts was torqued
      And <point> was <work>
      Then fasteners.engine-mounts is stale at engine/mounts

      Examples:
        | point         | work      |
        | engine/mounts | refitted  |
        | engine        | refitted  |
        | engine/mounts | adjusted  |
        | engine/mounts | tightened |
        | frame/lugs    | repaired  |
        | machine       | damaged   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/mounts was torqued
      And <point> was <work>
      Then fasteners.engine-mounts is met at engine/mounts

      Examples:
        | point        | work     |
        | frame/stands | refitted |
        | rear-wheel   | refitted |

  @fasteners.sprockets
  Rule: Every sprocket or pulley was torqued and locked after it was last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear was torqued
      And transmission/sprockets/rear seen lock fitted
      And transmission/sprockets/front was torqued
      And transmission/sprockets/front seen lock fitted
      Then fasteners.sprockets is met
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear was torqued
      And transmission/sprockets/rear seen lock <found>
      Then fasteners.sprockets is fault at transmission/sprockets/rear

      Examples:
        | found       |
        | missing     |
        | ineffective |
        | used-before |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear was torqued
      And transmission/sprockets/rear seen lock missing
      And tom wrote that transmission/sprockets/rear seen lock fitted
      Then fasteners.sprockets is fault

    Scenario: without the torque
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear seen lock fitted
      Then fasteners.sprockets is missing at transmission/sprockets/rear

    Scenario: without the lock
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear was torqued
      Then fasteners.sprockets is missing at transmission/sprockets/rear

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.sprockets is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear was torqued
      And transmission/sprockets/rear told lock fitted
      Then fasteners.sprockets is missing at transmission/sprockets/rear

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear was torqued
      And transmission/sprockets/rear seen lock fitted
      And <point> was <work>
      Then fasteners.sprockets is stale at transmission/sprockets/rear

      Examples:
        | point                       | work      |
        | transmission/sprockets/rear | replaced  |
        | transmission/sprockets      | refitted  |
        | transmission/sprockets/rear | tightened |
        | machine                     | damaged   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear was torqued
      And transmission/sprockets/rear seen lock fitted
      And <point> was <work>
      Then fasteners.sprockets is met at transmission/sprockets/rear

      Examples:
        | point                        | work     |
        | transmission/sprockets/front | replaced |
        | rear-wheel                   | refitted |
        | transmission/chain           | replaced |

    Scenario: torqued after the lock was looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear seen lock fitted
      And transmission/sprockets/rear was torqued
      Then fasteners.sprockets is stale at transmission/sprockets/rear

    Scenario: the pulleys of a belt
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is belt
      And transmission/sprockets/rear was torqued
      And transmission/sprockets/rear seen lock fitted
      And transmission/sprockets/front was torqued
      And transmission/sprockets/front seen lock fitted
      Then fasteners.sprockets is met

    Scenario: not asked of a shaft
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is shaft
      Then fasteners.sprockets is not applicable

  @fasteners.final-drive
  Rule: Flange and housing of the final drive were torqued after they were last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is shaft
      And transmission/final-drive was torqued
      Then fasteners.final-drive is met
      And it does not lapse by itself

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is shaft
      Then fasteners.final-drive is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is shaft
      And transmission/final-drive was torqued
      And <point> was <work>
      Then fasteners.final-drive is stale at transmission/final-drive

      Examples:
        | point                    | work      |
        | transmission/final-drive | opened    |
        | transmission/final-drive | tightened |
        | transmission/shaft       | refitted  |
        | rear-fork                | refitted  |
        | machine                  | damaged   |
        | rear-fork/pivot          | replaced  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is shaft
      And transmission/final-drive was torqued
      And <point> was <work>
      Then fasteners.final-drive is met at transmission/final-drive

      Examples:
        | point                    | work     |
        | transmission/final-drive | filled   |
        | rear-wheel               | refitted |

    Scenario: not asked of a chain
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.final-drive is not applicable

    Scenario: not asked of a belt
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is belt
      Then fasteners.final-drive is not applicable

  @fasteners.torque-arm
  Rule: The bolts of the torque arm were torqued after brake or wheel was last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/torque-arm was torqued
      Then fasteners.torque-arm is met
      And it does not lapse by itself

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.torque-arm is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/torque-arm was torqued
      And <point> was <work>
      Then fasteners.torque-arm is stale at rear-brake/torque-arm

      Examples:
        | point                 | work      |
        | rear-brake/torque-arm | refitted  |
        | rear-brake            | refitted  |
        | rear-brake/torque-arm | tightened |
        | rear-brake/shoes      | replaced  |
        | rear-brake/drum       | replaced  |
        | rear-wheel            | refitted  |
        | rear-wheel/spindle    | adjusted  |
        | machine               | damaged   |
        | rear-wheel/spindle    | loosened  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/torque-arm was torqued
      And <point> was <work>
      Then fasteners.torque-arm is met at rear-brake/torque-arm

      Examples:
        | point          | work     |
        | front-wheel    | refitted |
        | rear-brake/rod | adjusted |

    Scenario: asked of each drum
      Given a motorcycle with a cable drum in front and a rod drum behind
      And rear-brake/torque-arm was torqued
      Then fasteners.torque-arm is missing at front-brake/torque-arm
      And fasteners.torque-arm is met at rear-brake/torque-arm

    Scenario: not asked of discs
      Given a motorcycle with one hydraulic disc in front and one hydraulic disc behind
      Then fasteners.torque-arm is not applicable

Feature: Fasteners of steering, frame and springing

  @fasteners.handlebar-clamps
  Rule: The handlebar clamps were torqued after they were last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar/clamps was torqued
      Then fasteners.handlebar-clamps is met
      And it does not lapse by itself

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.handlebar-clamps is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar/clamps was torqued
      And <point> was <work>
      Then fasteners.handlebar-clamps is stale at steering/handlebar/clamps

      Examples:
        | point                     | work     |
        | steering/handlebar/clamps | refitted |
        | steering/handlebar        | replaced |
        | steering/handlebar        | adjusted |
        | steering/yokes            | refitted |
        | machine                   | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar/clamps was torqued
      And <point> was <work>
      Then fasteners.handlebar-clamps is met at steering/handlebar/clamps

      Examples:
        | point         | work     |
        | front-wheel   | refitted |
        | steering/head | adjusted |

    Scenario: torqued again after the bar was turned
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/handlebar/clamps was torqued 2 days ago
      And steering/handlebar was adjusted 1 day ago
      And steering/handlebar/clamps was torqued
      Then fasteners.handlebar-clamps is met

  @fasteners.yoke-clamps
  Rule: The yoke clamps were torqued after the fork legs were last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/yokes/clamps was torqued
      Then fasteners.yoke-clamps is met
      And it does not lapse by itself

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.yoke-clamps is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/yokes/clamps was torqued
      And <point> was <work>
      Then fasteners.yoke-clamps is stale at steering/yokes/clamps

      Examples:
        | point                | work     |
        | steering/yokes       | refitted |
        | front-fork           | refitted |
        | front-fork/right-leg | refitted |
        | steering/head        | replaced |
        | steering/head        | adjusted |
        | machine              | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/yokes/clamps was torqued
      And <point> was <work>
      Then fasteners.yoke-clamps is met at steering/yokes/clamps

      Examples:
        | point              | work     |
        | front-wheel        | refitted |
        | steering/handlebar | adjusted |

    Scenario: not asked of a girder fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      Then fasteners.yoke-clamps is not applicable

    Scenario: not asked of a rigid fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing rigid
      Then fasteners.yoke-clamps is not applicable

  @fasteners.stem-nut
  Rule: The stem nut was torqued and locked after the head was last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head/stem-nut was torqued
      And steering/head/stem-nut seen lock fitted
      Then fasteners.stem-nut is met
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head/stem-nut was torqued
      And steering/head/stem-nut seen lock <found>
      Then fasteners.stem-nut is fault at steering/head/stem-nut

      Examples:
        | found       |
        | missing     |
        | ineffective |
        | used-before |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head/stem-nut was torqued
      And steering/head/stem-nut seen lock missing
      And tom wrote that steering/head/stem-nut seen lock fitted
      Then fasteners.stem-nut is fault

    Scenario: without the torque
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head/stem-nut seen lock fitted
      Then fasteners.stem-nut is missing at steering/head/stem-nut

    Scenario: without the lock
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head/stem-nut was torqued
      Then fasteners.stem-nut is missing at steering/head/stem-nut

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.stem-nut is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head/stem-nut was torqued
      And steering/head/stem-nut told lock fitted
      Then fasteners.stem-nut is missing at steering/head/stem-nut

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head/stem-nut was torqued
      And steering/head/stem-nut seen lock fitted
      And <point> was <work>
      Then fasteners.stem-nut is stale at steering/head/stem-nut

      Examples:
        | point          | work      |
        | steering/head  | replaced  |
        | steering       | refitted  |
        | steering/head  | adjusted  |
        | steering/head  | tightened |
        | steering/yokes | refitted  |
        | machine        | damaged   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head/stem-nut was torqued
      And steering/head/stem-nut seen lock fitted
      And <point> was <work>
      Then fasteners.stem-nut is met at steering/head/stem-nut

      Examples:
        | point              | work     |
        | steering/handlebar | replaced |
        | front-wheel        | refitted |

    Scenario: torqued after the lock was looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And steering/head/stem-nut seen lock fitted
      And steering/head/stem-nut was torqued
      Then fasteners.stem-nut is stale

  @fasteners.girder-spindles
  Rule: The spindles of a girder fork were torqued and locked after they were last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links was torqued
      And front-fork/links seen lock fitted
      Then fasteners.girder-spindles is met
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links was torqued
      And front-fork/links seen lock <found>
      Then fasteners.girder-spindles is fault at front-fork/links

      Examples:
        | found       |
        | missing     |
        | ineffective |
        | used-before |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links was torqued
      And front-fork/links seen lock missing
      And tom wrote that front-fork/links seen lock fitted
      Then fasteners.girder-spindles is fault

    Scenario: without the torque
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links seen lock fitted
      Then fasteners.girder-spindles is missing at front-fork/links

    Scenario: without the lock
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links was torqued
      Then fasteners.girder-spindles is missing at front-fork/links

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      Then fasteners.girder-spindles is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links was torqued
      And front-fork/links told lock fitted
      Then fasteners.girder-spindles is missing at front-fork/links

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links was torqued
      And front-fork/links seen lock fitted
      And <point> was <work>
      Then fasteners.girder-spindles is stale at front-fork/links

      Examples:
        | point            | work      |
        | front-fork/links | stripped  |
        | front-fork       | refitted  |
        | front-fork/links | adjusted  |
        | front-fork/links | tightened |
        | machine          | damaged   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links was torqued
      And front-fork/links seen lock fitted
      And <point> was <work>
      Then fasteners.girder-spindles is met at front-fork/links

      Examples:
        | point       | work     |
        | front-wheel | refitted |

    Scenario: torqued after the lock was looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing girder
      And front-fork/links seen lock fitted
      And front-fork/links was torqued
      Then fasteners.girder-spindles is stale

    Scenario: not asked of a telescopic fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.girder-spindles is not applicable

    Scenario: not asked of a rigid fork
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has front-springing rigid
      Then fasteners.girder-spindles is not applicable

  @fasteners.swing-arm
  Rule: The pivot of the swing arm was torqued and locked after it was last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot was torqued
      And rear-fork/pivot seen lock fitted
      Then fasteners.swing-arm is met
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot was torqued
      And rear-fork/pivot seen lock <found>
      Then fasteners.swing-arm is fault at rear-fork/pivot

      Examples:
        | found       |
        | missing     |
        | ineffective |
        | used-before |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot was torqued
      And rear-fork/pivot seen lock missing
      And tom wrote that rear-fork/pivot seen lock fitted
      Then fasteners.swing-arm is fault

    Scenario: without the torque
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot seen lock fitted
      Then fasteners.swing-arm is missing at rear-fork/pivot

    Scenario: without the lock
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot was torqued
      Then fasteners.swing-arm is missing at rear-fork/pivot

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.swing-arm is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot was torqued
      And rear-fork/pivot told lock fitted
      Then fasteners.swing-arm is missing at rear-fork/pivot

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot was torqued
      And rear-fork/pivot seen lock fitted
      And <point> was <work>
      Then fasteners.swing-arm is stale at rear-fork/pivot

      Examples:
        | point           | work      |
        | rear-fork/pivot | replaced  |
        | rear-fork       | refitted  |
        | rear-fork/pivot | adjusted  |
        | rear-fork/pivot | tightened |
        | frame/lugs      | repaired  |
        | machine         | damaged   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot was torqued
      And rear-fork/pivot seen lock fitted
      And <point> was <work>
      Then fasteners.swing-arm is met at rear-fork/pivot

      Examples:
        | point      | work     |
        | rear-wheel | refitted |

    Scenario: torqued after the lock was looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/pivot seen lock fitted
      And rear-fork/pivot was torqued
      Then fasteners.swing-arm is stale

    Scenario: not asked of plungers
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      Then fasteners.swing-arm is not applicable

    Scenario: not asked of a rigid rear
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing rigid
      Then fasteners.swing-arm is not applicable

  @fasteners.rear-dampers
  Rule: The bolts of the rear dampers were torqued after they were last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers was torqued
      Then fasteners.rear-dampers is met
      And it does not lapse by itself

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.rear-dampers is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers was torqued
      And <point> was <work>
      Then fasteners.rear-dampers is stale at rear-fork/dampers

      Examples:
        | point             | work      |
        | rear-fork/dampers | replaced  |
        | rear-fork         | refitted  |
        | rear-fork/dampers | tightened |
        | rear-fork         | refitted  |
        | rear-fork/pivot   | replaced  |
        | frame/lugs        | repaired  |
        | machine           | damaged   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-fork/dampers was torqued
      And <point> was <work>
      Then fasteners.rear-dampers is met at rear-fork/dampers

      Examples:
        | point             | work     |
        | rear-fork/dampers | adjusted |
        | rear-wheel        | refitted |

    Scenario: not asked of plungers
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing plunger
      Then fasteners.rear-dampers is not applicable

    Scenario: not asked of a rigid rear
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has rear-springing rigid
      Then fasteners.rear-dampers is not applicable

  @fasteners.sidecar-fittings
  Rule: The fittings of a sidecar were torqued and locked after they were last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings was torqued
      And frame/sidecar-fittings seen lock fitted
      Then fasteners.sidecar-fittings is met
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings was torqued
      And frame/sidecar-fittings seen lock <found>
      Then fasteners.sidecar-fittings is fault at frame/sidecar-fittings

      Examples:
        | found       |
        | missing     |
        | ineffective |
        | used-before |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings was torqued
      And frame/sidecar-fittings seen lock missing
      And tom wrote that frame/sidecar-fittings seen lock fitted
      Then fasteners.sidecar-fittings is fault

    Scenario: without the torque
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings seen lock fitted
      Then fasteners.sidecar-fittings is missing at frame/sidecar-fittings

    Scenario: without the lock
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings was torqued
      Then fasteners.sidecar-fittings is missing at frame/sidecar-fittings

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      Then fasteners.sidecar-fittings is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings was torqued
      And frame/sidecar-fittings told lock fitted
      Then fasteners.sidecar-fittings is missing at frame/sidecar-fittings

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings was torqued
      And frame/sidecar-fittings seen lock fitted
      And <point> was <work>
      Then fasteners.sidecar-fittings is stale at frame/sidecar-fittings

      Examples:
        | point                  | work      |
        | frame/sidecar-fittings | refitted  |
        | frame/sidecar-fittings | adjusted  |
        | frame/sidecar-fittings | tightened |
        | frame/lugs             | repaired  |
        | machine                | damaged   |
        | engine/mounts          | damaged   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings was torqued
      And frame/sidecar-fittings seen lock fitted
      And <point> was <work>
      Then fasteners.sidecar-fittings is met at frame/sidecar-fittings

      Examples:
        | point      | work     |
        | rear-wheel | refitted |

    Scenario: torqued after the lock was looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings seen lock fitted
      And frame/sidecar-fittings was torqued
      Then fasteners.sidecar-fittings is stale

    Scenario: not asked of a solo machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.sidecar-fittings is not applicable

  @fasteners.stands
  Rule: The pivots of the stands were torqued after they were last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands was torqued
      Then fasteners.stands is met
      And it does not lapse by itself

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.stands is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands was torqued
      And <point> was <work>
      Then fasteners.stands is stale at frame/stands

      Examples:
        | point        | work      |
        | frame/stands | refitted  |
        | frame/stands | adjusted  |
        | frame/stands | tightened |
        | frame        | repaired  |
        | machine      | damaged   |
        | frame/lugs   | repaired  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame/stands was torqued
      And <point> was <work>
      Then fasteners.stands is met at frame/stands

      Examples:
        | point        | work       |
        | frame/stands | lubricated |

    Scenario: not asked of a machine without a stand
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has stands 0
      Then fasteners.stands is not applicable

  @fasteners.footrests
  Rule: The footrests were torqued after they were last touched

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/footrests was torqued
      Then fasteners.footrests is met
      And it does not lapse by itself

    Scenario: no record that it was torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.footrests is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/footrests was torqued
      And <point> was <work>
      Then fasteners.footrests is stale at controls/footrests

      Examples:
        | point              | work      |
        | controls/footrests | refitted  |
        | controls/footrests | adjusted  |
        | controls/footrests | tightened |
        | frame/lugs         | repaired  |
        | machine            | damaged   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/footrests was torqued
      And <point> was <work>
      Then fasteners.footrests is met at controls/footrests

      Examples:
        | point        | work     |
        | frame/stands | refitted |

  @fasteners.mudguards
  Rule: Every mudguard is tight and clear of the tyre

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-mudguard tried mudguard tight
      And rear-mudguard tried mudguard tight
      Then fasteners.mudguards is met
      And it holds until 2027-11-25

    Scenario Outline: what else is in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-mudguard tried mudguard <found>
      Then fasteners.mudguards is met at front-mudguard

      Examples:
        | found       |
        | none-fitted |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-mudguard tried mudguard <found>
      Then fasteners.mudguards is fault at front-mudguard

      Examples:
        | found            |
        | loose            |
        | cracked          |
        | stay-broken      |
        | touches-the-tyre |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-mudguard tried mudguard loose
      And tom wrote that front-mudguard tried mudguard tight
      Then fasteners.mudguards is fault

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.mudguards is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-mudguard seen mudguard tight
      Then fasteners.mudguards is missing at front-mudguard

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-mudguard tried mudguard tight <ago> months ago
      Then fasteners.mudguards is <state> at front-mudguard

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-mudguard tried mudguard tight
      And <point> was <work>
      Then fasteners.mudguards is stale at front-mudguard

      Examples:
        | point               | work      |
        | front-mudguard      | refitted  |
        | front-fork          | refitted  |
        | front-fork/left-leg | refitted  |
        | machine             | damaged   |
        | front-mudguard      | adjusted  |
        | front-mudguard      | loosened  |
        | front-mudguard      | tightened |
        | rear-mudguard       | adjusted  |
        | rear-mudguard       | loosened  |
        | rear-mudguard       | tightened |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-mudguard tried mudguard tight
      And <point> was <work>
      Then fasteners.mudguards is met at front-mudguard

      Examples:
        | point      | work     |
        | rear-wheel | refitted |

Feature: Sprockets, guard and cush drive

  @transmission.sprockets
  Rule: The teeth of every sprocket or pulley are whole and even

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear seen teeth even
      And transmission/sprockets/front seen teeth even
      Then transmission.sprockets is met
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear seen teeth <found>
      Then transmission.sprockets is fault at transmission/sprockets/rear

      Examples:
        | found     |
        | hooked    |
        | pointed   |
        | missing   |
        | cracked   |
        | worn-thin |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear seen teeth hooked
      And tom wrote that transmission/sprockets/rear seen teeth even
      Then transmission.sprockets is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then transmission.sprockets is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear told teeth even
      Then transmission.sprockets is missing at transmission/sprockets/rear

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear seen teeth even <ago> months ago
      Then transmission.sprockets is <state> at transmission/sprockets/rear

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear seen teeth even
      And <point> was <work>
      Then transmission.sprockets is stale at transmission/sprockets/rear

      Examples:
        | point                       | work     |
        | transmission/sprockets/rear | replaced |
        | machine                     | damaged  |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear seen teeth even
      And <point> was <work>
      Then transmission.sprockets is met at transmission/sprockets/rear

      Examples:
        | point                  | work    |
        | transmission/sprockets | removed |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear seen teeth even
      And <point> was <work>
      Then transmission.sprockets is met at transmission/sprockets/rear

      Examples:
        | point                        | work     |
        | transmission/sprockets/front | replaced |
        | rear-wheel                   | removed  |
        | transmission/sprockets/rear  | torqued  |

    Scenario: hooked or missing teeth at the front only
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/sprockets/rear seen teeth even
      And transmission/sprockets/front seen teeth hooked
      Then transmission.sprockets is met at transmission/sprockets/rear
      And transmission.sprockets is fault at transmission/sprockets/front

    Scenario Outline: the pulleys of a belt
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is belt
      And transmission/sprockets/rear seen teeth <found>
      And transmission/sprockets/front seen teeth even
      Then transmission.sprockets is <state>

      Examples:
        | found     | state |
        | even      | met   |
        | worn-thin | fault |

    Scenario: not asked of a shaft
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is shaft
      Then transmission.sprockets is not applicable

  @transmission.guard
  Rule: The guard is fitted, firm and clear

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/guard seen guard fitted
      Then transmission.guard is met
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/guard seen guard <found>
      Then transmission.guard is fault at transmission/guard

      Examples:
        | found   |
        | missing |
        | loose   |
        | cracked |
        | rubs    |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/guard seen guard missing
      And tom wrote that transmission/guard seen guard fitted
      Then transmission.guard is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/guard seen guard missing
      Then transmission.guard is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then transmission.guard is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/guard told guard fitted
      Then transmission.guard is missing at transmission/guard

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/guard seen guard fitted
      And <point> was <work>
      Then transmission.guard is stale at transmission/guard

      Examples:
        | point                  | work     |
        | transmission/guard     | removed  |
        | transmission/chain     | replaced |
        | transmission/sprockets | replaced |
        | rear-wheel             | refitted |
        | rear-fork              | refitted |
        | rear-fork/pivot        | replaced |
        | machine                | damaged  |
        | transmission/belt      | adjusted |
        | transmission/chain     | adjusted |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And transmission/guard seen guard fitted
      And <point> was <work>
      Then transmission.guard is met at transmission/guard

      Examples:
        | point             | work     |
        | front-wheel       | refitted |
        | rear-fork/dampers | replaced |

    Scenario: a belt and its guard
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is belt
      And transmission/guard seen guard fitted
      And transmission/belt was replaced
      Then transmission.guard is stale

    Scenario: not asked of a shaft
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is shaft
      Then transmission.guard is not applicable

  @transmission.cush-drive
  Rule: The cush drive takes up firmly, or there is none

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/cush-drive tried cush-drive firm
      Then transmission.cush-drive is met
      And it holds until 2028-11-25

    Scenario Outline: what else is in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/cush-drive tried cush-drive <found>
      Then transmission.cush-drive is met at rear-wheel/cush-drive

      Examples:
        | found       |
        | none-fitted |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/cush-drive tried cush-drive <found>
      Then transmission.cush-drive is fault at rear-wheel/cush-drive

      Examples:
        | found    |
        | slack    |
        | perished |
        | knocks   |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/cush-drive tried cush-drive slack
      And tom wrote that rear-wheel/cush-drive tried cush-drive firm
      Then transmission.cush-drive is fault

    Scenario: nobody tried it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then transmission.cush-drive is missing
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/cush-drive seen cush-drive firm
      Then transmission.cush-drive is missing at rear-wheel/cush-drive

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/cush-drive tried cush-drive firm <ago> months ago
      Then transmission.cush-drive is <state> at rear-wheel/cush-drive

      Examples:
        | ago | state |
        | 24  | met   |
        | 25  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/cush-drive tried cush-drive firm
      And <point> was <work>
      Then transmission.cush-drive is stale at rear-wheel/cush-drive

      Examples:
        | point                 | work     |
        | rear-wheel/cush-drive | replaced |
        | rear-wheel            | repaired |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/cush-drive tried cush-drive firm
      And <point> was <work>
      Then transmission.cush-drive is met at rear-wheel/cush-drive

      Examples:
        | point      | work     |
        | rear-wheel | removed  |
        | rear-wheel | refitted |

    Scenario Outline: asked of every drive
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is <drive>
      And rear-wheel/cush-drive tried cush-drive firm
      Then transmission.cush-drive is met

      Examples:
        | drive |
        | belt  |
        | shaft |

    Scenario: no final drive
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the final drive is none
      Then transmission.cush-drive is not applicable

Feature: Exhaust
  From the port to the tail pipe.

  @engine.exhaust-joints
  Rule: The exhaust joints are tight

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust tried exhaust-joints tight
      Then engine.exhaust-joints is met at exhaust
      And it holds until 2027-05-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust tried exhaust-joints <found>
      Then engine.exhaust-joints is fault at exhaust

      Examples:
        | found          |
        | loose          |
        | gasket-missing |
        | cracked        |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust tried exhaust-joints loose
      And tom wrote that exhaust tried exhaust-joints tight
      Then engine.exhaust-joints is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.exhaust-joints is missing at exhaust
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust told exhaust-joints tight
      Then engine.exhaust-joints is missing at exhaust

    Scenario: looking is not trying
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust seen exhaust-joints tight
      Then engine.exhaust-joints is missing at exhaust

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust tried exhaust-joints tight <ago> months ago
      Then engine.exhaust-joints is <state> at exhaust

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust tried exhaust-joints tight
      And <point> was <work>
      Then engine.exhaust-joints is stale at exhaust

      Examples:
        | point             | work      |
        | exhaust           | refitted  |
        | exhaust/silencer  | replaced  |
        | exhaust/mounts    | replaced  |
        | machine           | damaged   |
        | engine/head       | removed   |
        | engine/top-end    | replaced  |
        | engine/cylinder-1 | repaired  |
        | engine            | stripped  |
        | engine            | removed   |
        | engine/mounts     | damaged   |
        | engine/mounts     | adjusted  |
        | exhaust           | adjusted  |
        | exhaust           | loosened  |
        | exhaust           | tightened |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.exhaust-joints is not applicable

  @engine.exhaust-mounts
  Rule: The exhaust is held fast

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/mounts seen exhaust-mounts secure
      Then engine.exhaust-mounts is met at exhaust/mounts
      And it holds until 2027-05-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/mounts seen exhaust-mounts <found>
      Then engine.exhaust-mounts is fault at exhaust/mounts

      Examples:
        | found   |
        | loose   |
        | cracked |
        | missing |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/mounts seen exhaust-mounts loose
      And tom wrote that exhaust/mounts seen exhaust-mounts secure
      Then engine.exhaust-mounts is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.exhaust-mounts is missing at exhaust/mounts
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/mounts told exhaust-mounts secure
      Then engine.exhaust-mounts is missing at exhaust/mounts

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/mounts seen exhaust-mounts secure <ago> months ago
      Then engine.exhaust-mounts is <state> at exhaust/mounts

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/mounts seen exhaust-mounts secure
      And <point> was <work>
      Then engine.exhaust-mounts is stale at exhaust/mounts

      Examples:
        | point            | work     |
        | exhaust/mounts   | replaced |
        | exhaust          | refitted |
        | exhaust/silencer | removed  |
        | machine          | damaged  |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.exhaust-mounts is not applicable

  @engine.silencer
  Rule: Every silencer is whole

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer seen silencer whole
      Then engine.silencer is met at exhaust/silencer
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer seen silencer <found>
      Then engine.silencer is fault at exhaust/silencer

      Examples:
        | found          |
        | holed          |
        | rusted-through |
        | split          |
        | baffle-missing |
        | missing        |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer seen silencer holed
      And tom wrote that exhaust/silencer seen silencer whole
      Then engine.silencer is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.silencer is missing at exhaust/silencer
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer told silencer whole
      Then engine.silencer is missing at exhaust/silencer

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer seen silencer whole <ago> months ago
      Then engine.silencer is <state> at exhaust/silencer

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer seen silencer whole
      And <point> was <work>
      Then engine.silencer is stale at exhaust/silencer

      Examples:
        | point            | work     |
        | exhaust/silencer | replaced |
        | exhaust/silencer | repaired |
        | exhaust          | repaired |
        | machine          | damaged  |

    Scenario Outline: what leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer seen silencer whole
      And <point> was <work>
      Then engine.silencer is met at exhaust/silencer

      Examples:
        | point          | work     |
        | exhaust        | removed  |
        | exhaust        | refitted |
        | exhaust/mounts | replaced |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.silencer is not applicable

  @engine.exhaust-leak
  Rule: The running engine blows only at the tail pipe

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust tried exhaust-blow tight
      Then engine.exhaust-leak is met at exhaust

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust tried exhaust-blow <found>
      Then engine.exhaust-leak is fault at exhaust

      Examples:
        | found     |
        | blows     |
        | ticks     |
        | drips-oil |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust tried exhaust-blow blows
      And tom wrote that exhaust tried exhaust-blow tight
      Then engine.exhaust-leak is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.exhaust-leak is missing at exhaust
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust told exhaust-blow tight
      Then engine.exhaust-leak is missing at exhaust

    Scenario: looking is not trying
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust seen exhaust-blow tight
      Then engine.exhaust-leak is missing at exhaust

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust tried exhaust-blow tight <ago> days ago
      Then engine.exhaust-leak is <state> at exhaust

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust tried exhaust-blow tight
      And <point> was <work>
      Then engine.exhaust-leak is stale at exhaust

      Examples:
        | point             | work      |
        | exhaust           | refitted  |
        | exhaust/silencer  | replaced  |
        | exhaust/mounts    | replaced  |
        | machine           | damaged   |
        | engine/head       | removed   |
        | engine/top-end    | replaced  |
        | engine/cylinder-1 | repaired  |
        | engine            | stripped  |
        | engine            | removed   |
        | machine           | ridden    |
        | engine/mounts     | damaged   |
        | engine/mounts     | adjusted  |
        | exhaust           | adjusted  |
        | exhaust           | loosened  |
        | exhaust           | tightened |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.exhaust-leak is not applicable

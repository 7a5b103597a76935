Feature: Stop control
  Nothing is started that cannot be stopped.

  @controls.stop-spark
  Rule: There is a way to stop it before it is started

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-spark spark-cut
      Then controls.stop-spark is met at controls/stop-switch

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch seen stop-spark spark-cut
      Then controls.stop-spark is missing

    Scenario: a valve lifter instead
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-spark valve-lifter-stops-it
      Then controls.stop-spark is met at controls/stop-switch

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-spark <found>
      Then controls.stop-spark is fault at controls/stop-switch

      Examples:
        | found          |
        | spark-stays    |
        | nothing-fitted |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-spark spark-stays
      And tom wrote that controls/stop-switch tried stop-spark spark-cut
      Then controls.stop-spark is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-spark spark-stays
      Then controls.stop-spark is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.stop-spark is missing at controls/stop-switch
      And it holds first-start, indoor-run and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch told stop-spark spark-cut
      Then controls.stop-spark is missing at controls/stop-switch

    Scenario: yesterday's word does not count
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-spark spark-cut 1 days ago
      Then controls.stop-spark is stale at controls/stop-switch

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-spark spark-cut
      And <point> was <work>
      Then controls.stop-spark is stale at controls/stop-switch

      Examples:
        | point                | work     |
        | controls/stop-switch | removed  |
        | controls/stop-switch | adjusted |
        | ignition             | removed  |
        | ignition             | adjusted |
        | electrics/wiring     | refitted |
        | steering             | replaced |
        | headlamp/shell       | opened   |
        | machine              | damaged  |
        | electrics/switches   | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-spark spark-cut
      And <point> was <work>
      Then controls.stop-spark is met at controls/stop-switch

      Examples:
        | point                   | work     |
        | ignition/plugs          | repaired |
        | ignition/plugs          | stripped |
        | ignition/plugs          | opened   |
        | ignition/cylinder-1/cap | removed  |
        | ignition/cylinder-1/cap | refitted |
        | ignition/cylinder-1/cap | replaced |
        | ignition/cylinder-1/cap | repaired |
        | ignition/cylinder-1/cap | stripped |
        | ignition/cylinder-1/cap | opened   |

    Scenario Outline: a plug out and in leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-spark spark-cut
      And ignition/plugs was <work>
      Then controls.stop-spark is met at controls/stop-switch

      Examples:
        | work     |
        | removed  |
        | refitted |
        | replaced |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.stop-spark is not applicable

  @controls.stop-idle
  Rule: The stop control stops it from idle

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-idle stops-every-time
      Then controls.stop-idle is met at controls/stop-switch

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch seen stop-idle stops-every-time
      Then controls.stop-idle is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-idle <found>
      Then controls.stop-idle is fault at controls/stop-switch

      Examples:
        | found           |
        | runs-on         |
        | stops-sometimes |
        | nothing-fitted  |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-idle runs-on
      And tom wrote that controls/stop-switch tried stop-idle stops-every-time
      Then controls.stop-idle is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-idle runs-on
      Then controls.stop-idle is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.stop-idle is missing at controls/stop-switch
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch told stop-idle stops-every-time
      Then controls.stop-idle is missing at controls/stop-switch

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-idle stops-every-time <ago> days ago
      Then controls.stop-idle is <state> at controls/stop-switch

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-idle stops-every-time
      And <point> was <work>
      Then controls.stop-idle is stale at controls/stop-switch

      Examples:
        | point                | work     |
        | controls/stop-switch | removed  |
        | controls/stop-switch | adjusted |
        | ignition             | removed  |
        | ignition             | adjusted |
        | electrics/wiring     | refitted |
        | steering             | replaced |
        | fuel/carburettors    | opened   |
        | machine              | damaged  |
        | headlamp/shell       | opened   |
        | electrics/switches   | damaged  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-idle stops-every-time
      And <point> was <work>
      Then controls.stop-idle is met at controls/stop-switch

      Examples:
        | point                   | work     |
        | ignition/plugs          | repaired |
        | ignition/plugs          | stripped |
        | ignition/plugs          | opened   |
        | ignition/cylinder-1/cap | removed  |
        | ignition/cylinder-1/cap | refitted |
        | ignition/cylinder-1/cap | replaced |
        | ignition/cylinder-1/cap | repaired |
        | ignition/cylinder-1/cap | stripped |
        | ignition/cylinder-1/cap | opened   |

    Scenario Outline: a plug out and in leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/stop-switch tried stop-idle stops-every-time
      And ignition/plugs was <work>
      Then controls.stop-idle is met at controls/stop-switch

      Examples:
        | work     |
        | removed  |
        | refitted |
        | replaced |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.stop-idle is not applicable

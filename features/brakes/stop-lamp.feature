Feature: Stop lamp
  Each control is tried alone. How many must light the lamp depends on territory, kind and age.

  @brakes.stop-lamp
  Rule: Every control with a switch lights the stop lamp, alone and at once

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/stop-lamp-switch tried stop-lamp lights-and-goes-out
      Then brakes.stop-lamp is met at front-brake/stop-lamp-switch

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/stop-lamp-switch tried stop-lamp <found>
      Then brakes.stop-lamp is fault at front-brake/stop-lamp-switch

      Examples:
        | found        |
        | dark         |
        | late         |
        | stays-lit    |
        | flickers     |
        | wrong-colour |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/stop-lamp-switch tried stop-lamp dark
      And tom wrote that front-brake/stop-lamp-switch tried stop-lamp lights-and-goes-out
      Then brakes.stop-lamp is fault

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/stop-lamp-switch seen stop-lamp dark
      And tom wrote that front-brake/stop-lamp-switch tried stop-lamp lights-and-goes-out
      Then brakes.stop-lamp is missing

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.stop-lamp is missing at front-brake/stop-lamp-switch
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/stop-lamp-switch told stop-lamp lights-and-goes-out
      Then brakes.stop-lamp is missing at front-brake/stop-lamp-switch

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/stop-lamp-switch tried stop-lamp lights-and-goes-out <ago> days ago
      Then brakes.stop-lamp is <state> at front-brake/stop-lamp-switch

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/stop-lamp-switch tried stop-lamp lights-and-goes-out
      And <point> was <work>
      Then brakes.stop-lamp is stale at front-brake/stop-lamp-switch

      Examples:
        | point                        | work     |
        | front-brake/stop-lamp-switch | removed  |
        | front-brake                  | refitted |
        | front-brake/stop-lamp-switch | adjusted |
        | front-brake/control          | replaced |
        | front-brake/control          | adjusted |
        | electrics/wiring             | replaced |
        | electrics/stop-lamp          | replaced |
        | headlamp/shell               | opened   |
        | machine                      | damaged  |
        | steering/handlebar           | removed  |
        | controls/levers              | replaced |
        | electrics/battery            | damaged  |
        | electrics/earth              | damaged  |
        | electrics/switches           | damaged  |

    Scenario: not asked of a machine without switches
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the front brake has no stop lamp switch
      And the rear brake has no stop lamp switch
      Then brakes.stop-lamp is not applicable

    Scenario Outline: work that undoes it on a rod drum
      Given a motorcycle with a cable drum in front and a rod drum behind
      And rear-brake/stop-lamp-switch tried stop-lamp lights-and-goes-out
      And <point> was <work>
      Then brakes.stop-lamp is stale at rear-brake/stop-lamp-switch

      Examples:
        | point                       | work     |
        | rear-brake/stop-lamp-switch | removed  |
        | rear-brake                  | refitted |
        | rear-brake/stop-lamp-switch | adjusted |
        | rear-brake/control          | replaced |
        | rear-brake/control          | adjusted |
        | rear-brake/rod              | adjusted |
        | electrics/wiring            | replaced |
        | electrics/stop-lamp         | replaced |
        | rear-brake/cable            | adjusted |

    Scenario: one control lights it, the other does not
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/stop-lamp-switch tried stop-lamp dark
      And rear-brake/stop-lamp-switch tried stop-lamp lights-and-goes-out
      Then brakes.stop-lamp is fault
      And brakes.stop-lamp is met at rear-brake/stop-lamp-switch

    Scenario: the wheel leaves the switch alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/stop-lamp-switch tried stop-lamp lights-and-goes-out
      And front-wheel was removed
      Then brakes.stop-lamp is met at front-brake/stop-lamp-switch

  @brakes.stop-lamp-controls
  Rule: As many controls light the stop lamp as the law asks of a machine of this age

    Scenario Outline: GB, by first registration
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered <registered>
      And machine tried controls-lighting-stop-lamp <count> times
      Then brakes.stop-lamp-controls is <state>

      # one control before 1 April 1986, both from then: GB inspection manual 1.3, read in a copy
      Examples:
        | registered | count | state |
        | 1936-01-01 | 0     | fault |
        | 1936-01-01 | 1     | met   |
        | 1986-03-31 | 0     | fault |
        | 1986-03-31 | 1     | met   |
        | 1986-04-01 | 1     | fault |
        | 1986-04-01 | 2     | met   |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1936-01-01
      And machine tried controls-lighting-stop-lamp 0 times
      And tom wrote that machine tried controls-lighting-stop-lamp 1 times
      Then brakes.stop-lamp-controls is fault

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1936-01-01
      And machine seen controls-lighting-stop-lamp 1 times
      Then brakes.stop-lamp-controls is missing

    Scenario Outline: GB, no switch fitted and none asked for
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a <kind>
      And the machine is first registered <registered>
      And the front brake has no stop lamp switch
      And the rear brake has no stop lamp switch
      Then brakes.stop-lamp-controls is not applicable

      # none before 1936, nor under 50 cc before 1 April 1986: GB inspection manual 1.3, read in a copy
      Examples:
        | kind       | registered |
        | motorcycle | 1935-12-31 |
        | moped      | 1986-03-31 |

    Scenario Outline: GB, no switch fitted though one is asked for
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a <kind>
      And the machine is first registered <registered>
      And the front brake has no stop lamp switch
      And the rear brake has no stop lamp switch
      And machine tried controls-lighting-stop-lamp 0 times
      Then brakes.stop-lamp-controls is fault

      Examples:
        | kind               | registered |
        | motorcycle         | 1936-01-01 |
        | motorcycle-sidecar | 1950-05-01 |
        | moped              | 1986-04-01 |

    Scenario: what is fitted must work, whatever the age
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1935-12-31
      And machine tried controls-lighting-stop-lamp 0 times
      Then brakes.stop-lamp-controls is fault

    Scenario Outline: Germany, no switch fitted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And the machine is first registered <registered>
      And the top speed is <speed>
      And the front brake has no stop lamp switch
      And the rear brake has no stop lamp switch
      And machine tried controls-lighting-stop-lamp 0 times
      Then brakes.stop-lamp-controls is <state>

      # none before 1988, from memory; none up to 50 km/h: StVZO § 53 (2), read in a copy
      Examples:
        | registered | speed    | state          |
        | 1955-04-01 | 110 km/h | not applicable |
        | 1987-12-31 | 110 km/h | not applicable |
        | 1988-01-01 | 110 km/h | fault          |
        | 1988-01-01 | 50 km/h  | not applicable |
        | 1988-01-01 | 51 km/h  | fault          |

    Scenario Outline: Germany, as many controls as the law asks
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And the machine is first registered 1988-01-01
      And machine tried controls-lighting-stop-lamp <count> times
      Then brakes.stop-lamp-controls is <state>
      And it says "at least 1 (StVZO, § 53 (2) and § 72, from memory)"

      Examples:
        | count | state |
        | 0     | fault |
        | 1     | met   |
        | 2     | met   |

    Scenario: GB, a trials machine without lamps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      And the front brake has no stop lamp switch
      And the rear brake has no stop lamp switch
      Then brakes.stop-lamp-controls is not applicable
      And electrics.daylight-only is missing

    Scenario Outline: where the code gives no number, one is asked for
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And machine tried controls-lighting-stop-lamp <count> times
      Then brakes.stop-lamp-controls is <state>

      # one control: common practice
      Examples:
        | territory | count | state |
        | US-VA     | 0     | fault |
        | US-VA     | 1     | met   |
        | US-MD     | 0     | fault |
        | US-MD     | 1     | met   |
        | DE        | 0     | fault |
        | DE        | 1     | met   |

    Scenario: no local code is loaded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is JP
      And machine tried controls-lighting-stop-lamp 2 times
      Then brakes.stop-lamp-controls is missing
      And it says "ask the licensed inspector"

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.stop-lamp-controls is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried controls-lighting-stop-lamp 2 times <ago> days ago
      Then brakes.stop-lamp-controls is <state> at machine

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried controls-lighting-stop-lamp 2 times
      And <point> was <work>
      Then brakes.stop-lamp-controls is stale at machine

      Examples:
        | point                        | work     |
        | front-brake/stop-lamp-switch | replaced |
        | rear-brake/stop-lamp-switch  | replaced |
        | front-brake/stop-lamp-switch | adjusted |
        | rear-brake/stop-lamp-switch  | adjusted |
        | front-brake/control          | replaced |
        | rear-brake/control           | replaced |
        | front-brake/control          | adjusted |
        | rear-brake/control           | adjusted |
        | electrics/wiring             | replaced |
        | electrics/stop-lamp          | replaced |
        | headlamp/shell               | opened   |
        | steering/handlebar           | removed  |
        | controls/levers              | replaced |
        | electrics/battery            | damaged  |
        | electrics/earth              | damaged  |
        | electrics/switches           | damaged  |

    Scenario: and so may a rod
      Given a motorcycle with a cable drum in front and a rod drum behind
      And machine tried controls-lighting-stop-lamp 2 times
      And front-brake/rod was adjusted
      Then brakes.stop-lamp-controls is stale

    Scenario: a cable that was set may leave its switch behind
      Given a motorcycle with a cable drum in front and a rod drum behind
      And machine tried controls-lighting-stop-lamp 2 times
      And front-brake/cable was adjusted
      Then brakes.stop-lamp-controls is stale

    Scenario: counted twice, and differently
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried controls-lighting-stop-lamp 1 times
      And machine tried controls-lighting-stop-lamp 2 times
      Then brakes.stop-lamp-controls is doubt

    Scenario Outline: Great Britain, the days about the change of the law, and both limits named
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is GB
      And the machine is first registered <registered>
      And machine tried controls-lighting-stop-lamp <count> times
      Then brakes.stop-lamp-controls is met
      And it says "<limits>."

      Examples:
        | registered | count | limits                                                                                                                                   |
        | 1986-03-31 | 2     | at least 1 (MOT inspection manual: motorcycles (older edition, classes 1 and 2), 1.3, read in a copy); also at least 1 (common practice) |
        | 1986-04-01 | 2     | at least 2 (MOT inspection manual: motorcycles (older edition, classes 1 and 2), 1.3, read in a copy); also at least 1 (common practice) |

    Scenario: what it is held against in Germany
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And the machine is first registered 1988-01-01
      And machine tried controls-lighting-stop-lamp 1 times
      Then brakes.stop-lamp-controls is met at machine
      And it says "at least 1 (StVZO"

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1936-01-01
      And machine tried controls-lighting-stop-lamp 1 times
      Then brakes.stop-lamp-controls is met at machine
      And it says "at least 1 (MOT inspection manual: motorcycles (older edition, classes 1 and 2), 1.3, read in a copy)"
      And it says "also at least 1 (common practice)"

    Scenario: Great Britain, a moped first registered on the first day that asks for a stop lamp
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a moped
      And the machine is first registered 1986-04-01
      And the front brake has no stop lamp switch
      And the rear brake has no stop lamp switch
      And machine tried controls-lighting-stop-lamp 0 times
      Then brakes.stop-lamp-controls is fault
      And it says "at least 1 (MOT inspection manual: motorcycles (older edition, classes 1 and 2), 1.3, read in a copy); also at least 1 (common practice)."

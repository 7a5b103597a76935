Feature: Starter

  @controls.kick-starter
  Rule: The kick-starter engages and returns

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/kick-starter tried kick-starter engages-and-returns
      Then controls.kick-starter is met at controls/kick-starter
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/kick-starter seen kick-starter engages-and-returns
      Then controls.kick-starter is missing

    Scenario: both starters
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter both
      Then controls.kick-starter is missing at controls/kick-starter
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/kick-starter tried kick-starter <found>
      Then controls.kick-starter is fault at controls/kick-starter

      Examples:
        | found         |
        | slips         |
        | sticks        |
        | loose         |
        | will-not-fold |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/kick-starter tried kick-starter slips
      And tom wrote that controls/kick-starter tried kick-starter engages-and-returns
      Then controls.kick-starter is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/kick-starter tried kick-starter slips
      Then controls.kick-starter is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.kick-starter is missing at controls/kick-starter

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/kick-starter told kick-starter engages-and-returns
      Then controls.kick-starter is missing at controls/kick-starter

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/kick-starter tried kick-starter engages-and-returns <ago> months ago
      Then controls.kick-starter is <state> at controls/kick-starter

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/kick-starter tried kick-starter engages-and-returns
      And <point> was <work>
      Then controls.kick-starter is stale at controls/kick-starter

      Examples:
        | point                 | work      |
        | controls/kick-starter | removed   |
        | transmission/gearbox  | removed   |
        | transmission/clutch   | refitted  |
        | engine                | replaced  |
        | engine/crankcase      | replaced  |
        | machine               | damaged   |
        | transmission/gearbox  | adjusted  |
        | controls/kick-starter | tightened |
        | transmission/primary  | damaged   |

    Scenario: not asked with an electric starter alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      Then controls.kick-starter is not applicable

    Scenario: not asked without a starter
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter none
      Then controls.kick-starter is not applicable

  @controls.electric-starter
  Rule: The electric starter turns and lets go

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      And controls/electric-starter tried electric-starter turns-and-lets-go
      Then controls.electric-starter is met at controls/electric-starter
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      And controls/electric-starter seen electric-starter turns-and-lets-go
      Then controls.electric-starter is missing

    Scenario: both starters
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter both
      Then controls.electric-starter is missing at controls/electric-starter
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      And controls/electric-starter tried electric-starter <found>
      Then controls.electric-starter is fault at controls/electric-starter

      Examples:
        | found    |
        | dead     |
        | slips    |
        | hangs-on |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      And controls/electric-starter tried electric-starter dead
      And tom wrote that controls/electric-starter tried electric-starter turns-and-lets-go
      Then controls.electric-starter is fault

    Scenario: found so, and then charged
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      And controls/electric-starter tried electric-starter dead
      And tom wrote that electrics/battery was charged
      Then controls.electric-starter is stale

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      And controls/electric-starter tried electric-starter hangs-on
      Then controls.electric-starter is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      Then controls.electric-starter is missing at controls/electric-starter

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      And controls/electric-starter told electric-starter turns-and-lets-go
      Then controls.electric-starter is missing at controls/electric-starter

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      And controls/electric-starter tried electric-starter turns-and-lets-go <ago> months ago
      Then controls.electric-starter is <state> at controls/electric-starter

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      And controls/electric-starter tried electric-starter turns-and-lets-go
      And <point> was <work>
      Then controls.electric-starter is stale at controls/electric-starter

      Examples:
        | point                         | work     |
        | controls/electric-starter     | removed  |
        | electrics/battery             | removed  |
        | electrics/wiring              | refitted |
        | engine                        | replaced |
        | engine/crankcase              | replaced |
        | machine                       | damaged  |
        | electrics/charging/alternator | damaged  |
        | electrics/earth               | damaged  |
        | electrics/starter             | damaged  |
        | electrics/wiring/starter      | damaged  |

    Scenario: not asked with a kick-starter alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter kick
      Then controls.electric-starter is not applicable

    Scenario: not asked without a starter
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter none
      Then controls.electric-starter is not applicable

    Scenario: a starter that slips is mended, and the battery left alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has starter electric
      And a machine ready for road-test
      And nothing is written for controls.electric-starter
      And controls/electric-starter tried electric-starter slips
      Then controls.electric-starter is fault
      And for road-test electrics/starter is to be repaired first

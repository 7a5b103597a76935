Feature: Grease in the wheel bearings
  Grease of decades turns to soap or lets water in, and the first miles finish the bearing. It is looked at with the wheel out;
  a bearing that merely turns smoothly by hand says nothing of its grease.

  @tyres.bearing-grease
  Rule: There is good grease in the wheel bearings

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease <found>
      Then tyres.bearing-grease is met

      Examples:
        | found            |
        | fresh            |
        | sealed-and-clean |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease <found>
      Then tyres.bearing-grease is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found  |
        | hard   |
        | dry    |
        | rusty  |
        | watery |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then tyres.bearing-grease is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings told bearing-grease fresh
      Then tyres.bearing-grease is missing

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease hard
      And tom wrote that front-wheel/bearings seen bearing-grease fresh
      Then tyres.bearing-grease is fault

    Scenario: hard, and lubricated
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease hard 3 days ago
      And front-wheel/bearings was lubricated 2 days ago
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease fresh 1 day ago
      Then tyres.bearing-grease is met

    Scenario: dry, and lubricated
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease dry 3 days ago
      And front-wheel/bearings was lubricated 2 days ago
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease fresh 1 day ago
      Then tyres.bearing-grease is met

    Scenario: watery, and lubricated
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease watery 3 days ago
      And front-wheel/bearings was lubricated 2 days ago
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease fresh 1 day ago
      Then tyres.bearing-grease is met

    Scenario: rusty, and lubricated
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease rusty 3 days ago
      And front-wheel/bearings was lubricated 2 days ago
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease fresh 1 day ago
      Then tyres.bearing-grease is fault

    Scenario: rusty, and replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease rusty 3 days ago
      And front-wheel/bearings was replaced 2 days ago
      And rear-wheel/bearings seen bearing-grease fresh
      And front-wheel/bearings seen bearing-grease fresh 1 day ago
      Then tyres.bearing-grease is met

    Scenario: looked at once, and left alone since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And rear-wheel/bearings seen bearing-grease fresh 20 months ago
      And front-wheel/bearings seen bearing-grease fresh 20 months ago
      Then tyres.bearing-grease is met
      And it does not lapse by itself

    Scenario Outline: how long it stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since <since>
      And controls/grips tried grips tight-and-whole
      Then tyres.bearing-grease is <state>

      # 24 months: common practice
      Examples:
        | since      | state          |
        | 2024-11-24 | missing        |
        | 2024-11-25 | not applicable |
        | unknown    | missing        |
        | no         | not applicable |

    Scenario: a machine that is not said to have stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips tight-and-whole
      Then tyres.bearing-grease is not applicable

    Scenario: not looked at on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And a machine ready for road-test
      And nothing is written for tyres.bearing-grease
      Then the road-test is blocked by tyres.bearing-grease alone

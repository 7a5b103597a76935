Feature: Old petrol
  Petrol that stood for months turns to gum and varnish. Fresh petrol filled on top of it carries the gum into the jets, and the
  engine runs lean or not at all. Tank and float bowls are emptied first.

  @fuel.old-petrol
  Rule: No fresh petrol is filled on old

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And fuel/tank seen old-petrol <found>
      Then fuel.old-petrol is met

      Examples:
        | found         |
        | drained-first |
        | found-empty   |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And fuel/tank seen old-petrol <found>
      Then fuel.old-petrol is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found        |
        | fresh-on-old |
        | still-in     |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then fuel.old-petrol is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And fuel/tank told old-petrol drained-first
      Then fuel.old-petrol is missing

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And fuel/tank seen old-petrol fresh-on-old
      And tom wrote that fuel/tank seen old-petrol drained-first
      Then fuel.old-petrol is fault

    Scenario: fresh on old, and drained
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And fuel/tank seen old-petrol fresh-on-old 3 days ago
      And fuel/tank was drained 2 days ago
      And fuel/tank seen old-petrol drained-first 1 day ago
      Then fuel.old-petrol is met

    Scenario: still in, and cleaned
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And fuel/tank seen old-petrol still-in 3 days ago
      And fuel/tank was cleaned 2 days ago
      And fuel/tank seen old-petrol drained-first 1 day ago
      Then fuel.old-petrol is met

    Scenario: still in, and filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And fuel/tank seen old-petrol still-in 3 days ago
      And fuel/tank was filled 2 days ago
      And fuel/tank seen old-petrol drained-first 1 day ago
      Then fuel.old-petrol is fault

    Scenario: looked at once, and left alone since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And fuel/tank seen old-petrol drained-first 20 months ago
      Then fuel.old-petrol is met
      And it does not lapse by itself

    Scenario Outline: how long it stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since <since>
      And controls/grips tried grips tight-and-whole
      Then fuel.old-petrol is <state>

      # 3 months: common practice
      Examples:
        | since      | state          |
        | 2026-08-24 | missing        |
        | 2026-08-25 | not applicable |
        | unknown    | missing        |
        | no         | not applicable |

    Scenario: a machine that is not said to have stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips tight-and-whole
      Then fuel.old-petrol is not applicable

    Scenario: an electric machine has none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then fuel.old-petrol is not applicable

    Scenario: not looked at on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And a machine ready for road-test
      And nothing is written for fuel.old-petrol
      Then the road-test is blocked by fuel.old-petrol alone

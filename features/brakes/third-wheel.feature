Feature: The brake of the third wheel
  At walking pace, on level ground and with both hands loose on the bars, the brake is put on. A sidecar brake that bites before
  the others pulls the outfit round; one that drags gets hot and locks.

  @brakes.third-wheel
  Rule: A brake on the third wheel works and lets go

    Scenario Outline: third wheel brake in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel/brake tried third-wheel-brake <found>
      Then brakes.third-wheel is met
      And it holds until 2027-05-25

      Examples:
        | found             |
        | works-and-lets-go |
        | made-without      |

    Scenario Outline: third wheel brake not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel/brake tried third-wheel-brake <found>
      Then brakes.third-wheel is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found        |
        | does-nothing |
        | drags        |
        | pulls-aside  |
        | leaks        |
        | worn         |

    Scenario: third wheel brake known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel/brake told third-wheel-brake works-and-lets-go
      Then brakes.third-wheel is missing

    Scenario: third wheel brake looked at but not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel/brake seen third-wheel-brake works-and-lets-go
      Then brakes.third-wheel is missing

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      Then brakes.third-wheel is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel/brake tried third-wheel-brake does-nothing
      And tom wrote that third-wheel/brake tried third-wheel-brake works-and-lets-go
      Then brakes.third-wheel is fault

    Scenario: third wheel brake drags, and adjusted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel/brake tried third-wheel-brake drags 3 days ago
      And third-wheel/brake was adjusted 2 days ago
      And third-wheel/brake tried third-wheel-brake works-and-lets-go 1 day ago
      Then brakes.third-wheel is met

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel/brake tried third-wheel-brake works-and-lets-go <ago> months ago
      Then brakes.third-wheel is <state>

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario: third-wheel/brake was opened since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel/brake tried third-wheel-brake works-and-lets-go
      And third-wheel/brake was opened
      Then brakes.third-wheel is stale

    Scenario: third-wheel/brake was bled since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel/brake tried third-wheel-brake works-and-lets-go
      And third-wheel/brake was bled
      Then brakes.third-wheel is stale

    Scenario: does not apply to a solo machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.third-wheel is not applicable

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And the record is a job-record/1
      Then brakes.third-wheel is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And a machine ready for road-test
      And nothing is written for brakes.third-wheel
      Then the road-test is blocked by brakes.third-wheel alone

    Scenario: a three-wheeled moped
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a moped-3w
      Then brakes.third-wheel is missing

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And third-wheel/brake tried third-wheel-brake works-and-lets-go
      And <point> was <work>
      Then brakes.third-wheel is stale

      Examples:
        | point             | work       |
        | third-wheel/brake | adjusted   |
        | third-wheel/brake | lubricated |

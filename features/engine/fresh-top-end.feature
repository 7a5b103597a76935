Feature: A fresh top end
  Head, barrel or piston was worked on: torqued again cold after the first warm-up and after the ride, and run in.

  @engine.head-retorque
  Rule: The head nuts are torqued again after the first warm-up

    Scenario: warmed, cooled and torqued again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      And engine/head was torqued
      And engine was heat-cycled
      And engine/head was torqued
      Then engine.head-retorque is met at engine/head
      And it does not lapse by itself

    Scenario: torqued once, before the warm-up
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      And engine/head was torqued
      And engine was heat-cycled
      Then engine.head-retorque is stale at engine/head

    Scenario: never warmed through
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      And engine/head was torqued
      Then engine.head-retorque is missing at engine/head

    Scenario: warmed through a second time
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      And engine was heat-cycled
      And engine/head was torqued
      And engine was heat-cycled
      And engine/head was torqued
      Then engine.head-retorque is met at engine/head

    Scenario Outline: what makes it fresh
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <point> was <work>
      Then engine.head-retorque is missing at engine/head

      Examples:
        | point             | work     |
        | engine/head       | removed  |
        | engine/head       | refitted |
        | engine/head       | replaced |
        | engine/head       | opened   |
        | engine/head       | stripped |
        | engine/head       | repaired |
        | engine/top-end    | replaced |
        | engine/top-end    | refitted |
        | engine/cylinder-1 | removed  |
        | engine/cylinder-1 | repaired |
        | engine            | opened   |
        | engine            | stripped |
        | engine            | repaired |
        | engine            | replaced |

    Scenario Outline: what does not
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <point> was <work>
      Then engine.head-retorque is not applicable

      Examples:
        | point            | work     |
        | engine           | removed  |
        | engine           | refitted |
        | engine/crankcase | opened   |
        | ignition/plugs   | replaced |
        | engine/head      | torqued  |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      And engine was heat-cycled
      And engine/head was torqued
      And <point> was <work>
      Then engine.head-retorque is stale at engine/head

      Examples:
        | point             | work     |
        | engine/head       | removed  |
        | engine/top-end    | replaced |
        | engine/cylinder-1 | repaired |
        | engine            | stripped |

    Scenario: out of the frame and in again leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      And engine was heat-cycled
      And engine/head was torqued
      And engine was removed
      And engine was refitted
      Then engine.head-retorque is met at engine/head

    Scenario: nobody knows what was done
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the history is unknown
      Then engine.head-retorque is missing at engine/head
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: not asked when nothing was done
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.head-retorque is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.head-retorque is not applicable

    Scenario: not asked of an electric machine of unknown history
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And the history is unknown
      Then engine.head-retorque is not applicable

  @engine.head-recheck
  Rule: The head nuts are torqued once more after the ride

    Scenario: torqued after the ride
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      And engine/head was torqued
      And machine was ridden
      And engine/head was torqued
      Then engine.head-recheck is met at engine/head

    Scenario: not torqued after the ride
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      And engine/head was torqued
      And machine was ridden
      Then engine.head-recheck is stale at engine/head

    Scenario: never torqued
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      Then engine.head-recheck is missing at engine/head

    Scenario Outline: what makes it fresh
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <point> was <work>
      Then engine.head-recheck is missing at engine/head

      Examples:
        | point             | work     |
        | engine/head       | removed  |
        | engine/head       | refitted |
        | engine/head       | replaced |
        | engine/head       | opened   |
        | engine/head       | stripped |
        | engine/head       | repaired |
        | engine/top-end    | replaced |
        | engine/top-end    | refitted |
        | engine/cylinder-1 | removed  |
        | engine/cylinder-1 | repaired |
        | engine            | opened   |
        | engine            | stripped |
        | engine            | repaired |
        | engine            | replaced |

    Scenario Outline: what does not
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <point> was <work>
      Then engine.head-recheck is not applicable

      Examples:
        | point            | work     |
        | engine           | removed  |
        | engine           | refitted |
        | engine/crankcase | opened   |
        | ignition/plugs   | replaced |
        | engine/head      | torqued  |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      And engine/head was torqued
      And <point> was <work>
      Then engine.head-recheck is stale at engine/head

      Examples:
        | point             | work     |
        | engine/head       | removed  |
        | engine/top-end    | replaced |
        | engine/cylinder-1 | repaired |
        | engine            | stripped |

    Scenario: out of the frame and in again leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      And engine/head was torqued
      And engine was removed
      Then engine.head-recheck is met at engine/head
      And it does not lapse by itself

    Scenario: nobody knows what was done
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the history is unknown
      Then engine.head-recheck is missing at engine/head
      And it is not safety-critical

    Scenario: not asked when nothing was done
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.head-recheck is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.head-recheck is not applicable

    Scenario: work that leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/head was refitted
      And engine/head was torqued
      And engine was removed
      And engine was refitted
      Then engine.head-recheck is met

  @engine.running-in
  Rule: Whoever rides a fresh top end knows how

    Scenario: written down
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/top-end was replaced
      And engine/top-end seen running-in-limits written-down
      Then engine.running-in is met at engine/top-end
      And it notes "Fresh top end: at most 66 % of the throttle for at least 300 mi"
      And it does not lapse by itself

    Scenario: a four-stroke takes longer
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And engine/top-end was replaced
      And engine/top-end seen running-in-limits written-down
      Then engine.running-in is met at engine/top-end
      And it notes "Fresh top end: at most 66 % of the throttle for at least 600 mi"

    Scenario: not written down
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/top-end was replaced
      And engine/top-end seen running-in-limits not-written
      Then engine.running-in is fault at engine/top-end

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/top-end was replaced
      And engine/top-end seen running-in-limits not-written
      And tom wrote that engine/top-end seen running-in-limits written-down
      Then engine.running-in is fault

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/top-end was replaced
      And engine/top-end told running-in-limits written-down
      Then engine.running-in is missing at engine/top-end

    Scenario Outline: what makes it fresh
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <point> was <work>
      Then engine.running-in is missing at engine/top-end
      And it notes "Fresh top end"

      Examples:
        | point             | work     |
        | engine/head       | removed  |
        | engine/head       | refitted |
        | engine/head       | replaced |
        | engine/head       | opened   |
        | engine/head       | stripped |
        | engine/head       | repaired |
        | engine/top-end    | replaced |
        | engine/top-end    | refitted |
        | engine/cylinder-1 | removed  |
        | engine/cylinder-1 | repaired |
        | engine            | opened   |
        | engine            | stripped |
        | engine            | repaired |
        | engine            | replaced |

    Scenario Outline: what does not
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <point> was <work>
      Then engine.running-in is not applicable

      Examples:
        | point            | work     |
        | engine           | removed  |
        | engine           | refitted |
        | engine/crankcase | opened   |
        | ignition/plugs   | replaced |
        | engine/head      | torqued  |

    Scenario Outline: fresh again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/top-end was replaced
      And engine/top-end seen running-in-limits written-down
      And <point> was <work>
      Then engine.running-in is stale at engine/top-end

      Examples:
        | point             | work     |
        | engine/head       | removed  |
        | engine/top-end    | replaced |
        | engine/cylinder-1 | repaired |
        | engine            | stripped |

    Scenario: out of the frame and in again leaves it alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/top-end was replaced
      And engine/top-end seen running-in-limits written-down
      And engine was removed
      Then engine.running-in is met at engine/top-end

    Scenario: nobody knows what was done
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the history is unknown
      Then engine.running-in is missing at engine/top-end
      And it notes "Nobody knows what was done inside this engine"
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: not asked when nothing was done
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.running-in is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.running-in is not applicable

    Scenario: work that leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/top-end was replaced
      And engine/top-end seen running-in-limits written-down
      And engine was refitted
      Then engine.running-in is met

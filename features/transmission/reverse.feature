Feature: Reverse gear
  Reverse that can be found by mistake throws outfit and rider backwards, or locks the wheel.

  @transmission.reverse
  Rule: Reverse is found only on purpose

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      And transmission/reverse tried reverse-lock only-on-purpose
      Then transmission.reverse is met
      And it holds until 2027-05-25

    Scenario Outline: not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      And transmission/reverse tried reverse-lock <found>
      Then transmission.reverse is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found             |
        | engages-by-itself |
        | no-lock           |
        | jumps-out         |
        | does-not-come-out |

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      Then transmission.reverse is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: reverse lock looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      And transmission/reverse seen reverse-lock only-on-purpose
      Then transmission.reverse is missing

    Scenario: reverse lock known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      And transmission/reverse told reverse-lock only-on-purpose
      Then transmission.reverse is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      And transmission/reverse tried reverse-lock engages-by-itself
      And tom wrote that transmission/reverse tried reverse-lock only-on-purpose
      Then transmission.reverse is fault

    Scenario Outline: what was wrong, and was put right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      And transmission/reverse tried reverse-lock <f0> 3 days ago
      And <place> was <work> 2 days ago
      And transmission/reverse tried reverse-lock only-on-purpose 1 day ago
      Then transmission.reverse is <state>

      Examples:
        | f0      | place                | work     | state |
        | no-lock | transmission/reverse | adjusted | met   |

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      And transmission/reverse tried reverse-lock only-on-purpose <ago> months ago
      Then transmission.reverse is <state>

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      And transmission/reverse tried reverse-lock only-on-purpose
      And <point> was <work>
      Then transmission.reverse is stale

      Examples:
        | point                | work     |
        | transmission/reverse | adjusted |
        | transmission/gearbox | opened   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      And transmission/reverse tried reverse-lock only-on-purpose
      And <point> was <work>
      Then transmission.reverse is met

      Examples:
        | point       | work    |
        | front-wheel | removed |

    Scenario: what is to be done about it first
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      And a machine ready for road-test
      And transmission/reverse tried reverse-lock no-lock
      Then transmission.reverse is fault
      And for road-test transmission/reverse is to be adjusted first

    Scenario: does not apply to a machine without one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then transmission.reverse is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part reverse-gear
      And a machine ready for road-test
      And nothing is written for transmission.reverse
      Then the road-test is blocked by transmission.reverse alone

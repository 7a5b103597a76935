# A general table differs by about 30 % between printed ones for the same size and class (several read). Going over the fasteners
# after the first 50 to 100 miles: read in two places; common practice.
Feature: Torque figures, and trying them after the ride

  @fasteners.torque-figures
  Rule: It is written where the torque figures came from

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures maker
      Then fasteners.torque-figures is met

    Scenario Outline: what else is in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures <found>
      Then fasteners.torque-figures is met at machine/fasteners

      Examples:
        | found         |
        | general-table |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures <found>
      Then fasteners.torque-figures is fault at machine/fasteners

      Examples:
        | found   |
        | by-feel |
        | unknown |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.torque-figures is missing

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners told torque-figures maker
      Then fasteners.torque-figures is missing at machine/fasteners

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures maker
      And <point> was <work>
      Then fasteners.torque-figures is stale at machine/fasteners

      Examples:
        | point             | work     |
        | machine/fasteners | replaced |

    Scenario: figures from a general table
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners seen torque-figures general-table
      Then fasteners.torque-figures is met
      And it notes "good to about 30 % only"

  @fasteners.after-ride
  Rule: Every fastener held its torque when tried again after the ride

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And machine/fasteners tried torque-after-ride all-held
      Then fasteners.after-ride is met

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And machine/fasteners tried torque-after-ride <found>
      Then fasteners.after-ride is fault at machine/fasteners

      Examples:
        | found      |
        | some-moved |

    Scenario: without the ride
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners tried torque-after-ride all-held
      Then fasteners.after-ride is missing at machine/fasteners

    Scenario: without the trial
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      Then fasteners.after-ride is missing at machine/fasteners

    Scenario: not ridden yet
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.after-ride is missing

    Scenario: looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And machine/fasteners seen torque-after-ride all-held
      Then fasteners.after-ride is missing at machine/fasteners

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And machine/fasteners tried torque-after-ride all-held
      And <point> was <work>
      Then fasteners.after-ride is stale at machine/fasteners

      Examples:
        | point                       | work     |
        | machine                     | ridden   |
        | machine                     | damaged  |
        | steering/handlebar          | refitted |
        | front-fork                  | refitted |
        | rear-fork                   | refitted |
        | rear-suspension/dampers     | replaced |
        | front-brake/caliper         | removed  |
        | rear-wheel                  | refitted |
        | engine                      | refitted |
        | engine/mounts               | refitted |
        | transmission/sprockets/rear | replaced |
        | transmission/final-drive    | opened   |
        | frame/stands                | refitted |
        | frame/footrests             | refitted |
        | frame/sidecar-fittings      | refitted |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden
      And machine/fasteners tried torque-after-ride all-held
      And <point> was <work>
      Then fasteners.after-ride is met at machine/fasteners

      Examples:
        | point              | work       |
        | rear-wheel/spindle | torqued    |
        | transmission/chain | lubricated |

    Scenario: tried before the ride
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine/fasteners tried torque-after-ride all-held
      And machine was ridden
      Then fasteners.after-ride is stale

    Scenario: taken apart after the ride: ride and try again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine was ridden 3 days ago
      And machine/fasteners tried torque-after-ride all-held 3 days ago
      And front-wheel was removed 2 days ago
      And front-wheel was refitted 2 days ago
      And machine/fasteners tried torque-after-ride all-held 1 day ago
      Then fasteners.after-ride is stale

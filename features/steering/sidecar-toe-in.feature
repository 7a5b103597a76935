Feature: Toe-in of the third wheel
  The third wheel points a little inwards. An outfit that toes out, or far too much in, pulls to one side at every bump and every brake.
  With a straight edge along both wheels of the machine and one along the third, the toe-in is how much nearer they are in front.

  @steering.sidecar-toe-in
  Rule: The third wheel toes in by the maker's figure, or by what workshops set

    Scenario Outline: as workshops set it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings measured track-behind <behind> ± 1 mm
      And frame/sidecar-fittings measured track-in-front 1132 mm ± 1 mm
      Then steering.sidecar-toe-in is <state>

      # 9 mm to 26 mm, common practice; √(1² + 1²) = 1.41 mm, rounded up, is what the difference is known to
      Examples:
        | behind  | state |
        | 1127 mm | fault |
        | 1132 mm | fault |
        | 1139 mm | fault |
        | 1141 mm | doubt |
        | 1142 mm | doubt |
        | 1143 mm | met   |
        | 1150 mm | met   |
        | 1156 mm | met   |
        | 1157 mm | doubt |
        | 1158 mm | doubt |
        | 1160 mm | fault |

    Scenario Outline: the maker's figure goes before it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And the maker says steering.sidecar-toe-in at most 20 mm
      And frame/sidecar-fittings measured track-behind <behind> ± 1 mm
      And frame/sidecar-fittings measured track-in-front 1132 mm ± 1 mm
      Then steering.sidecar-toe-in is <state>

      Examples:
        | behind  | state |
        | 1150 mm | met   |
        | 1151 mm | doubt |
        | 1154 mm | fault |

    Scenario: nobody measured it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      Then steering.sidecar-toe-in is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: measured in front only
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings measured track-in-front 1132 mm ± 1 mm
      Then steering.sidecar-toe-in is missing

    Scenario: measured behind only
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings measured track-behind 1150 mm ± 1 mm
      Then steering.sidecar-toe-in is missing

    Scenario: readings taken too far apart
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings measured track-behind 1150 mm ± 1 mm 5 hours ago
      And frame/sidecar-fittings measured track-in-front 1132 mm ± 1 mm 2 hours ago
      Then steering.sidecar-toe-in is missing

    Scenario: measured and right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings measured track-behind 1150 mm ± 1 mm
      And frame/sidecar-fittings measured track-in-front 1132 mm ± 1 mm
      Then steering.sidecar-toe-in is met
      And it holds until 2027-11-25

    Scenario: too little, and measured again without setting it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings measured track-behind 1135.2 mm ± 4 mm 2 hours ago
      And frame/sidecar-fittings measured track-in-front 1132 mm ± 4 mm 2 hours ago
      And frame/sidecar-fittings measured track-behind 1138.9 mm ± 1 mm
      And frame/sidecar-fittings measured track-in-front 1128.4 mm ± 1 mm
      Then steering.sidecar-toe-in is fault

    Scenario Outline: one of the two only tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings <behind>
      And frame/sidecar-fittings <in-front>
      Then steering.sidecar-toe-in is missing

      Examples:
        | behind                               | in-front                               |
        | tried track-behind 1150 mm           | measured track-in-front 1132 mm ± 1 mm |
        | measured track-behind 1150 mm ± 1 mm | tried track-in-front 1132 mm           |

    Scenario: set by eye
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings seen track-behind 1150 mm
      And frame/sidecar-fittings seen track-in-front 1132 mm
      Then steering.sidecar-toe-in is missing

    Scenario: too little, set, and measured again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings measured track-behind 1134 mm ± 1 mm 3 days ago
      And frame/sidecar-fittings measured track-in-front 1132 mm ± 1 mm 3 days ago
      And frame/sidecar-fittings was adjusted 2 days ago
      And frame/sidecar-fittings measured track-behind 1150 mm ± 1 mm 1 day ago
      And frame/sidecar-fittings measured track-in-front 1132 mm ± 1 mm 1 day ago
      Then steering.sidecar-toe-in is met

    Scenario: too little, and set without measuring
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings measured track-behind 1134 mm ± 1 mm 3 days ago
      And frame/sidecar-fittings measured track-in-front 1132 mm ± 1 mm 3 days ago
      And frame/sidecar-fittings was adjusted 2 days ago
      Then steering.sidecar-toe-in is stale

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings measured track-behind 1150 mm ± 1 mm <ago> months ago
      And frame/sidecar-fittings measured track-in-front 1132 mm ± 1 mm <ago> months ago
      Then steering.sidecar-toe-in is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And frame/sidecar-fittings measured track-behind 1150 mm ± 1 mm
      And frame/sidecar-fittings measured track-in-front 1132 mm ± 1 mm
      And <point> was <work>
      Then steering.sidecar-toe-in is stale

      Examples:
        | point                  | work     |
        | frame/sidecar-fittings | adjusted |
        | frame/sidecar-fittings | loosened |
        | frame/sidecar-fittings | refitted |
        | third-wheel            | removed  |
        | rear-fork/dampers      | replaced |

    Scenario: does not apply to a solo machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then steering.sidecar-toe-in is not applicable

    Scenario: does not apply to a three-wheeled moped
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a moped-3w
      Then steering.sidecar-toe-in is not applicable

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And the record is a job-record/1
      Then steering.sidecar-toe-in is not applicable

    Scenario: not measured, on an outfit otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a motorcycle-sidecar
      And a machine ready for road-test
      And nothing is written for steering.sidecar-toe-in
      Then the road-test is blocked by steering.sidecar-toe-in alone

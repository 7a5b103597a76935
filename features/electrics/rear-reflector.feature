Feature: The rear reflector
  A lamp held at eye height is shone at the rear from ten paces, and what shines back in red is counted. When the tail lamp
  fails at night, the reflector is what the next driver sees.

  @electrics.rear-reflector
  Rule: A red reflector shines back from behind

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/rear-reflector seen rear-reflectors 1 times
      Then electrics.rear-reflector is met at electrics/rear-reflector
      And it holds until 2027-11-25
      And it says "Lighting Regulations 1989"
      And it says "also at least 1 (common practice)"

    Scenario: none is there
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/rear-reflector seen rear-reflectors 0 times
      Then electrics.rear-reflector is fault
      And it holds road-test, hand-over and no other gate

    Scenario: nobody counted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.rear-reflector is missing at electrics/rear-reflector
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/rear-reflector told rear-reflectors 1 times
      Then electrics.rear-reflector is missing

    Scenario: seen again, it is still the same machine without one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/rear-reflector seen rear-reflectors 0 times 2 days ago
      And tom wrote that electrics/rear-reflector seen rear-reflectors 1 times
      Then electrics.rear-reflector is fault

    Scenario: fitted, and counted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/rear-reflector seen rear-reflectors 0 times 3 days ago
      And electrics/rear-reflector was replaced 2 days ago
      And electrics/rear-reflector seen rear-reflectors 1 times 1 day ago
      Then electrics.rear-reflector is met

    Scenario Outline: what local law requires
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And the machine is first registered 1930-05-01
      And electrics/rear-reflector seen rear-reflectors <found>
      Then electrics.rear-reflector is <state>
      And it says "<why>"

      # StVZO § 53 (4), read in a copy; Lighting Regulations, schedule 1, and FMVSS 108 from memory
      Examples:
        | territory | found   | state   | why                                    |
        | GB        | 0 times | fault   | at least 1 (The Road Vehicles Lighting |
        | GB        | 1 times | met     | schedule 1                             |
        | GB        | 2 times | met     | schedule 1                             |
        | DE        | 0 times | fault   | at least 1 (StVZO, § 53 (4)            |
        | DE        | 1 times | met     | StVZO, § 53 (4)                        |
        | DE        | 2 times | met     | StVZO, § 53 (4)                        |
        | US-VA     | 0 times | fault   | at least 1 (FMVSS 108                  |
        | US-VA     | 1 times | met     | FMVSS 108                              |
        | US-VA     | 2 times | met     | FMVSS 108                              |
        | US-MD     | 0 times | fault   | at least 1 (FMVSS 108                  |
        | US-MD     | 1 times | met     | FMVSS 108                              |
        | US-MD     | 2 times | met     | FMVSS 108                              |
        | IT        | 1 times | missing | no local code for                      |

    Scenario Outline: a machine without lamps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And the equipment has lamps no
      Then electrics.rear-reflector is <state>

      Examples:
        | territory | state          |
        | GB        | not applicable |
        | DE        | missing        |

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/rear-reflector seen rear-reflectors 1 times <ago> months ago
      Then electrics.rear-reflector is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/rear-reflector seen rear-reflectors 1 times
      And <point> was <work>
      Then electrics.rear-reflector is stale

      Examples:
        | point                    | work     |
        | electrics/rear-reflector | removed  |
        | rear-mudguard            | refitted |
        | machine                  | damaged  |

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the record is a job-record/1
      Then electrics.rear-reflector is not applicable

    Scenario: not counted before the road test
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for electrics.rear-reflector
      Then the road-test is blocked by electrics.rear-reflector alone

    Scenario: missing before the road test
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for electrics.rear-reflector
      And electrics/rear-reflector seen rear-reflectors 0 times
      Then the road-test is blocked by electrics.rear-reflector alone

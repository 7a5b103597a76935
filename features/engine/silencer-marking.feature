Feature: What is stamped on the silencer
  The mark is read on the silencer itself. A racing silencer that says it is not for the road is refused at any age; one without a mark
  passes only where local law requires no mark on a machine of that age.

  @engine.silencer-marking
  Rule: The silencer is one for the road

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer seen silencer-marking <found>
      Then engine.silencer-marking is met at exhaust/silencer
      And it does not lapse by itself

      Examples:
        | found        |
        | makers-own   |
        | approved     |
        | none-legible |

    Scenario Outline: not for the road
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer seen silencer-marking <found>
      Then engine.silencer-marking is fault at exhaust/silencer
      And it holds road-test, hand-over and no other gate

      # Construction and Use Regulations 1986, regulation 57, read as made
      Examples:
        | found            |
        | not-for-the-road |
        | mark-ground-off  |

    Scenario: nobody read it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.silencer-marking is missing
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer told silencer-marking approved
      Then engine.silencer-marking is missing

    Scenario: another reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer seen silencer-marking not-for-the-road
      And tom wrote that exhaust/silencer seen silencer-marking approved
      Then engine.silencer-marking is fault

    Scenario: another silencer
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer seen silencer-marking not-for-the-road 3 days ago
      And exhaust/silencer was replaced 2 days ago
      And exhaust/silencer seen silencer-marking approved 1 day ago
      Then engine.silencer-marking is met

    Scenario Outline: a silencer without a mark, by local law
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And the machine is first registered <registered>
      And the top speed is <speed>
      And exhaust/silencer seen silencer-marking none-legible
      Then engine.silencer-marking is <state>

      # Construction and Use Regulations 1986, regulation 57, read as made; StVZO § 49 (2a), read in a copy; 19VAC30-70-390,
      # read in a copy of 2012, has no item about it; Maryland was not searched
      Examples:
        | territory | registered | speed    | state   |
        | GB        | 1984-12-31 | 120 km/h | met     |
        | GB        | 1985-01-01 | 120 km/h | fault   |
        | DE        | 1960-05-01 | 51 km/h  | fault   |
        | DE        | 1960-05-01 | 50 km/h  | met     |
        | US-VA     | 1990-05-01 | 120 km/h | met     |
        | US-MD     | 1990-05-01 | 120 km/h | missing |
        | IT        | 1990-05-01 | 120 km/h | missing |

    Scenario Outline: a marked one passes where a mark is asked for, and where nobody knows
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And the machine is first registered 1990-05-01
      And exhaust/silencer seen silencer-marking <found>
      Then engine.silencer-marking is met

      Examples:
        | territory | found      |
        | GB        | makers-own |
        | DE        | approved   |
        | US-MD     | makers-own |

    Scenario: why one without a mark is refused
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is first registered 1990-05-01
      And exhaust/silencer seen silencer-marking none-legible
      Then engine.silencer-marking is fault
      And it says "local law requires an original silencer or one marked as approved"

    Scenario Outline: it is no matter of a disc without a mark
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      And the machine is first registered 1990-05-01
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is met
      And engine.silencer-marking is missing

      Examples:
        | territory |
        | GB        |
        | US-MD     |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust/silencer seen silencer-marking makers-own
      And <point> was <work>
      Then engine.silencer-marking is <state>

      Examples:
        | point            | work     | state |
        | exhaust/silencer | replaced | stale |
        | exhaust/silencer | refitted | met   |

    Scenario: asked of no electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then engine.silencer-marking is not applicable

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the record is a job-record/1
      Then engine.silencer-marking is not applicable

    Scenario: not read before the road test
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for engine.silencer-marking
      Then the road-test is blocked by engine.silencer-marking alone

    Scenario: not for the road, before the road test
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for engine.silencer-marking
      And exhaust/silencer seen silencer-marking not-for-the-road
      Then the road-test is blocked by engine.silencer-marking alone

Feature: Decompressor
  A big single is turned over with a valve held open. One that does not lift breaks an ankle; one that does not close burns its seat.

  @engine.decompressor
  Rule: The decompressor lifts and closes

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part decompressor
      And engine/decompressor tried decompressor lifts-and-closes
      Then engine.decompressor is met
      And it holds until 2027-11-25

    Scenario Outline: not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part decompressor
      And engine/decompressor tried decompressor <found>
      Then engine.decompressor is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found                |
        | does-not-lift        |
        | stays-open           |
        | no-play-in-the-cable |

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part decompressor
      Then engine.decompressor is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: decompressor looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part decompressor
      And engine/decompressor seen decompressor lifts-and-closes
      Then engine.decompressor is missing

    Scenario: decompressor known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part decompressor
      And engine/decompressor told decompressor lifts-and-closes
      Then engine.decompressor is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part decompressor
      And engine/decompressor tried decompressor does-not-lift
      And tom wrote that engine/decompressor tried decompressor lifts-and-closes
      Then engine.decompressor is fault

    Scenario Outline: what was wrong, and was put right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part decompressor
      And engine/decompressor tried decompressor <f0> 3 days ago
      And <place> was <work> 2 days ago
      And engine/decompressor tried decompressor lifts-and-closes 1 day ago
      Then engine.decompressor is <state>

      Examples:
        | f0         | place               | work       | state |
        | stays-open | engine/decompressor | adjusted   | met   |
        | stays-open | engine/decompressor | lubricated | met   |

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part decompressor
      And engine/decompressor tried decompressor lifts-and-closes <ago> months ago
      Then engine.decompressor is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part decompressor
      And engine/decompressor tried decompressor lifts-and-closes
      And <point> was <work>
      Then engine.decompressor is stale

      Examples:
        | point               | work     |
        | engine/decompressor | adjusted |
        | engine/head         | opened   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part decompressor
      And engine/decompressor tried decompressor lifts-and-closes
      And <point> was <work>
      Then engine.decompressor is met

      Examples:
        | point       | work    |
        | front-wheel | removed |

    Scenario: does not apply to a machine without one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.decompressor is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part decompressor
      And a machine ready for first-start
      And nothing is written for engine.decompressor
      Then the first-start is blocked by engine.decompressor alone

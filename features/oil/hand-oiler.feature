Feature: Hand oiler
  Some engines get the oil that the rider pumps. Nobody who was not told pumps.

  @oil.hand-oiler
  Rule: The hand pump delivers, and the rider can read how often to use it

    Scenario: in order
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler tried hand-oiler oil-with-each-stroke
      And oil/hand-oiler seen strokes-and-miles on-the-tank-or-card
      Then oil.hand-oiler is met

    Scenario Outline: hand oiler not in order
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler tried hand-oiler <found>
      And oil/hand-oiler seen strokes-and-miles on-the-tank-or-card
      Then oil.hand-oiler is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found              |
        | draws-air          |
        | delivers-nothing   |
        | leaks              |
        | does-not-come-back |

    Scenario Outline: strokes and miles not in order
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler seen strokes-and-miles <found>
      And oil/hand-oiler tried hand-oiler oil-with-each-stroke
      Then oil.hand-oiler is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found   |
        | unknown |

    Scenario: nothing recorded
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      Then oil.hand-oiler is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: hand oiler not recorded
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler seen strokes-and-miles on-the-tank-or-card
      Then oil.hand-oiler is missing

    Scenario: hand oiler looked at and not tried
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler seen strokes-and-miles on-the-tank-or-card
      And oil/hand-oiler seen hand-oiler oil-with-each-stroke
      Then oil.hand-oiler is missing

    Scenario: hand oiler known only from hearsay
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler seen strokes-and-miles on-the-tank-or-card
      And oil/hand-oiler told hand-oiler oil-with-each-stroke
      Then oil.hand-oiler is missing

    Scenario: strokes and miles not recorded
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler tried hand-oiler oil-with-each-stroke
      Then oil.hand-oiler is missing

    Scenario: strokes and miles known only from hearsay
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler tried hand-oiler oil-with-each-stroke
      And oil/hand-oiler told strokes-and-miles on-the-tank-or-card
      Then oil.hand-oiler is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler tried hand-oiler draws-air
      And oil/hand-oiler seen strokes-and-miles on-the-tank-or-card
      And tom wrote that oil/hand-oiler tried hand-oiler oil-with-each-stroke
      Then oil.hand-oiler is fault

    Scenario Outline: what was wrong, and was put right
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler tried hand-oiler <f0> 3 days ago
      And oil/hand-oiler seen strokes-and-miles <f1> 3 days ago
      And <place> was <work> 2 days ago
      And oil/hand-oiler tried hand-oiler oil-with-each-stroke 1 day ago
      And oil/hand-oiler seen strokes-and-miles on-the-tank-or-card 1 day ago
      Then oil.hand-oiler is <state>

      Examples:
        | f0        | f1                  | place          | work      | state |
        | draws-air | on-the-tank-or-card | oil            | topped-up | met   |
        | leaks     | on-the-tank-or-card | oil            | topped-up | fault |
        | leaks     | on-the-tank-or-card | oil/hand-oiler | repaired  | met   |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler tried hand-oiler oil-with-each-stroke
      And oil/hand-oiler seen strokes-and-miles on-the-tank-or-card
      And <point> was <work>
      Then oil.hand-oiler is stale

      Examples:
        | point          | work    |
        | oil/hand-oiler | opened  |
        | oil            | drained |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler tried hand-oiler oil-with-each-stroke
      And oil/hand-oiler seen strokes-and-miles on-the-tank-or-card
      And <point> was <work>
      Then oil.hand-oiler is met

      Examples:
        | point       | work    |
        | front-wheel | removed |

    Scenario: does not apply to a machine without one
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then oil.hand-oiler is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And a machine ready for first-start
      And nothing is written for oil.hand-oiler
      Then the first-start is blocked by oil.hand-oiler alone

    Scenario Outline: how long the trial is valid
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part hand-oiler
      And oil/hand-oiler tried hand-oiler oil-with-each-stroke <ago> days ago
      And oil/hand-oiler seen strokes-and-miles on-the-tank-or-card
      Then oil.hand-oiler is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

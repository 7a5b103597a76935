Feature: A gearbox with oil of its own beside a wet sump
  A wet sump says where the engine keeps its oil, and nothing of the gearbox. Where that has oil of its own and nobody looks, it runs dry.

  @oil.gearbox-kind
  Rule: Somebody has looked whether the gearbox shares the engine's oil

    Scenario Outline: one way or the other
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox seen gearbox-oil-kind <found>
      Then oil.gearbox-kind is <state>

      Examples:
        | found              | state |
        | shared-with-engine | met   |
        | of-its-own         | met   |
        | no-gearbox         | met   |
        | unknown            | fault |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      Then oil.gearbox-kind is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the seller said so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox told gearbox-oil-kind shared-with-engine
      Then oil.gearbox-kind is missing

    Scenario: not known, and looked up since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox seen gearbox-oil-kind unknown 2 days ago
      And transmission/gearbox seen gearbox-oil-kind shared-with-engine 1 day ago
      Then oil.gearbox-kind is met

    Scenario: it holds as long as the gearbox stays
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox seen gearbox-oil-kind shared-with-engine 40 months ago
      Then oil.gearbox-kind is met

    Scenario: another gearbox
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox seen gearbox-oil-kind shared-with-engine 2 days ago
      And transmission/gearbox was replaced 1 day ago
      Then oil.gearbox-kind is stale

    Scenario: opened and closed, it is the same gearbox
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox seen gearbox-oil-kind shared-with-engine 2 days ago
      And transmission/gearbox was opened 1 day ago
      Then oil.gearbox-kind is met

    Scenario: does not apply to a two-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.gearbox-kind is not applicable

    Scenario: does not apply to a dry sump, whose gearbox is asked for its oil anyway
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      Then oil.gearbox-kind is not applicable

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the record is a job-record/1
      Then oil.gearbox-kind is not applicable

    Scenario: not looked at, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And a machine ready for first-start
      And nothing is written for oil.gearbox-kind
      Then the first-start is blocked by oil.gearbox-kind alone

  @oil.gearbox @oil.gearbox-age
  Rule: Oil of its own is asked for

    Scenario: it has oil of its own, and nobody looked at it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox seen gearbox-oil-kind of-its-own
      Then oil.gearbox is missing
      And oil.gearbox-age is missing

    Scenario Outline: it shares the oil of the engine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox seen gearbox-oil-kind <found>
      Then oil.gearbox is not applicable
      And oil.gearbox-age is not applicable

      Examples:
        | found              |
        | shared-with-engine |
        | no-gearbox         |

    Scenario: the oil of its own is low
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox seen gearbox-oil-kind of-its-own
      And transmission/gearbox/oil seen gearbox-oil-level low
      And transmission/gearbox/oil seen gearbox-oil-look clean
      Then oil.gearbox is fault
      And the first-start is blocked

    Scenario: somebody was told that it has oil of its own
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox told gearbox-oil-kind of-its-own
      Then oil.gearbox is not applicable
      And oil.gearbox-kind is missing

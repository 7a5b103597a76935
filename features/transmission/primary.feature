Feature: Primary drive
  Before a gearbox in a case of its own lies a chain or belt in a case that nobody opens for years. One that is tight or worn breaks,
  jams the clutch and locks the rear wheel; one without oil wears in a summer.

  @transmission.primary
  Rule: The primary drive plays right all round, and its case has the oil it needs

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/primary tried primary-drive <drive>
      And transmission/primary seen primary-oil <oil>
      Then transmission.primary is met
      And it holds until 2027-05-25

      Examples:
        | drive          | oil          |
        | even-and-right | at-the-level |
        | even-and-right | runs-dry     |
        | made-without   | made-without |

    Scenario Outline: the drive is not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/primary tried primary-drive <found>
      And transmission/primary seen primary-oil at-the-level
      Then transmission.primary is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found   |
        | slack   |
        | tight   |
        | uneven  |
        | worn    |
        | cracked |
        | rubs    |

    Scenario Outline: the oil of its case is not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/primary tried primary-drive even-and-right
      And transmission/primary seen primary-oil <found>
      Then transmission.primary is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found        |
        | low          |
        | empty        |
        | over-full    |
        | milky        |
        | metal-inside |

    Scenario: nobody opened the case
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      Then transmission.primary is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: tried, and nobody looked for oil
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/primary tried primary-drive even-and-right
      Then transmission.primary is missing

    Scenario: looked at, and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/primary seen primary-drive even-and-right
      And transmission/primary seen primary-oil at-the-level
      Then transmission.primary is missing

    Scenario: the oil is known from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/primary tried primary-drive even-and-right
      And transmission/primary told primary-oil at-the-level
      Then transmission.primary is missing

    Scenario: total loss
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by total-loss
      Then transmission.primary is missing

    Scenario: a wet sump before a gearbox with oil of its own
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox seen gearbox-oil-kind of-its-own
      Then transmission.primary is missing

    Scenario: a wet sump whose oil the gearbox shares
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And transmission/gearbox seen gearbox-oil-kind shared-with-engine
      Then transmission.primary is not applicable

    Scenario: does not apply to a two-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then transmission.primary is not applicable

    Scenario Outline: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And <kind>
      And the record is a job-record/1
      Then transmission.primary is not applicable

      Examples:
        | kind                                                  |
        | the engine is oiled by dry-sump                       |
        | transmission/gearbox seen gearbox-oil-kind of-its-own |

    Scenario: reading it again is no cure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/primary tried primary-drive tight
      And transmission/primary seen primary-oil at-the-level
      And tom wrote that transmission/primary tried primary-drive even-and-right
      Then transmission.primary is fault

    Scenario Outline: what was wrong, and was put right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/primary tried primary-drive <drive> 3 days ago
      And transmission/primary seen primary-oil <oil> 3 days ago
      And <place> was <work> 2 days ago
      And transmission/primary tried primary-drive even-and-right 1 day ago
      And transmission/primary seen primary-oil at-the-level 1 day ago
      Then transmission.primary is <state>

      Examples:
        | drive          | oil          | place                | work      | state |
        | slack          | at-the-level | transmission/gearbox | adjusted  | met   |
        | tight          | at-the-level | transmission/gearbox | adjusted  | met   |
        | worn           | at-the-level | transmission/gearbox | adjusted  | fault |
        | uneven         | at-the-level | transmission/gearbox | adjusted  | fault |
        | worn           | at-the-level | transmission/primary | replaced  | met   |
        | even-and-right | low          | transmission/primary | filled    | met   |
        | even-and-right | empty        | transmission/primary | topped-up | met   |
        | even-and-right | over-full    | transmission/primary | drained   | met   |
        | even-and-right | milky        | transmission/primary | filled    | met   |
        | even-and-right | metal-inside | transmission/primary | filled    | fault |
        | worn           | at-the-level | transmission/primary | filled    | fault |
        | even-and-right | metal-inside | transmission/primary | repaired  | met   |

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/primary tried primary-drive even-and-right <ago> months ago
      And transmission/primary seen primary-oil at-the-level <ago> months ago
      Then transmission.primary is <state>

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/primary tried primary-drive even-and-right
      And transmission/primary seen primary-oil at-the-level
      And <point> was <work>
      Then transmission.primary is stale

      Examples:
        | point                | work      |
        | transmission/primary | opened    |
        | transmission/primary | drained   |
        | transmission/primary | filled    |
        | transmission/primary | topped-up |
        | transmission/clutch  | opened    |
        | transmission/gearbox | adjusted  |
        | transmission/gearbox | removed   |
        | engine/crankcase     | opened    |

    Scenario: what was opened was not the primary case
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/primary tried primary-drive even-and-right
      And transmission/primary seen primary-oil at-the-level
      And transmission/sprockets/rear was replaced
      Then transmission.primary is met

    Scenario: the case was opened: the clutch is tried again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And transmission/clutch tried clutch-drag lets-go-and-holds
      And transmission/primary was opened
      Then transmission.clutch-drag is stale

    Scenario: not looked at, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine is oiled by dry-sump
      And a machine ready for road-test
      And nothing is written for transmission.primary
      Then the road-test is blocked by transmission.primary alone

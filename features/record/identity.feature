Feature: Is it the machine the papers speak of?

  @record.identity
  Rule: Frame and engine number are read from the machine and are those of the papers

    Scenario: both read, both the same
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen number TB25-10382
      And frame seen number-in-papers TB25 10382
      And engine seen number tb25e-10395
      And engine seen number-in-papers TB25E-10395
      Then record.identity is met
      And it says "number TB25-10382 read from the machine and in the papers"
      And it does not lapse by itself

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen number TB25-10382
      And there was the defect "not as it should be"
      And frame seen number-in-papers TB25 10382
      And engine seen number tb25e-10395
      And engine seen number-in-papers TB25E-10395
      And tom wrote that frame seen number TB25-10382
      Then record.identity is fault

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen number TB25-10382
      And frame told number-in-papers TB25 10382
      And engine seen number tb25e-10395
      And engine told number-in-papers TB25E-10395
      Then record.identity is missing

    Scenario Outline: a number that is not that of the papers
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen number <read>
      And engine seen number-in-papers <papers>
      Then record.identity is <state> at engine
      And it says "the machine says <read>, the papers say <papers>, and this record says TB25E-10395"

      Examples:
        | read        | papers      | state |
        | TB25E-10396 | TB25E-10395 | fault |
        | TB25E-10395 | TB25E-10359 | fault |
        | TB25E-10396 | TB25E-10396 | fault |
        | illegible   | TB25E-10395 | fault |
        | none        | TB25E-10395 | fault |

    Scenario: an engine that never had a number
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has no number
      And engine seen number none
      And engine seen number-in-papers none
      Then record.identity is met at engine

    Scenario: copied from the papers and never looked for on the machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen number-in-papers TB25-10382
      Then record.identity is missing at frame
      And it says "number was never looked at"
      And it holds first-start, indoor-run, road-test, on-show, hand-over, non-runner and no other gate

    Scenario: read out over the telephone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame told number TB25-10382
      And frame seen number-in-papers TB25-10382
      Then record.identity is missing at frame

    Scenario: an engine out and in again keeps its number, another engine does not
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen number TB25E-10395 3 days ago
      And engine seen number-in-papers TB25E-10395 3 days ago
      And engine was removed 2 days ago
      And engine was refitted 1 day ago
      Then record.identity is met at engine

    Scenario: another engine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine seen number TB25E-10395 3 days ago
      And engine seen number-in-papers TB25E-10395 3 days ago
      And engine was replaced 2 days ago
      Then record.identity is stale at engine

    Scenario: a part of another year is no fault, and the next owner hears of it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen number TB25-10382
      And frame seen number-in-papers TB25-10382
      And machine seen part-of-another-year tank and side panels of 1976
      Then record.identity is met at frame
      And it notes "the next owner is to know: tank and side panels of 1976"

    Scenario: bought in without a record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the history is unknown
      And frame seen number TB25-10382
      And frame seen number-in-papers TB25-10382
      Then record.identity is met at frame
      And it notes "every kind of work counts as done before the first entry, date unknown"

    Scenario Outline: taken apart and mended, it keeps its number
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <part> seen number <number>
      And <part> seen number-in-papers <number>
      And <part> was <work>
      Then record.identity is met at <part>

      Examples:
        | part   | number      | work     |
        | frame  | TB25-10382  | removed  |
        | frame  | TB25-10382  | refitted |
        | frame  | TB25-10382  | opened   |
        | frame  | TB25-10382  | stripped |
        | frame  | TB25-10382  | repaired |
        | engine | TB25E-10395 | opened   |
        | engine | TB25E-10395 | stripped |
        | engine | TB25E-10395 | repaired |

  @record.territory
  Rule: It is known where the machine will be ridden, and the law there is in the rule book

    Scenario: a territory with a local code
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-VA
      Then record.territory is met
      And it says "to be ridden in US-VA, under the law of"

    Scenario: a country without a local code here
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is JP
      Then record.territory is missing
      And it says "this rule book holds no local code for JP"
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario Outline: the law of a union is not the law of its parts
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      Then record.territory is missing
      And it says "this rule book holds no local code for <territory>, only that of <union>"

      Examples:
        | territory | union               |
        | IT        | European Union (EU) |
        | AT        | European Union (EU) |
        | US-OH     | United States (US)  |
        | US        | United States (US)  |

    Scenario: Northern Ireland has regulations of its own
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is GB-NIR
      Then record.territory is missing
      And it says "this rule book holds no local code for GB-NIR"

    Scenario Outline: parts of a country whose law is loaded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <territory>
      Then record.territory is met

      Examples:
        | territory |
        | GB-SCT    |
        | DE-BY     |

    Scenario Outline: a code that is no country's
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is <code>
      Then record.territory is fault
      And it says "<code> is no country's code"

      Examples:
        | code  |
        | UK    |
        | EU    |
        | XX-12 |

Feature: Rider and papers
  What the rider declares is written down and not judged; what the rider wears is looked at.

  @roadtest.rider-licensed
  Rule: The rider declares a licence for the class

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rider told licence declared
      Then roadtest.rider-licensed is met at rider

    Scenario: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rider told licence none
      Then roadtest.rider-licensed is fault at rider

    Scenario: nobody said
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.rider-licensed is missing at rider
      And it holds road-test and no other gate
      And it is not safety-critical

    Scenario: somebody takes it for granted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rider assumed licence declared
      Then roadtest.rider-licensed is missing at rider

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rider told licence declared <ago> days ago
      Then roadtest.rider-licensed is <state> at rider

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario: declared is not judged
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rider told licence declared
      Then roadtest.rider-licensed is met
      And it notes "declared by the rider and not judged here"

  @roadtest.insured
  Rule: Machine and ride are declared insured

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told insurance declared
      Then roadtest.insured is met at ride

    Scenario: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told insurance none
      Then roadtest.insured is fault at ride

    Scenario: nobody said
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.insured is missing at ride
      And it holds road-test and no other gate
      And it is not safety-critical

    Scenario: somebody takes it for granted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride assumed insurance declared
      Then roadtest.insured is missing at ride

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told insurance declared <ago> days ago
      Then roadtest.insured is <state> at ride

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario: declared is not judged
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told insurance declared
      Then roadtest.insured is met
      And it notes "declared and not judged here"

  @roadtest.registered
  Rule: The machine is declared registered, or goes under a trade plate

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told road-papers <found>
      Then roadtest.registered is met at ride

      Examples:
        | found       |
        | registered  |
        | trade-plate |

    Scenario: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told road-papers none
      Then roadtest.registered is fault at ride

    Scenario: nobody said
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.registered is missing at ride
      And it holds road-test and no other gate
      And it is not safety-critical

    Scenario: somebody takes it for granted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride assumed road-papers registered
      Then roadtest.registered is missing at ride

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told road-papers registered <ago> days ago
      Then roadtest.registered is <state> at ride

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario Outline: declared is not judged
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told road-papers <papers>
      Then roadtest.registered is met
      And it notes "<note>"

      Examples:
        | papers      | note                                        |
        | registered  | the registration is declared                |
        | trade-plate | for the business of the plate's holder only |

  @roadtest.protective-gear
  Rule: The rider is dressed for a fall

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rider seen gear complete
      Then roadtest.protective-gear is met at rider

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rider seen gear <found>
      Then roadtest.protective-gear is fault at rider

      Examples:
        | found       |
        | no-helmet   |
        | no-gloves   |
        | no-boots    |
        | no-jacket   |
        | no-trousers |
        | damaged     |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.protective-gear is missing at rider
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rider told gear complete
      Then roadtest.protective-gear is missing at rider

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rider seen gear complete <ago> days ago
      Then roadtest.protective-gear is <state> at rider

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

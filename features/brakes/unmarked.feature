Feature: Disc and drum without a figure
  No figure on the part: the book of its maker, read by two, or its unworn part, measured by two.

  @brakes.disc-unmarked
  Rule: A disc without a figure of its own is held against its maker's book

    Scenario: good by the book
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is met
      And it holds until 2027-11-25
      And brakes.disc-thickness is not applicable
      And brakes.disc-wear is not applicable

    Scenario: worn by the book
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.40 mm ± 0.01 mm
      Then brakes.disc-unmarked is fault
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: on both sides of the figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness <value>
      Then brakes.disc-unmarked is <state>

      # the limit is the figure of the book itself
      Examples:
        | value             | state |
        | 4.49 mm ± 0.01 mm | fault |
        | 4.50 mm ± 0.01 mm | doubt |
        | 4.51 mm ± 0.01 mm | doubt |
        | 4.52 mm ± 0.01 mm | met   |

    Scenario: one person alone read the book
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And nobody else has read the maker's figures
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is missing
      And it says "nobody seconds it"

    Scenario: one person read the book, and works alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And nobody else has read the maker's figures
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is met
      And it notes "no figure on it; that of the maker's book was read by one person, who works alone"

    Scenario: nobody opened the book
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And no word from the maker on brakes.disc-unmarked
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is missing
      And brakes.disc-thickness is not applicable

    Scenario: no figure on it, by hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc told maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is missing

    Scenario: no figure on it, and nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      Then brakes.disc-unmarked is missing

    Scenario: the book does not do where nobody looked for a figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is not applicable
      And brakes.disc-thickness is missing

    Scenario: a figure was read, and somebody finds none legible: both are asked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen minimum-mark 4.5 mm
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.40 mm ± 0.01 mm
      Then brakes.disc-thickness is fault
      And brakes.disc-unmarked is fault

    Scenario: a figure read on it was none: corrected by another
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen minimum-mark 4.5 mm
      And front-brake/disc was replaced
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is met
      And brakes.disc-thickness is not applicable

    Scenario: another disc is looked over anew
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      And front-brake/disc was replaced
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-thickness is missing
      And brakes.disc-unmarked is not applicable

    Scenario: another good reading does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.40 mm ± 0.01 mm
      And tom wrote that front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is fault

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible <ago> months ago
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm <ago> months ago
      Then brakes.disc-unmarked is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

  @brakes.disc-wear
  Rule: A disc for which nobody has a figure is held against its unworn part

    Scenario: little lost, and two people measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      Then brakes.disc-wear is met
      And it notes "no figure on it and none in its maker's book: it was measured against its unworn part, and the new owner is to know"
      And it holds until 2027-11-25
      And brakes.disc-thickness is not applicable
      And brakes.disc-unmarked is not applicable

    Scenario: much lost
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And front-brake/disc measured thickness 4.30 mm ± 0.01 mm
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      Then brakes.disc-wear is fault
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And front-brake/disc measured thickness <value>
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      Then brakes.disc-wear is <state>

      # common practice; U of the difference is 0.014 mm
      Examples:
        | value             | state |
        | 4.47 mm ± 0.01 mm | fault |
        | 4.50 mm ± 0.01 mm | doubt |
        | 4.51 mm ± 0.01 mm | doubt |
        | 4.52 mm ± 0.01 mm | met   |

    Scenario: one person measured both
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      And front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      Then brakes.disc-wear is missing
      And it says "nobody else has measured either"

    Scenario: one person measured both, and it is worn
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And front-brake/disc measured thickness 4.40 mm ± 0.01 mm
      And front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      Then brakes.disc-wear is fault
      And it holds road-test, hand-over and no other gate

    Scenario: who works alone may measure both
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake/disc seen maker-mark none-legible
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      And front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      Then brakes.disc-wear is met

    Scenario: nobody measured where it is unworn
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-wear is missing

    Scenario: trying is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      And tom wrote that front-brake/disc tried unworn-thickness 5.00 mm
      Then brakes.disc-wear is missing

    Scenario: not asked of one with a figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      Then brakes.disc-wear is not applicable
      And brakes.disc-thickness is missing

    Scenario: a second reading that contradicts the first ends no fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And front-brake/disc measured thickness 4.30 mm ± 0.01 mm
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-wear is fault

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible <ago> months ago
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm <ago> months ago
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm <ago> months ago
      Then brakes.disc-wear is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

  @brakes.drum-unmarked
  Rule: A drum without a figure of its own is held against its maker's book

    Scenario: good by the book
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is met
      And it holds until 2027-11-25
      And brakes.drum-bore is not applicable
      And brakes.drum-wear is not applicable

    Scenario: worn by the book
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 161.20 mm ± 0.01 mm
      Then brakes.drum-unmarked is fault
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: on both sides of the figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore <value>
      Then brakes.drum-unmarked is <state>

      # the limit is the figure of the book itself
      Examples:
        | value               | state |
        | 161.01 mm ± 0.01 mm | fault |
        | 161.00 mm ± 0.01 mm | doubt |
        | 160.99 mm ± 0.01 mm | doubt |
        | 160.98 mm ± 0.01 mm | met   |

    Scenario: one person alone read the book
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And nobody else has read the maker's figures
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is missing
      And it says "nobody seconds it"

    Scenario: one person read the book, and works alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And nobody else has read the maker's figures
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is met
      And it notes "no figure on it; that of the maker's book was read by one person, who works alone"

    Scenario: nobody opened the book
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And no word from the maker on brakes.drum-unmarked
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is missing
      And brakes.drum-bore is not applicable

    Scenario: no figure on it, by hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum told maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is missing

    Scenario: no figure on it, and nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      Then brakes.drum-unmarked is missing

    Scenario: the book does not do where nobody looked for a figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is not applicable
      And brakes.drum-bore is missing

    Scenario: a figure was read, and somebody finds none legible: both are asked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maximum-mark 161.0 mm
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 161.20 mm ± 0.01 mm
      Then brakes.drum-bore is fault
      And brakes.drum-unmarked is fault

    Scenario: a figure read on it was none: corrected by another
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maximum-mark 161.0 mm
      And rear-brake/drum was replaced
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is met
      And brakes.drum-bore is not applicable

    Scenario: another drum is looked over anew
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      And rear-brake/drum was replaced
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-bore is missing
      And brakes.drum-unmarked is not applicable

    Scenario: another good reading does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 161.20 mm ± 0.01 mm
      And tom wrote that rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is fault

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible <ago> months ago
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm <ago> months ago
      Then brakes.drum-unmarked is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

  @brakes.drum-wear
  Rule: A drum for which nobody has a figure is held against its unworn part

    Scenario: little lost, and two people measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      Then brakes.drum-wear is met
      And it notes "no figure on it and none in its maker's book: it was measured against its unworn part, and the new owner is to know"
      And it holds until 2027-11-25
      And brakes.drum-bore is not applicable
      And brakes.drum-unmarked is not applicable

    Scenario: much lost
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And rear-brake/drum measured bore 161.20 mm ± 0.01 mm
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      Then brakes.drum-wear is fault
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And rear-brake/drum measured bore <value>
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      Then brakes.drum-wear is <state>

      # common practice; U of the difference is 0.014 mm
      Examples:
        | value               | state |
        | 160.73 mm ± 0.01 mm | fault |
        | 160.70 mm ± 0.01 mm | doubt |
        | 160.69 mm ± 0.01 mm | doubt |
        | 160.68 mm ± 0.01 mm | met   |

    Scenario: one person measured both
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      And rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      Then brakes.drum-wear is missing
      And it says "nobody else has measured either"

    Scenario: one person measured both, and it is worn
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And rear-brake/drum measured bore 160.90 mm ± 0.02 mm
      And rear-brake/drum measured unworn-bore 160.00 mm ± 0.02 mm
      Then brakes.drum-wear is fault
      And it holds road-test, hand-over and no other gate

    Scenario: who works alone may measure both
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And rear-brake/drum seen maker-mark none-legible
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      And rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      Then brakes.drum-wear is met

    Scenario: nobody measured where it is unworn
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-wear is missing

    Scenario: trying is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      And tom wrote that rear-brake/drum tried unworn-bore 160.00 mm
      Then brakes.drum-wear is missing

    Scenario: not asked of one with a figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      Then brakes.drum-wear is not applicable
      And brakes.drum-bore is missing

    Scenario: a second reading that contradicts the first ends no fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And rear-brake/drum measured bore 161.20 mm ± 0.01 mm
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-wear is fault

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible <ago> months ago
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm <ago> months ago
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm <ago> months ago
      Then brakes.drum-wear is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

  @brakes.disc-unmarked
  Rule: What is asked of a disc held against the book

    Scenario: it was not measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      Then brakes.disc-unmarked is missing
      And it holds road-test, hand-over and no other gate

    Scenario: trying it is no measuring
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc tried thickness 4.70 mm
      Then brakes.disc-unmarked is missing

    Scenario: looked over thirteen months ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible 13 months ago
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is stale

    Scenario: the place of the figure is covered
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible 4 days ago
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      And front-brake/disc seen maker-mark covered
      Then brakes.disc-unmarked is fault

    Scenario: cleaned, and looked over again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible 4 days ago
      And front-brake/disc seen maker-mark covered 3 days ago
      And front-brake/disc was cleaned 2 days ago
      And front-brake/disc seen maker-mark none-legible 1 day ago
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is met

    Scenario: measured again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible 4 days ago
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.40 mm ± 0.01 mm 2 days ago
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-unmarked is fault

    Scenario: worn, on a machine ready for the road test
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for brakes.disc-thickness
      And front-brake/disc seen maker-mark none-legible
      And the maker says brakes.disc-unmarked at least 4.5 mm
      And front-brake/disc measured thickness 4.40 mm ± 0.01 mm
      Then brakes.disc-unmarked is fault
      And for road-test front-brake/disc is to be replaced first

  @brakes.drum-unmarked
  Rule: What is asked of a drum held against the book

    Scenario: it was not measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      Then brakes.drum-unmarked is missing
      And it holds road-test, hand-over and no other gate

    Scenario: trying it is no measuring
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum tried bore 160.40 mm
      Then brakes.drum-unmarked is missing

    Scenario: looked over thirteen months ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible 13 months ago
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is stale

    Scenario: the place of the figure is covered
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible 4 days ago
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      And rear-brake/drum seen maker-mark covered
      Then brakes.drum-unmarked is fault

    Scenario: cleaned, and looked over again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible 4 days ago
      And rear-brake/drum seen maker-mark covered 3 days ago
      And rear-brake/drum was cleaned 2 days ago
      And rear-brake/drum seen maker-mark none-legible 1 day ago
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is met

    Scenario: measured again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible 4 days ago
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 161.40 mm ± 0.01 mm 2 days ago
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is fault

    Scenario: worn, on a machine ready for the road test
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for brakes.drum-bore
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161.0 mm
      And rear-brake/drum measured bore 161.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is fault
      And for road-test rear-brake/drum is to be replaced first

  @brakes.disc-wear
  Rule: What is asked of a disc held against its unworn part

    Scenario: it was not measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      Then brakes.disc-wear is missing
      And it holds road-test, hand-over and no other gate

    Scenario: trying it is no measuring
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      And front-brake/disc tried thickness 4.70 mm
      Then brakes.disc-wear is missing

    Scenario: looked over thirteen months ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible 13 months ago
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-wear is stale

    Scenario: the place of the figure is covered
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible 4 days ago
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      And front-brake/disc seen maker-mark covered
      Then brakes.disc-wear is fault

    Scenario: cleaned, and looked over again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible 4 days ago
      And front-brake/disc seen maker-mark covered 3 days ago
      And front-brake/disc was cleaned 2 days ago
      And front-brake/disc seen maker-mark none-legible 1 day ago
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-wear is met

    Scenario: measured again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen maker-mark none-legible 4 days ago
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm 2 days ago
      And front-brake/disc measured thickness 4.40 mm ± 0.01 mm 2 days ago
      And front-brake/disc measured thickness 4.70 mm ± 0.01 mm
      Then brakes.disc-wear is fault

    Scenario: worn, on a machine ready for the road test
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for brakes.disc-thickness
      And front-brake/disc seen maker-mark none-legible
      And tom wrote that front-brake/disc measured unworn-thickness 5.00 mm ± 0.01 mm
      And front-brake/disc measured thickness 4.40 mm ± 0.01 mm
      Then brakes.disc-wear is fault
      And for road-test front-brake/disc is to be replaced first

  @brakes.drum-wear
  Rule: What is asked of a drum held against its unworn part

    Scenario: it was not measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      Then brakes.drum-wear is missing
      And it holds road-test, hand-over and no other gate

    Scenario: trying it is no measuring
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      And rear-brake/drum tried bore 160.40 mm
      Then brakes.drum-wear is missing

    Scenario: looked over thirteen months ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible 13 months ago
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-wear is stale

    Scenario: the place of the figure is covered
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible 4 days ago
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      And rear-brake/drum seen maker-mark covered
      Then brakes.drum-wear is fault

    Scenario: cleaned, and looked over again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible 4 days ago
      And rear-brake/drum seen maker-mark covered 3 days ago
      And rear-brake/drum was cleaned 2 days ago
      And rear-brake/drum seen maker-mark none-legible 1 day ago
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-wear is met

    Scenario: measured again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible 4 days ago
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm 2 days ago
      And rear-brake/drum measured bore 161.40 mm ± 0.01 mm 2 days ago
      And rear-brake/drum measured bore 160.40 mm ± 0.01 mm
      Then brakes.drum-wear is fault

    Scenario: worn, on a machine ready for the road test
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for brakes.drum-bore
      And rear-brake/drum seen maker-mark none-legible
      And tom wrote that rear-brake/drum measured unworn-bore 160.00 mm ± 0.01 mm
      And rear-brake/drum measured bore 161.40 mm ± 0.01 mm
      Then brakes.drum-wear is fault
      And for road-test rear-brake/drum is to be replaced first

  @brakes.drum-unmarked
  Rule: A figure far above the bore is not that of this drum

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most <figure>
      And rear-brake/drum measured bore 160.00 mm ± 0.01 mm
      Then brakes.drum-unmarked is <state>

      # common practice, from memory
      Examples:
        | figure    | state   |
        | 161.00 mm | met     |
        | 161.50 mm | met     |
        | 161.51 mm | missing |
        | 200.00 mm | missing |

    Scenario: it says why
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 200 mm
      And rear-brake/drum measured bore 160.00 mm ± 0.01 mm
      Then brakes.drum-unmarked is missing
      And it says "200 mm, is more than 1.5 mm above this bore"

    Scenario: nor does it make a worn drum better
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen maker-mark none-legible
      And the maker says brakes.drum-unmarked at most 161 mm
      And rear-brake/drum measured bore 161.40 mm ± 0.01 mm
      Then brakes.drum-unmarked is fault

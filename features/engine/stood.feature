Feature: An engine that stood
  Before an engine that stood for years is turned, somebody looks where mice nest, what drives the camshafts and what the
  mounts are like, and lets the old coolant out. Of a machine that came in running nothing of this is asked.

  @engine.nests
  Rule: Air box and exhaust are clear

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/intake seen intake-way clear
      And exhaust seen exhaust-way <found>
      Then engine.nests is met

      Examples:
        | found |
        | clear |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/intake seen intake-way clear
      And exhaust seen exhaust-way <found>
      Then engine.nests is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found   |
        | nest    |
        | blocked |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then engine.nests is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/intake seen intake-way clear
      And exhaust told exhaust-way clear
      Then engine.nests is missing

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/intake seen intake-way clear
      And exhaust seen exhaust-way nest
      And tom wrote that exhaust seen exhaust-way clear
      Then engine.nests is fault

    Scenario: nest, and cleaned
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/intake seen intake-way clear
      And exhaust seen exhaust-way nest 3 days ago
      And exhaust was cleaned 2 days ago
      And engine/intake seen intake-way clear
      And exhaust seen exhaust-way clear 1 day ago
      Then engine.nests is met

    Scenario: looked at once, and left alone since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/intake seen intake-way clear 20 months ago
      And exhaust seen exhaust-way clear 20 months ago
      Then engine.nests is met
      And it does not lapse by itself

    Scenario Outline: how long it stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since <since>
      And controls/grips tried grips tight-and-whole
      Then engine.nests is <state>

      # 3 months: common practice
      Examples:
        | since      | state          |
        | 2026-08-24 | missing        |
        | 2026-08-25 | not applicable |
        | unknown    | missing        |
        | no         | not applicable |

    Scenario: a machine that is not said to have stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips tight-and-whole
      Then engine.nests is not applicable

    Scenario: an electric machine has none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then engine.nests is not applicable

    Scenario: not looked at on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And a machine ready for road-test
      And nothing is written for engine.nests
      Then the road-test is blocked by engine.nests alone

    Scenario Outline: the way in is not clear
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And exhaust seen exhaust-way clear
      And engine/intake seen intake-way <found>
      Then engine.nests is fault

      Examples:
        | found      |
        | mouse-nest |
        | stuffed    |

    Scenario: a nest before the carburettor, and cleaned
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And exhaust seen exhaust-way clear
      And engine/intake seen intake-way mouse-nest 3 days ago
      And engine/intake was cleaned 2 days ago
      And engine/intake seen intake-way clear 1 day ago
      Then engine.nests is met

    Scenario: cleaned at one end, and the nest is at the other
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And exhaust seen exhaust-way nest 3 days ago
      And engine/intake was cleaned 2 days ago
      And engine/intake seen intake-way clear 1 day ago
      And exhaust seen exhaust-way clear 1 day ago
      Then engine.nests is fault

    Scenario: nobody looked into the air box
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And exhaust seen exhaust-way clear
      Then engine.nests is missing

  @engine.mount-rubbers
  Rule: The rubbers of the engine mounts are supple

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/mounts seen mount-rubbers <found>
      Then engine.mount-rubbers is met
      And it holds until 2027-11-25

      Examples:
        | found            |
        | supple-and-whole |
        | none-fitted      |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/mounts seen mount-rubbers <found>
      Then engine.mount-rubbers is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found      |
        | cracked    |
        | hard       |
        | oil-soaked |
        | parted     |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then engine.mount-rubbers is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/mounts told mount-rubbers supple-and-whole
      Then engine.mount-rubbers is missing

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/mounts seen mount-rubbers cracked
      And tom wrote that engine/mounts seen mount-rubbers supple-and-whole
      Then engine.mount-rubbers is fault

    Scenario: hard, and replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/mounts seen mount-rubbers hard 3 days ago
      And engine/mounts was replaced 2 days ago
      And engine/mounts seen mount-rubbers supple-and-whole 1 day ago
      Then engine.mount-rubbers is met

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/mounts seen mount-rubbers supple-and-whole <ago> months ago
      Then engine.mount-rubbers is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario: engine/mounts was replaced since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And engine/mounts seen mount-rubbers supple-and-whole
      And engine/mounts was replaced
      Then engine.mount-rubbers is stale

    Scenario Outline: how long it stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since <since>
      And controls/grips tried grips tight-and-whole
      Then engine.mount-rubbers is <state>

      # 24 months: common practice
      Examples:
        | since      | state          |
        | 2024-11-24 | missing        |
        | 2024-11-25 | not applicable |
        | unknown    | missing        |
        | no         | not applicable |

    Scenario: a machine that is not said to have stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/grips tried grips tight-and-whole
      Then engine.mount-rubbers is not applicable

    Scenario: not looked at on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And a machine ready for road-test
      And nothing is written for engine.mount-rubbers
      Then the road-test is blocked by engine.mount-rubbers alone

  @engine.cam-drive
  Rule: A belt that drives camshafts is a new one

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And it stood since 1998
      And engine/cam-drive seen cam-drive <found>
      Then engine.cam-drive is met

      Examples:
        | found          |
        | chain-or-gears |
        | push-rods      |
        | new-belt       |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And it stood since 1998
      And engine/cam-drive seen cam-drive <found>
      Then engine.cam-drive is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found        |
        | old-belt     |
        | cracked-belt |
        | oily-belt    |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then engine.cam-drive is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And it stood since 1998
      And engine/cam-drive told cam-drive chain-or-gears
      Then engine.cam-drive is missing

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And it stood since 1998
      And engine/cam-drive seen cam-drive old-belt
      And tom wrote that engine/cam-drive seen cam-drive chain-or-gears
      Then engine.cam-drive is fault

    Scenario: old belt, and replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And it stood since 1998
      And engine/cam-drive seen cam-drive old-belt 3 days ago
      And engine/cam-drive was replaced 2 days ago
      And engine/cam-drive seen cam-drive chain-or-gears 1 day ago
      Then engine.cam-drive is met

    Scenario: looked at once, and left alone since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And it stood since 1998
      And engine/cam-drive seen cam-drive chain-or-gears 20 months ago
      Then engine.cam-drive is met
      And it does not lapse by itself

    Scenario: engine/cam-drive was replaced since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And it stood since 1998
      And engine/cam-drive seen cam-drive chain-or-gears
      And engine/cam-drive was replaced
      Then engine.cam-drive is stale

    Scenario Outline: how long it stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And it stood since <since>
      And controls/grips tried grips tight-and-whole
      Then engine.cam-drive is <state>

      # 24 months: common practice
      Examples:
        | since      | state          |
        | 2024-11-24 | missing        |
        | 2024-11-25 | not applicable |
        | unknown    | missing        |
        | no         | not applicable |

    Scenario: a machine that is not said to have stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And controls/grips tried grips tight-and-whole
      Then engine.cam-drive is not applicable

    Scenario: a two-stroke has no camshaft
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then engine.cam-drive is not applicable

    Scenario: not looked at on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And it stood since 1998
      And a machine ready for road-test
      And nothing is written for engine.cam-drive
      Then the road-test is blocked by engine.cam-drive alone

  @engine.coolant-renewed
  Rule: The coolant is renewed

    Scenario: renewed
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And it stood since 1998
      And engine/cooling was filled
      Then engine.coolant-renewed is met
      And it does not lapse by itself

    Scenario: nobody renewed it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then engine.coolant-renewed is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: topped up is not renewed
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And it stood since 1998
      And engine/cooling was topped-up
      Then engine.coolant-renewed is missing

    Scenario: let out again since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And it stood since 1998
      And engine/cooling was filled
      And engine/cooling was drained
      Then engine.coolant-renewed is stale

    Scenario Outline: how long it stood
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And it stood since <since>
      And controls/grips tried grips tight-and-whole
      Then engine.coolant-renewed is <state>

      # 24 months: common practice
      Examples:
        | since      | state          |
        | 2024-11-24 | missing        |
        | 2024-11-25 | not applicable |
        | unknown    | missing        |
        | no         | not applicable |

    Scenario: an engine cooled by air
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then engine.coolant-renewed is not applicable

    Scenario: an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And the engine is cooled by liquid
      And it stood since 1998
      And controls/grips tried grips tight-and-whole
      Then engine.coolant-renewed is not applicable

    Scenario: not renewed on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And it stood since 1998
      And a machine ready for road-test
      And nothing is written for engine.coolant-renewed
      Then the road-test is blocked by engine.coolant-renewed alone

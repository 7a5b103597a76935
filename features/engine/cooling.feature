Feature: Cooling by liquid
  With the engine cold the cap comes off and somebody looks in, presses every hose, and looks under the pump. Then the engine
  runs until the fan cuts in. An engine that loses its coolant seizes, and a hose that bursts scalds the rider.

  @engine.coolant
  Rule: The coolant stands at its mark

    Scenario Outline: coolant level in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-look clean
      And engine/cooling seen coolant-level <found>
      Then engine.coolant is met
      And it holds until 2026-12-25

      Examples:
        | found       |
        | at-the-mark |

    Scenario Outline: coolant level not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-look clean
      And engine/cooling seen coolant-level <found>
      Then engine.coolant is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found     |
        | low       |
        | empty     |
        | over-full |

    Scenario: coolant level not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-look clean
      Then engine.coolant is missing

    Scenario: coolant level known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-look clean
      And engine/cooling told coolant-level at-the-mark
      Then engine.coolant is missing

    Scenario Outline: coolant look not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark
      And engine/cooling seen coolant-look <found>
      Then engine.coolant is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found       |
        | rusty       |
        | oily        |
        | foaming     |
        | plain-water |

    Scenario: coolant look not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark
      Then engine.coolant is missing

    Scenario: coolant look known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark
      And engine/cooling told coolant-look clean
      Then engine.coolant is missing

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      Then engine.coolant is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-look clean
      And engine/cooling seen coolant-level low
      And tom wrote that engine/cooling seen coolant-level at-the-mark
      Then engine.coolant is fault

    Scenario: coolant level low, and filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-look clean 3 days ago
      And engine/cooling seen coolant-level low 3 days ago
      And engine/cooling was filled 2 days ago
      And engine/cooling seen coolant-look clean 1 day ago
      And engine/cooling seen coolant-level at-the-mark 1 day ago
      Then engine.coolant is met

    Scenario: coolant level empty, and topped-up
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-look clean 3 days ago
      And engine/cooling seen coolant-level empty 3 days ago
      And engine/cooling was topped-up 2 days ago
      And engine/cooling seen coolant-look clean 1 day ago
      And engine/cooling seen coolant-level at-the-mark 1 day ago
      Then engine.coolant is met

    Scenario: coolant level over full, and drained
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-look clean 3 days ago
      And engine/cooling seen coolant-level over-full 3 days ago
      And engine/cooling was drained 2 days ago
      And engine/cooling seen coolant-look clean 1 day ago
      And engine/cooling seen coolant-level at-the-mark 1 day ago
      Then engine.coolant is met

    Scenario: coolant look rusty, and filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark 3 days ago
      And engine/cooling seen coolant-look rusty 3 days ago
      And engine/cooling was filled 2 days ago
      And engine/cooling seen coolant-level at-the-mark 1 day ago
      And engine/cooling seen coolant-look clean 1 day ago
      Then engine.coolant is met

    Scenario: coolant look plain water, and filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark 3 days ago
      And engine/cooling seen coolant-look plain-water 3 days ago
      And engine/cooling was filled 2 days ago
      And engine/cooling seen coolant-level at-the-mark 1 day ago
      And engine/cooling seen coolant-look clean 1 day ago
      Then engine.coolant is met

    Scenario: coolant look foaming, and filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark 3 days ago
      And engine/cooling seen coolant-look foaming 3 days ago
      And engine/cooling was filled 2 days ago
      And engine/cooling seen coolant-level at-the-mark 1 day ago
      And engine/cooling seen coolant-look clean 1 day ago
      Then engine.coolant is met

    Scenario: coolant look oily, and filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark 3 days ago
      And engine/cooling seen coolant-look oily 3 days ago
      And engine/cooling was filled 2 days ago
      And engine/cooling seen coolant-level at-the-mark 1 day ago
      And engine/cooling seen coolant-look clean 1 day ago
      Then engine.coolant is fault

    Scenario: coolant look oily, and repaired
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark 3 days ago
      And engine/cooling seen coolant-look oily 3 days ago
      And engine/cooling was repaired 2 days ago
      And engine/cooling seen coolant-level at-the-mark 1 day ago
      And engine/cooling seen coolant-look clean 1 day ago
      Then engine.coolant is met

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark <ago> days ago
      And engine/cooling seen coolant-look clean <ago> days ago
      Then engine.coolant is <state>

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario: engine/cooling was opened since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark
      And engine/cooling seen coolant-look clean
      And engine/cooling was opened
      Then engine.coolant is stale

    Scenario: engine/cooling was drained since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark
      And engine/cooling seen coolant-look clean
      And engine/cooling was drained
      Then engine.coolant is stale

    Scenario: does not apply to an air-cooled engine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.coolant is not applicable

    Scenario: does not apply to an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And the engine is cooled by liquid
      Then engine.coolant is not applicable

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And the record is a job-record/1
      Then engine.coolant is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And a machine ready for road-test
      And nothing is written for engine.coolant
      Then the road-test is blocked by engine.coolant alone

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen coolant-level at-the-mark
      And engine/cooling seen coolant-look clean
      And <point> was <work>
      Then engine.coolant is stale

      Examples:
        | point          | work      |
        | engine/cooling | filled    |
        | engine/cooling | topped-up |

  @engine.cooling-tight
  Rule: Hoses, radiator, cap and pump are whole and tight

    Scenario Outline: coolant hoses in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump dry
      And engine/cooling tried coolant-hoses <found>
      Then engine.cooling-tight is met
      And it holds until 2027-05-25

      Examples:
        | found            |
        | supple-and-tight |

    Scenario Outline: coolant hoses not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump dry
      And engine/cooling tried coolant-hoses <found>
      Then engine.cooling-tight is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found      |
        | cracked    |
        | hard       |
        | soft       |
        | swollen    |
        | weeping    |
        | clip-loose |

    Scenario: coolant hoses not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump dry
      Then engine.cooling-tight is missing

    Scenario: coolant hoses known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump dry
      And engine/cooling told coolant-hoses supple-and-tight
      Then engine.cooling-tight is missing

    Scenario: coolant hoses looked at but not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump dry
      And engine/cooling seen coolant-hoses supple-and-tight
      Then engine.cooling-tight is missing

    Scenario Outline: radiator not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump dry
      And engine/cooling seen radiator <found>
      Then engine.cooling-tight is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found   |
        | leaking |
        | blocked |
        | loose   |

    Scenario: radiator not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump dry
      Then engine.cooling-tight is missing

    Scenario: radiator known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump dry
      And engine/cooling told radiator dry-and-clear
      Then engine.cooling-tight is missing

    Scenario Outline: pressure cap in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen water-pump dry
      And engine/cooling seen pressure-cap <found>
      Then engine.cooling-tight is met

      Examples:
        | found        |
        | seal-whole   |
        | made-without |

    Scenario Outline: pressure cap not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen water-pump dry
      And engine/cooling seen pressure-cap <found>
      Then engine.cooling-tight is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found        |
        | seal-cracked |
        | missing      |
        | wrong-one    |

    Scenario: pressure cap not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen water-pump dry
      Then engine.cooling-tight is missing

    Scenario: pressure cap known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen water-pump dry
      And engine/cooling told pressure-cap seal-whole
      Then engine.cooling-tight is missing

    Scenario Outline: water pump in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump <found>
      Then engine.cooling-tight is met

      Examples:
        | found        |
        | dry          |
        | made-without |

    Scenario Outline: water pump not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump <found>
      Then engine.cooling-tight is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found   |
        | weeping |
        | loose   |
        | noisy   |

    Scenario: water pump not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen pressure-cap seal-whole
      Then engine.cooling-tight is missing

    Scenario: water pump known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling told water-pump dry
      Then engine.cooling-tight is missing

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      Then engine.cooling-tight is missing
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump dry
      And engine/cooling tried coolant-hoses cracked
      And tom wrote that engine/cooling tried coolant-hoses supple-and-tight
      Then engine.cooling-tight is fault

    Scenario: coolant hoses weeping, and tightened
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen radiator dry-and-clear 3 days ago
      And engine/cooling seen pressure-cap seal-whole 3 days ago
      And engine/cooling seen water-pump dry 3 days ago
      And engine/cooling tried coolant-hoses weeping 3 days ago
      And engine/cooling was tightened 2 days ago
      And engine/cooling seen radiator dry-and-clear 1 day ago
      And engine/cooling seen pressure-cap seal-whole 1 day ago
      And engine/cooling seen water-pump dry 1 day ago
      And engine/cooling tried coolant-hoses supple-and-tight 1 day ago
      Then engine.cooling-tight is met

    Scenario: coolant hoses clip loose, and tightened
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen radiator dry-and-clear 3 days ago
      And engine/cooling seen pressure-cap seal-whole 3 days ago
      And engine/cooling seen water-pump dry 3 days ago
      And engine/cooling tried coolant-hoses clip-loose 3 days ago
      And engine/cooling was tightened 2 days ago
      And engine/cooling seen radiator dry-and-clear 1 day ago
      And engine/cooling seen pressure-cap seal-whole 1 day ago
      And engine/cooling seen water-pump dry 1 day ago
      And engine/cooling tried coolant-hoses supple-and-tight 1 day ago
      Then engine.cooling-tight is met

    Scenario: radiator loose, and tightened
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight 3 days ago
      And engine/cooling seen pressure-cap seal-whole 3 days ago
      And engine/cooling seen water-pump dry 3 days ago
      And engine/cooling seen radiator loose 3 days ago
      And engine/cooling was tightened 2 days ago
      And engine/cooling tried coolant-hoses supple-and-tight 1 day ago
      And engine/cooling seen pressure-cap seal-whole 1 day ago
      And engine/cooling seen water-pump dry 1 day ago
      And engine/cooling seen radiator dry-and-clear 1 day ago
      Then engine.cooling-tight is met

    Scenario: coolant hoses cracked, and tightened
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen radiator dry-and-clear 3 days ago
      And engine/cooling seen pressure-cap seal-whole 3 days ago
      And engine/cooling seen water-pump dry 3 days ago
      And engine/cooling tried coolant-hoses cracked 3 days ago
      And engine/cooling was tightened 2 days ago
      And engine/cooling seen radiator dry-and-clear 1 day ago
      And engine/cooling seen pressure-cap seal-whole 1 day ago
      And engine/cooling seen water-pump dry 1 day ago
      And engine/cooling tried coolant-hoses supple-and-tight 1 day ago
      Then engine.cooling-tight is fault

    Scenario: coolant hoses cracked, and replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling seen radiator dry-and-clear 3 days ago
      And engine/cooling seen pressure-cap seal-whole 3 days ago
      And engine/cooling seen water-pump dry 3 days ago
      And engine/cooling tried coolant-hoses cracked 3 days ago
      And engine/cooling was replaced 2 days ago
      And engine/cooling seen radiator dry-and-clear 1 day ago
      And engine/cooling seen pressure-cap seal-whole 1 day ago
      And engine/cooling seen water-pump dry 1 day ago
      And engine/cooling tried coolant-hoses supple-and-tight 1 day ago
      Then engine.cooling-tight is met

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight <ago> months ago
      And engine/cooling seen radiator dry-and-clear <ago> months ago
      And engine/cooling seen pressure-cap seal-whole <ago> months ago
      And engine/cooling seen water-pump dry <ago> months ago
      Then engine.cooling-tight is <state>

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario: engine/cooling was refitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-hoses supple-and-tight
      And engine/cooling seen radiator dry-and-clear
      And engine/cooling seen pressure-cap seal-whole
      And engine/cooling seen water-pump dry
      And engine/cooling was refitted
      Then engine.cooling-tight is stale

    Scenario: does not apply to an air-cooled engine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.cooling-tight is not applicable

    Scenario: does not apply to an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And the engine is cooled by liquid
      Then engine.cooling-tight is not applicable

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And the record is a job-record/1
      Then engine.cooling-tight is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And a machine ready for road-test
      And nothing is written for engine.cooling-tight
      Then the road-test is blocked by engine.cooling-tight alone

  @engine.cooling-works
  Rule: Warm, the coolant goes round and the fan cuts in

    Scenario Outline: coolant flow in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried fan cuts-in
      And engine/cooling tried coolant-flow <found>
      Then engine.cooling-works is met
      And it holds until 2027-05-25

      Examples:
        | found      |
        | goes-round |

    Scenario Outline: coolant flow not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried fan cuts-in
      And engine/cooling tried coolant-flow <found>
      Then engine.cooling-works is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found        |
        | stands-still |
        | bubbles      |
        | boils        |

    Scenario: coolant flow not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried fan cuts-in
      Then engine.cooling-works is missing

    Scenario: coolant flow known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried fan cuts-in
      And engine/cooling told coolant-flow goes-round
      Then engine.cooling-works is missing

    Scenario: coolant flow looked at but not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried fan cuts-in
      And engine/cooling seen coolant-flow goes-round
      Then engine.cooling-works is missing

    Scenario Outline: fan in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-flow goes-round
      And engine/cooling tried fan <found>
      Then engine.cooling-works is met

      Examples:
        | found        |
        | cuts-in      |
        | made-without |

    Scenario Outline: fan not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-flow goes-round
      And engine/cooling tried fan <found>
      Then engine.cooling-works is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found             |
        | dead              |
        | runs-all-the-time |

    Scenario: fan not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-flow goes-round
      Then engine.cooling-works is missing

    Scenario: fan known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-flow goes-round
      And engine/cooling told fan cuts-in
      Then engine.cooling-works is missing

    Scenario: fan looked at but not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-flow goes-round
      And engine/cooling seen fan cuts-in
      Then engine.cooling-works is missing

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      Then engine.cooling-works is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried fan cuts-in
      And engine/cooling tried coolant-flow stands-still
      And tom wrote that engine/cooling tried coolant-flow goes-round
      Then engine.cooling-works is fault

    Scenario: fan dead, and repaired
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-flow goes-round 3 days ago
      And engine/cooling tried fan dead 3 days ago
      And engine/cooling was repaired 2 days ago
      And engine/cooling tried coolant-flow goes-round 1 day ago
      And engine/cooling tried fan cuts-in 1 day ago
      Then engine.cooling-works is met

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-flow goes-round <ago> months ago
      And engine/cooling tried fan cuts-in <ago> months ago
      Then engine.cooling-works is <state>

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario: engine/cooling was refitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-flow goes-round
      And engine/cooling tried fan cuts-in
      And engine/cooling was refitted
      Then engine.cooling-works is stale

    Scenario: engine/cooling was filled since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-flow goes-round
      And engine/cooling tried fan cuts-in
      And engine/cooling was filled
      Then engine.cooling-works is stale

    Scenario: does not apply to an air-cooled engine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then engine.cooling-works is not applicable

    Scenario: does not apply to an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And the engine is cooled by liquid
      Then engine.cooling-works is not applicable

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And the record is a job-record/1
      Then engine.cooling-works is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And a machine ready for road-test
      And nothing is written for engine.cooling-works
      Then the road-test is blocked by engine.cooling-works alone

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is cooled by liquid
      And engine/cooling tried coolant-flow goes-round
      And engine/cooling tried fan cuts-in
      And <point> was <work>
      Then engine.cooling-works is stale

      Examples:
        | point          | work    |
        | engine/cooling | drained |

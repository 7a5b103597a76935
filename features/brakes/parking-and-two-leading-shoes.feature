Feature: Parking brake and two leading shoes
  An outfit or a three-wheeler cannot be left in gear on a hill when its clutch is off. Two leading shoes that do not bite together
  brake half as hard as they feel.

  @brakes.parking
  Rule: The parking brake holds on a slope and lets go

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-hold holds-and-stays-on
      And parking-brake tried parking-release lets-go-fully
      Then brakes.parking is met
      And it holds until 2027-05-25

    Scenario Outline: parking hold not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-hold <found>
      And parking-brake tried parking-release lets-go-fully
      Then brakes.parking is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found            |
        | slips            |
        | does-not-hold    |
        | does-not-stay-on |

    Scenario Outline: parking release not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-release <found>
      And parking-brake tried parking-hold holds-and-stays-on
      Then brakes.parking is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found  |
        | drags  |
        | sticks |

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      Then brakes.parking is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: parking hold not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-release lets-go-fully
      Then brakes.parking is missing

    Scenario: parking hold looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-release lets-go-fully
      And parking-brake seen parking-hold holds-and-stays-on
      Then brakes.parking is missing

    Scenario: parking hold known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-release lets-go-fully
      And parking-brake told parking-hold holds-and-stays-on
      Then brakes.parking is missing

    Scenario: parking release not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-hold holds-and-stays-on
      Then brakes.parking is missing

    Scenario: parking release looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-hold holds-and-stays-on
      And parking-brake seen parking-release lets-go-fully
      Then brakes.parking is missing

    Scenario: parking release known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-hold holds-and-stays-on
      And parking-brake told parking-release lets-go-fully
      Then brakes.parking is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-hold slips
      And parking-brake tried parking-release lets-go-fully
      And tom wrote that parking-brake tried parking-hold holds-and-stays-on
      Then brakes.parking is fault

    Scenario Outline: what was wrong, and was put right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-hold <f0> 3 days ago
      And parking-brake tried parking-release <f1> 3 days ago
      And <place> was <work> 2 days ago
      And parking-brake tried parking-hold holds-and-stays-on 1 day ago
      And parking-brake tried parking-release lets-go-fully 1 day ago
      Then brakes.parking is <state>

      Examples:
        | f0                 | f1            | place         | work       | state |
        | slips              | lets-go-fully | parking-brake | adjusted   | met   |
        | holds-and-stays-on | sticks        | parking-brake | lubricated | met   |
        | does-not-hold      | lets-go-fully | parking-brake | replaced   | met   |

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-hold holds-and-stays-on <ago> months ago
      And parking-brake tried parking-release lets-go-fully <ago> months ago
      Then brakes.parking is <state>

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-hold holds-and-stays-on
      And parking-brake tried parking-release lets-go-fully
      And <point> was <work>
      Then brakes.parking is stale

      Examples:
        | point         | work      |
        | parking-brake | adjusted  |
        | parking-brake | tightened |
        | parking-brake | replaced  |
        | machine       | damaged   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And parking-brake tried parking-hold holds-and-stays-on
      And parking-brake tried parking-release lets-go-fully
      And <point> was <work>
      Then brakes.parking is met

      Examples:
        | point       | work    |
        | front-wheel | removed |

    Scenario: does not apply to a machine without one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.parking is not applicable

    Scenario: a three-wheeled moped that has none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a moped-3w
      And the machine is without the part parking-brake
      Then brakes.parking is not applicable

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a moped-3w
      And the record is a job-record/1
      Then brakes.parking is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part parking-brake
      And a machine ready for road-test
      And nothing is written for brakes.parking
      Then the road-test is blocked by brakes.parking alone

    Scenario: a three-wheeled moped whose description does not mention one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is a moped-3w
      Then brakes.parking is missing

  @brakes.leading-shoes
  Rule: Both leading shoes bite at the same time

    Scenario: in order
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link tried shoes-together both-at-once
      And front-brake/cam-link seen cam-link locked-and-without-play
      Then brakes.leading-shoes is met
      And it holds until 2027-11-25

    Scenario Outline: shoes together not in order
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link tried shoes-together <found>
      And front-brake/cam-link seen cam-link locked-and-without-play
      Then brakes.leading-shoes is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found     |
        | one-first |
        | one-only  |

    Scenario Outline: cam link not in order
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link seen cam-link <found>
      And front-brake/cam-link tried shoes-together both-at-once
      Then brakes.leading-shoes is fault
      And it holds road-test, hand-over and no other gate

      Examples:
        | found             |
        | loose             |
        | bent              |
        | worn              |
        | split-pin-missing |

    Scenario: nothing recorded
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      Then brakes.leading-shoes is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: shoes together not recorded
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link seen cam-link locked-and-without-play
      Then brakes.leading-shoes is missing

    Scenario: shoes together looked at and not tried
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link seen cam-link locked-and-without-play
      And front-brake/cam-link seen shoes-together both-at-once
      Then brakes.leading-shoes is missing

    Scenario: shoes together known only from hearsay
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link seen cam-link locked-and-without-play
      And front-brake/cam-link told shoes-together both-at-once
      Then brakes.leading-shoes is missing

    Scenario: cam link not recorded
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link tried shoes-together both-at-once
      Then brakes.leading-shoes is missing

    Scenario: cam link known only from hearsay
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link tried shoes-together both-at-once
      And front-brake/cam-link told cam-link locked-and-without-play
      Then brakes.leading-shoes is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link tried shoes-together one-first
      And front-brake/cam-link seen cam-link locked-and-without-play
      And tom wrote that front-brake/cam-link tried shoes-together both-at-once
      Then brakes.leading-shoes is fault

    Scenario Outline: what was wrong, and was put right
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link tried shoes-together <f0> 3 days ago
      And front-brake/cam-link seen cam-link <f1> 3 days ago
      And <place> was <work> 2 days ago
      And front-brake/cam-link tried shoes-together both-at-once 1 day ago
      And front-brake/cam-link seen cam-link locked-and-without-play 1 day ago
      Then brakes.leading-shoes is <state>

      Examples:
        | f0           | f1                      | place                | work     | state |
        | one-first    | locked-and-without-play | front-brake/cam-link | adjusted | met   |
        | both-at-once | worn                    | front-brake/cam-link | replaced | met   |

    Scenario Outline: how long the result is valid
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link tried shoes-together both-at-once <ago> months ago
      And front-brake/cam-link seen cam-link locked-and-without-play <ago> months ago
      Then brakes.leading-shoes is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link tried shoes-together both-at-once
      And front-brake/cam-link seen cam-link locked-and-without-play
      And <point> was <work>
      Then brakes.leading-shoes is stale

      Examples:
        | point                | work      |
        | front-brake/cam-link | adjusted  |
        | front-brake/cam-link | tightened |
        | front-brake/shoes    | replaced  |
        | front-brake          | stripped  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And front-brake/cam-link tried shoes-together both-at-once
      And front-brake/cam-link seen cam-link locked-and-without-play
      And <point> was <work>
      Then brakes.leading-shoes is met

      Examples:
        | point      | work    |
        | rear-wheel | removed |

    Scenario: does not apply to a brake with one leading shoe
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.leading-shoes is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the machine has the part twin-leading-shoes
      And a machine ready for road-test
      And nothing is written for brakes.leading-shoes
      Then the road-test is blocked by brakes.leading-shoes alone

Feature: Acetylene lamps
  Carbide and water make a gas that burns with air in almost any mixture, and with copper something worse.

  @electrics.acetylene-empty
  Rule: The generator is empty where the machine stands or runs among people

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene seen carbide empty-and-dry
      Then electrics.acetylene-empty is met
      And it holds until 2026-11-25

    Scenario Outline: not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene seen carbide <found>
      Then electrics.acetylene-empty is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over, non-runner and no other gate

      Examples:
        | found          |
        | carbide-inside |
        | water-inside   |
        | smells-of-gas  |

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      Then electrics.acetylene-empty is missing
      And it holds first-start, indoor-run, on-show, non-runner and no other gate
      And it is safety-critical

    Scenario: carbide known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene told carbide empty-and-dry
      Then electrics.acetylene-empty is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene seen carbide carbide-inside
      And tom wrote that electrics/acetylene seen carbide empty-and-dry
      Then electrics.acetylene-empty is fault

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene seen carbide empty-and-dry
      And <point> was <work>
      Then electrics.acetylene-empty is stale

      Examples:
        | point               | work      |
        | electrics/acetylene | topped-up |
        | electrics/acetylene | filled    |
        | electrics/acetylene | opened    |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene seen carbide empty-and-dry
      And <point> was <work>
      Then electrics.acetylene-empty is met

      Examples:
        | point       | work    |
        | front-wheel | removed |

    Scenario: does not apply to a machine without one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.acetylene-empty is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And a machine ready for first-start
      And nothing is written for electrics.acetylene-empty
      Then the first-start is blocked by electrics.acetylene-empty alone

    Scenario Outline: emptied and looked into again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene seen carbide <found> 1 day ago
      And electrics/acetylene was <work>
      And electrics/acetylene seen carbide empty-and-dry
      Then electrics.acetylene-empty is met

      Examples:
        | found          | work    |
        | carbide-inside | cleaned |
        | water-inside   | drained |

  @electrics.acetylene-tight
  Rule: Generator, hoses and burners are tight, and no part is copper

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene tried acetylene-hold tight-under-water
      And electrics/acetylene seen acetylene-parts whole-and-no-copper
      Then electrics.acetylene-tight is met
      And it holds until 2027-11-25

    Scenario Outline: acetylene hold not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene tried acetylene-hold <found>
      And electrics/acetylene seen acetylene-parts whole-and-no-copper
      Then electrics.acetylene-tight is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found |
        | leaks |

    Scenario Outline: acetylene parts not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene seen acetylene-parts <found>
      And electrics/acetylene tried acetylene-hold tight-under-water
      Then electrics.acetylene-tight is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found             |
        | copper-tube       |
        | hose-perished     |
        | burner-blocked    |
        | water-valve-drips |

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      Then electrics.acetylene-tight is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: acetylene hold not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene seen acetylene-parts whole-and-no-copper
      Then electrics.acetylene-tight is missing

    Scenario: acetylene hold looked at and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene seen acetylene-parts whole-and-no-copper
      And electrics/acetylene seen acetylene-hold tight-under-water
      Then electrics.acetylene-tight is missing

    Scenario: acetylene hold known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene seen acetylene-parts whole-and-no-copper
      And electrics/acetylene told acetylene-hold tight-under-water
      Then electrics.acetylene-tight is missing

    Scenario: acetylene parts not recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene tried acetylene-hold tight-under-water
      Then electrics.acetylene-tight is missing

    Scenario: acetylene parts known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene tried acetylene-hold tight-under-water
      And electrics/acetylene told acetylene-parts whole-and-no-copper
      Then electrics.acetylene-tight is missing

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene tried acetylene-hold leaks
      And electrics/acetylene seen acetylene-parts whole-and-no-copper
      And tom wrote that electrics/acetylene tried acetylene-hold tight-under-water
      Then electrics.acetylene-tight is fault

    Scenario Outline: what was wrong, and was put right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene tried acetylene-hold <f0> 3 days ago
      And electrics/acetylene seen acetylene-parts <f1> 3 days ago
      And <place> was <work> 2 days ago
      And electrics/acetylene tried acetylene-hold tight-under-water 1 day ago
      And electrics/acetylene seen acetylene-parts whole-and-no-copper 1 day ago
      Then electrics.acetylene-tight is <state>

      Examples:
        | f0                | f1          | place               | work     | state |
        | tight-under-water | copper-tube | electrics/acetylene | repaired | met   |

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene tried acetylene-hold tight-under-water <ago> months ago
      And electrics/acetylene seen acetylene-parts whole-and-no-copper <ago> months ago
      Then electrics.acetylene-tight is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene tried acetylene-hold tight-under-water
      And electrics/acetylene seen acetylene-parts whole-and-no-copper
      And <point> was <work>
      Then electrics.acetylene-tight is stale

      Examples:
        | point               | work     |
        | electrics/acetylene | opened   |
        | electrics/acetylene | repaired |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And electrics/acetylene tried acetylene-hold tight-under-water
      And electrics/acetylene seen acetylene-parts whole-and-no-copper
      And <point> was <work>
      Then electrics.acetylene-tight is met

      Examples:
        | point       | work    |
        | front-wheel | removed |

    Scenario: does not apply to a machine without one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then electrics.acetylene-tight is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine has the part acetylene-lamps
      And a machine ready for road-test
      And nothing is written for electrics.acetylene-tight
      Then the road-test is blocked by electrics.acetylene-tight alone

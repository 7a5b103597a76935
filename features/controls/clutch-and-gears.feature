Feature: Clutch and gears

  @controls.clutch-play
  Rule: The clutch lever has its free play

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch measured clutch-play 15 mm ± 1 mm
      Then controls.clutch-play is met at controls/clutch
      And it holds until 2027-05-25

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch tried clutch-play 15 mm
      Then controls.clutch-play is missing

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch measured clutch-play <play>
      Then controls.clutch-play is <state> at controls/clutch

      # 10 mm to 20 mm: common practice
      Examples:
        | play         | state |
        | 9 mm ± 1 mm  | fault |
        | 10 mm ± 1 mm | doubt |
        | 12 mm ± 1 mm | met   |
        | 18 mm ± 1 mm | met   |
        | 20 mm ± 1 mm | doubt |
        | 21 mm ± 1 mm | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch measured clutch-play 9 mm ± 1 mm
      And tom wrote that controls/clutch measured clutch-play 15 mm ± 1 mm
      Then controls.clutch-play is fault

    Scenario: the maker's figure replaces common practice
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says controls.clutch-play at most 8 mm
      And controls/clutch measured clutch-play 15 mm ± 1 mm
      Then controls.clutch-play is fault at controls/clutch
      And the limit came from "Lark 250 workshop manual"

    Scenario: nobody looked in the maker's manual
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no word from the maker on controls.clutch-play
      And controls/clutch measured clutch-play 15 mm ± 1 mm
      Then controls.clutch-play is missing at controls/clutch

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.clutch-play is missing at controls/clutch
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch measured clutch-play 15 mm ± 1 mm <ago> months ago
      Then controls.clutch-play is <state> at controls/clutch

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch measured clutch-play 15 mm ± 1 mm
      And <point> was <work>
      Then controls.clutch-play is stale at controls/clutch

      Examples:
        | point               | work     |
        | controls/clutch     | removed  |
        | controls/clutch     | adjusted |
        | transmission/clutch | removed  |
        | transmission/clutch | adjusted |
        | steering            | refitted |
        | machine             | damaged  |
        | controls/levers     | replaced |
        | steering/handlebar  | adjusted |
        | engine/mounts       | damaged  |
        | engine/mounts       | adjusted |

    Scenario: not asked of a clutch worked by fluid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      Then controls.clutch-play is not applicable

    Scenario: not asked without a clutch lever
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      Then controls.clutch-play is not applicable

    Scenario: play at the clutch lever is set
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for controls.clutch-play
      And controls/clutch measured clutch-play 30 mm ± 1 mm
      Then controls.clutch-play is fault
      And for road-test controls/clutch is to be adjusted first

  @controls.clutch-frees
  Rule: The clutch frees

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch tried clutch-frees frees-and-springs-back
      Then controls.clutch-frees is met at controls/clutch

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch seen clutch-frees frees-and-springs-back
      Then controls.clutch-frees is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch tried clutch-frees <found>
      Then controls.clutch-frees is fault at controls/clutch

      Examples:
        | found          |
        | drags          |
        | stuck          |
        | frees-too-late |
        | lever-stays-in |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch tried clutch-frees drags
      And tom wrote that controls/clutch tried clutch-frees frees-and-springs-back
      Then controls.clutch-frees is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch tried clutch-frees drags
      Then controls.clutch-frees is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.clutch-frees is missing at controls/clutch
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch told clutch-frees frees-and-springs-back
      Then controls.clutch-frees is missing at controls/clutch

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch tried clutch-frees frees-and-springs-back <ago> days ago
      Then controls.clutch-frees is <state> at controls/clutch

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch tried clutch-frees frees-and-springs-back
      And <point> was <work>
      Then controls.clutch-frees is stale at controls/clutch

      Examples:
        | point                | work     |
        | controls/clutch      | removed  |
        | controls/clutch      | adjusted |
        | controls/clutch      | bled     |
        | transmission/clutch  | removed  |
        | transmission/clutch  | adjusted |
        | steering             | refitted |
        | machine              | damaged  |
        | controls/levers      | replaced |
        | controls/clutch      | drained  |
        | transmission/primary | damaged  |

    Scenario: not asked without a clutch lever
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      Then controls.clutch-frees is not applicable

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.clutch-frees is not applicable

  @controls.clutch-cable
  Rule: The clutch cable is free and whole

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch seen clutch-cable free-and-whole
      Then controls.clutch-cable is met at controls/clutch
      And it holds until 2027-05-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch seen clutch-cable <found>
      Then controls.clutch-cable is fault at controls/clutch

      Examples:
        | found        |
        | frayed       |
        | stiff        |
        | kinked       |
        | outer-split  |
        | nipple-loose |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch seen clutch-cable frayed
      And tom wrote that controls/clutch seen clutch-cable free-and-whole
      Then controls.clutch-cable is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.clutch-cable is missing at controls/clutch
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch told clutch-cable free-and-whole
      Then controls.clutch-cable is missing at controls/clutch

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch seen clutch-cable free-and-whole <ago> months ago
      Then controls.clutch-cable is <state> at controls/clutch

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch seen clutch-cable free-and-whole
      And <point> was <work>
      Then controls.clutch-cable is stale at controls/clutch

      Examples:
        | point   | work    |
        | machine | damaged |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/clutch seen clutch-cable free-and-whole
      And <point> was <work>
      Then controls.clutch-cable is met at controls/clutch

      Examples:
        | point           | work    |
        | controls/clutch | removed |

    Scenario: not asked of a clutch worked by fluid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      Then controls.clutch-cable is not applicable

    Scenario: not asked without a clutch lever
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      Then controls.clutch-cable is not applicable

  @controls.clutch-hydraulics
  Rule: The clutch circuit is bled, firm and dry

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      And controls/clutch was bled
      And controls/clutch tried clutch-hydraulics firm-and-dry
      Then controls.clutch-hydraulics is met at controls/clutch
      And it does not lapse by itself

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      And controls/clutch was bled
      And controls/clutch seen clutch-hydraulics firm-and-dry
      Then controls.clutch-hydraulics is missing

    Scenario: opened after it was bled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      And controls/clutch was bled
      And controls/clutch was opened
      And controls/clutch tried clutch-hydraulics firm-and-dry
      Then controls.clutch-hydraulics is stale at controls/clutch

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      And controls/clutch was bled
      And controls/clutch tried clutch-hydraulics <found>
      Then controls.clutch-hydraulics is fault at controls/clutch

      Examples:
        | found  |
        | spongy |
        | sinks  |
        | weeps  |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      And controls/clutch was bled
      And controls/clutch tried clutch-hydraulics spongy
      And tom wrote that controls/clutch tried clutch-hydraulics firm-and-dry
      Then controls.clutch-hydraulics is fault

    Scenario: found so, and then bled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      And controls/clutch was bled
      And controls/clutch tried clutch-hydraulics spongy
      And tom wrote that controls/clutch was bled
      Then controls.clutch-hydraulics is stale

    Scenario: no record that it was done
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      Then controls.clutch-hydraulics is missing at controls/clutch
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: no record that it was bled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      And controls/clutch tried clutch-hydraulics firm-and-dry
      Then controls.clutch-hydraulics is missing at controls/clutch

    Scenario: the clutch hydraulics is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      And controls/clutch was bled
      Then controls.clutch-hydraulics is missing at controls/clutch

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      And controls/clutch was bled
      And controls/clutch told clutch-hydraulics firm-and-dry
      Then controls.clutch-hydraulics is missing at controls/clutch

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch hydraulic
      And controls/clutch was bled
      And controls/clutch tried clutch-hydraulics firm-and-dry
      And <point> was <work>
      Then controls.clutch-hydraulics is stale at controls/clutch

      Examples:
        | point               | work    |
        | controls/clutch     | removed |
        | transmission/clutch | removed |
        | controls/clutch     | drained |
        | machine             | damaged |

    Scenario: not asked of a clutch worked by cable
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch cable
      Then controls.clutch-hydraulics is not applicable

  @controls.gear-lever
  Rule: The gear lever is right and tight

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gear-lever-hold tight-and-clear
      And controls/gear-lever seen gear-lever-kind right-for-the-machine
      Then controls.gear-lever is met at controls/gear-lever
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever seen gear-lever-hold tight-and-clear
      And controls/gear-lever seen gear-lever-kind right-for-the-machine
      Then controls.gear-lever is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gear-lever-hold tight-and-clear
      And controls/gear-lever told gear-lever-kind right-for-the-machine
      Then controls.gear-lever is missing

    Scenario: a machine without one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gear-lever-hold none-fitted
      And controls/gear-lever seen gear-lever-kind none-fitted
      Then controls.gear-lever is met at controls/gear-lever

    Scenario Outline: what is wrong with the gear lever hold
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gear-lever-hold <found>
      And controls/gear-lever seen gear-lever-kind right-for-the-machine
      Then controls.gear-lever is fault at controls/gear-lever

      Examples:
        | found |
        | slips |
        | loose |
        | bent  |
        | fouls |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gear-lever-hold slips
      And controls/gear-lever seen gear-lever-kind right-for-the-machine
      And tom wrote that controls/gear-lever tried gear-lever-hold tight-and-clear
      Then controls.gear-lever is fault

    Scenario: what is wrong with the gear lever kind
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gear-lever-hold tight-and-clear
      And controls/gear-lever seen gear-lever-kind from-another-model
      Then controls.gear-lever is fault at controls/gear-lever

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.gear-lever is missing at controls/gear-lever
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the gear lever hold is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever seen gear-lever-kind right-for-the-machine
      Then controls.gear-lever is missing at controls/gear-lever

    Scenario: the gear lever kind is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gear-lever-hold tight-and-clear
      Then controls.gear-lever is missing at controls/gear-lever

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever told gear-lever-hold tight-and-clear
      And controls/gear-lever told gear-lever-kind right-for-the-machine
      Then controls.gear-lever is missing at controls/gear-lever

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gear-lever-hold tight-and-clear <ago> months ago
      And controls/gear-lever seen gear-lever-kind right-for-the-machine <ago> months ago
      Then controls.gear-lever is <state> at controls/gear-lever

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gear-lever-hold tight-and-clear
      And controls/gear-lever seen gear-lever-kind right-for-the-machine
      And <point> was <work>
      Then controls.gear-lever is stale at controls/gear-lever

      Examples:
        | point                | work      |
        | controls/gear-lever  | removed   |
        | controls/gear-lever  | adjusted  |
        | transmission/gearbox | removed   |
        | controls/footrests   | refitted  |
        | machine              | damaged   |
        | controls/footrests   | adjusted  |
        | controls/gear-lever  | tightened |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.gear-lever is not applicable

  @controls.gears
  Rule: Every gear and neutral is found

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gears all-and-neutral
      Then controls.gears is met at controls/gear-lever

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever seen gears all-and-neutral
      Then controls.gears is missing

    Scenario: a machine with one gear
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gears single-speed
      Then controls.gears is met at controls/gear-lever

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gears <found>
      Then controls.gears is fault at controls/gear-lever

      Examples:
        | found       |
        | one-missing |
        | jumps-out   |
        | no-neutral  |
        | stiff       |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gears one-missing
      And tom wrote that controls/gear-lever tried gears all-and-neutral
      Then controls.gears is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gears jumps-out
      Then controls.gears is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then controls.gears is missing at controls/gear-lever
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever told gears all-and-neutral
      Then controls.gears is missing at controls/gear-lever

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gears all-and-neutral <ago> days ago
      Then controls.gears is <state> at controls/gear-lever

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/gear-lever tried gears all-and-neutral
      And <point> was <work>
      Then controls.gears is stale at controls/gear-lever

      Examples:
        | point                | work     |
        | controls/gear-lever  | removed  |
        | controls/gear-lever  | adjusted |
        | transmission/gearbox | removed  |
        | transmission/clutch  | refitted |
        | machine              | damaged  |
        | transmission/clutch  | adjusted |
        | transmission/gearbox | adjusted |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then controls.gears is not applicable

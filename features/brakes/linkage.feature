Feature: Lever, cable, rod and linkage
  What carries the rider's hand and foot to the brake.

  @brakes.lever-reserve
  Rule: A third of the travel is left with the brake firmly on

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control measured gap-at-rest 60 mm ± 1 mm
      And front-brake/control measured gap-when-on <left>
      Then brakes.lever-reserve is <state> at front-brake/control
      And the limit came from "Maine"

      # about one third, taken as 33.4 %: Maine 16-222 C.M.R. ch. 1, 190-05, read in a copy;
      # 20/60 = 33.3 %, 20.5/60 = 34.2 %, 21/60 = 35.0 %, 25/60 = 41.7 %, each within 1.8 %
      Examples:
        | left           | state |
        | 20 mm ± 1 mm   | fault |
        | 20.5 mm ± 1 mm | doubt |
        | 21 mm ± 1 mm   | doubt |
        | 25 mm ± 1 mm   | met   |

    Scenario: only one of the two gaps
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control measured gap-at-rest 60 mm ± 1 mm
      Then brakes.lever-reserve is missing at front-brake/control

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.lever-reserve is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control measured gap-at-rest 60 mm ± 1 mm <ago> days ago
      And front-brake/control measured gap-when-on 35 mm ± 1 mm <ago> days ago
      Then brakes.lever-reserve is <state> at front-brake/control

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control measured gap-at-rest 60 mm ± 1 mm
      And front-brake/control measured gap-when-on 35 mm ± 1 mm
      And <point> was <work>
      Then brakes.lever-reserve is stale at front-brake/control

      Examples:
        | point                       | work     |
        | front-brake/control         | removed  |
        | front-brake                 | refitted |
        | front-brake/hydraulic       | opened   |
        | front-brake/hydraulic/hose  | replaced |
        | front-brake/caliper/pistons | opened   |
        | front-brake/caliper/pistons | stripped |
        | front-brake/caliper/pistons | repaired |
        | front-brake/caliper/pistons | replaced |
        | front-brake/hydraulic       | bled     |
        | front-brake/caliper         | removed  |
        | front-brake/disc            | replaced |
        | front-wheel                 | removed  |
        | front-brake/rod             | replaced |
        | front-brake/rod             | adjusted |
        | machine                     | damaged  |
        | controls/levers             | replaced |
        | front-brake/hydraulic       | drained  |

    Scenario Outline: work that undoes it on a cable drum
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/control measured gap-at-rest 60 mm ± 1 mm
      And front-brake/control measured gap-when-on 35 mm ± 1 mm
      And <point> was <work>
      Then brakes.lever-reserve is stale at front-brake/control

      Examples:
        | point               | work     |
        | front-brake/control | removed  |
        | front-brake         | refitted |
        | front-brake/shoes   | replaced |
        | front-brake/drum    | replaced |
        | front-brake/cable   | replaced |
        | front-brake/cable   | adjusted |
        | front-wheel         | removed  |

    Scenario: asked of a rod brake as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.lever-reserve is missing at rear-brake/control

    Scenario: not asked where there is no brake
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control measured gap-at-rest 60 mm ± 1 mm
      And front-brake/control measured gap-when-on 35 mm ± 1 mm
      Then brakes.lever-reserve is met

    Scenario: reading it again does not end a defect
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control measured gap-at-rest 60 mm ± 1 mm
      And there was the defect "not as it should be"
      And front-brake/control measured gap-when-on 35 mm ± 1 mm
      And tom wrote that front-brake/control measured gap-at-rest 60 mm ± 1 mm
      Then brakes.lever-reserve is fault

    Scenario: trying alone is not enough
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control tried gap-at-rest 60 mm
      And front-brake/control measured gap-when-on 35 mm ± 1 mm
      Then brakes.lever-reserve is missing

    Scenario: trying alone is not enough
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control measured gap-at-rest 60 mm ± 1 mm
      And front-brake/control tried gap-when-on 35 mm
      Then brakes.lever-reserve is missing

    Scenario: readings taken too far apart
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control measured gap-at-rest 60 mm ± 1 mm 3 hours ago
      And front-brake/control measured gap-when-on 35 mm ± 1 mm
      Then brakes.lever-reserve is missing

    Scenario: nothing to brake with
      Given a motorcycle with no brake in front and no brake behind
      Then brakes.lever-reserve is not applicable

    Scenario: what it is held against
      Given a motorcycle with a cable drum in front and no brake behind
      And front-brake/control measured gap-at-rest 60 mm ± 1 mm
      And front-brake/control measured gap-when-on 35 mm ± 1 mm
      Then brakes.lever-reserve is met at front-brake/control
      And it says "at least 33.4 % (Maine 16-222 C.M.R. ch. 1, 190-05, 1 B (2), read in a copy)"

  @brakes.free-play
  Rule: The free play of lever and pedal is right

    Scenario Outline: a hand lever, on both sides of both limits
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/control measured free-play <play>
      Then brakes.free-play is <state> at front-brake/control

      # 5 to 10 mm at the tip: common practice
      Examples:
        | play          | state |
        | 4 mm ± 1 mm   | fault |
        | 5 mm ± 1 mm   | doubt |
        | 6.5 mm ± 1 mm | met   |
        | 8.5 mm ± 1 mm | met   |
        | 10 mm ± 1 mm  | doubt |
        | 11 mm ± 1 mm  | fault |

    Scenario: trying alone is not enough
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/control tried free-play 7 mm
      Then brakes.free-play is missing at front-brake/control

    Scenario Outline: a pedal, on both sides of both limits
      Given a motorcycle with a cable drum in front and a rod drum behind
      And rear-brake/control measured free-play <play>
      Then brakes.free-play is <state> at rear-brake/control

      # 20 to 30 mm at the pad: common practice
      Examples:
        | play         | state |
        | 19 mm ± 1 mm | fault |
        | 20 mm ± 1 mm | doubt |
        | 22 mm ± 1 mm | met   |
        | 28 mm ± 1 mm | met   |
        | 30 mm ± 1 mm | doubt |
        | 31 mm ± 1 mm | fault |

    Scenario Outline: a hand lever works the rear brake, as on many mopeds
      Given a motorcycle with a cable drum in front and a cable drum behind
      And the machine is a moped
      And rear-brake/control seen control-kind hand-lever
      And rear-brake/control measured free-play <play>
      Then brakes.free-play is <state> at rear-brake/control

      # 5 to 10 mm at the tip: common practice
      Examples:
        | play          | state |
        | 4 mm ± 1 mm   | fault |
        | 6.5 mm ± 1 mm | met   |
        | 11 mm ± 1 mm  | fault |
        | 25 mm ± 1 mm  | fault |

    Scenario Outline: a pedal all the same
      Given a motorcycle with a cable drum in front and a cable drum behind
      And the machine is a moped
      And rear-brake/control seen control-kind hand-lever
      And <what>
      And rear-brake/control measured free-play 7 mm ± 1 mm
      Then brakes.free-play is fault at rear-brake/control

      Examples:
        | what                                                      |
        | tom wrote that rear-brake/control seen control-kind pedal |
        | rear-brake/control was replaced                           |

    Scenario: a hand lever by hearsay is a pedal
      Given a motorcycle with a cable drum in front and a cable drum behind
      And rear-brake/control told control-kind hand-lever
      And rear-brake/control measured free-play 7 mm ± 1 mm
      Then brakes.free-play is fault at rear-brake/control

    Scenario: nobody measured
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.free-play is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: nobody looked for the maker's figure
      Given a motorcycle with a cable drum in front and a rod drum behind
      And no word from the maker on brakes.lever-free-play
      And front-brake/control measured free-play 7 mm ± 1 mm
      Then brakes.free-play is missing at front-brake/control

    Scenario Outline: how long it holds
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/control measured free-play 7 mm ± 1 mm <ago> days ago
      Then brakes.free-play is <state> at front-brake/control

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/control measured free-play 7 mm ± 1 mm
      And <point> was <work>
      Then brakes.free-play is stale at front-brake/control

      Examples:
        | point                        | work     |
        | front-brake/control          | removed  |
        | front-brake                  | refitted |
        | front-brake/cable            | replaced |
        | front-brake/cable            | adjusted |
        | front-brake/adjuster         | adjusted |
        | front-brake/control          | adjusted |
        | front-brake/cam-lever        | replaced |
        | front-brake/shoes            | replaced |
        | front-brake/stop-lamp-switch | replaced |
        | front-wheel                  | removed  |
        | front-wheel/spindle          | adjusted |
        | machine                      | damaged  |
        | front-wheel/spindle          | loosened |

    Scenario Outline: work that undoes it behind
      Given a motorcycle with a cable drum in front and a rod drum behind
      And rear-brake/control measured free-play 25 mm ± 1 mm
      And <point> was <work>
      Then brakes.free-play is stale at rear-brake/control

      Examples:
        | point                       | work     |
        | rear-brake/control          | removed  |
        | rear-brake                  | refitted |
        | rear-brake/rod              | replaced |
        | rear-brake/rod              | adjusted |
        | rear-brake/adjuster         | adjusted |
        | rear-brake/control          | adjusted |
        | rear-brake/cam-lever        | replaced |
        | rear-brake/shoes            | replaced |
        | rear-brake/stop-lamp-switch | replaced |
        | rear-wheel                  | removed  |
        | rear-wheel/spindle          | adjusted |

    Scenario: a caliper undoes it on a cable disc
      Given a motorcycle with a cable disc in front and a rod drum behind
      And front-brake/control measured free-play 7 mm ± 1 mm
      And front-brake/caliper was removed
      Then brakes.free-play is stale at front-brake/control

    Scenario: not asked with hydraulics only
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.free-play is not applicable

    Scenario: a good reading with no work before it does not end a fault
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/control measured free-play 22 mm ± 1 mm 2 days ago
      And front-brake/control measured free-play 7 mm ± 1 mm 1 day ago
      Then brakes.free-play is fault at front-brake/control

  @brakes.cable-strands
  Rule: Every strand of the cable is whole

    Scenario Outline: on both sides of the limit
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable seen broken-strands <count> times
      Then brakes.cable-strands is <state>

      # none: common practice; Maryland rejects at two (COMAR 11.14.03.04 B (5), read in a copy)
      Examples:
        | count | state |
        | 0     | met   |
        | 1     | fault |
        | 2     | fault |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable seen broken-strands 1 times
      And tom wrote that front-brake/cable seen broken-strands 0 times
      Then brakes.cable-strands is fault

    Scenario: nobody looked
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.cable-strands is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: told by the seller
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable told broken-strands 0 times
      Then brakes.cable-strands is missing

    Scenario Outline: how long it holds
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable seen broken-strands 0 times <ago> months ago
      Then brakes.cable-strands is <state> at front-brake/cable

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable seen broken-strands 0 times
      And <point> was <work>
      Then brakes.cable-strands is met at front-brake/cable

      Examples:
        | point             | work     |
        | front-brake/cable | removed  |
        | front-brake       | refitted |

    Scenario: not asked without a cable
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.cable-strands is not applicable

    Scenario: a frayed cable is replaced, not mended
      Given a motorcycle with a cable drum in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for brakes.cable-strands
      And front-brake/cable seen broken-strands 3 times
      Then brakes.cable-strands is fault
      And for road-test front-brake/cable is to be replaced first

    Scenario: what it is held against
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable seen broken-strands 0 times
      Then brakes.cable-strands is met at front-brake/cable
      And it says "at most 0 (common practice)"
      And it holds until 2027-05-25

  @brakes.cable-run
  Rule: The cable runs free from lock to lock

    Scenario: in order
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable tried cable-run free
      Then brakes.cable-run is met at front-brake/cable
      And it holds until 2027-05-25

    Scenario: looking alone is not enough
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable seen cable-run free
      Then brakes.cable-run is missing

    Scenario Outline: what is wrong
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable tried cable-run <found>
      Then brakes.cable-run is fault at front-brake/cable

      Examples:
        | found   |
        | stiff   |
        | kinked  |
        | pinched |
        | chafed  |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable tried cable-run stiff
      And tom wrote that front-brake/cable tried cable-run free
      Then brakes.cable-run is fault

    Scenario: nobody tried
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.cable-run is missing at front-brake/cable
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable told cable-run free
      Then brakes.cable-run is missing at front-brake/cable

    Scenario Outline: how long it holds
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable tried cable-run free <ago> months ago
      Then brakes.cable-run is <state> at front-brake/cable

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with a cable drum in front and a rod drum behind
      And front-brake/cable tried cable-run free
      And <point> was <work>
      Then brakes.cable-run is stale at front-brake/cable

      Examples:
        | point               | work     |
        | front-brake/cable   | removed  |
        | front-brake         | refitted |
        | steering            | replaced |
        | front-fork          | replaced |
        | front-wheel         | removed  |
        | front-brake/control | replaced |
        | machine             | damaged  |
        | steering/handlebar  | adjusted |
        | controls/levers     | damaged  |
        | controls/levers     | adjusted |
        | headlamp/shell      | opened   |

    Scenario: not asked of a machine without cables
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.cable-run is not applicable

  @brakes.rod
  Rule: The brake rod is sound

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/rod seen rod-condition sound
      Then brakes.rod is met at rear-brake/rod
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/rod seen rod-condition <found>
      Then brakes.rod is fault at rear-brake/rod

      Examples:
        | found           |
        | bent            |
        | cracked         |
        | worn            |
        | thread-stripped |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/rod seen rod-condition bent
      And tom wrote that rear-brake/rod seen rod-condition sound
      Then brakes.rod is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.rod is missing at rear-brake/rod
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/rod told rod-condition sound
      Then brakes.rod is missing at rear-brake/rod

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/rod seen rod-condition sound <ago> months ago
      Then brakes.rod is <state> at rear-brake/rod

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/rod seen rod-condition sound
      And <point> was <work>
      Then brakes.rod is stale at rear-brake/rod

      Examples:
        | point   | work    |
        | machine | damaged |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/rod seen rod-condition sound
      And <point> was <work>
      Then brakes.rod is met at rear-brake/rod

      Examples:
        | point          | work     |
        | rear-brake/rod | removed  |
        | rear-brake     | refitted |
        | rear-wheel     | removed  |

    Scenario: not asked of a machine without a rod
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.rod is not applicable

  @brakes.clevis-wear
  Rule: Enough is left of every clevis pin

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis measured worn-diameter <worn>
      And rear-brake/clevis measured unworn-diameter 8.0 mm ± 0.1 mm
      Then brakes.clevis-wear is <state> at rear-brake/clevis
      And the limit came from "COMAR"

      # 75 % left: COMAR 11.14.03.04 B (3), read in a copy, rejects more than 25 % wear;
      # 5.9/8 = 73.8 %, 6/8 = 75 %, 6.1/8 = 76.3 %, 6.2/8 = 77.5 %, each within 1.6 %
      Examples:
        | worn            | state |
        | 5.9 mm ± 0.1 mm | fault |
        | 6.0 mm ± 0.1 mm | doubt |
        | 6.1 mm ± 0.1 mm | doubt |
        | 6.2 mm ± 0.1 mm | met   |

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis measured worn-diameter 6.2 mm ± 0.1 mm
      And there was the defect "not as it should be"
      And rear-brake/clevis measured unworn-diameter 8.0 mm ± 0.1 mm
      And tom wrote that rear-brake/clevis measured worn-diameter 6.2 mm ± 0.1 mm
      Then brakes.clevis-wear is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis tried worn-diameter 6.2 mm
      And rear-brake/clevis measured unworn-diameter 8.0 mm ± 0.1 mm
      Then brakes.clevis-wear is missing

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis measured worn-diameter 6.2 mm ± 0.1 mm
      And rear-brake/clevis tried unworn-diameter 8.0 mm
      Then brakes.clevis-wear is missing

    Scenario: only the worn place was measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis measured worn-diameter 7.6 mm ± 0.1 mm
      Then brakes.clevis-wear is missing at rear-brake/clevis
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis measured worn-diameter 7.6 mm ± 0.1 mm <ago> months ago
      And rear-brake/clevis measured unworn-diameter 8.0 mm ± 0.1 mm <ago> months ago
      Then brakes.clevis-wear is <state> at rear-brake/clevis

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis measured worn-diameter 7.6 mm ± 0.1 mm
      And rear-brake/clevis measured unworn-diameter 8.0 mm ± 0.1 mm
      And <point> was <work>
      Then brakes.clevis-wear is stale at rear-brake/clevis

      Examples:
        | point          | work     |
        | rear-brake     | refitted |
        | rear-brake/rod | replaced |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis measured worn-diameter 7.6 mm ± 0.1 mm
      And rear-brake/clevis measured unworn-diameter 8.0 mm ± 0.1 mm
      And <point> was <work>
      Then brakes.clevis-wear is met at rear-brake/clevis

      Examples:
        | point             | work    |
        | rear-brake/clevis | removed |

    Scenario: not asked with hydraulics only
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.clevis-wear is not applicable

    Scenario: more work that undoes it
      Given a motorcycle with one hydraulic disc in front and a cable drum behind
      And rear-brake/clevis measured worn-diameter 7.6 mm ± 0.1 mm
      And rear-brake/clevis measured unworn-diameter 8.0 mm ± 0.1 mm
      And rear-brake/cable was replaced
      Then brakes.clevis-wear is stale at rear-brake/clevis

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis measured worn-diameter 6.2 mm ± 0.1 mm
      And rear-brake/clevis measured unworn-diameter 8.0 mm ± 0.1 mm
      Then brakes.clevis-wear is met at rear-brake/clevis
      And it says "at least 75 % (COMAR 11.14.03.04, B (3), read in a copy)"
      And it holds until 2027-11-25

  @brakes.split-pins
  Rule: Every pin, clip and lock nut is in place

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis seen split-pins all-fitted
      Then brakes.split-pins is met at rear-brake/clevis
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis seen split-pins <found>
      Then brakes.split-pins is fault at rear-brake/clevis

      Examples:
        | found      |
        | missing    |
        | cracked    |
        | wrong-size |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis seen split-pins missing
      And tom wrote that rear-brake/clevis seen split-pins all-fitted
      Then brakes.split-pins is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.split-pins is missing at rear-brake/clevis
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis told split-pins all-fitted
      Then brakes.split-pins is missing at rear-brake/clevis

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/clevis seen split-pins all-fitted
      And <point> was <work>
      Then brakes.split-pins is stale at rear-brake/clevis

      Examples:
        | point                 | work     |
        | rear-brake/clevis     | removed  |
        | rear-brake            | refitted |
        | rear-brake/rod        | replaced |
        | rear-brake/cam-lever  | replaced |
        | rear-brake/control    | replaced |
        | rear-brake/torque-arm | replaced |
        | rear-wheel            | removed  |

    Scenario: not asked of a machine with hydraulics only
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.split-pins is not applicable

    Scenario: more work that undoes it
      Given a motorcycle with one hydraulic disc in front and a cable drum behind
      And rear-brake/clevis seen split-pins all-fitted
      And rear-brake/cable was replaced
      Then brakes.split-pins is stale at rear-brake/clevis

  @brakes.pivots
  Rule: Lever and pedal turn free and come back

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried pivot free
      Then brakes.pivots is met at front-brake/control

    Scenario: found 366 days ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried pivot free 366 days ago
      Then brakes.pivots is stale

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried pivot <found>
      Then brakes.pivots is fault at front-brake/control

      Examples:
        | found    |
        | stiff    |
        | shakes   |
        | stays-on |
        | bent     |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried pivot stiff
      And tom wrote that front-brake/control tried pivot free
      Then brakes.pivots is fault

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control seen pivot stiff
      And tom wrote that front-brake/control tried pivot free
      Then brakes.pivots is missing

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.pivots is missing at front-brake/control
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control told pivot free
      Then brakes.pivots is missing at front-brake/control

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried pivot free <ago> months ago
      Then brakes.pivots is <state> at front-brake/control

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried pivot free
      And <point> was <work>
      Then brakes.pivots is stale at front-brake/control

      Examples:
        | point                        | work       |
        | front-brake/control          | removed    |
        | front-brake                  | refitted   |
        | steering/handlebar           | replaced   |
        | machine                      | damaged    |
        | front-brake/control          | tightened  |
        | front-brake/control          | loosened   |
        | front-brake/control          | lubricated |
        | front-brake/stop-lamp-switch | adjusted   |

    Scenario: asked of the pedal as well
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.pivots is missing at rear-brake/control

    Scenario: nothing to brake with
      Given a motorcycle with no brake in front and no brake behind
      Then brakes.pivots is not applicable

  @brakes.torque-arm
  Rule: The brake plate is anchored and locked

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/torque-arm seen anchorage locked
      Then brakes.torque-arm is met at rear-brake/torque-arm
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/torque-arm seen anchorage <found>
      Then brakes.torque-arm is fault at rear-brake/torque-arm

      Examples:
        | found        |
        | loose        |
        | cracked      |
        | lock-missing |
        | worn         |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/torque-arm seen anchorage loose
      And tom wrote that rear-brake/torque-arm seen anchorage locked
      Then brakes.torque-arm is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.torque-arm is missing at rear-brake/torque-arm
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/torque-arm told anchorage locked
      Then brakes.torque-arm is missing at rear-brake/torque-arm

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/torque-arm seen anchorage locked
      And <point> was <work>
      Then brakes.torque-arm is stale at rear-brake/torque-arm

      Examples:
        | point                 | work     |
        | rear-brake/torque-arm | removed  |
        | rear-brake            | refitted |
        | rear-wheel            | removed  |
        | rear-wheel/spindle    | adjusted |
        | rear-brake/drum       | replaced |
        | rear-brake/shoes      | replaced |
        | machine               | damaged  |
        | rear-wheel/spindle    | loosened |

    Scenario: not asked of a machine with discs only
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.torque-arm is not applicable

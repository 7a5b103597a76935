# Pairs: the periodic test manual for motorcycles, 4.1 e and f (read in a copy).
Feature: How a tyre is fitted

  @tyres.made-for
  Rule: Every tyre is made for the road and for its wheel
    Scenario: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen made-for this-wheel
      And rear-wheel/tyre seen made-for this-wheel
      Then tyres.made-for is met
      And it does not lapse by itself

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told made-for this-wheel
      And rear-wheel/tyre told made-for this-wheel
      Then tyres.made-for is missing

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen made-for <answer>
      Then tyres.made-for is fault at front-wheel/tyre
      Examples:
        | answer        |
        | other-wheel   |
        | car           |
        | racing        |
        | off-road-only |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen made-for other-wheel
      And tom wrote that front-wheel/tyre seen made-for this-wheel
      Then tyres.made-for is fault

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen made-for this-wheel
      Then tyres.made-for is met at front-wheel/tyre
      And tyres.made-for is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen made-for this-wheel
      And front-wheel/tyre was replaced
      Then tyres.made-for is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen made-for this-wheel
      And rear-wheel/tyre seen made-for this-wheel
      And front-wheel was <work>
      Then tyres.made-for is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

  @tyres.size
  Rule: Every tyre is of the right size and turns clear
    Scenario Outline: the maker's size or an approved equal
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen size <size>
      And rear-wheel/tyre seen size <size>
      And front-wheel/tyre tried clearance clear
      And rear-wheel/tyre tried clearance clear
      Then tyres.size is met
      Examples:
        | size           |
        | as-maker       |
        | approved-equal |

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told size as-maker
      And rear-wheel/tyre told size as-maker
      And front-wheel/tyre tried clearance clear
      And rear-wheel/tyre tried clearance clear
      Then tyres.size is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen size as-maker
      And rear-wheel/tyre seen size as-maker
      And front-wheel/tyre seen clearance clear
      And rear-wheel/tyre seen clearance clear
      Then tyres.size is missing

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen size as-maker
      And rear-wheel/tyre seen size as-maker
      And front-wheel/tyre tried clearance clear
      And rear-wheel/tyre tried clearance clear
      Then tyres.size is met
      And it does not lapse by itself

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen size <size>
      And front-wheel/tyre tried clearance <clearance>
      Then tyres.size is fault at front-wheel/tyre
      Examples:
        | size     | clearance |
        | other    | clear     |
        | as-maker | touches   |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen size other
      And front-wheel/tyre tried clearance clear
      And tom wrote that front-wheel/tyre seen size as-maker
      Then tyres.size is fault

    Scenario: nobody tried the clearance
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen size as-maker
      And rear-wheel/tyre seen size as-maker
      Then tyres.size is missing

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.size is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen size as-maker
      And front-wheel/tyre tried clearance clear
      And <point> was <work>
      Then tyres.size is stale at front-wheel/tyre
      Examples:
        | point               | work     |
        | front-wheel/tyre    | replaced |
        | front-wheel/spindle | removed  |

    Scenario Outline: work that reaches it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen size as-maker
      And rear-wheel/tyre seen size as-maker
      And front-wheel/tyre tried clearance clear
      And rear-wheel/tyre tried clearance clear
      And front-wheel was <work>
      Then tyres.size is stale at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

  @tyres.mix
  Rule: The two tyres go together
    Scenario Outline: pairs
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen construction <front>
      And rear-wheel/tyre seen construction <rear>
      Then tyres.mix is <state>
      Examples:
        | front       | rear        | state |
        | cross-ply   | cross-ply   | met   |
        | cross-ply   | bias-belted | met   |
        | cross-ply   | radial      | met   |
        | bias-belted | cross-ply   | fault |
        | bias-belted | bias-belted | met   |
        | bias-belted | radial      | met   |
        | radial      | cross-ply   | fault |
        | radial      | bias-belted | fault |
        | radial      | radial      | met   |

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen construction cross-ply
      And there was the defect "not as it should be"
      And rear-wheel/tyre seen construction cross-ply
      And tom wrote that front-wheel/tyre seen construction cross-ply
      Then tyres.mix is fault

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told construction cross-ply
      And rear-wheel/tyre seen construction cross-ply
      Then tyres.mix is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen construction cross-ply
      And rear-wheel/tyre told construction cross-ply
      Then tyres.mix is missing

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen construction cross-ply
      And rear-wheel/tyre seen construction cross-ply
      Then tyres.mix is met
      And it does not lapse by itself

    Scenario Outline: a marking nobody knows
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen construction <front>
      And rear-wheel/tyre seen construction <rear>
      Then tyres.mix is missing
      And it says "is not known; write cross-ply, bias-belted or radial"
      Examples:
        | front     | rear      |
        | illegible | radial    |
        | radial    | illegible |
        | none      | none      |

    Scenario: only one tyre read
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen construction radial
      Then tyres.mix is missing

    Scenario: nobody read them
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.mix is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the rear tyre changed since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen construction radial
      And rear-wheel/tyre seen construction radial
      And rear-wheel/tyre was replaced
      Then tyres.mix is stale

    Scenario Outline: a wheel that comes out takes its tyre along
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen construction radial
      And rear-wheel/tyre seen construction radial
      And front-wheel was <work>
      Then tyres.mix is met
      Examples:
        | work     |
        | removed  |
        | refitted |

  @tyres.direction
  Rule: The arrow points the way the wheel turns
    Scenario Outline: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen direction <answer>
      And rear-wheel/tyre seen direction <answer>
      Then tyres.direction is met
      Examples:
        | answer   |
        | forward  |
        | no-arrow |

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told direction forward
      And rear-wheel/tyre told direction forward
      Then tyres.direction is missing

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen direction forward
      And rear-wheel/tyre seen direction forward
      Then tyres.direction is met
      And it does not lapse by itself

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen direction <answer>
      Then tyres.direction is fault at front-wheel/tyre
      Examples:
        | answer   |
        | backward |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen direction backward
      And tom wrote that front-wheel/tyre seen direction forward
      Then tyres.direction is fault

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen direction forward
      Then tyres.direction is met at front-wheel/tyre
      And tyres.direction is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen direction forward
      And front-wheel/tyre was replaced
      Then tyres.direction is stale at front-wheel/tyre

    Scenario: the spindle came out since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen direction forward
      And front-wheel/spindle was removed
      Then tyres.direction is stale at front-wheel/tyre

  @tyres.rim-match
  Rule: Tyre, tube and rim suit each other
    Scenario: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen rim-match suits-rim
      And rear-wheel/tyre seen rim-match suits-rim
      Then tyres.rim-match is met
      And it does not lapse by itself

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told rim-match suits-rim
      And rear-wheel/tyre told rim-match suits-rim
      Then tyres.rim-match is missing

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen rim-match <answer>
      Then tyres.rim-match is fault at front-wheel/tyre
      Examples:
        | answer                    |
        | tube-left-out             |
        | tube-of-wrong-size        |
        | tubeless-tyre-on-tube-rim |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen rim-match tube-left-out
      And tom wrote that front-wheel/tyre seen rim-match suits-rim
      Then tyres.rim-match is fault

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen rim-match suits-rim
      Then tyres.rim-match is met at front-wheel/tyre
      And tyres.rim-match is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen rim-match suits-rim
      And front-wheel/tyre was replaced
      Then tyres.rim-match is stale at front-wheel/tyre

    Scenario: the tube came out since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen rim-match suits-rim
      And front-wheel/tube was removed
      Then tyres.rim-match is stale at front-wheel/tyre

    Scenario: the rim changed since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen rim-match suits-rim
      And front-wheel/rim was replaced
      Then tyres.rim-match is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen rim-match suits-rim
      And rear-wheel/tyre seen rim-match suits-rim
      And front-wheel was <work>
      Then tyres.rim-match is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

  @tyres.tube
  Rule: A new tube goes in with a new tyre
    Scenario: new with the tyre
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre was replaced
      And front-wheel/tube was replaced
      And rear-wheel/tyre was replaced
      And rear-wheel/tube was replaced
      Then tyres.tube is met
      And it does not lapse by itself

    Scenario: a new tyre over the old one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tube was replaced
      And front-wheel/tyre was replaced
      Then tyres.tube is stale at front-wheel/tube

    Scenario: taken out again since, it goes back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tube was replaced
      And front-wheel/tube was removed
      Then tyres.tube is met at front-wheel/tube

    Scenario: the tyre off and on again does not ask for another
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tube was replaced
      And front-wheel/tyre was removed
      And front-wheel/tyre was refitted
      Then tyres.tube is met at front-wheel/tube

    Scenario: it is not entered
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.tube is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: no tubes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the tyres are tubeless
      Then tyres.tube is not applicable

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tube was replaced
      And front-wheel was <work>
      Then tyres.tube is met at front-wheel/tube
      Examples:
        | work     |
        | removed  |
        | refitted |

  @tyres.rim-tape
  Rule: New rim tape goes on with a new tyre
    Scenario: new with the tyre
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre was replaced
      And front-wheel/rim-tape was replaced
      And rear-wheel/tyre was replaced
      And rear-wheel/rim-tape was replaced
      Then tyres.rim-tape is met
      And it does not lapse by itself

    Scenario: a new tyre over the old one
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim-tape was replaced
      And front-wheel/tyre was replaced
      Then tyres.rim-tape is stale at front-wheel/rim-tape

    Scenario: taken out again since, it goes back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim-tape was replaced
      And front-wheel/rim-tape was removed
      Then tyres.rim-tape is met at front-wheel/rim-tape

    Scenario: the tyre off and on again does not ask for another
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim-tape was replaced
      And front-wheel/tyre was removed
      And front-wheel/tyre was refitted
      Then tyres.rim-tape is met at front-wheel/rim-tape

    Scenario: it is not entered
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.rim-tape is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: spokes worked on since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim-tape was replaced
      And front-wheel/spokes was replaced
      Then tyres.rim-tape is stale at front-wheel/rim-tape

    Scenario: no tubes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the tyres are tubeless
      Then tyres.rim-tape is not applicable

    Scenario: a cast wheel has no spoke ends to cover
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the wheels are cast
      Then tyres.rim-tape is not applicable

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/rim-tape was replaced
      And front-wheel was <work>
      Then tyres.rim-tape is met at front-wheel/rim-tape
      Examples:
        | work     |
        | removed  |
        | refitted |

  @tyres.valve
  Rule: Every valve is sound and capped
    Scenario: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre/valve seen valve sound
      And rear-wheel/tyre/valve seen valve sound
      Then tyres.valve is met
      And it holds until 2027-11-25

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre/valve told valve sound
      And rear-wheel/tyre/valve told valve sound
      Then tyres.valve is missing

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre/valve seen valve <answer>
      Then tyres.valve is fault at front-wheel/tyre/valve
      Examples:
        | answer   |
        | perished |
        | leaning  |
        | leaking  |
        | no-cap   |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre/valve seen valve perished
      And tom wrote that front-wheel/tyre/valve seen valve sound
      Then tyres.valve is fault

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre/valve seen valve sound
      Then tyres.valve is met at front-wheel/tyre/valve
      And tyres.valve is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre/valve seen valve sound
      And front-wheel/tyre was replaced
      Then tyres.valve is stale at front-wheel/tyre/valve

    Scenario Outline: the valve is part of the tube
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre/valve seen valve sound
      And front-wheel/tube was <work>
      Then tyres.valve is stale at front-wheel/tyre/valve
      Examples:
        | work     |
        | replaced |
        | repaired |
        | damaged  |

    Scenario: looked at too long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre/valve seen valve sound 13 months ago
      Then tyres.valve is stale at front-wheel/tyre/valve

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre/valve seen valve sound
      And rear-wheel/tyre/valve seen valve sound
      And front-wheel was <work>
      Then tyres.valve is met at front-wheel/tyre/valve
      Examples:
        | work     |
        | removed  |
        | refitted |

  @tyres.bead
  Rule: The bead sits evenly all the way round
    Scenario: both wheels looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bead-line even
      And rear-wheel/tyre seen bead-line even
      Then tyres.bead is met
      And it does not lapse by itself

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told bead-line even
      And rear-wheel/tyre told bead-line even
      Then tyres.bead is missing

    Scenario Outline: what is found at the front wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bead-line <answer>
      Then tyres.bead is fault at front-wheel/tyre
      Examples:
        | answer |
        | uneven |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bead-line uneven
      And tom wrote that front-wheel/tyre seen bead-line even
      Then tyres.bead is fault

    Scenario: nobody looked at the rear wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bead-line even
      Then tyres.bead is met at front-wheel/tyre
      And tyres.bead is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bead-line even
      And front-wheel/tyre was replaced
      Then tyres.bead is stale at front-wheel/tyre

    Scenario: the tube came out since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bead-line even
      And front-wheel/tube was removed
      Then tyres.bead is stale at front-wheel/tyre

    Scenario: the rim changed since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bead-line even
      And front-wheel/rim was replaced
      Then tyres.bead is stale at front-wheel/tyre

    Scenario: a new tyre is noted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre was replaced
      And front-wheel/tyre seen bead-line even
      Then tyres.bead is met at front-wheel/tyre
      And it notes "first 100 miles"

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen bead-line even
      And rear-wheel/tyre seen bead-line even
      And front-wheel was <work>
      Then tyres.bead is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

Feature: Two-stroke oil from a pump
  Oil in the tank, in the lines and at every pipe.

  @oil.injection-level
  Rule: The two-stroke oil stands above its mark

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/tank seen injection-level above-the-mark
      Then oil.injection-level is met at oil/tank

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/tank seen injection-level <found>
      Then oil.injection-level is fault at oil/tank

      Examples:
        | found          |
        | below-the-mark |
        | empty          |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/tank seen injection-level below-the-mark
      And tom wrote that oil/tank seen injection-level above-the-mark
      Then oil.injection-level is fault

    Scenario: found so, and then filled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/tank seen injection-level below-the-mark
      And tom wrote that oil/tank was filled
      Then oil.injection-level is stale

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.injection-level is missing at oil/tank
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/tank told injection-level above-the-mark
      Then oil.injection-level is missing at oil/tank

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/tank seen injection-level above-the-mark <ago> days ago
      Then oil.injection-level is <state> at oil/tank

      Examples:
        | ago | state |
        | 30  | met   |
        | 31  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/tank seen injection-level above-the-mark
      And <point> was <work>
      Then oil.injection-level is stale at oil/tank

      Examples:
        | point     | work      |
        | oil/tank  | removed   |
        | oil/lines | removed   |
        | oil/pump  | refitted  |
        | oil/tank  | drained   |
        | oil/tank  | bled      |
        | machine   | ridden    |
        | machine   | damaged   |
        | oil       | filled    |
        | oil       | topped-up |

    Scenario: not asked on premix
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is oiled by premix
      Then oil.injection-level is not applicable

    Scenario: not asked of a four-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      Then oil.injection-level is not applicable

  @oil.injection-age
  Rule: The two-stroke oil is new enough

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/tank was filled <ago> months ago
      Then oil.injection-age is <state> at oil/tank

      # 24 months: common practice
      Examples:
        | ago | state |
        | 6   | met   |
        | 24  | met   |
        | 25  | fault |

    Scenario Outline: to the day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/tank was filled <ago> days ago
      Then oil.injection-age is <state> at oil/tank

      # 25 November 2024 to 25 November 2026 is 730 days
      Examples:
        | ago | state |
        | 730 | met   |
        | 731 | fault |

    Scenario: no record of the work
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.injection-age is missing at oil/tank
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/tank was filled
      And <point> was <work>
      Then oil.injection-age is stale at oil/tank

      Examples:
        | point    | work     |
        | oil/tank | replaced |
        | oil/tank | drained  |

    Scenario Outline: taken off and put back it still counts
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/tank was filled
      And oil/tank was <work>
      Then oil.injection-age is met at oil/tank

      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: not asked on premix
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is oiled by premix
      Then oil.injection-age is not applicable

    Scenario: not asked of a four-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      Then oil.injection-age is not applicable

  @oil.lines
  Rule: The oil lines are sound

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/lines seen oil-lines sound-and-clipped
      Then oil.lines is met at oil/lines
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/lines seen oil-lines <found>
      Then oil.lines is fault at oil/lines

      Examples:
        | found        |
        | hard         |
        | split        |
        | clip-missing |
        | weeping      |
        | air-inside   |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/lines seen oil-lines hard
      And tom wrote that oil/lines seen oil-lines sound-and-clipped
      Then oil.lines is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.lines is missing at oil/lines
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/lines told oil-lines sound-and-clipped
      Then oil.lines is missing at oil/lines

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/lines seen oil-lines sound-and-clipped <ago> months ago
      Then oil.lines is <state> at oil/lines

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/lines seen oil-lines sound-and-clipped
      And <point> was <work>
      Then oil.lines is stale at oil/lines

      Examples:
        | point             | work     |
        | oil/lines         | removed  |
        | oil/tank          | removed  |
        | oil/pump          | refitted |
        | fuel/carburettors | replaced |
        | machine           | damaged  |

    Scenario: not asked on premix
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is oiled by premix
      Then oil.lines is not applicable

    Scenario: not asked of a four-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      Then oil.lines is not applicable

  @oil.pump-bled
  Rule: The pump was bled after the oil side was last opened

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump was bled
      Then oil.pump-bled is met at oil/pump
      And it does not lapse by itself

    Scenario: bled before the line came off
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump was bled
      And oil/lines was removed
      And oil/lines was refitted
      Then oil.pump-bled is stale at oil/pump

    Scenario: bled after it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/lines was removed
      And oil/lines was refitted
      And oil/pump was bled
      Then oil.pump-bled is met at oil/pump

    Scenario: no record of the work
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.pump-bled is missing at oil/pump
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump was bled
      And <point> was <work>
      Then oil.pump-bled is stale at oil/pump

      Examples:
        | point     | work     |
        | oil/pump  | removed  |
        | oil/tank  | removed  |
        | oil/lines | refitted |
        | oil/tank  | drained  |
        | oil/pump  | drained  |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump was bled
      And <point> was <work>
      Then oil.pump-bled is met at oil/pump

      Examples:
        | point    | work     |
        | oil/pump | adjusted |

    Scenario: not asked on premix
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is oiled by premix
      Then oil.pump-bled is not applicable

    Scenario: not asked of a four-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      Then oil.pump-bled is not applicable

  @oil.pump-cable
  Rule: The pump follows the throttle

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried pump-mark on-the-mark
      And oil/pump seen pump-cable free-and-whole
      Then oil.pump-cable is met at oil/pump
      And it holds until 2027-05-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump seen pump-mark on-the-mark
      And oil/pump seen pump-cable free-and-whole
      Then oil.pump-cable is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried pump-mark on-the-mark
      And oil/pump told pump-cable free-and-whole
      Then oil.pump-cable is missing

    Scenario Outline: what is wrong with the pump mark
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried pump-mark <found>
      And oil/pump seen pump-cable free-and-whole
      Then oil.pump-cable is fault at oil/pump

      Examples:
        | found         |
        | late          |
        | early         |
        | does-not-move |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried pump-mark late
      And oil/pump seen pump-cable free-and-whole
      And tom wrote that oil/pump tried pump-mark on-the-mark
      Then oil.pump-cable is fault

    Scenario Outline: what is wrong with the pump cable
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried pump-mark on-the-mark
      And oil/pump seen pump-cable <found>
      Then oil.pump-cable is fault at oil/pump

      Examples:
        | found        |
        | frayed       |
        | stiff        |
        | kinked       |
        | nipple-loose |

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.pump-cable is missing at oil/pump
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the pump mark is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump seen pump-cable free-and-whole
      Then oil.pump-cable is missing at oil/pump

    Scenario: the pump cable is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried pump-mark on-the-mark
      Then oil.pump-cable is missing at oil/pump

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump told pump-mark on-the-mark
      And oil/pump told pump-cable free-and-whole
      Then oil.pump-cable is missing at oil/pump

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried pump-mark on-the-mark <ago> months ago
      And oil/pump seen pump-cable free-and-whole <ago> months ago
      Then oil.pump-cable is <state> at oil/pump

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried pump-mark on-the-mark
      And oil/pump seen pump-cable free-and-whole
      And <point> was <work>
      Then oil.pump-cable is stale at oil/pump

      Examples:
        | point             | work     |
        | oil/pump          | removed  |
        | oil/pump          | adjusted |
        | controls/throttle | removed  |
        | controls/throttle | adjusted |
        | fuel/carburettors | refitted |
        | fuel/carburettors | adjusted |
        | steering          | opened   |
        | machine           | damaged  |
        | oil/lines         | damaged  |
        | oil/tank          | damaged  |

    Scenario: not asked on premix
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is oiled by premix
      Then oil.pump-cable is not applicable

    Scenario: not asked of a four-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      Then oil.pump-cable is not applicable

  @oil.delivery
  Rule: Oil is seen to come from every pipe

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried oil-delivery from-every-pipe
      Then oil.delivery is met at oil/pump
      And it does not lapse by itself

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump seen oil-delivery from-every-pipe
      Then oil.delivery is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried oil-delivery <found>
      Then oil.delivery is fault at oil/pump

      Examples:
        | found      |
        | a-pipe-dry |
        | bubbles    |

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then oil.delivery is missing at oil/pump
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump told oil-delivery from-every-pipe
      Then oil.delivery is missing at oil/pump

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried oil-delivery from-every-pipe
      And <point> was <work>
      Then oil.delivery is stale at oil/pump

      Examples:
        | point             | work     |
        | oil/pump          | removed  |
        | oil/tank          | removed  |
        | oil/lines         | refitted |
        | oil/tank          | drained  |
        | oil/pump          | drained  |
        | fuel/carburettors | replaced |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And oil/pump tried oil-delivery from-every-pipe
      And <point> was <work>
      Then oil.delivery is met at oil/pump

      Examples:
        | point    | work     |
        | oil/pump | adjusted |

    Scenario: not asked on premix
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is oiled by premix
      Then oil.delivery is not applicable

    Scenario: not asked of a four-stroke
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      Then oil.delivery is not applicable

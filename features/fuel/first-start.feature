Feature: Ready for the first start
  What stands ready, and what is out of the way, before petrol meets a spark.

  @fuel.extinguisher
  Rule: The right extinguisher stands within reach

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-kind dry-powder
      And bay/extinguisher seen extinguisher-distance 2 m
      Then fuel.extinguisher is met at bay/extinguisher

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher told extinguisher-kind dry-powder
      And bay/extinguisher seen extinguisher-distance 2 m
      Then fuel.extinguisher is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-kind dry-powder
      And bay/extinguisher told extinguisher-distance 2 m
      Then fuel.extinguisher is missing

    Scenario Outline: other kinds that do
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-kind <found>
      And bay/extinguisher seen extinguisher-distance 2 m
      Then fuel.extinguisher is met at bay/extinguisher

      Examples:
        | found          |
        | foam           |
        | carbon-dioxide |

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-kind foam
      And bay/extinguisher seen extinguisher-distance <way>
      Then fuel.extinguisher is <state> at bay/extinguisher

      # 5 m: common practice
      Examples:
        | way   | state |
        | 4.9 m | met   |
        | 5 m   | met   |
        | 5.1 m | fault |
        | 15 m  | fault |

    Scenario Outline: the wrong kind, or none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-kind <found>
      And bay/extinguisher seen extinguisher-distance 2 m
      Then fuel.extinguisher is fault at bay/extinguisher

      Examples:
        | found |
        | water |
        | none  |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.extinguisher is missing at bay/extinguisher
      And it holds first-start, indoor-run and no other gate
      And it is safety-critical

    Scenario: the extinguisher kind is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-distance 2 m
      Then fuel.extinguisher is missing at bay/extinguisher

    Scenario: the extinguisher distance is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-kind dry-powder
      Then fuel.extinguisher is missing at bay/extinguisher

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher told extinguisher-kind dry-powder
      And bay/extinguisher told extinguisher-distance 2 m
      Then fuel.extinguisher is missing at bay/extinguisher

    Scenario: yesterday's word does not count
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-kind dry-powder 1 days ago
      And bay/extinguisher seen extinguisher-distance 2 m 1 days ago
      Then fuel.extinguisher is stale at bay/extinguisher

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-kind dry-powder
      And bay/extinguisher seen extinguisher-distance 2 m
      And <point> was <work>
      Then fuel.extinguisher is stale at bay/extinguisher

      Examples:
        | point            | work    |
        | bay/extinguisher | removed |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.extinguisher is not applicable

    Scenario: it was moved nearer
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-kind dry-powder
      And bay/extinguisher seen extinguisher-distance 20 m 30 minutes ago
      And bay/extinguisher seen extinguisher-distance 1 m 10 minutes ago
      Then fuel.extinguisher is met at bay/extinguisher

    Scenario: two distances of one minute that cannot both be right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-kind dry-powder
      And bay/extinguisher seen extinguisher-distance 2 m 10 minutes ago
      And bay/extinguisher seen extinguisher-distance 1 m 10 minutes ago
      Then fuel.extinguisher is doubt at bay/extinguisher

  @fuel.extinguisher-service
  Rule: The extinguisher is in date and charged

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen service-mark 2026-05
      And bay/extinguisher seen extinguisher-charge full
      Then fuel.extinguisher-service is met at bay/extinguisher

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen service-mark 2026-05
      And there was the defect "not as it should be"
      And bay/extinguisher seen extinguisher-charge full
      And tom wrote that bay/extinguisher seen service-mark 2026-05
      Then fuel.extinguisher-service is fault

    Scenario: found 11 months ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen service-mark 2025-12 11 months ago
      And bay/extinguisher seen extinguisher-charge full
      Then fuel.extinguisher-service is met

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher told service-mark 2026-05
      And bay/extinguisher seen extinguisher-charge full
      Then fuel.extinguisher-service is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen service-mark 2026-05
      And bay/extinguisher told extinguisher-charge full
      Then fuel.extinguisher-service is missing

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen service-mark <mark>
      And bay/extinguisher seen extinguisher-charge full
      Then fuel.extinguisher-service is <state> at bay/extinguisher

      # 12 months: common practice; a month counts from its first day
      Examples:
        | mark       | state |
        | 2025-12    | met   |
        | 2025-11-25 | met   |
        | 2025-11-24 | fault |
        | 2025-11    | fault |

    Scenario: charged yesterday is not charged today
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen service-mark 2026-05 1 days ago
      And bay/extinguisher seen extinguisher-charge full 1 days ago
      Then fuel.extinguisher-service is stale at bay/extinguisher

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen service-mark 2026-05
      And bay/extinguisher seen extinguisher-charge <found>
      Then fuel.extinguisher-service is fault at bay/extinguisher

      Examples:
        | found         |
        | low           |
        | pin-missing   |
        | hose-perished |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.extinguisher-service is missing at bay/extinguisher
      And it holds first-start, indoor-run and no other gate
      And it is safety-critical

    Scenario: the service mark is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen extinguisher-charge full
      Then fuel.extinguisher-service is missing at bay/extinguisher

    Scenario: the extinguisher charge is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen service-mark 2026-05
      Then fuel.extinguisher-service is missing at bay/extinguisher

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher told service-mark 2026-05
      And bay/extinguisher told extinguisher-charge full
      Then fuel.extinguisher-service is missing at bay/extinguisher

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/extinguisher seen service-mark 2026-05
      And bay/extinguisher seen extinguisher-charge full
      And <point> was <work>
      Then fuel.extinguisher-service is stale at bay/extinguisher

      Examples:
        | point            | work    |
        | bay/extinguisher | removed |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.extinguisher-service is not applicable

  @fuel.drip-tray
  Rule: A dry tray stands under the petrol

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/drip-tray seen drip-tray in-place-and-dry
      Then fuel.drip-tray is met at bay/drip-tray

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/drip-tray seen drip-tray <found>
      Then fuel.drip-tray is fault at bay/drip-tray

      Examples:
        | found        |
        | none         |
        | too-small    |
        | petrol-in-it |

    Scenario: found so, and then cleaned
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/drip-tray seen drip-tray none
      And tom wrote that bay/drip-tray was cleaned
      Then fuel.drip-tray is stale

    Scenario: found so, and then cleaned
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/drip-tray seen drip-tray petrol-in-it
      And tom wrote that fuel was cleaned
      Then fuel.drip-tray is stale

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/drip-tray seen drip-tray petrol-in-it
      Then fuel.drip-tray is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over and no other gate

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.drip-tray is missing at bay/drip-tray
      And it holds first-start, indoor-run and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/drip-tray told drip-tray in-place-and-dry
      Then fuel.drip-tray is missing at bay/drip-tray

    Scenario: yesterday's word does not count
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/drip-tray seen drip-tray in-place-and-dry 1 days ago
      Then fuel.drip-tray is stale at bay/drip-tray

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay/drip-tray seen drip-tray in-place-and-dry
      And <point> was <work>
      Then fuel.drip-tray is stale at bay/drip-tray

      Examples:
        | point         | work    |
        | bay/drip-tray | removed |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.drip-tray is not applicable

    Scenario: petrol in the tray below an emptied tank holds no display
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank was drained
      And fuel/tank seen tank-content empty
      And bay/drip-tray seen drip-tray petrol-in-it
      Then the road-test is closed by fuel.drip-tray
      And the on-show is not closed by fuel.drip-tray

  @fuel.ignition-sources
  Rule: No flame, spark, spill or smell

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen flames-and-sparks none
      And bay seen petrol-vapour none
      Then fuel.ignition-sources is met at bay

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay told flames-and-sparks none
      And bay seen petrol-vapour none
      Then fuel.ignition-sources is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen flames-and-sparks none
      And bay told petrol-vapour none
      Then fuel.ignition-sources is missing

    Scenario Outline: something that lights petrol
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen flames-and-sparks <found>
      And bay seen petrol-vapour none
      Then fuel.ignition-sources is fault at bay

      Examples:
        | found               |
        | open-flame          |
        | heater              |
        | grinding-or-welding |
        | smoking             |

    Scenario Outline: something to light
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen flames-and-sparks none
      And bay seen petrol-vapour <found>
      Then fuel.ignition-sources is fault at bay

      Examples:
        | found |
        | spill |
        | smell |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.ignition-sources is missing at bay
      And it holds first-start, indoor-run and no other gate
      And it is safety-critical

    Scenario: the flames and sparks is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen petrol-vapour none
      Then fuel.ignition-sources is missing at bay

    Scenario: the petrol vapour is not on record
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen flames-and-sparks none
      Then fuel.ignition-sources is missing at bay

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay told flames-and-sparks none
      And bay told petrol-vapour none
      Then fuel.ignition-sources is missing at bay

    Scenario: yesterday's word does not count
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen flames-and-sparks none 1 days ago
      And bay seen petrol-vapour none 1 days ago
      Then fuel.ignition-sources is stale at bay

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen flames-and-sparks none
      And bay seen petrol-vapour none
      And <point> was <work>
      Then fuel.ignition-sources is stale at bay

      Examples:
        | point       | work      |
        | bay         | removed   |
        | fuel/tank   | removed   |
        | fuel/petrol | removed   |
        | fuel/tank   | filled    |
        | fuel/petrol | filled    |
        | fuel/tank   | topped-up |
        | fuel/petrol | topped-up |
        | fuel/tank   | drained   |
        | fuel/petrol | drained   |
        | fuel/tank   | cleaned   |
        | fuel/petrol | cleaned   |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen flames-and-sparks none
      And bay seen petrol-vapour none
      And <point> was <work>
      Then fuel.ignition-sources is met at bay

      Examples:
        | point         | work     |
        | fuel/cap      | removed  |
        | fuel/cap      | refitted |
        | fuel/cap      | replaced |
        | fuel/cap      | repaired |
        | fuel/cap      | stripped |
        | fuel/cap      | opened   |
        | fuel/tank/cap | removed  |
        | fuel/tank/cap | refitted |
        | fuel/tank/cap | replaced |
        | fuel/tank/cap | repaired |
        | fuel/tank/cap | stripped |
        | fuel/tank/cap | opened   |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.ignition-sources is not applicable

  @fuel.charging
  Rule: No battery is on charge in the bay

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen charging-in-the-bay none
      Then fuel.charging is met at bay

    Scenario: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen charging-in-the-bay battery-on-charge
      Then fuel.charging is fault at bay

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.charging is missing at bay
      And it holds first-start, indoor-run and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay told charging-in-the-bay none
      Then fuel.charging is missing at bay

    Scenario: yesterday's word does not count
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen charging-in-the-bay none 1 days ago
      Then fuel.charging is stale at bay

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen charging-in-the-bay none
      And <point> was <work>
      Then fuel.charging is stale at bay

      Examples:
        | point             | work    |
        | bay               | removed |
        | electrics/battery | charged |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.charging is not applicable

  @fuel.second-person
  Rule: A second person stands at the stop control

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen second-person at-the-stop-control
      Then fuel.second-person is met at bay

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen second-person <found>
      Then fuel.second-person is fault at bay

      Examples:
        | found     |
        | elsewhere |
        | nobody    |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fuel.second-person is missing at bay
      And it holds first-start, indoor-run and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay told second-person at-the-stop-control
      Then fuel.second-person is missing at bay

    Scenario: yesterday's word does not count
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen second-person at-the-stop-control 1 days ago
      Then fuel.second-person is stale at bay

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And bay seen second-person at-the-stop-control
      And <point> was <work>
      Then fuel.second-person is stale at bay

      Examples:
        | point | work    |
        | bay   | removed |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then fuel.second-person is not applicable

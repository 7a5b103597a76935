Feature: The registration plate
  It is read from behind and shaken. A plate that is gone, covered or foreign stops the ride at the first police car; one that
  hangs by a bolt gets into the rear wheel.

  @fasteners.registration-plate
  Rule: The plate is there, tight and readable

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-mudguard/plate tried registration-plate <found>
      Then fasteners.registration-plate is met at rear-mudguard/plate
      And it holds until 2027-11-25

      Examples:
        | found              |
        | tight-and-readable |
        | trade-plate-tight  |

    Scenario: looked at, and nobody shook it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-mudguard/plate seen registration-plate tight-and-readable
      Then fasteners.registration-plate is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-mudguard/plate tried registration-plate <found>
      Then fasteners.registration-plate is fault
      And it holds <gates> and no other gate

      Examples:
        | found          | gates                |
        | missing        | road-test            |
        | loose          | road-test, hand-over |
        | unreadable     | road-test            |
        | covered        | road-test            |
        | another-number | road-test            |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-mudguard/plate tried registration-plate loose
      And tom wrote that rear-mudguard/plate tried registration-plate tight-and-readable
      Then fasteners.registration-plate is fault

    Scenario Outline: put right, and tried again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-mudguard/plate tried registration-plate <found> 3 days ago
      And rear-mudguard/plate was <work> 2 days ago
      And rear-mudguard/plate tried registration-plate tight-and-readable 1 day ago
      Then fasteners.registration-plate is <state>

      Examples:
        | found          | work      | state |
        | loose          | tightened | met   |
        | another-number | replaced  | met   |
        | unreadable     | cleaned   | met   |
        | covered        | cleaned   | met   |
        | loose          | cleaned   | fault |

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then fasteners.registration-plate is missing at rear-mudguard/plate
      And it holds road-test and no other gate
      And it is not safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-mudguard/plate told registration-plate tight-and-readable
      Then fasteners.registration-plate is missing

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-mudguard/plate tried registration-plate tight-and-readable <ago> months ago
      Then fasteners.registration-plate is <state>

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that makes the result stale
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-mudguard/plate tried registration-plate tight-and-readable
      And <point> was <work>
      Then fasteners.registration-plate is stale

      Examples:
        | point               | work      |
        | rear-mudguard       | refitted  |
        | rear-mudguard/plate | loosened  |
        | rear-mudguard/plate | tightened |
        | machine             | damaged   |
        | rear-mudguard/plate | adjusted  |

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the record is a job-record/1
      Then fasteners.registration-plate is not applicable

    Scenario: not tried before the road test
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for fasteners.registration-plate
      Then the road-test is blocked by fasteners.registration-plate alone

    Scenario: loose before the road test
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for fasteners.registration-plate
      And rear-mudguard/plate tried registration-plate loose
      Then the road-test is blocked by fasteners.registration-plate alone
      And for road-test rear-mudguard/plate is to be replaced first

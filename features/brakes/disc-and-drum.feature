Feature: Disc, drum and cam
  What the friction material presses on, and what presses it.

  @brakes.disc-thickness
  Rule: Every disc is thicker than the least thickness its maker marked

    Scenario: thick enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured thickness 4.70 mm ± 0.06 mm
      And front-brake/disc seen minimum-mark 4.5 mm
      Then brakes.disc-thickness is met
      And it holds until 2027-11-25

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured thickness 4.70 mm ± 0.06 mm
      And there was the defect "not as it should be"
      And front-brake/disc seen minimum-mark 4.5 mm
      And tom wrote that front-brake/disc measured thickness 4.70 mm ± 0.06 mm
      Then brakes.disc-thickness is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc tried thickness 4.70 mm
      And front-brake/disc seen minimum-mark 4.5 mm
      Then brakes.disc-thickness is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured thickness 4.70 mm ± 0.06 mm
      And front-brake/disc told minimum-mark 4.5 mm
      Then brakes.disc-thickness is missing

    Scenario Outline: on both sides of the mark
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured thickness <thickness>
      And front-brake/disc seen minimum-mark 4.5 mm
      Then brakes.disc-thickness is <state> at front-brake/disc

      # the limit is the maker's mark itself: the thickness less the mark must be at least 0 mm
      Examples:
        | thickness         | state |
        | 4.49 mm ± 0.06 mm | fault |
        | 4.50 mm ± 0.06 mm | doubt |
        | 4.56 mm ± 0.06 mm | doubt |
        | 4.57 mm ± 0.06 mm | met   |

    Scenario: no mark and no figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured thickness 4.70 mm ± 0.06 mm
      Then brakes.disc-thickness is missing at front-brake/disc
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: the mark alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen minimum-mark 4.5 mm
      Then brakes.disc-thickness is missing at front-brake/disc

    Scenario: each disc has its own mark
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      And front-brake/left-disc measured thickness 4.70 mm ± 0.06 mm
      And front-brake/left-disc seen minimum-mark 4.5 mm
      And front-brake/right-disc measured thickness 4.70 mm ± 0.06 mm
      And front-brake/right-disc seen minimum-mark 5.0 mm
      Then brakes.disc-thickness is met at front-brake/left-disc
      And brakes.disc-thickness is fault at front-brake/right-disc
      And brakes.disc-thickness is missing at rear-brake/disc

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured thickness 4.70 mm ± 0.06 mm <ago> months ago
      And front-brake/disc seen minimum-mark 4.5 mm <ago> months ago
      Then brakes.disc-thickness is <state> at front-brake/disc

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured thickness 4.70 mm ± 0.06 mm
      And front-brake/disc seen minimum-mark 4.5 mm
      And <point> was <work>
      Then brakes.disc-thickness is met at front-brake/disc

      Examples:
        | point            | work     |
        | front-brake/disc | removed  |
        | front-brake      | refitted |

    Scenario: not asked of drums
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.disc-thickness is not applicable

    Scenario: a thin disc is replaced, not mended
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for brakes.disc-thickness
      And front-brake/disc measured thickness 4.3 mm ± 0.01 mm
      And front-brake/disc seen minimum-mark 4.5 mm
      Then brakes.disc-thickness is fault
      And for road-test front-brake/disc is to be replaced first

  @brakes.disc-runout
  Rule: Every disc runs true

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured runout <runout>
      Then brakes.disc-runout is <state> at front-brake/disc

      # 0.3 mm: common practice
      Examples:
        | runout            | state |
        | 0.20 mm ± 0.06 mm | met   |
        | 0.24 mm ± 0.06 mm | doubt |
        | 0.30 mm ± 0.06 mm | doubt |
        | 0.31 mm ± 0.06 mm | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured runout 0.31 mm ± 0.06 mm
      And tom wrote that front-brake/disc measured runout 0.20 mm ± 0.06 mm
      Then brakes.disc-runout is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc tried runout 0.20 mm
      Then brakes.disc-runout is missing

    Scenario: the maker's figure replaces practice
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says brakes.disc-runout at most 0.15 mm
      And front-brake/disc measured runout 0.20 mm ± 0.06 mm
      Then brakes.disc-runout is fault at front-brake/disc
      And the limit came from "Lark 250 workshop manual"

    Scenario: nobody looked for the maker's figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no word from the maker on brakes.disc-runout
      And front-brake/disc measured runout 0.10 mm ± 0.06 mm
      Then brakes.disc-runout is missing at front-brake/disc

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.disc-runout is missing at front-brake/disc
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured runout 0.10 mm ± 0.06 mm <ago> months ago
      Then brakes.disc-runout is <state> at front-brake/disc

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured runout 0.10 mm ± 0.06 mm
      And <point> was <work>
      Then brakes.disc-runout is stale at front-brake/disc

      Examples:
        | point                | work      |
        | front-brake/disc     | removed   |
        | front-brake          | refitted  |
        | front-wheel/bearings | replaced  |
        | front-wheel/bearings | repaired  |
        | machine              | damaged   |
        | front-brake/disc     | tightened |
        | front-brake/disc     | loosened  |
        | front-wheel/bearings | adjusted  |

    Scenario: taking the wheel out does not undo it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured runout 0.10 mm ± 0.06 mm
      And front-wheel was removed
      And front-wheel was refitted
      Then brakes.disc-runout is met at front-brake/disc

    Scenario: not asked of drums
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.disc-runout is not applicable

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc measured runout 0.20 mm ± 0.06 mm
      Then brakes.disc-runout is met at front-brake/disc
      And it says "at most 0.3 mm (common practice)"
      And it holds until 2027-11-25

  @brakes.disc-condition
  Rule: Every disc is sound

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen disc-condition sound
      Then brakes.disc-condition is met at front-brake/disc
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen disc-condition <found>
      Then brakes.disc-condition is fault at front-brake/disc

      Examples:
        | found   |
        | cracked |
        | scored  |
        | warped  |
        | loose   |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen disc-condition cracked
      And tom wrote that front-brake/disc seen disc-condition sound
      Then brakes.disc-condition is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.disc-condition is missing at front-brake/disc
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc told disc-condition sound
      Then brakes.disc-condition is missing at front-brake/disc

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen disc-condition sound <ago> months ago
      Then brakes.disc-condition is <state> at front-brake/disc

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen disc-condition sound
      And <point> was <work>
      Then brakes.disc-condition is stale at front-brake/disc

      Examples:
        | point            | work      |
        | machine          | damaged   |
        | front-brake/disc | damaged   |
        | front-brake/disc | tightened |
        | front-brake/disc | loosened  |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen disc-condition sound
      And <point> was <work>
      Then brakes.disc-condition is met at front-brake/disc

      Examples:
        | point | work |

    Scenario: not asked of a machine with drums only
      Given a motorcycle with a cable drum in front and a rod drum behind
      Then brakes.disc-condition is not applicable

  @brakes.drum-bore
  Rule: Every drum is smaller in the bore than the greatest figure its maker cast in

    Scenario: small enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum measured bore 160.40 mm ± 0.06 mm
      And rear-brake/drum seen maximum-mark 161.0 mm
      Then brakes.drum-bore is met
      And it holds until 2027-11-25

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum measured bore 160.40 mm ± 0.06 mm
      And there was the defect "not as it should be"
      And rear-brake/drum seen maximum-mark 161.0 mm
      And tom wrote that rear-brake/drum measured bore 160.40 mm ± 0.06 mm
      Then brakes.drum-bore is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum tried bore 160.40 mm
      And rear-brake/drum seen maximum-mark 161.0 mm
      Then brakes.drum-bore is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum measured bore 160.40 mm ± 0.06 mm
      And rear-brake/drum told maximum-mark 161.0 mm
      Then brakes.drum-bore is missing

    Scenario Outline: on both sides of the mark
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum measured bore <bore>
      And rear-brake/drum seen maximum-mark 161.0 mm
      Then brakes.drum-bore is <state> at rear-brake/drum

      # the limit is the maker's mark itself: the mark less the bore must be at least 0 mm
      Examples:
        | bore                | state |
        | 160.93 mm ± 0.06 mm | met   |
        | 160.94 mm ± 0.06 mm | doubt |
        | 161.00 mm ± 0.06 mm | doubt |
        | 161.01 mm ± 0.06 mm | fault |

    Scenario: no mark and no figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum measured bore 160.40 mm ± 0.06 mm
      Then brakes.drum-bore is missing at rear-brake/drum
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum measured bore 160.40 mm ± 0.06 mm <ago> months ago
      And rear-brake/drum seen maximum-mark 161.0 mm <ago> months ago
      Then brakes.drum-bore is <state> at rear-brake/drum

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum measured bore 160.40 mm ± 0.06 mm
      And rear-brake/drum seen maximum-mark 161.0 mm
      And <point> was <work>
      Then brakes.drum-bore is met at rear-brake/drum

      Examples:
        | point           | work     |
        | rear-brake/drum | removed  |
        | rear-brake      | refitted |

    Scenario: not asked of discs
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.drum-bore is not applicable

    Scenario: a drum worn too wide is replaced, not mended
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for brakes.drum-bore
      And rear-brake/drum measured bore 141.4 mm ± 0.1 mm
      And rear-brake/drum seen maximum-mark 141.0 mm
      Then brakes.drum-bore is fault
      And for road-test rear-brake/drum is to be replaced first

  @brakes.drum-condition
  Rule: Every drum is round and sound

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen drum-condition sound
      Then brakes.drum-condition is met at rear-brake/drum
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen drum-condition <found>
      Then brakes.drum-condition is fault at rear-brake/drum

      Examples:
        | found   |
        | cracked |
        | scored  |
        | oval    |
        | blued   |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen drum-condition cracked
      And tom wrote that rear-brake/drum seen drum-condition sound
      Then brakes.drum-condition is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.drum-condition is missing at rear-brake/drum
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen drum-condition sound
      And <point> was <work>
      Then brakes.drum-condition is stale at rear-brake/drum

      Examples:
        | point             | work      |
        | rear-brake/drum   | cleaned   |
        | rear-wheel/spokes | damaged   |
        | rear-wheel/spokes | adjusted  |
        | rear-wheel/spokes | tightened |
        | rear-wheel/spokes | torqued   |

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum told drum-condition sound
      Then brakes.drum-condition is missing at rear-brake/drum

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen drum-condition sound <ago> months ago
      Then brakes.drum-condition is <state> at rear-brake/drum

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that leaves it as it is, the same part put back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum seen drum-condition sound
      And <point> was <work>
      Then brakes.drum-condition is met at rear-brake/drum

      Examples:
        | point           | work     |
        | rear-brake/drum | removed  |
        | rear-brake      | refitted |

    Scenario: not asked of a machine with discs only
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.drum-condition is not applicable

  @brakes.cam-angle
  Rule: With the brake full on, the cam lever still pulls at a right angle or less

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever measured cam-angle <angle>
      Then brakes.cam-angle is <state> at rear-brake/cam-lever

      # 90°: common practice
      Examples:
        | angle      | state |
        | 85 ° ± 2 ° | met   |
        | 88 ° ± 2 ° | doubt |
        | 90 ° ± 2 ° | doubt |
        | 91 ° ± 2 ° | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever measured cam-angle 91 ° ± 2 °
      And tom wrote that rear-brake/cam-lever measured cam-angle 85° ± 2°
      Then brakes.cam-angle is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever tried cam-angle 85 °
      Then brakes.cam-angle is missing

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.cam-angle is missing at rear-brake/cam-lever
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever measured cam-angle 80 ° ± 2 ° <ago> months ago
      Then brakes.cam-angle is <state> at rear-brake/cam-lever

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever measured cam-angle 80 ° ± 2 °
      And <point> was <work>
      Then brakes.cam-angle is stale at rear-brake/cam-lever

      Examples:
        | point                | work     |
        | rear-brake/cam-lever | removed  |
        | rear-brake           | refitted |
        | rear-brake/rod       | replaced |
        | rear-brake/rod       | adjusted |
        | rear-brake/shoes     | replaced |
        | rear-brake/drum      | replaced |

    Scenario Outline: cable work undoes it as well
      Given a motorcycle with a hydraulic drum in front and a cable drum behind
      And rear-brake/cam-lever measured cam-angle 80 ° ± 2 °
      And <point> was <work>
      Then brakes.cam-angle is stale at rear-brake/cam-lever

      Examples:
        | point            | work     |
        | rear-brake/cable | replaced |
        | rear-brake/cable | adjusted |

    Scenario: not asked of a hydraulic drum
      Given a motorcycle with a hydraulic drum in front and one hydraulic disc behind
      Then brakes.cam-angle is not applicable

    Scenario: not asked of discs
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.cam-angle is not applicable

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever measured cam-angle 85 ° ± 2 °
      Then brakes.cam-angle is met at rear-brake/cam-lever
      And it says "at most 90° (common practice)"
      And it holds until 2027-11-25

  @brakes.wear-indicator
  Rule: The wear indicator points inside its marks

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever tried wear-indicator inside-the-marks
      Then brakes.wear-indicator is met at rear-brake/cam-lever
      And it holds until 2027-11-25

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever seen wear-indicator inside-the-marks
      Then brakes.wear-indicator is missing

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever tried wear-indicator <found>
      Then brakes.wear-indicator is fault at rear-brake/cam-lever

      Examples:
        | found         |
        | past-the-mark |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever tried wear-indicator past-the-mark
      And tom wrote that rear-brake/cam-lever tried wear-indicator inside-the-marks
      Then brakes.wear-indicator is fault

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.wear-indicator is missing at rear-brake/cam-lever
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever told wear-indicator inside-the-marks
      Then brakes.wear-indicator is missing at rear-brake/cam-lever

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever tried wear-indicator inside-the-marks <ago> months ago
      Then brakes.wear-indicator is <state> at rear-brake/cam-lever

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever tried wear-indicator inside-the-marks
      And <point> was <work>
      Then brakes.wear-indicator is stale at rear-brake/cam-lever

      Examples:
        | point                | work     |
        | rear-brake/cam-lever | removed  |
        | rear-brake           | refitted |
        | rear-brake/rod       | adjusted |
        | rear-brake/shoes     | replaced |
        | rear-brake/drum      | replaced |

    Scenario: not asked of a machine with discs only
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.wear-indicator is not applicable

    Scenario: none is fitted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever tried wear-indicator none-fitted
      Then brakes.wear-indicator is met at rear-brake/cam-lever
      And it notes "no wear indicator is fitted"

    Scenario: more work that undoes it
      Given a motorcycle with one hydraulic disc in front and a cable drum behind
      And rear-brake/cam-lever tried wear-indicator inside-the-marks
      And rear-brake/cable was adjusted
      Then brakes.wear-indicator is stale at rear-brake/cam-lever

  @brakes.cam-lever-position
  Rule: Nobody shifted the cam lever to hide wear

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever seen cam-lever-position as-made
      Then brakes.cam-lever-position is met at rear-brake/cam-lever
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever seen cam-lever-position <found>
      Then brakes.cam-lever-position is fault at rear-brake/cam-lever

      Examples:
        | found   |
        | shifted |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever seen cam-lever-position shifted
      And tom wrote that rear-brake/cam-lever seen cam-lever-position as-made
      Then brakes.cam-lever-position is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.cam-lever-position is missing at rear-brake/cam-lever
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever told cam-lever-position as-made
      Then brakes.cam-lever-position is missing at rear-brake/cam-lever

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/cam-lever seen cam-lever-position as-made
      And <point> was <work>
      Then brakes.cam-lever-position is stale at rear-brake/cam-lever

      Examples:
        | point                | work      |
        | rear-brake/cam-lever | removed   |
        | rear-brake           | refitted  |
        | rear-brake/shoes     | replaced  |
        | rear-brake/cam-lever | tightened |
        | rear-brake/cam-lever | loosened  |

    Scenario: not asked of a machine with discs only
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.cam-lever-position is not applicable

  @brakes.adjuster
  Rule: There is adjustment left, and it is locked

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/adjuster seen adjuster in-hand-and-locked
      Then brakes.adjuster is met at rear-brake/adjuster
      And it holds until 2027-11-25

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/adjuster seen adjuster <found>
      Then brakes.adjuster is fault at rear-brake/adjuster

      Examples:
        | found      |
        | at-its-end |
        | slack      |
        | stripped   |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/adjuster seen adjuster at-its-end
      And tom wrote that rear-brake/adjuster seen adjuster in-hand-and-locked
      Then brakes.adjuster is fault

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.adjuster is missing at rear-brake/adjuster
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/adjuster told adjuster in-hand-and-locked
      Then brakes.adjuster is missing at rear-brake/adjuster

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/adjuster seen adjuster in-hand-and-locked <ago> months ago
      Then brakes.adjuster is <state> at rear-brake/adjuster

      Examples:
        | ago | state |
        | 12  | met   |
        | 13  | stale |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/adjuster seen adjuster in-hand-and-locked
      And <point> was <work>
      Then brakes.adjuster is stale at rear-brake/adjuster

      Examples:
        | point               | work     |
        | rear-brake/adjuster | removed  |
        | rear-brake          | refitted |
        | rear-brake/rod      | replaced |
        | rear-brake/shoes    | replaced |
        | rear-brake/rod      | adjusted |

    Scenario: not asked of a machine with hydraulics only
      Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
      Then brakes.adjuster is not applicable

    Scenario: asked of a cable disc
      Given a motorcycle with a cable disc in front and a rod drum behind
      Then brakes.adjuster is missing at front-brake/adjuster

    Scenario Outline: more work that undoes it
      Given a motorcycle with one hydraulic disc in front and a cable drum behind
      And rear-brake/adjuster seen adjuster in-hand-and-locked
      And rear-brake/cable was <work>
      Then brakes.adjuster is stale at rear-brake/adjuster

      Examples:
        | work     |
        | replaced |
        | adjusted |

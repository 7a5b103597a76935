Feature: The room, and the engine as a source
  What is not known counts against the run.

  @air.room
  Rule: It is known how much air the room holds and what lets fresh air in

    Scenario Outline: the openings
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings <openings>
      Then air.room is <state>

      Examples:
        | openings    | state |
        | shut        | met   |
        | held-open   | met   |
        | fan-running | met   |
        | unknown     | fault |

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And there was the defect "not as it should be"
      And room seen openings shut
      And tom wrote that room measured volume 200 m³ ± 20 m³
      Then air.room is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room tried volume 200 m³
      And room seen openings shut
      Then air.room is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room told openings shut
      Then air.room is missing

    Scenario: open windows are noted and not counted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings held-open
      Then air.room is met
      And it notes "Open doors and windows are not counted"

    Scenario: nobody measured the room
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room seen openings shut
      Then air.room is missing
      And it holds indoor-run and no other gate
      And it is safety-critical

    Scenario: nobody looked at the openings
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      Then air.room is missing

    Scenario: the volume stands, the openings are looked at on the day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³ 2 years ago
      And room seen openings shut
      Then air.room is met

    Scenario: nothing that burns fuel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then air.room is not applicable

    Scenario: looked at yesterday
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings held-open 1 day ago
      Then air.room is stale

    Scenario: two volumes that cannot both be right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room measured volume 300 m³ ± 20 m³
      And room seen openings held-open
      Then air.room is doubt

    Scenario: a room of no size is measured again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room seen volume 0 m³
      And room seen openings shut
      Then air.room is missing

  @air.fan
  Rule: A fan counts only with its air measured and seen to move it to or from the open

    Scenario Outline: the fan
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings fan-running
      And room measured airflow 400 m³/h ± 60 m³/h
      And room tried fan <fan>
      Then air.fan is <state>

      Examples:
        | fan                   | state |
        | moves-air-to-outdoors | met   |
        | switched-off          | fault |
        | stirs-the-room-air    | fault |

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings fan-running
      And room measured airflow 400 m³/h ± 60 m³/h
      And there was the defect "not as it should be"
      And room tried fan moves-air-to-outdoors
      And tom wrote that room measured airflow 400 m³/h ± 60 m³/h
      Then air.fan is fault

    Scenario: found 366 days ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings fan-running
      And room measured airflow 400 m³/h ± 60 m³/h 366 days ago
      And room tried fan moves-air-to-outdoors
      Then air.fan is stale

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings fan-running
      And room tried airflow 400 m³/h
      And room tried fan moves-air-to-outdoors
      Then air.fan is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings fan-running
      And room measured airflow 400 m³/h ± 60 m³/h
      And room seen fan moves-air-to-outdoors
      Then air.fan is missing

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings fan-running
      And room measured airflow 400 m³/h ± 60 m³/h
      And room tried fan moves-air-to-outdoors
      Then air.fan is met
      And it holds until 2026-11-25

    Scenario: nobody measured its air
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings fan-running
      And room tried fan moves-air-to-outdoors
      Then air.fan is missing
      And it holds indoor-run and no other gate
      And it is safety-critical

    Scenario: the fan was adjusted since its air was measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings fan-running
      And room measured airflow 400 m³/h ± 60 m³/h
      And room tried fan moves-air-to-outdoors
      And room was adjusted
      Then air.fan is stale

    Scenario: no fan
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings held-open
      And room measured airflow 4000 m³/h ± 600 m³/h
      Then air.fan is not applicable

    Scenario: two airflows that cannot both be right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³
      And room seen openings fan-running
      And room measured airflow 4000 m³/h ± 600 m³/h
      And room measured airflow 8000 m³/h ± 600 m³/h
      And room tried fan moves-air-to-outdoors
      Then air.fan is doubt

  @air.mixing
  Rule: A measured mixing factor divides the airflow

    Scenario Outline: on both sides of perfect mixing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured mixing-factor <factor>
      Then air.mixing is <state>

      # 1 is perfect mixing; 0.2 is how another convention writes 5
      Examples:
        | factor                | state |
        | 0.2 times ± 0.3 times | fault |
        | 1.3 times ± 0.3 times | doubt |
        | 1.4 times ± 0.3 times | met   |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured mixing-factor 0.2 times ± 0.3 times
      And tom wrote that room measured mixing-factor 1.4 times ± 0.3 times
      Then air.mixing is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room tried mixing-factor 1.4 times
      Then air.mixing is missing

    Scenario: a factor from hearsay is none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room told mixing-factor 1.4 times
      Then air.mixing is missing
      And it holds indoor-run and no other gate
      And it is safety-critical

    Scenario: nobody measured it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then air.mixing is not applicable

    Scenario: measured before the room was rebuilt
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured mixing-factor 2 times ± 0.1 times
      And room was replaced
      Then air.mixing is stale

    Scenario: the prediction counts with it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room/co-instrument measured background 0 ppm ± 1 ppm
      And run-plan seen exhaust-goes into-the-room
      And run-plan seen planned-speed idle
      And exhaust seen exhaust-data not-measured
      And room measured volume 1600 m³ ± 16 m³
      And room seen openings shut
      And room measured mixing-factor 1.4 times ± 0.3 times
      And run-plan seen planned-runs 5on
      Then air.mixing is met
      And air.shift is met
      And it says "predicted: 10.64 ppm"

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured mixing-factor 1.4 times ± 0.3 times
      Then air.mixing is met at room
      And it says "at least 1 (Industrial Ventilation (ACGIH), dilution, mixing factor K, from a university's course, read in a copy)"
      And it does not lapse by itself

  @air.exhaust
  Rule: It is said whether the exhaust was measured

    Scenario Outline: measured or not
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data <data>
      Then air.exhaust is <state>

      Examples:
        | data         | state |
        | not-measured | met   |
        | measured     | met   |
        | unknown      | fault |

    Scenario: a later good look ends it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data unknown
      And tom wrote that exhaust seen exhaust-data measured
      Then air.exhaust is met

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust told exhaust-data not-measured
      Then air.exhaust is missing

    Scenario: nobody says
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      Then air.exhaust is missing
      And it holds indoor-run and no other gate
      And it is safety-critical

    Scenario: nothing that burns fuel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then air.exhaust is not applicable

    Scenario: written yesterday
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 2on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data not-measured 1 day ago
      Then air.exhaust is stale

  @air.exhaust-measured
  Rule: A measured exhaust gives a rate that can be believed

    Scenario: measured warm, at idle
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      And exhaust measured co-share 4.5 % ± 0.3 %
      And exhaust measured exhaust-rpm 1300 rpm ± 50 rpm
      And run-plan seen engine-at-start warm
      Then air.exhaust-measured is met
      And it says "4.5 % ± 0.3 % at 1300 rpm ± 50 rpm"
      And it holds until 2026-11-25

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      And exhaust measured co-share 4.5 % ± 0.3 %
      And there was the defect "not as it should be"
      And exhaust measured exhaust-rpm 1300 rpm ± 50 rpm
      And run-plan seen engine-at-start warm
      And tom wrote that exhaust measured co-share 4.5 % ± 0.3 %
      Then air.exhaust-measured is fault

    Scenario: found 93 days ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      And exhaust measured co-share 4.5 % ± 0.3 % 93 days ago
      And exhaust measured exhaust-rpm 1300 rpm ± 50 rpm
      And run-plan seen engine-at-start warm
      Then air.exhaust-measured is stale

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      And exhaust tried co-share 4.5 %
      And exhaust measured exhaust-rpm 1300 rpm ± 50 rpm
      And run-plan seen engine-at-start warm
      Then air.exhaust-measured is missing

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      And exhaust measured co-share 4.5 % ± 0.3 %
      And exhaust tried exhaust-rpm 1300 rpm
      And run-plan seen engine-at-start warm
      Then air.exhaust-measured is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      And exhaust measured co-share 4.5 % ± 0.3 %
      And exhaust measured exhaust-rpm 1300 rpm ± 50 rpm
      And run-plan told engine-at-start warm
      Then air.exhaust-measured is missing

    Scenario: readings taken too far apart
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      And exhaust measured co-share 4.5 % ± 0.3 % 3 hours ago
      And exhaust measured exhaust-rpm 1300 rpm ± 50 rpm
      And run-plan seen engine-at-start warm
      Then air.exhaust-measured is missing

    Scenario: a warm reading says nothing about a cold start
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      And exhaust measured co-share 4.5 % ± 0.3 %
      And exhaust measured exhaust-rpm 1300 rpm ± 50 rpm
      And run-plan seen engine-at-start cold
      Then air.exhaust-measured is fault

    Scenario Outline: what no idling engine gives
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      And exhaust measured co-share <share>
      And exhaust measured exhaust-rpm <speed>
      And run-plan seen engine-at-start warm
      Then air.exhaust-measured is missing

      Examples:
        | share         | speed             |
        | 0 % ± 0.3 %   | 1300 rpm ± 50 rpm |
        | 16 % ± 0.3 %  | 1300 rpm ± 50 rpm |
        | 4.5 % ± 0.3 % | 2480 rpm ± 50 rpm |
        | 4.5 % ± 0.3 % | 300 rpm ± 50 rpm  |

    Scenario: said to be measured, and no figures
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      Then air.exhaust-measured is missing
      And it holds indoor-run and no other gate
      And it is safety-critical

    Scenario Outline: worked on since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      And exhaust measured co-share 4.5 % ± 0.3 %
      And exhaust measured exhaust-rpm 1300 rpm ± 50 rpm
      And run-plan seen engine-at-start warm
      And <place> was <work>
      Then air.exhaust-measured is stale

      Examples:
        | place             | work     |
        | fuel/carburettors | opened   |
        | fuel/carburettors | adjusted |
        | fuel/carburettors | cleaned  |
        | ignition          | replaced |
        | ignition          | adjusted |
        | engine            | opened   |
        | engine/intake     | removed  |
        | engine/head       | removed  |
        | engine/top-end    | removed  |
        | engine/cylinder-1 | removed  |
        | engine/crankcase  | opened   |
        | engine/valves     | replaced |
        | exhaust           | replaced |

    Scenario: nobody measured the exhaust
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And exhaust seen exhaust-data not-measured
      Then air.exhaust-measured is not applicable

    Scenario: two shares that cannot both be right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data measured
      And exhaust measured co-share 4.5 % ± 0.3 %
      And exhaust measured co-share 6.5 % ± 0.3 %
      And exhaust measured exhaust-rpm 1300 rpm ± 50 rpm
      And run-plan seen engine-at-start warm
      Then air.exhaust-measured is doubt

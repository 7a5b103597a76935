Feature: What has killed before is refused
  From the joint alert of NIOSH, CDPHE, CPSC, OSHA and EPA on small petrol engines (DHHS (NIOSH) 96-118, read). The engines are
  taken by their displacement, the rooms as described; where the alert gives no volume, a generous one stands here.

  @air.quarter-hour @air.shift
  Rule: A pump in a large room with the doors to the next one open

    Scenario Outline: 8 hp in 59 000 ft³, the operator lost consciousness
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And room/co-instrument measured background 0 ppm ± 5 ppm
      And room measured volume 59000 ft³ ± 5900 ft³
      And room seen openings held-open
      And run-plan seen planned-runs <runs>
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data not-measured
      Then air.shift is fault

      Examples:
        | runs  |
        | 15on  |
        | 30on  |
        | 120on |

  @air.peak
  Rule: A washer in a barn

    Scenario: 11 hp for half an hour, the operator died
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And room/co-instrument measured background 0 ppm ± 5 ppm
      And room measured volume 500 m³ ± 50 m³
      And room seen openings held-open
      And run-plan seen planned-runs 30on
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data not-measured
      Then air.peak is fault

  @air.idle-only @air.fan
  Rule: A saw in a basement with doors and windows open and a fan

    Scenario: under load, with a fan nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And room/co-instrument measured background 0 ppm ± 5 ppm
      And room measured volume 200 m³ ± 20 m³
      And room seen openings fan-running
      And run-plan seen planned-runs 20on
      And run-plan seen planned-speed above-idle
      And run-plan seen exhaust-goes into-the-room
      And exhaust seen exhaust-data not-measured
      Then air.idle-only is fault
      And air.fan is missing
      And air.peak is missing

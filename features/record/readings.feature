Feature: Can the readings be relied on?

  @record.instrument-calibrated
  Rule: Every reading is taken with an instrument inside its calibration, or taken again

    Scenario: a tyre gauge outside its calibration closes no first start
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the calibration of the instrument ran out 2 days ago
      And front-wheel/tyre measured pressure 180 kPa ± 5 kPa 1 day ago
      Then record.instrument-calibrated is stale
      And the first-start is not closed by record.instrument-calibrated
      And it is cleared by "Measure again, or torque again, with an instrument that is inside its calibration."

    Scenario: inside its calibration
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      Then record.instrument-calibrated is met

    Scenario: on the last day of its calibration
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the calibration of the instrument ran out 2 days ago
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 2 days ago
      Then record.instrument-calibrated is met

    Scenario: the day after
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the calibration of the instrument ran out 2 days ago
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 1 day ago
      Then record.instrument-calibrated is stale
      And it says "e1 was read with caliper 2026-11-24 09:00, outside its calibration (2026-10-24 to 2026-11-23)"
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: taken again with another
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the calibration of the instrument ran out 2 days ago
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 1 day ago
      And another instrument is taken from here on
      And front-brake/caliper/inner-pad measured thickness 3.2 mm ± 0.1 mm
      Then record.instrument-calibrated is met
      And brakes.pad-thickness is met at front-brake/caliper/inner-pad

    Scenario: taken again with another, and then taken back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the calibration of the instrument ran out 2 days ago
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 1 day ago
      And another instrument is taken from here on
      And front-brake/caliper/inner-pad measured thickness 3.2 mm ± 0.1 mm
      And ida corrected it as told to 3.2 mm
      Then record.instrument-calibrated is stale

    Scenario: another part measured with the good one is no help
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the calibration of the instrument ran out 2 days ago
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 1 day ago
      And another instrument is taken from here on
      And front-brake/caliper/outer-pad measured thickness 3.2 mm ± 0.1 mm
      Then record.instrument-calibrated is stale

    Scenario: found out later, and everything read with it falls
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 30 days ago
      And the instrument was found out of tolerance 1 day ago
      Then record.instrument-calibrated is stale
      And it says "e1 was read with caliper 2026-10-26 09:00, later found out of tolerance (e2)"

    Scenario: used again after it was found out
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 1 day ago
      And the instrument was found out of tolerance 2 days ago
      Then record.instrument-calibrated is stale

    Scenario: found out, and everything taken again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 30 days ago
      And the instrument was found out of tolerance 1 day ago
      And another instrument is taken from here on
      And front-brake/caliper/inner-pad measured thickness 3.2 mm ± 0.1 mm
      Then record.instrument-calibrated is met

    Scenario: found out, taken again, and then taken back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 30 days ago
      And the instrument was found out of tolerance 1 day ago
      And another instrument is taken from here on
      And front-brake/caliper/inner-pad measured thickness 3.2 mm ± 0.1 mm
      And ida corrected it as told to 3.2 mm
      Then record.instrument-calibrated is stale

  @record.agreement
  Rule: Entries about one thing agree where no work lies between them

    # Two readings may lie apart by the root of the sum of the squares of their uncertainties: √(0.1² + 0.1²) = 0.141 mm.
    Scenario Outline: two readings
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.0 mm ± 0.1 mm 1 day ago
      And tom wrote that front-brake/caliper/inner-pad measured thickness <again> ± 0.1 mm
      Then record.agreement is <state>

      Examples:
        | again   | state |
        | 3.1 mm  | met   |
        | 3.14 mm | met   |
        | 3.15 mm | doubt |
        | 2.85 mm | doubt |

    Scenario: with work between them they may differ
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.0 mm ± 0.1 mm 2 days ago
      And front-brake/caliper/inner-pad was replaced 1 day ago
      And front-brake/caliper/inner-pad measured thickness 4.5 mm ± 0.1 mm
      Then record.agreement is met

    Scenario: two date codes read off one tyre
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/tyre seen date-code 1524 1 day ago
      And tom wrote that rear-wheel/tyre seen date-code 1521
      Then record.agreement is doubt
      And it says "rear wheel, tyre: date code 1524 (e1) and 1521 (e2) cannot both be right"
      And it holds road-test, hand-over and no other gate
      And it is not safety-critical

    Scenario: the wrong one is corrected
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/tyre seen date-code 1524 1 day ago
      And rear-wheel/tyre seen date-code 1521
      And tom corrected it to 1524
      Then record.agreement is met

    Scenario: the same week, written more fully
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen date-mark 2023-05 1 day ago
      And front-brake/hydraulic/hose seen date-mark 2023-05-14
      Then record.agreement is met

    Scenario: two marks with no day in common
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen date-mark 2023-05 1 day ago
      And front-brake/hydraulic/hose seen date-mark 2022
      Then record.agreement is doubt

    Scenario: one of them was written at a part that this machine has not
      Given a motorcycle with no brake in front and a rod drum behind
      And front-brake/control measured free-play 8 mm ± 0.6 mm 1 day ago
      And rear-brake/control measured free-play 24 mm ± 0.6 mm
      Then record.agreement is doubt
      And it says "free play 8 mm ± 0.6 mm (e1) and 24 mm ± 0.6 mm (e2) cannot both be right"

    Scenario: one finds it sound and the other cracked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-condition cracked 1 day ago
      And tom wrote that front-brake/hydraulic/hose seen hose-condition sound
      Then record.agreement is doubt
      And brakes.hose-condition is fault at front-brake/hydraulic/hose

  @record.plausible
  Rule: A figure that cannot be true blocks until it is corrected

    Scenario: nothing in it is impossible
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen odometer 18200 km 1 day ago
      Then record.plausible is met

    Scenario: a figure that no check asks for
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen odometer 18200000 km 1 day ago
      Then record.plausible is doubt
      And it says "odometer 18200000 km is not possible: it lies between 0 km and 3000000 km (e1)"

    Scenario: the same corrected
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen odometer 18200000 km 1 day ago
      And ida corrected it to 18200 km
      Then record.plausible is met

    Scenario: a figure that a check asks for is that check's to doubt
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 420 mm ± 0.1 mm 1 day ago
      Then record.plausible is met
      And brakes.pad-thickness is doubt at front-brake/caliper/inner-pad

    Scenario: a description that no machine has
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the top speed is 1200 km/h
      Then record.plausible is doubt
      And it says "machine.top-speed 1200 km/h is not possible: it lies between 5 km/h and 650 km/h"
      And it holds first-start, indoor-run, road-test, on-show, hand-over, non-runner and no other gate
      And it is not safety-critical

    Scenario: a description that is rare
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the top speed is 400 km/h
      Then record.plausible is met
      And it notes "machine.top-speed 400 km/h: most are between 20 km/h and 320 km/h. Write the speed the maker gives; check mph against km/h"

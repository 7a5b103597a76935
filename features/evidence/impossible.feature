Feature: Readings that cannot be true

  Rule: A reading that cannot be true proves nothing and is not passed over

    Scenario: alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 420 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is doubt at front-brake/caliper/inner-pad
      And it says "thickness 420 mm is not possible: it lies between 0 mm and 20 mm (e1); it counts for nothing: read again and correct it"
      And it notes nothing

    Scenario: a good reading before it does not stand in for it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 4.2 mm ± 0.1 mm 2 days ago
      And front-brake/caliper/inner-pad measured thickness 420 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is doubt at front-brake/caliper/inner-pad

    Scenario: nor does a good reading after it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 420 mm ± 0.1 mm 2 days ago
      And front-brake/caliper/inner-pad measured thickness 4.2 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is doubt at front-brake/caliper/inner-pad

    Scenario: another reading was taken off with the old part
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 1.2 mm ± 0.1 mm 3 days ago
      And front-brake/caliper/inner-pad was replaced 2 days ago
      And front-brake/caliper/inner-pad measured thickness 420 mm ± 0.1 mm 1 day ago
      And front-brake/caliper/inner-pad measured thickness 4.2 mm ± 0.1 mm
      Then brakes.pad-thickness is doubt at front-brake/caliper/inner-pad
      And it says "thickness 420 mm is not possible: it lies between 0 mm and 20 mm (e3)"

    Scenario: its writer corrects it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 420 mm ± 0.1 mm 1 day ago
      And ida corrected it to 4.2 mm ± 0.1 mm
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad

    Scenario: the part it was read from is gone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 420 mm ± 0.1 mm 3 days ago
      And front-brake/caliper/inner-pad was replaced 2 days ago
      And front-brake/caliper/inner-pad measured thickness 4.2 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad

    Scenario: hearsay that cannot be true is hearsay first
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad told thickness 420 mm 1 day ago
      Then brakes.pad-thickness is missing at front-brake/caliper/inner-pad

    Scenario: a fault beside it stays a fault, and it is told all the same
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 0.4 mm ± 0.1 mm 2 days ago
      And front-brake/caliper/inner-pad measured thickness 420 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is fault at front-brake/caliper/inner-pad
      And it notes "thickness 420 mm is not possible: it lies between 0 mm and 20 mm (e2)"

  Rule: A reading that is possible and rare is asked again, and changes nothing

    Scenario: pads as thick as none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 15 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad
      And it notes "thickness 15 mm as read? It usually lies between 0.3 mm and 12 mm. Measure the friction material alone, without the plate it sits on (e1)"

    Scenario: read again, and the same
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 15 mm ± 0.1 mm 2 days ago
      And tom wrote that front-brake/caliper/inner-pad measured thickness 15.1 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad
      And it notes nothing

    Scenario: two that seldom go together
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured pressure 32 psi ± 1.5 psi
      And rear-wheel/tyre measured pressure 8 psi ± 1.5 psi
      Then tyres.pressure is missing at rear-wheel/tyre
      And it notes "pressure 32 psi does not go with pressure 8 psi (e2). Check the unit of both: psi, bar or kPa (e2)"

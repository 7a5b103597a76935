Feature: Friction material, as one shop wrote it

  @brakes.pad-thickness
  Rule: Every disc pad keeps enough friction material

    Scenario: thin, but in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is DE
      And front-brake/caliper/inner-pad measured thickness 1.8 mm ± 0.1 mm
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad


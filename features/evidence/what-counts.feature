Feature: What of the record counts

  Rule: A corrected entry counts no more

    Scenario: a crack that was none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-condition cracked 1 day ago
      And tom corrected it to sound
      Then brakes.hose-condition is met at front-brake/hydraulic/hose

    Scenario: its own writer takes no fault away
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-condition cracked 1 day ago
      And ida corrected it to sound
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

    Scenario: its own writer may find it worse
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-condition sound 1 day ago
      And ida corrected it to cracked
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

  Rule: A reading counts only while its instrument is in calibration

    Scenario: taken on the last day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the calibration of the instrument ran out 2 days ago
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 2 days ago
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad

    Scenario: taken the day after
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the calibration of the instrument ran out 2 days ago
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is stale at front-brake/caliper/inner-pad

    Scenario: a fault read with it is no fault proven
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the calibration of the instrument ran out 2 days ago
      And front-brake/caliper/inner-pad measured thickness 0.9 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is stale at front-brake/caliper/inner-pad

  Rule: A reading falls when its instrument is found to read wrongly

    Scenario: found out after it was used
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 30 days ago
      And the instrument was found out of tolerance 1 day ago
      Then brakes.pad-thickness is stale at front-brake/caliper/inner-pad

    Scenario: read again with another
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 30 days ago
      And the instrument was found out of tolerance 1 day ago
      And another instrument is taken from here on
      And front-brake/caliper/inner-pad measured thickness 3.2 mm ± 0.1 mm
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad

  Rule: A fault somebody was told of counts until somebody has looked since

    Scenario: nobody has looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose told hose-condition cracked 3 days ago
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

    Scenario: looked since, and found sound
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose told hose-condition cracked 3 days ago
      And front-brake/hydraulic/hose seen hose-condition sound
      Then brakes.hose-condition is met at front-brake/hydraulic/hose

    Scenario: told of it after the look
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-condition sound 3 days ago
      And front-brake/hydraulic/hose told hose-condition cracked
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

    Scenario: told only that it is sound
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose told hose-condition sound
      Then brakes.hose-condition is missing at front-brake/hydraulic/hose

  Rule: A proof holds for its time, and until work on the part undoes it

    Scenario Outline: twelve months
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm <ago>
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad

      Examples:
        | ago           | state |
        | 12 months ago | met   |
        | 13 months ago | stale |

    Scenario Outline: work on the part, before and after
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad was removed <work>
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 2 days ago
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad

      Examples:
        | work       | state |
        | 3 days ago | met   |
        | 1 day ago  | stale |

  Rule: What is not there never passes

    Scenario: never measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then brakes.pad-thickness is missing at front-brake/caliper/inner-pad
      And it says "thickness was never measured"

    Scenario: only told
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad told thickness 3.1 mm
      Then brakes.pad-thickness is missing
      And it says "was written down, but not by somebody who measured it"

    Scenario: nobody looked for the maker's figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no word from the maker on brakes.pad-thickness
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      Then brakes.pad-thickness is missing at front-brake/caliper/inner-pad
      And it says "does not say that none was found"

    Scenario: what was written says nothing that can be judged
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description illegible
      And front-wheel measured wheel-load 160 kg ± 2 kg
      Then tyres.load-index is missing at front-wheel/tyre
      And it says "gives no load index and speed symbol"

  Rule: A value is held against its limit with its uncertainty

    Scenario Outline: one reading
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness <thickness> ± 0.1 mm
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad

      Examples:
        | thickness | state |
        | 1.4 mm    | fault |
        | 1.6 mm    | doubt |
        | 1.7 mm    | met   |

    # Together two readings of ± 0.1 mm leave ± 0.15 mm.
    Scenario Outline: a value worked out from two readings
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And front-brake/caliper/outer-pad measured thickness <outer> ± 0.1 mm
      Then brakes.pad-difference is <state> at front-brake/caliper

      Examples:
        | outer  | state |
        | 2.4 mm | met   |
        | 2.1 mm | doubt |
        | 2.0 mm | fault |

    Scenario: two readings that cannot both be right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.0 mm ± 0.1 mm 1 day ago
      And front-brake/caliper/inner-pad measured thickness 3.4 mm ± 0.1 mm
      Then brakes.pad-thickness is doubt at front-brake/caliper/inner-pad

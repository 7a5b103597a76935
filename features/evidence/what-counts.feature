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

    Scenario Outline: hearsay takes no work away
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 4.2 mm ± 0.1 mm 2 days ago
      And tom wrote that front-brake/caliper/inner-pad was replaced 1 day ago
      And ida corrected it: front-brake/caliper/inner-pad <deed> pad-fit seated
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad

      Examples:
        | deed | state |
        | seen | met   |
        | told | stale |

    Scenario: work that was none undoes nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 4.2 mm ± 0.1 mm 2 days ago
      And tom wrote that front-brake/caliper/inner-pad was replaced 1 day ago
      And ida corrected it to cleaned
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad

    Scenario: its own writer takes no work away
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 4.2 mm ± 0.1 mm 2 days ago
      And front-brake/caliper/inner-pad was replaced 1 day ago
      And ida corrected it to cleaned
      Then brakes.pad-thickness is stale at front-brake/caliper/inner-pad

    Scenario: an examination that was none ends no noise
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And ida corrected it to cleaned
      And tom wrote that engine tried running-noise even 30 minutes ago
      Then engine.knock is fault

    Scenario: nor does it where one person works alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And ida corrected it to cleaned
      And engine tried running-noise even 30 minutes ago
      Then engine.knock is fault

    Scenario: work that examines nothing ends no noise
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise knocks 3 days ago
      And engine was cleaned 2 days ago
      And tom wrote that engine tried running-noise even 1 day ago
      Then engine.knock is fault

    Scenario: nor does it where one person works alone and cleaned it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And engine tried running-noise knocks 3 days ago
      And engine was cleaned 2 days ago
      And engine tried running-noise even 1 day ago
      Then engine.knock is fault

    Scenario: who works alone takes a fault away by looking again twice
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake tried walking-pace-stop weak 3 days ago
      And ida corrected it to stops
      And front-brake tried walking-pace-stop stops 1 day ago
      Then brakes.walking-pace is met at front-brake

    Scenario: who works alone and was told so has not looked again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake tried walking-pace-stop weak 3 days ago
      And ida corrected it as told to stops
      And front-brake tried walking-pace-stop stops 1 day ago
      Then brakes.walking-pace is fault at front-brake

    Scenario Outline: a good look that its writer takes back proves nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried walking-pace-stop stops
      And <who> corrected it as <deed> to stops
      Then brakes.walking-pace is missing at front-brake

      Examples:
        | who | deed    |
        | ida | told    |
        | tom | told    |
        | ida | assumed |

    Scenario: a reading that its writer takes back proves nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 4.1 mm ± 0.1 mm
      And ida corrected it as told to 4.1 mm
      Then brakes.pad-thickness is missing at front-brake/caliper/inner-pad

    Scenario: a reading that is taken back still shows what it shows bad together with another
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/drum measured bore 180.9 mm ± 0.05 mm
      And ida corrected it as told to 180.1 mm
      And rear-brake/drum seen maximum-mark 180.7 mm
      Then brakes.drum-bore is fault at rear-brake/drum

    Scenario Outline: work that is taken back proves nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And tom wrote that front-brake/hydraulic was bled
      And <who> corrected it to cleaned
      Then brakes.bled is missing

      Examples:
        | who |
        | tom |
        | ida |

    Scenario: work that its own writer takes back still undoes what it undid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm
      And tom wrote that front-brake/hydraulic was bled
      And tom corrected it to cleaned
      Then brakes.lever-feel is stale

    Scenario Outline: a fault that was lifted comes back when the look that lifted it is taken back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried walking-pace-stop weak 3 days ago
      And tom corrected it to stops
      And <who> corrected it as <deed> to stops
      Then brakes.walking-pace is fault at front-brake

      Examples:
        | who | deed    |
        | tom | told    |
        | ida | told    |
        | tom | assumed |

    Scenario: and a good look of the first writer does not end it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried walking-pace-stop weak 3 days ago
      And tom corrected it to stops
      And tom corrected it as told to stops
      And front-brake tried walking-pace-stop stops
      Then brakes.walking-pace is fault at front-brake

    Scenario: the look that lifted a fault was at the other brake
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried walking-pace-stop weak 3 days ago
      And tom corrected it to stops
      And tom corrected it: rear-brake tried walking-pace-stop stops
      And front-brake tried walking-pace-stop stops
      Then brakes.walking-pace is fault at front-brake

    Scenario: tried again after all, the fault is lifted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried walking-pace-stop weak 3 days ago
      And tom corrected it to stops
      And tom corrected it as told to stops
      And tom corrected it as tried to stops
      Then brakes.walking-pace is met at front-brake

    Scenario: a slip in the correction of a fault is put right by the one who lifts it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried walking-pace-stop weak 3 days ago
      And ida corrected it to stops
      And tom corrected it to stops
      Then brakes.walking-pace is met at front-brake

    Scenario: so does one that any other person may correct
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen electrolyte between-marks
      And electrics/battery seen battery-case cracked 1 day ago
      And tom corrected it to dry-and-whole
      And tom corrected it as told to dry-and-whole
      Then electrics.battery-level is fault

    Scenario: so does a slip that was withdrawn at once
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake tried walking-pace-stop weak 1 day ago
      And ida withdrew it 4 minutes later as stops
      And ida corrected it as told to stops
      And front-brake tried walking-pace-stop stops
      Then brakes.walking-pace is fault at front-brake

    Scenario: who works alone and takes the first of two looks back has looked once
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake tried walking-pace-stop weak 3 days ago
      And ida corrected it to stops
      And ida corrected it as told to stops
      And front-brake tried walking-pace-stop stops 1 day ago
      Then brakes.walking-pace is fault at front-brake

    Scenario: who works alone and takes the second of two looks back has looked once
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake tried walking-pace-stop weak 3 days ago
      And ida corrected it to stops
      And front-brake tried walking-pace-stop stops 1 day ago
      And ida corrected it as told to stops
      Then brakes.walking-pace is fault at front-brake

    Scenario: hearsay of a fault stands when the look that ended it is taken back
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake told walking-pace-stop weak 3 days ago
      And front-brake tried walking-pace-stop stops 1 day ago
      And ida corrected it as told to stops
      Then brakes.walking-pace is fault at front-brake

    Scenario: the correction of work is put right, and the work stands again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 4.2 mm ± 0.1 mm 2 days ago
      And tom wrote that front-brake/caliper/inner-pad was replaced 1 day ago
      And ida corrected it to cleaned
      And tom corrected it to replaced
      Then brakes.pad-thickness is stale at front-brake/caliper/inner-pad

    Scenario: where two work, looking twice oneself takes no fault away
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried walking-pace-stop weak 3 days ago
      And ida corrected it to stops
      And front-brake tried walking-pace-stop stops 1 day ago
      Then brakes.walking-pace is fault at front-brake

    Scenario: who works alone corrected the second of two bad stops
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake tried walking-pace-stop weak 4 days ago
      And front-brake tried walking-pace-stop weak 3 days ago
      And ida corrected it to stops
      And front-brake tried walking-pace-stop stops 1 day ago
      Then brakes.walking-pace is fault at front-brake

    Scenario: who works alone tried the other brake on another day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake tried walking-pace-stop weak 3 days ago
      And ida corrected it to stops
      And rear-brake tried walking-pace-stop stops 1 day ago
      Then brakes.walking-pace is fault at front-brake

    Scenario: who works alone found it good before it was bad
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake tried walking-pace-stop stops 5 days ago
      And front-brake tried walking-pace-stop weak 3 days ago
      And ida corrected it to stops
      Then brakes.walking-pace is fault at front-brake

    Scenario: who works alone was told of the second look
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake tried walking-pace-stop weak 3 days ago
      And ida corrected it to stops
      And front-brake told walking-pace-stop stops 1 day ago
      Then brakes.walking-pace is fault at front-brake

  Rule: What nobody wrote down is told otherwise than what was only heard of

    Scenario: one pad was only told of
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad told thickness 4.2 mm
      And front-brake/caliper/outer-pad measured thickness 4.2 mm ± 0.1 mm 2 days ago
      And front-brake/caliper/outer-pad was replaced 1 day ago
      And front-brake/disc measured thickness 99 mm ± 0.1 mm
      And front-brake/hydraulic/unions was torqued
      Then brakes.pad-thickness is missing at front-brake/caliper/inner-pad
      And it says "thickness was written down, but not by somebody who measured it"

    Scenario: nobody wrote anything of the pad
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/outer-pad measured thickness 4.2 mm ± 0.1 mm
      Then brakes.pad-thickness is missing at front-brake/caliper/inner-pad
      And it says "thickness was never measured"
      And it does not say "was written down"

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

    Scenario: a fault read with it is looked into all the same
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the calibration of the instrument ran out 2 days ago
      And front-brake/caliper/inner-pad measured thickness 0.9 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is fault at front-brake/caliper/inner-pad

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

  Rule: Work done with an instrument names it, and falls with it

    Scenario: wrench and torque written down
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-12-01
      And front-brake/caliper/bolts was torqued to 24 N·m
      Then brakes.caliper-bolts is met at front-brake/caliper/bolts
      And it notes nothing
      And it does not lapse by itself

    Scenario: without the wrench
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-12-01
      And front-brake/caliper/bolts was torqued
      Then brakes.caliper-bolts is missing at front-brake/caliper/bolts
      And it says "names no torque wrench and no torque, and the record does not say under none-found that the maker gives none"

    Scenario: without the torque
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-12-01
      And front-brake/caliper/bolts was torqued with an instrument
      Then brakes.caliper-bolts is missing at front-brake/caliper/bolts
      And it says "names no torque, and the record does not say under none-found"

    Scenario: without the torque, where the maker gives none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-12-01
      And the maker gives no figure for fasteners.torque
      And front-brake/caliper/bolts was torqued with an instrument
      Then brakes.caliper-bolts is met at front-brake/caliper/bolts

    Scenario: of a day before both were asked for
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-12-01
      And front-brake/caliper/bolts was torqued 1 day ago
      Then brakes.caliper-bolts is met at front-brake/caliper/bolts
      And it notes "names no torque wrench"

    Scenario: in a record that cannot name it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-12-01
      And the record is a job-record/1
      And front-brake/caliper/bolts was torqued
      Then brakes.caliper-bolts is met at front-brake/caliper/bolts
      And it notes "names no torque wrench"

    Scenario: without the wrench, then once more with it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-12-02
      And front-brake/caliper/bolts was torqued 1 day ago
      And front-brake/caliper/bolts was torqued to 24 N·m
      Then brakes.caliper-bolts is met at front-brake/caliper/bolts

    Scenario: without the wrench, and then taken apart
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-12-02
      And front-brake/caliper/bolts was torqued 1 day ago
      And front-brake/caliper was removed
      Then brakes.caliper-bolts is stale at front-brake/caliper/bolts

    Scenario: taken apart, and then torqued without the wrench
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-12-02
      And front-brake/caliper/bolts was torqued to 24 N·m 1 day ago
      And front-brake/caliper was refitted 1 day ago
      And front-brake/caliper/bolts was torqued
      Then brakes.caliper-bolts is missing at front-brake/caliper/bolts

    Scenario: the wrench is found out
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/bolts was torqued to 24 N·m 30 days ago
      And the instrument for work was found out of tolerance 1 day ago
      Then brakes.caliper-bolts is stale at front-brake/caliper/bolts
      And it says "was done with tool, later found out of tolerance"
      And record.instrument-calibrated is stale
      And it says "was torqued with tool"

    Scenario Outline: the calibration of the wrench
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the calibration of the instrument for work ran out 2 days ago
      And front-brake/caliper/bolts was torqued to 24 N·m <ago>
      Then brakes.caliper-bolts is <state> at front-brake/caliper/bolts

      Examples:
        | ago        | state |
        | 2 days ago | met   |
        | 1 day ago  | stale |

    Scenario: torqued again to another figure contradicts nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/bolts was torqued to 20 N·m 1 day ago
      And front-brake/caliper/bolts was torqued to 24 N·m
      Then brakes.caliper-bolts is met at front-brake/caliper/bolts

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
      And front-brake/caliper/inner-pad was replaced <work>
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

    Scenario Outline: no law of that country is in the rule book; what is bad by all that is known is bad all the same
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is JP
      And front-brake/caliper/inner-pad measured thickness <thickness> mm ± 0.1 mm
      Then brakes.pad-thickness is <state> at front-brake/caliper/inner-pad

      Examples:
        | thickness | state   |
        | 1.0       | fault   |
        | 1.5       | missing |
        | 4.0       | missing |

    Scenario Outline: the same of a value that was worked out
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is JP
      And front-brake/control measured braking-force <force> N ± 10 N
      And rear-brake/control measured braking-force 200 N ± 10 N
      And machine measured mass-with-rider 246 kg ± 1 kg
      Then brakes.efficiency-both is <state>

      Examples:
        | force | state   |
        | 300   | fault   |
        | 1500  | missing |

    Scenario: a value that was worked out, and nobody looked for the maker's figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K
      And ignition/cylinder-1/coil measured primary-resistance 4.5 Ω ± 0.2 Ω
      And no word from the maker on electrics.coil-primary
      Then electrics.coil-primary is missing
      And it says "does not say that none was found"

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

  Rule: What changes by itself is as it was found last

    Scenario: the rain has stopped
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen weather rain 60 minutes ago
      And outdoors seen weather fair 10 minutes ago
      Then roadtest.weather is met
      And record.agreement is met

    Scenario: it has begun to rain
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen weather fair 60 minutes ago
      And outdoors seen weather rain 10 minutes ago
      Then roadtest.weather is fault

    Scenario: two looks of one minute, and nobody knows which was the later
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen weather rain 10 minutes ago
      And outdoors seen weather fair 10 minutes ago
      Then roadtest.weather is fault

    Scenario: somebody says that it rains, after the look
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen weather fair 60 minutes ago
      And outdoors told weather rain 10 minutes ago
      Then roadtest.weather is fault

    Scenario: two readings of air that has warmed
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature -2 °C ± 1 K 100 minutes ago
      And outdoors measured air-temperature 5 °C ± 1 K 10 minutes ago
      Then roadtest.air-temperature is met
      And record.agreement is met

    Scenario: two readings of air that has cooled
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 5 °C ± 1 K 100 minutes ago
      And outdoors measured air-temperature -2 °C ± 1 K 10 minutes ago
      Then roadtest.air-temperature is fault

    Scenario: two readings of one minute that cannot both be right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 2.5 °C ± 1 K 10 minutes ago
      And outdoors measured air-temperature 9 °C ± 1 K 10 minutes ago
      Then roadtest.air-temperature is doubt

    Scenario Outline: rider, ride, room, bay and run plan are looked at again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <place> <deed> <thing> <bad> 60 minutes ago
      And <place> <deed> <thing> <good> 10 minutes ago
      Then <check> is met

      Examples:
        | place              | deed | thing               | bad           | good                | check                  |
        | rider              | seen | gear                | no-gloves     | complete            | roadtest.protective-gear |
        | ride               | seen | recovery            | none          | arranged            | roadtest.recovery      |
        | room               | seen | way-out             | locked        | clear               | air.way-out            |
        | bay                | seen | second-person       | nobody        | at-the-stop-control | fuel.second-person     |
        | bay/drip-tray      | seen | drip-tray           | petrol-in-it  | in-place-and-dry    | fuel.drip-tray         |
        | run-plan           | seen | planned-speed       | unknown       | idle                | air.idle-only          |

    Scenario Outline: good once and bad now
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <place> <deed> <thing> <good> 60 minutes ago
      And <place> <deed> <thing> <bad> 10 minutes ago
      Then <check> is fault

      Examples:
        | place              | deed | thing               | bad           | good                | check                  |
        | rider              | seen | gear                | no-gloves     | complete            | roadtest.protective-gear |
        | ride               | seen | recovery            | none          | arranged            | roadtest.recovery      |
        | room               | seen | way-out             | locked        | clear               | air.way-out            |
        | bay                | seen | second-person       | nobody        | at-the-stop-control | fuel.second-person     |
        | bay/drip-tray      | seen | drip-tray           | petrol-in-it  | in-place-and-dry    | fuel.drip-tray         |
        | run-plan           | seen | planned-speed       | unknown       | idle                | air.idle-only          |

    Scenario: what a run showed is no state of the room
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room/run measured peak 300 ppm ± 10 ppm 60 minutes ago
      And room/run seen run-minutes 5 min 60 minutes ago
      And room/run measured peak 10 ppm ± 5 ppm 10 minutes ago
      And room/run seen run-minutes 5 min 10 minutes ago
      Then air.measured-run is fault

    Scenario: the volume of a room does not change by itself
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room measured volume 200 m³ ± 20 m³ 60 minutes ago
      And room measured volume 600 m³ ± 20 m³ 10 minutes ago
      And room seen openings shut
      Then air.room is doubt

    Scenario: the engine itself is not cured by trying it again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried warm-up knocks 60 minutes ago
      And engine tried warm-up runs-cleanly 10 minutes ago
      Then roadtest.engine-warm is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

  Rule: Weather and road hold two hours, daylight until sunset

    Scenario Outline: the weather, two hours ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen weather <found> <ago> minutes ago
      Then roadtest.weather is <state>

      Examples:
        | found | ago | state |
        | fair  | 119 | met   |
        | fair  | 120 | stale |
        | rain  | 119 | fault |
        | rain  | 120 | stale |

    Scenario: the minute in which it ends
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen weather fair 30 minutes ago
      Then roadtest.weather is met
      And it holds until 2026-11-25 at 13:29

    # The sun sets at 15:58 on that day at 52° north on the meridian of Greenwich.
    Scenario Outline: daylight where the place is known
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the workshop is at latitude 52 ° and longitude 0 °
      And the time is <time>
      And ride seen daylight whole-ride <ago> hours ago
      Then roadtest.daylight is <state>

      Examples:
        | time  | ago | state |
        | 15:50 | 7   | met   |
        | 15:59 | 7   | stale |
        | 22:30 | 14  | stale |

    Scenario: it says until when, and notes nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the workshop is at latitude 52 ° and longitude 0 °
      And ride seen daylight whole-ride 4 hours ago
      Then roadtest.daylight is met
      And it notes nothing

    Scenario Outline: daylight where the place is not known
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen daylight whole-ride <ago> minutes ago
      Then roadtest.daylight is <state>

      Examples:
        | ago | state |
        | 119 | met   |
        | 120 | stale |

    Scenario: a place that is not known is named
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen daylight whole-ride
      Then roadtest.daylight is met
      And it notes "sunset is not known, since the shop's settings name no place: this look holds 2 hours"

    # Above the polar circle the sun sets on no day of June.
    Scenario Outline: a day without sunset
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the day is 2026-06-21
      And the workshop is at latitude 70 ° and longitude 25 °
      And ride seen daylight whole-ride <ago> minutes ago
      Then roadtest.daylight is <state>

      Examples:
        | ago | state |
        | 119 | met   |
        | 120 | stale |

  Rule: A time that was watched ended when it was written, and work inside it leaves no whole of it

    Scenario Outline: petrol watched for a quarter of an hour
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose was refitted <work> minutes ago
      And fuel tried leak-at-rest dry 22 minutes ago
      And fuel measured watched-for 15 min ± 0.5 min 20 minutes ago
      Then fuel.leak is <state>

      Examples:
        | work | state |
        | 27   | stale |
        | 35   | stale |
        | 36   | met   |
        | 19   | stale |

    Scenario Outline: a brake held for two minutes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic was bled <work> minutes ago
      And front-brake/control measured hold-time 120 s ± 1 s 20 minutes ago
      Then brakes.hold-test is <state> at front-brake/control

      Examples:
        | work | state |
        | 21   | stale |
        | 22   | stale |
        | 23   | met   |

    Scenario: what was looked at in a moment stays as it was
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/hose was refitted 27 minutes ago
      And fuel/hose tried fuel-hose supple-and-whole 20 minutes ago
      Then fuel.hose-condition is met

  Rule: Readings that are put together were taken together

    Scenario Outline: a coil and its temperature
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K <ago> minutes ago
      And ignition/cylinder-1/coil measured primary-resistance 4.5 Ω ± 0.2 Ω 10 minutes ago
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is <state>

      Examples:
        | ago | state   |
        | 70  | met     |
        | 71  | missing |

    Scenario: a temperature of last week
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured coil-temperature 16 °C ± 1 K 7 days ago
      And ignition/cylinder-1/coil measured primary-resistance 4.5 Ω ± 0.2 Ω
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is missing
      And it says "do not belong together; take them together, within 1 h of each other"

    Scenario: a good pair, and one reading more that agrees with it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured coil-temperature 16 °C ± 1 K 7 days ago
      And ignition/cylinder-1/coil measured primary-resistance 4.5 Ω ± 0.2 Ω 7 days ago
      And ignition/cylinder-1/coil measured primary-resistance 4.6 Ω ± 0.2 Ω
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is met

    Scenario: a good pair, and one reading more that does not agree with it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured coil-temperature 16 °C ± 1 K 7 days ago
      And ignition/cylinder-1/coil measured primary-resistance 4.5 Ω ± 0.2 Ω 7 days ago
      And ignition/cylinder-1/coil measured primary-resistance 5.4 Ω ± 0.2 Ω
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is doubt

    Scenario: of two pairs the later decides
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured coil-temperature 16 °C ± 1 K 7 days ago
      And ignition/cylinder-1/coil measured primary-resistance 4.5 Ω ± 0.4 Ω 7 days ago
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K
      And ignition/cylinder-1/coil measured primary-resistance 3.9 Ω ± 0.4 Ω
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is fault

    Scenario Outline: work between them
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 60 minutes ago
      And front-brake/caliper/<pad> was replaced 30 minutes ago
      And front-brake/caliper/outer-pad measured thickness 3.0 mm ± 0.1 mm 10 minutes ago
      Then brakes.pad-difference is stale at front-brake/caliper

      Examples:
        | pad       |
        | inner-pad |
        | outer-pad |

    Scenario Outline: two pads, on two days
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm <ago> hours ago
      And front-brake/caliper/outer-pad measured thickness 3.0 mm ± 0.1 mm 0 hours ago
      Then brakes.pad-difference is <state> at front-brake/caliper

      Examples:
        | ago | state   |
        | 24  | met     |
        | 25  | missing |

    Scenario Outline: both cylinders in one go
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And engine/cylinder-1 measured compression 1000 kPa ± 10 kPa <ago> hours ago
      And engine/cylinder-2 measured compression 1000 kPa ± 10 kPa 0 hours ago
      Then engine.compression-spread is <state>

      Examples:
        | ago | state   |
        | 24  | met     |
        | 25  | missing |

    Scenario Outline: what they showed bad does not mend with time
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K <ago> months ago
      And ignition/cylinder-1/coil measured primary-resistance <winding> Ω ± 0.2 Ω <ago> months ago
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is <state>

      Examples:
        | winding | ago | state |
        | 4.5     | 12  | met   |
        | 4.5     | 13  | stale |
        | 3.5     | 12  | fault |
        | 3.5     | 13  | fault |

    Scenario: one that was taken bad, long ago, and one good reading without its companion
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K 13 months ago
      And ignition/cylinder-1/coil measured primary-resistance 3.5 Ω ± 0.2 Ω 13 months ago
      And ignition/cylinder-1/coil measured primary-resistance 3.5 Ω ± 0.2 Ω
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is fault

    Scenario: another coil, which has not been read yet
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K 3 days ago
      And ignition/cylinder-1/coil measured primary-resistance 3.5 Ω ± 0.2 Ω 3 days ago
      And ignition/cylinder-1/coil was replaced 2 days ago
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is stale

    Scenario Outline: a weak cylinder does not mend with time
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine has 2 cylinders
      And engine/cylinder-1 measured compression 1000 kPa ± 10 kPa <ago> months ago
      And engine/cylinder-2 measured compression 600 kPa ± 10 kPa <ago> months ago
      Then engine.compression-spread is fault at engine/cylinder-2
      And engine.compression-spread is <other> at engine/cylinder-1

      Examples:
        | ago | other |
        | 12  | met   |
        | 13  | stale |

    Scenario: one pad that wore much faster, measured long ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 4.9 mm ± 0.1 mm 13 months ago
      And front-brake/caliper/outer-pad measured thickness 2.0 mm ± 0.1 mm 13 months ago
      Then brakes.pad-difference is fault at front-brake/caliper

    Scenario: a run whose minutes were not written
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room/run measured peak 10 ppm ± 5 ppm 3 hours ago
      And room/run seen run-minutes 5 min 3 hours ago
      And room/run measured peak 12 ppm ± 5 ppm 10 minutes ago
      Then air.measured-run is missing

  Rule: What was left off for good is not there

    Scenario Outline: the description still has the part
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And controls/throttle tried return-straight-ahead snaps-shut
      And controls/throttle tried return-at-left-lock snaps-shut
      And controls/throttle tried return-at-right-lock snaps-shut
      And <place> was left-off
      Then controls.throttle-return is <state> at controls/throttle

      Examples:
        | place             | state |
        | controls/throttle | fault |
        | controls          | fault |
        | rear-mudguard     | met   |

    Scenario: it says which
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spindle was torqued
      And rear-wheel/spindle was left-off
      Then tyres.spindle-torque is fault at rear-wheel/spindle
      And it says "rear wheel, spindle: left-off 2026-11-25 10:31 by Ida Marrow (e2), and the description still has the part"

    Scenario: all that is carried by it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake was left-off
      Then brakes.pad-thickness is fault at front-brake/caliper/inner-pad

    Scenario: fitted again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spindle was left-off 2 days ago
      And rear-wheel/spindle was refitted 1 day ago
      And rear-wheel/spindle was torqued
      Then tyres.spindle-torque is met at rear-wheel/spindle

    Scenario: fitted again, and not proven again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spindle was torqued
      And rear-wheel was left-off
      And rear-wheel was refitted
      Then tyres.spindle-torque is stale at rear-wheel/spindle

  Rule: A reason that tells of the machine is a question until its writer says what it is

    Scenario Outline: a correction that finds it good, for a reason that says otherwise
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm
      And ida corrected it to firm
      And the reason was "<reason>"
      Then brakes.lever-feel is <state>

      Examples:
        | reason                            | state |
        | it still sinks when hot           | doubt |
        | not tried after all               | doubt |
        | firm at first                     | doubt |
        | front brake work to be done later | doubt |
        | the front brake is wrong          | doubt |
        | brake wrong                       | doubt |
        | rear wheel locks                  | doubt |
        | clutch slip                       | doubt |
        | a slip, and it drips              | doubt |
        | wrong pads                        | doubt |
        | the wrong brake                   | doubt |
        | read wrongly                      | met   |
        | a slip of the pen                 | met   |
        | wrote the wrong word              | met   |
        | Misread, and read again.          | met   |
        | it was the front one              | met   |
        | read the other caliper            | met   |
        | read the other hose's mark        | met   |

    Scenario: its writer says that nothing is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm
      And ida corrected it to firm
      And the reason was the remark "tried anew with gloves off"
      Then brakes.lever-feel is met

    Scenario: its writer calls it a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm
      And ida corrected it to firm
      And the reason was the defect "sinks when hot"
      Then brakes.lever-feel is fault

    Scenario: where nobody gets hurt, no question is asked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/cylinder-1 measured leak-down 8 % ± 1 %
      And ida corrected it to 9 % ± 1 %
      And the reason was "the hose had come off"
      Then engine.leak-down is met at engine/cylinder-1

    Scenario Outline: where a fault can hurt somebody, one is asked though the check is not safety-critical
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried turning-by-hand free
      And <words>
      Then engine.turns-over is <state>

      Examples:
        | words                                      | state |
        | there was the note "grinds near the top"   | doubt |
        | there was the remark "turned by hand"      | met   |
        | there was the defect "grinds near the top" | fault |

    Scenario: a fault that a correction finds is a fault whatever its reason
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm
      And ida corrected it to sinks
      And the reason was "warmed up since"
      Then brakes.lever-feel is fault

    Scenario Outline: the cause that an examination found
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And <cause>
      And tom wrote that engine tried running-noise even 30 minutes ago
      Then engine.knock is <state>

      Examples:
        | cause                                                     | state |
        | the reason was the remark "the noise came from the stand" | met   |
        | the reason was "the noise came from the stand"            | fault |
        | the reason was "big end worn, will do for now"            | fault |
        | the reason was the defect "big end worn"                  | fault |

    Scenario: what an examination leaves open is told
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And the reason was "big end worn, will do for now"
      And tom wrote that engine tried running-noise even 30 minutes ago
      Then engine.knock is fault
      And it notes "cause \"big end worn, will do for now\": this ends no fault until its writer says that it is no defect"

    Scenario Outline: nor does it where one person works alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And <cause>
      And engine tried running-noise even 30 minutes ago
      Then engine.knock is <state>

      Examples:
        | cause                                                     | state |
        | the reason was the remark "the noise came from the stand" | met   |
        | the reason was "big end worn, will do for now"            | fault |

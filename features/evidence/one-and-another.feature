Feature: What is said of one thing says nothing of another

  Background:
    Given a motorcycle with one hydraulic disc in front and a rod drum behind

  Rule: A correction takes away the entry it corrects, and no other

    Scenario: a hose was put right, and everything else stands
      Given front-brake/hydraulic/hose seen hose-condition cracked 6 days ago
      And tom corrected it to sound
      And rear-wheel/spindle was left-off 5 days ago
      And rear-wheel/spindle was refitted 4 days ago
      And rear-wheel/spindle was torqued 3 days ago
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And tom wrote that engine tried running-noise even 1 day ago
      And transmission/chain tried chain-after-ride tight 90 minutes ago
      And transmission/chain was lubricated 90 minutes ago
      And transmission/chain tried chain-after-ride right 30 minutes ago
      Then tyres.spindle-torque is met at rear-wheel/spindle
      And engine.knock is met
      And handover.chain-after-ride is met

    Scenario: nor where one person works alone
      Given one person works alone
      And front-brake/caliper/inner-pad measured thickness 4.1 mm ± 0.1 mm 6 days ago
      And ida corrected it to 4.2 mm ± 0.1 mm
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And engine tried running-noise even 1 day ago
      Then engine.knock is met

    Scenario: brakes bedded in since they were too weak, and a hose put right
      Given front-brake/hydraulic/hose seen hose-condition cracked 6 days ago
      And tom corrected it to sound
      And front-brake/control measured braking-force 300 N ± 10 N 3 days ago
      And rear-brake/control measured braking-force 200 N ± 10 N 3 days ago
      And machine measured mass-with-rider 246 kg ± 1 kg 3 days ago
      And front-brake was bedded 1 day ago
      And rear-brake was bedded 1 day ago
      Then brakes.efficiency-both is stale
      And the road-test is not closed by brakes.efficiency-both

    Scenario: of two bad looks at a hose the second is put right
      Given front-brake/hydraulic/hose seen hose-condition cracked 4 days ago
      And front-brake/hydraulic/hose seen hose-condition cracked 3 days ago
      And tom corrected it to sound
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

    Scenario: one slip withdrawn at once, and a second one later
      Given one person works alone
      And front-brake/hydraulic/hose seen hose-condition cracked 90 minutes ago
      And ida withdrew it 4 minutes later as sound
      And front-brake/hydraulic/hose seen hose-condition cracked 30 minutes ago
      And ida withdrew it 11 minutes later as sound
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

    Scenario: hearsay withdrawn at once by other hearsay
      Given one person works alone
      And front-brake/hydraulic/hose told hose-condition cracked
      And ida withdrew it 4 minutes later as sound
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

  Rule: Work that was none ends no fault

    Scenario: one of two brakes was not bedded in after all
      Given front-brake/control measured braking-force 300 N ± 10 N 3 days ago
      And rear-brake/control measured braking-force 200 N ± 10 N 3 days ago
      And machine measured mass-with-rider 246 kg ± 1 kg 3 days ago
      And rear-brake was bedded 2 days ago
      And tom wrote that front-brake was bedded 1 day ago
      And ida corrected it to cleaned
      Then brakes.efficiency-both is fault

    Scenario: a chain was not lubricated after all, in the minute in which it was found tight
      Given transmission/chain tried chain-after-ride tight 90 minutes ago
      And tom wrote that transmission/chain was lubricated 90 minutes ago
      And ida corrected it to cleaned
      And transmission/chain tried chain-after-ride right 30 minutes ago
      Then handover.chain-after-ride is fault

    Scenario: a chain was lubricated before it was found tight
      Given transmission/chain was lubricated 3 days ago
      And transmission/chain tried chain-after-ride tight 2 days ago
      And transmission/chain tried chain-after-ride right 1 day ago
      Then handover.chain-after-ride is fault

    Scenario: a chain was lubricated at nobody knows what hour of the day
      Given transmission/chain tried chain-after-ride tight 90 minutes ago
      And transmission/chain was lubricated
      And its time of day was not recorded
      And transmission/chain tried chain-after-ride right 30 minutes ago
      Then handover.chain-after-ride is fault

    Scenario: a chain was found tight at nobody knows what hour of the day
      Given transmission/chain tried chain-after-ride tight
      And its time of day was not recorded
      And transmission/chain was lubricated 90 minutes ago
      And transmission/chain tried chain-after-ride right 30 minutes ago
      Then handover.chain-after-ride is fault

    Scenario: a chain lubricated in the minute in which it was found tight, and dry since
      Given transmission/chain tried chain-after-ride tight 90 minutes ago
      And transmission/chain was lubricated 90 minutes ago
      And transmission/chain tried chain-after-ride dry 30 minutes ago
      Then handover.chain-after-ride is fault
      And it says "chain after ride tight"

    Scenario: two stops that differ, and bedding in within the minute of the first
      Given the territory is US-VA
      And machine measured stopping-distance 25 ft ± 0.3 ft 90 minutes ago
      And front-brake was bedded 90 minutes ago
      And machine measured stopping-distance 27 ft ± 0.3 ft 30 minutes ago
      Then brakes.stopping-distance is doubt

  Rule: What was left off is fitted again by work on it, and on nothing else

    Scenario: it was not left off, says another person
      Given rear-wheel/spindle was torqued 3 days ago
      And tom wrote that rear-wheel/spindle was left-off 2 days ago
      And ida corrected it to cleaned
      Then tyres.spindle-torque is met at rear-wheel/spindle

    Scenario: its own writer says so
      Given rear-wheel/spindle was torqued 3 days ago
      And tom wrote that rear-wheel/spindle was left-off 2 days ago
      And tom corrected it to cleaned
      Then tyres.spindle-torque is fault at rear-wheel/spindle

    Scenario: another entry of the same writer was a slip
      Given tom wrote that rear-wheel/spindle was left-off 2 days ago
      And tom wrote that front-wheel was refitted 2 days ago
      And ida corrected it to cleaned
      Then tyres.spindle-torque is fault at rear-wheel/spindle

    Scenario: it was not fitted again after all
      Given rear-wheel/spindle was left-off 3 days ago
      And tom wrote that rear-wheel/spindle was refitted 2 days ago
      And ida corrected it to cleaned
      Then tyres.spindle-torque is fault at rear-wheel/spindle

    Scenario: the other spindle was fitted, and this one cleaned
      Given rear-wheel/spindle was left-off 2 days ago
      And front-wheel/spindle was refitted 1 day ago
      And rear-wheel/spindle was cleaned 1 day ago
      Then tyres.spindle-torque is fault at rear-wheel/spindle

  Rule: An examination ends the fault whose cause it names, and nothing else

    Scenario: it does not tell which of two good readings is right
      Given front-brake/caliper/inner-pad measured thickness 3.0 mm ± 0.1 mm 3 days ago
      And front-brake/caliper/inner-pad was examined 2 days ago
      And tom wrote that front-brake/caliper/inner-pad measured thickness 3.4 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is doubt at front-brake/caliper/inner-pad

    Scenario: nor where one person works alone
      Given one person works alone
      And front-brake/caliper/inner-pad measured thickness 3.0 mm ± 0.1 mm 3 days ago
      And front-brake/caliper/inner-pad was examined 2 days ago
      And front-brake/caliper/inner-pad measured thickness 3.4 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is doubt at front-brake/caliper/inner-pad

    Scenario: the brake was found good since, and nobody listened to the engine
      Given engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And tom wrote that front-brake tried walking-pace-stop stops 1 day ago
      Then engine.knock is fault
      And brakes.walking-pace is met at front-brake

    Scenario: nor did who works alone
      Given one person works alone
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And front-brake tried walking-pace-stop stops 1 day ago
      Then engine.knock is fault
      And brakes.walking-pace is met at front-brake

    Scenario: another noise since does not end the first
      Given engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And tom wrote that engine tried running-noise rattles 1 day ago
      Then engine.knock is fault
      And it says "running noise knocks"

    Scenario: nor where one person works alone and hears another noise
      Given one person works alone
      And engine tried running-noise knocks 3 days ago
      And engine was examined 2 days ago
      And engine tried running-noise rattles 1 day ago
      Then engine.knock is fault
      And it says "running noise knocks"

    Scenario: who works alone examined it before the noise
      Given one person works alone
      And engine was examined 3 days ago
      And engine tried running-noise knocks 2 days ago
      And engine tried running-noise even 1 day ago
      Then engine.knock is fault

  Rule: Where a look ends a fault, it is a later look at that thing

    Scenario: the sheet lay there before it was gone
      Given machine seen drip-sheet laid 3 days ago
      And machine seen drip-sheet missing 1 day ago
      Then show.drip-sheet is fault

    Scenario: something else is as it should be
      Given machine seen drip-sheet missing 2 days ago
      And electrics/battery seen battery-leads off-and-insulated 1 day ago
      Then show.drip-sheet is fault

    Scenario: missing, and then soaked
      Given machine seen drip-sheet missing 2 days ago
      And machine seen drip-sheet soaked 1 day ago
      Then show.drip-sheet is fault
      And it says "drip sheet missing"

    Scenario: two numbers that differ, the later one with its document
      Given frame seen number TB25-10382 2 days ago
      And frame seen number TB25-10999 1 day ago
      And there was the remark "from the registration document"
      Then record.agreement is doubt

  Rule: A part that was opened for a reading does not lose its fault

    Scenario: a thread that pulled, before the wheel came out
      Given rear-wheel/spindle was torqued
      And there was the defect "the thread pulled"
      And rear-brake/shoes measured thickness 3.5 mm ± 0.05 mm
      Then tyres.spindle-torque is fault at rear-wheel/spindle

  Rule: Old readings show what they showed, until newer ones are there

    Scenario: a coil and its temperature, read long ago and never together
      Given ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K 14 months ago
      And ignition/cylinder-1/coil measured primary-resistance 3.5 Ω ± 0.2 Ω 13 months ago
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is stale

    Scenario: one reading more without its companion does not stand in for the pair
      Given ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K 7 days ago
      And ignition/cylinder-1/coil measured primary-resistance 4.5 Ω ± 0.25 Ω 7 days ago
      And ignition/cylinder-1/coil measured primary-resistance 4.2 Ω ± 0.25 Ω
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is met

    Scenario: a later pair is not hidden by an older one because its thermometer was found out
      Given ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K 7 days ago
      And ignition/cylinder-1/coil measured primary-resistance 4.8 Ω ± 0.4 Ω 7 days ago
      And a multimeter is taken from here on
      And ignition/cylinder-1/coil measured primary-resistance 4.3 Ω ± 0.4 Ω 2 days ago
      And a thermometer is taken from here on
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K 2 days ago
      And the instrument was found out of tolerance 1 day ago
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is doubt

    Scenario: nor does such a later pair end what an older one shows
      Given ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K 7 days ago
      And ignition/cylinder-1/coil measured primary-resistance 3.0 Ω ± 0.25 Ω 7 days ago
      And a multimeter is taken from here on
      And ignition/cylinder-1/coil measured primary-resistance 5.2 Ω ± 0.4 Ω 2 days ago
      And a thermometer is taken from here on
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K 2 days ago
      And the instrument was found out of tolerance 1 day ago
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is fault

    Scenario: two coils, and the temperature of one is not that of the other
      Given the engine has 2 cylinders
      And ignition/cylinder-1/coil measured coil-temperature 80 °C ± 1 K 13 months ago
      And ignition/cylinder-2/coil measured primary-resistance 3.5 Ω ± 0.2 Ω 13 months ago
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 K 1 day ago
      And ignition/cylinder-1/coil measured primary-resistance 4.5 Ω ± 0.2 Ω 1 day ago
      And the maker says electrics.coil-primary at least 4.0 Ω
      Then electrics.coil-primary is met at ignition/cylinder-1/coil
      And electrics.coil-primary is missing at ignition/cylinder-2/coil

    Scenario Outline: a chain that was worn long ago, and its mark read on another day
      Given transmission/chain measured chain-length 326 mm ± 0.3 mm 13 months ago
      And transmission/chain tried pitches 20 times 13 months ago
      And transmission/chain seen pitch-mark 15.875 mm <ago>
      Then transmission.chain-wear is fault

      Examples:
        | ago           |
        | 14 months ago |
        | 1 day ago     |

    Scenario: of a bad pair one pad was examined, and measured good since
      Given front-brake/caliper/inner-pad measured thickness 0.9 mm ± 0.1 mm 13 months ago
      And front-brake/caliper/outer-pad measured thickness 4.0 mm ± 0.1 mm 13 months ago
      And front-brake/caliper/inner-pad was examined 2 days ago
      And tom wrote that front-brake/caliper/inner-pad measured thickness 4.0 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is met at front-brake/caliper/inner-pad
      And brakes.pad-difference is fault at front-brake/caliper

    Scenario: cold fingers of yesterday
      Given outdoors measured air-temperature 1 °C ± 1 K 1 day ago
      And outdoors seen gusts 20 mph 1 day ago
      And ride seen ride-speed 60 mph 1 day ago
      Then roadtest.cold-rider is stale

  Rule: What was written at another place is told apart from what is asked here

    Scenario: mended, and never tried where it is asked for
      Given front-brake tried lever-feel sinks 2 days ago
      And front-brake/hydraulic was bled 1 day ago
      Then brakes.lever-feel is missing at front-brake/control
      And it says "lever feel was never tried"

    Scenario: lifted, and never tried where it is asked for
      Given front-brake tried lever-feel sinks 2 days ago
      And tom corrected it: front-brake tried lever-feel firm
      Then brakes.lever-feel is missing at front-brake/control
      And it does not say "was written down"

    Scenario: told of a bad hose, and looked at the brake it belongs to
      Given front-brake/hydraulic/hose told hose-condition cracked 3 days ago
      And front-brake seen hose-condition sound 1 day ago
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

    Scenario: a defect found at work on the wheel is none of its spindle
      Given rear-wheel was torqued 2 days ago
      And there was the defect "one stud turns on"
      And rear-wheel/spindle was torqued 1 day ago
      Then tyres.spindle-torque is met at rear-wheel/spindle

    Scenario: a drum that is gone is not the other drum
      Given front-brake/drum seen drum-condition scored 20 days ago
      And front-brake was replaced 10 days ago
      And until then its front-brake.type was drum
      And until then its front-brake.discs was 0
      And front-brake tried lever-feel sinks 1 day ago
      Then brakes.drum-condition is missing at rear-brake/drum
      And brakes.lever-feel is fault at front-brake/control

  Rule: What says nothing by itself is settled where it was written, or by work there

    Scenario Outline: it was read somewhere else, says its writer
      Given front-brake/hydraulic/hose seen date-mark 2024-05 3 days ago
      And front-brake seen date-mark 2024-03 2 days ago
      And ida corrected it: rear-wheel/tyre <deed> date-code 1524
      Then brakes.hose-age is <state> at front-brake/hydraulic/hose

      Examples:
        | deed | state |
        | seen | met   |
        | told | doubt |

    Scenario: something else was read since
      Given front-brake/hydraulic/hose seen date-mark 2024-05 3 days ago
      And front-brake seen date-mark 2024-03 2 days ago
      And rear-wheel/tyre seen date-code 1524 1 day ago
      Then brakes.hose-age is doubt at front-brake/hydraulic/hose

    Scenario: an old hose was replaced since
      Given front-brake seen date-mark 2001-03 3 days ago
      And tom wrote that front-brake/hydraulic/hose was replaced 2 days ago
      And front-brake/caliper/inner-pad measured thickness 4.1 mm ± 0.1 mm 1 day ago
      And ida corrected it to 4.2 mm ± 0.1 mm
      Then brakes.hose-age is missing at front-brake/hydraulic/hose

    Scenario Outline: the hose was not replaced, says somebody
      Given front-brake seen date-mark 2001-03 3 days ago
      And tom wrote that front-brake/hydraulic/hose was replaced 2 days ago
      And <person> corrected it to cleaned
      Then brakes.hose-age is <state> at front-brake/hydraulic/hose

      Examples:
        | person | state   |
        | ida    | fault   |
        | tom    | missing |

    Scenario: an old hose was replaced before
      Given front-brake/hydraulic/hose was replaced 4 days ago
      And front-brake seen date-mark 2001-03 3 days ago
      Then brakes.hose-age is fault at front-brake/hydraulic/hose

    Scenario: hearsay at the wrong place settles nothing
      Given front-brake/control measured braking-force 1000 N ± 10 N 5 days ago
      And rear-brake/control measured braking-force 700 N ± 10 N 5 days ago
      And machine measured mass-with-rider 246 kg ± 1 kg 5 days ago
      And front-brake measured braking-force 900 N ± 10 N 4 days ago
      And front-brake told braking-force 900 N 3 days ago
      And there was the defect "pulls to one side"
      And front-brake was bedded 1 day ago
      Then brakes.efficiency-both is fault

    Scenario: a weak brake measured later is not hidden by an older good reading because its instrument was found out
      Given front-brake/control measured braking-force 1000 N ± 10 N 5 days ago
      And rear-brake/control measured braking-force 700 N ± 10 N 5 days ago
      And machine measured mass-with-rider 246 kg ± 1 kg 5 days ago
      And another instrument is taken from here on
      And front-brake/control measured braking-force 200 N ± 10 N 2 days ago
      And the instrument was found out of tolerance 1 day ago
      Then brakes.efficiency-both is fault

    Scenario: work that may have come before an old date was read at the wrong place does not end the question
      Given front-brake/hydraulic/hose was replaced 2 hours ago
      And front-brake seen date-mark 2001-03 1 hour ago
      And its time of day was not recorded
      And front-brake/hydraulic/hose seen date-mark 2024-05 30 minutes ago
      Then brakes.hose-age is fault at front-brake/hydraulic/hose

  Rule: Each check has the worst of what was found of it, and of nothing else

    Scenario: one of each
      Given front-brake/caliper/inner-pad measured thickness 1.6 mm ± 0.1 mm
      And front-brake/caliper/outer-pad measured thickness 4.6 mm ± 0.1 mm
      And front-brake/hydraulic/hose seen hose-condition cracked
      And front-wheel/spindle was torqued
      And rear-wheel/spindle was torqued
      And rear-wheel was refitted
      And front-wheel/tyre seen service-description illegible
      And front-wheel measured wheel-load 160 kg ± 2 kg
      Then brakes.pad-thickness is doubt at front-brake/caliper/inner-pad
      And brakes.pad-thickness is met at front-brake/caliper/outer-pad
      And brakes.hose-condition is fault at front-brake/hydraulic/hose
      And tyres.spindle-torque is met at front-wheel/spindle
      And tyres.spindle-torque is stale at rear-wheel/spindle
      And tyres.load-index is missing at front-wheel/tyre
      And it says "gives no load index"
      And brakes.lever-feel is missing at front-brake/control
      And it says "lever feel was never tried"

    Scenario Outline: a code that says nothing, and words that may say something
      Given front-wheel/tyre seen service-description illegible
      And front-wheel measured wheel-load 160 kg ± 2 kg
      And there was the <kind> "the scale jumped"
      Then tyres.load-index is <state> at front-wheel/tyre
      And it says "<says>"

      Examples:
        | kind   | state   | says                |
        | note   | missing | gives no load index |
        | defect | fault   | the scale jumped    |

    Scenario: a note that may be a defect, where something else was never measured
      Given fuel tried leak-at-rest dry
      And there was the note "a smell of petrol"
      Then fuel.leak is missing
      And it says "watched for was never measured"

    Scenario: one thing undone, and another never measured
      Given fuel tried leak-at-rest dry
      And fuel/hose was refitted
      Then fuel.leak is missing

    Scenario: another check is stale where this reading cannot be true
      Given rear-wheel/spindle was torqued 3 days ago
      And rear-wheel was refitted 2 days ago
      And front-brake/caliper/inner-pad measured thickness 420 mm ± 0.1 mm 1 day ago
      And front-brake/caliper/outer-pad told thickness 4.2 mm
      Then brakes.pad-thickness is doubt at front-brake/caliper/inner-pad
      And brakes.pad-thickness is missing at front-brake/caliper/outer-pad
      And it says "was written down, but not by somebody who measured it"
      And tyres.spindle-torque is stale at rear-wheel/spindle

    Scenario: the other pad was replaced since a reading that cannot be true
      Given front-brake/caliper/inner-pad measured thickness 420 mm ± 0.1 mm 2 days ago
      And front-brake/caliper/outer-pad was replaced 1 day ago
      Then brakes.pad-thickness is doubt at front-brake/caliper/inner-pad

    Scenario: brakes bedded in end no noise
      Given front-brake/control measured braking-force 300 N ± 10 N 3 days ago
      And rear-brake/control measured braking-force 200 N ± 10 N 3 days ago
      And machine measured mass-with-rider 246 kg ± 1 kg 3 days ago
      And engine tried running-noise knocks 3 days ago
      And front-brake was bedded 1 day ago
      And rear-brake was bedded 1 day ago
      Then engine.knock is fault
      And the first-start is closed by engine.knock
      And brakes.efficiency-both is stale

    Scenario: the battery is out, and petrol drips
      Given fuel tried leak-at-rest drips
      And electrics/battery seen battery-leads battery-taken-out
      Then the on-show is closed by fuel.leak
      And handover.battery-off is met

    Scenario: refused by a licensed inspector, and bedded in since
      Given a licensed inspector refused it 2 months ago
      And front-brake was bedded 1 day ago
      Then record.licensed-inspection is fault

    Scenario: who works alone found another leak since, and mended that one
      Given one person works alone
      And machine seen leaks-after-ride fuel 4 days ago
      And ida corrected it to dry
      And machine seen leaks-after-ride oil 3 days ago
      And engine/head was torqued 2 days ago
      Then handover.leaks-after-ride is fault

    Scenario: who works alone listened again on another day
      Given one person works alone
      And engine tried running-noise knocks 3 days ago
      And ida corrected it to even
      And engine tried running-noise even 1 day ago
      Then engine.knock is met

  Rule: Of work without its instrument each part is told by itself

    Scenario: bolts without the wrench, and other work with it
      Given the day is 2026-12-01
      And rear-wheel/spindle was torqued to 60 N·m 2 days ago
      And rear-wheel was refitted 1 day ago
      And front-wheel/spindle was torqued to 60 N·m
      And front-brake/caliper/bolts was torqued
      And front-brake/caliper/inner-pad told thickness 4.2 mm
      Then brakes.caliper-bolts is missing at front-brake/caliper/bolts
      And it says "names no torque wrench"
      And it does not say "was written down"
      And tyres.spindle-torque is met at front-wheel/spindle
      And tyres.spindle-torque is stale at rear-wheel/spindle
      And brakes.pad-thickness is missing at front-brake/caliper/inner-pad
      And it says "was written down, but not by somebody who measured it"

    Scenario: it was no torquing after all
      Given the day is 2026-12-01
      And tom wrote that front-brake/caliper/bolts was torqued
      And ida corrected it to cleaned
      Then brakes.caliper-bolts is missing at front-brake/caliper/bolts
      And it says "was written down, but not by somebody who did it"

    Scenario: torqued without the wrench, and the torquing with it was none
      Given the day is 2026-12-01
      And front-brake/caliper/bolts was torqued
      And tom wrote that front-brake/caliper/bolts was torqued to 24 N·m
      And ida corrected it to cleaned
      Then brakes.caliper-bolts is missing at front-brake/caliper/bolts
      And it says "names no torque wrench"
      And it does not say "was written down"

    Scenario: a head torqued without the wrench, and then a ride
      Given the day is 2026-12-01
      And engine/head was refitted 1 day ago
      And engine/head was torqued
      And machine was ridden
      Then engine.head-torque is missing at engine/head
      And it says "names no torque wrench"
      And it does not say "was written down"
      And engine.head-recheck is stale at engine/head

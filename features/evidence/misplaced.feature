Feature: What was written at a place where no check asks

  Rule: A bad answer counts at the nearest check that asks for the like

    Scenario: one level too high
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm 1 day ago
      And front-brake tried lever-feel sinks
      Then brakes.lever-feel is fault at front-brake/control
      And it says "written at front brake"
      And the road-test is blocked

    Scenario: one level too low
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose tried lever-feel sinks
      Then brakes.lever-feel is fault at front-brake/control

    Scenario: the other end of the machine is not the nearest
      Given a motorcycle with one hydraulic disc in front and one hydraulic disc behind
      And front-brake tried lever-feel sinks
      And rear-brake/control tried lever-feel firm
      Then brakes.lever-feel is fault at front-brake/control
      And brakes.lever-feel is met at rear-brake/control

    Scenario: as near to two, it counts at both
      Given a motorcycle with one hydraulic disc in front and one hydraulic disc behind
      And machine tried lever-feel sinks
      Then brakes.lever-feel is fault at front-brake/control
      And brakes.lever-feel is fault at rear-brake/control

    Scenario: an amount outside the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel measured tread-depth 0.2 mm ± 0.2 mm
      Then tyres.tread-depth is fault at front-wheel/tyre
      And it says "written at front wheel"

    Scenario: a good look at the right place is no cure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried lever-feel sinks 1 day ago
      And front-brake/control tried lever-feel firm
      Then brakes.lever-feel is fault at front-brake/control

    Scenario: work on the part ends it, and a new look closes the check
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried lever-feel sinks 2 days ago
      And front-brake/hydraulic was bled 1 day ago
      And front-brake/control tried lever-feel firm
      Then brakes.lever-feel is met at front-brake/control

    Scenario: work alone leaves the check open
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm 3 days ago
      And front-brake tried lever-feel sinks 2 days ago
      And front-brake/hydraulic was bled 1 day ago
      Then brakes.lever-feel is stale at front-brake/control

    Scenario Outline: corrected
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm 3 days ago
      And front-brake tried lever-feel sinks 2 days ago
      And <person> corrected it to firm
      Then brakes.lever-feel is <state> at front-brake/control

      Examples:
        | person | state |
        | tom    | met   |
        | ida    | fault |

  Rule: A good answer at the wrong place proves nothing

    Scenario: looked at one level too high
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried lever-feel firm
      Then brakes.lever-feel is missing at front-brake/control
      And it says "lever feel was never tried"

    Scenario: it takes nothing away either
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm 1 day ago
      And front-brake tried lever-feel firm
      Then brakes.lever-feel is met at front-brake/control

    Scenario: two places, one good and one bad
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel measured tread-depth 3.9 mm ± 0.2 mm
      And front-wheel/tyre measured tread-depth 3.8 mm ± 0.2 mm
      Then tyres.tread-depth is met at front-wheel/tyre

  Rule: What says nothing by itself leaves the check in doubt until it is written where it is asked for

    Scenario: a date at the wheel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen date-mark 2024-05 2 days ago
      And front-brake seen date-mark 2024-03 1 day ago
      Then brakes.hose-age is doubt at front-brake/hydraulic/hose
      And it says "write it at front brake, hydraulic, hose, or correct the entry"

    Scenario: written again at the right place
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake seen date-mark 2024-03 1 day ago
      And front-brake/hydraulic/hose seen date-mark 2024-05
      Then brakes.hose-age is met at front-brake/hydraulic/hose

    Scenario: too old by itself
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen date-mark 2024-05 2 days ago
      And front-brake seen date-mark 2001-03 1 day ago
      Then brakes.hose-age is fault at front-brake/hydraulic/hose
      And it says "written at front brake"

    Scenario: an amount that is put together with others
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control measured gap-at-rest 80 mm ± 0.6 mm 2 days ago
      And front-brake/control measured gap-when-on 50 mm ± 0.6 mm 2 days ago
      And front-brake measured gap-when-on 12 mm ± 0.6 mm 1 day ago
      Then brakes.lever-reserve is doubt at front-brake/control

    Scenario: a fault to one check is nothing to another that asks for the same
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper measured thickness 0.3 mm ± 0.1 mm 2 days ago
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm 1 day ago
      And front-brake/caliper/outer-pad measured thickness 3.0 mm ± 0.1 mm 1 day ago
      Then brakes.pad-thickness is fault at front-brake/caliper/inner-pad
      And brakes.pad-difference is met at front-brake/caliper

    Scenario: work on the part ends the doubt with the proof
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake measured gap-when-on 12 mm ± 0.6 mm 3 days ago
      And front-brake/hydraulic was bled 2 days ago
      And front-brake/control measured gap-at-rest 80 mm ± 0.6 mm 1 day ago
      And front-brake/control measured gap-when-on 50 mm ± 0.6 mm 1 day ago
      Then brakes.lever-reserve is met at front-brake/control

    Scenario: corrected by its writer
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control measured gap-at-rest 80 mm ± 0.6 mm 3 days ago
      And front-brake/control measured gap-when-on 50 mm ± 0.6 mm 3 days ago
      And front-brake measured gap-when-on 12 mm ± 0.6 mm 2 days ago
      And ida corrected it to 50 mm ± 0.6 mm
      Then brakes.lever-reserve is doubt at front-brake/control

  Rule: A safety-critical fault is lifted by somebody else who looked again

    Scenario: heard again is not looked at
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose told hose-condition cracked 2 days ago
      And tom corrected it to sound
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

    Scenario: one who works alone looks once
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake/hydraulic/hose seen hose-condition cracked 3 days ago
      And ida corrected it to sound
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

    Scenario: one who works alone looks twice, on different days
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake/hydraulic/hose seen hose-condition sound 1 day ago
      And front-brake/hydraulic/hose seen hose-condition cracked 3 days ago
      And ida corrected it to sound
      Then brakes.hose-condition is met at front-brake/hydraulic/hose

    Scenario: one who works alone corrects hearsay by hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake/hydraulic/hose told hose-condition sound 1 day ago
      And front-brake/hydraulic/hose told hose-condition cracked 3 days ago
      And ida corrected it to sound
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

    Scenario Outline: one who works alone withdraws a slip of the pen at once
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake/hydraulic/hose seen hose-condition cracked
      And ida withdrew it <minutes> minutes later as sound
      Then brakes.hose-condition is <state> at front-brake/hydraulic/hose

      Examples:
        | minutes | state |
        | 4       | met   |
        | 10      | met   |
        | 11      | fault |

    Scenario: not where something else was written about the part in between
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And one person works alone
      And front-brake/hydraulic seen leak-under-pressure dry
      And front-brake/hydraulic/hose seen hose-condition cracked
      And ida withdrew it 4 minutes later as sound
      And front-brake/hydraulic seen leak-under-pressure dry
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

    Scenario: where several people work, nobody withdraws a fault of their own
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/hose seen hose-condition cracked
      And ida withdrew it 4 minutes later as sound
      Then brakes.hose-condition is fault at front-brake/hydraulic/hose

  Rule: A note on good evidence of a safety-critical check says what it is

    Scenario: firm, and then it is not
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm
      And there was the note "goes to the bar after a minute"
      Then brakes.lever-feel is doubt at front-brake/control
      And it says "Is this note a defect?"

    Scenario: a remark
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm
      And there was the remark "tried with cold hands"
      Then brakes.lever-feel is met at front-brake/control

    Scenario: a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm
      And there was the defect "goes to the bar after a minute"
      Then brakes.lever-feel is fault at front-brake/control
      And it says "the writer calls this a defect"

    Scenario: a later look without a note answers the question, not the defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm 2 days ago
      And there was the note "goes to the bar after a minute"
      And front-brake/control tried lever-feel firm 1 day ago
      Then brakes.lever-feel is met at front-brake/control

    Scenario: a later look does not take a defect away
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel firm 2 days ago
      And there was the defect "goes to the bar after a minute"
      And front-brake/control tried lever-feel firm 1 day ago
      Then brakes.lever-feel is fault at front-brake/control

    Scenario: a fault with a note is a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/control tried lever-feel sinks
      And there was the note "slowly"
      Then brakes.lever-feel is fault at front-brake/control

    Scenario: where nobody gets hurt a note asks nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And frame seen number TB25-10382
      And there was the note "cleaned with a brush"
      And frame seen number-in-papers TB25-10382
      Then record.identity is met at frame

    Scenario: a defect noted where no check asks counts at the nearest
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake tried lever-feel firm
      And there was the defect "goes to the bar after a minute"
      Then brakes.lever-feel is fault at front-brake/control

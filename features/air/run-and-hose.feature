Feature: The planned run, and the hose that leads its exhaust outdoors
  The normal way is a hose on every outlet. Everything else is second best.

  @air.run
  Rule: It is written how long the engine runs and where its exhaust goes

    Scenario: one short run
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 2on
      And run-plan seen exhaust-goes into-the-room
      Then air.run is met
      And it says "planned 2on"

    Scenario Outline: minutes that cannot be read
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs <runs>
      And run-plan seen exhaust-goes into-the-room
      Then air.run is missing

      Examples:
        | runs           |
        | a while        |
        | 5              |
        | 30off          |
        | 0on            |
        | 1000on,1000off |

    Scenario: the plan was changed, and the road test does not mind
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 5on
      And run-plan seen planned-runs 2on
      And run-plan seen exhaust-goes into-the-room
      Then air.run is met
      And it says "planned 2on"
      And record.agreement is met

    Scenario: nobody says where the exhaust goes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 2on
      Then air.run is missing

    Scenario Outline: the engine ran longer today than any run of the plan
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs <runs>
      And run-plan seen exhaust-goes into-the-room
      And room/run <deed> run-minutes <minutes>
      Then air.run is <state>

      Examples:
        | runs          | deed | minutes | state |
        | 6on           | seen | 25 min  | fault |
        | 6on           | seen | 6 min   | met   |
        | 6on           | seen | 6.5 min | fault |
        | 6on           | seen | 361 s   | fault |
        | 6on           | told | 25 min  | fault |
        | 2on,60off,6on | seen | 6 min   | met   |
        | 6on,60off,2on | seen | 6 min   | met   |
        | 2on,6off      | seen | 6 min   | fault |
        | a while       | seen | 6 min   | missing |

    Scenario: it is said how long it ran, and what to write
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 6on
      And run-plan seen exhaust-goes outdoors-by-hose
      And room/run seen run-minutes 25 min
      Then air.run is fault
      And it says "the engine ran for 25 min today, and no run of the plan 6on is as long"
      And it is cleared by "every run made today"

    Scenario: the run was written before the plan, which leaves it out
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room/run seen run-minutes 25 min
      And run-plan seen planned-runs 6on
      And run-plan seen exhaust-goes into-the-room
      Then air.run is fault

    Scenario: the plan was written anew, with the run that was made
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 6on
      And run-plan seen exhaust-goes into-the-room
      And room/run seen run-minutes 25 min
      And run-plan seen planned-runs 25on,60off,6on
      Then air.run is met

    Scenario: the long run was on another day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room/run seen run-minutes 25 min 1 day ago
      And run-plan seen planned-runs 6on
      And run-plan seen exhaust-goes into-the-room
      Then air.run is met

    Scenario: a slip of the pen, put right
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 6on
      And run-plan seen exhaust-goes into-the-room
      And room/run seen run-minutes 55 min
      And ida corrected it to 5.5 min
      Then air.run is met

    Scenario: a machine that may be run under a roof, and was run for too long
      Given a machine ready for indoor-run
      When room/run measured peak 9 ppm ± 5 ppm
      And room/run seen run-minutes 25 min
      Then the indoor-run is blocked by air.run alone

    Scenario: it is not known where the exhaust goes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 2on
      And run-plan seen exhaust-goes unknown
      Then air.run is fault

    Scenario: no plan
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then air.run is missing
      And it holds indoor-run and no other gate
      And it is safety-critical

    Scenario: nothing that burns fuel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then air.run is not applicable

    Scenario: planned yesterday
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 2on 1 day ago
      And run-plan seen exhaust-goes into-the-room 1 day ago
      Then air.run is stale

  @air.idle-only
  Rule: Without a hose the engine stays at idle

    Scenario: at idle
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-speed idle
      Then air.idle-only is met

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan told planned-speed idle
      Then air.idle-only is missing

    Scenario: above idle into the room
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes into-the-room
      And run-plan seen planned-speed above-idle
      Then air.idle-only is fault
      And it says "caught at the outlet and led outdoors"

    Scenario: above idle with a hose that is not proven
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 1on
      And run-plan seen exhaust-goes outdoors-by-hose
      And run-plan seen planned-speed above-idle
      Then air.idle-only is fault

    Scenario: above idle with a proven hose
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And run-plan seen planned-speed above-idle
      And exhaust seen outlets 2 times
      And room/extraction seen connected-outlets 2 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 500 m³/h ± 75 m³/h
      And room/extraction seen discharge outdoors-clear
      Then air.idle-only is met

    Scenario: nobody says how fast
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then air.idle-only is missing
      And it holds indoor-run and no other gate
      And it is safety-critical

    Scenario: nothing that burns fuel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then air.idle-only is not applicable

    Scenario: planned yesterday
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-speed idle 1 day ago
      Then air.idle-only is stale

  @air.machine-held
  Rule: The machine stands fast and is not driven

    Scenario Outline: stand and drive
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried stand-and-chock <stand>
      And machine tried drive <drive>
      Then air.machine-held is <state>

      Examples:
        | stand       | drive            | state |
        | held        | rear-wheel-clear | met   |
        | held        | neutral-found    | met   |
        | rocks       | neutral-found    | fault |
        | not-chocked | neutral-found    | fault |
        | held        | in-gear          | fault |
        | held        | creeps           | fault |

    Scenario: a good trial alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried stand-and-chock rocks
      And machine tried drive neutral-found
      And tom wrote that machine tried stand-and-chock held
      Then air.machine-held is fault

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen stand-and-chock held
      And machine tried drive rear-wheel-clear
      Then air.machine-held is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried stand-and-chock held
      And machine seen drive rear-wheel-clear
      Then air.machine-held is missing

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried stand-and-chock rocks
      And machine tried drive neutral-found
      Then air.machine-held is fault
      And it holds first-start, indoor-run and no other gate

    Scenario: chocked and not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried stand-and-chock held
      And machine tried drive neutral-found
      And machine was chocked
      Then air.machine-held is stale

    Scenario: chocked since it rocked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine tried stand-and-chock rocks
      And machine tried drive neutral-found
      And machine was chocked
      And machine tried stand-and-chock held
      And machine tried drive neutral-found
      Then air.machine-held is met
      And it holds until 2026-11-25

    Scenario: nobody tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen stand-and-chock held
      Then air.machine-held is missing
      And it holds indoor-run and no other gate
      And it is safety-critical

    Scenario: nothing that burns fuel
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then air.machine-held is not applicable

    Scenario: a machine that rocks is chocked before it is tried again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for indoor-run
      And nothing is written for air.machine-held
      And machine tried stand-and-chock rocks
      Then air.machine-held is fault
      And for indoor-run machine is to be chocked first

  @air.extraction
  Rule: A hose on every outlet leads the exhaust outdoors with enough draw

    Scenario Outline: on both sides of the flow
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 2 times
      And room/extraction seen connected-outlets 2 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow <flow>
      And room/extraction seen discharge outdoors-clear
      Then air.extraction is <state>
      And the limit came from "Swedish recommendation"

      # 360 m³/h for one car, quoted by a maker of extraction equipment, read in a copy
      Examples:
        | flow               | state |
        | 350 m³/h ± 60 m³/h | fault |
        | 360 m³/h ± 60 m³/h | doubt |
        | 420 m³/h ± 60 m³/h | doubt |
        | 430 m³/h ± 60 m³/h | met   |

    Scenario: found 13 months ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 2 times 13 months ago
      And room/extraction seen connected-outlets 2 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 360 m³/h ± 60 m³/h
      And room/extraction seen discharge outdoors-clear
      Then air.extraction is doubt

    Scenario: found 366 days ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on 366 days ago
      And run-plan seen exhaust-goes outdoors-by-hose 366 days ago
      And exhaust seen outlets 2 times 366 days ago
      And room/extraction seen connected-outlets 2 times 366 days ago
      And room/extraction tried extraction running 366 days ago
      And room/extraction measured extraction-flow 350 m³/h ± 60 m³/h 366 days ago
      And room/extraction seen discharge outdoors-clear 366 days ago
      Then air.extraction is stale

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 2 times
      And room/extraction seen connected-outlets 2 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 350 m³/h ± 60 m³/h
      And room/extraction seen discharge outdoors-clear
      And tom wrote that room/extraction measured extraction-flow 430 m³/h ± 60 m³/h
      Then air.extraction is fault

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust told outlets 2 times
      And room/extraction seen connected-outlets 2 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 430 m³/h ± 60 m³/h
      And room/extraction seen discharge outdoors-clear
      Then air.extraction is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 2 times
      And room/extraction told connected-outlets 2 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 430 m³/h ± 60 m³/h
      And room/extraction seen discharge outdoors-clear
      Then air.extraction is missing

    Scenario: looking alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 2 times
      And room/extraction seen connected-outlets 2 times
      And room/extraction seen extraction running
      And room/extraction measured extraction-flow 430 m³/h ± 60 m³/h
      And room/extraction seen discharge outdoors-clear
      Then air.extraction is missing

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 2 times
      And room/extraction seen connected-outlets 2 times
      And room/extraction tried extraction running
      And room/extraction tried extraction-flow 430 m³/h
      And room/extraction seen discharge outdoors-clear
      Then air.extraction is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 2 times
      And room/extraction seen connected-outlets 2 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 430 m³/h ± 60 m³/h
      And room/extraction told discharge outdoors-clear
      Then air.extraction is missing

    Scenario Outline: hoses and outlets
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets <outlets> times
      And room/extraction seen connected-outlets <connected> times
      And room/extraction tried extraction <extraction>
      And room/extraction measured extraction-flow 500 m³/h ± 75 m³/h
      And room/extraction seen discharge <discharge>
      Then air.extraction is <state>

      Examples:
        | outlets | connected | extraction         | discharge         | state   |
        | 1       | 1         | running            | outdoors-clear    | met     |
        | 2       | 1         | running            | outdoors-clear    | fault   |
        | 1       | 0         | running            | outdoors-clear    | fault   |
        | 1       | 2         | running            | outdoors-clear    | missing |
        | 0       | 0         | running            | outdoors-clear    | missing |
        | 1       | 1         | switched-off       | outdoors-clear    | fault   |
        | 1       | 1         | weak               | outdoors-clear    | fault   |
        | 1       | 1         | leaks-at-the-joint | outdoors-clear    | fault   |
        | 1       | 1         | running            | indoors           | fault   |
        | 1       | 1         | running            | beside-an-opening | fault   |

    Scenario: the silencer came off after the hose was fitted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 1 times
      And room/extraction seen connected-outlets 1 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 500 m³/h ± 75 m³/h
      And room/extraction seen discharge outdoors-clear
      And exhaust was removed
      Then air.extraction is stale

    Scenario Outline: work on the hose after it was proven
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 1 times
      And room/extraction seen connected-outlets 1 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 500 m³/h ± 75 m³/h
      And room/extraction seen discharge outdoors-clear
      And room/extraction was <work>
      Then air.extraction is stale

      Examples:
        | work      |
        | adjusted  |
        | cleaned   |
        | tightened |
        | repaired  |

    Scenario: the second hose went on later
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 2 times
      And room/extraction seen connected-outlets 1 times
      And room/extraction seen connected-outlets 2 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 500 m³/h ± 75 m³/h
      And room/extraction seen discharge outdoors-clear
      Then air.extraction is met

    Scenario: a hose is planned and nothing of it proven
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      Then air.extraction is missing
      And air.peak is missing
      And it holds indoor-run and no other gate
      And it is safety-critical

    Scenario: no hose
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes into-the-room
      Then air.extraction is not applicable

    Scenario: with a proven hose nothing is predicted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 1 times
      And room/extraction seen connected-outlets 1 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 500 m³/h ± 75 m³/h
      And room/extraction seen discharge outdoors-clear
      Then air.extraction is met
      And it says "a hose on every outlet, 1 of 1"
      And air.peak is not applicable
      And air.shift is not applicable

    Scenario: more hoses than outlets are counted again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 1 times
      And room/extraction seen connected-outlets 2 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 500 m³/h ± 75 m³/h
      And room/extraction seen discharge outdoors-clear
      Then air.extraction is missing
      And it says "count them again"
      And it holds indoor-run and no other gate
      And it is safety-critical

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 1 times
      And room/extraction seen connected-outlets 1 times
      And room/extraction tried extraction running
      And room/extraction measured extraction-flow 500 m³/h ± 75 m³/h
      And room/extraction seen discharge outdoors-clear
      Then air.extraction is met at room/extraction
      And it says "at least 360 m³/h (Swedish recommendation for one car, quoted by a maker of extraction equipment, read in a copy)"
      And it holds until 2026-11-25

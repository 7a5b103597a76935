Feature: Does what is written go with the machine as it was described that day?

  @record.description
  Rule: An entry is compared with the description of its own day

    Scenario: every entry goes with the description
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      Then record.description is met
      And it notes nothing

    Scenario Outline: a part that the machine does not have
      Given a motorcycle with <front> in front and <rear> behind
      And <entry>
      Then record.description is doubt
      And it says "<says>"

      Examples:
        | front              | rear       | entry                                                        | says                                                                                                                          |
        | no brake           | a rod drum | front-brake/caliper/inner-pad measured thickness 0.3 mm ± 0.1 mm | 'thickness' at front-brake/caliper/inner-pad (e1) does not go with front-brake.type: none, the description of that day        |
        | no brake           | a rod drum | front-brake/caliper was removed                              | 'removed' at front-brake/caliper (e1) does not go with front-brake.type: none                                                 |
        | a cable drum       | a rod drum | front-brake/disc measured thickness 5.1 mm ± 0.1 mm          | 'thickness' at front-brake/disc (e1) does not go with front-brake.type: drum                                                  |
        | a cable drum       | a rod drum | front-brake/hydraulic/hose seen hose-condition sound         | 'hose-condition' at front-brake/hydraulic/hose (e1) does not go with front-brake.worked-by: cable                             |
        | one hydraulic disc | a rod drum | front-brake/left-caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm | 'thickness' at front-brake/left-caliper/inner-pad (e1) does not go with front-brake.discs: 1                         |
        | one hydraulic disc | a rod drum | engine/cylinder-2 measured compression 900 kPa ± 20 kPa      | 'compression' at engine/cylinder-2 (e1) does not go with engine.cylinders: 1                                                  |
        | one hydraulic disc | a rod drum | transmission/belt seen belt-condition sound                  | 'belt-condition' at transmission/belt (e1) does not go with drive: chain                                                      |
        | one hydraulic disc | a rod drum | engine/cylinder-1 tried valve-clearance as-the-maker-says         | 'valve-clearance' at engine/cylinder-1 (e1) does not go with engine.cycle: two-stroke                                         |
        | one hydraulic disc | a rod drum | electrics/indicators/left tried indicators all-flash         | 'indicators' at electrics/indicators/left (e1) does not go with equipment.indicators: no                                      |

    Scenario Outline: a value that entries deny
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <described>
      And <entry>
      Then record.description is doubt
      And it says "<says>"

      Examples:
        | described                                | entry                                                    | says                                                            |
        | the final drive is none                  | transmission/chain measured slack-at-tightest 25 mm ± 1 mm | transmission/chain (e1) does not go with drive: none            |
        | the battery has 0 volts                  | electrics/battery measured rest-voltage 6.3 V ± 0.1 V    | electrics/battery (e1) does not go with volts: 0                |
        | the equipment has front-springing rigid  | front-fork/oil was filled                                | front-fork/oil (e1) does not go with equipment.front-springing: rigid |
        | the equipment has rear-springing rigid   | rear-fork/pivot was torqued                              | rear-fork/pivot (e1) does not go with equipment.rear-springing: rigid |
        | the equipment has lamps no               | headlamp measured beam-fall 1.6 % ± 0.2 %                | headlamp (e1) does not go with equipment.lamps: no              |
        | the equipment has fuel-tap none          | fuel/tap tried tap-shut drips                            | fuel/tap (e1) does not go with equipment.fuel-tap: none         |
        | the equipment has stands 0               | frame/stands tried stand-holds holds                     | frame/stands (e1) does not go with equipment.stands: 0          |
        | the tyres are tubeless                   | front-wheel/tube was replaced                            | front-wheel/tube (e1) does not go with front-wheel.tube: no     |
        | the engine is oiled by premix            | oil/pump was bled                                        | oil/pump (e1) does not go with engine.oiling: premix            |

    Scenario: to count none of a part agrees with a description without it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/indicators tried indicators-fitted 0 times
      Then record.description is met

    Scenario: a slip is corrected
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/left-caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm
      And tom corrected it to 3.1 mm ± 0.1 mm
      Then record.description is doubt
      And it says "at front-brake/left-caliper/inner-pad (e2)"

    Scenario: drum out, disc in
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/drum seen drum-condition scored 20 days ago
      And front-brake was replaced 10 days ago
      And until then its front-brake.type was drum
      And until then its front-brake.discs was 0
      And front-brake/disc seen disc-condition sound 5 days ago
      Then record.description is met
      And record.as-built is met
      And record.brakes-as-built is met

    Scenario: the old drum was not there any more
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake was replaced 10 days ago
      And until then its front-brake.type was drum
      And until then its front-brake.discs was 0
      And front-brake/drum seen drum-condition scored 5 days ago
      Then record.description is doubt
      And it says "'drum-condition' at front-brake/drum (e2) does not go with front-brake.type: disc"

    Scenario: the disc was not there yet
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/disc seen disc-condition sound 20 days ago
      And front-brake was replaced 10 days ago
      And until then its front-brake.type was drum
      And until then its front-brake.discs was 0
      Then record.description is doubt
      And it says "'disc-condition' at front-brake/disc (e1) does not go with front-brake.type: drum"

    Scenario: a change that rests on work elsewhere
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel was removed 10 days ago
      And until then its front-brake.type was drum
      And until then its front-brake.discs was 0
      Then record.description is doubt
      And it says "front-brake.type: drum to disc 2026-11-15 09:00 rests on e1, which is not about front-brake"

    Scenario Outline: a part that became another rests on work on all of it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <place> was replaced 10 days ago
      And until then its <field> was <before>
      Then record.description is <state>

      Examples:
        | place            | field             | before  | state |
        | rear-brake/shoes | rear-brake.lining | riveted | met   |
        | rear-brake       | rear-brake.lining | riveted | met   |
        | machine          | rear-brake.lining | riveted | met   |
        | front-brake      | rear-brake.lining | riveted | doubt |

    Scenario Outline: a disc brake that was a drum rests on work on the whole brake
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <place> was replaced 10 days ago
      And until then its front-brake.type was drum
      And until then its front-brake.discs was 0
      Then record.description is <state>

      Examples:
        | place            | state |
        | front-brake      | met   |
        | front-brake/disc | doubt |

    Scenario: a change that rests on work that was corrected
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake seen as-built no 10 days ago
      And until then its front-brake.type was drum
      And until then its front-brake.discs was 0
      And tom corrected it to yes
      Then record.description is doubt
      And it says "front-brake.type: drum to disc 2026-11-15 09:00 rests on e1, which e2 corrects"

    Scenario: described other than it was built
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it was built with front-brake.type drum
      Then record.description is doubt
      And it says "front-brake.type: built drum, described as disc, with no dated change"
      And it holds first-start, indoor-run, road-test, on-show, hand-over, non-runner and no other gate
      And it is safety-critical

    Scenario: looked at, and not as it was built
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen as-built no
      Then record.description is doubt
      And it says "not as built (e1), and no dated change of the description rests on that entry"

    Scenario: looked at, and altered on a known day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen as-built no
      And until then its volts was 6
      Then record.description is met

    Scenario: looked at by mistake
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen as-built no
      And tom corrected it to yes
      Then record.description is met

    Scenario: what is not asked because the machine is rare is told to everybody
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      Then record.description is met
      And it notes "equipment.lamps: no, so built, by Lark 250 rider's handbook, page 4; not asked because of it: every check of lamps"

    Scenario: and so is what nobody has shown
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the record is a job-record/1
      And the equipment has lamps no
      Then record.description is met
      And it notes "equipment.lamps: no; not asked because of it: every check of lamps"

    Scenario: a voltage of what nothing charges
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And there is no generator
      And electrics/charging measured charging-voltage 14.2 V ± 0.1 V
      Then record.description is doubt
      And it says "does not go with generator: no"

  @record.as-built
  Rule: What it was built with is known from a document or from two people

    Scenario: read from the handbook
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then record.as-built is met
      And it says "what it was built with is known from Lark 250 rider's handbook, page 4"

    Scenario: nothing is written
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it is not written what it was built with
      Then record.as-built is missing
      And it says "not written, what it was built with"
      And it holds first-start, indoor-run, road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: one field is left out
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it is not written what drive it was built with
      Then record.as-built is missing
      And it says "not written, what it was built with: drive"

    Scenario: one person wrote it from nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no document says what it was built with
      Then record.as-built is missing
      And it says "what it was built with rests on one person: no document, and nobody seconds it"

    Scenario: one person works alone
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And no document says what it was built with
      And one person works alone
      Then record.as-built is met
      And it notes "one person works alone in this workshop: nobody else compared what it was built with"

    Scenario: an old record cannot carry it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the record is a job-record/1
      Then record.as-built is met
      And it notes "what it was built with is not written: records of the first form cannot carry it"

    Scenario Outline: a rare value in an old record has to be shown
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the record is a job-record/1
      And <described>
      Then record.as-built is missing
      And it says "<says>"

      Examples:
        | described                                 | says                                                                                                  |
        | the final drive is none                   | drive: none: not shown that it was built so or when it became so; not asked because of it: every check of chain, belt or shaft |
        | the battery has 0 volts                   | volts: 0: not shown                                                                                   |
        | the top speed is 50 km/h                  | top-speed: 50 km/h: not shown                                                                         |
        | the equipment has front-springing rigid   | equipment.front-springing: rigid: not shown                                                           |
        | the equipment has rear-springing rigid    | equipment.rear-springing: rigid: not shown                                                            |
        | the equipment has lamps no                | equipment.lamps: no: not shown                                                                        |
        | the equipment has starter none            | equipment.starter: none: not shown                                                                    |
        | the equipment has clutch none             | equipment.clutch: none: not shown                                                                     |
        | the equipment has fuel-tap none           | equipment.fuel-tap: none: not shown                                                                   |
        | the machine is electric                   | engine.cycle: electric: not shown                                                                     |
        | the machine is a moped                    | kind: moped: not shown                                                                                |
        | the wheels are cast                       | front-wheel.spoked: no: not shown                                                                     |

    Scenario Outline: what was common in its day needs no showing
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the record is a job-record/1
      And the machine is first registered 1926-05-01
      And the ignition is magneto
      And <described>
      Then record.as-built is met

      Examples:
        | described                               |
        | the battery has 0 volts                 |
        | the equipment has rear-springing rigid  |
        | the equipment has front-springing girder |
        | the top speed is 70 km/h                |

    Scenario: that nothing charges the battery has to be shown
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And there is no generator
      And it is not written what generator it was built with
      Then record.as-built is missing
      And it says "generator: no: not shown that it was built so or when it became so; not asked because of it: every check of charging"

    Scenario: nothing charges the battery, and somebody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And there is no generator
      And it is not written what generator it was built with
      And electrics/charging seen as-built yes
      Then record.as-built is met

    Scenario: whether there is a generator need not be written of others
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And it is not written what generator it was built with
      And it is not written what battery it was built with
      Then record.as-built is met

    Scenario: somebody looked, and it is so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the record is a job-record/1
      And the equipment has lamps no
      And headlamp seen as-built yes
      Then record.as-built is met

    Scenario: that look was a mistake
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the record is a job-record/1
      And the equipment has lamps no
      And headlamp seen as-built yes
      And tom corrected it to no
      Then record.as-built is missing

    Scenario: in an old record, left off for good
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the record is a job-record/1
      And the equipment has lamps no
      And headlamp measured beam-fall 1.6 % ± 0.2 % 20 days ago
      And headlamp was left-off 10 days ago
      Then record.as-built is met
      And record.description is met

    Scenario: left off in a record that can carry a dated change, and carries none
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      And it was built with equipment.lamps yes
      And headlamp was left-off 10 days ago
      Then record.as-built is missing
      And it says "equipment.lamps: no: not shown that it was built so or when it became so"

    Scenario: left off, with its dated change
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has lamps no
      And headlamp was left-off 10 days ago
      And until then its equipment.lamps was yes
      Then record.as-built is met
      And record.description is met
      And it notes "equipment.lamps: no, changed from yes 2026-11-15 09:00 (e1); not asked because of it: every check of lamps"

  @record.brakes-as-built
  Rule: It has every brake it was built with, and at least one

    Scenario: both brakes are there
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then record.brakes-as-built is met

    Scenario: no brake at all
      Given a motorcycle with no brake in front and no brake behind
      Then record.brakes-as-built is fault
      And it says "described with no brake at all"

    Scenario: built with one brake only
      Given a motorcycle with no brake in front and a rod drum behind
      Then record.brakes-as-built is met
      And record.as-built is met

    Scenario: built with two, and one is gone
      Given a motorcycle with no brake in front and a rod drum behind
      And it was built with front-brake.type drum
      Then record.brakes-as-built is fault
      And it says "built with a front brake (as-built), and described without"

    Scenario: taken off in the workshop
      Given a motorcycle with no brake in front and a rod drum behind
      And it is not written what it was built with
      And front-brake was left-off 5 days ago
      And until then its front-brake.type was drum
      And until then its front-brake.lining was bonded
      And until then its front-brake.worked-by was cable
      Then record.brakes-as-built is fault
      And it says "built with a front brake (its first description), and described without"

    Scenario: nobody knows how it was built
      Given a motorcycle with no brake in front and a rod drum behind
      And the record is a job-record/1
      Then record.brakes-as-built is missing
      And it says "described without a front brake, and not shown that it was built without"
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: somebody looked, and it never had one
      Given a motorcycle with no brake in front and a rod drum behind
      And the record is a job-record/1
      And front-brake seen as-built yes
      Then record.brakes-as-built is met
      And record.as-built is met

    Scenario: that look at the brake was a mistake
      Given a motorcycle with no brake in front and a rod drum behind
      And the record is a job-record/1
      And front-brake seen as-built yes
      And tom corrected it to no
      Then record.brakes-as-built is missing

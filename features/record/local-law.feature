Feature: the law of a place that is not in the rule book, as the record has it

  # Vehicle Order 1967 is made up; it stands for the law of the place.

  @record.territory
  Rule: The law of the place counts as two people have read it

    Scenario: without it the machine is blocked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And the territory is FR
      Then record.territory is missing
      And it says "this rule book holds no local code for FR, only that of European Union (EU)"
      And it does not say "holds no local code for FR;"
      And it does not say "the record does not settle"
      And the road-test is blocked
      And record.plausible is met

    Scenario: nothing is known of it at all
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is JP
      Then record.territory is missing
      And it says "this rule book holds no local code for JP"
      And it does not say "only that of"
      And record.plausible is met

    Scenario: with all of it settled the machine is released
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets tyres.tread-depth at least 1.6 mm in "Vehicle Order 1967"
      And the local law sets no other limit in "Vehicle Order 1967"
      And a machine ready for road-test
      Then record.territory is met
      And it says "to be ridden in FR, under the law there as the record has it"
      And it does not say "European Union"
      And it notes nothing but "the law of FR is not in this rule book and nobody checked it here; the record has it from Vehicle Order 1967 (text of 2025-11-25), read by Ida Marrow, seconded by Tom Fell"
      And record.plausible is met
      And it does not say "to be ridden"
      And it notes nothing
      And the road-test is released

    Scenario: a territory of which the rule book has nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is JP
      And the local law sets no other limit in "Vehicle Order 1967"
      And a machine ready for hand-over
      Then record.territory is met
      And the hand-over is released

    Scenario: a state whose law the rule book does not have
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is US-NY
      And the local law sets no other limit in "Vehicle Order 1967"
      And a machine ready for road-test
      Then record.territory is met
      And the road-test is released

    Scenario: one limit that it leaves open
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets no other limit in "Vehicle Order 1967"
      And a machine ready for road-test
      And the record has no local law on tyres.alignment
      Then record.territory is missing
      And it says "the record does not settle all of the law of FR: open for tyres.alignment."
      And tyres.alignment is missing
      And record.plausible is met
      And the road-test is blocked

    Scenario: two limits that it leaves open
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets tyres.alignment at most 50 mm in "Vehicle Order 1967"
      And the local law sets tyres.tread-depth at least 1.6 mm in "Vehicle Order 1967"
      And the local law sets no other limit in "Vehicle Order 1967"
      And the record has no local law on tyres.alignment
      And the record has no local law on tyres.tread-depth
      Then record.territory is missing
      And it says "open for tyres.alignment, tyres.tread-depth."
      And it does not say "open for tyres.tread-depth"

    Scenario: a limit that is asked because no law is known
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets no other limit in "Vehicle Order 1967"
      And a machine ready for road-test
      And the record has no local law on controls.speedometer
      Then record.territory is missing
      And it says "open for controls.speedometer."
      And record.plausible is met

    Scenario: what one person alone has read settles nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets tyres.tread-depth at least 1.6 mm in "Vehicle Order 1967"
      And the local law sets no other limit in "Vehicle Order 1967"
      And a machine ready for road-test
      And nobody else has read the local law on tyres.tread-depth
      Then record.territory is missing
      And it says "open for tyres.tread-depth."
      And it notes "read by Ida Marrow, seconded by nobody"
      And the road-test is blocked

    Scenario: the law of a union settles what it sets, and the record the rest
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets no tyres.cut in "Vehicle Order 1967"
      Then record.territory is missing
      And it does not say "brakes.efficiency-lesser"

    Scenario: the rule book has the law itself
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the local law sets tyres.tread-depth at least 0.9 mm in "Vehicle Order 1967"
      And nobody else has read the local law on tyres.tread-depth
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And rear-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      Then record.territory is met
      And it does not say "as the record has it"
      And it notes nothing but "the law of GB is in this rule book: what the record has under local-law settles nothing"
      And record.plausible is met
      And it does not say "to be ridden"
      And it notes nothing
      And tyres.tread-depth is met

    Scenario: a code that is no country's stays a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is XX-12
      And the local law sets no other limit in "Vehicle Order 1967"
      Then record.territory is fault
      And it says "XX-12 is no country's code"
      And record.plausible is met

  @tyres.tread-depth
  Rule: Its numbers stand beside all others, and the strictest decides

    Scenario Outline: a depth between the limit of the rule book and that law
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets tyres.tread-depth at least 1.6 mm in "Vehicle Order 1967"
      And front-wheel/tyre measured tread-depth <depth>
      Then tyres.tread-depth is <state> at front-wheel/tyre
      And it says "at least 1.6 mm (Vehicle Order 1967, § 4 (4), text of 2025-11-25, read by Ida Marrow and Tom Fell, as the record has it, not checked here)"

      Examples:
        | depth           | state |
        | 2.0 mm ± 0.2 mm | met   |
        | 1.6 mm ± 0.2 mm | doubt |
        | 1.2 mm ± 0.2 mm | fault |
        | 0.5 mm ± 0.2 mm | fault |

    Scenario: looser than the rule book it loosens nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets tyres.tread-depth at least 0.5 mm in "Vehicle Order 1967"
      And front-wheel/tyre measured tread-depth 0.6 mm ± 0.05 mm
      Then tyres.tread-depth is fault at front-wheel/tyre
      And it says "at least 0.8 mm (49 CFR 571.119"

    Scenario: without it nothing passes, and the finding says what to write
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      Then tyres.tread-depth is missing at front-wheel/tyre
      And it says "no local code for it in this rule book (territory FR); ask the licensed inspector"
      And it is cleared by "Then write what it says of tyres.tread-depth under local-law: limits:, or under sets-none: where it was searched and sets no number; with document, section, as-of, by and seconded-by."

    Scenario: read by one person it settles nothing, and still counts against the machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets tyres.tread-depth at least 1.6 mm in "Vehicle Order 1967"
      And nobody else has read the local law on tyres.tread-depth
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And rear-wheel/tyre measured tread-depth 1.2 mm ± 0.2 mm
      Then tyres.tread-depth is missing at front-wheel/tyre
      And it says "the law of FR for it was read by Ida Marrow alone (Vehicle Order 1967, § 4 (4)); a second reader is needed"
      And tyres.tread-depth is fault at rear-wheel/tyre

    Scenario: what a second reader has to do
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets tyres.tread-depth at least 1.6 mm in "Vehicle Order 1967"
      And nobody else has read the local law on tyres.tread-depth
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And rear-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      Then tyres.tread-depth is missing
      And it is cleared by "Let a second person read Vehicle Order 1967, § 4 (4), and write who it was as seconded-by under local-law."

    Scenario: searched by two without finding a number, the limit of the rule book decides
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets no tyres.tread-depth in "Vehicle Order 1967"
      And front-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      And rear-wheel/tyre measured tread-depth 3.4 mm ± 0.2 mm
      Then tyres.tread-depth is met
      And it says "no number set by the law of FR (Vehicle Order 1967, whole, text of 2025-11-25, read by Ida Marrow and Tom Fell, as the record has it, not checked here)"

  @brakes.efficiency-lesser
  Rule: It loosens nothing that the union sets

    Scenario: looser than the union
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets brakes.efficiency-lesser at least 20 % in "Vehicle Order 1967"
      And front-brake/control measured braking-force 900 N ± 30 N
      And rear-brake/control measured braking-force 560 N ± 30 N
      And machine measured mass-with-rider 260 kg ± 2 kg
      Then brakes.efficiency-lesser is fault
      And it says "at least 25 % (Directive 2014/45/EU"

    Scenario: what the union sets is settled until one person alone has read something else
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the territory is FR
      And the local law sets brakes.efficiency-lesser at least 30 % in "Vehicle Order 1967"
      And nobody else has read the local law on brakes.efficiency-lesser
      And front-brake/control measured braking-force 900 N ± 30 N
      And rear-brake/control measured braking-force 880 N ± 30 N
      And machine measured mass-with-rider 260 kg ± 2 kg
      Then brakes.efficiency-lesser is missing
      And it says "a second reader is needed"

  @controls.mirrors
  Rule: It asks for what nobody asks for otherwise

    Scenario: mirrors on a machine without any
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has mirrors 0
      And the territory is FR
      And the local law sets controls.mirrors at least 1 times in "Vehicle Order 1967"
      Then controls.mirrors is missing

    Scenario: it sets no number of mirrors
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has mirrors 0
      And the territory is FR
      And the local law sets no controls.mirrors in "Vehicle Order 1967"
      Then controls.mirrors is not applicable

  @brakes.separate-controls
  Rule: One control on a machine built with two brakes

    Scenario Outline: what that law counts has to be said
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the territory is US-NY
      And the local law sets brakes.separate-controls at least 1 times in "Vehicle Order 1967"
      And machine tried separate-controls <count> times
      Then brakes.separate-controls is <state>

      Examples:
        | count | state   |
        | 1     | missing |
        | 2     | met     |

    Scenario: it counts those the machine was built with
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the territory is US-NY
      And the local law sets brakes.separate-controls at least 1 times in "Vehicle Order 1967"
      And the local law sets brakes.separate-controls-as-built at least 2 times in "Vehicle Order 1967"
      And machine tried separate-controls 1 times
      Then brakes.separate-controls is fault

    Scenario: it does not count them
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the territory is US-NY
      And the local law sets brakes.separate-controls at least 1 times in "Vehicle Order 1967"
      And the local law sets no brakes.separate-controls-as-built in "Vehicle Order 1967"
      And machine tried separate-controls 1 times
      Then brakes.separate-controls is met

Feature: The road test as it is to be ridden
  What the rider has in hand: step by step, what holds this machine back, when to stop, and what to look at afterwards.
  The speeds and distances of the plan are common practice.

  Rule: The plan is that of this machine

    Scenario: a two-stroke with a chain, a disc and a drum
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for first-start, road-test
      Then the road-test is released
      And nothing holds the ride back
      And the road-test is planned as
        """
        In this order, each step only when nothing was felt in the one before.
        Walking pace, in a clear yard, up to 5 mph (8 km/h)
        - Ride alone and without luggage.
        - Try the stop control first, then each brake by itself, then both.
        - Turn full lock both ways with the engine running.
        - feel for engine speed that changes with the steering
        - feel for a brake that drags, grabs or pulls to one side
        - feel for steering that catches or falls to one side
        - feel for a clutch that creeps
        Closed or quiet road, up to 30 mph (48 km/h)
        - Go up through the gears, brake gently from higher speed each time, and never brake hard at first.
        - Ride straight on with light hands, then an easy bend each way.
        - feel for a lever or pedal that comes nearer to the stop
        - feel for wobble, weave or a knock from the steering head
        - feel for a gear that jumps out
        - feel for a beat from wheel or tyre
        Stop and look it over
        - Bring a hand near each hub, disc and drum and compare both ends.
        - Look for oil and fuel, at engine, forks and tyres.
        - Look at the spindle nuts and at the slack of chain or belt.
        - Try the stop control again while it is hot.
        - feel for one brake hotter than the other without having braked more
        - feel for play that was not there before
        Quiet road, faster, up to 50 mph (80 km/h)
        - Raise the speed little by little, with room to turn off and roll out.
        - Close the throttle, and brake with both brakes from each new speed before going faster.
        - feel for an engine that tightens or falls off
        - feel for vibration that begins at one speed
        - feel for brakes that fade or begin to pull
        Main road, never faster than its limit, up to 60 mph (96 km/h)
        - Only when nothing was felt so far, in light traffic, and back by the shortest way.
        - feel for weave or lightness in the steering
        - feel for heat, smell or a warning lamp
        Stop at once: any loss of feel at lever or pedal
        Stop at once: a brake that gets hot at one wheel only
        Stop at once: wobble or weave
        Stop at once: oil or fuel on a tyre
        Stop at once: a stop control that fails
        Stop at once: an engine that tightens, knocks or falls off: clutch in and roll out
        Stop at once: a warning lamp
        Stop at once: rain or ice or failing light
        On return: Compare the heat of both brakes at once, without touching.
        On return: Look for oil, fuel and fluid, warm, and on the next day cold.
        On return: Look for brake fluid, at hoses, caliper and master cylinder.
        On return: Go over spindles, brakes, steering, mounts, sprockets, stand and footrests with the torque wrench, cold.
        On return: Measure the slack of chain or belt at its tightest point, and look at clip and line.
        On return: Tap every spoke.
        On return: Measure the tyre pressures cold.
        On return: Write the ride down with its hour, and what was left open.
        """

    Scenario: an electric machine with a belt, cast wheels and discs, no faster than 50 km/h
      Given a motorcycle with one hydraulic disc in front and one hydraulic disc behind
      And the machine is electric
      And the final drive is belt
      And the wheels are cast
      And the top speed is 50 km/h
      And the history is unknown
      Then the road-test is blocked
      And the road-test is planned as
        """
        Not to be ridden while road-test is blocked. This is the ride for the day it is released.
        A tyre is new, or may be: history unknown: front-wheel, rear-wheel
        - for the first 100 mi (161 km) it is slippery: lean little, open and brake gently, dry road only
        A tyre is too old to pass on its date, up to 50 mph (80 km/h): front-wheel/tyre, rear-wheel/tyre
        - old rubber grips little, and least in the wet: no hard braking, no lean, dry road only
        Pads or disc are new and not bedded in, or may be: history unknown: front-brake, rear-brake
        - no hard stop, no passenger and no traffic before they are bedded in
        Walking pace, in a clear yard, up to 5 mph (8 km/h)
        - Ride alone and without luggage.
        - Try the stop control first, then each brake by itself, then both.
        - Turn full lock both ways under power.
        - feel for a brake that drags, grabs or pulls to one side
        - feel for steering that catches or falls to one side
        Closed or quiet road, up to 30 mph (48 km/h)
        - Open the throttle in steps, brake gently from higher speed each time, and never brake hard at first.
        - Ride straight on with light hands, then an easy bend each way.
        - Bed in: slow down from this speed 8 times, a little harder each time, never to a standstill, and let the brake cool on the move in between.
        - feel for a lever or pedal that comes nearer to the stop
        - feel for wobble, weave or a knock from the steering head
        - feel for a beat from wheel or tyre
        Stop and look it over
        - Bring a hand near each hub, disc and drum and compare both ends.
        - Look at the spindle nuts and at the slack of chain or belt.
        - Try the stop control again while it is hot.
        - feel for one brake hotter than the other without having braked more
        - feel for play that was not there before
        Quiet road, faster, up to 50 km/h
        - Raise the speed little by little, with room to turn off and roll out.
        - Close the throttle, and brake with both brakes from each new speed before going faster.
        - feel for vibration that begins at one speed
        - feel for brakes that fade or begin to pull
        Main road, never faster than its limit, left out: the machine goes no faster (up to 50 km/h)
        Stop at once: any loss of feel at lever or pedal
        Stop at once: a brake that gets hot at one wheel only
        Stop at once: wobble or weave
        Stop at once: a stop control that fails
        Stop at once: a warning lamp
        Stop at once: rain or ice or failing light
        On return: Compare the heat of both brakes at once, without touching.
        On return: Look for brake fluid, at hoses, caliper and master cylinder.
        On return: Go over spindles, brakes, steering, mounts, sprockets, stand and footrests with the torque wrench, cold.
        On return: Measure the slack of chain or belt at its tightest point, and look at clip and line.
        On return: Measure the tyre pressures cold.
        On return: Write the ride down with its hour, and what was left open.
        On return: Look at the line of the bead, and measure the pressure again cold on the next day.
        On return: Look at tread and side walls of the old tyre for cracks, lumps and bulges, warm and cold.
        On return: Write the bedding in down, and try the brake again.
        """

    Scenario: a four-stroke with a shaft and drums, its top end fresh
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the engine is a four-stroke
      And the final drive is shaft
      And engine/top-end was stripped 3 days ago
      Then the road-test is blocked
      And the road-test is planned as
        """
        Not to be ridden while road-test is blocked. This is the ride for the day it is released.
        The top end is fresh, up to 50 mph (80 km/h): engine/top-end
        - for the first 300 mi (483 km) of the running-in
        - at most 66 % of full throttle
        - never the same throttle for longer than 30 s, and none shut off at speed for long
        - no main road that asks for more, and no labouring in a high gear
        A tyre is too old to pass on its date, up to 50 mph (80 km/h): front-wheel/tyre, rear-wheel/tyre
        - old rubber grips little, and least in the wet: no hard braking, no lean, dry road only
        Walking pace, in a clear yard, up to 5 mph (8 km/h)
        - Ride alone and without luggage.
        - Try the stop control first, then each brake by itself, then both.
        - Turn full lock both ways with the engine running.
        - feel for engine speed that changes with the steering
        - feel for a brake that drags, grabs or pulls to one side
        - feel for steering that catches or falls to one side
        - feel for a clutch that creeps
        Closed or quiet road, up to 30 mph (48 km/h)
        - Go up through the gears, brake gently from higher speed each time, and never brake hard at first.
        - Ride straight on with light hands, then an easy bend each way.
        - feel for a lever or pedal that comes nearer to the stop
        - feel for wobble, weave or a knock from the steering head
        - feel for a gear that jumps out
        - feel for a beat from wheel or tyre
        Stop and look it over
        - Bring a hand near each hub, disc and drum and compare both ends.
        - Look for oil and fuel, at engine, forks and tyres.
        - Look at the spindle nuts.
        - Try the stop control again while it is hot.
        - feel for one brake hotter than the other without having braked more
        - feel for play that was not there before
        Quiet road, faster, up to 50 mph (80 km/h)
        - Raise the speed little by little, with room to turn off and roll out.
        - Close the throttle, and brake with both brakes from each new speed before going faster.
        - feel for an engine that tightens or falls off
        - feel for vibration that begins at one speed
        - feel for brakes that fade or begin to pull
        Main road, never faster than its limit, left out: the top end is fresh (up to 50 mph (80 km/h))
        Stop at once: any loss of feel at lever or pedal
        Stop at once: a brake that gets hot at one wheel only
        Stop at once: wobble or weave
        Stop at once: oil or fuel on a tyre
        Stop at once: a stop control that fails
        Stop at once: an engine that tightens, knocks or falls off: clutch in and roll out
        Stop at once: a warning lamp
        Stop at once: rain or ice or failing light
        On return: Compare the heat of both brakes at once, without touching.
        On return: Look for oil, fuel and fluid, warm, and on the next day cold.
        On return: Go over spindles, brakes, steering, mounts, sprockets, stand and footrests with the torque wrench, cold.
        On return: Tap every spoke.
        On return: Measure the tyre pressures cold.
        On return: Write the ride down with its hour, and what was left open.
        On return: Let it go quite cold and tighten the head again in its order to its figure.
        On return: Do so again after 50 mi (81 km) and look for leaks.
        On return: Do so once more after 500 mi (805 km).
        On return: Read the plugs and write down their colour.
        On return: Look at tread and side walls of the old tyre for cracks, lumps and bulges, warm and cold.
        """

    Scenario: a two-stroke after a winter's work, on an old rear tyre
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/top-end was bored 9 days ago
      And front-wheel/tyre was replaced 8 days ago
      And front-brake/caliper/inner-pad was replaced 7 days ago
      And rear-brake/shoes was replaced 6 days ago
      And rear-wheel/tyre seen date-code 1114
      And rear-wheel/casing seen examination sound
      Then the road-test is blocked
      And the road-test is planned as
        """
        Not to be ridden while road-test is blocked. This is the ride for the day it is released.
        The top end is fresh, up to 50 mph (80 km/h): engine/top-end
        - for the first 300 mi (483 km) of the running-in
        - at most 66 % of full throttle
        - never the same throttle for longer than 30 s, and none shut off at speed for long
        - the maker's oil and mixture; do not add extra oil
        - no main road that asks for more, and no labouring in a high gear
        A tyre is new: front-wheel/tyre
        - for the first 100 mi (161 km) it is slippery: lean little, open and brake gently, dry road only
        A tyre is too old to pass on its date, up to 50 mph (80 km/h): front-wheel/tyre, rear-wheel/tyre
        - old rubber grips little, and least in the wet: no hard braking, no lean, dry road only
        Pads or disc are new and not bedded in: front-brake/caliper/inner-pad
        - no hard stop, no passenger and no traffic before they are bedded in
        Shoes or drum are new and not bedded in: rear-brake/shoes
        - no hard stop before the first 100 mi (161 km), no passenger and no traffic
        Walking pace, in a clear yard, up to 5 mph (8 km/h)
        - Ride alone and without luggage.
        - Try the stop control first, then each brake by itself, then both.
        - Turn full lock both ways with the engine running.
        - feel for engine speed that changes with the steering
        - feel for a brake that drags, grabs or pulls to one side
        - feel for steering that catches or falls to one side
        - feel for a clutch that creeps
        Closed or quiet road, up to 30 mph (48 km/h)
        - Go up through the gears, brake gently from higher speed each time, and never brake hard at first.
        - Ride straight on with light hands, then an easy bend each way.
        - Bed in: slow down from this speed 8 times, a little harder each time, never to a standstill, and let the brake cool on the move in between.
        - Bed in: slow down gently from 20 mph (32 km/h), again and again, without dragging the brake, and let it cool on the move in between.
        - feel for a lever or pedal that comes nearer to the stop
        - feel for wobble, weave or a knock from the steering head
        - feel for a gear that jumps out
        - feel for a beat from wheel or tyre
        Stop and look it over
        - Bring a hand near each hub, disc and drum and compare both ends.
        - Look for oil and fuel, at engine, forks and tyres.
        - Look at the spindle nuts and at the slack of chain or belt.
        - Try the stop control again while it is hot.
        - feel for one brake hotter than the other without having braked more
        - feel for play that was not there before
        Quiet road, faster, up to 50 mph (80 km/h)
        - Raise the speed little by little, with room to turn off and roll out.
        - Close the throttle, and brake with both brakes from each new speed before going faster.
        - feel for an engine that tightens or falls off
        - feel for vibration that begins at one speed
        - feel for brakes that fade or begin to pull
        Main road, never faster than its limit, left out: the top end is fresh (up to 50 mph (80 km/h))
        Stop at once: any loss of feel at lever or pedal
        Stop at once: a brake that gets hot at one wheel only
        Stop at once: wobble or weave
        Stop at once: oil or fuel on a tyre
        Stop at once: a stop control that fails
        Stop at once: an engine that tightens, knocks or falls off: clutch in and roll out
        Stop at once: a warning lamp
        Stop at once: rain or ice or failing light
        On return: Compare the heat of both brakes at once, without touching.
        On return: Look for oil, fuel and fluid, warm, and on the next day cold.
        On return: Look for brake fluid, at hoses, caliper and master cylinder.
        On return: Go over spindles, brakes, steering, mounts, sprockets, stand and footrests with the torque wrench, cold.
        On return: Measure the slack of chain or belt at its tightest point, and look at clip and line.
        On return: Tap every spoke.
        On return: Measure the tyre pressures cold.
        On return: Write the ride down with its hour, and what was left open.
        On return: Let it go quite cold and tighten the head again in its order to its figure.
        On return: Do so again after 50 mi (81 km) and look for leaks.
        On return: Do so once more after 500 mi (805 km).
        On return: Read the plugs and write down their colour.
        On return: Look at the line of the bead, and measure the pressure again cold on the next day.
        On return: Look at tread and side walls of the old tyre for cracks, lumps and bulges, warm and cold.
        On return: Write the bedding in down, and try the brake again.
        On return: Set the free play again after 50 mi (81 km).
        On return: Write the bedding in down, and try the brake again.
        """

  Rule: Fresh work holds the ride back until it is bedded in

    Background: tyres young enough to pass on their date
      Given front-wheel/tyre seen date-code 4025
      And rear-wheel/tyre seen date-code 4025

    Scenario Outline: fresh work
      Given a motorcycle with two hydraulic discs in front and <behind> behind
      And the engine has 6 cylinders
      And <part> was <work> 3 days ago
      Then the ride is held back because "<because>"

      Examples: the top end
        | behind     | part              | work     | because              |
        | a rod drum | engine/top-end    | replaced | The top end is fresh |
        | a rod drum | engine/top-end    | stripped | The top end is fresh |
        | a rod drum | engine/top-end    | repaired | The top end is fresh |
        | a rod drum | engine/top-end    | bored    | The top end is fresh |
        | a rod drum | engine/cylinder-1 | replaced | The top end is fresh |
        | a rod drum | engine/cylinder-1 | stripped | The top end is fresh |
        | a rod drum | engine/cylinder-1 | repaired | The top end is fresh |
        | a rod drum | engine/cylinder-1 | bored    | The top end is fresh |
        | a rod drum | engine/cylinder-2 | bored    | The top end is fresh |
        | a rod drum | engine/cylinder-3 | bored    | The top end is fresh |
        | a rod drum | engine/cylinder-4 | bored    | The top end is fresh |
        | a rod drum | engine/cylinder-5 | bored    | The top end is fresh |
        | a rod drum | engine/cylinder-6 | bored    | The top end is fresh |

      Examples: tyres
        | behind     | part             | work     | because       |
        | a rod drum | front-wheel/tyre | replaced | A tyre is new |
        | a rod drum | rear-wheel/tyre  | replaced | A tyre is new |

      Examples: pads and discs
        | behind              | part                               | work     | because                                 |
        | one hydraulic disc  | front-brake/left-caliper/inner-pad  | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc  | front-brake/left-caliper/outer-pad  | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc  | front-brake/right-caliper/inner-pad | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc  | front-brake/right-caliper/outer-pad | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc  | front-brake/left-disc               | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc  | front-brake/left-disc               | repaired | Pads or disc are new and not bedded in  |
        | one hydraulic disc  | front-brake/right-disc              | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc  | rear-brake/caliper/inner-pad        | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc  | rear-brake/caliper/outer-pad        | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc  | rear-brake/disc                     | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc  | rear-brake/disc                     | repaired | Pads or disc are new and not bedded in  |
        | two hydraulic discs | rear-brake/left-caliper/inner-pad   | replaced | Pads or disc are new and not bedded in  |
        | two hydraulic discs | rear-brake/left-caliper/outer-pad   | replaced | Pads or disc are new and not bedded in  |
        | two hydraulic discs | rear-brake/right-caliper/inner-pad  | replaced | Pads or disc are new and not bedded in  |
        | two hydraulic discs | rear-brake/right-caliper/outer-pad  | replaced | Pads or disc are new and not bedded in  |
        | two hydraulic discs | rear-brake/left-disc                | replaced | Pads or disc are new and not bedded in  |
        | two hydraulic discs | rear-brake/right-disc               | replaced | Pads or disc are new and not bedded in  |

      Examples: shoes and drums
        | behind     | part             | work     | because                                 |
        | a rod drum | rear-brake/shoes | replaced | Shoes or drum are new and not bedded in |
        | a rod drum | rear-brake/shoes | repaired | Shoes or drum are new and not bedded in |
        | a rod drum | rear-brake/drum  | replaced | Shoes or drum are new and not bedded in |
        | a rod drum | rear-brake/drum  | repaired | Shoes or drum are new and not bedded in |

    Scenario Outline: fresh work on a machine with one disc or a drum in front
      Given a motorcycle with <front> in front and a rod drum behind
      And <part> was <work> 3 days ago
      Then the ride is held back because "<because>"

      Examples:
        | front              | part                          | work     | because                                 |
        | one hydraulic disc | front-brake/caliper/inner-pad | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc | front-brake/caliper/outer-pad | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc | front-brake/disc              | replaced | Pads or disc are new and not bedded in  |
        | one hydraulic disc | front-brake                   | replaced | Pads or disc are new and not bedded in  |
        | a cable drum       | front-brake/shoes             | replaced | Shoes or drum are new and not bedded in |
        | a cable drum       | front-brake/drum              | replaced | Shoes or drum are new and not bedded in |
        | a cable drum       | front-brake                   | replaced | Shoes or drum are new and not bedded in |

    Scenario Outline: bedded in
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <part> was replaced 9 days ago
      And <part> was bedded 3 days ago
      Then nothing holds the ride back

      Examples:
        | part                          |
        | engine/top-end                |
        | front-wheel/tyre              |
        | front-brake/caliper/inner-pad |
        | rear-brake/shoes              |

    Scenario: work that leaves nothing fresh
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And engine/top-end was torqued 3 days ago
      And front-wheel/tyre was adjusted 3 days ago
      And front-brake/caliper/inner-pad was cleaned 3 days ago
      And rear-brake/shoes was adjusted 3 days ago
      Then nothing holds the ride back

    Scenario: nobody knows what was done to a machine without discs
      Given a motorcycle with a cable drum in front and a rod drum behind
      And the history is unknown
      Then the ride is held back because "The top end is fresh, or may be: history unknown; A tyre is new, or may be: history unknown; Shoes or drum are new and not bedded in, or may be: history unknown"

    Scenario: nobody knows what was done to a machine without drums
      Given a motorcycle with one hydraulic disc in front and one hydraulic disc behind
      And the history is unknown
      Then the ride is held back because "The top end is fresh, or may be: history unknown; A tyre is new, or may be: history unknown; Pads or disc are new and not bedded in, or may be: history unknown"

    Scenario: an old tyre
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/tyre was replaced 9 days ago
      And rear-wheel/tyre was bedded 8 days ago
      And rear-wheel/tyre seen date-code 1114
      And rear-wheel/casing seen examination sound
      Then tyres.aged-examination is met
      And the ride is held back because "A tyre is too old to pass on its date"

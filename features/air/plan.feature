Feature: The run under a roof as it is to be done
  What the two people in the room have in hand. The caution stands at the head of every plan.

  Rule: The plan is that of this run in this room

    Scenario: a machine ready to be run
      Given a machine ready for indoor-run
      Then the indoor-run is released
      And the indoor-run is planned as
        """
        In this order, today, in this room, with this plan and nothing else.
        Caution: Carbon monoxide has no colour and no smell. It takes the place of oxygen in the blood and kills within minutes, the strong as well, with the door open as well.
        Caution: Headache, dizziness, sickness, weakness or a muddled head, in anybody: everybody out into the open at once, stop the engine only if it is on the way, call the emergency services and say carbon monoxide. Nobody goes back in, for nothing and for nobody, before they say so.
        Caution: All figures here are a prediction and an aid, never a permission. The meter decides, and any person in the room may stop the run.
        Caution: Only a direct-reading meter counts, bump-tested today, hung where people breathe and read from the start to the end. A household alarm does not count: it is made to sound late.
        Who may be in the room
        - Two people who were trained for this: one at the machine, one with a hand at the stop control who reads the meter aloud.
        - No customer, visitor, child or onlooker, whatever the figures say. Nobody who is pregnant or has a heart or lung complaint.
        - Nobody in the rooms beside, above or below that share air with this one.
        Before the start
        1. Ask whether it can be done outdoors. If it can, do it outdoors.
        2. Hang a notice on every door, clear the way out, and agree where all meet outside.
        3. Machine on its stand and chocked, neutral or the rear wheel clear; nobody before or behind it.
        4. Extinguisher within reach, tray under the carburettor dry, no flame, no charger. If petrol drips, do not start.
        5. Push a hose on every outlet, switch the extraction on, feel it draw, and look at its end outdoors.
        6. Hang the meter where you breathe and read it: 9 ppm or less, or do not start.
        7. Put on hearing protection, both of you.
        The run
        1. Start. No higher than the plan says.
        2. The second person reads the meter aloud all the time.
        3. Stop after 5 min at the latest.
        Stop at once and leave
        - when the meter shows 100 ppm, sounds, or goes blank
        - when the meter rises above 9 ppm: with the hose in place it should not rise at all
        - when a hose slips or the extraction stops; nobody pushes a hose back on with the engine running
        - when anybody feels a headache, dizziness or sickness, or says so of another
        - when smoke hangs in the room, however little the meter shows: two-stroke smoke holds oil mist and benzene
        - when petrol drips, the machine moves, or the engine runs away
        If the hose slips
        - The room may be at 100 ppm after 1 min 43 s.
        - Stop the engine and go out. Come back when the meter, read from the door, shows 9 ppm or less.
        After the last run
        1. Stop the engine, shut the fuel tap, and go out, both of you.
        2. Leave the extraction running until the meter shows 9 ppm or less.
        3. Come back when the meter, read from the door, shows 9 ppm or less. The meter decides, not the clock.
        A run that is not in this plan
        - Not before the meter is down at 9 ppm again, and not before it was judged.
        - Bump test, hoses and people are good for today only.
        """

    Scenario: behind a hose, at idle
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room/co-instrument measured background 0 ppm ± 1 ppm
      And exhaust seen exhaust-data not-measured
      And room measured volume 300 m³ ± 10 m³
      And room seen openings shut
      And run-plan seen planned-runs 5on
      And run-plan seen planned-speed idle
      And run-plan seen exhaust-goes outdoors-by-hose
      Then the indoor-run is blocked
      And the indoor-run is planned as
        """
        NOT TO BE RUN: indoor-run is blocked. This is the plan for the day it is released.
        Caution: Carbon monoxide has no colour and no smell. It takes the place of oxygen in the blood and kills within minutes, the strong as well, with the door open as well.
        Caution: Headache, dizziness, sickness, weakness or a muddled head, in anybody: everybody out into the open at once, stop the engine only if it is on the way, call the emergency services and say carbon monoxide. Nobody goes back in, for nothing and for nobody, before they say so.
        Caution: All figures here are a prediction and an aid, never a permission. The meter decides, and any person in the room may stop the run.
        Caution: Only a direct-reading meter counts, bump-tested today, hung where people breathe and read from the start to the end. A household alarm does not count: it is made to sound late.
        Who may be in the room
        - Two people who were trained for this: one at the machine, one with a hand at the stop control who reads the meter aloud.
        - No customer, visitor, child or onlooker, whatever the figures say. Nobody who is pregnant or has a heart or lung complaint.
        - Nobody in the rooms beside, above or below that share air with this one.
        Before the start
        1. Ask whether it can be done outdoors. If it can, do it outdoors.
        2. Hang a notice on every door, clear the way out, and agree where all meet outside.
        3. Machine on its stand and chocked, neutral or the rear wheel clear; nobody before or behind it.
        4. Extinguisher within reach, tray under the carburettor dry, no flame, no charger. If petrol drips, do not start.
        5. Push a hose on every outlet, switch the extraction on, feel it draw, and look at its end outdoors.
        6. Hang the meter where you breathe and read it: 9 ppm or less, or do not start.
        7. Put on hearing protection, both of you.
        The run
        1. Start. No higher than the plan says.
        2. The second person reads the meter aloud all the time.
        3. Stop after 5 min at the latest.
        Stop at once and leave
        - when the meter shows 100 ppm, sounds, or goes blank
        - when the meter rises above 9 ppm: with the hose in place it should not rise at all
        - when a hose slips or the extraction stops; nobody pushes a hose back on with the engine running
        - when anybody feels a headache, dizziness or sickness, or says so of another
        - when smoke hangs in the room, however little the meter shows: two-stroke smoke holds oil mist and benzene
        - when petrol drips, the machine moves, or the engine runs away
        If the hose slips
        - The room may be at 100 ppm after 2 min 47 s.
        - Stop the engine and go out. Come back when the meter, read from the door, shows 9 ppm or less.
        After the last run
        1. Stop the engine, shut the fuel tap, and go out, both of you.
        2. Leave the extraction running until the meter shows 9 ppm or less.
        3. Come back when the meter, read from the door, shows 9 ppm or less. The meter decides, not the clock.
        A run that is not in this plan
        - Not before the meter is down at 9 ppm again, and not before it was judged.
        - Bump test, hoses and people are good for today only.
        """

    Scenario: behind a hose, above idle
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room/co-instrument measured background 0 ppm ± 1 ppm
      And exhaust seen exhaust-data not-measured
      And room measured volume 300 m³ ± 10 m³
      And room seen openings shut
      And run-plan seen planned-runs 5on
      And run-plan seen planned-speed above-idle
      And run-plan seen exhaust-goes outdoors-by-hose
      Then the indoor-run is blocked
      And the indoor-run is planned as
        """
        NOT TO BE RUN: indoor-run is blocked. This is the plan for the day it is released.
        Caution: Carbon monoxide has no colour and no smell. It takes the place of oxygen in the blood and kills within minutes, the strong as well, with the door open as well.
        Caution: Headache, dizziness, sickness, weakness or a muddled head, in anybody: everybody out into the open at once, stop the engine only if it is on the way, call the emergency services and say carbon monoxide. Nobody goes back in, for nothing and for nobody, before they say so.
        Caution: All figures here are a prediction and an aid, never a permission. The meter decides, and any person in the room may stop the run.
        Caution: Only a direct-reading meter counts, bump-tested today, hung where people breathe and read from the start to the end. A household alarm does not count: it is made to sound late.
        Who may be in the room
        - Two people who were trained for this: one at the machine, one with a hand at the stop control who reads the meter aloud.
        - No customer, visitor, child or onlooker, whatever the figures say. Nobody who is pregnant or has a heart or lung complaint.
        - Nobody in the rooms beside, above or below that share air with this one.
        Before the start
        1. Ask whether it can be done outdoors. If it can, do it outdoors.
        2. Hang a notice on every door, clear the way out, and agree where all meet outside.
        3. Machine on its stand and chocked, neutral or the rear wheel clear; nobody before or behind it.
        4. Extinguisher within reach, tray under the carburettor dry, no flame, no charger. If petrol drips, do not start.
        5. Push a hose on every outlet, switch the extraction on, feel it draw, and look at its end outdoors.
        6. Hang the meter where you breathe and read it: 9 ppm or less, or do not start.
        7. Put on hearing protection, both of you.
        The run
        1. Start. No higher than the plan says.
        2. The second person reads the meter aloud all the time.
        3. Stop after 5 min at the latest.
        Stop at once and leave
        - when the meter shows 100 ppm, sounds, or goes blank
        - when the meter rises above 9 ppm: with the hose in place it should not rise at all
        - when a hose slips or the extraction stops; nobody pushes a hose back on with the engine running
        - when anybody feels a headache, dizziness or sickness, or says so of another
        - when smoke hangs in the room, however little the meter shows: two-stroke smoke holds oil mist and benzene
        - when petrol drips, the machine moves, or the engine runs away
        If the hose slips
        - Stop the engine and go out. Come back when the meter, read from the door, shows 9 ppm or less.
        After the last run
        1. Stop the engine, shut the fuel tap, and go out, both of you.
        2. Leave the extraction running until the meter shows 9 ppm or less.
        3. Come back when the meter, read from the door, shows 9 ppm or less. The meter decides, not the clock.
        A run that is not in this plan
        - Not before the meter is down at 9 ppm again, and not before it was judged.
        - Bump test, hoses and people are good for today only.
        """

    Scenario: two runs into the room
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room/co-instrument measured background 0 ppm ± 1 ppm
      And exhaust seen exhaust-data not-measured
      And room measured volume 900 m³ ± 10 m³
      And room seen openings shut
      And run-plan seen planned-runs 1on,240off,1on
      And run-plan seen planned-speed idle
      And run-plan seen exhaust-goes into-the-room
      Then the indoor-run is blocked
      And the indoor-run is planned as
        """
        NOT TO BE RUN: indoor-run is blocked. This is the plan for the day it is released.
        Caution: Carbon monoxide has no colour and no smell. It takes the place of oxygen in the blood and kills within minutes, the strong as well, with the door open as well.
        Caution: Headache, dizziness, sickness, weakness or a muddled head, in anybody: everybody out into the open at once, stop the engine only if it is on the way, call the emergency services and say carbon monoxide. Nobody goes back in, for nothing and for nobody, before they say so.
        Caution: All figures here are a prediction and an aid, never a permission. The meter decides, and any person in the room may stop the run.
        Caution: Only a direct-reading meter counts, bump-tested today, hung where people breathe and read from the start to the end. A household alarm does not count: it is made to sound late.
        Who may be in the room
        - Two people who were trained for this: one at the machine, one with a hand at the stop control who reads the meter aloud.
        - No customer, visitor, child or onlooker, whatever the figures say. Nobody who is pregnant or has a heart or lung complaint.
        - Nobody in the rooms beside, above or below that share air with this one.
        Before the start
        1. Ask whether it can be done outdoors. If it can, do it outdoors.
        2. Hang a notice on every door, clear the way out, and agree where all meet outside.
        3. Machine on its stand and chocked, neutral or the rear wheel clear; nobody before or behind it.
        4. Extinguisher within reach, tray under the carburettor dry, no flame, no charger. If petrol drips, do not start.
        5. Open doors and windows. The figures do not count on them, and they help.
        6. Hang the meter where you breathe and read it: 9 ppm or less, or do not start.
        7. Put on hearing protection, both of you.
        The run
        1. Start. Stay at idle; choke off as soon as it runs without.
        2. Keep your heads away from the silencer; the air there is worse than the meter shows.
        3. The second person reads the meter aloud all the time.
        4. Stop after 1 min at the latest.
        Stop at once and leave
        - when the meter shows 100 ppm, sounds, or goes blank
        - when the meter shows more than 19 ppm: then the figures are wrong
        - when anybody feels a headache, dizziness or sickness, or says so of another
        - when smoke hangs in the room, however little the meter shows: two-stroke smoke holds oil mist and benzene
        - when petrol drips, the machine moves, or the engine runs away
        Between the planned runs
        - Go out, with everything open.
        - Start the next one not before its time, and only when the meter shows 7 ppm or less.
        After the last run
        1. Stop the engine, shut the fuel tap, and go out, both of you.
        2. Open everything from outside. With doors shut the room needs 4 h 50 min to come down to 9 ppm.
        3. Come back when the meter, read from the door, shows 9 ppm or less. The meter decides, not the clock.
        A run that is not in this plan
        - Not before the meter is down at 9 ppm again, and not before it was judged.
        - Write it behind the planned runs, with the minutes between, and have the whole judged again: what was breathed today counts.
        - Bump test, hoses and people are good for today only.
        """

    Scenario: a run into the room that is refused
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room/co-instrument measured background 0 ppm ± 1 ppm
      And exhaust seen exhaust-data not-measured
      And room measured volume 300 m³ ± 10 m³
      And room seen openings shut
      And run-plan seen planned-runs 30on,30off,30on
      And run-plan seen planned-speed idle
      And run-plan seen exhaust-goes into-the-room
      Then the indoor-run is blocked
      And the indoor-run is planned as
        """
        NOT TO BE RUN: indoor-run is blocked. This run is refused as it is planned, so nothing is said on how to start it.
        Caution: Carbon monoxide has no colour and no smell. It takes the place of oxygen in the blood and kills within minutes, the strong as well, with the door open as well.
        Caution: Headache, dizziness, sickness, weakness or a muddled head, in anybody: everybody out into the open at once, stop the engine only if it is on the way, call the emergency services and say carbon monoxide. Nobody goes back in, for nothing and for nobody, before they say so.
        Caution: All figures here are a prediction and an aid, never a permission. The meter decides, and any person in the room may stop the run.
        Caution: Only a direct-reading meter counts, bump-tested today, hung where people breathe and read from the start to the end. A household alarm does not count: it is made to sound late.
        Who may be in the room
        - Two people who were trained for this: one at the machine, one with a hand at the stop control who reads the meter aloud.
        - No customer, visitor, child or onlooker, whatever the figures say. Nobody who is pregnant or has a heart or lung complaint.
        - Nobody in the rooms beside, above or below that share air with this one.
        Stop at once and leave
        - when the meter shows 100 ppm, sounds, or goes blank
        - when anybody feels a headache, dizziness or sickness, or says so of another
        - when smoke hangs in the room, however little the meter shows: two-stroke smoke holds oil mist and benzene
        - when petrol drips, the machine moves, or the engine runs away
        After the last run
        1. Stop the engine, shut the fuel tap, and go out, both of you.
        2. Open everything from outside. With doors shut the room needs 32 h 50 min to come down to 9 ppm.
        3. Come back when the meter, read from the door, shows 9 ppm or less. The meter decides, not the clock.
        A run that is not in this plan
        - Not before the meter is down at 9 ppm again, and not before it was judged.
        - Write it behind the planned runs, with the minutes between, and have the whole judged again: what was breathed today counts.
        - Bump test, hoses and people are good for today only.
        """

    Scenario: a customer in the room, behind a hose
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And room/co-instrument measured background 0 ppm ± 1 ppm
      And exhaust seen exhaust-data not-measured
      And room measured volume 300 m³ ± 10 m³
      And room seen openings shut
      And run-plan seen planned-runs 5on
      And run-plan seen planned-speed idle
      And run-plan seen exhaust-goes outdoors-by-hose
      And room seen people public
      Then the indoor-run is blocked
      And the indoor-run is planned as
        """
        NOT TO BE RUN: indoor-run is blocked. This run is refused as it is planned, so nothing is said on how to start it.
        Caution: Carbon monoxide has no colour and no smell. It takes the place of oxygen in the blood and kills within minutes, the strong as well, with the door open as well.
        Caution: Headache, dizziness, sickness, weakness or a muddled head, in anybody: everybody out into the open at once, stop the engine only if it is on the way, call the emergency services and say carbon monoxide. Nobody goes back in, for nothing and for nobody, before they say so.
        Caution: All figures here are a prediction and an aid, never a permission. The meter decides, and any person in the room may stop the run.
        Caution: Only a direct-reading meter counts, bump-tested today, hung where people breathe and read from the start to the end. A household alarm does not count: it is made to sound late.
        Who may be in the room
        - Two people who were trained for this: one at the machine, one with a hand at the stop control who reads the meter aloud.
        - No customer, visitor, child or onlooker, whatever the figures say. Nobody who is pregnant or has a heart or lung complaint.
        - Nobody in the rooms beside, above or below that share air with this one.
        Stop at once and leave
        - when the meter shows 100 ppm, sounds, or goes blank
        - when the meter rises above 9 ppm: with the hose in place it should not rise at all
        - when a hose slips or the extraction stops; nobody pushes a hose back on with the engine running
        - when anybody feels a headache, dizziness or sickness, or says so of another
        - when smoke hangs in the room, however little the meter shows: two-stroke smoke holds oil mist and benzene
        - when petrol drips, the machine moves, or the engine runs away
        If the hose slips
        - The room may be at 100 ppm after 2 min 47 s.
        - Stop the engine and go out. Come back when the meter, read from the door, shows 9 ppm or less.
        After the last run
        1. Stop the engine, shut the fuel tap, and go out, both of you.
        2. Leave the extraction running until the meter shows 9 ppm or less.
        3. Come back when the meter, read from the door, shows 9 ppm or less. The meter decides, not the clock.
        A run that is not in this plan
        - Not before the meter is down at 9 ppm again, and not before it was judged.
        - Bump test, hoses and people are good for today only.
        """

Feature: Licensed inspections

  @record.licensed-inspection
  Rule: A licensed inspector's refusal stands until a later pass

    Scenario: nobody inspected it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then record.licensed-inspection is met

    Scenario: refused
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a licensed inspector refused it 3 days ago
      Then record.licensed-inspection is fault
      And it says "refused by a licensed inspector"
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: refused, then passed
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a licensed inspector refused it 3 days ago
      And a licensed inspector passed it 1 day ago
      Then record.licensed-inspection is met

    Scenario: passed, then refused
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a licensed inspector passed it 3 days ago
      And a licensed inspector refused it 1 day ago
      Then record.licensed-inspection is fault

    Scenario: refused, then passed, and the pass was another machine's
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a licensed inspector refused it 3 days ago
      And a licensed inspector passed it 1 day ago
      And ida corrected it: front-brake tried walking-pace-stop stops
      Then record.licensed-inspection is fault

    Scenario: passed, and the pass was another machine's
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a licensed inspector passed it 1 day ago
      And ida corrected it: front-brake tried walking-pace-stop stops
      Then record.licensed-inspection is met
      And it says "no licensed inspection is entered"

    Scenario: passed twice, and the second pass was another machine's
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a licensed inspector refused it 4 days ago
      And a licensed inspector passed it 3 days ago
      And a licensed inspector passed it 1 day ago
      And ida corrected it: front-brake tried walking-pace-stop stops
      Then record.licensed-inspection is met

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

Feature: A clutch without a lever
  On a machine whose clutch takes hold by itself as the engine gathers speed, nothing but a low idle keeps it from driving off.
  With the rear wheel off the ground and the engine idling warm, the wheel has to stand still.

  @transmission.idle-clutch
  Rule: At idle the rear wheel stands still

    Scenario Outline: wheel at idle in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And transmission/clutch tried wheel-at-idle <found>
      Then transmission.idle-clutch is met
      And it holds until 2027-05-25

      Examples:
        | found               |
        | stands-still        |
        | made-without-clutch |

    Scenario Outline: wheel at idle not in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And transmission/clutch tried wheel-at-idle <found>
      Then transmission.idle-clutch is fault
      And it holds first-start, indoor-run, road-test, hand-over and no other gate

      Examples:
        | found  |
        | creeps |
        | turns  |
        | grabs  |

    Scenario: wheel at idle known only from hearsay
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And transmission/clutch told wheel-at-idle stands-still
      Then transmission.idle-clutch is missing

    Scenario: wheel at idle looked at but not tried
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And transmission/clutch seen wheel-at-idle stands-still
      Then transmission.idle-clutch is missing

    Scenario: nothing recorded
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      Then transmission.idle-clutch is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: a good result alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And transmission/clutch tried wheel-at-idle creeps
      And tom wrote that transmission/clutch tried wheel-at-idle stands-still
      Then transmission.idle-clutch is fault

    Scenario: wheel at idle creeps, and adjusted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And transmission/clutch tried wheel-at-idle creeps 3 days ago
      And fuel/carburettors was adjusted 2 days ago
      And transmission/clutch tried wheel-at-idle stands-still 1 day ago
      Then transmission.idle-clutch is met

    Scenario: wheel at idle turns, and adjusted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And transmission/clutch tried wheel-at-idle turns 3 days ago
      And fuel/carburettors was adjusted 2 days ago
      And transmission/clutch tried wheel-at-idle stands-still 1 day ago
      Then transmission.idle-clutch is met

    Scenario: wheel at idle grabs, and adjusted
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And transmission/clutch tried wheel-at-idle grabs 3 days ago
      And fuel/carburettors was adjusted 2 days ago
      And transmission/clutch tried wheel-at-idle stands-still 1 day ago
      Then transmission.idle-clutch is fault

    Scenario: wheel at idle grabs, and repaired
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And transmission/clutch tried wheel-at-idle grabs 3 days ago
      And transmission/clutch was repaired 2 days ago
      And transmission/clutch tried wheel-at-idle stands-still 1 day ago
      Then transmission.idle-clutch is met

    Scenario Outline: how long the result is valid
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And transmission/clutch tried wheel-at-idle stands-still <ago> months ago
      Then transmission.idle-clutch is <state>

      Examples:
        | ago | state |
        | 6   | met   |
        | 7   | stale |

    Scenario: transmission/clutch was opened since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And transmission/clutch tried wheel-at-idle stands-still
      And transmission/clutch was opened
      Then transmission.idle-clutch is stale

    Scenario: does not apply to a machine with a clutch lever
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then transmission.idle-clutch is not applicable

    Scenario: does not apply to an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      And the equipment has clutch none
      Then transmission.idle-clutch is not applicable

    Scenario: a record of the first form is judged as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And the record is a job-record/1
      Then transmission.idle-clutch is not applicable

    Scenario: nothing recorded, on a machine otherwise ready
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has clutch none
      And a machine ready for road-test
      And nothing is written for transmission.idle-clutch
      Then the road-test is blocked by transmission.idle-clutch alone

Feature: What cannot be read with the machine together

  Rule: What closed a part before it was read apart is closed once more

    Scenario Outline: closed, and then read apart
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <closed> was torqued
      And <place> <reading>
      Then <proof> is stale at <closed>

      Examples:
        | closed                       | place                        | reading                             | proof                  |
        | rear-wheel/spindle           | rear-brake/shoes             | measured thickness 3.5 mm ± 0.05 mm | tyres.spindle-torque   |
        | rear-brake/torque-arm        | rear-brake/shoes             | measured thickness 3.5 mm ± 0.05 mm | fasteners.torque-arm   |
        | rear-wheel/spindle           | rear-brake/drum              | measured bore 160 mm ± 0.05 mm      | tyres.spindle-torque   |
        | rear-wheel/spindle           | rear-brake/drum              | seen drum-condition sound           | tyres.spindle-torque   |
        | front-brake/caliper/bolts    | front-brake/caliper          | tried piston-movement free          | brakes.caliper-bolts   |
        | front-brake/hydraulic/unions | front-brake/hydraulic/unions | seen sealing-washers new            | brakes.banjo-torque    |
        | rear-fork/dampers            | rear-fork/pivot              | measured side-play 0.1 mm ± 0.05 mm | fasteners.rear-dampers |

    Scenario: read apart, and then closed
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-brake/shoes measured thickness 3.5 mm ± 0.05 mm
      And rear-wheel/spindle was torqued
      Then tyres.spindle-torque is met at rear-wheel/spindle

    Scenario: the proof alone is asked for again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spindle was torqued
      And rear-brake/shoes measured thickness 3.5 mm ± 0.05 mm
      And rear-wheel/spindle was torqued
      Then tyres.spindle-torque is met at rear-wheel/spindle

    Scenario: the lining behind says nothing of the wheel in front
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/spindle was torqued
      And rear-brake/shoes measured thickness 3.5 mm ± 0.05 mm
      Then tyres.spindle-torque is met at front-wheel/spindle

    Scenario: washers that were left alone are seen from outside
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/hydraulic/unions was torqued
      And front-brake/hydraulic/unions seen sealing-washers undisturbed
      Then brakes.banjo-torque is met at front-brake/hydraulic/unions

    Scenario: a leak is looked for with the bowls on
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel measured watched-for 15 min ± 1 s
      And fuel tried leak-at-rest dry
      And fuel/carburettors seen carburettor-inside clean
      Then fuel.leak is stale

    Scenario: a cap that came off for the compression goes on again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition/cylinder-1/lead seen plug-lead whole-and-dry
      And ignition/cylinder-1/lead tried plug-cap-fit tight
      And engine/cylinder-1 measured compression 1050 kPa ± 20 kPa
      Then electrics.plug-lead is stale at ignition/cylinder-1/lead

    Scenario: hearsay opens nothing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-brake/caliper/bolts was torqued
      And front-brake/caliper told piston-movement free
      Then brakes.caliper-bolts is met at front-brake/caliper/bolts

  Rule: A remark that says how it was read assembled leaves the proof as it is

    Scenario: through the inspection hole
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spindle was torqued
      And rear-brake/shoes measured thickness 3.5 mm ± 0.05 mm
      And there was the remark "read assembled, through the hole in the brake plate"
      Then tyres.spindle-torque is met at rear-wheel/spindle

    Scenario Outline: words that do not say how
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And rear-wheel/spindle was torqued
      And rear-brake/shoes measured thickness 3.5 mm ± 0.05 mm
      And there was the remark "<words>"
      Then tyres.spindle-torque is stale at rear-wheel/spindle

      Examples:
        | words                         |
        | read assembled                |
        | read after it was assembled   |
        | no inspection hole, wheel out |

Feature: What the remaining work needs
  Most is looked at on a machine that stands. For some the engine has to run, and some shows only on the road: the order of work
  leaves these until they are allowed.

  Scenario: a two-stroke with a kick starter, for the road
    Given a motorcycle with one hydraulic disc in front and a rod drum behind
    Then for road-test nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.delivery, roadtest.engine-warm, transmission.clutch-drag is proven with the engine running

  Scenario: the same, to be handed over
    Given a motorcycle with one hydraulic disc in front and a rod drum behind
    Then for hand-over nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.delivery, transmission.clutch-drag is proven with the engine running
    And for hand-over nothing but brakes.bedded, handover.brake-heat, handover.chain-after-ride, handover.fasteners-after-ride, handover.leaks-after-ride, handover.ridden, handover.ride-result, handover.spokes-after-ride is proven by riding

  Scenario: disc and drum without a figure, for the road
    Given a motorcycle with one hydraulic disc in front and a rod drum behind
    And front-brake/disc seen maker-mark none-legible
    And rear-brake/drum seen maker-mark none-legible
    And the maker says brakes.disc-unmarked at least 4.5 mm
    And the maker says brakes.drum-unmarked at most 161 mm
    Then for road-test nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.delivery, roadtest.engine-warm, transmission.clutch-drag is proven with the engine running

  Scenario: the same, without a figure in the maker's book
    Given a motorcycle with one hydraulic disc in front and a rod drum behind
    And front-brake/disc seen maker-mark none-legible
    And rear-brake/drum seen maker-mark none-legible
    Then for road-test nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.delivery, roadtest.engine-warm, transmission.clutch-drag is proven with the engine running

  Scenario: a four-stroke with two carburettors, for the road
    Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
    And the engine is a four-stroke
    And the engine has 2 cylinders
    And the ignition is electronic
    And the equipment has carburettors 2
    And the equipment has starter electric
    And the equipment has rear-springing single-damper
    And the equipment has indicators yes
    And the final drive is belt
    And the wheels are cast
    And the tyres are tubeless
    Then for road-test nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.carburettors-synchronised, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, engine.timing-running, fuel.leak-after-run, oil.pressure-sign, roadtest.engine-warm, transmission.clutch-drag is proven with the engine running

  Scenario: an old outfit with a magneto, to be handed over
    Given a motorcycle with a cable drum in front and a rod drum behind
    And the machine is a motorcycle-sidecar
    And the engine is a four-stroke
    And the engine is oiled by total-loss
    And the ignition is magneto
    And the battery has 0 volts
    And the final drive is shaft
    And the equipment has front-springing girder
    And the equipment has rear-springing plunger
    Then for hand-over nothing but controls.idle-at-locks, controls.stop-idle, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, transmission.clutch-drag is proven with the engine running
    And for hand-over nothing but brakes.bedded, handover.brake-heat, handover.fasteners-after-ride, handover.leaks-after-ride, handover.ridden, handover.ride-result, handover.spokes-after-ride is proven by riding

  Scenario: an electric machine, to be handed over
    Given a motorcycle with one hydraulic disc in front and a hydraulic drum behind
    And the machine is electric
    And the brakes are linked
    Then for hand-over nothing but brakes.bedded, handover.brake-heat, handover.chain-after-ride, handover.fasteners-after-ride, handover.leaks-after-ride, handover.ridden, handover.ride-result, handover.spokes-after-ride is proven by riding

  Scenario: an electric machine, for the road
    Given a motorcycle with one hydraulic disc in front and a hydraulic drum behind
    And the machine is electric
    Then for road-test nothing is proven with the engine running

  Scenario: a motorcycle of 1989 with linked brakes, a hydraulic clutch and indicators, for the road
    Given a motorcycle with two hydraulic discs in front and one hydraulic disc behind
    And the machine is first registered 1989-04-03
    And the engine is a four-stroke
    And the brakes are linked
    And the equipment has clutch hydraulic
    And the equipment has indicators yes
    And the battery is sealed
    Then for road-test nothing but controls.idle-at-locks, controls.stop-idle, electrics.battery-charging, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.pressure-sign, roadtest.engine-warm, transmission.clutch-drag is proven with the engine running

  Scenario: a trials machine without lamps, with its head off and on again, to be handed over
    Given a motorcycle with a cable drum in front and a cable drum behind
    And the equipment has lamps no
    And engine/head was removed
    And engine/head was refitted
    Then for road-test nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.head-retorque, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.delivery, roadtest.engine-warm, transmission.clutch-drag is proven with the engine running
    And for hand-over nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.head-retorque, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.delivery, transmission.clutch-drag is proven with the engine running
    And for hand-over nothing but brakes.bedded, engine.head-recheck, handover.brake-heat, handover.chain-after-ride, handover.fasteners-after-ride, handover.leaks-after-ride, handover.ridden, handover.ride-result, handover.spokes-after-ride is proven by riding

  Scenario: a machine of 1926 with one brake, to be handed over
    Given a motorcycle with no brake in front and a rod drum behind
    And the machine is first registered 1926-04-01
    Then for hand-over nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.delivery, transmission.clutch-drag is proven with the engine running

  Scenario: a motorcycle in Virginia, to be handed over
    Given a motorcycle with one hydraulic disc in front and a rod drum behind
    And the territory is US-VA
    Then for road-test nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.delivery, roadtest.engine-warm, transmission.clutch-drag is proven with the engine running
    And for hand-over nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.delivery, transmission.clutch-drag is proven with the engine running
    And for hand-over nothing but brakes.bedded, brakes.stopping-distance, handover.brake-heat, handover.chain-after-ride, handover.fasteners-after-ride, handover.leaks-after-ride, handover.ridden, handover.ride-result, handover.spokes-after-ride is proven by riding

  Scenario: an outfit without a clutch lever that stood, cooled by liquid, for the road
    Given a motorcycle with one hydraulic disc in front and a rod drum behind
    And the machine is a motorcycle-sidecar
    And the engine is a four-stroke
    And the engine is cooled by liquid
    And the equipment has clutch none
    And it stood since 1998
    And controls/grips tried grips tight-and-whole
    Then for road-test nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.cooling-works, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.pressure-sign, roadtest.engine-warm, transmission.idle-clutch is proven with the engine running

  Scenario: an outfit with reverse, acetylene lamps, a belt to its generator and a parking brake, for the road
    Given a motorcycle with a cable drum in front and a rod drum behind
    And the machine is a motorcycle-sidecar
    And the machine has the part twin-leading-shoes
    And the machine has the part parking-brake
    And the machine has the part acetylene-lamps
    And the machine has the part generator-belt
    And the machine has the part reverse-gear
    And the equipment has rear-springing leaf-spring
    Then for road-test nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.delivery, roadtest.engine-warm, transmission.clutch-drag is proven with the engine running

  Scenario: a sprung hub, and brake fluid that somebody says was tested, for the road
    Given a motorcycle with one hydraulic disc in front and a rod drum behind
    And the equipment has rear-springing sprung-hub
    And front-brake/hydraulic/fluid told fluid-boiling 200 °C
    Then for road-test nothing but controls.idle-at-locks, controls.stop-idle, electrics.charging-speed, electrics.charging-voltage, engine.exhaust-leak, engine.idle, engine.knock, engine.leak-warm, fuel.leak-after-run, oil.delivery, roadtest.engine-warm, transmission.clutch-drag is proven with the engine running

Feature: What a reading is believed to be worth
  Where a record gives no uncertainty of its own, each kind of instrument has the least that is believed of it: half the width of its
  limit of error, taken as rectangular, times two over the root of three, rounded up. All of it is common practice.

  Rule: A reading is as uncertain as its instrument

    Background: what such readings need besides
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the engine is a four-stroke
      And the engine has 2 cylinders
      And the equipment has carburettors 2
      And workshop seen altitude 0 m
      And electrics/battery seen rest rested-overnight
      And ignition/cylinder-1/coil measured coil-temperature 20 °C ± 1 °C
      And room/run seen run-minutes 3 min
      And run-plan seen planned-runs 10on
      And run-plan seen exhaust-goes outdoors-by-hose
      And exhaust seen outlets 2 times
      And room/extraction seen connected-outlets 2 times
      And room/extraction tried extraction running
      And room/extraction seen discharge outdoors-clear
      And room seen openings shut
      And headlamp tried beam-direction straight

    Scenario Outline: the table gives the uncertainty
      Given a <instrument> is taken from here on
      And <place> measured <what> <reading>
      Then <check> is <state>
      And it says "<says>"

      Examples: length
        | instrument     | place                         | what              | reading  | says               | check                    | state |
        | caliper        | front-brake/caliper/inner-pad | thickness         | 1.55 mm  | 1.55 mm ± 0.06 mm  | brakes.pad-thickness     | doubt |
        | micrometer     | front-brake/caliper/inner-pad | thickness         | 1.505 mm | 1.505 mm ± 0.01 mm | brakes.pad-thickness     | doubt |
        | depth-gauge    | front-wheel/tyre              | tread-depth       | 1.1 mm   | 1.1 mm ± 0.2 mm    | tyres.tread-depth        | doubt |
        | dial-indicator | front-brake/disc              | runout            | 0.28 mm  | 0.28 mm ± 0.03 mm  | brakes.disc-runout       | doubt |
        | feeler-gauge   | ignition/points               | points-gap        | 0.31 mm  | 0.31 mm ± 0.02 mm  | engine.points-gap        | doubt |
        | steel-rule     | transmission/chain            | slack-at-tightest | 20.5 mm  | 20.5 mm ± 0.6 mm   | transmission.chain-slack | doubt |
        | tape-measure   | machine/alignment             | wheel-offset      | 20 mm    | 20 mm ± 10 mm      | tyres.alignment          | doubt |

      Examples: angle
        | instrument  | place                | what                | reading | says        | check            | state |
        | protractor  | rear-brake/cam-lever | cam-angle           | 89.5 °  | 89.5° ± 1°  | brakes.cam-angle | doubt |
        | timing-disc | ignition             | timing-off-the-mark | 1.8 °   | 1.8° ± 0.5° | engine.timing    | doubt |

      Examples: pressure
        | instrument         | place             | what              | reading  | says               | check                            | state |
        | pressure-gauge     | engine/cylinder-1 | compression       | 6.95 bar | 6.95 bar ± 0.1 bar | engine.compression               | doubt |
        | compression-gauge  | engine/cylinder-1 | compression       | 7.2 bar  | 7.2 bar ± 0.5 bar  | engine.compression               | doubt |
        | low-pressure-gauge | fuel/carburettors | vacuum-difference | 0.8 kPa  | 0.8 kPa ± 0.5 kPa  | engine.carburettors-synchronised | doubt |
        | vacuum-gauges      | fuel/carburettors | vacuum-difference | 9 hPa    | 9 hPa ± 2 hPa      | engine.carburettors-synchronised | doubt |

      Examples: volts, amperes and ohms
        | instrument | place                    | what               | reading | says                | check                     | state |
        | multimeter | electrics/battery        | rest-voltage       | 12.45 V | 12.45 V ± 0.08 V    | electrics.battery-voltage | doubt |
        | multimeter | electrics/battery        | leakage-current    | 0.99 mA | 0.99 mA ± 0.0198 mA | electrics.leakage         | doubt |
        | multimeter | ignition/cylinder-1/coil | primary-resistance | 5.9 Ω   | ± 0.4               | electrics.coil-primary    | doubt |

      Examples: volume and flow
        | instrument    | place           | what            | reading  | says               | check            | state |
        | measuring-jug | fuel/tank       | fuel-volume     | 18.5 L   | 18.5 L ± 0.555 L   | show.fuel-volume | doubt |
                | tape-measure  | room            | volume          | 30 m³    | 30 m³ ± 3 m³       | air.room         | met   |
        | anemometer    | room/extraction | extraction-flow | 400 m³/h | 400 m³/h ± 60 m³/h | air.extraction   | doubt |

      Examples: time, speed and count
        | instrument      | place               | what           | reading   | says                | check                    | state |
        | timer           | front-brake/control | hold-time      | 60.2 s    | 60.2 s ± 0.5 s      | brakes.hold-test         | doubt |
        | anemometer      | outdoors            | gusts          | 39 km/h   | 39 km/h ± 3 km/h    | roadtest.wind            | doubt |
        | tachometer      | electrics/charging  | charging-speed | 2520 rpm  | 2520 rpm ± 50.4 rpm | electrics.charging-speed | doubt |
        | tracer-gas-test | room                | mixing-factor  | 1.2 times | 1.2 ± 0.3           | air.mixing               | doubt |

      Examples: temperature
        | instrument         | place    | what            | reading | says         | check                    | state |
        | thermometer        | outdoors | air-temperature | 0.5 °C  | 0.5 °C ± 1 K | roadtest.air-temperature | doubt |

      Examples: share
        | instrument           | place             | what      | reading | says            | check            | state |
        | leak-down-tester     | engine/cylinder-1 | leak-down | 14.5 %  | 14.5 % ± 1 %    | engine.leak-down | doubt |
        | brake-fluid-tester   | headlamp          | beam-fall | 1.6 %   | 1.6 % ± 0.5 %   | electrics.headlamp-aim | doubt |
        | exhaust-gas-analyser | engine/cylinder-1 | leak-down | 14.8 %  | 14.8 % ± 0.3 %  | engine.leak-down | doubt |
        | beam-setter          | engine/cylinder-1 | leak-down | 14.95 % | 14.95 % ± 0.1 % | engine.leak-down | doubt |
        | co-meter             | room/run          | peak      | 98 ppm  | 98 ppm ± 5 ppm  | air.measured-run | doubt |

    Scenario: the table gives the uncertainty of a coil's temperature
      # 6.60 Ω ÷ (1 + 0.00393 × 30 K) = 5.904 Ω; 5 K of 50 °C is 0.104 Ω of it, with 0.045 Ω of the reading 0.113 Ω
      Given ignition/cylinder-2/coil measured primary-resistance 6.60 Ω ± 0.05 Ω
      And a brake-fluid-tester is taken from here on
      And ignition/cylinder-2/coil measured coil-temperature 50 °C
      Then electrics.coil-primary is doubt at ignition/cylinder-2/coil
      And it says "5.904 Ω ± 0.12 Ω"

    Scenario Outline: the table gives the uncertainty of one of three readings
      Given front-brake/control measured braking-force 800 N ± 4 N
      And rear-brake/control measured braking-force 640 N ± 4 N
      And machine measured mass-with-rider 260 kg ± 0.2 kg
      And a <instrument> is taken from here on
      And <place> measured <what> <reading>
      Then brakes.efficiency-better is met
      And it says "<says>"

      # 800 N of the weight of 260 kg, 2549.7 N (standard gravity 9.80665 m/s²): 31.38 %; 3 % of it 0.94 %, with the mass 0.95 %;
      # 4 N and 1 kg: 0.16 % and 0.12 %, together 0.2 %
      Examples: force and mass
        | instrument     | place               | what            | reading | says             |
        | brake-roller   | front-brake/control | braking-force   | 800 N   | 31.38 % ± 0.95 % |
        | spring-balance | front-brake/control | braking-force   | 800 N   | 31.38 % ± 0.95 % |
        | scale          | machine             | mass-with-rider | 260 kg  | 31.38 % ± 0.2 %  |

# Load index 54 is 212 kg and 61 is 257 kg; L 120, S 180, U 200, H 210, V 240 km/h (UN R75, read in copies that agree).
# 74 mph = 119.1 km/h and 75 mph = 120.7 km/h. 468 lb = 212.3 kg. 30 psi less and more ten per cent (common practice) is 27 to 33 psi.
# Gas law at fixed volume, gauge plus 14.696 psi: 30 psi at 20 °C is (30 + 14.696) x 273.15 / 293.15 - 14.696 = 26.95 psi at 0 °C.
Feature: Speed, load and pressure of a tyre

  @tyres.speed-symbol
  Rule: Every tyre is made for the machine's top speed
    Scenario: fast enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the top speed is 120 km/h
      And front-wheel/tyre seen service-description 54H
      And rear-wheel/tyre seen service-description 54H
      Then tyres.speed-symbol is met
      And it does not lapse by itself

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the top speed is 120 km/h
      And front-wheel/tyre seen service-description 54H
      And there was the defect "not as it should be"
      And rear-wheel/tyre seen service-description 54H
      And tom wrote that front-wheel/tyre seen service-description 54H
      Then tyres.speed-symbol is fault

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the top speed is 120 km/h
      And front-wheel/tyre told service-description 54H
      And rear-wheel/tyre told service-description 54H
      Then tyres.speed-symbol is missing

    Scenario Outline: on both sides of the top speed
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the top speed is <speed>
      And front-wheel/tyre seen service-description <marking>
      Then tyres.speed-symbol is <state> at front-wheel/tyre
      Examples:
        | marking | speed    | state |
        | 65S     | 179 km/h | met   |
        | 65S     | 180 km/h | met   |
        | 65S     | 181 km/h | fault |
        | 54H     | 205 km/h | met   |
        | 54U     | 205 km/h | fault |
        | 47L     | 74 mph   | met   |
        | 47L     | 75 mph   | fault |

    Scenario Outline: no marking that can be read
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description <marking>
      Then tyres.speed-symbol is missing at front-wheel/tyre
      Examples:
        | marking   |
        | none      |
        | illegible |
        | 65        |
        | 65Z       |
        | 151S      |

    Scenario: nobody read it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then tyres.speed-symbol is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description 65S
      And front-wheel/tyre was replaced
      Then tyres.speed-symbol is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the top speed is 179 km/h
      And front-wheel/tyre seen service-description 65S
      And front-wheel was <work>
      Then tyres.speed-symbol is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: a tyre for too low a speed is replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for tyres.speed-symbol
      And front-wheel/tyre seen service-description 3.25-18 65B
      Then tyres.speed-symbol is fault
      And for road-test front-wheel/tyre is to be replaced first

  @tyres.load-index
  Rule: Every tyre carries the load on its wheel
    Scenario: enough at both wheels
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description 54H
      And front-wheel measured wheel-load 160 kg ± 2 kg
      And rear-wheel/tyre seen service-description 61V
      And rear-wheel measured wheel-load 240 kg ± 2 kg
      Then tyres.load-index is met
      And it does not lapse by itself

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description 54H
      And there was the defect "not as it should be"
      And front-wheel measured wheel-load 160 kg ± 2 kg
      And rear-wheel/tyre seen service-description 61V
      And rear-wheel measured wheel-load 240 kg ± 2 kg
      And tom wrote that front-wheel/tyre seen service-description 54H
      Then tyres.load-index is fault

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre told service-description 54H
      And front-wheel measured wheel-load 160 kg ± 2 kg
      And rear-wheel/tyre told service-description 61V
      And rear-wheel measured wheel-load 240 kg ± 2 kg
      Then tyres.load-index is missing

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description 54H
      And front-wheel tried wheel-load 160 kg
      And rear-wheel/tyre seen service-description 61V
      And rear-wheel tried wheel-load 240 kg
      Then tyres.load-index is missing

    Scenario Outline: on both sides of the load it carries
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description <marking>
      And front-wheel measured wheel-load <load>
      Then tyres.load-index is <state> at front-wheel/tyre
      Examples:
        | marking | load          | state |
        | 54H     | 209 kg ± 2 kg | met   |
        | 54H     | 210 kg ± 2 kg | doubt |
        | 54H     | 212 kg ± 2 kg | doubt |
        | 54H     | 213 kg ± 2 kg | fault |
        | 61V     | 254 kg ± 2 kg | met   |
        | 61V     | 257 kg ± 2 kg | doubt |
        | 61V     | 258 kg ± 2 kg | fault |
        | 54H     | 450 lb ± 5 lb | met   |
        | 54H     | 468 lb ± 5 lb | fault |

    Scenario Outline: work that changes the weight
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description 54H
      And front-wheel measured wheel-load 160 kg ± 2 kg
      And <point> was <work>
      Then tyres.load-index is stale at front-wheel/tyre
      Examples:
        | point                  | work     |
        | engine/crankcase       | replaced |
        | fuel/tank              | replaced |
        | front-fork             | replaced |
        | frame/lugs             | replaced |
        | frame/sidecar-fittings | removed  |
        | frame/sidecar-fittings | refitted |
        | frame/sidecar-fittings | replaced |

    Scenario Outline: work that leaves it as it is
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description 54H
      And front-wheel measured wheel-load 160 kg ± 2 kg
      And <point> was <work>
      Then tyres.load-index is met at front-wheel/tyre

      Examples:
        | point                  | work     |
        | engine/crankcase/seals | replaced |
        | fuel/tank/cap          | replaced |
        | front-fork/oil         | replaced |
        | front-fork/spring      | replaced |

    Scenario Outline: no marking that can be read
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description <marking>
      And front-wheel measured wheel-load 160 kg ± 2 kg
      Then tyres.load-index is missing at front-wheel/tyre
      And it says "gives no load index and speed symbol"
      Examples:
        | marking   |
        | none      |
        | illegible |
        | H         |
        | 151S      |

    Scenario: nobody weighed it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description 65S
      And rear-wheel/tyre seen service-description 65S
      Then tyres.load-index is missing

    Scenario: nobody read the tyre
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel measured wheel-load 160 kg ± 2 kg
      Then tyres.load-index is missing at front-wheel/tyre
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: another tyre fitted since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description 65S
      And front-wheel measured wheel-load 160 kg ± 2 kg
      And front-wheel/tyre was replaced
      Then tyres.load-index is stale at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre seen service-description 54H
      And front-wheel measured wheel-load 209 kg ± 2 kg
      And front-wheel was <work>
      Then tyres.load-index is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: a tyre for too small a load is replaced
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for tyres.load-index
      And front-wheel/tyre seen service-description 3.25-18 20S
      And front-wheel measured wheel-load 112 kg ± 1 kg
      Then tyres.load-index is fault
      And for road-test front-wheel/tyre is to be replaced first

  @tyres.pressure
  Rule: Every tyre is at the maker's pressure today
    Scenario: at the figure on both wheels
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And rear-wheel/tyre measured pressure 30 psi ± 1.5 psi
      Then tyres.pressure is met

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre tried pressure 30 psi
      And rear-wheel/tyre tried pressure 30 psi
      Then tyres.pressure is missing

    Scenario Outline: on both sides of the window
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure <pressure>
      Then tyres.pressure is <state> at front-wheel/tyre
      Examples:
        | pressure           | state |
        | 26.9 psi ± 1.5 psi | fault |
        | 27 psi ± 1.5 psi   | doubt |
        | 28.5 psi ± 1.5 psi | doubt |
        | 28.6 psi ± 1.5 psi | met   |
        | 31.4 psi ± 1.5 psi | met   |
        | 31.5 psi ± 1.5 psi | doubt |
        | 33 psi ± 1.5 psi   | doubt |
        | 33.1 psi ± 1.5 psi | fault |

    Scenario: a good reading alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 26.9 psi ± 1.5 psi
      And tom wrote that front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      Then tyres.pressure is fault

    Scenario: each wheel has its own figure
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 24 psi at front-wheel/tyre
      And the maker says tyres.pressure is 36 psi at rear-wheel/tyre
      And front-wheel/tyre measured pressure 24 psi ± 1.5 psi
      And rear-wheel/tyre measured pressure 24 psi ± 1.5 psi
      Then tyres.pressure is met at front-wheel/tyre
      And tyres.pressure is fault at rear-wheel/tyre

    Scenario: no figure of the maker
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And rear-wheel/tyre measured pressure 30 psi ± 1.5 psi
      Then tyres.pressure is missing

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      Then tyres.pressure is missing
      And it holds road-test, hand-over and no other gate
      And it is safety-critical

    Scenario: measured yesterday
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi 1 day ago
      Then tyres.pressure is stale at front-wheel/tyre

    Scenario Outline: work since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And <point> was <work>
      Then tyres.pressure is stale at front-wheel/tyre
      Examples:
        | point                  | work      |
        | front-wheel/tyre       | inflated  |
        | front-wheel/tyre       | replaced  |
        | front-wheel/tyre/valve | replaced  |
        | front-wheel/tube       | replaced  |
        | front-wheel/tyre/valve | tightened |
        | front-wheel/tyre/valve | cleaned   |

    Scenario: soft, inflated and measured again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 20 psi ± 1.5 psi
      And front-wheel/tyre was inflated
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      Then tyres.pressure is met at front-wheel/tyre

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 28.6 psi ± 1.5 psi
      And front-wheel was <work>
      Then tyres.pressure is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

  @tyres.pressure-outside
  Rule: The pressure is right at the temperature outside
    Scenario: as warm outside as inside
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And rear-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature 20 °C ± 1 °C
      Then tyres.pressure-outside is met

    Scenario: reading it again does not end a defect
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And there was the defect "not as it should be"
      And rear-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature 20 °C ± 1 °C
      And tom wrote that front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      Then tyres.pressure-outside is fault

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre tried pressure 30 psi
      And rear-wheel/tyre tried pressure 30 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature 20 °C ± 1 °C
      Then tyres.pressure-outside is missing

    Scenario Outline: set at 20 °C in the workshop
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure <pressure>
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature <outside>
      Then tyres.pressure-outside is <state> at front-wheel/tyre
      Examples:
        | pressure         | outside      | state |
        | 30 psi ± 1.5 psi | 10 °C ± 1 °C | doubt |
        | 30 psi ± 1.5 psi | 12 °C ± 1 °C | met   |
        | 30 psi ± 1.5 psi | 0 °C ± 1 °C  | fault |
        | 32 psi ± 1.5 psi | 0 °C ± 1 °C  | met   |
        | 34 psi ± 1.5 psi | 0 °C ± 1 °C  | met   |
        | 35 psi ± 1.5 psi | 0 °C ± 1 °C  | doubt |
        | 36 psi ± 1.5 psi | 0 °C ± 1 °C  | doubt |
        | 37 psi ± 1.5 psi | 0 °C ± 1 °C  | fault |
        | 31 psi ± 1.5 psi | 35 °C ± 1 °C | fault |

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And workshop tried air-temperature 20 °C
      And outdoors measured air-temperature 10 °C ± 1 °C
      Then tyres.pressure-outside is missing

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors tried air-temperature 10 °C
      Then tyres.pressure-outside is missing

    Scenario: found 13 months ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi 13 months ago
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature 10 °C ± 1 °C
      Then tyres.pressure-outside is stale

    Scenario: right inside, soft on a freezing road
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 29 psi ± 1.5 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature -5 °C ± 1 °C
      Then tyres.pressure is met at front-wheel/tyre
      And tyres.pressure-outside is fault at front-wheel/tyre

    Scenario: a temperature no air has
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature 200 °C ± 1 °C
      Then tyres.pressure-outside is doubt at front-wheel/tyre
      And it says "air temperature 200 °C is not possible"
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: nobody read the temperature outside
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And rear-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      Then tyres.pressure-outside is missing

    Scenario: the temperature of yesterday
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature 20 °C ± 1 °C 1 day ago
      Then tyres.pressure-outside is stale at front-wheel/tyre

    Scenario Outline: the temperature outside holds two hours, the pressure and the workshop's the day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi 5 hours ago
      And workshop measured air-temperature 20 °C ± 1 °C 5 hours ago
      And outdoors measured air-temperature 20 °C ± 1 °C <ago> minutes ago
      Then tyres.pressure-outside is <state> at front-wheel/tyre
      Examples:
        | ago | state |
        | 119 | met   |
        | 120 | stale |

    Scenario: the workshop has warmed since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And workshop measured air-temperature 10 °C ± 1 °C 4 hours ago
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature 20 °C ± 1 °C
      Then tyres.pressure-outside is met at front-wheel/tyre

    Scenario: inflated since
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature 20 °C ± 1 °C
      And front-wheel/tyre was inflated
      Then tyres.pressure-outside is stale at front-wheel/tyre

    Scenario Outline: the pressure is read again, and the air is as warm as before
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature 20 °C ± 1 °C
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And <point> was <work>
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      Then tyres.pressure-outside is met at front-wheel/tyre
      Examples:
        | point                  | work     |
        | front-wheel/tyre       | inflated |
        | front-wheel/tyre/valve | replaced |
        | front-wheel/tube       | replaced |

    Scenario Outline: the wheel out and in again leaves it standing
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature 12 °C ± 1 °C
      And front-wheel was <work>
      Then tyres.pressure-outside is met at front-wheel/tyre
      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the maker says tyres.pressure is 30 psi
      And front-wheel/tyre measured pressure 30 psi ± 1.5 psi
      And workshop measured air-temperature 20 °C ± 1 °C
      And outdoors measured air-temperature 12 °C ± 1 °C
      And <point> was <work>
      Then tyres.pressure-outside is stale at front-wheel/tyre
      Examples:
        | point                  | work      |
        | front-wheel/tyre/valve | replaced  |
        | front-wheel/tube       | replaced  |
        | front-wheel/tyre/valve | tightened |
        | front-wheel/tyre/valve | cleaned   |

    Scenario: a tyre that is right in the warm workshop is inflated for the cold outside
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And a machine ready for road-test
      And nothing is written for tyres.pressure-outside
      And front-wheel/tyre measured pressure 26 psi ± 0.5 psi
      And workshop measured air-temperature 30 °C ± 1 °C
      And outdoors measured air-temperature 1 °C ± 1 °C
      Then tyres.pressure is met at front-wheel/tyre
      And tyres.pressure-outside is fault
      And for road-test front-wheel/tyre is to be inflated first

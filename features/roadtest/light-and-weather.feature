Feature: Light and weather
  What the day must bring before a machine that nobody has ridden for years goes out.

  @roadtest.daylight
  Rule: There is daylight for the whole ride

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen daylight whole-ride
      Then roadtest.daylight is met at ride

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen daylight <found>
      Then roadtest.daylight is fault at ride

      Examples:
        | found           |
        | dusk-on-the-way |
        | dark            |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.daylight is missing at ride
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride told daylight whole-ride
      Then roadtest.daylight is missing at ride

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen daylight whole-ride <ago> days ago
      Then roadtest.daylight is <state> at ride

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario Outline: two hours, for the day changes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ride seen daylight whole-ride <ago> minutes ago
      Then roadtest.daylight is <state> at ride

      Examples:
        | ago | state |
        | 119 | met   |
        | 120 | stale |

  @roadtest.air-temperature
  Rule: The air is above freezing

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature <air>
      Then roadtest.air-temperature is <state>

      # above 0 °C: common practice; road services treat at or below 0 °C forecast at the surface
      Examples:
        | air           | state |
        | -0.1 °C ± 1 K | fault |
        | 0 °C ± 1 K    | fault |
        | 0.1 °C ± 1 K  | doubt |
        | 1 °C ± 1 K    | doubt |
        | 1.1 °C ± 1 K  | met   |
        | 32 °F ± 1 K   | fault |
        | 10 °C ± 1 K   | met   |

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors tried air-temperature 1.1 °C
      Then roadtest.air-temperature is missing

    Scenario Outline: a note asks for care when it is cold
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature <air>
      Then roadtest.air-temperature is met
      And it notes "the air is not above 4 °C: look out for ice"

      # at or below 4 °C: common practice; the ice warnings of vehicles sound at 3 to 4 °C
      Examples:
        | air        |
        | 2 °C ± 1 K |
        | 4 °C ± 1 K |

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.air-temperature is missing
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors told air-temperature 8 °C
      Then roadtest.air-temperature is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 10 °C ± 1 K <ago> days ago
      Then roadtest.air-temperature is <state>

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario Outline: two hours, for the day changes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 10 °C ± 1 K <ago> minutes ago
      Then roadtest.air-temperature is <state>

      Examples:
        | ago | state |
        | 119 | met   |
        | 120 | stale |

  @roadtest.ice-risk
  Rule: No ice can lie on the road

    Scenario: nothing to freeze
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 1.5 °C ± 1 K
      And outdoors seen road-surface dry
      And outdoors seen weather fair
      And outdoors seen frost none
      Then roadtest.ice-risk is met
      And it says "nothing to freeze"

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors tried air-temperature 1.5 °C
      And outdoors seen road-surface dry
      And outdoors seen weather fair
      And outdoors seen frost none
      Then roadtest.ice-risk is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 1.5 °C ± 1 K
      And outdoors told road-surface dry
      And outdoors seen weather fair
      And outdoors seen frost none
      Then roadtest.ice-risk is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 1.5 °C ± 1 K
      And outdoors seen road-surface dry
      And outdoors told weather fair
      And outdoors seen frost none
      Then roadtest.ice-risk is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 1.5 °C ± 1 K
      And outdoors seen road-surface dry
      And outdoors seen weather fair
      And outdoors told frost none
      Then roadtest.ice-risk is missing

    Scenario Outline: on both sides of the limit where there is moisture or was frost
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature <air>
      And outdoors seen road-surface <road>
      And outdoors seen weather <weather>
      And outdoors seen frost <frost>
      Then roadtest.ice-risk is <state>

      # above 3 °C when damp, misty or after frost: common practice; a road is often 3 to 4 °C colder than the air
      Examples:
        | road | weather | frost        | air          | state |
        | damp | fair    | none         | 2.9 °C ± 1 K | fault |
        | damp | fair    | none         | 3 °C ± 1 K   | fault |
        | damp | fair    | none         | 4 °C ± 1 K   | doubt |
        | damp | fair    | none         | 4.1 °C ± 1 K | met   |
        | dry  | mist    | none         | 3 °C ± 1 K   | fault |
        | dry  | mist    | none         | 5 °C ± 1 K   | met   |
        | dry  | fair    | in-the-night | 3 °C ± 1 K   | fault |
        | dry  | fair    | in-the-night | 5 °C ± 1 K   | met   |

    Scenario Outline: ice, snow and frost are a fault at any temperature
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 10 °C ± 1 K
      And outdoors seen road-surface <road>
      And outdoors seen weather <weather>
      And outdoors seen frost <frost>
      Then roadtest.ice-risk is fault

      Examples:
        | road     | weather | frost |
        | icy      | fair    | none  |
        | wet      | fair    | none  |
        | slippery | fair    | none  |
        | dry      | snow    | none  |
        | dry      | rain    | none  |
        | dry      | fog     | none  |
        | dry      | thunder | none  |
        | dry      | fair    | lying |

    Scenario: nobody looked at the road
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 10 °C ± 1 K
      And outdoors seen weather fair
      And outdoors seen frost none
      Then roadtest.ice-risk is missing
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: nobody looked for frost
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 10 °C ± 1 K
      And outdoors seen weather fair
      And outdoors seen road-surface dry
      Then roadtest.ice-risk is missing

    Scenario: nobody looked at the sky
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 10 °C ± 1 K
      And outdoors seen frost none
      And outdoors seen road-surface dry
      Then roadtest.ice-risk is missing

    Scenario: nobody measured
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen road-surface dry
      And outdoors seen weather fair
      And outdoors seen frost none
      Then roadtest.ice-risk is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 10 °C ± 1 K <ago> days ago
      And outdoors seen road-surface dry <ago> days ago
      And outdoors seen weather fair <ago> days ago
      And outdoors seen frost none <ago> days ago
      Then roadtest.ice-risk is <state>

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario Outline: each of them for two hours
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 10 °C ± 1 K <air> minutes ago
      And outdoors seen road-surface dry <road> minutes ago
      And outdoors seen weather fair <sky> minutes ago
      And outdoors seen frost none <frost> minutes ago
      Then roadtest.ice-risk is <state>

      Examples:
        | air | road | sky | frost | state |
        | 119 | 119  | 119 | 119   | met   |
        | 120 | 119  | 119 | 119   | stale |
        | 119 | 120  | 119 | 119   | stale |
        | 119 | 119  | 120 | 119   | stale |
        | 119 | 119  | 119 | 120   | stale |

  @roadtest.road-dry
  Rule: The road is free of water, ice, mud and leaves

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen road-surface <found>
      Then roadtest.road-dry is met at outdoors

      Examples:
        | found |
        | dry   |
        | damp  |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen road-surface <found>
      Then roadtest.road-dry is fault at outdoors

      Examples:
        | found    |
        | wet      |
        | icy      |
        | slippery |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.road-dry is missing at outdoors
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors told road-surface dry
      Then roadtest.road-dry is missing at outdoors

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen road-surface dry <ago> days ago
      Then roadtest.road-dry is <state> at outdoors

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario Outline: two hours, for the day changes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen road-surface dry <ago> minutes ago
      Then roadtest.road-dry is <state>

      Examples:
        | ago | state |
        | 119 | met   |
        | 120 | stale |

    Scenario: a damp road asks for care
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen road-surface damp
      Then roadtest.road-dry is met
      And it notes "no hard stop"

  @roadtest.weather
  Rule: It is free of rain, fog, snow and thunder

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen weather <found>
      Then roadtest.weather is met at outdoors

      Examples:
        | found |
        | fair  |
        | mist  |

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen weather <found>
      Then roadtest.weather is fault at outdoors

      Examples:
        | found   |
        | rain    |
        | fog     |
        | snow    |
        | thunder |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.weather is missing at outdoors
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors told weather fair
      Then roadtest.weather is missing at outdoors

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen weather fair <ago> days ago
      Then roadtest.weather is <state> at outdoors

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario Outline: two hours, for the day changes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen weather fair <ago> minutes ago
      Then roadtest.weather is <state>

      Examples:
        | ago | state |
        | 119 | met   |
        | 120 | stale |

  @roadtest.wind
  Rule: The gusts are weak enough

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen gusts <gusts>
      Then roadtest.wind is <state>

      # 25 mph (40.2 km/h): common practice; above it the wind is called strong
      Examples:
        | gusts   | state |
        | 10 mph  | met   |
        | 25 mph  | met   |
        | 26 mph  | fault |
        | 40 km/h | met   |
        | 41 km/h | fault |

    Scenario Outline: with an instrument of one's own
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured gusts <gusts>
      Then roadtest.wind is <state>

      Examples:
        | gusts          | state |
        | 20 mph ± 2 mph | met   |
        | 23 mph ± 2 mph | doubt |
        | 26 mph ± 2 mph | fault |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.wind is missing
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors told gusts 10 mph
      Then roadtest.wind is missing

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen gusts 10 mph <ago> days ago
      Then roadtest.wind is <state>

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario Outline: two hours, for the day changes
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors seen gusts 10 mph <ago> minutes ago
      Then roadtest.wind is <state>

      Examples:
        | ago | state |
        | 119 | met   |
        | 120 | stale |

  @roadtest.cold-rider
  Rule: Hands stay warm enough to brake

    Scenario Outline: on both sides of the limit
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature <air>
      And outdoors seen gusts 10 mph
      And ride seen ride-speed 50 mph
      Then roadtest.cold-rider is <state>

      # above -10 °C felt: common practice; formula of 2001, 60 mph is 96.6 km/h: 13.12 + 0.6215 T - 23.62 + 0.8238 T = 1.4453 T - 10.50,
      # so 0.3 °C feels like -10.07 °C, 0.4 °C like -9.92 °C, 1.3 °C like -8.62 °C and 1.4 °C like -8.48 °C, each within 1.45 K
      Examples:
        | air          | state |
        | 0.3 °C ± 1 K | fault |
        | 0.4 °C ± 1 K | doubt |
        | 1.3 °C ± 1 K | doubt |
        | 1.4 °C ± 1 K | met   |
        | 10 °C ± 1 K  | met   |

    Scenario: found 13 months ago
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 0.3 °C ± 1 K
      And outdoors seen gusts 10 mph
      And ride seen ride-speed 50 mph 13 months ago
      Then roadtest.cold-rider is stale

    Scenario: trying alone is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors tried air-temperature 1.4 °C
      And outdoors seen gusts 10 mph
      And ride seen ride-speed 50 mph
      Then roadtest.cold-rider is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 1.4 °C ± 1 K
      And outdoors told gusts 10 mph
      And ride seen ride-speed 50 mph
      Then roadtest.cold-rider is missing

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 1.4 °C ± 1 K
      And outdoors seen gusts 10 mph
      And ride told ride-speed 50 mph
      Then roadtest.cold-rider is missing

    Scenario Outline: slower is warmer
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 0.3 °C ± 0.2 K
      And outdoors seen gusts 10 mph
      And ride seen ride-speed <speed>
      Then roadtest.cold-rider is <state>

      # 40 mph is 64.4 km/h: 13.12 + 0.19 - 11.37 x 1.9472 + 0.119 x 1.9472 = -8.60 °C
      Examples:
        | speed  | state |
        | 50 mph | fault |
        | 30 mph | met   |

    Scenario: in warm air there is no wind chill
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 10.1 °C ± 1 K
      And outdoors seen gusts 10 mph
      And ride seen ride-speed 50 mph
      Then roadtest.cold-rider is met
      And it says "too warm for wind chill"

    Scenario Outline: something is not known
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And <known>
      And <also>
      Then roadtest.cold-rider is missing

      Examples:
        | known                                        | also                        |
        | outdoors measured air-temperature 8 °C ± 1 K | outdoors seen gusts 10 mph  |
        | outdoors measured air-temperature 8 °C ± 1 K | ride seen ride-speed 50 mph |
        | outdoors seen gusts 10 mph                   | ride seen ride-speed 50 mph |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then roadtest.cold-rider is missing
      And it holds road-test and no other gate
      And it is safety-critical

    Scenario Outline: how long it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 10 °C ± 1 K <ago> days ago
      And outdoors seen gusts 10 mph <ago> days ago
      And ride seen ride-speed 50 mph <ago> days ago
      Then roadtest.cold-rider is <state>

      Examples:
        | ago | state |
        | 0   | met   |
        | 1   | stale |

    Scenario Outline: air and gusts for two hours, the speed that is planned for the day
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 10 °C ± 1 K <air> minutes ago
      And outdoors seen gusts 10 mph <gusts> minutes ago
      And ride seen ride-speed 50 mph <speed> minutes ago
      Then roadtest.cold-rider is <state>

      Examples:
        | air | gusts | speed | state |
        | 119 | 119   | 600   | met   |
        | 120 | 119   | 119   | stale |
        | 119 | 120   | 119   | stale |

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 0.3 °C ± 1 K
      And outdoors seen gusts 10 mph
      And ride seen ride-speed 50 mph
      Then roadtest.cold-rider is fault at rider

    Scenario: what it is held against
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And outdoors measured air-temperature 1.4 °C ± 1 K
      And outdoors seen gusts 10 mph
      And ride seen ride-speed 50 mph
      Then roadtest.cold-rider is met at rider
      And it says "more than -10 °C (common practice)"

Feature: Not to be ridden
  A machine that leaves as it stands leaves without fuel, without current, and marked.

  @handover.tank-drained
  Rule: The tank is drained and empty

    Scenario: drained and looked into
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank was drained
      And fuel/tank seen tank-content empty
      Then handover.tank-drained is met
      And it does not lapse by itself

    Scenario: what was only told is not enough
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank was drained
      And fuel/tank told tank-content empty
      Then handover.tank-drained is missing

    Scenario: fuel is left in it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank was drained
      And fuel/tank seen tank-content fuel-left
      Then handover.tank-drained is fault

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank was drained
      And fuel/tank seen tank-content fuel-left
      And tom wrote that fuel/tank seen tank-content empty
      Then handover.tank-drained is fault

    Scenario: empty, and nobody drained it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank seen tank-content empty
      Then handover.tank-drained is missing

    Scenario: drained, and nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank was drained
      Then handover.tank-drained is missing

    Scenario: nobody did anything
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.tank-drained is missing
      And it holds non-runner and no other gate
      And it is safety-critical

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank was drained
      And fuel/tank seen tank-content empty
      And <point> was <work>
      Then handover.tank-drained is stale

      Examples:
        | point     | work      |
        | fuel/tank | filled    |
        | fuel/tank | topped-up |
        | fuel/tank | replaced  |
        | fuel/tank | drained   |

    Scenario Outline: a drained tank may come off and go on again
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank was drained
      And fuel/tank seen tank-content empty
      And fuel/tank was <work>
      Then handover.tank-drained is met

      Examples:
        | work     |
        | removed  |
        | refitted |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then handover.tank-drained is not applicable

  @handover.tap-closed
  Rule: The fuel tap is closed

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap seen tap-position <found>
      Then handover.tap-closed is met at fuel/tap

      Examples:
        | found            |
        | closed           |
        | vacuum-tap-holds |

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap seen tap-position closed
      Then handover.tap-closed is met
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap seen tap-position <found>
      Then handover.tap-closed is fault at fuel/tap

      Examples:
        | found   |
        | open    |
        | reserve |
        | leaking |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap seen tap-position open
      And tom wrote that fuel/tap seen tap-position closed
      Then handover.tap-closed is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap seen tap-position open
      Then handover.tap-closed is fault
      And it holds on-show, non-runner and no other gate

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.tap-closed is missing at fuel/tap
      And it holds non-runner and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap told tap-position closed
      Then handover.tap-closed is missing at fuel/tap

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tap seen tap-position closed
      And <point> was <work>
      Then handover.tap-closed is stale at fuel/tap

      Examples:
        | point     | work      |
        | fuel/tank | filled    |
        | fuel/tank | topped-up |
        | fuel/tap  | replaced  |
        | fuel      | opened    |
        | machine   | ridden    |

    Scenario: not asked where there is no tap
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the equipment has fuel-tap none
      Then handover.tap-closed is not applicable

    Scenario: a leaking tap below an emptied tank holds no display
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank was drained
      And fuel/tank seen tank-content empty
      And fuel/tap seen tap-position leaking
      Then the road-test is closed by handover.tap-closed
      And the on-show is not closed by handover.tap-closed

  @handover.cap-sealed
  Rule: The filler cap is sealed

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank/cap seen filler-cap sealed
      Then handover.cap-sealed is met at fuel/tank/cap
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank/cap seen filler-cap <found>
      Then handover.cap-sealed is fault at fuel/tank/cap

      Examples:
        | found    |
        | open     |
        | unsealed |
        | missing  |

    Scenario: a good look alone does not end a fault
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank/cap seen filler-cap open
      And tom wrote that fuel/tank/cap seen filler-cap sealed
      Then handover.cap-sealed is fault

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank/cap seen filler-cap open
      Then handover.cap-sealed is fault
      And it holds first-start, indoor-run, road-test, on-show, hand-over, non-runner and no other gate

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank/cap seen filler-cap unsealed
      Then handover.cap-sealed is fault
      And it holds on-show, non-runner and no other gate

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.cap-sealed is missing at fuel/tank/cap
      And it holds non-runner and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank/cap told filler-cap sealed
      Then handover.cap-sealed is missing at fuel/tank/cap

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank/cap seen filler-cap sealed
      And <point> was <work>
      Then handover.cap-sealed is stale at fuel/tank/cap

      Examples:
        | point         | work      |
        | fuel/tank     | filled    |
        | fuel/tank     | topped-up |
        | fuel/tank     | drained   |
        | fuel/tank/cap | opened    |
        | fuel/tank     | refitted  |
        | machine       | ridden    |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then handover.cap-sealed is not applicable

    Scenario: no cap on an emptied tank holds no display
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And fuel/tank was drained
      And fuel/tank seen tank-content empty
      And fuel/tank/cap seen filler-cap missing
      Then the road-test is closed by handover.cap-sealed
      And the on-show is not closed by handover.cap-sealed

  @handover.battery-off
  Rule: The battery is off and its leads are insulated

    Scenario Outline: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen battery-leads <found>
      Then handover.battery-off is met at electrics/battery

      Examples:
        | found             |
        | off-and-insulated |
        | battery-taken-out |

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen battery-leads off-and-insulated
      Then handover.battery-off is met
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen battery-leads <found>
      Then handover.battery-off is fault at electrics/battery

      Examples:
        | found     |
        | connected |
        | bare      |

    Scenario: a later good look ends it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen battery-leads connected
      And tom wrote that electrics/battery seen battery-leads off-and-insulated
      Then handover.battery-off is met

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen battery-leads connected
      Then handover.battery-off is fault
      And it holds on-show, non-runner and no other gate

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.battery-off is missing at electrics/battery
      And it holds non-runner and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery told battery-leads off-and-insulated
      Then handover.battery-off is missing at electrics/battery

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And electrics/battery seen battery-leads off-and-insulated
      And <point> was <work>
      Then handover.battery-off is stale at electrics/battery

      Examples:
        | point             | work     |
        | electrics/battery | charged  |
        | electrics/battery | refitted |
        | electrics         | opened   |
        | machine           | ridden   |

    Scenario: not asked without a battery
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the battery has 0 volts
      Then handover.battery-off is not applicable

  @handover.plugs-earthed
  Rule: The plug leads are off and earthed

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition seen plug-leads off-and-earthed
      Then handover.plugs-earthed is met at ignition
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition seen plug-leads <found>
      Then handover.plugs-earthed is fault at ignition

      Examples:
        | found        |
        | on-the-plug  |
        | hanging-free |

    Scenario: a later good look ends it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition seen plug-leads on-the-plug
      And tom wrote that ignition seen plug-leads off-and-earthed
      Then handover.plugs-earthed is met

    Scenario: which gates it holds
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition seen plug-leads hanging-free
      Then handover.plugs-earthed is fault
      And it holds first-start, indoor-run, road-test, on-show, non-runner and no other gate

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.plugs-earthed is missing at ignition
      And it holds non-runner and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition told plug-leads off-and-earthed
      Then handover.plugs-earthed is missing at ignition

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And ignition seen plug-leads off-and-earthed
      And <point> was <work>
      Then handover.plugs-earthed is stale at ignition

      Examples:
        | point    | work     |
        | ignition | refitted |
        | machine  | ridden   |

    Scenario: not asked of an electric machine
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And the machine is electric
      Then handover.plugs-earthed is not applicable

  @handover.tag
  Rule: A tag says that it is not to be ridden

    Scenario: in order
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen not-to-be-ridden-tag fitted
      Then handover.tag is met at machine
      And it does not lapse by itself

    Scenario Outline: what is wrong
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen not-to-be-ridden-tag <found>
      Then handover.tag is fault at machine

      Examples:
        | found     |
        | missing   |
        | illegible |

    Scenario: nobody looked
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      Then handover.tag is missing at machine
      And it holds non-runner and no other gate
      And it is safety-critical

    Scenario: somebody says so
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine told not-to-be-ridden-tag fitted
      Then handover.tag is missing at machine

    Scenario Outline: work that undoes it
      Given a motorcycle with one hydraulic disc in front and a rod drum behind
      And machine seen not-to-be-ridden-tag fitted
      And <point> was <work>
      Then handover.tag is stale at machine

      Examples:
        | point   | work   |
        | machine | ridden |

package chock.assess.facts;

import chock.record.Machine;

/** One brake; a machine without a brake at one end has a fact of type NONE there. */
public record BrakeFact(String end, Machine.BrakeType type, Machine.WorkedBy workedBy, int discs, Machine.Lining lining, boolean stopLampSwitch, String point) { }

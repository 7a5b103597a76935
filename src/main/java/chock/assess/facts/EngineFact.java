package chock.assess.facts;

import chock.quantity.Quantity;
import chock.record.Machine;

/** The engine. */
public record EngineFact(Machine.Cycle cycle, Quantity displacement, int cylinders, Machine.Oiling oiling, Machine.Ignition ignition, Machine.Cooling cooling) { }

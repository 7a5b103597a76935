package chock.assess.facts;

import chock.quantity.Quantity;
import chock.record.Machine;
import java.time.LocalDate;

/** The machine as a whole. */
public record MachineFact(Machine.Kind kind, int built, LocalDate firstRegistered, boolean linkedBrakes, int seats, int volts, Machine.Drive drive, String territory, Quantity topSpeed, boolean historyKnown) { }

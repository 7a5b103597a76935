package chock.assess.facts;

import chock.record.Machine;

/** What the machine carries; counts and words as in {@link Machine.Equipment}. */
public record EquipmentFact(Machine.Starter starter, int carburettors, Machine.FuelTap fuelTap, Machine.Clutch clutch,
                            Machine.FrontSpringing frontSpringing, Machine.RearSpringing rearSpringing, boolean lamps,
                            boolean indicators, boolean horn, int mirrors, int stands, boolean speedometer) { }

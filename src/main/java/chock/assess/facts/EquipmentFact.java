package chock.assess.facts;

import chock.record.Machine;

/** What the machine carries; counts and words as in {@link Machine.Equipment}. */
public record EquipmentFact(Machine.Starter starter, int carburettors, Machine.FuelTap fuelTap, Machine.Clutch clutch,
                            Machine.FrontSpringing frontSpringing, Machine.RearSpringing rearSpringing, boolean lamps,
                            boolean indicators, boolean horn, int mirrors, int stands, boolean speedometer) {

    /** Whether the front wheel moves on links or arms. */
    public boolean linksInFront() {
        return frontSpringing.hasLinks();
    }

    /** Whether the rear wheel is held by a fork that turns on a pivot. */
    public boolean pivotBehind() {
        return rearSpringing.hasPivot();
    }
}

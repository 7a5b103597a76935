package chock.record;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Holds the description of a machine against what a machine can be. */
public final class PlausibleDescription {
    private final Plausible plausible;

    public PlausibleDescription(Plausible plausible) {
        this.plausible = plausible;
    }

    /**
     * What is wrong with one field.
     *
     * @param field key of the description, such as {@code top-speed}
     * @param says why it cannot be true, or is rare; words without a full stop
     * @param advice what to look at again, as an imperative without a full stop
     */
    public record Wrong(String field, String says, String advice) { }

    /** What in the description cannot be true; empty when it all can. */
    public List<Wrong> impossible(Machine machine) {
        List<Wrong> wrong = new ArrayList<>();
        fields(machine).forEach((field, value) -> {
            Plausible.Row row = plausible.description().get(field.equals("engine.displacement by cylinder") ? "cylinder-volume" : field);
            if (row != null && !row.canBe().contains(value)) {
                wrong.add(new Wrong(field, "machine." + field + " " + value + " is not possible: it lies " + row.canBe().words(), row.hint()));
            }
        });
        return wrong;
    }

    /** What in the description can be true and is rare. */
    public List<Wrong> rare(Machine machine) {
        List<Wrong> rare = new ArrayList<>();
        fields(machine).forEach((field, value) -> {
            Plausible.Row row = plausible.description().get(field.equals("engine.displacement by cylinder") ? "cylinder-volume" : field);
            if (row != null && row.usual() != null && row.canBe().contains(value) && !row.usual().contains(value)) {
                rare.add(new Wrong(field, "machine." + field + " " + value + ": most are " + row.usual().words(), row.hint()));
            }
        });
        return rare;
    }

    private static Map<String, Quantity> fields(Machine machine) {
        Map<String, Quantity> fields = new LinkedHashMap<>();
        if (machine.topSpeed() != null) {
            fields.put("top-speed", machine.topSpeed());
        }
        Machine.Engine engine = machine.engine();
        if (engine != null && engine.displacement() != null && engine.cycle() != null && engine.cycle() != Machine.Cycle.ELECTRIC) {
            fields.put("engine.displacement", engine.displacement());
            if (engine.cylinders() > 1) {
                fields.put("engine.displacement by cylinder", new Quantity(engine.displacement().value().divide(BigDecimal.valueOf(engine.cylinders()), MathContext.DECIMAL64), engine.displacement().unit()));
            }
        }
        fields.put("seats", count(machine.seats()));
        if (machine.equipment() != null) {
            fields.put("equipment.carburettors", count(machine.equipment().carburettors()));
            fields.put("equipment.mirrors", count(machine.equipment().mirrors()));
            fields.put("equipment.stands", count(machine.equipment().stands()));
        }
        return fields;
    }

    private static Quantity count(int number) {
        return Quantity.of(String.valueOf(number), Unit.TIMES);
    }
}

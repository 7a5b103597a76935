package chock.rehearse;

import chock.quantity.Quantity;
import chock.quantity.UnreadableQuantity;
import chock.record.Deed;
import chock.record.Gate;
import chock.rulebook.Card;
import io.cucumber.java.ParameterType;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/** The words in braces of {@link BenchSteps}: what may stand there, and what it becomes. */
public final class StepWords {
    private static final String AGO = "(?: (\\d+) (minute|hour|day|month|year)s? ago)?";

    @ParameterType("[a-z]+\\.[a-z0-9-]+")
    @Explained(value = "the id of a check, as `chock rules` lists them", example = "brakes.pad-thickness")
    public String check(String id) {
        return id;
    }

    @ParameterType("[a-z]+\\.[a-z0-9-]+")
    @Explained(value = "the id of a limit, as `limits.yaml` has it", example = "brakes.disc-thickness")
    public String limit(String id) {
        return id;
    }

    @ParameterType("met|fault|doubt|stale|missing|not applicable")
    @Explained(value = "a state: met, fault, doubt, stale, missing, or not applicable where the check is not asked of this machine", example = "stale")
    public String state(String id) {
        return id;
    }

    @ParameterType("first-start|indoor-run|road-test|on-show|hand-over|non-runner")
    @Explained(value = "a gate", example = "road-test")
    public Gate gate(String id) {
        return Gate.of(id).orElseThrow();
    }

    @ParameterType("(?:first-start|indoor-run|road-test|on-show|hand-over|non-runner)(?:, (?:first-start|indoor-run|road-test|on-show|hand-over|non-runner))*")
    @Explained(value = "one or more gates, with commas between them", example = "road-test, hand-over")
    public Set<Gate> gates(String ids) {
        Set<Gate> gates = EnumSet.noneOf(Gate.class);
        Arrays.stream(ids.split(", ")).map(this::gate).forEach(gates::add);
        return gates;
    }

    @ParameterType("[a-z]+\\.[a-z0-9-]+(?:, [a-z]+\\.[a-z0-9-]+)*")
    @Explained(value = "the ids of one or more checks, with commas between them", example = "brakes.bedded, handover.ridden")
    public Set<String> checks(String ids) {
        return new TreeSet<>(Arrays.asList(ids.split(", ")));
    }

    @ParameterType("standing|with the engine running|by riding")
    @Explained(value = "standing, with the engine running, or by riding", example = "with the engine running")
    public Card.Needs needs(String words) {
        return switch (words) {
            case "standing" -> Card.Needs.STANDING;
            case "by riding" -> Card.Needs.RIDING;
            default -> Card.Needs.ENGINE_RUNNING;
        };
    }

    @ParameterType("[a-z0-9/-]+")
    @Explained(value = "a place on the machine, from the whole to the part", example = "front-brake/caliper/inner-pad")
    public String place(String place) {
        return place;
    }

    @ParameterType("(?: at ([a-z0-9/-]+))?")
    @Explained(value = "may be left out: ` at ` and a place", example = " at front-brake/caliper")
    public String at(String place) {
        return place;
    }

    @ParameterType("measured|tried|seen|told|assumed")
    @Explained(value = "the kind of evidence: measured, tried, seen, told or assumed", example = "measured")
    public Deed deed(String verb) {
        return Deed.valueOf(verb.toUpperCase(Locale.ROOT));
    }

    @ParameterType("[a-z0-9-]+")
    @Explained(value = "one word of the record, with hyphens: what is measured or seen, a kind of work, a piece of equipment", example = "thickness")
    public String thing(String word) {
        return word;
    }

    @ParameterType("[a-z-]+(?:\\.[a-z-]+)?")
    @Explained(value = "a field of the machine's description, as a record has it below `machine`", example = "front-brake.type")
    public String field(String name) {
        return name;
    }

    @ParameterType(".+?")
    @Explained(value = "what was read or found, as a record writes it: an amount with its uncertainty, an answer, a date, a stamped code", example = "3.1 mm ± 0.1 mm")
    public String reading(String written) {
        return written;
    }

    @ParameterType(".+?")
    @Explained(value = "a number with its unit", example = "120 km/h")
    public Quantity quantity(String written) {
        try {
            return Quantity.parse(written);
        } catch (UnreadableQuantity unreadable) {
            throw new NotUnderstood(unreadable.getMessage());
        }
    }

    @ParameterType("\\d{4}-\\d{2}-\\d{2}")
    @Explained(value = "a day: year, month, day", example = "1974-06-14")
    public LocalDate date(String written) {
        try {
            return LocalDate.parse(written);
        } catch (DateTimeException unreadable) {
            throw new NotUnderstood("'" + written + "' is not in the calendar");
        }
    }

    @ParameterType(AGO)
    @Explained(value = "may be left out: how long before the judgement, in minutes, hours, days, months or years; without it, earlier on the same day", example = " 14 months ago")
    public Ago ago(String count, String unit) {
        return count == null ? Ago.ON_THE_DAY : Ago.of(Integer.parseInt(count), unit);
    }

    @ParameterType("\\d{2}:\\d{2}")
    @Explained(value = "a time of day in the workshop: hours and minutes", example = "22:30")
    public LocalTime time(String written) {
        try {
            return LocalTime.parse(written);
        } catch (DateTimeException unreadable) {
            throw new NotUnderstood("'" + written + "' is no time of day");
        }
    }

    @ParameterType("(?:(ida|tom) wrote that )?")
    @Explained(value = "may be left out: `ida wrote that ` (the inspector) or `tom wrote that ` (the technician); without it, the inspector", example = "tom wrote that ")
    public String writer(String by) {
        return by == null ? Bench.INSPECTOR : by;
    }

    @ParameterType("ida|tom")
    @Explained(value = "`ida` (the inspector) or `tom` (the technician)", example = "tom")
    public String person(String id) {
        return id;
    }

    @ParameterType("(?:one|two|an?|no) [a-z ]+?")
    @Explained(value = "one hydraulic disc, two hydraulic discs, a cable disc, a cable drum, a rod drum, a hydraulic drum, or no brake", example = "a rod drum")
    public String brake(String words) {
        return words;
    }

    @ParameterType("[A-Z]{2}(?:-[A-Z0-9]{1,3})?")
    @Explained(value = "the code of a country or of a part of it (ISO 3166)", example = "US-VA")
    public String territory(String code) {
        return code;
    }

    @ParameterType("at least|at most|is")
    @Explained(value = "at least, at most or is", example = "at least")
    public String sense(String words) {
        return words;
    }
}

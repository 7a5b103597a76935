package chock.rulebook;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/** Reads one limit: of the rule book, of a local code, or of a house. */
final class LimitReader {
    private LimitReader() { }

    /** The number and its side; parts are null after a fault. */
    private record Number(Limit.Sense sense, Quantity value, Quantity upper, boolean passesAtLimit) { }

    /** A limit of the rule book, or null after a fault. */
    static Limit general(Sheet sheet) {
        String id = sheet.text("id");
        String of = sheet.text("of");
        boolean local = sheet.yes("local");
        Limit.Maker maker = sheet.word("maker", Limit.Maker.class);
        Quantity resolution = sheet.quantity("resolution");
        Limit limit = sourced(sheet, id, of, resolution, maker, local, null);
        return limit == null || maker == null || resolution == null ? null : limit;
    }

    /** A limit of a local code, or null after a fault. */
    static Limit local(Sheet sheet, String code) {
        return sourced(sheet, sheet.text("id"), null, null, null, false, code);
    }

    private static Limit sourced(Sheet sheet, String id, String of, Quantity resolution, Limit.Maker maker, boolean local, String territory) {
        Number number = number(sheet);
        LocalDate from = sheet.as("from", text -> text.equals("always") ? Limit.ALWAYS : LocalDate.parse(text));
        LocalDate registeredFrom = sheet.optionalAs("registered-from", LocalDate::parse);
        LocalDate registeredBefore = sheet.optionalAs("registered-before", LocalDate::parse);
        Quantity fasterThan = sheet.optionalAs("faster-than", Quantity::parse);
        Quantity largerThan = sheet.optionalAs("larger-than", Quantity::parse);
        Source source = source(sheet);
        LocalDate reviewed = sheet.date("reviewed");
        sheet.done();
        if (id == null || number.sense == null || number.value == null || from == null || source == null) {
            return null;
        }
        step(sheet, number, resolution);
        if ((number.sense == Limit.Sense.WITHIN || number.sense == Limit.Sense.MAKER_ONLY) && maker != Limit.Maker.NEEDED) {
            sheet.fault("maker", number.sense.key() + " rests on the maker's figure", "Write maker: needed.");
        }
        return new Limit(id, of, number.sense, number.value, number.upper, number.passesAtLimit, resolution, from, registeredFrom, registeredBefore,
                fasterThan, largerThan, source, reviewed, maker == null ? Limit.Maker.NONE : maker, local, territory, sheet.file(), sheet.line());
    }

    /**
     * A limit of a house: one that tightens a limit of the rule book, or one for a check of its own. Null after a fault.
     *
     * @param house what the house calls its rules
     * @param base the limit it tightens, or null when it is the house's own
     */
    static Limit ofHouse(Sheet sheet, String id, String house, Limit base) {
        String of = base == null ? sheet.text("of") : base.of();
        Quantity resolution = base == null ? sheet.quantity("resolution") : base.resolution();
        Number number = number(sheet);
        String reason = sheet.text("reason");
        String author = sheet.text("author");
        LocalDate date = sheet.date("date");
        LocalDate later = sheet.optionalAs("from", LocalDate::parse);
        LocalDate from = later == null ? date : later;
        sheet.done();
        if (number.sense == null || number.value == null || reason == null || author == null || date == null || from == null) {
            return null;
        }
        if (base == null) {
            step(sheet, number, resolution);
            if (number.sense == Limit.Sense.WITHIN || number.sense == Limit.Sense.MAKER_ONLY) {
                sheet.fault("sense", "a limit of the house's own rests on no maker's figure", "Write at-least, at-most or between.");
                return null;
            }
        }
        Source source = new Source(Source.Kind.HOUSE, house, author + " " + date + ": " + reason, null);
        return new Limit(id, of, number.sense, number.value, number.upper, number.passesAtLimit, resolution, from, null, null, null, null, source, date, Limit.Maker.NONE, false, null,
                sheet.file(), sheet.line());
    }

    private static void step(Sheet sheet, Number number, Quantity resolution) {
        if (resolution != null && number.sense != Limit.Sense.WITHIN && resolution.unit().dimension() != number.value.unit().dimension()) {
            sheet.fault("resolution", resolution + " is of another kind than " + number.value, "Give the step in a unit of " + number.value.unit().dimension().words() + ".");
        }
    }

    private static Number number(Sheet sheet) {
        Limit.Sense sense = sheet.word("sense", Limit.Sense.class);
        Quantity value = null;
        Quantity upper = null;
        if (sense == Limit.Sense.BETWEEN) {
            List<String> ends = sheet.texts("value");
            if (ends.size() == 2) {
                try {
                    value = Quantity.parse(ends.get(0));
                    upper = Quantity.parse(ends.get(1));
                } catch (IllegalArgumentException e) {
                    sheet.fault("value", e.getMessage(), "");
                }
            } else {
                sheet.fault("value", "between needs two values", "Write value: [2 mm, 3 mm].");
            }
        } else if (sense == Limit.Sense.MAKER_ONLY) {
            Unit unit = sheet.as("unit", text -> Unit.spelled(text).orElseThrow(() -> new IllegalArgumentException("'" + text + "' is not a unit this program knows")));
            value = unit == null ? null : Quantity.of("0", unit);
        } else {
            value = sheet.quantity("value");
        }
        String atLimit = sheet.text("at-limit");
        if (atLimit != null && !Set.of("passes", "fails").contains(atLimit)) {
            sheet.fault("at-limit", "'" + atLimit + "'", "Write passes or fails: codes differ on whether the limit itself is allowed.");
        }
        return new Number(sense, value, upper, "passes".equals(atLimit));
    }

    /** The source under its key, or null after a fault. */
    static Source source(Sheet sheet) {
        Sheet s = sheet.sheet("source");
        if (s == null) {
            return null;
        }
        Source.Kind kind = s.word("kind", Source.Kind.class);
        if (kind == Source.Kind.PRACTICE) {
            s.done();
            return new Source(kind, null, null, Source.Known.PRACTICE);
        }
        String document = s.text("document");
        String section = s.optional("section");
        Source.Known known = s.as("known", text -> Sheet.wordOf(text, Source.Known.OF_A_RULE_BOOK));
        s.done();
        return kind == null || document == null || known == null ? null : new Source(kind, document, section, known);
    }
}

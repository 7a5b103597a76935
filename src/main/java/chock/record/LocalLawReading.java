package chock.record;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads the law of the place where the machine will be ridden, as the record has it. */
final class LocalLawReading {
    private static final String AT = "local-law";

    private final Reading read;
    private final Set<String> people;
    private final Set<String> seen = new HashSet<>();

    LocalLawReading(Reading read, Set<String> people) {
        this.read = read;
        this.people = people;
    }

    /** @param territory where the machine will be ridden, or null when that is not known */
    LocalLaw law(Raw.LocalLaw raw, String territory) {
        if (raw == null) {
            return LocalLaw.NONE;
        }
        LawWords words = read.words.law();
        if (territory != null && words.unions().contains(territory)) {
            read.faults.add(AT, territory + " leaves law to its parts", "Write under territory in which of them it will be ridden, and here the law of that part");
        }
        // A later rule book may bring the law of that place: what is stored stays readable then, and the rule book's own law settles.
        if (territory != null && read.isNew(AT)) {
            words.lawOf(territory).ifPresent(code -> read.faults.add(AT, "the law of " + territory + " is in this rule book" + (code.equals(territory) ? "" : ", as " + code),
                    "Leave local-law out; 'chock rules ID' shows what that law sets for a check"));
        }
        List<LocalLaw.Line> limits = new ArrayList<>();
        for (int i = 0; raw.limits() != null && i < raw.limits().size(); i++) {
            if (raw.limits().get(i) != null) {
                limits.add(limit(AT + ".limits[" + i + "]", raw.limits().get(i)));
            }
        }
        List<LocalLaw.Line> none = new ArrayList<>();
        for (int i = 0; raw.setsNone() != null && i < raw.setsNone().size(); i++) {
            if (raw.setsNone().get(i) != null) {
                none.add(none(AT + ".sets-none[" + i + "]", raw.setsNone().get(i)));
            }
        }
        return new LocalLaw(List.copyOf(limits), List.copyOf(none));
    }

    private LocalLaw.Line limit(String path, Raw.LawLimit raw) {
        String limit = id(path, raw.limit());
        Unit.Dimension kind = limit == null ? null : read.words.limits().get(limit);
        Quantity atLeast = read.amount(path + ".at-least", raw.atLeast(), kind);
        Quantity atMost = read.amount(path + ".at-most", raw.atMost(), kind);
        side(path, limit);
        if (atLeast != null && atMost != null && atLeast.unit().dimension() == atMost.unit().dimension() && atLeast.compareTo(atMost) > 0) {
            read.faults.add(path + ".at-most", "at least " + atLeast + ", but at most " + atMost, "Look at both again in the law");
        }
        if (limit != null && read.isNew(path)) {
            refuse(path + ".at-least", limit, atLeast);
            refuse(path + ".at-most", limit, atMost);
        }
        return new LocalLaw.Line(limit, atLeast, atMost, raw.document(), raw.section(), read.pastDay(path + ".as-of", raw.asOf()), by(path, raw.by()), second(path, raw.by(), raw.secondedBy()));
    }

    private LocalLaw.Line none(String path, Raw.LawNone raw) {
        return new LocalLaw.Line(id(path, raw.limit()), null, null, raw.document(), raw.section(), read.pastDay(path + ".as-of", raw.asOf()), by(path, raw.by()), second(path, raw.by(), raw.secondedBy()));
    }

    private String id(String path, String text) {
        String limit = read.known(path + ".limit", text, "a limit for which local law is asked", read.words.law().sides().keySet());
        if (limit != null && !seen.add(limit)) {
            read.faults.add(path, limit + " stands here twice", "Keep one: the stricter number where two laws set one");
        }
        return limit;
    }

    // A number on the wrong side would settle a limit and say nothing of the side that hurts.
    private void side(String path, String limit) {
        for (String side : limit == null ? List.<String>of() : read.words.law().sides().getOrDefault(limit, List.of())) {
            if (!read.isWritten(path + "." + side)) {
                String what = side.equals("at-least") ? "the lowest" : "the highest";
                read.faults.add(path, side + " is missing for " + limit, "Write " + side + ", " + what + " that law allows, or name the limit under sets-none when it sets no such number");
            }
        }
    }

    private void refuse(String path, String limit, Quantity number) {
        if (number != null) {
            read.words.plausible().refuses(limit, number).ifPresent(why -> read.faults.add(path, why, "Look at the law again: check the unit, the decimal point, and at least against at most"));
        }
    }

    private String by(String path, String by) {
        return read.known(path + ".by", by, "one of the people of this record", people);
    }

    private String second(String path, String by, String text) {
        String second = read.known(path + ".seconded-by", text, "one of the people of this record", people);
        if (second != null && second.equals(by)) {
            read.faults.add(path + ".seconded-by", by + " seconds what " + by + " read", "Let a second person read it, or leave the key out");
        }
        return second;
    }
}

package chock.rehearse;

import chock.quantity.Quantity;
import chock.rulebook.Asked;
import chock.rulebook.Limit;
import chock.rulebook.LocalCode;
import chock.rulebook.RuleBook;
import chock.rulebook.Source;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One small change of a rule book that somebody might make by mistake.
 *
 * @param kind what is changed
 * @param isOfHouse whether it is the house's, or does its work for the cards of a house alone
 * @param subject id of the limit or check, or name of the rule
 * @param what what is changed, with both sides
 * @param where file and line, or what is known of them
 * @param toWrite the scenario that would notice
 * @param concerns which scenarios can notice at all
 * @param made the changed book
 */
record Change(Kind kind, boolean isOfHouse, String subject, String what, String where, String toWrite, Predicate<Scenario> concerns, UnaryOperator<RuleBook> made) {

    /** What is changed. */
    enum Kind {
        /** A number, a sense or a date of a limit. */ LIMIT,
        /** A rule, left out. */ RULE,
        /** A field of a card. */ CARD,
        /** A condition of a rule. */ CONDITION,
        /** A line, a step or a figure of a plan. */ PLAN,
        /** What is believed of a kind of instrument. */ INSTRUMENT;

        /** True when scenarios of any system may notice, and which can is known by what they expect. */
        boolean isOfNoSystem() {
            return this == CARD || this == PLAN || this == INSTRUMENT;
        }
    }

    /** Rules that do nothing unless a house has a card that says when it is asked. */
    private static final String ASKED_WITH = "evidence.asked-with";
    private static final String OF_EVERY_MACHINE = "evidence.asked-of-every-machine";

    /** Every change of every limit, local codes' and the house's included, and every rule left out that has something to do. */
    static List<Change> of(RuleBook book) {
        List<Change> all = new ArrayList<>();
        for (Limit limit : book.allLimits()) {
            LocalCode code = limit.territory() == null ? null : book.codes().get(limit.territory());
            boolean houses = book.tightened().contains(limit);
            boolean follows = houses || book.limits().stream().anyMatch(l -> l.id().equals(limit.id()) && l.from().isBefore(limit.from()));
            ofLimit(all, limit, code == null && !houses ? limit.resolution() : stepOf(book, limit), s -> code == null || code.covers(s.record().territory()),
                    houses ? " in the house" : code == null ? "" : " in " + code.code(), follows);
        }
        // A rule book in which one document says two things of one machine is refused before any scenario could notice.
        all.removeIf(change -> change.what.startsWith("registered") && !change.made.apply(book).saysOneThingADay());
        SortedSet<String> rules = book.ruleNames();
        rules.removeAll(idle(book));
        for (String rule : rules) {
            boolean own = rule.startsWith(Scope.OF_A_HOUSE);
            all.add(new Change(Kind.RULE, own || rule.equals(ASKED_WITH) || rule.equals(OF_EVERY_MACHINE), rule, "rule left out", (own ? book.house().orElseThrow().folder() : "rules") + ", rule \"" + rule + "\"",
                    "a scenario whose finding rests on this rule", s -> true, b -> b.without(rule)));
        }
        return all;
    }

    /** The rules that have nothing to do under this rule book, because only the cards of a house give them something. */
    static List<String> idle(RuleBook book) {
        Set<String> every = book.askedOfEveryMachine().stream().map(Asked::check).collect(Collectors.toSet());
        boolean with = book.cards().keySet().stream().anyMatch(id -> id.startsWith(Scope.OF_A_HOUSE) && !every.contains(id) && !book.ruleNames().contains(id));
        return Stream.of(every.isEmpty() ? OF_EVERY_MACHINE : null, with ? null : ASKED_WITH).filter(Objects::nonNull).toList();
    }

    private static Quantity stepOf(RuleBook book, Limit limit) {
        return book.limits().stream().filter(l -> l.id().equals(limit.id())).findFirst().orElseThrow().resolution();
    }

    private static void ofLimit(List<Change> all, Limit limit, Quantity resolution, Predicate<Scenario> concerns, String of, boolean follows) {
        if (limit.sense() != Limit.Sense.MAKER_ONLY) {
            Quantity step = step(limit, resolution);
            for (Quantity by : List.of(step, step.times(BigDecimal.ONE.negate()))) {
                value(all, limit, limit.value().plus(by), false, concerns, of);
                if (limit.sense() == Limit.Sense.BETWEEN) {
                    value(all, limit, limit.upper().plus(by), true, concerns, of);
                }
            }
        }
        switch (limit.sense()) {
            case AT_LEAST -> sense(all, limit, Limit.Sense.AT_MOST, limit.value(), concerns, of);
            case AT_MOST -> sense(all, limit, Limit.Sense.AT_LEAST, limit.value(), concerns, of);
            case BETWEEN -> {
                sense(all, limit, Limit.Sense.AT_LEAST, limit.value(), concerns, of);
                sense(all, limit, Limit.Sense.AT_MOST, limit.upper(), concerns, of);
            }
            case WITHIN, MAKER_ONLY -> { }
        }
        // A maker's figure itself always passes, so that there is nothing to turn round where only the maker gives one.
        if (limit.sense() != Limit.Sense.WITHIN && limit.sense() != Limit.Sense.MAKER_ONLY) {
            Limit turned = copy(limit, limit.sense(), limit.value(), limit.upper(), !limit.passesAtLimit(), limit.from(), limit.registeredFrom(), limit.registeredBefore());
            all.add(change(limit, turned, "exactly " + ends(limit) + " " + (limit.passesAtLimit() ? "fails instead of passing" : "passes instead of failing"),
                    "a reading of exactly " + ends(limit), concerns, of));
        }
        if (limit.fasterThan() != null) {
            for (Quantity speed : around(limit.fasterThan())) {
                all.add(change(limit, above(limit, speed, limit.largerThan()), "faster than " + limit.fasterThan() + " becomes faster than " + speed,
                        "a machine between " + limit.fasterThan() + " and " + speed + ", one end included", concerns, of));
            }
        }
        if (limit.largerThan() != null) {
            for (Quantity size : around(limit.largerThan())) {
                all.add(change(limit, above(limit, limit.fasterThan(), size), "larger than " + limit.largerThan() + " becomes larger than " + size,
                        "a machine between " + limit.largerThan() + " and " + size + ", one end included", concerns, of));
            }
        }
        for (int days : List.of(1, -1)) {
            dates(all, limit, days, concerns, of, follows);
        }
    }

    private static List<Quantity> around(Quantity amount) {
        return List.of(amount.plus(new Quantity(BigDecimal.ONE, amount.unit())), amount.plus(new Quantity(BigDecimal.ONE.negate(), amount.unit())));
    }

    // A tolerance on the maker's figure is a share, and its resolution is that of the figure: there the last digit printed is the step.
    private static Quantity step(Limit limit, Quantity resolution) {
        if (limit.sense() != Limit.Sense.WITHIN && resolution != null && resolution.unit().dimension() == limit.value().unit().dimension()) {
            return resolution.differenceTo(limit.value().unit());
        }
        return new Quantity(limit.value().value().ulp(), limit.value().unit());
    }

    private static void value(List<Change> all, Limit limit, Quantity value, boolean upper, Predicate<Scenario> concerns, String of) {
        Limit changed = copy(limit, limit.sense(), upper ? limit.value() : value, upper ? value : limit.upper(), limit.passesAtLimit(), limit.from(), limit.registeredFrom(), limit.registeredBefore());
        Quantity now = upper ? limit.upper() : limit.value();
        all.add(change(limit, changed, now + " becomes " + shown(value), "a reading between " + now + " and " + shown(value) + ", one end included", concerns, of));
    }

    private static void sense(List<Change> all, Limit limit, Limit.Sense sense, Quantity value, Predicate<Scenario> concerns, String of) {
        Limit changed = copy(limit, sense, value, null, limit.passesAtLimit(), limit.from(), limit.registeredFrom(), limit.registeredBefore());
        all.add(change(limit, changed, limit.sense().key() + " " + ends(limit) + " becomes " + sense.key() + " " + value, "a reading well on either side of " + ends(limit), concerns, of));
    }

    private static void dates(List<Change> all, Limit limit, int days, Predicate<Scenario> concerns, String of, boolean follows) {
        // Before the first day of the first value nothing is in force, and nobody is judged then.
        if (follows && !limit.isAlways()) {
            LocalDate from = limit.from().plusDays(days);
            all.add(change(limit, copy(limit, limit.sense(), limit.value(), limit.upper(), limit.passesAtLimit(), from, limit.registeredFrom(), limit.registeredBefore()),
                "from " + limit.from() + " becomes from " + from, "judged on " + (days > 0 ? limit.from() : from), concerns, of));
        }
        if (limit.registeredFrom() != null) {
            LocalDate first = limit.registeredFrom().plusDays(days);
            all.add(change(limit, copy(limit, limit.sense(), limit.value(), limit.upper(), limit.passesAtLimit(), limit.from(), first, limit.registeredBefore()),
                    "registered from " + limit.registeredFrom() + " becomes from " + first, "a machine first registered " + (days > 0 ? limit.registeredFrom() : first), concerns, of));
        }
        if (limit.registeredBefore() != null) {
            LocalDate before = limit.registeredBefore().plusDays(days);
            all.add(change(limit, copy(limit, limit.sense(), limit.value(), limit.upper(), limit.passesAtLimit(), limit.from(), limit.registeredFrom(), before),
                    "registered before " + limit.registeredBefore() + " becomes before " + before, "a machine first registered " + (days > 0 ? limit.registeredBefore() : before), concerns, of));
        }
    }

    private static String shown(Quantity value) {
        return (value.value().precision() > 6 ? value.rounded(4) : value).toString();
    }

    private static String ends(Limit limit) {
        return limit.upper() == null ? limit.value().toString() : limit.value() + " or " + limit.upper();
    }

    private static Limit copy(Limit l, Limit.Sense sense, Quantity value, Quantity upper, boolean passes, LocalDate from, LocalDate registeredFrom, LocalDate registeredBefore) {
        return new Limit(l.id(), l.of(), sense, value, upper, passes, l.resolution(), from, registeredFrom, registeredBefore, l.fasterThan(), l.largerThan(), l.source(), l.reviewed(),
                l.maker(), l.local(), l.territory(), l.file(), l.line());
    }

    private static Limit above(Limit l, Quantity speed, Quantity size) {
        return new Limit(l.id(), l.of(), l.sense(), l.value(), l.upper(), l.passesAtLimit(), l.resolution(), l.from(), l.registeredFrom(), l.registeredBefore(), speed,
                size, l.source(), l.reviewed(), l.maker(), l.local(), l.territory(), l.file(), l.line());
    }

    private static Change change(Limit limit, Limit changed, String what, String toWrite, Predicate<Scenario> concerns, String of) {
        return new Change(Kind.LIMIT, limit.source().kind() == Source.Kind.HOUSE, limit.id(), what + of, limit.file() + ":" + limit.line(), toWrite, concerns, book -> book.with(each -> each == limit ? changed : each));
    }
}

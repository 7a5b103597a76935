package chock.rehearse;

import chock.assess.Finding;
import chock.assess.State;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.Value;
import chock.rulebook.Limit;
import chock.rulebook.RuleBook;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Every limit tried just inside, at, and just outside its number: in the record of a scenario that rests on it, the deciding
 * reading is replaced, and the rules judge again.
 *
 * @param rows one for each limit and each end of it, in the order of the rule book
 */
public record Boundaries(List<Row> rows) {
    /** Small enough to be no matter beside a step of any limit. */
    private static final BigDecimal NEGLIGIBLE = new BigDecimal("0.001");

    /**
     * One end of one limit.
     *
     * @param limit its id
     * @param end the number, with what it limits
     * @param where file and line of the limit
     * @param cases what was tried; empty when no scenario rests on one reading held against it
     * @param from the scenario whose record was used, or null
     * @param inside a hand-written scenario with a reading on the allowed side, or null
     * @param outside one with a reading on the other side, or null
     */
    public record Row(String limit, String end, String where, List<Case> cases, String from, String inside, String outside) {
        public boolean isPinned() {
            return inside != null && outside != null;
        }
    }

    /** One reading tried, what has to come of it, and what came. */
    public record Case(String reading, String expected, String found) {
        public boolean holds() {
            return expected.equals(found);
        }
    }

    /**
     * Tries every limit that has a number of its own.
     *
     * @param scope the limits to try
     */
    public static Boundaries of(RuleBook book, Rehearsed rehearsed, Scope scope) {
        List<Scenario> scenarios = rehearsed.scenarios();
        return new Boundaries(book.allLimits().parallelStream().filter(scope::has).flatMap(limit -> ends(limit).stream().map(end -> row(book, scenarios, limit, end))).toList());
    }

    /** Readings for which the rules found something else than the limit says. */
    public long wrong() {
        return rows.stream().flatMap(r -> r.cases.stream()).filter(c -> !c.holds()).count();
    }

    /** A number with the side on which readings are allowed: 1 above it, -1 below. */
    private record End(Quantity at, int allowed) { }

    private static List<End> ends(Limit limit) {
        return switch (limit.sense()) {
            case AT_LEAST -> List.of(new End(limit.value(), 1));
            case AT_MOST -> List.of(new End(limit.value(), -1));
            case BETWEEN -> List.of(new End(limit.value(), 1), new End(limit.upper(), -1));
            case WITHIN, MAKER_ONLY -> List.of();
        };
    }

    private static Row row(RuleBook book, List<Scenario> scenarios, Limit limit, End end) {
        String inside = null;
        String outside = null;
        for (Scenario scenario : scenarios) {
            for (Scenario.Place place : scenario.found()) {
                if (restsOn(place.found(), limit, end)) {
                    boolean fault = place.found().state() == State.FAULT;
                    inside = inside == null && !fault ? scenario.place() : inside;
                    outside = outside == null && fault && isBeyond(place.found(), end) ? scenario.place() : outside;
                }
            }
        }
        Optional<Base> base = scenarios.stream().flatMap(s -> s.found().stream().map(p -> new Base(s, p))).filter(b -> restsOn(b.place.found(), limit, end))
                .filter(b -> b.reading() != null).min(Comparator.comparing(b -> b.place.found().state() == State.MET ? 0 : 1));
        List<Case> cases = base.map(b -> cases(book, b, limit, end)).orElse(List.of());
        return new Row(limit.id(), (limit.sense() == Limit.Sense.BETWEEN ? end.allowed > 0 ? "from " : "up to " : limit.sense() == Limit.Sense.AT_LEAST ? "at least " : "at most ") + end.at,
                limit.file() + ":" + limit.line(), cases, base.map(b -> b.scenario.place()).orElse(null), inside, outside);
    }

    private static boolean restsOn(Finding.AtPlace found, Limit limit, End end) {
        if (found.limit() == null || !found.limit().id().equals(limit.id()) || !found.limit().source().equals(limit.source())) {
            return false;
        }
        return end.at.equals(end.allowed > 0 ? found.limit().bounds().low() : found.limit().bounds().high());
    }

    private static boolean isBeyond(Finding.AtPlace found, End end) {
        return found.measured().value().compareTo(end.at) * end.allowed <= 0;
    }

    /** A scenario and the place in it whose one reading is held against the limit. */
    private record Base(Scenario scenario, Scenario.Place place) {
        /** The deciding reading, or null when the value was worked out from several. */
        Entry reading() {
            if (place.found().evidence().size() != 1) {
                return null;
            }
            Entry entry = scenario.record().entry(place.found().evidence().get(0)).orElseThrow();
            boolean amount = entry.is() instanceof Value.Amount is && is.measured().equals(place.found().measured());
            return amount || entry.is() instanceof Value.Days ? entry : null;
        }

        String judged(RuleBook book, Value instead) {
            Entry old = reading();
            JobRecord r = scenario.record();
            // A reading set aside or contradicted by another would not be the only one any more.
            List<Entry> entries = r.entries().stream().map(e -> e != old ? e : e.withValue(instead)).toList();
            JobRecord changed = r.withEntries(entries);
            Scenario trial = new Scenario(scenario.place(), scenario.name(), changed, scenario.byTable(), scenario.asOf(), scenario.workshop(), scenario.gates(), scenario.expected(), List.of());
            return trial.judgedBy(book).gates().stream().flatMap(g -> g.findings().stream()).filter(f -> f.check().equals(place.check()))
                    .flatMap(f -> f.places().stream()).filter(p -> p.point().equals(place.found().point())).map(p -> p.state().id()).findFirst().orElse("not asked");
        }
    }

    private static List<Case> cases(RuleBook book, Base base, Limit limit, End end) {
        if (base.reading().is() instanceof Value.Days) {
            return ages(book, base, limit);
        }
        Quantity step = limit.resolution() != null && limit.resolution().unit().dimension() == end.at.unit().dimension()
                ? limit.resolution().differenceTo(end.at.unit()) : new Quantity(lastDigit(limit, end.at), end.at.unit());
        Quantity inward = step.times(BigDecimal.valueOf(end.allowed));
        boolean exact = base.place.found().measured().uncertainty() == null;
        Quantity small = exact ? null : step.times(NEGLIGIBLE);
        String at = !limit.passesAtLimit() ? "fault" : exact ? "met" : "doubt";
        List<Case> cases = new ArrayList<>();
        cases.add(tried(book, base, end.at.plus(inward), small, "met"));
        if (!exact) {
            cases.add(tried(book, base, end.at.plus(inward), step, "doubt"));
        }
        cases.add(tried(book, base, end.at, small, at));
        cases.add(tried(book, base, end.at.minus(inward), small, "fault"));
        return cases;
    }

    private static Case tried(RuleBook book, Base base, Quantity value, Quantity uncertainty, String expected) {
        Measured reading = new Measured(value, uncertainty);
        return new Case(reading.toString(), expected, base.judged(book, new Value.Amount(reading)));
    }

    // The day before, of, and after the one on which it reaches the age.
    private static List<Case> ages(RuleBook book, Base base, Limit limit) {
        LocalDate today = base.scenario.asOf().atZone(base.scenario.record().zone()).toLocalDate();
        BigDecimal months = limit.value().unit() == Unit.YEARS ? limit.value().value().multiply(BigDecimal.valueOf(12)) : limit.value().value();
        LocalDate reaches = today.minus(Period.ofMonths(months.intValueExact()));
        List<Case> cases = new ArrayList<>();
        for (int days = 1; days >= -1; days--) {
            LocalDate made = reaches.plusDays(days);
            String expected = days > 0 || days == 0 && limit.passesAtLimit() ? "met" : "fault";
            cases.add(new Case("of " + made + ", judged on " + today, expected, base.judged(book, new Value.Days(made, made, made.toString()))));
        }
        return cases;
    }

    /** Where no step is given, the last digit printed; of a span the finer of its ends, so that a step never leaps across it. */
    private static BigDecimal lastDigit(Limit limit, Quantity at) {
        BigDecimal own = at.value().ulp();
        return limit.upper() == null ? own : own.min(limit.value().to(at.unit()).value().ulp()).min(limit.upper().to(at.unit()).value().ulp());
    }
}

package chock.record;

import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/** Holds readings of one part, with no work there between them, against each other. */
public final class PlausiblePairs {
    private static final Comparator<Entry> IN_TIME = Comparator.comparing((Entry e) -> e.at().latest()).thenComparingInt(e -> e.at().seq())
            .thenComparing(Entry::id, Comparator.nullsFirst(Comparator.naturalOrder()));

    private final Plausible plausible;
    private final Machine machine;
    private final List<Entry> entries;
    /** Places in the list of what was read, by the kind of evidence, and by that and the point; in order of time. */
    private final Map<String, List<Integer>> readings = new HashMap<>();
    private final Map<String, List<Integer>> readingsAt = new HashMap<>();
    private final List<Entry> works = new ArrayList<>();

    /**
     * @param machine what is described, or null where it could not be read
     * @param entries as they stand in the record; those that could not be read are null
     */
    public PlausiblePairs(Plausible plausible, Machine machine, List<Entry> entries) {
        this.plausible = plausible;
        this.machine = machine;
        this.entries = entries;
        Set<String> corrected = new HashSet<>();
        entries.stream().filter(e -> e != null && e.corrects() != null).forEach(e -> corrected.add(e.corrects()));
        IntStream.range(0, entries.size()).filter(i -> isWhole(entries.get(i)) && !corrected.contains(entries.get(i).id())).boxed().sorted(Comparator.comparing(entries::get, IN_TIME)).forEach(i -> {
            Entry e = entries.get(i);
            if (e.deed() == Deed.DONE) {
                works.add(e);
            } else if (e.is() instanceof Value.Amount) {
                readings.computeIfAbsent(e.what(), k -> new ArrayList<>()).add(i);
                readingsAt.computeIfAbsent(Entry.key(e.point(), e.what()), k -> new ArrayList<>()).add(i);
            }
        });
    }

    private static boolean isWhole(Entry e) {
        return e != null && e.deed() != null && e.at() != null && e.point() != null && e.what() != null;
    }

    /**
     * Two that do not go together.
     *
     * @param later place in the list of the one written later, or of the only one where the other is the description
     * @param earlier place of the other, or -1
     */
    record Misfit(int later, int earlier, Impossible why) { }

    /** Those of which one cannot be true. */
    List<Misfit> impossible() {
        return plausible.pairs().stream().filter(Plausible.Pair::refuses).flatMap(pair -> misfits(pair).stream()).toList();
    }

    /** Entries that are rare beside an earlier one or beside the description, by id, each with a sentence to ask it in. */
    public Map<String, String> rare() {
        Map<String, String> rare = new LinkedHashMap<>();
        plausible.pairs().stream().filter(pair -> !pair.refuses()).flatMap(pair -> misfits(pair).stream())
                .forEach(misfit -> rare.putIfAbsent(entries.get(misfit.later()).id(), misfit.why().says() + ". " + misfit.why().advice()));
        return rare;
    }

    private List<Misfit> misfits(Plausible.Pair pair) {
        List<Misfit> misfits = new ArrayList<>();
        Set<List<Integer>> told = new HashSet<>();
        for (int i : readings.getOrDefault(pair.of(), List.of())) {
            if (pair.at().isEmpty() || pair.at().contains(entries.get(i).point())) {
                for (Second second : seconds(pair, i)) {
                    String says = misfit(pair, measured(i), second);
                    boolean secondLater = second.at() >= 0 && precedes(i, second.at());
                    int later = secondLater ? second.at() : i;
                    int earlier = secondLater ? i : second.at();
                    if (says != null && told.add(List.of(later, earlier))) {
                        misfits.add(new Misfit(later, earlier, new Impossible(says, pair.hint())));
                    }
                }
            }
        }
        return misfits;
    }

    /** @param at its place in the list, or -1 when it is the description */
    private record Second(int at, Measured measured, String words) { }

    private List<Second> seconds(Plausible.Pair pair, int first) {
        List<Second> seconds = new ArrayList<>();
        if (pair.to().startsWith("machine.")) {
            described(pair.to().substring("machine.".length())).ifPresent(q -> seconds.add(new Second(-1, new Measured(q, null), pair.to() + " " + q)));
            return seconds;
        }
        String place = pair.toAt() == null ? entries.get(first).point() : pair.toAt();
        nearest(pair.to(), place, first, -1).ifPresent(seconds::add);
        nearest(pair.to(), place, first, 1).ifPresent(seconds::add);
        return seconds;
    }

    /** The last before, or the first after, that is not corrected and has no work on either part between. */
    private Optional<Second> nearest(String aspect, String place, int first, int step) {
        List<Integer> there = readingsAt.getOrDefault(Entry.key(place, aspect), List.of());
        int best = -1;
        for (int i : there) {
            if (i != first && precedes(i, first) == step < 0) {
                best = step > 0 && best >= 0 ? best : i;
            }
        }
        if (best < 0 || workBetween(first, best)) {
            return Optional.empty();
        }
        return Optional.of(new Second(best, measured(best), PlausibleEntries.name(aspect) + " " + measured(best).value() + " (" + entries.get(best).id() + ")"));
    }

    private boolean workBetween(int a, int b) {
        int early = precedes(a, b) ? a : b;
        int late = early == a ? b : a;
        for (Entry work : works) {
            if ((touches(work.point(), entries.get(a).point()) || touches(work.point(), entries.get(b).point()))
                    && !entries.get(early).at().surelyAfter(work.at()) && !work.at().surelyAfter(entries.get(late).at())) {
                return true;
            }
        }
        return false;
    }

    private static boolean touches(String work, String part) {
        return Entry.covers(work, part) || Entry.covers(part, work);
    }

    /** By time; by their ids where two times are equal, for the order of the lines says nothing. */
    private boolean precedes(int a, int b) {
        return IN_TIME.compare(entries.get(a), entries.get(b)) < 0;
    }

    private Measured measured(int i) {
        return ((Value.Amount) entries.get(i).is()).measured();
    }

    private Optional<Quantity> described(String key) {
        if (machine == null) {
            return Optional.empty();
        }
        return switch (key) {
            case "volts" -> machine.volts() == 0 ? Optional.empty() : Optional.of(Quantity.of(String.valueOf(machine.volts()), Unit.VOLTS));
            case "top-speed" -> Optional.ofNullable(machine.topSpeed());
            default -> throw new IllegalStateException("the table of plausible pairs names machine." + key);
        };
    }

    /** What is wrong with the two together, or null where they go together. */
    private String misfit(Plausible.Pair pair, Measured first, Second second) {
        Quantity value = first.value();
        Unit in = unitOf(pair.of(), value);
        Quantity low = part(second.measured().value(), pair.ratio().low().value(), in, pair.to());
        Quantity high = part(second.measured().value(), pair.ratio().high().value(), in, pair.to());
        if (pair.withUncertainty()) {
            low = low.minus(slack(first, second.measured(), pair.ratio().low().value(), in, pair.to()));
            high = high.plus(slack(first, second.measured(), pair.ratio().high().value(), in, pair.to()));
        }
        if (new Bounds(low, true, high, true).contains(value)) {
            return null;
        }
        return PlausibleEntries.name(pair.of()) + " " + value + " does not go with " + second.words();
    }

    /** The second times a factor, as an amount of the first's kind. */
    private Quantity part(Quantity second, BigDecimal factor, Unit in, String aspect) {
        boolean same = second.unit().dimension() == in.dimension();
        return same ? second.times(factor) : new Quantity(second.to(unitOf(aspect, second)).value().multiply(factor), in);
    }

    private Quantity slack(Measured first, Measured second, BigDecimal factor, Unit in, String aspect) {
        BigDecimal own = first.uncertainty() == null ? BigDecimal.ZERO : first.uncertainty().differenceTo(in).value();
        BigDecimal other = BigDecimal.ZERO;
        if (second.uncertainty() != null) {
            boolean same = second.uncertainty().unit().dimension() == in.dimension();
            other = second.uncertainty().differenceTo(same ? in : unitOf(aspect, second.value())).value().multiply(factor);
        }
        return new Quantity(own.add(other), in);
    }

    /** The unit of an aspect's row; a ratio of two kinds is told in these. */
    private Unit unitOf(String aspect, Quantity otherwise) {
        List<Plausible.Row> rows = plausible.amounts().getOrDefault(aspect, List.of());
        return rows.isEmpty() ? otherwise.unit() : rows.get(0).canBe().low().unit();
    }
}

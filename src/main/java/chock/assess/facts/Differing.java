package chock.assess.facts;

import chock.quantity.Measured;
import chock.quantity.Unit;
import chock.record.Value;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiPredicate;

/**
 * Two entries about one thing that cannot both be right, with no work between them.
 *
 * @param first the earlier
 * @param second the later
 */
public record Differing(Standing first, Standing second) {
    /** So many earlier ones are told of a later one, the newest first. */
    private static final int OF_ONE = 4;
    /** So many are told of one thing, the newest first: whoever reads the finding looks at the thing again, and not at the hundredth pair. */
    private static final int OF_ALL = 20;

    /**
     * The newest of them, none when all that stands goes together.
     *
     * @param standing all that stands of one want
     * @param workBetween whether work between the earlier and the later makes both possible
     */
    public static List<Differing> among(List<Standing> standing, BiPredicate<Standing, Standing> workBetween) {
        List<Standing> inOrder = standing.stream().sorted(Comparator.comparing((Standing s) -> s.evidence().entry().at().earliest()).thenComparing(s -> s.evidence().id())).toList();
        Earlier earlier = new Earlier();
        List<Integer> doubtful = new ArrayList<>();
        for (int i = 0; i < inOrder.size(); i++) {
            if (earlier.mayDifferFrom(inOrder.get(i))) {
                doubtful.add(i);
            }
            earlier.add(inOrder.get(i));
        }
        List<Differing> told = new ArrayList<>();
        for (int i = doubtful.size() - 1; i >= 0 && told.size() < OF_ALL; i--) {
            told.addAll(of(inOrder.subList(0, doubtful.get(i)), inOrder.get(doubtful.get(i)), workBetween));
        }
        return told.subList(0, Math.min(told.size(), OF_ALL));
    }

    private static List<Differing> of(List<Standing> earlier, Standing later, BiPredicate<Standing, Standing> workBetween) {
        List<Differing> told = new ArrayList<>();
        for (int i = earlier.size() - 1; i >= 0 && told.size() < OF_ONE; i--) {
            Standing one = earlier.get(i);
            if ((later.disagreesWith(one) || later.contradicts(one)) && !workBetween.test(one, later)) {
                told.add(new Differing(one, later));
            }
        }
        return told;
    }

    /** True when both are readings that lie further apart than their uncertainties allow. */
    public boolean isOfReadings() {
        return second.disagreesWith(first);
    }

    /** What is known of all earlier entries together, so that most later ones need not be held against each of them. */
    private static final class Earlier {
        private Instant latest = Instant.MIN;
        private BigDecimal least;
        private BigDecimal greatest;
        private BigDecimal leastUncertainty;
        private Unit unit;
        private boolean severalUnits;
        private boolean good;
        private boolean faulty;
        private String code;
        private boolean severalCodes;
        private LocalDate earliestEnd;
        private LocalDate latestStart;

        void add(Standing one) {
            Instant end = one.evidence().entry().at().latest();
            latest = end.isAfter(latest) ? end : latest;
            Value is = one.evidence().entry().is();
            if (is instanceof Value.Amount amount) {
                addReading(amount.measured());
            } else if (is instanceof Value.Answer) {
                good |= !one.faulty();
                faulty |= one.faulty();
            } else if (is instanceof Value.Code marked) {
                severalCodes |= code != null && !code.equals(marked.text());
                code = marked.text();
            } else if (is instanceof Value.Days days) {
                earliestEnd = earliestEnd == null || days.to().isBefore(earliestEnd) ? days.to() : earliestEnd;
                latestStart = latestStart == null || days.from().isAfter(latestStart) ? days.from() : latestStart;
            }
        }

        private void addReading(Measured read) {
            Unit in = read.value().unit();
            severalUnits |= unit != null && unit != in;
            unit = in;
            BigDecimal value = read.value().value();
            BigDecimal uncertainty = uncertainty(read, in);
            least = least == null ? value : least.min(value);
            greatest = greatest == null ? value : greatest.max(value);
            leastUncertainty = leastUncertainty == null ? uncertainty : leastUncertainty.min(uncertainty);
        }

        private static BigDecimal uncertainty(Measured read, Unit in) {
            return read.uncertainty() == null ? BigDecimal.ZERO : read.uncertainty().differenceTo(in).value();
        }

        /** False when none of them can differ from this one. */
        boolean mayDifferFrom(Standing later) {
            if (later.wanted().want().varies() || later.wanted().latestDecides() && later.evidence().entry().at().earliest().isAfter(latest)) {
                return false;
            }
            Value is = later.evidence().entry().is();
            if (is instanceof Value.Amount amount) {
                return unit != null && (severalUnits || unit != amount.measured().value().unit() || liesApart(amount.measured()));
            }
            if (is instanceof Value.Answer) {
                return later.faulty() ? good : faulty;
            }
            if (is instanceof Value.Code marked) {
                return code != null && (severalCodes || !code.equals(marked.text()));
            }
            return is instanceof Value.Days days && earliestEnd != null && (days.from().isAfter(earliestEnd) || latestStart.isAfter(days.to()));
        }

        private boolean liesApart(Measured read) {
            BigDecimal value = read.value().value();
            BigDecimal together = uncertainty(read, unit).pow(2).add(leastUncertainty.pow(2));
            return value.subtract(least).pow(2).max(greatest.subtract(value).pow(2)).compareTo(together) > 0;
        }
    }
}

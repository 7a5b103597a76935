package chock.record;

import chock.quantity.Bounds;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a figure in a record can be at all, as the rule book in force knows it: wide enough for every true reading on a
 * motorcycle, moped or outfit, so that whatever lies outside is a slip of the pen, the unit or the point.
 *
 * @param amounts what each kind of evidence can be, by its name; several where it depends on the place
 * @param dates what can be marked on a part, by the name of the evidence
 * @param pairs readings that belong together
 * @param description what the machine's description can say, by its key, such as {@code engine.displacement}
 * @param tools what instruments can show, by kind
 * @param calibrated what the day of a calibration can be
 * @param limits what limits and maker's figures can be, by id
 * @param figures what the arguments of computations are, by the computation: names of amounts, or keys of the description
 */
public record Plausible(Map<String, List<Row>> amounts, Map<String, Mark> dates, List<Pair> pairs, Map<String, Row> description,
                        Map<String, List<Tool>> tools, Calibration calibrated, Map<String, LimitRow> limits,
                        Map<String, Map<String, String>> figures) {

    /** For a rule book that says nothing of it. */
    public static final Plausible UNSAID = new Plausible(Map.of(), Map.of(), List.of(), Map.of(), Map.of(), null, Map.of(), Map.of());

    /**
     * @param of name of the evidence, or key of the description
     * @param points the places it is for; empty for every place
     * @param canBe outside of this it cannot be true
     * @param usual outside of this it can be true and is rare; null where that depends on the machine
     * @param whole counted, without a fraction
     * @param hint what to look at again, as an imperative without a full stop
     */
    public record Row(String of, Set<String> points, Bounds canBe, Bounds usual, boolean whole, String hint) { }

    /** @param from no mark of this kind is older */
    public record Mark(LocalDate from, String hint) { }

    /**
     * The first reading, as a number in the unit of its row, over the second in its own.
     *
     * @param of name of the first
     * @param at the places of the first; empty for every place
     * @param to name of the second, or {@code machine.} and a key of the description
     * @param toAt the place of the second where it is not that of the first, or null
     * @param ratio what the first over the second can be
     * @param withUncertainty whether both uncertainties are allowed for
     * @param refuses whether both cannot be true; else it is only asked again
     */
    public record Pair(String of, Set<String> at, String to, String toAt, Bounds ratio, boolean withUncertainty, boolean refuses, String hint) { }

    /**
     * @param measures the kind of unit
     * @param shows what it can show
     * @param mostUncertainty the most U (k = 2) that it can have, one of these sufficing
     * @param years a calibration lasts at most so long
     */
    public record Tool(Unit.Dimension measures, Bounds shows, List<Most> mostUncertainty, int years) { }

    /**
     * @param ofReading whether it is a percentage of the reading, and not an amount of its own
     * @param atZero whether it is that of a reading of 0 alone
     */
    public record Most(Quantity uncertainty, boolean ofReading, boolean atZero) {
        @Override
        public String toString() {
            return uncertainty + (ofReading ? " of the reading" : atZero ? " at 0" : "");
        }
    }

    /**
     * @param from no calibration is older
     * @param years nor older than this when the first reading is taken with it
     */
    public record Calibration(LocalDate from, int years) { }

    /** @param maker what a maker's figure for it can be, or null where none is taken */
    public record LimitRow(Bounds canBe, Bounds maker) { }

    /** The rows for this evidence at this place; those of every place where the place is in none. */
    List<Row> rows(String aspect, String point) {
        List<Row> all = amounts.getOrDefault(aspect, List.of());
        List<Row> here = all.stream().filter(row -> row.points().isEmpty() || row.points().contains(point)).toList();
        return here.isEmpty() ? all : here;
    }

    /**
     * Why an argument of a computation cannot be what is written, as a sentence without a full stop; empty where it can, and
     * for whatever is no amount, which the computation refuses better.
     *
     * @param written one amount or several with commas between them; a bare number is meant in the unit of the row
     */
    public Optional<String> refuses(String figure, String argument, String written) {
        String of = figures.getOrDefault(figure, Map.of()).get(argument);
        if (of == null) {
            return Optional.empty();
        }
        List<Row> rows = amounts.containsKey(of) ? amounts.get(of) : List.of(description.get(of));
        return Stream.of(written.split(",", -1)).flatMap(part -> Impossible.ofArgument(argument, part.strip(), rows).stream()).findFirst();
    }

    /** Why a limit or a figure of this value cannot be, as a sentence without a full stop; empty where it can. */
    public Optional<String> refuses(String limit, Quantity value) {
        LimitRow row = limits.get(limit);
        return row == null ? Optional.empty() : outside(row.canBe(), value, limit);
    }

    /** The same of a maker's figure, which is not believed beyond its own bound, however many have read it. */
    public Optional<String> refusesOfMaker(String limit, Quantity value) {
        LimitRow row = limits.get(limit);
        if (row == null || row.maker() == null) {
            return Optional.empty();
        }
        boolean possible = outside(row.canBe(), value, limit).isEmpty();
        return outside(row.maker(), value, limit).map(why -> possible
                ? value + " goes further than a maker's figure for " + limit + " is believed, whoever read it: " + row.maker().words() + " (common practice)" : why);
    }

    /** Why no maker's figure like this can be, by any of its ends; empty where it can, and where it was not marked as impossible. */
    public Optional<String> refuses(MakerFigure figure) {
        return Stream.of(figure.atLeast(), figure.atMost(), figure.nominal()).filter(Objects::nonNull)
                .flatMap(value -> refusesOfMaker(figure.limit(), value).stream()).findFirst();
    }

    /** Why no law can set such a number; empty where it can, and where it sets none. */
    public Optional<String> refuses(LocalLaw.Line line) {
        return Stream.of(line.atLeast(), line.atMost()).filter(Objects::nonNull).flatMap(value -> refuses(line.limit(), value).stream()).findFirst();
    }

    private static Optional<String> outside(Bounds bounds, Quantity value, String limit) {
        boolean comparable = bounds.low().unit().dimension() == value.unit().dimension();
        return !comparable || bounds.contains(value) ? Optional.empty() : Optional.of(value + " is not possible for " + limit + ": it lies " + bounds.words());
    }
}

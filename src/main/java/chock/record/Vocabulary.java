package chock.record;

import chock.quantity.Measured;
import chock.quantity.Unit;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The words a record may use, as the rule book in force knows them.
 *
 * @param points every place on a machine, including the places above each
 * @param aspects what can be measured, tried or seen, by name
 * @param works what can be done to a part, with what it means
 * @param instruments kinds of instrument, each with its smallest credible uncertainty
 * @param limits ids a maker's figure may speak to, each with the kind of unit
 * @param plausible what figures can be at all
 * @param tooled work that is done with an instrument, by its name
 * @param formerly places that were renamed: the name of today by the former one; what the former carried came along
 * @param fields what the fields of the description mean
 * @param law what may be said of the law where the machine will be ridden
 */
public record Vocabulary(SortedSet<String> points, Map<String, Aspect> aspects, Map<String, String> works,
                         Map<String, InstrumentKind> instruments, Map<String, Unit.Dimension> limits, Plausible plausible, Map<String, Tooled> tooled, Map<String, String> formerly, List<FieldRule> fields, LawWords law) {

    /** Every name that a stored record may have for a place: those of today, and the former ones. */
    public SortedSet<String> everyPlaceName() {
        SortedSet<String> all = new TreeSet<>(points);
        formerly.forEach((former, now) -> points.stream().filter(point -> Entry.covers(now, point)).forEach(point -> all.add(former + point.substring(now.length()))));
        return all;
    }

    /** The same words, with other kinds of instrument. */
    public Vocabulary withInstruments(Map<String, InstrumentKind> others) {
        return new Vocabulary(points, aspects, works, others, limits, plausible, tooled, formerly, fields, law);
    }

    /** What a place is called today; the name itself where the place was never renamed. */
    public String placeNow(String name) {
        for (String above : Entry.upFrom(name)) {
            if (formerly.containsKey(above)) {
                return formerly.get(above) + name.substring(above.length());
            }
        }
        return name;
    }

    /**
     * The kinds of instrument that can have given this reading, the finest first.
     *
     * @param reading with its uncertainty U (k = 2)
     */
    public List<InstrumentKind> kindsFor(Measured reading) {
        PlausibleEntries possible = new PlausibleEntries(this);
        return instruments.values().stream().filter(kind -> kind.leastOf(reading.value()).isPresent() && possible.shownBy(kind.name(), reading).isEmpty())
                .sorted(Comparator.comparing((InstrumentKind kind) -> kind.leastOf(reading.value()).orElseThrow().differenceTo(reading.value().unit()).value()).thenComparing(InstrumentKind::name)).toList();
    }

    /** How the {@code is:} of an aspect is written. */
    public enum Form { AMOUNT, ANSWER, DAYS, CODE }

    /**
     * @param dimension kind of unit of an AMOUNT, else null
     * @param answers every answer of an ANSWER, good and bad, else empty
     * @param places where some check asks for it on some machine; empty when it may be written anywhere
     */
    public record Aspect(String name, Form form, Unit.Dimension dimension, Set<String> answers, Set<String> places) {
        /** One that may be written anywhere. */
        public Aspect(String name, Form form, Unit.Dimension dimension, Set<String> answers) {
            this(name, form, dimension, answers, Set.of());
        }
    }

    /**
     * Work done with an instrument.
     *
     * @param with kind of the instrument
     * @param unit of what was set; any unit of the same kind may be written
     * @param from first day of entries that count only with both
     * @param noneFound id under the maker's {@code none-found} that allows what was set to be left out
     */
    public record Tooled(String work, String with, Unit unit, LocalDate from, String noneFound) { }

    /** @param leastUncertainty least expanded uncertainty (k = 2) for each kind of unit it can measure, as a quantity or a percentage */
    public record InstrumentKind(String name, Map<Unit.Dimension, chock.quantity.Quantity> leastUncertainty) {
        /** The least expanded uncertainty (k = 2) of this reading, or empty when such an instrument cannot take it. */
        public Optional<chock.quantity.Quantity> leastOf(chock.quantity.Quantity value) {
            return Optional.ofNullable(leastUncertainty.get(value.unit().dimension())).map(table -> Uncertainty.forReading(table, value));
        }
    }
}

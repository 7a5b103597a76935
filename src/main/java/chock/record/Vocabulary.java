package chock.record;

import chock.quantity.Unit;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;

/**
 * The words a record may use, as the rule book in force knows them.
 *
 * @param points every place on a machine, including the places above each
 * @param aspects what can be measured, tried or seen, by name
 * @param works what can be done to a part, with what it means
 * @param instruments kinds of instrument, each with its smallest credible uncertainty
 * @param limits ids a maker's figure may speak to, each with the kind of unit
 * @param plausible what figures can be at all
 * @param fields what the fields of the description mean
 */
public record Vocabulary(SortedSet<String> points, Map<String, Aspect> aspects, Map<String, String> works,
                         Map<String, InstrumentKind> instruments, Map<String, Unit.Dimension> limits, Plausible plausible, List<FieldRule> fields) {

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

    /** @param leastUncertainty least expanded uncertainty (k = 2) for each kind of unit it can measure, as a quantity or a percentage */
    public record InstrumentKind(String name, Map<Unit.Dimension, chock.quantity.Quantity> leastUncertainty) { }
}

package chock.rehearse;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Vocabulary;
import chock.record.Vocabulary.InstrumentKind;
import chock.rulebook.RuleBook;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The least uncertainty that is believed of each kind of instrument, a little larger, a little smaller, and gone. */
final class InstrumentChanges {
    private InstrumentChanges() { }

    static List<Change> of(RuleBook book) {
        List<Change> all = new ArrayList<>();
        for (InstrumentKind kind : book.vocabulary().instruments().values()) {
            kind.leastUncertainty().forEach((dimension, least) -> {
                BigDecimal last = least.value().ulp();
                for (BigDecimal value : List.of(least.value().add(last), least.value().subtract(last))) {
                    Quantity other = new Quantity(value, least.unit());
                    add(all, book, kind, dimension, other, dimension.words() + " \u00b1 " + least + " becomes \u00b1 " + other);
                }
                add(all, book, kind, dimension, null, "measures no " + dimension.words());
            });
        }
        return all;
    }

    private static void add(List<Change> all, RuleBook book, InstrumentKind kind, Unit.Dimension dimension, Quantity least, String what) {
        Map<Unit.Dimension, Quantity> changed = new HashMap<>(kind.leastUncertainty());
        if (least == null) {
            changed.remove(dimension);
        } else {
            changed.put(dimension, least);
        }
        Map<String, InstrumentKind> kinds = new HashMap<>(book.vocabulary().instruments());
        kinds.put(kind.name(), new InstrumentKind(kind.name(), Map.copyOf(changed)));
        Vocabulary words = book.vocabulary().withInstruments(kinds);
        all.add(new Change(Change.Kind.INSTRUMENT, false, "instruments." + kind.name(), what, "rules/evidence/instruments.yaml", "a reading with " + kind.name() + ", its uncertainty from the table",
                scenario -> scenario.isMeasuredByTable(kind.name(), dimension), one -> one.withVocabulary(words)));
    }
}

package chock.assess;

import chock.assess.facts.Wanted;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Value;
import chock.record.Vocabulary.Form;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** A result that would meet every want it answers; only to learn what would then be asked, never written anywhere. */
final class GoodResult {
    private static final BigDecimal TWO = BigDecimal.valueOf(2);

    private GoodResult() { }

    /** The result, or null where none can be made up: a code, or an amount that only counts together with others. */
    static Value of(List<Wanted> wanted) {
        Form form = wanted.get(0).want().form();
        if (form == Form.ANSWER) {
            List<String> good = new ArrayList<>(wanted.get(0).want().good());
            wanted.forEach(w -> good.retainAll(w.want().good()));
            return good.isEmpty() ? null : new Value.Answer(good.get(0));
        }
        if (form != Form.AMOUNT) {
            return null;
        }
        Bounds bounds = wanted.stream().filter(Wanted::judged).map(Wanted::limit).filter(l -> l != null && l.applied() != null).map(l -> l.applied().bounds())
                .reduce(Bounds::and).orElse(null);
        return bounds == null ? null : new Value.Amount(new Measured(inside(bounds), null));
    }

    private static Quantity inside(Bounds bounds) {
        if (bounds.low() != null && bounds.high() != null) {
            Quantity high = bounds.high().to(bounds.low().unit());
            return new Quantity(bounds.low().value().add(high.value()).divide(TWO), bounds.low().unit());
        }
        Quantity end = Objects.requireNonNullElse(bounds.low(), bounds.high());
        BigDecimal away = end.value().abs().max(BigDecimal.ONE).divide(TWO);
        return new Quantity(bounds.low() != null ? end.value().add(away) : end.value().subtract(away), end.unit());
    }
}

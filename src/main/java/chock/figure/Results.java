package chock.figure;

import chock.quantity.Quantity;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;

/** Amounts put under their names, in the order given, rounded for showing. */
final class Results {
    private static final MathContext SHOWN = new MathContext(6, RoundingMode.HALF_UP);

    private Results() { }

    static Map<String, ResultValue> of(String name, Quantity quantity) {
        return Map.of(name, amount(quantity));
    }

    static Map<String, ResultValue> of(String first, Quantity one, String second, Quantity other) {
        Map<String, ResultValue> results = new LinkedHashMap<>();
        results.put(first, amount(one));
        results.put(second, amount(other));
        return results;
    }

    static ResultValue.Amount amount(Quantity quantity) {
        return new ResultValue.Amount(new Quantity(quantity.value().round(SHOWN), quantity.unit()));
    }
}

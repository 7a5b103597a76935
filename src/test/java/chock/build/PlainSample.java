package chock.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.IntBinaryOperator;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.function.LongSupplier;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import java.util.function.ToLongFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Lambdas and records of every kind the language has, and what they come to. */
public class PlainSample implements Supplier<List<String>> {
    record Empty() { }

    record Every(boolean z, byte b, short s, char c, int i, long j, float f, double d, String text, int[] many, Every more) { }

    interface Speaks {
        String name();

        default Supplier<String> twice() {
            return () -> own() + name();
        }

        private String own() {
            return name();
        }
    }

    static class Above {
        private final String name = "above";

        Supplier<String> said() {
            return () -> name;
        }

        Supplier<String> again() {
            return this::hidden;
        }

        private String hidden() {
            return "hidden " + name;
        }
    }

    static final class Below extends Above {
        private final String name = "below";

        Supplier<String> alsoSaid() {
            return () -> name + said().get();
        }

        private String hidden() {
            return "not asked for";
        }
    }

    private static Every every(double d, String text, int[] many, Every more) {
        return new Every(true, (byte) -3, (short) 7, 'x', -1, 1L << 40, (float) d, d, text, many, more);
    }

    private String told(String what) {
        return "told " + what;
    }

    @Override
    public List<String> get() {
        List<String> all = new ArrayList<>();
        lambdas(all);
        records(all);
        return all;
    }

    private void lambdas(List<String> all) {
        int i = 5;
        long j = 1L << 35;
        double d = 2.5;
        char c = 'k';
        boolean z = true;
        Function<String, String> held = text -> text + i + j + d + c + z + told("x");
        all.add(held.apply("held "));
        UnaryOperator<String> own = this::told;
        all.add(own.apply("own"));
        Function<String, Integer> length = String::length;
        ToIntFunction<Integer> unboxed = Integer::intValue;
        ToLongFunction<Integer> wider = Integer::intValue;
        ToDoubleFunction<Long> widest = number -> number;
        LongSupplier fromInt = () -> i;
        IntFunction<Object> boxed = number -> number * 2;
        IntPredicate odd = number -> number % 2 == 1;
        IntBinaryOperator max = Math::max;
        BiFunction<Integer, Integer, Integer> sum = Integer::sum;
        all.add(length.apply("four") + " " + unboxed.applyAsInt(3) + " " + wider.applyAsLong(4) + " " + widest.applyAsDouble(5L) + " "
                + fromInt.getAsLong() + " " + boxed.apply(6) + " " + odd.test(7) + " " + max.applyAsInt(8, 9) + " " + sum.apply(1, 2));
        Function<Integer, int[]> array = int[]::new;
        Supplier<List<String>> list = ArrayList::new;
        Function<String, StringBuilder> builder = StringBuilder::new;
        all.add(array.apply(3).length + " " + list.get() + " " + builder.apply("built").reverse());
        Runnable nothing = () -> all.add("run");
        nothing.run();
        Map<String, Integer> counted = new TreeMap<>(Comparator.comparing(String::length).thenComparing(Comparator.reverseOrder()));
        Stream.of("b", "a", "ccc", "a").forEach(word -> counted.merge(word, 1, Integer::sum));
        counted.forEach((word, times) -> all.add(word + times));
        ToIntFunction<String> fromMap = counted::get;
        all.add("from a map " + fromMap.applyAsInt("a"));
        all.add(IntStream.range(0, 4).mapToObj(n -> (Supplier<Integer>) () -> n * i).map(Supplier::get).toList().toString());
        Predicate<Object> text = String.class::isInstance;
        all.add(text.test("x") + " " + text.test(1));
        Speaks speaks = () -> "spoken";
        all.add(speaks.twice().get());
        Below below = new Below();
        all.add(below.said().get() + " " + below.alsoSaid().get() + " " + below.again().get() + " " + below.hidden());
    }

    private static void records(List<String> all) {
        int[] many = {1};
        Every inner = every(0.0, null, null, null);
        all.add(new Empty() + " " + new Empty().hashCode() + " " + new Empty().equals(new Empty()));
        all.add(inner.toString());
        List<Every> some = List.of(inner, every(-0.0, null, null, null), every(Double.NaN, "t", null, inner),
                every(Double.NaN, "t", null, every(0.0, null, null, null)), every(1, "u", many, null), every(1, "u", many, null),
                every(1, "u", new int[] {1}, null));
        for (Every one : some) {
            StringBuilder line = new StringBuilder();
            some.forEach(other -> line.append(one.equals(other)).append(' '));
            all.add(line + "" + one.equals(null) + " " + one.equals("text"));
        }
        some.subList(0, 4).forEach(one -> all.add(one.hashCode() + " " + one));
    }
}

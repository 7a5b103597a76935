package chock.figure;

import chock.quantity.Quantity;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** One result of a figure: an amount, a day, a time, a range, a list of these, or nothing with a reason. */
public sealed interface ResultValue {

    /** For a machine: a string, a map {from, to, unit}, a list of these, or null. Amounts are decimal strings, days ISO dates, times ISO date-times. */
    Object plain();

    /** For a reader. */
    String words();

    /** Symbol of the unit, where there is one. */
    default Optional<String> unit() {
        return Optional.empty();
    }

    /** Why there is no value, where there is none. */
    default Optional<String> why() {
        return Optional.empty();
    }

    /** An amount or a day: what a range can have at its ends. */
    sealed interface Single extends ResultValue { }

    /** @param quantity the amount, rounded for showing */
    record Amount(Quantity quantity) implements Single {
        @Override
        public Object plain() {
            return quantity.number();
        }

        @Override
        public String words() {
            return new Quantity(new java.math.BigDecimal(quantity.number()), quantity.unit()).toString();
        }

        @Override
        public Optional<String> unit() {
            return Optional.of(quantity.unit().symbol());
        }
    }

    /** @param date the day */
    record Day(LocalDate date) implements Single {
        @Override
        public Object plain() {
            return date.toString();
        }

        @Override
        public String words() {
            return date.toString();
        }
    }

    /** @param moment with its offset, shown to the minute */
    record Time(OffsetDateTime moment) implements ResultValue {
        @Override
        public Object plain() {
            return moment.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES).toString();
        }

        @Override
        public String words() {
            return plain().toString().replace('T', ' ').replace("Z", " UTC");
        }
    }

    /** Both ends included. The {@code unit} of a range of days is null. */
    record Range(Single from, Single to) implements ResultValue {
        @Override
        public Object plain() {
            Map<String, Object> all = new LinkedHashMap<>();
            all.put("from", from.plain());
            all.put("to", to.plain());
            all.put("unit", unit().orElse(null));
            return all;
        }

        @Override
        public String words() {
            return from.words() + " to " + to.words();
        }

        @Override
        public Optional<String> unit() {
            return from.unit();
        }
    }

    /** @param values in a fixed order */
    record Several(List<ResultValue> values) implements ResultValue {
        public Several {
            values = List.copyOf(values);
        }

        @Override
        public Object plain() {
            return values.stream().map(ResultValue::plain).toList();
        }

        @Override
        public String words() {
            return values.stream().map(ResultValue::words).collect(Collectors.joining("; "));
        }
    }

    /** @param reason why there is no value, as a sentence without its full stop */
    record Unknown(String reason) implements ResultValue {
        @Override
        public Object plain() {
            return null;
        }

        @Override
        public String words() {
            return "unknown: " + reason;
        }

        @Override
        public Optional<String> why() {
            return Optional.of(reason);
        }
    }
}

package chock.record;

import chock.quantity.Measured;
import java.time.LocalDate;

/** What an entry says there is. */
public sealed interface Value {

    /** A measured or marked amount. */
    record Amount(Measured measured) implements Value {
        @Override
        public String toString() {
            return measured.toString();
        }
    }

    /** One of the answers a check knows, such as {@code sound}. */
    record Answer(String word) implements Value {
        @Override
        public String toString() {
            return word;
        }
    }

    /** A day, month or year as marked; the span of days it can mean. */
    record Days(LocalDate from, LocalDate to, String written) implements Value {
        @Override
        public String toString() {
            return written;
        }
    }

    /** Letters and figures as marked, such as a tyre's date code. */
    record Code(String text) implements Value {
        @Override
        public String toString() {
            return text;
        }
    }

    /**
     * What stands in a stored record and cannot be true. It is none of the other kinds, so that nothing takes it for a reading.
     *
     * @param written what stands there
     * @param says why it cannot be true, in words without a full stop
     * @param advice what to look at again, as an imperative without a full stop
     */
    record Impossible(Value written, String says, String advice) implements Value {
        @Override
        public String toString() {
            return written.toString();
        }
    }
}

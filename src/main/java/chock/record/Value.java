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
}

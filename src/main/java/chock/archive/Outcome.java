package chock.archive;

import chock.record.UnusableInput;

/**
 * What came of one line out of many: one of the three.
 *
 * @param result what was judged, or null
 * @param refused why the line cannot be used, or null
 * @param failed what went wrong in the program itself, or null
 */
public record Outcome<T>(T result, UnusableInput refused, Throwable failed) {

    static <T> Outcome<T> of(T result) {
        return new Outcome<>(result, null, null);
    }

    static <T> Outcome<T> refused(UnusableInput why) {
        return new Outcome<>(null, why, null);
    }

    static <T> Outcome<T> failed(Throwable why) {
        return new Outcome<>(null, null, why);
    }
}

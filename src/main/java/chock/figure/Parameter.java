package chock.figure;

/**
 * Something a figure asks for.
 *
 * @param name how it is written before the {@code =}
 * @param what what it is, with its unit or choices
 * @param example a value that works
 * @param required whether it must be given
 */
public record Parameter(String name, String what, String example, boolean required) {

    static Parameter asked(String name, String what, String example) {
        return new Parameter(name, what, example, true);
    }

    static Parameter ifKnown(String name, String what, String example) {
        return new Parameter(name, what, example, false);
    }
}

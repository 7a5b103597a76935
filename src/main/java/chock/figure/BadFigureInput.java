package chock.figure;

/** A figure cannot be computed from what was given. The message says what to write instead. */
public final class BadFigureInput extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public BadFigureInput(String message) {
        super(message);
    }
}

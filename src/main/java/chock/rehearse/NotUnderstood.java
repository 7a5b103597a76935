package chock.rehearse;

/** A step that has the form of a known one, and names something nobody knows. The message says what to write instead. */
final class NotUnderstood extends RuntimeException {
    private static final long serialVersionUID = 1L;

    NotUnderstood(String message) {
        super(message);
    }
}

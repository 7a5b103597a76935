package chock.quantity;

/** What was written is not a number with a unit. The message says what to write instead. */
public final class UnreadableQuantity extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public UnreadableQuantity(String text, String advice) {
        super("'" + (text.length() > 40 ? text.substring(0, 40) + "…" : text) + "': " + advice);
    }
}

package chock.signoff;

/** Why nothing was signed. */
public final class NotSigned extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NotSigned(String why) {
        super(why);
    }
}

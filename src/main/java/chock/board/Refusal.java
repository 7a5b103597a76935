package chock.board;

/** A request that is not done, with what to say of it. */
final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int status;
    private final long retryAfter;

    Refusal(int status, String says) {
        this(status, says, 0);
    }

    /** @param retryAfter seconds to wait, or 0 */
    Refusal(int status, String says, long retryAfter) {
        super(says, null, false, false);
        this.status = status;
        this.retryAfter = retryAfter;
    }

    int status() {
        return status;
    }

    long retryAfter() {
        return retryAfter;
    }

    static Refusal notFound() {
        return new Refusal(404, "There is no such page or machine.");
    }
}

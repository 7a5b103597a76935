package chock.rulebook;

import java.time.LocalDate;

/**
 * A limit nobody looked up again in time.
 *
 * @param due the last day on which it should have been
 */
public record Overdue(Limit limit, LocalDate due) {

    /** {@code GB brakes.pad-thickness}: the limit, with the territory that sets it or the house. */
    public String words() {
        return (limit.territory() == null ? limit.source().kind() == Source.Kind.HOUSE ? "house " : "" : limit.territory() + " ") + limit.id();
    }
}

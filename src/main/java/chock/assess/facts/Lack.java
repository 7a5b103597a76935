package chock.assess.facts;

import chock.assess.State;
import java.util.List;

/**
 * Something a check needs and has not got.
 *
 * @param required the check
 * @param state {@code MISSING} or {@code STALE}
 * @param says one sentence without the place
 * @param entries ids of the entries to be made again; empty when the want says what to do
 */
public record Lack(Required required, State state, String says, List<String> entries) {
    public Lack(Required required, State state, String says, String... entries) {
        this(required, state, says, List.of(entries));
    }

    // Equal ones have equal hashes; the sentence need not be hashed for that. One check may have thousands.
    @Override
    public int hashCode() {
        return 31 * (31 * required.hashCode() + state.ordinal()) + entries.hashCode();
    }
}

package chock.archive;

/**
 * What is counted over many records. Parts that do not matter for a count are null.
 *
 * @param what {@code record}, {@code refused}, {@code failed}, {@code verdict}, {@code change} (a finding that would be another one),
 *        {@code held} (a machine held at a gate by a check) or {@code held-at-all} (at any gate)
 * @param was the verdict or finding now
 * @param is what it would be
 * @param of make, year, kind and territory of the machine
 */
public record Counted(String what, String gate, String check, String was, String is, VerdictRow.Kind of) {
    static Counted plain(String what) {
        return new Counted(what, null, null, null, null, null);
    }
}

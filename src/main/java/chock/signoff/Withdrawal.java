package chock.signoff;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A rule book, or one check, that a lead found wrong and withdrew. A sign-off that rests on it ends.
 *
 * @param line in the ledger
 * @param at when
 * @param name of the lead
 * @param checks the check, first by the id it was named with, then by its other ids; empty for the whole rule book
 * @param ruleBook digest of the rule book, or null: of every rule book until then
 * @param known digests of the rule books known then, where none is named
 * @param alsoNotAsked true when it ends a sign-off as well whose machine was not asked the check
 * @param reason why, for whoever verifies a sign-off
 */
public record Withdrawal(int line, Instant at, String name, List<String> checks, String ruleBook, Set<String> known, boolean alsoNotAsked, String reason) {
    static final String KIND = "withdrawn";
    static final Pattern DIGEST = Pattern.compile("sha256:[0-9a-f]{64}");

    private static final String NOT_UNDERSTOOD = "it withdraws something this chock does not understand; when a later chock wrote it, read it with that one";
    private static final Set<String> KEYS = Set.of("line", "previous", "at", "kind", "seal", "by", "name", "checks", "ruleBook", "known", "alsoNotAsked", "reason");
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    /**
     * What a line says. A line that says more than is known here would withdraw less than it says, so it is not read.
     *
     * @throws IllegalArgumentException when it is not understood
     */
    static Withdrawal of(LedgerLine line) {
        List<String> checks = RestsOn.words(line.said().path("checks"));
        String ruleBook = line.said().has("ruleBook") ? line.text("ruleBook") : null;
        for (Iterator<String> keys = line.said().fieldNames(); keys.hasNext();) {
            if (!KEYS.contains(keys.next())) {
                throw new IllegalArgumentException(NOT_UNDERSTOOD);
            }
        }
        if (checks.isEmpty() && ruleBook == null || ruleBook != null && !DIGEST.matcher(ruleBook).matches()) {
            throw new IllegalArgumentException(NOT_UNDERSTOOD);
        }
        return new Withdrawal(line.number(), line.at(), line.text("name"), checks, ruleBook, new HashSet<>(RestsOn.words(line.said().path("known"))),
                line.said().path("alsoNotAsked").asBoolean(), line.text("reason"));
    }

    /** What stands in its line besides number, time and signature. */
    ObjectNode said(String by) {
        ObjectNode said = JsonNodeFactory.instance.objectNode().put("by", by).put("name", name).put("reason", reason);
        if (!checks.isEmpty()) {
            checks.forEach(said.putArray("checks")::add);
            said.put("alsoNotAsked", alsoNotAsked);
        }
        if (ruleBook == null) {
            known.stream().sorted().forEach(said.putArray("known")::add);
        } else {
            said.put("ruleBook", ruleBook);
        }
        return said;
    }

    /**
     * Whether what rests on this ends.
     *
     * @param signed line of the sign-off in the ledger; for one yet to be made, the next
     */
    boolean ends(RestsOn rests, int signed) {
        boolean book = ruleBook == null ? signed < line || known.contains(rests.ruleBook()) : ruleBook.equals(rests.ruleBook());
        return book && (checks.isEmpty() || checks.stream().anyMatch(check -> rests.asked().contains(check) || alsoNotAsked && rests.notAsked().contains(check)));
    }

    /** Who withdrew what, when and why; without a full stop. */
    public String words(ZoneId zone) {
        return name + " withdrew " + what() + " on " + at.atZone(zone).format(MINUTE) + " " + zone + ": " + reason.replaceFirst("\\.$", "");
    }

    /** What was withdrawn. */
    public String what() {
        return checks.isEmpty() ? "the rule book " + ruleBook
                : "the check " + checks.get(0) + " of " + (ruleBook == null ? "every rule book until then" : "rule book " + ruleBook) + (alsoNotAsked ? ", also where it was not asked," : "");
    }

    /** True when this withdraws all that the other would. */
    boolean covers(Withdrawal other) {
        return checks.equals(other.checks) && (alsoNotAsked || !other.alsoNotAsked)
                && (ruleBook == null ? other.ruleBook == null && known.containsAll(other.known) : ruleBook.equals(other.ruleBook));
    }
}

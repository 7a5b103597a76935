package chock.cli;

import chock.report.Json;
import chock.report.LedgerWords;
import chock.report.Page;
import chock.signoff.LedgerLine;
import chock.signoff.SignOff;
import chock.signoff.SignOffs;
import chock.signoff.TrustedKey;
import chock.signoff.Verification;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;

/** What is said about sign-offs, keys and the ledger. */
final class SignOffText {
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    private SignOffText() { }

    static String signed(SignOffs.Signed signed, boolean kept, boolean bold) {
        SignOff s = signed.signOff();
        Page page = new Page(bold).heading("SIGNED at " + s.gate() + " until " + moment(s.until(), s.clock()));
        page.put(2, "It ends at once when anybody works on the machine.");
        page.gap().put(0, s.record().id() + ": " + s.machine().words());
        page.put(0, "By " + s.signer().name() + " (" + s.signer().role() + ") on " + moment(s.judged(), s.clock()));
        s.notes().forEach(note -> page.put(2, "- ", note));
        if (!s.changedSince().isEmpty()) {
            page.put(2, "- ", "Written anew since it was last signed: " + String.join(", ", s.changedSince()) + ".");
        }
        page.gap().put(0, "Sign-off: ", signed.file().toString());
        page.put(0, "Ledger:   ", "line " + signed.line());
        if (!kept) {
            page.put(0, "Rule book not kept: a later version of chock cannot judge this record again by it. A lead can keep it with 'chock rules keep'.");
        }
        return page.gap().put(0, s.deferral()).toString();
    }

    static String verified(Verification found, boolean bold) {
        String head = !found.holds() ? "DOES NOT HOLD: " : found.complete() ? "HOLDS: " : "HOLDS as far as it was looked at: ";
        Page page = new Page(bold).heading(head + found.title()).gap();
        found.things().forEach(t -> page.put(2, switch (t.holds()) {
            case YES -> "= ";
            case NO -> "X ";
            case NOT_LOOKED_AT -> "_ ";
        }, t.thing() + ": " + t.says()));
        return page.toString();
    }

    static String verifiedJson(Verification found) {
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("holds", found.holds()).put("about", found.title());
        ArrayNode things = node.putArray("things");
        found.things().forEach(t -> things.addObject().put("thing", t.thing()).put("holds", t.holds().name().toLowerCase(Locale.ROOT).replace('_', '-')).put("says", t.says()));
        return Json.pretty(node);
    }

    static String keys(List<TrustedKey> keys, ZoneId zone, Instant now, boolean bold) {
        Page page = new Page(bold);
        if (keys.isEmpty()) {
            page.put(0, "No key is trusted yet.");
        }
        for (TrustedKey key : keys) {
            page.heading(key.name() + " (" + key.role().word() + ")").put(2, key.id());
            page.put(2, key.isRevoked() ? "REVOKED on " + moment(key.revoked(), zone) + ": " + key.reason()
                    : (now.isAfter(key.until()) ? "RUN OUT; good from " : now.isBefore(key.from()) ? "NOT YET; good from " : "Good from ") + moment(key.from(), zone) + " until " + moment(key.until(), zone));
        }
        return page.toString();
    }

    static String ledger(List<LedgerLine> lines, ZoneId zone, boolean bold) {
        Page page = new Page(bold);
        for (LedgerLine line : lines) {
            page.put(0, String.format(Locale.ROOT, "%4d  %s  ", line.number(), line.at().atZone(zone).format(MINUTE)), LedgerWords.says(line));
        }
        return page.toString();
    }

    static String moment(Instant instant, ZoneId zone) {
        return instant.atZone(zone).format(MINUTE) + " " + zone;
    }
}

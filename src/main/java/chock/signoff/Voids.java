package chock.signoff;

import chock.record.JobRecord;
import chock.record.Vocabulary;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What voids a sign-off that was good when it was made, besides time. */
final class Voids {
    private Voids() { }

    /** The sign-offs of a record that entries written since void and the ledger does not know it yet: why, by digest. */
    static Map<String, String> of(JobRecord record, History history, Vocabulary words) {
        Map<String, String> voids = new LinkedHashMap<>();
        for (History.Signing signing : history.signings()) {
            if (signing.record().equals(record.id()) && history.voided(signing.digest()).isEmpty()) {
                since(record, signing, words).map(Critical.Noted::words).ifPresent(why -> voids.put(signing.digest(), why));
            }
        }
        return voids;
    }

    /** The first entry about a critical place that was not there when this was signed. */
    static Optional<Critical.Noted> since(JobRecord record, History.Signing signing, Vocabulary words) {
        return Critical.touched(later(record, signing.items()), signing.criticalPoints(), words);
    }

    /** The entries that were not there when these items were. */
    static List<Critical.Noted> later(JobRecord record, Map<String, String> items) {
        return record.entries().stream().filter(entry -> !items.containsKey("entry " + entry.id())).map(Critical.Noted::of).toList();
    }

    static ObjectNode line(String digest, String record, String why) {
        return JsonNodeFactory.instance.objectNode().put("signOff", digest).put("record", record).put("why", why);
    }
}

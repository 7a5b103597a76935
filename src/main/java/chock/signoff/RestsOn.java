package chock.signoff;

import chock.assess.Assessment;
import chock.assess.GateVerdict;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * What a release rests on.
 *
 * @param ruleBook digest of the rule book that judged it
 * @param asked ids of the checks that were asked and met
 * @param notAsked ids of the checks of its gate that do not apply to its machine
 */
record RestsOn(String ruleBook, List<String> asked, List<String> notAsked) {

    static RestsOn of(SignOff signOff) {
        return new RestsOn(signOff.ruleBook().digest(), signOff.findings().stream().map(SignOff.Found::check).distinct().toList(), List.copyOf(signOff.notAsked()));
    }

    static RestsOn of(Assessment assessment, GateVerdict verdict) {
        return new RestsOn(assessment.ruleBookDigest(), SignOffs.found(verdict).stream().map(SignOff.Found::check).distinct().toList(), SignOffs.notAsked(verdict));
    }

    /** As the line of a sign-off says; null when an earlier program wrote the line, which said nothing of it. */
    static RestsOn of(LedgerLine signed) {
        return signed.said().has("ruleBook") ? new RestsOn(signed.text("ruleBook"), words(signed.said().path("asked")), words(signed.said().path("notAsked"))) : null;
    }

    /** The texts in a list of JSON. */
    static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(word -> words.add(word.asText()));
        return List.copyOf(words);
    }

    void writeTo(ObjectNode line) {
        line.put("ruleBook", ruleBook);
        asked.forEach(line.putArray("asked")::add);
        notAsked.forEach(line.putArray("notAsked")::add);
    }
}

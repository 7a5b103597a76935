package chock.assess;

import chock.record.JobRecord;
import chock.rulebook.RideSheet;
import java.time.Instant;
import java.util.List;

/**
 * What the rule book makes of a job record at one moment.
 *
 * @param record the record judged
 * @param asOf the moment
 * @param ruleBookVersion version of the rule book
 * @param ruleBookDigest {@code sha256:…} over all of it
 * @param localCode the local code in force, in words, or that there is none
 * @param gates the gates judged, in the order asked
 * @param unasked ids of entries that no check of these gates asked for
 * @param claims what is claimed of the machine, weighed
 * @param ride the road test as the rule book writes it down, or null when it does not
 */
public record Assessment(JobRecord record, Instant asOf, String ruleBookVersion, String ruleBookDigest, String localCode,
                         List<GateVerdict> gates, List<String> unasked, List<Claims.Weighed> claims, RideSheet ride) {

    Assessment with(List<GateVerdict> other) {
        return new Assessment(record, asOf, ruleBookVersion, ruleBookDigest, localCode, other, unasked, claims, ride);
    }

    public boolean allReleased() {
        return !gates.isEmpty() && gates.stream().allMatch(GateVerdict::released);
    }
}

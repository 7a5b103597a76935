package chock.assess;

import chock.record.JobRecord;
import chock.rulebook.HouseBook;
import chock.rulebook.Overdue;
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
 * @param recordedLaw that the law of the place is not in the rule book and was taken from the record, in words, or null; stands above
 *     every verdict
 * @param gates the gates judged, in the order asked
 * @param unasked ids of entries that no check of these gates asked for
 * @param disclosures what has to be told besides the findings
 * @param claims what is claimed of the machine, weighed
 * @param ride the road test as the rule book writes it down, or null when it does not
 * @param house the house in force, or null
 * @param overdue limits these verdicts rest on that were due to be looked up again
 */
public record Assessment(JobRecord record, Instant asOf, String ruleBookVersion, String ruleBookDigest, String localCode, String recordedLaw,
                         List<GateVerdict> gates, List<String> unasked, Disclosures disclosures, List<Claims.Weighed> claims, RideSheet ride,
                         HouseBook house, List<Overdue> overdue) {

    /** Stands beside every verdict that is shown. */
    public static final String NOTICE = "This is a working aid. Local law and the licensed inspector or technician decide.";

    Assessment with(List<GateVerdict> other) {
        return new Assessment(record, asOf, ruleBookVersion, ruleBookDigest, localCode, recordedLaw, other, unasked, disclosures, claims, ride, house, overdue);
    }

    public boolean allReleased() {
        return !gates.isEmpty() && gates.stream().allMatch(GateVerdict::released);
    }
}

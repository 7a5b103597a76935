package chock.report;

import chock.assess.Assessment;
import chock.record.JobRecord;
import chock.record.Machine;

/**
 * What stands at the head and the foot of every paper.
 *
 * @param record id of the record
 * @param name marque and model
 * @param frame frame number
 * @param engine engine number
 * @param judged the moment of judgement
 * @param ruleBook version and digest
 */
public record Heading(Told record, Told workshop, Told name, Told frame, Told engine, Told judged, Told localCode, Told ruleBook) {

    static Heading of(Assessment assessment) {
        JobRecord record = assessment.record();
        Machine machine = record.machine();
        return new Heading(Told.field("record", record.id()), Told.field("workshop", record.workshop()),
                new Told(machine.marque() + " " + machine.model(), java.util.List.of("machine/marque", "machine/model")),
                Told.field("machine/frame-number", machine.frameNumber()), Told.field("machine/engine-number", machine.engineNumber()),
                Told.of(Wording.day(assessment.asOf(), record.zone()), "as-of"), Told.of(assessment.localCode(), "territory"),
                Told.of(assessment.ruleBookVersion() + ", " + assessment.ruleBookDigest(), "rule-book"));
    }

    /** On every paper. */
    public String notice() {
        return Wording.NOTICE;
    }
}

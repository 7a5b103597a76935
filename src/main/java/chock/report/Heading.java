package chock.report;

import chock.assess.Assessment;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.rulebook.RuleBook;
import chock.signoff.SignOff;
import java.time.Instant;
import java.util.List;

/**
 * What stands at the head and the foot of every paper.
 *
 * @param name marque and model
 * @param judged the moment of judgement
 * @param ruleBook version and digest
 * @param law that the law of the place was taken from the record and not checked, or null; stands above every verdict
 */
public record Heading(Told record, Told workshop, Told name, Told frame, Told engine, Told judged, Told ruleBook, Told law) {

    static Heading of(Assessment assessment) {
        return of(assessment.record(), assessment.asOf(), assessment.ruleBookVersion(), assessment.ruleBookDigest(), assessment.recordedLaw());
    }

    static Heading of(JobRecord record, Instant asOf, RuleBook book) {
        return of(record, asOf, book.version(), book.digest(), null);
    }

    private static Heading of(JobRecord record, Instant asOf, String version, String digest, String law) {
        Machine machine = record.machine();
        return new Heading(Told.field("record/id", record.id()), Told.field("record/workshop", record.workshop()),
                new Told(machine.marque() + " " + machine.model(), List.of("machine/marque", "machine/model")),
                Told.field("machine/frame-number", machine.frameNumber()), Told.field("machine/engine-number", machine.engineNumber()),
                Told.of(Wording.dayAndTime(asOf, record.zone()), "judged/as-of"), Told.of("version " + version + ", " + digest, "judged/rule-book"), law == null ? null : Told.of(law, "record/local-law"));
    }

    static Heading of(SignOff s) {
        return new Heading(Told.of(s.record().id(), "sign-off/record"), Told.of(s.record().workshop(), "sign-off/record"),
                Told.of(s.machine().marque() + " " + s.machine().model(), "sign-off/machine"), Told.of(s.machine().frameNumber(), "sign-off/machine"),
                Told.of(s.machine().engineNumber(), "sign-off/machine"), Told.of(Wording.dayAndTime(s.judged(), s.clock()), "sign-off/asOf"),
                Told.of("version " + s.ruleBook().version() + ", " + s.ruleBook().digest(), "sign-off/ruleBook"),
                s.recordedLaw() == null ? null : Told.of(s.recordedLaw(), "sign-off/recordedLaw"));
    }

    /** On every paper. */
    public String notice() {
        return Wording.NOTICE;
    }
}

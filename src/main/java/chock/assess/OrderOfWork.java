package chock.assess;

import chock.record.Gate;
import chock.record.JobRecord;
import chock.rulebook.Applied;
import chock.rulebook.Card;
import chock.rulebook.Look;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What remains to be done for one gate, in an order in which no later step undoes what an earlier one proved.
 *
 * @param record the record
 * @param gate the gate it is for
 * @param asOf the moment it was worked out for
 * @param steps in order; empty when the gate is released or the order cannot be found
 * @param disclosures what has to be told besides
 * @param cycle the steps that undo each other in a ring, which is a fault of the rule book; empty when there is none
 */
public record OrderOfWork(JobRecord record, Gate gate, Instant asOf, List<Step> steps, Disclosures disclosures, List<String> cycle) {

    /** What kind of step it is. */
    public enum Kind {
        /** Written into the record, or settled away from the machine. */ SETTLE,
        /** Any work that cures a fault. */ PUT_RIGHT,
        /** What was taken off or apart goes together again. */ PUT_TOGETHER,
        /** Work that is itself asked for. */ DO,
        MEASURE, TRY, LOOK, ASK;

        /** Whether it is work at the machine; else something is read, or settled elsewhere. */
        public boolean isWork() {
            return this == PUT_RIGHT || this == PUT_TOGETHER || this == DO;
        }

        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /**
     * One answer to be written into the record. Those of one look are one step: they have its number.
     *
     * @param number of the step, from 1
     * @param point where
     * @param what the aspect looked at or the work done; null when any work there will do, or nothing is written as an entry
     * @param doing what to do, a sentence without the place and without what to write
     * @param writing what to write when it is done, or null where the kind of step says it
     * @param namesDocument whether the answer has to name its document
     * @param checks the checks it answers, in order of id
     * @param because what it clears, as the findings say it; empty for what is merely not there yet
     * @param caution where people get hurt, or null
     * @param needs what must be allowed before
     * @param again whether it is proven now and a step before this one undoes it
     * @param corrects ids of entries it replaces where it does not bear them out
     * @param notBy name of the person whose work it looks at, empty for whoever does an earlier step, or null when anybody may do it
     * @param besides number of the step a second person can be at meanwhile, or null
     * @param look what answers it together with the steps of the same number, or null where it is a step by itself
     * @param limit the limit a reading is held against, or null where it has none of its own
     */
    public record Step(int number, Kind kind, String point, String what, String doing, String writing, boolean namesDocument, List<String> checks, List<String> because,
                       String caution, Card.Needs needs, boolean again, List<String> corrects, String notBy, Integer besides, Look look, Applied limit) {

        /** Where, what to do and what to write. */
        public String says() {
            return Points.title(point) + ": " + instruction();
        }

        /** What to do and what to write, for a reader who sees the place already. */
        public String instruction() {
            return StepWords.together(this);
        }
    }

    /** The answers step by step: several in a list are one look. */
    public List<List<Step>> together() {
        Map<Integer, List<Step>> together = new LinkedHashMap<>();
        steps.forEach(step -> together.computeIfAbsent(step.number(), number -> new ArrayList<>()).add(step));
        return List.copyOf(together.values());
    }

    /** What remains for one gate. The same record, rule book and moment give the same order. */
    public static OrderOfWork of(JobRecord record, RuleBook book, Gate gate, Instant asOf) {
        return new Planner(record, book, gate, asOf).plan();
    }
}

package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Current;
import chock.assess.facts.Judgement;
import chock.assess.facts.Lack;
import chock.assess.facts.Note;
import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.assess.facts.SetAside;
import chock.assess.facts.Standing;
import chock.assess.facts.Wanted;
import chock.bench.MixedMill;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Checks that nothing in a record touches are settled without the rules, to what the rules come to. */
class NothingTouchedTest {
    private static final List<Class<?>> CONCLUSIONS = List.of(Wanted.class, Standing.class, Current.class, Judgement.class,
            Outcome.class, Lack.class, Note.class, SetAside.class);
    /**
     * The general rules that {@link Untouched} answers for, of a reading that is the only one about its thing. A rule that
     * is not here may say something of such a reading: then say in Untouched which readings it leaves alone, and add it.
     */
    private static final Map<String, String> ANSWERED = new TreeMap<>(Map.of(
            "it comes to the same", "wanted stands current-newest judged nothing-recorded",
            "asked by the description, and not by entries", "asked-with asked-of-every-machine no-limit nothing-written",
            "work, and parts opened for a reading", "set-aside-undone set-aside-undone-by-implied-work set-aside-opened-for-a-reading left-off",
            "only of a fault", "set-aside-mended set-aside-mended-and-found-good set-aside-examined set-aside-examined-alone examined-leaves-open set-aside-settled "
                    + "set-aside-lifted lifted-by-two-looks current-fault known-fault fault-closes derived-ended noted-defect",
            "only with a correction", "set-aside-corrected set-aside-taken-back lifted-by-another lifted-at-once open-reason",
            "only at a place where nobody asks", "misplaced misplaced-fault set-aside-misplaced misplaced-unclear",
            "age, instrument, strength and sense of the reading", "set-aside-too-old set-aside-out-of-calibration set-aside-instrument-found-out "
                    + "set-aside-instrument-not-named set-aside-too-weak set-aside-looked-since set-aside-impossible impossible-reading impossible "
                    + "impossible-besides asked-again instrument-unknown instrument-not-named open-note sunset-unknown exception-proven exception-met",
            "only of several readings, or worked out by a rule of the check", "spent-reading current-spent taken-together current-together "
                    + "current-spent-together read-earlier current-earlier found-earlier found-earlier-mended found-earlier-examined found-earlier-examined-alone "
                    + "known-from-earlier not-together derived derived-fault-all-the-same differing disagreement",
            "only where something is set aside", "proven-once nothing-that-counts"));

    @Test
    void everyGeneralRuleIsAnsweredFor() {
        Set<String> answered = ANSWERED.values().stream().flatMap(names -> List.of(names.split(" ")).stream())
                .map(name -> "evidence." + name).collect(Collectors.toSet());
        assertThat(Examples.BOOK.ruleNames().stream().filter(name -> name.startsWith("evidence."))).containsExactlyInAnyOrderElementsOf(answered);
        assertThat(Examples.BOOK.ruleNames().stream().filter(name -> name.startsWith("outcome.")))
                .containsExactly("outcome.doubt", "outcome.fault", "outcome.met", "outcome.missing", "outcome.not-evaluated", "outcome.stale");
    }

    @Test
    void itComesToWhatTheRulesComeTo() throws IOException {
        MixedMill mill = new MixedMill(Examples.BOOK, 11);
        int untouched = 0;
        for (int i = 0; i < 3 * MixedMill.DESCRIPTIONS; i++) {
            JobRecord record = read(mill.next(i % 3 == 0 ? 120 : 60));
            Conclusions quick = Assessor.conclude(record, Examples.BOOK, Examples.DAY);
            assertThat(told(quick)).as("record %d", i).isEqualTo(told(byTheRules(record, Examples.DAY)));
            untouched += quick.untouched();
        }
        assertThat(untouched).as("checks settled without the rules").isGreaterThan(15 * 3 * MixedMill.DESCRIPTIONS);
    }

    @Test
    void randomRecordsComeToTheSame() {
        RandomRecords.forSeeds(60, seed -> {
            JobRecord record = new RandomRecords(seed).next();
            assertThat(told(Assessor.conclude(record, Examples.BOOK, Examples.DAY))).isEqualTo(told(byTheRules(record, Examples.DAY)));
        });
    }

    /** What was settled is given to the rules when time touches it. */
    @Test
    void itComesToTheSameAtALaterMoment() throws IOException {
        MixedMill mill = new MixedMill(Examples.BOOK, 13);
        for (int i = 0; i < MixedMill.DESCRIPTIONS / 2; i++) {
            JobRecord record = read(mill.next());
            try (Reasoning reasoning = Reasoning.of(record, Examples.BOOK, Examples.DAY)) {
                int before = reasoning.concluded().untouched();
                for (long days : new long[] {1, 40, 400}) {
                    Instant later = Examples.DAY.plus(Duration.ofDays(days));
                    assertThat(told(reasoning.at(later))).as("record %d, %d days later", i, days).isEqualTo(told(byTheRules(record, later)));
                }
                assertThat(reasoning.concluded().untouched()).as("after a year").isLessThan(before);
            }
        }
    }

    @Test
    void onTrialNothingIsSettledWithoutTheRules() throws IOException {
        JobRecord record = Examples.read(Examples.RELEASED.get(0));
        RuleBook trial = Examples.BOOK.without("no such rule");
        assertThat(Assessor.conclude(record, Examples.BOOK, Examples.DAY).untouched()).isPositive();
        assertThat(Assessor.conclude(record, trial, Examples.DAY).untouched()).isZero();
        assertThat(byTheRules(record, Examples.DAY).untouched()).isZero();
    }

    private static Conclusions byTheRules(JobRecord record, Instant asOf) {
        return Assessor.conclude(record, Examples.BOOK, asOf, new Witness());
    }

    private static JobRecord read(String json) {
        return RecordReader.read("random", json.getBytes(StandardCharsets.UTF_8), Examples.BOOK.vocabulary(), Examples.DAY);
    }

    private static Map<String, Set<Object>> told(Conclusions concluded) {
        Map<String, Set<Object>> told = new TreeMap<>();
        for (String check : Examples.BOOK.cards().keySet()) {
            for (Required required : concluded.required(check)) {
                told.put(required.toString(), CONCLUSIONS.stream().flatMap(kind -> concluded.of(required, kind).stream())
                        .collect(Collectors.toCollection(HashSet::new)));
            }
        }
        return told;
    }
}

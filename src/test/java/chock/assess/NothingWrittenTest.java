package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Closed;
import chock.assess.facts.Judgement;
import chock.assess.facts.Lack;
import chock.assess.facts.Note;
import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.assess.facts.SetAside;
import chock.assess.facts.Wanted;
import chock.bench.MixedMill;
import chock.record.JobRecord;
import chock.record.RecordReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Checks of which nothing was written are settled in one step, and what is asked is worked out once for a description.
 * Both come to what the rules come to when they reason about every check of every record.
 */
class NothingWrittenTest {
    private static final List<Class<?>> CONCLUSIONS = List.of(Wanted.class, Lack.class, Judgement.class, Outcome.class,
            Note.class, Closed.class, SetAside.class);

    @Test
    void oneStepComesToWhatTheRulesComeTo() throws IOException {
        MixedMill mill = new MixedMill(Examples.BOOK, 7);
        int settledAtOnce = 0;
        for (int i = 0; i < 2 * MixedMill.DESCRIPTIONS; i++) {
            JobRecord record = read(mill.next(i % 4 == 0 ? 5 : 60));
            Conclusions quick = Assessor.conclude(record, Examples.BOOK, Examples.DAY);
            Conclusions whole = Assessor.conclude(record, Examples.BOOK, Examples.DAY, new Witness());
            assertThat(told(quick)).as("record %d", i).isEqualTo(told(whole));
            settledAtOnce += quick.settledAtOnce();
            assertThat(whole.settledAtOnce()).isZero();
        }
        assertThat(settledAtOnce).as("checks settled at once").isGreaterThan(50 * 2 * MixedMill.DESCRIPTIONS);
    }

    @Test
    void aRecordWithoutEntriesIsJudgedTheSame() throws IOException {
        for (String name : Examples.RELEASED) {
            JobRecord empty = Examples.read(name).withEntries(List.of());
            assertThat(told(Assessor.conclude(empty, Examples.BOOK, Examples.DAY)))
                    .isEqualTo(told(Assessor.conclude(empty, Examples.BOOK, Examples.DAY, new Witness())));
        }
    }

    /** What is worked out once for a description is never told with the names of another record's people. */
    @Test
    void whoReadALooserFigureIsNamedAsTheirOwnRecordNamesThem() throws IOException {
        for (String lead : List.of("Ida Marrow", "Ruth Penhale")) {
            String text = new String(Examples.bytes("lark-released.yaml"), StandardCharsets.UTF_8).replace("name: Ida Marrow", "name: " + lead)
                    .replace("at-most: 0.3 mm, document: Lark 250 workshop manual, page: 61, by: ida}", "at-most: 0.45 mm, document: Lark 250 workshop manual, page: 61, by: ida, seconded-by: tom}");
            JobRecord record = RecordReader.read("r.yaml", text.getBytes(StandardCharsets.UTF_8), Examples.BOOK.vocabulary(), Examples.DAY);
            assertThat(Assessor.assess(record, Examples.BOOK, record.seeks(), Examples.DAY).gates().get(0).findings()).filteredOn(finding -> finding.check().equals("brakes.disc-runout"))
                    .extracting(finding -> String.valueOf(finding.limit())).singleElement().asString().contains("looser on the word of " + lead + " and Tom Fell");
        }
    }

    private static JobRecord read(String json) {
        return RecordReader.read("random", json.getBytes(StandardCharsets.UTF_8),
                Examples.BOOK.vocabulary(), Examples.DAY);
    }

    private static Map<String, Set<Object>> told(Conclusions concluded) {
        Map<String, Set<Object>> told = new TreeMap<>();
        for (String check : Examples.BOOK.cards().keySet()) {
            for (Required required : concluded.required(check)) {
                Set<Object> all = CONCLUSIONS.stream().flatMap(kind -> concluded.of(required, kind).stream())
                        .collect(Collectors.toCollection(HashSet::new));
                assertThat(told.put(required.toString(), all)).as("asked twice: %s", required).isNull();
            }
        }
        return told;
    }
}

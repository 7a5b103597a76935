package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Deed;
import chock.record.DescribedTimes;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.Value;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every bad answer at every place of the vocabulary, written into a released record, closes exactly the gates that a reader
 * of the catalogue and of the table of dangers, which knows nothing of the rules, works out.
 *
 * <p>Answers to different questions bear on one another in no rule of the evidence. So one judgement takes one bad answer to
 * each question at one place, and the finding at each gate names the entries it rests on: that settles every answer by
 * itself. Every fourth place is tried in every build, every place with {@code -Dchock.whole=true}. A seeded share is judged
 * one answer at a time besides, in every released example: 40 in each in the build, and as many as {@code -Dchock.unread=}
 * says in {@code .ci/run}.
 */
@Tag("slow")
class NothingBadGoesUnreadTest {
    private static final int EVERY = Boolean.getBoolean("chock.whole") ? 1 : 4;
    private static final int ONE_BY_ONE = Integer.getInteger("chock.unread", 40);
    private static final List<Gate> GATES = List.of(Gate.values());
    private static Catalogue catalogue;

    /** One bad answer at one place. */
    private record Bad(String point, String aspect, String answer) {
        Entry entry(String id, JobRecord record) {
            Moment at = new Moment(LocalDate.of(2026, 11, 25), LocalTime.of(11, 59), record.zone());
            return new Entry(id, at, record.people().get(0).id(), Deed.SEEN, point, aspect, new Value.Answer(answer), null, null, null, null, 0);
        }
    }

    /** A record with what is asked of its machine. */
    private record Base(JobRecord record, List<Catalogue.Ask> asked) {
        static Base of(String name) throws IOException {
            JobRecord record = Examples.read(name);
            assertThat(Examples.judge(record).allReleased()).isTrue();
            Set<Catalogue.Ask> asked = Collections.newSetFromMap(new java.util.LinkedHashMap<>());
            Assessor.assess(record, Examples.BOOK, GATES, Examples.DAY).gates().forEach(gate -> gate.findings().forEach(finding -> finding.places()
                    .forEach(place -> asked.addAll(catalogue.asks(finding.check(), place.point())))));
            assertThat(asked).hasSizeGreaterThan(50);
            return new Base(record, List.copyOf(asked));
        }

        Assessment with(List<Entry> more) {
            List<Entry> all = new ArrayList<>(record.entries());
            all.addAll(more);
            return Assessor.assess(RandomRecords.with(record, all), Examples.BOOK, GATES, Examples.DAY);
        }

        /** The checks and places at which this must be a fault. */
        Set<String> expected(Bad bad) {
            Set<String> faults = new TreeSet<>();
            Catalogue.readBy(asked, bad.point(), bad.aspect()).forEach(ask -> faults.add(ask.check() + " at " + ask.at()));
            return faults.isEmpty() ? Set.of("record.open-defects at machine") : faults;
        }

        /** The gates that it closes; surely, or unless something else in the record keeps them open. */
        Set<Gate> closed(Bad bad, boolean surely) {
            Set<Gate> gates = EnumSet.noneOf(Gate.class);
            // A good answer to the same cannot be right as well, with no work between them.
            if (Catalogue.readBy(asked, bad.point(), bad.aspect()).stream().filter(ask -> !Examples.BOOK.library().ofTheDay().has(ask.point()))
                    .anyMatch(ask -> record.entries().stream().anyMatch(e -> e.point().equals(ask.point()) && e.what().equals(ask.aspect())))) {
                gates.addAll(catalogue.gatesOf("record.agreement"));
            }
            // An entry about a part that the machine does not have by its description holds it at every gate.
            if (new DescribedTimes(record.machine(), List.of(), Examples.BOOK.vocabulary().fields(), record.form()).contradiction(bad.entry("bad", record)).isPresent()) {
                gates.addAll(catalogue.gatesOf("record.description"));
            }
            for (String fault : expected(bad)) {
                String check = fault.replaceFirst(" at .*", "");
                if (check.equals("record.open-defects")) {
                    gates.addAll(catalogue.closedUnread(bad.aspect()));
                }
                gates.addAll(surely ? catalogue.closedBy(check, bad.answer()) : catalogue.mayBeClosedBy(check, bad.answer()));
            }
            return gates;
        }
    }

    @BeforeAll
    static void readTheCatalogue() throws IOException {
        catalogue = Catalogue.read();
    }

    private static List<Bad> everything() {
        List<Bad> all = new ArrayList<>();
        catalogue.badAnswers().forEach((aspect, answers) -> answers.forEach(answer -> Examples.BOOK.vocabulary().points().forEach(point -> all.add(new Bad(point, aspect, answer)))));
        return all;
    }

    /** Where an entry shows as a fault, at one gate. */
    private static Set<String> faults(GateVerdict gate, String id) {
        Set<String> faults = new TreeSet<>();
        gate.findings().forEach(finding -> finding.places().stream().filter(place -> place.state() == State.FAULT && place.evidence().contains(id)).forEach(place -> faults.add(finding.check() + " at " + place.point())));
        return faults;
    }

    private static void hold(Base base, Bad bad, String id, Assessment judged) {
        Set<String> expected = base.expected(bad);
        for (GateVerdict gate : judged.gates()) {
            Set<String> here = new TreeSet<>(expected);
            here.removeIf(fault -> !catalogue.gatesOf(fault.replaceFirst(" at .*", "")).contains(gate.gate()));
            assertThat(faults(gate, id)).as(bad + " at " + gate.gate()).isEqualTo(here);
            if (!here.isEmpty()) {
                assertThat(gate.released()).as(bad + " at " + gate.gate()).isFalse();
            }
        }
    }

    @Test
    void theCatalogueIsReadWhole() {
        assertThat(catalogue.badAnswers().keySet()).hasSizeGreaterThan(200);
        assertThat(Examples.BOOK.vocabulary().points()).containsAll(catalogue.places()).hasSizeGreaterThan(150);
        assertThat(everything()).hasSizeGreaterThan(50_000);
    }

    /** Whatever is not released by a bad answer is held by it and by nothing else: the same record without it is released. */
    @ParameterizedTest
    @ValueSource(strings = {"lark-released.yaml", "merle-released.yaml", "harrow-prewar-single.yaml", "lark-on-show.yaml", "lark-non-runner.yaml"})
    void oneBadAnswerClosesWhatItMustAndNothingElse(String name) throws IOException {
        Base base = Base.of(name);
        List<Bad> tried = everything();
        Collections.shuffle(tried, new Random(54));
        List<Bad> some = tried.subList(0, ONE_BY_ONE);
        AtomicInteger held = new AtomicInteger();
        AtomicInteger free = new AtomicInteger();
        AtomicInteger perhaps = new AtomicInteger();
        some.parallelStream().forEach(bad -> {
            Assessment judged = base.with(List.of(bad.entry("bad", base.record())));
            hold(base, bad, "bad", judged);
            for (GateVerdict gate : judged.gates()) {
                if (base.record().seeks().contains(gate.gate())) {
                    if (base.closed(bad, true).contains(gate.gate())) {
                        assertThat(gate.released()).as(bad + " at " + gate.gate()).isFalse();
                        held.incrementAndGet();
                    } else if (base.closed(bad, false).contains(gate.gate())) {
                        perhaps.incrementAndGet();
                    } else {
                        assertThat(gate.released()).as(bad + " at " + gate.gate()).isTrue();
                        free.incrementAndGet();
                    }
                }
            }
        });
        assertThat(held.get() + free.get() + perhaps.get()).isEqualTo(ONE_BY_ONE * base.record().seeks().size());
        assertThat(perhaps.get()).isLessThanOrEqualTo(held.get());
    }

    @Test
    void everyBadAnswerAtEveryPlaceIsReadByWhatIsNearest() throws IOException {
        Base base = Base.of("lark-released.yaml");
        Map<String, Set<String>> bad = catalogue.badAnswers();
        int most = bad.values().stream().mapToInt(Set::size).max().orElseThrow();
        AtomicInteger tried = new AtomicInteger();
        List<String> all = List.copyOf(Examples.BOOK.vocabulary().points());
        List<String> points = IntStream.range(0, all.size()).filter(i -> i % EVERY == 0).mapToObj(all::get).toList();
        points.parallelStream().forEach(point -> {
            for (int turn = 0; turn < most; turn++) {
                List<Bad> together = new ArrayList<>();
                for (Map.Entry<String, Set<String>> answers : bad.entrySet()) {
                    List<String> sorted = List.copyOf(answers.getValue());
                    if (turn < sorted.size()) {
                        together.add(new Bad(point, answers.getKey(), sorted.get(turn)));
                    }
                }
                List<Entry> entries = new ArrayList<>();
                for (int i = 0; i < together.size(); i++) {
                    entries.add(together.get(i).entry("bad" + i, base.record()));
                }
                Assessment judged = base.with(entries);
                for (int i = 0; i < together.size(); i++) {
                    hold(base, together.get(i), "bad" + i, judged);
                    tried.incrementAndGet();
                }
            }
        });
        assertThat(tried.get()).isEqualTo((int) everything().stream().filter(one -> points.contains(one.point())).count());
    }
}

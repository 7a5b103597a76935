package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Differing;
import chock.assess.facts.Evidence;
import chock.assess.facts.Required;
import chock.assess.facts.Standing;
import chock.assess.facts.Wanted;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Which entries about one thing cannot both be right: the quick way held against every pair, and a record with a thousand of them. */
class DifferingTest {
    private static final Path OUTFIT = Path.of("src/test/resources/mutated/carrier-outfit.yaml");
    private static final Instant AS_OF = Instant.parse("2026-12-15T12:00:00Z");
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");
    private static final LocalDateTime FIRST = LocalDateTime.of(2026, 12, 8, 15, 0);
    /** Every fifth pair of entries has work between. */
    private static final BiPredicate<Standing, Standing> WORK_BETWEEN = (one, other) -> Math.floorMod((one.evidence().id() + other.evidence().id()).hashCode(), 5) == 0;

    @Test
    void theQuickWayFindsWhatEveryPairShows() throws IOException {
        differs("tyres.rim-runout-lateral", "front-wheel/rim", "measured: runout-lateral", random -> ", is: " + (6 + random.nextInt(3)) / 10.0 + " mm" + (random.nextBoolean() ? "" : " ± 0.1 mm") + ", with: dial-indicator");
        differs("tyres.rim-runout-lateral", "front-wheel/rim", "measured: runout-lateral", random -> ", is: " + (random.nextInt(5) > 0 ? random.nextBoolean() ? "0.7 mm" : "0.07 cm" : "0.09 cm") + ", with: dial-indicator");
        differs("tyres.rim-condition", "front-wheel/rim", "seen: rim-condition", random -> ", is: " + (random.nextInt(6) > 0 ? "sound" : "dented"));
        differs("tyres.speed-symbol", "front-wheel/tyre", "seen: service-description", random -> ", is: \"" + (random.nextInt(6) > 0 ? "3.25-18 65H" : "3.25 - 18 65P") + "\"");
        differs("fuel.hose-age", "fuel/hose", "seen: date-mark", random -> ", is: " + (random.nextInt(5) > 0 ? "2026-02" : random.nextBoolean() ? "2026" : "2025-07"));
        differs("roadtest.route", "ride", "seen: route", random -> ", is: agreed");
    }

    /** Holds many small heaps of entries against each pair in them. */
    private static void differs(String check, String place, String what, java.util.function.Function<Random, String> is) throws IOException {
        Random random = new Random(20_261_130L);
        int differing = 0;
        int alike = 0;
        for (int round = 0; round < 60; round++) {
            int count = 2 + random.nextInt(9);
            List<Integer> minutes = IntStream.range(0, count).map(i -> random.nextInt(6)).boxed().toList();
            JobRecord record = record(count, i -> "at: " + (minutes.get(i) == 5 ? "2026-12-08" : MINUTE.format(FIRST.plusMinutes(minutes.get(i)))) + ", by: ida, point: " + place + ", " + what + is.apply(random));
            List<Standing> standing = standing(record, new Required(check, place), what.substring(what.indexOf(' ') + 1));
            assertThat(standing).hasSizeGreaterThanOrEqualTo(count);
            Set<Set<String>> every = new HashSet<>();
            for (Standing one : standing) {
                for (Standing other : standing) {
                    if (other.evidence().newerThan(one.evidence()) && (other.disagreesWith(one) || other.contradicts(one)) && !WORK_BETWEEN.test(one, other)) {
                        every.add(ids(one, other));
                    }
                }
            }
            List<Differing> told = Differing.among(standing, WORK_BETWEEN);
            List<Set<String>> pairs = told.stream().map(two -> ids(two.first(), two.second())).toList();
            assertThat(pairs).doesNotHaveDuplicates().hasSizeLessThanOrEqualTo(20).isSubsetOf(every);
            assertThat(pairs.isEmpty()).isEqualTo(every.isEmpty());
            if (every.size() <= 4) {
                assertThat(pairs).containsExactlyInAnyOrderElementsOf(every);
            }
            differing += every.isEmpty() ? 0 : 1;
            alike += every.isEmpty() ? 1 : 0;
        }
        assertThat(alike).as(check + ": heaps of which all go together").isPositive();
        if (!what.equals("seen: route")) {
            assertThat(differing).as(check + ": heaps of which some do not").isPositive();
        }
    }

    /** Of a thousand readings that differ as good as all do; every pair would be half a million doubts. */
    @Test
    void aThousandReadingsThatDifferAreToldOfInTwenty() throws IOException {
        JobRecord record = record(1000, i -> "at: " + MINUTE.format(FIRST.plusMinutes(i)) + ", by: ida, point: front-wheel/rim, measured: runout-lateral, is: " + (5 + i % 5) / 10.0 + " mm, with: dial-indicator");
        GateVerdict verdict = Assessor.assess(record, Examples.BOOK, List.of(Gate.ROAD_TEST), AS_OF).gates().get(0);
        assertThat(verdict.released()).isFalse();
        assertThat(verdict.findings()).filteredOn(f -> f.state() != State.MET).extracting(Finding::check, Finding::state)
                .containsExactlyInAnyOrder(org.assertj.core.groups.Tuple.tuple("tyres.rim-runout-lateral", State.DOUBT), org.assertj.core.groups.Tuple.tuple("record.agreement", State.DOUBT));
        String doubts = verdict.findings().stream().filter(f -> f.check().equals("record.agreement")).findFirst().orElseThrow().places().get(0).says();
        assertThat(doubts.split("cannot both be right", -1)).hasSize(21);
    }

    private static Set<String> ids(Standing one, Standing other) {
        return Set.of(one.evidence().id(), other.evidence().id());
    }

    private static JobRecord record(int count, IntFunction<String> entry) throws IOException {
        StringBuilder text = new StringBuilder(Files.readString(OUTFIT));
        for (int i = 0; i < count; i++) {
            text.append("  - {id: q").append(i).append(", ").append(entry.apply(i)).append("}\n");
        }
        return RecordReader.read("outfit.yaml", text.toString().getBytes(StandardCharsets.UTF_8), Examples.BOOK.vocabulary(), AS_OF);
    }

    /** Every entry about the thing, as if nothing set any of them aside. */
    private static List<Standing> standing(JobRecord record, Required required, String aspect) {
        Requirements requirements = new Requirements(Examples.BOOK, record, AS_OF.atZone(record.zone()).toLocalDate());
        Wanted wanted = requirements.wantedFor(required).stream().filter(one -> one.want().aspect().equals(aspect)).findFirst().orElseThrow();
        List<Standing> standing = new ArrayList<>();
        for (Entry entry : record.entries()) {
            if (Entry.key(entry.point(), entry.what()).equals(wanted.key())) {
                standing.add(new Standing(wanted, new Evidence(entry, wanted.key(), null)));
            }
        }
        return standing;
    }
}

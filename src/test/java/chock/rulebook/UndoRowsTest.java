package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Finding;
import chock.assess.State;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.RecordReader;
import chock.record.Value;
import chock.rehearse.SpokenBench;
import chock.rehearse.ToldScenario;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Every row of every card that says which work undoes or spares its evidence, tried on good evidence: that of a released
 * demo record where the check is met there, else that of the first scenario which shows it met.
 */
class UndoRowsTest {
    private static final RuleBook BOOK = RuleBook.shipped();
    private static final Instant DAY = Instant.parse("2026-11-25T13:00:00Z");
    /** The twin first: it is asked most. */
    private static final List<String> RECORDS = List.of("merle-released.yaml", "harrow-prewar-single.yaml", "lark-released.yaml", "lark-on-show.yaml", "lark-non-runner.yaml");

    private static List<ToldScenario> scenarios;
    /** Every check with evidence to try its rows on, and where that stands. */
    private static final Map<String, Proven> PROVEN = new TreeMap<>();

    /** Good evidence for a check at one place: in a record, or in a scenario. */
    private record Proven(String point, JobRecord record, Set<String> entries, ToldScenario scenario) { }

    /** One piece of work and what the check has to say of it. */
    private record Try(String check, String part, String work, State expected, String why) {
        String words(String found) {
            return check + ": " + part + " " + work + " (" + why + ") should leave it " + expected.id() + ", and it is " + found;
        }
    }

    @BeforeAll
    static void findGoodEvidence() throws IOException {
        scenarios = ToldScenario.all();
        for (String name : RECORDS) {
            JobRecord record = RecordReader.read(name, Files.readAllBytes(Path.of("docs/examples", name)), BOOK.vocabulary(), DAY);
            for (Finding finding : findings(record).values()) {
                if (finding.state() == State.MET) {
                    PROVEN.putIfAbsent(finding.check(), new Proven(finding.places().get(0).point(), record, Set.copyOf(finding.evidence()), null));
                }
            }
        }
        for (Card card : BOOK.cards().values()) {
            if (!PROVEN.containsKey(card.id())) {
                // Work told there might be what is tried, so a scenario without any is better, where work is not itself the evidence.
                scenarios.stream().filter(s -> s.says(card.id(), "met")).min(Comparator.comparing(ToldScenario::speaksOfWork))
                        .ifPresent(s -> PROVEN.put(card.id(), new Proven(placeIn(s, card), null, Set.of(), s)));
            }
        }
    }

    private static Map<String, Finding> findings(JobRecord record) {
        List<Gate> gates = Arrays.stream(Gate.values()).filter(BOOK.gates()::contains).toList();
        Assessment assessment = Assessor.assess(record, BOOK, gates, DAY);
        Map<String, Finding> findings = new LinkedHashMap<>();
        assessment.gates().forEach(g -> g.findings().forEach(f -> findings.put(f.check(), f)));
        return findings;
    }

    /** The place of the card that the evidence of a scenario lies at. */
    private static String placeIn(ToldScenario scenario, Card card) {
        List<String> places = card.place().points(Map.of(), BOOK.library().places());
        return places.stream().filter(place -> wantPlaces(card, place).stream().anyMatch(p -> scenario.steps().stream().anyMatch(s -> s.startsWith(p + " "))))
                .findFirst().orElse(places.get(0));
    }

    private static List<String> wantPlaces(Card card, String place) {
        return card.wants().stream().map(w -> w.place() == null ? place : w.place().points(binding(card, place), BOOK.library().places()).get(0)).distinct().toList();
    }

    private static Map<String, String> binding(Card card, String place) {
        return card.place().match(place, BOOK.library().places()).orElseThrow();
    }

    private static Set<String> worksOf(Card.Undo row) {
        return row.works().isEmpty() ? BOOK.library().disturbing() : row.works();
    }

    private static String firstPoint(Card card, String place, Card.Undo row) {
        return row.place().points(binding(card, place), BOOK.library().places()).get(0);
    }

    private static boolean survives(Card card, String place, String part, String work) {
        return card.survives().stream().anyMatch(s -> s.works().contains(work) && s.place().points(binding(card, place), BOOK.library().places()).contains(part));
    }

    /** True when the table of kinds says that such work takes what the check wants at this place. */
    private static boolean takes(Card card, String place, String part, String work) {
        boolean everywhere = BOOK.library().assembly().whole().getOrDefault(part, Set.of()).contains(work);
        return !everywhere && card.wants().stream().filter(w -> wantPlace(w, card, place).equals(part))
                .anyMatch(w -> BOOK.library().assembly().takes().get(work).contains(BOOK.library().assembly().kind(card.id(), w.name())));
    }

    private static String wantPlace(Card.Want want, Card card, String place) {
        return want.place() == null ? place : want.place().points(binding(card, place), BOOK.library().places()).get(0);
    }

    @Test
    void thereIsGoodEvidenceForEveryCheckThatWantsAny() {
        List<String> without = BOOK.cards().values().stream().filter(c -> !c.wants().isEmpty() && !PROVEN.containsKey(c.id())).map(Card::id).toList();
        assertThat(without).isEmpty();
        assertThat(PROVEN.values().stream().filter(p -> p.record != null)).as("checks tried on a demo record").hasSizeGreaterThan(150);
    }

    @Test
    void workThatUndoesACheckAndDisturbingWorkOnThePartItselfMakeItStale() {
        List<Try> tries = new ArrayList<>();
        PROVEN.forEach((check, proven) -> {
            Card card = BOOK.cards().get(check);
            for (Card.Undo row : card.undoneBy()) {
                String part = firstPoint(card, proven.point, row);
                for (String work : new TreeSet<>(worksOf(row))) {
                    if (!survives(card, proven.point, part, work)) {
                        tries.add(new Try(check, part, work, State.STALE, "undone-by " + row.place()));
                    }
                }
            }
            for (String part : wantPlaces(card, proven.point)) {
                // Any work that takes such proofs is as good as another here; one that the check survives, or wants, is not.
                new TreeSet<>(BOOK.library().disturbing()).stream().filter(work -> takes(card, proven.point, part, work) && !survives(card, proven.point, part, work))
                        .filter(work -> card.wants().stream().noneMatch(w -> w.weakest() == Deed.DONE && w.aspect().equals(work)))
                        .findFirst().ifPresent(work -> tries.add(new Try(check, part, work, State.STALE, "the part itself")));
            }
        });
        assertThat(tries).hasSizeGreaterThan(1300);
        assertThat(wrong(tries)).isEmpty();
    }

    @Test
    void everyWorkACheckSurvivesLeavesItMet() {
        List<Try> tries = new ArrayList<>();
        PROVEN.forEach((check, proven) -> {
            Card card = BOOK.cards().get(check);
            for (Card.Undo row : card.survives()) {
                for (String work : new TreeSet<>(row.works())) {
                    tries.add(new Try(check, firstPoint(card, proven.point, row), work, State.MET, "survives " + row.place()));
                }
            }
        });
        assertThat(tries).hasSizeGreaterThan(30);
        assertThat(wrong(tries)).isEmpty();
    }

    private static List<String> wrong(List<Try> tries) {
        List<String> wrong = Collections.synchronizedList(new ArrayList<>());
        // One judgement shows what one piece of work does to every check of a record.
        Map<JobRecord, Map<String, List<Try>>> byRecord = new LinkedHashMap<>();
        for (Try t : tries) {
            Proven proven = PROVEN.get(t.check);
            if (proven.record == null) {
                inScenario(t, proven).ifPresent(wrong::add);
            } else {
                byRecord.computeIfAbsent(proven.record, r -> new TreeMap<>()).computeIfAbsent(t.part + " " + t.work, k -> new ArrayList<>()).add(t);
            }
        }
        byRecord.forEach((record, byWork) -> byWork.values().parallelStream().forEach(same -> {
            Set<String> needed = new TreeSet<>();
            same.forEach(t -> needed.addAll(PROVEN.get(t.check).entries));
            Map<String, Finding> after = findings(with(record, needed, same.get(0)));
            for (Try t : same) {
                Finding finding = after.get(t.check);
                Finding.AtPlace there = finding == null ? null : finding.places().stream().filter(p -> p.point().equals(PROVEN.get(t.check).point)).findFirst().orElse(null);
                if (there == null || there.state() != t.expected) {
                    wrong.add(t.words(there == null ? "not asked" : there.state().id() + ": " + there.says()));
                }
            }
        }));
        return wrong;
    }

    // Evidence for other checks is left out, for it only takes time; what is marked on a part, what was done to it and what is planned can decide what is asked.
    private static JobRecord with(JobRecord r, Set<String> needed, Try t) {
        List<Entry> entries = new ArrayList<>(r.entries().stream().filter(e -> needed.contains(e.id()) || e.deed() == Deed.DONE || e.is() instanceof Value.Code || e.point().equals("run-plan")).toList());
        entries.add(new Entry("later", new Moment(LocalDate.of(2026, 11, 25), LocalTime.of(12, 0), r.zone()), r.people().get(0).id(), Deed.DONE, t.part, t.work, null, null, null, null, null, 0));
        return r.withEntries(entries);
    }

    private static Optional<String> inScenario(Try t, Proven proven) {
        SpokenBench bench = new SpokenBench(BOOK);
        proven.scenario.steps().stream().filter(s -> !ToldScenario.LOOKS.matcher(s).find() && !ToldScenario.OUTCOME.matcher(s).matches()).forEach(s -> say(bench, s));
        bench.work(t.part, t.work);
        return bench.otherwise(t.check, t.expected.id(), proven.point).map(found -> t.words(found) + " in " + proven.scenario.steps());
    }

    private static void say(SpokenBench bench, String step) {
        try {
            bench.say(step);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(step, e);
        }
    }

    @Test
    void everyRowIsShownByAScenario() {
        List<String> holes = new ArrayList<>();
        for (Card card : BOOK.cards().values()) {
            card.undoneBy().forEach(row -> {
                if (row.works().isEmpty()) {
                    hole(card, row, BOOK.library().disturbing(), "stale").ifPresent(holes::add);
                } else {
                    row.works().forEach(work -> hole(card, row, Set.of(work), "stale").ifPresent(holes::add));
                }
            });
            card.survives().forEach(row -> row.works().forEach(work -> hole(card, row, Set.of(work), "met").ifPresent(holes::add)));
        }
        assertThat(holes).as("lines to add below the rule of that check").isEmpty();
    }

    /** What is missing when no scenario below the rule of the check tells of such work at such a point, or on a part of it, and its outcome. */
    private static Optional<String> hole(Card card, Card.Undo row, Set<String> anyOf, String state) {
        List<String> points = row.place().points(Map.of(), BOOK.library().places());
        boolean shown = scenarios.stream().filter(s -> s.says(card.id(), state)).flatMap(s -> s.steps().stream()).map(ToldScenario.WORK::matcher)
                .anyMatch(m -> m.matches() && anyOf.contains(m.group(2))
                        && points.stream().anyMatch(p -> state.equals("met") ? p.equals(m.group(1)) : Entry.covers(p, m.group(1))));
        return shown ? Optional.empty() : Optional.of(card.id() + ": | " + points.get(0) + " | " + new TreeSet<>(anyOf).first() + " | " + state + " |");
    }
}

package chock.assess;

import chock.assess.OrderOfWork.Kind;
import chock.assess.OrderOfWork.Step;
import chock.assess.facts.Wanted;
import chock.quantity.Measured;
import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.NoteIs;
import chock.record.Person;
import chock.record.Value;
import chock.record.Vocabulary;
import chock.rulebook.Card;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Writes for each step of an order what a good result would be: what the released twin of the record says there. */
final class GoodEntries {
    private static final Map<String, Map<String, Entry>> TWINS = twins();

    /** What no twin was asked: a two-stroke crankcase under pressure and vacuum, leak-down, and the inside of a tyre. */
    static final Map<String, String> BESIDES = Map.of("crankcase-pressure-at-start", "6 psi ± 0.2 psi", "crankcase-pressure-left", "5.9 psi ± 0.2 psi", "crankcase-hold", "6 min ± 1 s",
            "crankcase-vacuum-at-start", "20 kPa ± 0.5 kPa", "crankcase-vacuum-left", "19.5 kPa ± 0.5 kPa", "crankcase-vacuum-hold", "6 min ± 1 s", "altitude", "120 m ± 10 m");

    private GoodEntries() { }

    private static Map<String, Map<String, Entry>> twins() {
        Map<String, Map<String, Entry>> twins = new TreeMap<>();
        for (String name : List.of("merle-released.yaml", "lark-released.yaml", "harrow-prewar-single.yaml", "lark-on-show.yaml", "lark-non-runner.yaml")) {
            try {
                JobRecord twin = Examples.read(name);
                Map<String, Entry> good = twin.entries().stream().filter(e -> e.is() != null)
                        .collect(Collectors.toMap(e -> e.point() + " " + e.what(), Function.identity(), (a, b) -> b, TreeMap::new));
                twins.put(twin.id(), good);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return twins;
    }

    /** The record with a line for each step, some seconds apart or as long as something has to be watched, work by one person and proofs by another. */
    static JobRecord written(JobRecord record, List<Step> steps) {
        List<Entry> entries = new ArrayList<>(record.entries());
        ZonedDateTime time = Examples.DAY.atZone(record.zone());
        for (int number = 1; number <= steps.size(); number++) {
            Step step = steps.get(number - 1);
            time = time.plusSeconds(5 + watched(record, step));
            Moment at = new Moment(time.toLocalDate(), time.toLocalTime(), record.zone());
            List<String> lines = step.corrects().isEmpty() ? java.util.Collections.singletonList(null) : step.corrects();
            for (String corrects : lines) {
                Entry line = line("step-" + number + (corrects == null ? "" : "-" + corrects), step, at, record, corrects);
                if (line != null) {
                    entries.add(line);
                }
            }
        }
        List<Person> people = new ArrayList<>(record.people());
        people.add(new Person("worker", "Nell Sandwith", "technician"));
        people.add(new Person("other", "Wat Orrin", "inspector"));
        return new JobRecord(record.id(), record.workshop(), record.zone(), record.territory(), record.onePerson(), record.seeks(), record.machine(), record.maker(), people,
                record.instruments(), entries, record.claims(), record.form());
    }

    /** Seconds for which the step has to watch something before it can be written. */
    private static long watched(JobRecord record, Step step) {
        boolean covers = Examples.BOOK.cards().values().stream().flatMap(c -> c.wants().stream()).anyMatch(w -> w.covers() && w.aspect().equals(step.what()));
        return covers && good(record, step) instanceof Value.Amount amount ? amount.measured().value().to(Unit.SECONDS).value().longValue() : 0;
    }

    /** When the last line was written: what is true then is judged then, for two hours later the weather is another. */
    private static Instant end(JobRecord record) {
        return record.entries().stream().map(e -> e.at().earliest()).filter(Examples.DAY::isBefore).max(Comparator.naturalOrder()).orElse(Examples.DAY);
    }

    private static Entry line(String id, Step step, Moment at, JobRecord record, String corrects) {
        if (step.kind() == Kind.SETTLE) {
            return null;
        }
        if (step.kind().isWork()) {
            String what = step.what() == null ? "repaired" : step.what();
            return new Entry(id, at, "worker", Deed.DONE, step.point(), what, null, tool(record, what), null, null, null, 0);
        }
        Deed deed = switch (step.kind()) {
            case MEASURE -> Deed.MEASURED;
            case TRY -> Deed.TRIED;
            case LOOK -> Deed.SEEN;
            default -> Deed.TOLD;
        };
        return new Entry(id, at, "other", deed, step.point(), step.what(), good(record, step), with(record, step), corrects, corrects == null ? null : "measured again",
                step.namesDocument() ? "registration certificate, page 1" : null, NoteIs.REMARK, Set.of(), 0);
    }

    private static String tool(JobRecord record, String work) {
        Vocabulary.Tooled tooled = Examples.BOOK.vocabulary().tooled().get(work);
        return tooled == null ? null : record.instruments().stream().filter(i -> i.kind().equals(tooled.with())).map(chock.record.Instrument::id).findFirst().orElse(null);
    }

    private static String with(JobRecord record, Step step) {
        return step.kind() != Kind.MEASURE ? null : Optional.ofNullable(TWINS.get(record.id()).get(step.point() + " " + step.what())).map(Entry::with).orElse(record.instruments().get(0).id());
    }

    private static Value good(JobRecord record, Step step) {
        return Optional.ofNullable(TWINS.get(record.id()).get(step.point() + " " + step.what())).map(Entry::is).orElseGet(() -> {
            Value good = BESIDES.containsKey(step.what()) ? new Value.Amount(Measured.parse(BESIDES.get(step.what()))) : GoodResult.of(wanted(record, step));
            return Objects.requireNonNull(good, () -> "no good result is known for " + step);
        });
    }

    /** Where the twin says nothing of it, the first good answer of the card that asks. */
    private static List<Wanted> wanted(JobRecord record, Step step) {
        Conclusions concluded = Assessor.conclude(record, Examples.BOOK, Examples.DAY);
        List<Wanted> all = Examples.BOOK.cards().keySet().stream().flatMap(c -> concluded.required(c).stream()).flatMap(r -> concluded.of(r, Wanted.class).stream())
                .filter(w -> w.point().equals(step.point()) && w.want().aspect().equals(step.what())).sorted(Comparator.comparing(w -> w.card().id())).toList();
        if (!all.isEmpty()) {
            return all;
        }
        Card card = step.checks().stream().map(Examples.BOOK.cards()::get).filter(c -> c.wants().stream().anyMatch(w -> w.aspect().equals(step.what()))).findFirst()
                .orElseThrow(() -> new AssertionError("no check of " + step + " asks for it"));
        Card.Want want = card.wants().stream().filter(w -> w.aspect().equals(step.what())).findFirst().orElseThrow();
        return List.of(new Wanted(new chock.assess.facts.Required(card.id(), step.point()), card, want, step.point(), "", null, java.util.Set.of(), java.util.Set.of(), false, null, null));
    }

    static GateVerdict judged(JobRecord record, Gate gate) {
        return Assessor.assess(record, Examples.BOOK, List.of(gate), end(record)).gates().get(0);
    }

    /** Proofs that steps were for and later steps took away; a head torqued before the first start was for that, and not for the torquing after it. */
    static List<String> undone(JobRecord record, Gate gate, List<Step> steps) {
        Map<String, Set<String>> checks = new TreeMap<>();
        record.entries().stream().filter(entry -> entry.id().matches("step-\\d+(\\D.*)?"))
                .forEach(entry -> checks.put(entry.id(), Set.copyOf(steps.get(Integer.parseInt(entry.id().replaceAll("^step-(\\d+).*", "$1")) - 1).checks())));
        return UndoneLater.of(record, Examples.BOOK, gate, end(record), checks);
    }
}

package chock.assess;

import chock.assess.facts.AsOf;
import chock.assess.facts.BrakeFact;
import chock.assess.facts.Correction;
import chock.assess.facts.CylinderFact;
import chock.assess.facts.DiscFact;
import chock.assess.facts.EngineFact;
import chock.assess.facts.EquipmentFact;
import chock.assess.facts.Evidence;
import chock.assess.facts.FoundOut;
import chock.assess.facts.Inspection;
import chock.assess.facts.Judgement;
import chock.assess.facts.Lack;
import chock.assess.facts.MachineFact;
import chock.assess.facts.Note;
import chock.assess.facts.NumberFact;
import chock.assess.facts.Outcome;
import chock.assess.facts.PadFact;
import chock.assess.facts.Required;
import chock.assess.facts.SetAside;
import chock.assess.facts.Wanted;
import chock.assess.facts.WheelFact;
import chock.assess.facts.Work;
import chock.assess.facts.WorkshopFact;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.rulebook.Card;
import chock.rulebook.LocalCode;
import chock.rulebook.RuleBook;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.kie.api.runtime.KieSession;

/** The one function in the middle: a record, a rule book and a moment go in, verdicts come out. Same inputs, same result. */
public final class Assessor {
    /** No release is good for longer than this, whatever the evidence (common practice). */
    static final Duration LONGEST_RELEASE = Duration.ofDays(30);

    private Assessor() { }

    /**
     * @param record what was written about the machine
     * @param book the rule book in force
     * @param gates the gates to judge
     * @param asOf the moment of judgement; no entry may be later
     */
    public static Assessment assess(JobRecord record, RuleBook book, List<Gate> gates, Instant asOf) {
        AsOf now = new AsOf(asOf, asOf.atZone(record.zone()).toLocalDate(), record.zone());
        Concluded concluded = conclude(record, book, now);
        List<GateVerdict> verdicts = gates.stream().distinct().map(gate -> verdict(gate, record, book, now, concluded)).toList();
        return new Assessment(record, asOf, book.version(), book.digest(), localCode(record, book), verdicts, unasked(record, book, concluded), Claims.weigh(record), book.ride().orElse(null));
    }

    /** Everything the rules concluded. */
    record Concluded(List<Required> required, List<Outcome> outcomes, List<Judgement> judgements, List<Lack> lacks,
                     List<SetAside> setAside, List<Note> notes, List<Wanted> wanted) { }

    private static Concluded conclude(JobRecord record, RuleBook book, AsOf now) {
        KieSession session = book.rules().newKieSession();
        try {
            session.insert(now);
            session.insert(new Requirements(book, record, now.date()));
            partsOf(record).forEach(session::insert);
            factsOf(record).forEach(session::insert);
            session.fireAllRules();
            Collection<?> all = session.getObjects();
            return new Concluded(only(all, Required.class), only(all, Outcome.class), only(all, Judgement.class), only(all, Lack.class),
                    only(all, SetAside.class), only(all, Note.class), only(all, Wanted.class));
        } finally {
            session.dispose();
        }
    }

    private static <T> List<T> only(Collection<?> all, Class<T> type) {
        return all.stream().filter(type::isInstance).map(type::cast).collect(Collectors.toCollection(ArrayList::new));
    }

    private static List<Object> partsOf(JobRecord record) {
        Machine m = record.machine();
        List<Object> parts = new ArrayList<>();
        parts.add(new MachineFact(m.kind(), m.built().getValue(), m.firstRegistered(), m.linkedBrakes(), m.seats(), m.volts(), m.drive(), record.territory(), m.topSpeed(),
                m.history() == Machine.History.KNOWN));
        parts.add(new EngineFact(m.engine().cycle(), m.engine().displacement(), m.engine().cylinders(), m.engine().oiling(), m.engine().ignition(), m.engine().cooling()));
        parts.add(new WorkshopFact(record.onePerson()));
        parts.add(new NumberFact("frame", m.frameNumber()));
        parts.add(new NumberFact("engine", m.engineNumber()));
        Machine.Equipment e = m.equipment();
        parts.add(new EquipmentFact(e.starter(), e.carburettors(), e.fuelTap(), e.clutch(), e.frontSpringing(), e.rearSpringing(), e.lamps(), e.indicators(),
                e.horn(), e.mirrors(), e.stands(), e.speedometer()));
        for (int number = 1; number <= m.engine().cylinders(); number++) {
            parts.add(new CylinderFact(number, "engine/cylinder-" + number));
        }
        for (Machine.End end : m.ends()) {
            String brake = end.name() + "-brake";
            parts.add(new BrakeFact(end.name(), end.brake().type(), end.brake().workedBy(), end.brake().discs(), end.brake().lining(), end.brake().stopLampSwitch(), brake));
            List<String> sides = end.brake().discs() == 2 ? List.of("left-", "right-") : end.brake().discs() == 1 ? List.of("") : List.of();
            for (String side : sides) {
                String caliper = brake + "/" + side + "caliper";
                parts.add(new DiscFact(end.name(), brake + "/" + side + "disc", caliper));
                parts.add(new PadFact(end.name(), caliper, caliper + "/inner-pad"));
                parts.add(new PadFact(end.name(), caliper, caliper + "/outer-pad"));
            }
            String wheel = end.name() + "-wheel";
            parts.add(new WheelFact(end.name(), end.wheel().rim(), end.wheel().spoked(), end.wheel().tube(), wheel, wheel + "/tyre"));
        }
        return parts;
    }

    private static List<Object> factsOf(JobRecord record) {
        List<Object> facts = new ArrayList<>();
        List<Entry> byTime = record.entries().stream().sorted(Comparator.comparing((Entry e) -> e.at().earliest()).thenComparing(Entry::id)).toList();
        for (Entry entry : byTime) {
            if (entry.deed().isEvidence() || entry.deed() == Deed.DONE) {
                facts.add(new Evidence(entry, Evidence.key(entry.point(), entry.what()), entry.with() == null ? null : record.instrument(entry.with()).orElseThrow()));
            }
            if (entry.deed() == Deed.DONE) {
                facts.add(new Work(entry));
            }
            if (entry.deed() == Deed.FOUND_OUT) {
                facts.add(new FoundOut(entry));
            }
            if (entry.deed() == Deed.INSPECTED) {
                facts.add(new Inspection(entry));
            }
            if (entry.corrects() != null) {
                facts.add(new Correction(entry));
            }
        }
        return facts;
    }

    private static GateVerdict verdict(Gate gate, JobRecord record, RuleBook book, AsOf now, Concluded concluded) {
        List<Finding> findings = new ArrayList<>();
        List<GateVerdict.NotApplicable> notAsked = new ArrayList<>();
        List<String> faults = new ArrayList<>();
        for (Card card : book.cards().values()) {
            if (!card.gates().contains(gate)) {
                continue;
            }
            Set<Required> asked = concluded.required().stream().filter(r -> r.check().equals(card.id())).collect(Collectors.toSet());
            if (asked.isEmpty()) {
                notAsked.add(new GateVerdict.NotApplicable(card.id(), "asked of " + card.applies() + "; this machine has none"));
                continue;
            }
            List<Finding.AtPlace> places = new ArrayList<>();
            Instant lapses = null;
            for (Required required : asked) {
                List<Outcome> outcomes = concluded.outcomes().stream().filter(o -> o.required().equals(required)).toList();
                if (outcomes.size() != 1) {
                    faults.add("the rule book gave " + outcomes.size() + " outcomes for " + card.id() + " at " + required.point());
                    places.add(new Finding.AtPlace(required.point(), State.MISSING, Points.title(required.point()) + ": the rule book could not evaluate this", null, null, null, List.of(), List.of()));
                    continue;
                }
                Telling telling = new Telling(required, outcomes.get(0).state(), card, concluded, record);
                places.add(telling.place());
                lapses = Judge.earlier(telling.lapses(), lapses);
            }
            findings.add(finding(card, places, lapses));
        }
        findings.sort(Comparator.comparing(Finding::state).thenComparing((Finding f) -> !f.critical()).thenComparing(Finding::check));
        if (!book.gates().contains(gate)) {
            faults.add("the rule book is not complete for this gate");
        }
        if (findings.isEmpty()) {
            faults.add("the rule book asks nothing at this gate");
        }
        boolean released = faults.isEmpty() && findings.stream().allMatch(f -> f.state() == State.MET);
        Instant until = findings.stream().map(Finding::lapses).filter(Objects::nonNull).min(Comparator.naturalOrder())
                .map(first -> first.minusSeconds(1)).orElse(null);
        Instant longest = now.instant().plus(LONGEST_RELEASE);
        return new GateVerdict(gate, released, released ? (until == null || until.isAfter(longest) ? longest : until) : null, List.copyOf(findings), notAsked, faults);
    }

    private static Finding finding(Card card, List<Finding.AtPlace> places, Instant lapses) {
        places.sort(Comparator.comparing(Finding.AtPlace::state).thenComparing(Finding.AtPlace::point));
        Finding.AtPlace worst = places.get(0);
        boolean met = worst.state() == State.MET;
        List<String> notes = places.stream().flatMap(p -> p.notes().stream()).distinct().toList();
        Set<String> evidence = new TreeSet<>();
        places.forEach(p -> evidence.addAll(p.evidence()));
        return new Finding(card.id(), worst.state(), worst.says(), worst.measured(), worst.limit(), worst.margin(), met ? null : card.remedy(),
                card.caution(), notes, List.copyOf(evidence), card.critical(), List.copyOf(places), met ? lapses : null);
    }

    private static String localCode(JobRecord record, RuleBook book) {
        List<LocalCode> codes = book.codesOf(record.territory());
        return codes.isEmpty() ? "none for " + record.territory() + " in this rule book"
                : codes.stream().map(c -> c.code() + " (" + c.name() + ")").collect(Collectors.joining(", "));
    }

    // What nobody asked for is often a slip: the other caliper, a machine with one disc.
    private static List<String> unasked(JobRecord record, RuleBook book, Concluded concluded) {
        Set<String> wanted = new HashSet<>();
        concluded.wanted().forEach(w -> wanted.add(w.key()));
        Set<String> besides = book.library().besides();
        return record.entries().stream().filter(e -> e.deed().isEvidence() && !besides.contains(e.what()) && !wanted.contains(Evidence.key(e.point(), e.what()))).map(Entry::id).toList();
    }
}

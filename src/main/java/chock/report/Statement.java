package chock.report;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Claims;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.Judge;
import chock.assess.Points;
import chock.assess.RidePlan;
import chock.assess.State;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The condition of a machine as its new owner is told it: what the record carries, in sentences of the record and the
 * rule book, and nothing else.
 *
 * @param localCode the law in force where it will be ridden, in words
 * @param rideable whether it may leave to be ridden
 * @param standing what was decided about its leaving, one sentence a gate
 * @param open what still holds it, worst first
 * @param safe what was made safe on a machine that is not to be ridden
 * @param done work, by part
 * @param measured readings that count
 * @param sources where the limits come from; a reading names them by their number, from 1
 * @param ridingIn what holds the first rides back; empty when it is not to be ridden
 * @param due what runs out after the release itself
 */
public record Statement(Heading heading, Told localCode, boolean rideable, List<Told> standing, List<Told> open, List<Told> safe, List<Labelled> identity,
                        List<Part> done, List<Read> measured, List<Told> sources, List<Told> deviations, List<Told> notes, List<Told> inspections,
                        List<Told> proven, List<Told> unproven, List<Told> contradicted, List<Told> remarks, List<Restraint> ridingIn, List<Told> stop,
                        List<Due> due, List<Told> cautions) {
    /** A line with its name. */
    public record Labelled(String label, Told told) { }

    /** The work on one part of the machine. */
    public record Part(Told where, List<Told> work) { }

    /** @param source number in the list of sources, or 0 */
    public record Read(Told where, Told value, Told allowed, int source, Told when) { }

    public record Restraint(Told because, List<Told> lines) { }

    /** @param what by system of the machine, what is asked there */
    public record Due(Told day, List<Labelled> what) { }

    /** The gates a statement is about, with the road test where it is to be ridden, for what holds a ride back. */
    public static List<Gate> gates(JobRecord record) {
        Set<Gate> gates = new LinkedHashSet<>();
        Stream.of(Gate.HAND_OVER, Gate.NON_RUNNER).filter(record.seeks()::contains).forEach(gates::add);
        if (gates.contains(Gate.HAND_OVER)) {
            gates.add(Gate.ROAD_TEST);
        }
        return List.copyOf(gates.isEmpty() ? record.seeks() : gates);
    }

    /** What the record carries at this moment. */
    public static Statement of(JobRecord record, RuleBook book, Instant asOf) {
        return new Writer(Assessor.assess(record, book, gates(record), asOf), book).statement();
    }

    /** Gathers it, section by section. */
    private static final class Writer {
        private final Assessment assessment;
        private final JobRecord record;
        private final RuleBook book;
        private final List<GateVerdict> leaving;
        private final List<Finding> findings;
        private final boolean rideable;
        private final Map<String, Integer> sources = new LinkedHashMap<>();
        private final Map<String, List<String>> sourceOf = new LinkedHashMap<>();
        private final Set<String> told = new LinkedHashSet<>();

        Writer(Assessment assessment, RuleBook book) {
            this.assessment = assessment;
            this.record = assessment.record();
            this.book = book;
            this.leaving = assessment.gates().stream().filter(g -> g.gate() == Gate.HAND_OVER || g.gate() == Gate.NON_RUNNER).toList();
            List<GateVerdict> told = leaving.isEmpty() ? assessment.gates() : leaving;
            Map<String, Finding> once = new TreeMap<>();
            told.forEach(gate -> Stream.concat(gate.findings().stream(), gate.open().stream()).forEach(f -> once.putIfAbsent(f.check(), f)));
            this.findings = once.values().stream().sorted(Comparator.comparing(Finding::state).thenComparing(Finding::check)).toList();
            this.rideable = !leaving.isEmpty() && leaving.stream().allMatch(g -> g.gate() == Gate.HAND_OVER && g.released());
        }

        Statement statement() {
            List<Part> done = done();
            List<Read> measured = measured();
            List<Due> due = due();
            return new Statement(Heading.of(assessment), Told.of(assessment.localCode(), "record/territory"), rideable, standing(), open(), safe(), identity(), done, measured,
                    sources.keySet().stream().map(words -> Told.check(words, sourceOf.get(words).get(0), List.of())).toList(),
                    deviations(), notes(), inspections(), claims(Claims.Standing.SUPPORTED), claims(Claims.Standing.UNPROVEN), claims(Claims.Standing.CONTRADICTED),
                    remarks(), ridingIn(), stop(), due, cautions());
        }

        private List<Told> standing() {
            if (leaving.isEmpty()) {
                return List.of(Told.of("This record seeks neither hand-over nor non-runner: whether the machine may leave was not judged.", "record/seeks"));
            }
            return leaving.stream().map(this::standing).toList();
        }

        private Told standing(GateVerdict gate) {
            boolean toRide = gate.gate() == Gate.HAND_OVER;
            String says = gate.released()
                    ? (toRide ? "It may leave to be ridden" : "It may leave, not to be ridden") + ", until " + Wording.dayAndTime(gate.holdsUntil(), record.zone()) + ", " + Wording.UNTOUCHED + "."
                    : (toRide ? "It may not leave to be ridden: " : "It may not leave: ") + gate.gate() + " is blocked by " + Wording.tally(gate).replaceFirst(";.*", "") + ".";
            return Told.of(says, "gate/" + gate.gate());
        }

        private List<Told> open() {
            List<Told> open = new ArrayList<>();
            leaving.forEach(gate -> gate.ruleBookFaults().forEach(fault -> open.add(Told.of(fault, "gate/" + gate.gate()))));
            findings.stream().filter(f -> !leaving.isEmpty() && f.state() != State.MET).forEach(f -> places(f, p -> p.state() != State.MET)
                    .forEach(p -> open.add(Told.check(p.state().id() + ": " + p.says(), f.check(), p.evidence()))));
            return open.stream().distinct().toList();
        }

        private static Stream<Finding.AtPlace> places(Finding finding, java.util.function.Predicate<Finding.AtPlace> which) {
            return finding.places().stream().filter(which).sorted(Comparator.comparing(Finding.AtPlace::point));
        }

        /** Only for a machine that goes as a non-runner: what its critical checks rest on. */
        private List<Told> safe() {
            return leaving.stream().filter(g -> g.gate() == Gate.NON_RUNNER).flatMap(g -> g.findings().stream()).filter(f -> f.critical() && f.state() == State.MET)
                    .flatMap(f -> places(f, p -> p.state() == State.MET).map(p -> Told.check(p.says(), f.check(), p.evidence()))).distinct().toList();
        }

        private List<Labelled> identity() {
            Machine m = record.machine();
            List<Labelled> all = new ArrayList<>();
            all.add(new Labelled("Frame number", Told.field("machine/frame-number", m.frameNumber())));
            all.add(new Labelled("Engine number", Told.field("machine/engine-number", m.engineNumber())));
            all.add(new Labelled("Built", Told.field("machine/built", m.built())));
            all.add(new Labelled("First registered", m.firstRegistered() == null ? null : Told.field("machine/first-registered", Wording.day(m.firstRegistered()))));
            all.add(new Labelled("Kind", Told.field("machine/kind", word(m.kind()))));
            all.add(new Labelled("Engine", new Told(word(m.engine().cycle()) + ", " + m.engine().displacement() + ", " + m.engine().cylinders() + (m.engine().cylinders() == 1 ? " cylinder, " : " cylinders, ")
                    + word(m.engine().cooling()) + " cooled", List.of("machine/engine"))));
            all.add(new Labelled("History", Told.field("machine/history", m.history() == Machine.History.KNOWN ? "known" : "unknown: bought in without a record")));
            all.add(new Labelled("For the law of", Told.field("record/territory", assessment.localCode())));
            findings.stream().filter(f -> f.check().equals("record.identity")).flatMap(f -> places(f, p -> !p.evidence().isEmpty()))
                    .forEach(p -> all.add(new Labelled("Numbers compared", Told.check(p.says(), "record.identity", p.evidence()))));
            return all.stream().filter(l -> l.told() != null).toList();
        }

        private static String word(Enum<?> value) {
            return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        private List<Entry> sorted(Deed deed) {
            return record.entries().stream().filter(e -> e.deed() == deed).sorted(Comparator.comparing((Entry e) -> e.at().earliest()).thenComparing(Entry::id)).toList();
        }

        private List<Part> done() {
            Map<String, List<Entry>> byPart = new TreeMap<>();
            sorted(Deed.DONE).forEach(e -> byPart.computeIfAbsent(e.point(), p -> new ArrayList<>()).add(e));
            return byPart.entrySet().stream().map(part -> new Part(new Told(Points.title(part.getKey()), part.getValue().stream().map(Entry::id).toList()),
                    part.getValue().stream().map(e -> told(e, e.at().date() + " " + e.what().replace('-', ' ') + note(e))).toList())).toList();
        }

        private Told told(Entry entry, String says) {
            told.add(entry.id());
            List<Entry> corrections = record.entries().stream().filter(e -> entry.id().equals(e.corrects())).toList();
            List<String> from = new ArrayList<>(List.of(entry.id()));
            StringBuilder all = new StringBuilder(says);
            for (Entry correction : corrections) {
                all.append(" [corrected by ").append(correction.id()).append(": ").append(correction.reason()).append("]");
                from.add(correction.id());
            }
            return new Told(all.toString(), from);
        }

        private static String note(Entry entry) {
            return entry.note() == null || entry.note().isBlank() ? "" : ": " + entry.note().strip();
        }

        /** A reading stands here only while a finding rests on it; which limit decided, and from where, stands beside it. */
        private List<Read> measured() {
            Map<String, Read> all = new TreeMap<>();
            Set<String> judged = new LinkedHashSet<>();
            for (Finding finding : findings) {
                places(finding, p -> p.measured() != null && p.limit() != null && p.evidence().stream().anyMatch(this::isReading)).forEach(p -> {
                    String of = book.limitsNamed(p.limit().id()).stream().findFirst().map(limit -> limit.of()).orElse(finding.check());
                    int source = sources.computeIfAbsent(p.limit().source().words(), words -> sources.size() + 1);
                    sourceOf.computeIfAbsent(p.limit().source().words(), words -> new ArrayList<>()).add(finding.check());
                    judged.addAll(p.evidence());
                    Told when = p.evidence().isEmpty() ? null : new Told(days(p.evidence()), p.evidence());
                    all.put(p.point() + " " + finding.check(), new Read(Told.check(Points.title(p.point()) + ": " + of, finding.check(), p.evidence()),
                            Told.check(Judge.shown(p.measured()) + (p.state() == State.MET ? "" : " (" + p.state().id() + ")"), finding.check(), p.evidence()),
                            Told.check(p.limit().bounds().words(), finding.check(), List.of()), source, when));
                });
            }
            Set<String> relied = findings.stream().flatMap(f -> f.places().stream()).filter(p -> p.state() == State.MET).flatMap(p -> p.evidence().stream()).collect(Collectors.toSet());
            sorted(Deed.MEASURED).stream().filter(e -> relied.contains(e.id()) && !judged.contains(e.id())).forEach(e -> all.put(e.point() + " " + e.what() + " " + e.id(),
                    new Read(told(e, Points.title(e.point()) + ": " + e.what().replace('-', ' ') + note(e)), Told.of(e.is().toString(), e.id()), null, 0, Told.of(e.at().date().toString(), e.id()))));
            return List.copyOf(all.values());
        }

        private boolean isReading(String id) {
            return record.entry(id).orElseThrow().deed() == Deed.MEASURED;
        }

        private String days(List<String> ids) {
            return ids.stream().map(id -> record.entry(id).orElseThrow().at().date().toString()).distinct().sorted().collect(Collectors.joining(", "));
        }

        private List<Told> deviations() {
            Stream<Entry> entries = Stream.of(Deed.SEEN, Deed.TOLD, Deed.ASSUMED).flatMap(deed -> sorted(deed).stream())
                    .filter(e -> e.what().equals("deviations") || e.what().equals("part-of-another-year"));
            Stream<Entry> off = sorted(Deed.DONE).stream().filter(e -> e.what().equals("left-off"));
            return Stream.concat(entries, off).map(e -> told(e, Points.title(e.point()) + ": " + e.what().replace('-', ' ')
                    + (e.is() == null ? "" : ": " + e.is().toString().replace('-', ' ')) + (e.deed() == Deed.TOLD || e.deed() == Deed.ASSUMED ? ", only " + e.deed().key() : "") + note(e))).toList();
        }

        private List<Told> notes() {
            Stream<Told> besides = assessment.disclosures().toBeKnown().stream().map(one -> new Told(one.says(), one.entries()));
            return Stream.concat(besides, findings.stream().flatMap(f -> Wording.notes(f).stream().map(note -> Told.check(note, f.check(), f.evidence())))).distinct().toList();
        }

        private List<Told> inspections() {
            return sorted(Deed.INSPECTED).stream().map(e -> told(e, e.at() + ": " + e.what() + " by a licensed inspector; licence " + e.is() + note(e).replaceFirst("^:", ";"))).toList();
        }

        private List<Told> claims(Claims.Standing standing) {
            return assessment.claims().stream().filter(c -> c.standing() == standing).map(c -> {
                List<String> from = new ArrayList<>(c.evidence());
                from.add("claims/" + c.claim().about());
                return new Told(Wording.claim(c) + ": " + c.says() + ".", from);
            }).toList();
        }

        /** Free words of entries that stand nowhere else on the statement. */
        private List<Told> remarks() {
            return record.entries().stream().filter(e -> !told.contains(e.id()) && !note(e).isEmpty() && e.deed() != Deed.INSPECTED)
                    .map(e -> told(e, Points.title(e.point()) + ", " + e.what().replace('-', ' ') + " (" + e.deed().key() + ")" + note(e))).toList();
        }

        private List<Restraint> ridingIn() {
            return ride().map(plan -> plan.restraints().stream().map(r -> new Restraint(Told.check(Wording.because(r), "plan", r.evidence()),
                    Wording.restraint(r).stream().map(line -> Told.check(line, "plan", r.evidence())).toList())).toList()).orElse(List.of());
        }

        private List<Told> stop() {
            return ride().map(plan -> plan.stop().stream().map(line -> Told.of(Wording.line(line), "check/plan")).toList()).orElse(List.of());
        }

        private java.util.Optional<RidePlan> ride() {
            return rideable ? RidePlan.of(record, assessment) : java.util.Optional.empty();
        }

        /** What no release outlives is for the new owner to see to. */
        private Stream<Finding> lasting() {
            Instant release = assessment.asOf().plus(book.longestRelease());
            return findings.stream().filter(f -> f.lapses() != null && f.lapses().isAfter(release));
        }

        private List<Due> due() {
            Function<Finding, LocalDate> lastDay = f -> f.lapses().minusSeconds(1).atZone(record.zone()).toLocalDate();
            Map<LocalDate, List<Finding>> byDay = lasting().collect(Collectors.groupingBy(lastDay, TreeMap::new, Collectors.toList()));
            return byDay.entrySet().stream().map(day -> {
                List<String> from = day.getValue().stream().map(f -> "check/" + f.check()).toList();
                Map<String, List<Finding>> bySystem = day.getValue().stream().collect(Collectors.groupingBy(f -> f.check().replaceFirst("\\..*", ""), TreeMap::new, Collectors.toList()));
                return new Due(new Told(Wording.day(day.getKey()), from), bySystem.entrySet().stream().map(s -> new Labelled(s.getKey(), questions(s.getValue()))).toList());
            }).toList();
        }

        private Told questions(List<Finding> findings) {
            List<String> from = new ArrayList<>();
            findings.forEach(f -> {
                from.add("check/" + f.check());
                from.addAll(f.evidence());
            });
            return new Told(findings.stream().map(f -> book.cards().get(f.check()).question()).collect(Collectors.joining(" ")), from.stream().distinct().toList());
        }

        /** Of what is open, of what comes with a note, and of a machine made safe. */
        private List<Told> cautions() {
            boolean standsStill = leaving.stream().anyMatch(g -> g.gate() == Gate.NON_RUNNER);
            Map<String, Told> all = new LinkedHashMap<>();
            findings.stream().filter(f -> f.caution() != null && (standsStill || f.state() != State.MET || !Wording.notes(f).isEmpty()))
                    .forEach(f -> all.putIfAbsent(f.caution(), Told.of(f.caution(), "check/" + f.check())));
            return List.copyOf(all.values());
        }
    }
}

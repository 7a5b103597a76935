package chock.report;

import chock.assess.Judge;
import chock.assess.Points;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Gate;
import chock.signoff.SignOff;
import chock.signoff.Verification;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The paper of a sign-off: what was signed, what held of it when the paper was made, and the seal as a code. It says what the
 * sign-off carries and judges nothing again.
 *
 * @param holds whether nothing looked at fails
 * @param failing what does not hold, one sentence each
 * @param looked each thing looked at, with what it came to
 * @param lookedAt when
 * @param gate which gate
 * @param means what its release allows
 * @param until last moment it is good for
 * @param facts machine, place, law, rule book and record
 * @param signature who signed, when, with which key, and where the ledger has it
 * @param groups the findings, as they stand in the sign-off
 * @param sources what the limits rest on, numbered from 1
 * @param critical where a later entry voids it
 * @param seal what the code holds
 */
public record SignOffSheet(Heading heading, boolean holds, List<Told> failing, List<Statement.Labelled> looked, Told lookedAt, Told gate, Told means, Told until,
                           List<Statement.Labelled> facts, List<Statement.Labelled> signature, List<Told> workBy, List<Told> notes, List<Told> cautions,
                           Told count, List<Group> groups, List<Told> sources, Told notAsked, Told critical, Told deferral, String seal) {

    /** Findings of one system. */
    public record Group(String title, List<Row> rows) { }

    /**
     * One finding.
     *
     * @param key its state and its check
     * @param measured the deciding value, or null
     * @param limit what is allowed, or null
     * @param source number of its source, or 0
     */
    public record Row(Told says, Told key, Told measured, Told limit, int source, List<Told> notes) { }

    /**
     * @param found what held of it, with what was signed inside
     * @param moment when that was looked at
     */
    public static SignOffSheet of(Verification found, Instant moment) {
        SignOff s = found.signOff();
        Gate gate = Gate.of(s.gate()).orElseThrow();
        List<Told> sources = s.findings().stream().filter(f -> f.limit() != null).map(f -> f.limit().source()).distinct().map(words -> Told.of(words, "sign-off/findings")).toList();
        return new SignOffSheet(Heading.of(s), found.holds(),
                found.things().stream().filter(t -> t.holds() == Verification.Holds.NO).map(t -> Told.of(t.says(), "verify/" + t.thing().replace(' ', '-'))).toList(),
                found.things().stream().map(t -> new Statement.Labelled(t.thing() + ": " + word(t.holds()), Told.of(t.says(), "verify/" + t.thing().replace(' ', '-')))).toList(),
                Told.of(Wording.dayAndTime(moment, s.clock()) + " " + s.zone(), "verify/as-of"),
                Told.of(s.gate().replace('-', ' '), "sign-off/gate"), Told.of(Tag.means(gate, true), "sign-off/gate"),
                Told.of(Wording.dayAndTime(s.until(), s.clock()) + " " + s.zone(), "sign-off/holdsUntil"),
                facts(s), signature(s, found), told(s.workBy(), "workBy"), notes(s), told(s.cautions(), "cautions"),
                Told.of(count(s), "sign-off/findings"), groups(s, sources), sources,
                s.notAsked().isEmpty() ? null : Told.of(String.join(", ", s.notAsked()), "sign-off/notAsked"),
                s.criticalPoints().isEmpty() ? null : Told.of(s.criticalPoints().stream().map(Points::title).collect(Collectors.joining("; ")), "sign-off/criticalPoints"),
                Told.of(s.deferral(), "sign-off/deferral"), s.seal());
    }

    private static String word(Verification.Holds holds) {
        return switch (holds) {
            case YES -> "holds";
            case NO -> "does not hold";
            case NOT_LOOKED_AT -> "not looked at";
        };
    }

    private static String count(SignOff s) {
        long met = s.findings().stream().filter(f -> f.state().equals("met")).count();
        return s.findings().size() + " checks were asked, " + (met == s.findings().size() ? "and every one is met." : "and " + met + " are met.");
    }

    private static List<Told> told(List<String> all, String field) {
        return all.stream().map(words -> Told.of(words, "sign-off/" + field)).toList();
    }

    private static List<Told> notes(SignOff s) {
        List<Told> notes = new ArrayList<>(told(s.notes(), "notes"));
        if (!s.changedSince().isEmpty()) {
            notes.add(Told.of("Written anew since it was last signed: " + String.join(", ", s.changedSince()) + ".", "sign-off/changedSince"));
        }
        return notes;
    }

    private static List<Statement.Labelled> facts(SignOff s) {
        SignOff.OfMachine machine = s.machine();
        return List.of(line("Machine", machine.marque() + " " + machine.model(), "machine"), line("Frame number", machine.frameNumber(), "machine"),
                line("Engine number", machine.engineNumber(), "machine"), line("Built", machine.built(), "machine"), line("First registered", machine.firstRegistered(), "machine"),
                line("Workshop", s.record().workshop(), "record"), line("Record", s.record().id(), "record"), line("Digest of the record", s.record().digest(), "record"),
                line("Judged", Wording.dayAndTime(s.judged(), s.clock()) + " " + s.zone(), "asOf"), line("For the law of", s.territory(), "territory"), line("Local code", s.localCode(), "localCode"),
                line("Rule book", "version " + s.ruleBook().version() + ", " + s.ruleBook().digest(), "ruleBook"), line("House rules", s.house(), "house"));
    }

    private static List<Statement.Labelled> signature(SignOff s, Verification found) {
        List<Statement.Labelled> lines = new ArrayList<>(signature(s));
        if (found.head() != null) {
            lines.add(new Statement.Labelled("Head of the ledger", Told.of(found.head().toString(), "verify/ledger")));
        }
        return List.copyOf(lines);
    }

    private static List<Statement.Labelled> signature(SignOff s) {
        return List.of(line("Signed by", s.signer().name() + ", " + s.signer().role(), "signer"),
                line("On", Wording.dayAndTime(Instant.parse(s.signedAt()), s.clock()) + " " + s.zone(), "signedAt"),
                line("With the key", s.signer().keyId(), "signer"), line("In the ledger", "line " + s.ledger().line(), "ledger"));
    }

    private static Statement.Labelled line(String label, String words, String field) {
        return new Statement.Labelled(label, Told.of(words, "sign-off/" + field));
    }

    private static List<Group> groups(SignOff s, List<Told> sources) {
        List<Group> groups = new ArrayList<>();
        for (SignOff.Found found : s.findings()) {
            String title = found.check().replaceFirst("\\..*", "") + (found.critical() ? ": where somebody gets hurt when it is wrong" : "");
            if (groups.isEmpty() || !groups.get(groups.size() - 1).title().equals(title)) {
                groups.add(new Group(title, new ArrayList<>()));
            }
            groups.get(groups.size() - 1).rows().add(row(found, sources));
        }
        return groups;
    }

    private static Row row(SignOff.Found found, List<Told> sources) {
        String from = "sign-off/findings/" + found.check();
        List<String> whole = new ArrayList<>(found.evidence());
        whole.add(from);
        return new Row(new Told(found.says(), whole), Told.of(found.state() + " · " + found.check(), from),
                found.measured() == null ? null : Told.of(shown(found.measured()), from),
                found.limit() == null ? null : Told.of(found.limit().says(), from),
                found.limit() == null ? 0 : 1 + sources.stream().map(Told::says).toList().indexOf(found.limit().source()),
                found.notes().stream().map(note -> Told.of(note, from)).toList());
    }

    /** As a report shows it: what was worked out has more figures in the sign-off than anybody measured. */
    private static String shown(SignOff.Amount amount) {
        return Judge.shown(new Measured(quantity(amount.value(), amount.unit()), amount.uncertainty() == null ? null : quantity(amount.uncertainty(), amount.unit())));
    }

    private static Quantity quantity(String value, String unit) {
        return Quantity.of(value, Unit.spelled(unit).orElseThrow());
    }
}

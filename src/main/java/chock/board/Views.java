package chock.board;

import chock.assess.Finding;
import chock.assess.Points;
import chock.assess.State;
import chock.board.store.Floor;
import chock.board.store.Summary;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.report.Wording;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What the pages are filled with. */
final class Views {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.UK);

    private Views() { }

    /** What every page has: its title, who looks at it, and what everybody who is signed in has to know (empty for nothing). */
    record Frame(String title, Visitor visitor, String message) {
        boolean signedIn() {
            return visitor != null && visitor.mayRead();
        }

        boolean may(Action action) {
            return signedIn() && visitor.may(action);
        }

        String form() {
            return visitor == null ? "" : visitor.form();
        }
    }

    /** A choice in a list. */
    record Choice(String value, String words, boolean chosen) { }

    /** A link with its words. */
    record Link(String to, String words) { }

    record Machines(Frame frame, String q, String check, List<Choice> gates, List<Choice> states, List<Choice> orders, boolean lapsing, long all, int page,
                    String before, String after, List<Row> rows, List<Blocker> blockers, long waiting) {
        /** Whether a filter is set that somebody has to see to understand the list. */
        boolean filtered() {
            return lapsing || !check.isEmpty() || gates.stream().anyMatch(gate -> gate.chosen() && !gate.value().isEmpty()) || states.stream().anyMatch(state -> state.chosen() && !state.value().isEmpty());
        }
    }

    record Blocker(String check, String question, long machines, String link) { }

    record Row(String id, String name, String written, boolean judged, List<GateLine> gates, List<SignViews.Stands> signed) {
        static Row of(Floor.Row row, ZoneId zone, List<SignViews.Stands> signed) {
            return new Row(row.id(), row.marque() + " " + row.model(), day(row.writtenAt(), zone), row.judged(), row.gates().stream().map(gate -> GateLine.of(gate, row.judged(), zone)).toList(), signed);
        }
    }

    /** A gate in one line: its word, and what holds it or until when it holds. */
    record GateLine(String gate, boolean released, String word, String says, List<String> worst, String more) {
        /** A gate whose release rests on what a lead withdrew. */
        static GateLine withdrawn(Gate gate) {
            return new GateLine(gate.id(), false, "held", "its release rests on what was withdrawn", List.of(), "");
        }

        static GateLine of(Summary.OfGate gate, boolean judged, ZoneId zone) {
            if (!judged) {
                return new GateLine(gate.gate(), false, "held", "waits to be judged again", List.of(), "");
            }
            if (gate.released()) {
                return new GateLine(gate.gate(), true, "released", "until " + day(gate.holdsUntil(), zone) + ", if nobody touches it", List.of(), "");
            }
            int left = gate.open() - gate.held().size();
            return new GateLine(gate.gate(), false, "held", counts(gate), gate.held().stream().map(h -> h.state() + ": " + h.says()).toList(), left > 0 ? "and " + left + " more" : "");
        }
    }

    static String counts(Summary.OfGate gate) {
        List<String> words = new ArrayList<>();
        add(words, State.FAULT, gate.faults());
        add(words, State.DOUBT, gate.doubts());
        add(words, State.STALE, gate.stales());
        add(words, State.MISSING, gate.missings());
        if (gate.undecided() > 0) {
            words.add(gate.undecided() + " the rule book cannot decide");
        }
        return String.join(", ", words);
    }

    private static void add(List<String> words, State state, int n) {
        if (n > 0) {
            words.add(Wording.counted(state, n));
        }
    }

    static String day(Instant at, ZoneId zone) {
        return at.atZone(zone).format(DAY);
    }

    record Machine(Frame frame, String id, String name, String about, String effect, List<GateLine> sought, List<Choice> gates, String gate, String verdict, boolean released,
                   String judged, List<Group> open, List<FindingLine> met, List<String> notAsked, List<Line> entries, String earlier, String notice, SignViews.Panel signing, boolean plansRuns, Besides besides, String law, String withdrawn) { }

    /**
     * What has to be told besides the findings.
     *
     * @param defects each with where to close it, or with no address
     */
    record Besides(List<Link> defects, List<String> lifted, List<String> unread) { }

    record Group(String state, String meaning, List<FindingLine> findings) { }

    /** @param places where to write it down: one link for each place that is not met, or for each where all are */
    record FindingLine(String check, String state, String sign, boolean critical, String says, List<String> also, List<String> notes, String basis, String limit, String remedy,
                       String caution, List<Link> places, String why, String toDo) {
        static FindingLine of(Finding f, String machine, String gate, boolean mayWrite) {
            List<Link> places = !mayWrite ? List.of() : f.places().stream().filter(p -> f.state() == State.MET || p.state() != State.MET)
                    .map(p -> new Link("/machines/" + Query.encoded(machine) + "/write?check=" + Query.encoded(f.check()) + "&at=" + Query.encoded(p.point()) + "&gate=" + Query.encoded(gate), Points.title(p.point()))).toList();
            return new FindingLine(f.check(), f.state().id(), Wording.sign(f.state()), f.critical(), f.says(), List.copyOf(Wording.elsewhere(f)), List.copyOf(Wording.notes(f)), Wording.basis(f),
                    f.limit() == null ? "" : f.limit().words(), f.state() == State.MET || f.remedy() == null ? "" : f.remedy(), f.caution() == null ? "" : f.caution(), places, "/machines/" + Query.encoded(machine) + "/why?check=" + Query.encoded(f.check()) + "&gate=" + Query.encoded(gate), Wording.toDo(f.state()));
        }
    }

    /** A line of the time line. */
    record Line(String id, String at, String by, String deed, String what, String place, String is, String with, String corrects, String correctedBy, String note, String late, String correctLink,
                List<Link> photos, String photoLink) {
        static Line of(Entry e, String by, String correctedBy, String late, String link, List<Link> photos, String photoLink) {
            String what = e.what() == null ? "" : e.deed() == Deed.DEFECT ? e.what() : e.what().replace('-', ' ');
            String reason = e.deed() == Deed.CLOSED ? ": " + e.reason() : "";
            return new Line(e.id(), e.at().toString(), by, e.deed().key().replace('-', ' '), what + reason, e.point() == null ? "" : Points.words(e.point()),
                    e.is() == null ? "" : e.is().toString().replace('-', ' '), e.with() == null ? "" : e.with(), e.corrects() == null ? "" : e.corrects() + ": " + e.reason(),
                    correctedBy, e.note() == null ? "" : e.note() + (e.noteIs() == null ? "" : " (" + e.noteIs().name().toLowerCase(java.util.Locale.ROOT) + ")"), late, link, photos, photoLink);
        }
    }

    record Write(Frame frame, String id, String name, long version, String back, String check, String look, String question, String at, String place, String needs, String wants, String remedy, String caution,
                 List<Field> fields, List<Link> looks, List<Choice> works, List<String> points, String corrects, String reason, List<String> faults, String when, String late, String note, String closes, String defect, List<Choice> dangers, List<Choice> notes, boolean laterForm, List<Tool> tools) { }

    /**
     * What work done with an instrument is asked besides.
     *
     * @param kind of the instrument
     * @param set what was typed as what it was set to
     */
    record Tool(String work, String kind, String quantity, String units, List<Choice> instruments, String set) { }

    /**
     * One thing to be written down.
     *
     * @param key place and what is asked; its fields are named by it
     * @param kind amount, answer, days, code or work
     * @param tools one for work done with an instrument, else none
     */
    record Field(int n, String key, String deed, String what, String place, String kind, String unit, String units, List<Choice> answers, List<Choice> instruments, String is, List<Tool> tools) { }

    record Take(Frame frame, List<String> faults) { }

    record Signing(Frame frame, String id, String complaint) { }

    /** @param keys keys in their name that they could sign with */
    record Account(String id, String name, String role, boolean active, List<Choice> roles, List<Choice> keys) { }

    record Accounts(Frame frame, List<Account> accounts, String secretFor, String secret, String complaint, List<Choice> roles) { }

    record Happened(Frame frame, List<Event> events, String before, String after) { }

    record Event(String at, String account, String action, String machine, String detail) { }

    record Failed(Frame frame, int status, String says, String back) { }
}

package chock.signoff;

import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.NoteIs;
import chock.record.Vocabulary;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/** The places on a machine where somebody gets hurt when something is wrong, and what was written about them since. */
final class Critical {
    private static final String INSTRUMENT = "instrument/";
    // No place on the machine: a pass touches nothing, and a refusal everything.
    private static final String LICENSED = "licensed-inspection";

    private Critical() { }

    /**
     * Something written.
     *
     * @param id the entry
     * @param at as written
     * @param point the place; for an instrument found out of tolerance {@code instrument/} and its id
     * @param refused whether a licensed person did not let the machine pass
     * @param defect whether it reports a defect, which holds the machine wherever it is
     */
    record Noted(String id, String at, String point, boolean refused, boolean defect) {
        static Noted of(Entry entry) {
            String point = switch (entry.deed()) {
                case FOUND_OUT -> INSTRUMENT + entry.point();
                case INSPECTED -> LICENSED;
                default -> entry.point();
            };
            return new Noted(entry.id(), entry.at().toString(), point, entry.deed() == Deed.INSPECTED && !"passed".equals(entry.what()),
                    entry.deed() == Deed.DEFECT || entry.noteIs() == NoteIs.DEFECT);
        }

        private boolean touches(List<String> points) {
            return refused || defect || points.stream().anyMatch(place -> Entry.covers(point, place) || Entry.covers(place, point));
        }

        String words() {
            return "entry " + id + " of " + at + (refused ? " is a licensed refusal" : defect ? " reports a defect at " + point : " is about " + point);
        }
    }

    /**
     * Where the critical checks of a gate were asked, where the evidence for them was taken, and what it was taken with; in
     * order of name.
     */
    static List<String> points(GateVerdict gate, JobRecord record) {
        TreeSet<String> points = new TreeSet<>();
        for (Finding finding : gate.findings()) {
            if (finding.critical()) {
                finding.places().forEach(place -> points.add(place.point()));
                finding.evidence().forEach(id -> record.entry(id).ifPresent(entry -> {
                    points.add(Noted.of(entry).point());
                    if (entry.with() != null) {
                        points.add(INSTRUMENT + entry.with());
                    }
                }));
            }
        }
        points.remove(LICENSED);
        return List.copyOf(points);
    }

    /**
     * The first of these that is about a critical place, about what carries it, or about a part of it.
     *
     * @param points as they were called when it was signed
     * @param words what places are called today
     */
    static Optional<Noted> touched(List<Noted> later, List<String> points, Vocabulary words) {
        List<String> today = points.stream().map(words::placeNow).toList();
        return later.stream().filter(noted -> noted.touches(today)).findFirst();
    }
}

package chock.report;

import chock.assess.Explanation;
import chock.assess.Points;
import chock.assess.State;
import java.util.ArrayList;
import java.util.List;

/**
 * Why a check came to its finding, in the sentences that terminal and page share.
 *
 * @param none why it is not asked, or empty when it is
 * @param remedy what clears it, or empty when nothing is open
 */
public record WhyWords(String check, String question, String none, List<Place> places, String remedy) {

    /** One place where it is asked. */
    public record Place(String title, State state, List<Said> lines) { }

    /**
     * @param lead words in front, or empty
     * @param below what is listed under it
     */
    public record Said(String lead, String words, List<String> below) {
        private Said(String lead, String words) {
            this(lead, words, List.of());
        }
    }

    /** What stands before the remedy, by the worst place. */
    public String toDo() {
        return Wording.toDo(places.isEmpty() ? State.MISSING : places.get(0).state());
    }

    public static WhyWords of(Explanation explanation) {
        String none = explanation.places().isEmpty() ? "Not asked: it is asked of " + explanation.applies() + "; this machine has none." : "";
        boolean open = explanation.places().stream().anyMatch(p -> p.state() != State.MET);
        return new WhyWords(explanation.check(), explanation.question(), none, explanation.places().stream().map(p -> place(p, explanation.applies())).toList(), open ? explanation.remedy() : "");
    }

    private static Place place(Explanation.AtPlace place, String applies) {
        List<Said> lines = new ArrayList<>();
        lines.add(new Said("", "Asked, because it is asked of " + applies + ". Rule " + place.rule() + (place.because().isEmpty() ? "." : " found:"), place.because().stream().map(fact -> fact + ".").toList()));
        place.wants().forEach(want -> lines.add(wanted(want)));
        if (place.limit() != null) {
            lines.add(new Said("Limit that decides: ", place.limit() + ".", place.others().stream().map(other -> other + ".").toList()));
        }
        place.lacks().forEach(lack -> lines.add(new Said("Lacks: ", lack + ".")));
        place.compared().forEach(one -> lines.add(compared(one)));
        place.closes().forEach(gates -> lines.add(new Said("Closes as well: ", gates + ".")));
        lines.add(new Said("So it is ", place.state().id() + ": " + Wording.meaning(place.state()) + "."));
        return new Place(Points.title(place.point()), place.state(), lines);
    }

    private static Said wanted(Explanation.WantedHere want) {
        List<String> below = want.considered().isEmpty() ? List.of("no entry says anything about it.") : want.considered().stream().map(WhyWords::considered).toList();
        return new Said("", "Wants " + want.asks() + "; holds " + want.holds() + ".", below);
    }

    private static String considered(Explanation.Considered one) {
        String fate = switch (one.fate()) {
            case DECIDES -> "decides";
            case STANDS -> "stands";
            case SET_ASIDE -> "set aside";
        };
        return one.entry() + " " + fate + ": " + one.says() + (one.why().isEmpty() ? "" : "; " + String.join("; ", one.why())) + ".";
    }

    private static Said compared(Explanation.Compared one) {
        String entries = one.evidence().isEmpty() ? "" : " (" + String.join(", ", one.evidence()) + ")";
        return new Said("Compared: ", one.says() + (one.margin() == null ? "" : "; " + one.margin()) + entries + (one.how() == null ? "" : "; worked out by rule " + one.how()) + ": " + one.state().id() + ".");
    }
}

package chock.assess;

import chock.assess.OrderOfWork.Kind;
import chock.assess.facts.Wanted;
import java.util.stream.Collectors;

/** What a step of the order says. */
final class StepWords {
    private StepWords() { }

    static String of(Task task) {
        String where = Points.title(task.point);
        String remedy = String.join(" ", task.remedies);
        return switch (task.kind) {
            case SETTLE -> where + ": " + remedy;
            case PUT_RIGHT -> where + ": " + remedy + " Write '" + (task.what == null ? "repaired' or 'replaced' on the part, or whatever work it was" : task.what + "'") + ".";
            case PUT_TOGETHER -> task.what.equals("tightened") ? where + ": tighten it again, to its figure where it has one, and write 'torqued' or 'tightened'."
                    : task.what.equals("filled") ? where + ": fill it again and write 'filled'."
                    : where + ": put it together again and write 'refitted', or 'replaced'; 'left-off' on what stays off for good.";
            case DO -> where + ": " + remedy + " Write '" + task.what + "'.";
            default -> where + ": " + words(task.what) + limit(task) + rest(task);
        };
    }

    private static String words(String aspect) {
        return aspect.replace('-', ' ');
    }

    private static String limit(Task task) {
        String limits = task.wanted.stream().filter(w -> w.judged() && w.limit() != null && w.limit().applied() != null).map(w -> w.limit().applied().words())
                .distinct().collect(Collectors.joining("; "));
        String good = limits.isEmpty() ? task.wanted.stream().map(Wanted::want).filter(w -> !w.good().isEmpty()).map(w -> String.join(" or ", w.good())).distinct().collect(Collectors.joining("; ")) : limits;
        return good.isEmpty() ? "" : ", " + good;
    }

    private static String rest(Task task) {
        String finer = task.kind == Kind.MEASURE && !task.corrects.isEmpty() ? ", again, with something finer where there is any" : "";
        String instead = task.corrects.isEmpty() ? "" : finer + "; correct " + String.join(", ", task.corrects) + " where it does not bear it out";
        String person = task.notBy == null ? "" : "; by somebody other than " + (task.notBy.isEmpty() ? "who does the work there" : task.notBy);
        String again = task.wanted.isEmpty() && task.corrects.isEmpty() ? "; put it right where it is not good, and look again" : "";
        return again + instead + person + (task.namesDocument() ? "; name the document in the note" : "") + ".";
    }
}

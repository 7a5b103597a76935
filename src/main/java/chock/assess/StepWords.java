package chock.assess;

import chock.assess.OrderOfWork.Kind;
import chock.assess.OrderOfWork.Step;
import chock.assess.facts.Wanted;
import java.util.stream.Collectors;

/** What a step of the order says. */
final class StepWords {
    private StepWords() { }

    /** What to do, without the place and without what to write. */
    static String doing(Task task) {
        return switch (task.kind) {
            case SETTLE, PUT_RIGHT, DO -> String.join(" ", task.remedies);
            case PUT_TOGETHER -> switch (task.what) {
                case "tightened" -> "tighten it again, to its figure where it has one.";
                case "filled" -> "fill it again.";
                default -> "put it together again.";
            };
            default -> words(task.what) + limit(task) + rest(task);
        };
    }

    /** What to write when work is done; null of everything else. */
    static String writing(Task task) {
        return switch (task.kind) {
            case PUT_RIGHT -> task.what == null ? "'repaired' or 'replaced' on the part, or whatever work it was" : "'" + task.what + "'";
            case PUT_TOGETHER -> switch (task.what) {
                case "tightened" -> "'torqued' or 'tightened'";
                case "filled" -> "'filled'";
                default -> "'refitted', or 'replaced'; 'left-off' on what stays off for good";
            };
            case DO -> "'" + task.what + "'";
            default -> null;
        };
    }

    /** Both as one text: a remedy may be several sentences, so writing is one more; to put together and write is one. */
    static String together(Step step) {
        if (step.writing() == null) {
            return step.doing();
        }
        if (step.kind() != Kind.PUT_TOGETHER) {
            return step.doing() + " Write " + step.writing() + ".";
        }
        String open = step.doing().substring(0, step.doing().length() - 1);
        return open + (open.contains(",") ? ", and write " : " and write ") + step.writing() + ".";
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

package chock.assess;

import chock.record.Gate;
import java.util.List;

/**
 * A known fault that closes a gate which does not ask for its check.
 *
 * @param fault the fault as any other finding; its sentence says as well why it closes this gate
 * @param dangers what the fault can do, by name
 * @param words the same in words
 * @param askedAt the gates that ask for the check
 */
public record ClosedBy(Finding fault, List<String> dangers, List<String> words, List<Gate> askedAt) {

    /** Why a known fault closes a gate that does not ask for its check. */
    static String why(Gate gate, List<String> words) {
        return " Not asked at " + gate + ", but a known fault closes it" + (words.isEmpty() ? "." : ": " + String.join("; ", words) + ".");
    }

    public String check() {
        return fault.check();
    }
}

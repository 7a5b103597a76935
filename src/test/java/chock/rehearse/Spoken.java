package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import chock.rulebook.RuleBook;
import java.nio.file.Path;
import java.util.List;

/** Scenarios spoken to a rule book other than the shipped one. */
public final class Spoken {
    private Spoken() { }

    /** What did not hold, one line each, of the scenarios in a feature file or in all below a folder. Nothing to run is a failure. */
    public static List<String> against(RuleBook book, Path place) {
        Rehearsed rehearsed = Rehearsal.run(book, List.of(place.toString()), null, null);
        assertThat(rehearsed.shown()).as("scenarios in " + place).isNotEmpty();
        return rehearsed.shown().stream().filter(shown -> !shown.holds())
                .map(shown -> shown.name() + ": " + (shown.slips().isEmpty() ? "expects nothing" : shown.slips().get(0).step() + ": " + shown.slips().get(0).found())).toList();
    }
}

package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Fault;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan of a run under a roof that is not sound is not loaded. */
class RunSheetTest {
    private static final String SOUND = """
            caution:
              - "It kills."
            parts:
              - id: who
                title: Who
                numbered: no
                when-refused: yes
                lines:
                  - {say: "Two people."}
              - id: stop
                title: Stop
                numbered: yes
                when-refused: yes
                lines:
                  - {say: "at {stop-level}", only: room}
            """;

    private static List<String> faults(String text) {
        List<Fault> faults = new ArrayList<>();
        RunSheetReader.read(Sheet.one("rules/air/plan.yaml", text, faults));
        return faults.stream().map(Fault::toString).toList();
    }

    @Test
    void the_shipped_plan_and_a_small_sound_one_load() {
        assertThat(faults(SOUND)).isEmpty();
        RunSheet shipped = OneSystem.of("air").run().orElseThrow();
        assertThat(shipped.caution()).isNotEmpty();
        assertThat(shipped.parts()).extracting(RunSheet.Part::id).contains("who", "before", "run", "stop", "after", "next");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            - "It kills."            | - "It kills in 5 minutes."   | a number in the words has no source
            - "It kills."            | - "It kills at {stop-level}." | a caution names no figure
            {say: "Two people."}     | {say: "2 people."}           | a number in the words has no source
            at {stop-level}          | at {level}                   | '{level}' is not a figure of a run
            at {stop-level}          | at {stop-level               | is not a figure of a run
            only: room               | only: garage                 | 'garage': write one of hose, room, series
            id: stop                 | id: who                      | 'who' stands twice
            id: stop                 | id: halt                     | a run needs to say who may be there and when to stop
            numbered: no             | numbered: perhaps            | 'perhaps': write yes or no
            when-refused: yes        | when-refused: never          | 'never': write yes or no
            title: Who               | tittle: Who                  | unknown key 'tittle'
            """)
    void a_wrong_one_is_refused(String right, String wrong, String message) {
        assertThat(SOUND).contains(right);
        assertThat(faults(SOUND.replace(right, wrong))).anySatisfy(fault -> assertThat(fault).contains(message));
    }

    @Test
    void nothing_goes_without_its_caution() {
        assertThat(faults(SOUND.replace("caution:\n  - \"It kills.\"\n", ""))).anySatisfy(fault -> assertThat(fault).contains("no run under a roof without its caution"));
    }
}

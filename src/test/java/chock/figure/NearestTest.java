package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {

    /** At most a third of the letters may be changed, added or left out, one where there are fewer than six. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            sped     | ; perhaps speed
            spede    | ''
            xspeed   | ; perhaps speed
            speedos  | ; perhaps speed
            speedoms | ''
            SPEED    | ; perhaps speed
            peed     | ; perhaps speed
            ed       | ''
            x        | ''
            spee     | ; perhaps speed
            lead     | ; perhaps load
            toad     | ; perhaps load or road
            """)
    void proposesWhatLooksMostAlike(String text, String advice) {
        assertThat(Nearest.advice(text, List.of("speed", "road", "load"))).isEqualTo(advice);
    }

    @Test
    void proposesNothingForASentence() {
        String longest = "a".repeat(60);
        assertThat(Nearest.advice(longest, List.of(longest))).isEqualTo("; perhaps " + longest);
        assertThat(Nearest.advice(longest + "a", List.of(longest))).isEmpty();
        assertThat(Nearest.advice("speed", List.of())).isEmpty();
    }
}

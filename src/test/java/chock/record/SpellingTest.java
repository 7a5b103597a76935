package chock.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpellingTest {

    /** Counted by hand. */
    @ParameterizedTest
    @CsvSource({"drum,drum,0", "drum,drumm,1", "drum,dru,1", "drum,drim,1", "drum,durm,1", "drum,DRUM,0", "'',drum,4", "drum,'',4", "caliper,calliper,1", "chain,shaft,3", "ca,abc,3"})
    void slips(String one, String other, int slips) {
        assertThat(Spelling.slips(one, other)).isEqualTo(slips);
        assertThat(Spelling.slips(other, one)).isEqualTo(slips);
    }

    @Test
    void nearestFirstThenByTheAlphabetAndAtMostThree() {
        assertThat(Spelling.nearest("hose", List.of("nose", "rose", "hoses", "house", "horses"))).containsExactly("hoses", "house", "nose");
        assertThat(Spelling.nearest("thikness", List.of("torque", "thickness"))).containsExactly("thickness");
    }

    @Test
    void nothingNearIsNothing() {
        assertThat(Spelling.nearest("gearbox", List.of("hose", "line"))).isEmpty();
        assertThat(Spelling.nearest("", List.of("hose"))).isEmpty();
        assertThat(Spelling.nearest("hose", List.of())).isEmpty();
    }
}

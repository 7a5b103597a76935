package chock.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** That what looks for failures finds one. */
class FuzzTest {
    private static final List<byte[]> GOOD = List.of("one: two\nthree: four\n".getBytes(StandardCharsets.UTF_8));

    @Test
    void aReaderThatFailsIsFoundAndTheFileThatDidItIsTold() {
        assertThatThrownBy(() -> Fuzz.run(GOOD, bytes -> {
            if (!new String(bytes, StandardCharsets.UTF_8).contains("three")) {
                throw new IllegalStateException("not three");
            }
        }, 1)).isInstanceOf(AssertionError.class).hasMessageContaining("not three").hasMessageContaining("seed 1");
    }

    @Test
    void aReaderThatKeepsWhatItReadIsFound() {
        List<byte[]> kept = new java.util.ArrayList<>();
        assertThatThrownBy(() -> Fuzz.run(GOOD, bytes -> {
            if (kept.size() < 500) {
                kept.add(new byte[1 << 20]);
            }
        }, 1)).isInstanceOf(AssertionError.class).hasMessageContaining("MB behind");
        assertThat(kept).isNotEmpty();
    }
}

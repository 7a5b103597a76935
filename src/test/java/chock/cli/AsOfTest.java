package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine.TypeConversionException;

class AsOfTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    @ParameterizedTest
    @CsvSource({
        "2026-07-25T12:00,                  2026-07-25T11:00:00Z",
        "2026-07-25 12:00,                  2026-07-25T11:00:00Z",
        "2026-07-25T12:00:30,               2026-07-25T11:00:30Z",
        "2026-07-25T12:00Z,                 2026-07-25T12:00:00Z",
        "2026-07-25T12:00+05:30,            2026-07-25T06:30:00Z",
        "2026-07-25T12:00[America/New_York],2026-07-25T16:00:00Z",
        "2026-07-25T12:00-04:00[America/New_York],2026-07-25T16:00:00Z",
    })
    void a_time_without_a_zone_is_on_the_workshops_clock(String written, Instant meant) {
        assertThat(new AsOfWord().convert(written).in(LONDON)).isEqualTo(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-11-25", "2026-02-30T12:00", "2026-11-25T25:00", "25/11/2026 12:00", "", "now", "+999999999-01-01T00:00", "2026-11-25T12:00[Nowhere/Town]"})
    void anything_else_is_refused_with_the_way_to_write_it(String written) {
        assertThatThrownBy(() -> new AsOfWord().convert(written)).isInstanceOf(TypeConversionException.class).hasMessageContaining("write 2026-11-25T12:00");
    }

    @Test
    void an_hour_that_comes_twice_means_the_first() {
        // clocks in London go back on 2026-10-25 at 02:00 summer time
        assertThat(new AsOfWord().convert("2026-10-25T01:30").in(LONDON)).isEqualTo(Instant.parse("2026-10-25T00:30:00Z"));
    }
}

package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import chock.quantity.Quantity;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DaylightTest {
    private static final double RIM = -50.0 / 60;

    private static Daylight on(double latitude, double longitude, String date, String zone) {
        return Daylight.on(Quantity.parse(latitude + "°"), Quantity.parse(longitude + "°"), LocalDate.parse(date), ZoneId.of(zone));
    }

    private static LocalDateTime local(Optional<ZonedDateTime> moment) {
        return moment.orElseThrow().toLocalDateTime();
    }

    /** London and Wellington at their solstices and London in autumn, as almanacs print them (from memory, to a minute or two). */
    @ParameterizedTest
    @CsvSource({"51.5, -0.13, 2025-06-21, Europe/London, 04:43, 21:21", "51.5, -0.13, 2025-12-21, Europe/London, 08:04, 15:53",
        "51.5, -0.13, 2026-11-25, Europe/London, 07:36, 15:59", "-41.29, 174.78, 2025-12-21, Pacific/Auckland, 05:43, 20:54"})
    void agreesWithTheAlmanac(double latitude, double longitude, String date, String zone, String rise, String set) {
        Daylight daylight = on(latitude, longitude, date, zone);
        assertThat(local(daylight.sunrise())).isCloseTo(date + "T" + rise, within(2, ChronoUnit.MINUTES));
        assertThat(local(daylight.sunset())).isCloseTo(date + "T" + set, within(2, ChronoUnit.MINUTES));
    }

    /** Low-precision solar coordinates of the Astronomical Almanac (0.01°, from memory): the sun is where the limit says, all over the world. */
    @Test
    void putsTheSunOnTheHorizon() {
        for (double latitude : new double[] {-64, -48, -33, -10, 0, 22, 37, 51.5, 64}) {
            for (double longitude : new double[] {-180, -122, -77, -0.1, 44, 103, 151, 180}) {
                for (LocalDate date = LocalDate.of(2026, 1, 5); date.getYear() == 2026; date = date.plusDays(31)) {
                    Daylight daylight = on(latitude, longitude, date.toString(), "UTC");
                    String where = latitude + " " + longitude + " " + date;
                    assertThat(height(daylight.sunrise().orElseThrow(), latitude, longitude)).as("sunrise " + where).isCloseTo(RIM, within(0.06));
                    assertThat(height(daylight.sunset().orElseThrow(), latitude, longitude)).as("sunset " + where).isCloseTo(RIM, within(0.06));
                    daylight.civilDawn().ifPresent(dawn -> assertThat(height(dawn, latitude, longitude)).as("dawn " + where).isCloseTo(-6, within(0.06)));
                    daylight.civilDusk().ifPresent(dusk -> assertThat(height(dusk, latitude, longitude)).as("dusk " + where).isCloseTo(-6, within(0.06)));
                    assertThat(daylight.sunrise().orElseThrow()).isBefore(daylight.sunset().orElseThrow());
                }
            }
        }
    }

    /** Within 48° of the equator the sun sinks 6° below the horizon every night: 90° − 48° − 23.4° = 18.6° of depth at least. */
    @Test
    void framesTheDayByDawnAndDusk() {
        for (double latitude : new double[] {-48, -33, 0, 22, 48}) {
            for (LocalDate date = LocalDate.of(2026, 1, 5); date.getYear() == 2026; date = date.plusDays(31)) {
                Daylight daylight = on(latitude, 10, date.toString(), "UTC");
                assertThat(List.of(daylight.civilDawn().orElseThrow(), daylight.sunrise().orElseThrow(), daylight.sunset().orElseThrow(), daylight.civilDusk().orElseThrow()))
                        .as("%s %s", latitude, date).isSorted();
                // the shortest way through 5°10′ is straight down, at 15° an hour
                assertThat(Duration.between(daylight.sunset().orElseThrow(), daylight.civilDusk().orElseThrow())).isGreaterThan(Duration.ofMinutes(20));
            }
        }
    }

    private static double height(ZonedDateTime moment, double latitude, double longitude) {
        double n = (moment.toEpochSecond() - LocalDateTime.of(2000, 1, 1, 12, 0).toEpochSecond(ZoneOffset.UTC)) / 86_400.0;
        double anomaly = Math.toRadians(357.528 + 0.9856003 * n);
        double ecliptic = Math.toRadians(280.460 + 0.9856474 * n + 1.915 * Math.sin(anomaly) + 0.020 * Math.sin(2 * anomaly));
        double tilt = Math.toRadians(23.439 - 0.0000004 * n);
        double ascension = Math.atan2(Math.cos(tilt) * Math.sin(ecliptic), Math.cos(ecliptic));
        double declination = Math.asin(Math.sin(tilt) * Math.sin(ecliptic));
        double hourAngle = Math.toRadians(280.46061837 + 360.98564736629 * n + longitude) - ascension;
        return Math.toDegrees(Math.asin(Math.sin(Math.toRadians(latitude)) * Math.sin(declination)
                + Math.cos(Math.toRadians(latitude)) * Math.cos(declination) * Math.cos(hourAngle)));
    }

    /** Just below the polar circle a June sun sets after midnight: sunset belongs to the day that went before it. */
    @Test
    void takesTheSunsetAfterNoon() {
        Daylight daylight = on(65.68, -18.1, "2026-06-21", "Atlantic/Reykjavik");
        assertThat(local(daylight.sunrise()).toLocalDate()).isEqualTo("2026-06-21");
        assertThat(local(daylight.sunset())).isBetween(LocalDateTime.parse("2026-06-22T00:30"), LocalDateTime.parse("2026-06-22T01:30"));
        assertThat(daylight.civilDusk()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"70, 20, 2026-06-21", "70, 20, 2026-12-21", "-90, 0, 2026-06-21"})
    void hasNoSunriseWhereThereIsNone(double latitude, double longitude, String date) {
        Daylight daylight = on(latitude, longitude, date, "UTC");
        assertThat(daylight.sunrise()).isEmpty();
        assertThat(daylight.sunset()).isEmpty();
    }

    @Test
    void hasCivilTwilightInAPolarNight() {
        assertThat(on(70, 20, "2026-12-21", "UTC").civilDawn()).isPresent();
    }

    @Test
    void refusesAPlaceOffTheGlobe() {
        assertThatThrownBy(() -> on(90.1, 0, "2026-11-25", "UTC")).isInstanceOf(BadFigureInput.class).hasMessage("latitude is 90.1°; it lies between -90° and 90°");
        assertThatThrownBy(() -> on(0, -181, "2026-11-25", "UTC")).isInstanceOf(BadFigureInput.class).hasMessage("longitude is -181.0°; it lies between -180° and 180°");
        assertThatThrownBy(() -> Daylight.on(Quantity.parse("51 m"), Quantity.parse("0°"), LocalDate.of(2026, 11, 25), ZoneOffset.UTC)).isInstanceOf(BadFigureInput.class)
                .hasMessage("latitude is 51 m, which is not a unit of angle; write one of °");
    }
}

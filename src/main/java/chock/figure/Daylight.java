package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * Daylight of one day: from the sunrise before its solar noon to the sunset after it. Sunrise and sunset: the centre of
 * the sun 50 arc minutes below a level horizon; civil twilight: 6° below (both read in copies). Hills are not in it, and
 * the air bends light differently every day: a minute or two either way.
 */
public final class Daylight {
    private static final double RIM_ON_HORIZON = -50.0 / 60;
    private static final double CIVIL = -6;
    private static final Duration HALF_A_DAY = Duration.ofHours(12);

    private final ZonedDateTime noon;
    private final double latitude;
    private final double longitude;

    private Daylight(ZonedDateTime noon, double latitude, double longitude) {
        this.noon = noon;
        this.latitude = latitude;
        this.longitude = longitude;
    }

    /**
     * The daylight around the solar noon of this date.
     *
     * @param latitude −90° (south) to 90° (north)
     * @param longitude −180° (west) to 180° (east)
     * @param date the day in this zone
     * @param zone in which the times come back
     * @throws BadFigureInput when latitude or longitude is no angle or outside its range
     */
    public static Daylight on(Quantity latitude, Quantity longitude, LocalDate date, ZoneId zone) {
        double north = angle("latitude", latitude, 90).doubleValue();
        double east = longitude(longitude).doubleValue();
        // two days, since a day may be shorter than from one solar noon to the next
        ZonedDateTime noon = SunTimes.compute().on(date).timezone(zone).at(north, east).limit(Duration.ofDays(2)).execute().getNoon();
        // at a pole there is none; the sun is as high at any other hour
        return new Daylight(noon == null ? date.atTime(12, 0).atZone(zone) : noon, north, east);
    }

    /**
     * Refuses a place that is nowhere on the earth.
     *
     * @throws BadFigureInput when latitude or longitude is no angle or outside its range
     */
    public static void check(Quantity latitude, Quantity longitude) {
        angle("latitude", latitude, 90);
        longitude(longitude);
    }

    /** In degrees. */
    static BigDecimal longitude(Quantity longitude) {
        return angle("longitude", longitude, 180);
    }

    private static BigDecimal angle(String what, Quantity angle, int most) {
        BigDecimal degrees = Amounts.in(what, angle, Unit.DEGREES);
        if (degrees.abs().compareTo(BigDecimal.valueOf(most)) > 0) {
            throw new BadFigureInput(what + " is " + angle + "; it lies between -" + most + "° and " + most + "°");
        }
        return degrees;
    }

    /** Empty where the sun stays up or down all day. */
    public Optional<ZonedDateTime> sunrise() {
        return before(RIM_ON_HORIZON);
    }

    /** Empty where the sun stays up or down all day. */
    public Optional<ZonedDateTime> sunset() {
        return after(RIM_ON_HORIZON);
    }

    /** When the sun comes within 6° of the horizon; empty where it stays above or below that all day. */
    public Optional<ZonedDateTime> civilDawn() {
        return before(CIVIL);
    }

    /** When the sun sinks 6° below the horizon; empty where it stays above or below that all day. */
    public Optional<ZonedDateTime> civilDusk() {
        return after(CIVIL);
    }

    private Optional<ZonedDateTime> before(double height) {
        return Optional.ofNullable(from(height).reverse().execute().getRise());
    }

    private Optional<ZonedDateTime> after(double height) {
        return Optional.ofNullable(from(height).execute().getSet());
    }

    private SunTimes.Parameters from(double height) {
        return SunTimes.compute().on(noon).at(latitude, longitude).twilight(height).limit(HALF_A_DAY);
    }
}

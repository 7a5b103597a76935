package chock.figure;

import static chock.figure.Parameter.asked;
import static chock.figure.Parameter.ifKnown;

import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit.Dimension;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Figures of the road test, and of readings near a limit. */
final class RoadFigures {
    private static final BigDecimal DEGREES_PER_HOUR = BigDecimal.valueOf(15);

    static final List<Figure> ALL = List.of(
            new Figure("wind-chill", "How cold riding feels on bare skin.", "wind chill of 2001, United States and Canada (formulas read in copies, ranges from memory)",
                    List.of(asked("air", "air temperature, -50 °C to 10 °C", "-5°C"), asked("speed", "road speed plus headwind, above 3 mph", "60km/h")),
                    a -> Results.of("temperature", WindChill.of(a.quantity("air", Dimension.TEMPERATURE), a.quantity("speed", Dimension.SPEED)))),
            new Figure("daylight", "Daylight of a day by the sun of the place; times in UTC.",
                    "sun's centre 50′ below the horizon, civil twilight 6° (read in copies); position by a sun library",
                    List.of(asked("latitude", "degrees, south negative", "51.5°"), asked("longitude", "degrees, west negative", "-0.1°"), asked("date", "the day", "2026-11-25")),
                    RoadFigures::daylight),
            new Figure("conformity", "Probability that what was measured really keeps its limits; give one limit or both.", "JCGM 106:2012, 7.3 and 7.4 (from memory)",
                    List.of(asked("measured", "the reading", "509.7kPa"), asked("uncertainty", "expanded uncertainty U of the reading, k = 2", "17.2kPa"),
                            ifKnown("at-least", "lower limit", "490kPa"), ifKnown("at-most", "upper limit", "600kPa")),
                    RoadFigures::conformity));

    private RoadFigures() { }

    private static Map<String, ResultValue> daylight(Arguments a) {
        Quantity longitude = a.degrees("longitude");
        // The day of the place, not of Greenwich: east of 90° they would share no daylight.
        ZoneOffset bySun = ZoneOffset.ofHours(Daylight.longitude(longitude).divide(DEGREES_PER_HOUR, 0, RoundingMode.HALF_EVEN).intValueExact());
        Daylight daylight = Daylight.on(a.degrees("latitude"), longitude, a.day("date"), bySun);
        Map<String, ResultValue> results = new LinkedHashMap<>();
        results.put("sunrise", time(daylight.sunrise(), "the sun stays up or down all day"));
        results.put("sunset", time(daylight.sunset(), "the sun stays up or down all day"));
        results.put("civil-dawn", time(daylight.civilDawn(), "the sun does not cross 6° below the horizon"));
        results.put("civil-dusk", time(daylight.civilDusk(), "the sun does not cross 6° below the horizon"));
        return results;
    }

    private static ResultValue time(Optional<ZonedDateTime> moment, String otherwise) {
        return moment.<ResultValue>map(m -> new ResultValue.Time(m.toInstant().atOffset(ZoneOffset.UTC))).orElse(new ResultValue.Unknown(otherwise));
    }

    private static Map<String, ResultValue> conformity(Arguments a) {
        Quantity measured = a.any("measured");
        Dimension kind = measured.unit().dimension();
        Optional<Quantity> least = a.optional("at-least", kind);
        Optional<Quantity> most = a.optional("at-most", kind);
        if (least.isEmpty() && most.isEmpty()) {
            throw new BadFigureInput("conformity needs at-least or at-most, or both: write at-least=490kPa");
        }
        if (least.isPresent() && most.isPresent() && least.get().compareTo(most.get()) > 0) {
            throw new BadFigureInput("at-least is " + least.get() + ", which is above at-most, " + most.get());
        }
        Measured reading = new Measured(measured, a.quantity("uncertainty", kind));
        return Results.of("probability", Conformity.probability(reading, new Bounds(least.orElse(null), true, most.orElse(null), true)));
    }
}

package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class FiguresTest {

    private static FigureResult compute(String call) {
        String[] words = call.split(" ");
        Map<String, String> args = new LinkedHashMap<>();
        Arrays.stream(words).skip(1).forEach(word -> args.put(word.substring(0, word.indexOf('=')), word.substring(word.indexOf('=') + 1)));
        return Figures.named(words[0]).compute(args);
    }

    private static List<String> names() {
        return Figures.names();
    }

    @Test
    void keepsTheNamesScriptsRelyOn() {
        assertThat(Figures.names()).containsExactly("tyre-date", "tread-left", "load-index", "speed-symbol", "tyre-pressure", "stopping-limit",
                "deceleration", "brake-efficiency", "chain-wear", "coil-at-20", "battery-charge", "compression-at-sea-level", "compression-spread",
                "bolt-torque", "wind-chill", "daylight", "conformity", "co-build-up", "co-schedule", "purge", "co-source", "window-airflow", "cohb", "ppm-to-mg");
    }

    /** Sources of the values stand in the tests of each figure. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            tyre-date code=1313 as-of=2026-11-25                               | {from=2013-03-31, to=2013-04-06, age-years=13.66 y}
            tread-left measured=3.4mm new=7.0mm limit=1.0mm                    | {left=40 %}
            load-index index=58                                                | {load=236 kg}
            load-index index=1                                                 | {load=46.2 kg}
            speed-symbol symbol=h                                              | {speed=210 km/h}
            tyre-pressure pressure=35psi from=80F to=20F                       | {pressure=29.4749 psi}
            stopping-limit vehicle=motorcycle control=front speed=60km/h       | {distance=37.3043 m, deceleration=4.4 m/s²}
            stopping-limit vehicle=moped-3w control=rear speed=40km/h          | {distance=26.8571 m, deceleration=2.7 m/s²}
            stopping-limit vehicle=motorcycle-sidecar control=rear speed=60km/h | {distance=43.8947 m, deceleration=3.6 m/s²}
            deceleration from=48km/h to=6km/h over=21m                         | {deceleration=4.16667 m/s²}
            brake-efficiency force=110kgf mass=300kg                           | {efficiency=36.6667 %}
            chain-wear pitches=20 length=319.4mm pitch=15.875mm                | {elongation=0.598425 %}
            coil-at-20 resistance=4.5ohm temperature=60C                       | {resistance=3.8887 Ω}
            battery-charge voltage=12.33V nominal=12V                          | {charge=52.5 % to 66.25 %}
            battery-charge voltage=6.1V nominal=6                              | {charge=33.3333 % to 50 %}
            compression-at-sea-level reading=100psi altitude=5000ft            | {pressure=120.185 psi}
            compression-spread readings=1050kPa,800kPa                         | {lowest-of-highest=76.1905 %, spread=250 kPa}
            compression-spread readings=11.8bar,10bar,9.0bar                   | {lowest-of-highest=76.2712 %, spread=2.8 bar}
            bolt-torque size=M8 pitch=1.25mm class=8.8 nut-factor=0.2          | {torque=25.44 N·m, preload=15900 N}
            wind-chill air=20F speed=15mph                                     | {temperature=6.21889 °F}
            co-build-up volume=200m3 airflow=100m3/h generation=10.5L/min minutes=5 k-acgih=1 | {end=257.106 ppm, steady=6300 ppm, minutes-to-200ppm=3.8713 min, minutes-to-1200ppm=25.3571 min}
            co-build-up volume=20000m3 airflow=20000m3/h generation=10.5L/min minutes=5min k-acgih=1 background=1 | {end=3.5186 ppm, steady=32.5 ppm, minutes-to-200ppm=unknown: never reached; it settles at 32.5 ppm, minutes-to-1200ppm=unknown: never reached; it settles at 32.5 ppm}
            co-build-up volume=200m3 airflow=0m3/h generation=10.5L/min minutes=10 k-acgih=1 background=300ppm | {end=825 ppm, steady=unknown: too little air for it ever to settle, minutes-to-200ppm=0 min, minutes-to-1200ppm=17.1429 min}
            co-build-up volume=200m3 airflow=0m3/h generation=0L/min minutes=10 k-acgih=1 | {end=0 ppm, steady=0 ppm, minutes-to-200ppm=unknown: never reached; it settles at 0 ppm, minutes-to-1200ppm=unknown: never reached; it settles at 0 ppm}
            co-schedule volume=200m3 airflow=100m3/h generation=10.5L/min k-acgih=1 plan=5on | {peak=257.106 ppm, max-15-min=242.268 ppm, max-1-h=203.969 ppm, twa-8-h=64.3976 ppm}
            purge volume=75000ft3 airflow=2500cfm from=200ppm to=100ppm        | {minutes=20.7944 min}
            co-source displacement=250cc cycle=two-stroke                      | {generation=10.5 L/min}
            co-source displacement=250cc cycle=four-stroke rpm=1200rpm co=4.5% | {generation=2.025 L/min}
            window-airflow area=1m2 height=1m inside=15C outside=-10C          | {airflow=532.447 m³/h}
            cohb ppm=200 minutes=60                                            | {carboxyhaemoglobin=5.3661 %}
            cohb ppm=200ppm minutes=1h activity=light                          | {carboxyhaemoglobin=7.89115 %}
            ppm-to-mg concentration=35ppm temperature=25°C                     | {concentration=40.0708 mg/m³}
            conformity measured=509.7kPa uncertainty=17.2kPa at-least=490kPa   | {probability=98.901 %}
            conformity measured=-5.47V uncertainty=0.1V at-most=-5.40V         | {probability=91.9243 %}
            conformity measured=13.6mm uncertainty=3.6mm at-least=12.5mm at-most=16.3mm | {probability=66.263 %}
            """)
    void computes(String call, String results) {
        Map<String, String> words = new LinkedHashMap<>();
        compute(call).results().forEach((name, value) -> words.put(name, value.words()));
        assertThat(words).hasToString(results);
    }

    @Test
    void leavesTheDecadeOfThreeDigitsOpen() {
        Map<String, ResultValue> results = compute("tyre-date code=031 as-of=2026-11-25").results();
        assertThat(results.keySet()).containsExactly("from", "to", "age-years", "candidates");
        assertThat(results.get("from").plain()).isNull();
        assertThat(results.get("from").why()).contains("three digits do not mark the decade");
        assertThat(results.get("to").words()).isEqualTo("unknown: three digits do not mark the decade");
        assertThat(results.get("age-years").plain()).hasToString("{from=35.85, to=45.86, unit=y}");
        assertThat(results.get("candidates").plain()).hasToString("[{from=1981-01-18, to=1981-01-24, unit=null}, {from=1991-01-20, to=1991-01-26, unit=null}]");
        assertThat(results.get("candidates").words()).isEqualTo("1981-01-18 to 1981-01-24; 1991-01-20 to 1991-01-26");
    }

    @Test
    void givesPlainValuesWithTheirUnitApart() {
        ResultValue distance = compute("stopping-limit vehicle=motorcycle control=rear speed=60km/h").results().get("distance");
        assertThat(distance.plain()).isEqualTo("54");
        assertThat(distance.unit()).contains("m");
        ResultValue from = compute("tyre-date code=1313 as-of=2026-11-25").results().get("from");
        assertThat(from.plain()).isEqualTo("2013-03-31");
        assertThat(from.unit()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("names")
    void showsAnExampleThatWorksAndIsRepeatable(String name) {
        Figure figure = Figures.named(name);
        FigureResult once = compute(figure.example());
        assertThat(once).isEqualTo(compute(figure.example()));
        assertThat(once.name()).isEqualTo(name);
        assertThat(once.inputs().keySet()).containsExactlyElementsOf(figure.parameters().stream().map(Parameter::name).toList());
        assertThat(once.results()).isNotEmpty();
        assertThat(once.source()).isEqualTo(figure.source()).isNotBlank();
        assertThat(figure.purpose()).endsWith(".");
    }

    @ParameterizedTest
    @MethodSource("names")
    void asksForEveryParameter(String name) {
        Figure figure = Figures.named(name);
        for (Parameter left : figure.parameters().stream().filter(Parameter::required).toList()) {
            Map<String, String> args = new LinkedHashMap<>();
            figure.parameters().forEach(p -> args.put(p.name(), p.example()));
            for (String nothing : Arrays.asList(null, "", "  ")) {
                args.put(left.name(), nothing);
                assertThatThrownBy(() -> figure.compute(args)).isInstanceOf(BadFigureInput.class)
                        .hasMessage(name + " needs " + left.name() + ", " + left.what() + ": write " + left.name() + "=" + left.example());
            }
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            tire-date code=1                                        | there is no figure 'tire-date'; perhaps tyre-date; known are ALL
            horsepower x=1                                          | there is no figure 'horsepower'; known are ALL
            date code=1313                                          | there is no figure 'date'; known are ALL
            x x=1                                                   | there is no figure 'x'; known are ALL
            tyre-date code=1313 asof=2026-11-25                     | tyre-date has no parameter 'asof'; perhaps as-of; it takes code, as-of
            tyre-date code=1313 as-of=25/11/2026                    | as-of '25/11/2026' is not a day; write year-month-day, such as 2026-11-25
            tyre-date code=1313 as-of=2026-02-30                    | as-of '2026-02-30' is not a day; write year-month-day, such as 2026-11-25
            load-index index=58.5                                   | index '58.5' is not a whole number; write its digits only
            load-index index=99999999999                            | index '99999999999' is not a whole number; write its digits only
            load-index index=151                                    | load index 151 is not in the table; it runs from 0 to 150
            stopping-limit vehicle=motorcicle control=front speed=60km/h | vehicle 'motorcicle' is not known; perhaps motorcycle; write one of moped, moped-3w, motorcycle, motorcycle-sidecar
            stopping-limit vehicle=moped control=both speed=40km/h  | control 'both' is not known; write one of front, rear
            stopping-limit vehicle=moped control=rear speed=40      | speed '40': the unit is missing; write it behind the number, such as 40 mm (units of speed: km/h, mph, m/s)
            stopping-limit vehicle=moped control=rear speed=40KM/H  | speed '40KM/H': 'KM/H' is not a unit this program knows; perhaps km/h (units of speed: km/h, mph, m/s)
            brake-efficiency force=110kg mass=300kg                 | force is 110 kg, which is not a unit of force; write one of N, kgf, lbf (a roller tester that prints kg means kgf)
            battery-charge voltage=12.6V nominal=12.5V              | nominal is 12.5 V; write whole volts, such as 12V
            bolt-torque size=M8 pitch=1.25mm class=8.8 nut-factor=20% | nut-factor '20%' is not a number; write it without a unit, with a point before decimals
            compression-spread readings=10bar                       | readings are 1; a spread needs two cylinders or more
            compression-spread readings=10bar,                      | readings '': write a number and a unit, such as 1.2 mm, 3/64 in or 36 psi (units of pressure: kPa, Pa, hPa, bar, psi, kgf/cm², inHg)
            compression-spread readings=10bar,9kg                   | readings is 9 kg, which is not a unit of pressure; write one of kPa, Pa, hPa, bar, psi, kgf/cm², inHg
            conformity measured=1mm uncertainty=0.1mm               | conformity needs at-least or at-most, or both: write at-least=490kPa
            conformity measured=1mm uncertainty=0.1mm at-least=2mm at-most=1mm | at-least is 2 mm, which is above at-most, 1 mm
            conformity measured=1mm uncertainty=0mm at-least=2mm    | uncertainty is 0 mm; it must be above zero
            conformity measured=1mm uncertainty=1V at-least=2mm     | uncertainty is 1 V, which is not a unit of length; write one of mm, cm, m, km, in, ft, thou, mi
            conformity measured=1 uncertainty=1V at-least=2mm       | measured '1': the unit is missing; write it behind the number, such as 1 mm
            co-build-up volume=200m3 airflow=100m3/h generation=10.5L/min minutes=5 k-acgih=0.2 | k-acgih is 0.2; it divides the airflow and is at least 1, for perfect mixing. Where a source multiplies by a factor below 1, write 1 ÷ that factor: 5 for 0.2
            co-build-up volume=200m3 airflow=100m3/h generation=10.5L/min minutes=5 k-acgih=-5 | k-acgih '-5' is not a number; write it without a unit, with a point before decimals
            co-build-up volume=200m3 airflow=100m3/h generation=10.5L/min minutes=5 | co-build-up needs k-acgih, mixing factor that divides the airflow: 1 perfect, 3 to 10 usual: write k-acgih=3
            co-source displacement=250cc cycle=two-stroke rpm=1200rpm | co-source takes rpm and co together, as measured; leave both out when nobody measured
            co-source displacement=250cc cycle=two-stroke co=4.5%   | co-source takes rpm and co together, as measured; leave both out when nobody measured
            co-source displacement=250cc cycle=rotary               | cycle 'rotary' is not known; write one of two-stroke, four-stroke
            cohb ppm=200 minutes=60 activity=resting                | activity 'resting' is not known; write one of rest, light, heavy
            co-schedule volume=200m3 airflow=100m3/h generation=10.5L/min k-acgih=1 plan=5min | plan '5min' is not minutes and on or off; write such as 2on,28off,2on
            daylight latitude=91 longitude=0 date=2026-11-25        | latitude is 91°; it lies between -90° and 90°
            daylight latitude=51 longitude=181 date=2026-11-25      | longitude is 181°; it lies between -180° and 180°
            daylight latitude=51N longitude=0 date=2026-11-25       | latitude is 51 N, which is not a unit of angle; write one of °
            """)
    void refusesAndSaysWhatToWrite(String call, String message) {
        assertThatThrownBy(() -> compute(call)).isInstanceOf(BadFigureInput.class).hasMessage(message.replace("ALL", String.join(", ", Figures.names())));
    }

    /** The day is the sun's at that place: on the other side of the globe its sunrise falls on the day before in UTC. */
    @Test
    void givesDaylightInUtc() {
        Map<String, ResultValue> wellington = compute("daylight latitude=-41.29 longitude=174.78 date=2025-12-21").results();
        assertThat(wellington.keySet()).containsExactly("sunrise", "sunset", "civil-dawn", "civil-dusk");
        assertThat(wellington.get("sunrise").plain().toString()).startsWith("2025-12-20T16:4").endsWith("Z");
        assertThat(wellington.get("sunset").words()).startsWith("2025-12-21 07:5").endsWith(" UTC");
        assertThat(compute("daylight latitude=-41.29° longitude=174.78° date=2025-12-21").results()).isEqualTo(wellington);
        ResultValue none = compute("daylight latitude=70 longitude=20 date=2026-12-21").results().get("sunrise");
        assertThat(none.plain()).isNull();
        assertThat(none.why()).contains("the sun stays up or down all day");
    }

    @Test
    void takesTemperaturesInAnySpelling() {
        List<String> spelled = List.of("-10°C", "-10C", "14°F", "14F", "263.15K");
        assertThat(spelled.stream().map(to -> compute("tyre-pressure pressure=2.5bar from=20°C to=" + to).results().get("pressure").words()).distinct())
                .hasSize(1);
    }
}

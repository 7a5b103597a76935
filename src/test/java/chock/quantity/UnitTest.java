package chock.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import org.fhir.ucum.Decimal;
import org.fhir.ucum.UcumEssenceService;
import org.fhir.ucum.UcumException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {
    private static UcumEssenceService ucum;

    @BeforeAll
    static void openTable() throws UcumException {
        ucum = new UcumEssenceService(UcumEssenceService.class.getResourceAsStream("/ucum-essence.xml"));
    }

    /**
     * UCUM table in org.fhir:ucum 1.0.9. It prints a factor with the digits of its own table, so its last digit is the
     * tolerance, or a part in ten million where it carries more (its psi has seven digits). It has no °F and does not convert °C.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            mm      | mm              | m      | m
            cm      | cm              | mm     | mm
            km      | km              | m      | m
            in      | [in_i]          | cm     | cm
            ft      | [ft_i]          | in     | [in_i]
            thou    | [mil_i]         | in     | [in_i]
            mi      | [mi_i]          | ft     | [ft_i]
            cc      | cm3             | L      | L
            mL      | mL              | cc     | cm3
            L       | L               | mL     | mL
            m³      | m3              | L      | L
            ft³     | [cft_i]         | L      | L
            US gal  | [gal_us]        | L      | L
            imp gal | [gal_br]        | L      | L
            g       | g               | kg     | kg
            kg      | kg              | g      | g
            lb      | [lb_av]         | g      | g
            N       | N               | kgf    | kgf
            kgf     | kgf             | N      | N
            lbf     | [lbf_av]        | N      | N
            N·m     | N.m             | kgf·m  | kgf.m
            lbf·ft  | [lbf_av].[ft_i] | lbf·in | [lbf_av].[in_i]
            lbf·in  | [lbf_av].[in_i] | N·m    | N.m
            kgf·m   | kgf.m           | N·m    | N.m
            kgf·cm  | kgf.cm          | N·m    | N.m
            kPa     | kPa             | Pa     | Pa
            Pa      | Pa              | kPa    | kPa
            hPa     | hPa             | Pa     | Pa
            bar     | bar             | kPa    | kPa
            inHg    | [in_i'Hg]       | kPa    | kPa
            psi     | [psi]           | kPa    | kPa
            kgf/cm² | kgf/cm2         | kPa    | kPa
            km/h    | km/h            | m/s    | m/s
            mph     | [mi_i]/h        | km/h   | km/h
            m/s     | m/s             | km/h   | km/h
            m/s²    | m/s2            | ft/s²  | [ft_i]/s2
            ft/s²   | [ft_i]/s2       | m/s²   | m/s2
            mA      | mA              | A      | A
            kΩ      | kOhm            | Ω      | Ohm
            %       | %               | ppm    | [ppm]
            min     | min             | s      | s
            h       | h               | min    | min
            d       | d               | h      | h
            m³/h    | m3/h            | L/min  | L/min
            m³/min  | m3/min          | m³/h   | m3/h
            m³/s    | m3/s            | m³/h   | m3/h
            L/min   | L/min           | m³/h   | m3/h
            ft³/min | [cft_i]/min     | L/min  | L/min
            y       | a               | months | mo
            """)
    void convertsAsTheUcumTable(String unit, String ucumUnit, String other, String ucumOther) throws UcumException {
        BigDecimal theirs = new BigDecimal(ucum.convert(new Decimal("36.0000000000000000000"), ucumUnit, ucumOther).asDecimal());
        BigDecimal ours = Quantity.parse("36 " + unit).to(Unit.spelled(other).orElseThrow()).value();
        assertThat(ours.subtract(theirs).abs()).as("ours %s, theirs %s", ours, theirs).isLessThanOrEqualTo(theirs.ulp().max(theirs.movePointLeft(7)));
    }

    /** Exact from the definitions 1 in = 25.4 mm, 1 lb = 0.45359237 kg, g = 9.80665 m/s², 0 °C = 273.15 K (international agreement, from memory). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1 in       | 25.4               | mm
            1 thou     | 0.0254             | mm
            1 mi       | 1.609344           | km
            1 lb       | 0.45359237         | kg
            1 lbf      | 4.4482216152605    | N
            1 lbf·ft   | 1.3558179483314004 | N·m
            12 lbf·in  | 1.3558179483314004 | N·m
            1 lbf·ft   | 12                 | lbf·in
            1 kgf·m    | 9.80665            | N·m
            100 kgf·cm | 1                  | kgf·m
            1 kgf/cm²  | 98.0665            | kPa
            1 imp gal  | 4.54609            | L
            1 US gal   | 3.785411784        | L
            20 mph     | 32.18688           | km/h
            -40 °C     | -40                | °F
            32 °F      | 0                  | °C
            212 °F     | 373.15             | K
            -459.67 °F | 0                  | K
            1 y        | 12                 | months
            """)
    void convertsExactly(String amount, BigDecimal expected, String unit) {
        Quantity quantity = Quantity.parse(amount);
        Unit other = Unit.spelled(unit).orElseThrow();
        assertThat(quantity.to(other).value()).isEqualByComparingTo(expected.round(MathContext.DECIMAL64));
        assertThat(quantity.compareTo(new Quantity(expected, other))).isZero();
        assertThat(new Quantity(expected, other).compareTo(quantity)).isZero();
    }

    /** 1 psi is 44482216152605/6451600000 Pa, which has no finite decimal: 16 digits of 36 psi, by hand. UCUM prints 248.211252, from a psi of seven digits. */
    @Test
    void keepsSixteenDigitsWhereADecimalNeverEnds() {
        assertThat(Quantity.parse("36 psi").to(Unit.KPA).value()).isEqualByComparingTo("248.2112625540610");
    }

    /** Case of two public implementations of UCUM: 36 psi, 1 kgf, 60 km/h, 401 °F. */
    @ParameterizedTest
    @CsvSource({"36 psi, kPa, 248.211", "1 kgf, N, 9.80665", "60 km/h, m/s, 16.6667", "401 °F, °C, 205"})
    void agreesWithPublishedConversions(String amount, String unit, BigDecimal published) {
        assertThat(Quantity.parse(amount).to(Unit.spelled(unit).orElseThrow()).value().subtract(published).abs())
                .isLessThan(new BigDecimal("0.0005"));
    }

    @ParameterizedTest
    @EnumSource
    void comesBackFromEveryUnitOfItsKind(Unit unit) {
        Quantity start = Quantity.of("14.7", unit);
        for (Unit other : Unit.values()) {
            if (other.dimension() == unit.dimension()) {
                Quantity back = start.to(other).to(unit);
                assertThat(back.value().subtract(start.value()).abs()).as(other.symbol()).isLessThan(new BigDecimal("1e-12"));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void refusesEveryUnitOfAnotherKind(Unit unit) {
        Unit other = unit.dimension() == Unit.Dimension.LENGTH ? Unit.KG : Unit.MM;
        assertThatThrownBy(() -> Quantity.of("1", unit).to(other)).isInstanceOf(IllegalArgumentException.class)
                .hasMessage(unit.symbol() + " is not a unit of " + other.dimension().words());
    }

    @ParameterizedTest
    @EnumSource
    void isReadBackFromItsSymbol(Unit unit) {
        assertThat(Unit.spelled(" " + unit.symbol() + " ")).contains(unit);
    }

    @Test
    void knowsNoGallonWithoutACountry() {
        assertThat(Unit.spelled("gal")).isEmpty();
        assertThat(Quantity.parse("1 imp gal")).isGreaterThan(Quantity.parse("1 US gal"));
    }

    @Test
    void namesTheUnitThatWasNearlySpelled() {
        assertThat(Unit.almostSpelled("PSI")).contains(Unit.PSI);
        assertThat(Unit.almostSpelled("NM")).contains(Unit.NEWTON_METRE);
        assertThat(Unit.almostSpelled("furlong")).isEmpty();
        assertThat(Arrays.stream(Unit.values()).map(unit -> unit.symbol()).toList()).doesNotHaveDuplicates();
    }

    @Test
    void listsTheUnitsOfOneKind() {
        assertThat(Unit.symbolsOf(Unit.Dimension.TEMPERATURE)).containsExactly("°C", "°F", "K");
    }
}

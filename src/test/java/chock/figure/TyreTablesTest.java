package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TyreTablesTest {

    private static BigDecimal kg(int index) {
        return LoadIndex.load(index).value();
    }

    /** UN R75 Annex 4 through copies that agree; 58 = 236 kg also at engineerfix.com; 138 is ten times 58. */
    @ParameterizedTest
    @CsvSource({"0, 45", "58, 236", "65, 290", "73, 365", "138, 2360", "54, 212", "61, 257", "83, 487", "150, 3350"})
    void readsTheLoad(int index, BigDecimal load) {
        assertThat(LoadIndex.load(index)).isEqualTo(new Quantity(load, Unit.KG));
    }

    /** Eighty steps are a factor of ten; five small values dropped a final half. */
    @Test
    void growsTenfoldInEightySteps() {
        Set<Integer> shortened = Set.of(35, 37, 61, 63, 67);
        for (int n = 0; n + 80 <= LoadIndex.HIGHEST; n++) {
            BigDecimal dropped = shortened.contains(n) ? new BigDecimal("0.5") : BigDecimal.ZERO;
            assertThat(kg(n).add(dropped).multiply(BigDecimal.TEN)).as("index %d", n).isEqualByComparingTo(kg(n + 80));
        }
    }

    /** Geometric series 45 × 10^(n/80) kg, met within 1.94 %; every step up is between 2.33 % and 3.57 %. */
    @Test
    void followsTheSeries() {
        for (int n = 0; n <= LoadIndex.HIGHEST; n++) {
            assertThat(Math.abs(kg(n).doubleValue() / (45 * Math.pow(10, n / 80.0)) - 1)).as("index %d", n).isLessThan(0.0194);
            if (n > 0) {
                assertThat(kg(n).doubleValue() / kg(n - 1).doubleValue() - 1).as("step to %d", n).isBetween(0.0232, 0.0358);
            }
        }
    }

    /** trailermedic.co.uk prints 478 kg for index 83, a slip for 487. */
    @Test
    void doesNotCopyAMisprint() {
        assertThat(kg(83)).isNotEqualByComparingTo("478");
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 151, Integer.MAX_VALUE})
    void refusesAnIndexOutsideTheTable(int index) {
        assertThatThrownBy(() -> LoadIndex.load(index)).isInstanceOf(BadFigureInput.class)
                .hasMessage("load index " + index + " is not in the table; it runs from 0 to 150");
    }

    /**
     * Speed symbols through copies that agree (A1 to A8 from memory). thsmoto.co.nz has K 109, L 121 and Q 159, a round trip
     * through miles.
     */
    @ParameterizedTest
    @CsvSource({"A1, 5", "A8, 40", "B, 50", "J, 100", "K, 110", "L, 120", "P, 150", "Q, 160", "S, 180", "T, 190", "U, 200", "H, 210", "V, 240", "W, 270", "Y, 300", "h, 210"})
    void readsTheSpeed(String symbol, BigDecimal speed) {
        assertThat(SpeedSymbol.read(symbol).speed()).isEqualTo(new Quantity(speed, Unit.KMH));
    }

    @Test
    void standsInOrderOfSpeedWithHBehindU() {
        assertThat(SpeedSymbol.values()).isSortedAccordingTo((a, b) -> a.speed().compareTo(b.speed()));
        assertThat(SpeedSymbol.H).isGreaterThan(SpeedSymbol.U);
    }

    @Test
    void namesNoSpeedForZ() {
        assertThatThrownBy(() -> SpeedSymbol.read("ZR")).hasMessage("'ZR' is not a speed symbol; Z in the size only says over 240 km/h: "
                + "write the letter of the service description, such as W of (65W)");
        assertThatThrownBy(() -> SpeedSymbol.read("I")).hasMessageStartingWith("'I' is not a speed symbol; write one of A1 A2 ").hasMessageEndingWith(" T U H V W Y");
        assertThat(SpeedSymbol.find("A9")).isEmpty();
    }

    /** 120/90-18 65S: marking example of a tyre maker's page (maxxis.com), 290 kg and 180 km/h by the tables. */
    @ParameterizedTest
    @CsvSource({"120/90-18 65S, 290, 180", "65S, 290, 180", "120/90 - 18 M/C 65 s, 290, 180", "180/55 ZR17 (73W), 365, 270", "54H, 212, 210", "61V, 257, 240", "2 1/4-16 38A8, 132, 40"})
    void readsAServiceDescription(String marking, BigDecimal load, BigDecimal speed) {
        ServiceDescription description = ServiceDescription.read(marking);
        assertThat(description.load().value()).isEqualByComparingTo(load);
        assertThat(description.speed().value()).isEqualByComparingTo(speed);
        assertThat(ServiceDescription.find(marking)).contains(description);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "3.50-19", "120/90-18", "S65", "65", "120/90-1865S"})
    void refusesAMarkingWithoutOne(String marking) {
        assertThatThrownBy(() -> ServiceDescription.read(marking)).isInstanceOf(BadFigureInput.class)
                .hasMessage("'" + marking + "' does not end in a load index and a speed symbol; write them as they stand on the tyre, such as 65S");
        assertThat(ServiceDescription.find(marking)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"165S, load index 165 is not in the table", "65I, 'I' is not a speed symbol"})
    void refusesADescriptionOutsideTheTables(String marking, String message) {
        assertThatThrownBy(() -> ServiceDescription.read(marking)).isInstanceOf(BadFigureInput.class).hasMessageStartingWith(message);
    }

    /** Front 54H carrying 213 kg is overloaded at 212 kg; rear 61V at 257 kg is just enough (UN R75 Annex 4 through copies). */
    @Test
    void tellsAnOverloadFromAFullLoad() {
        assertThat(ServiceDescription.read("54H").load()).isLessThan(Quantity.parse("213 kg"));
        assertThat(ServiceDescription.read("61V").load()).isEqualByComparingTo(Quantity.parse("257 kg"));
    }
}

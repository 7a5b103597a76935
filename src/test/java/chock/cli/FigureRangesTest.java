package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import chock.figure.Figures;
import chock.quantity.Quantity;
import chock.quantity.UnreadableQuantity;
import chock.record.Plausible;
import chock.rulebook.RuleBook;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A computation refuses what no machine, room or weather can show. */
class FigureRangesTest {
    /** Amounts that no machine bounds. */
    private static final Set<String> UNBOUND = Set.of("battery-charge nominal", "bolt-torque pitch", "co-build-up generation", "co-schedule generation", "conformity at-least",
            "conformity at-most", "conformity measured", "conformity uncertainty", "daylight latitude", "daylight longitude", "deceleration to", "ppm-to-mg concentration", "wind-chill speed", "window-airflow area", "window-airflow height");
    private final Plausible plausible = RuleBook.shippedPlausible();

    @Test
    void everyAmountThatAComputationTakesHasARowOrIsNamedHere() {
        Set<String> without = new TreeSet<>();
        Figures.names().forEach(name -> Figures.named(name).parameters().stream().filter(p -> isAmount(p.example()))
                .filter(p -> !plausible.figures().getOrDefault(name, Map.of()).containsKey(p.name())).forEach(p -> without.add(name + " " + p.name())));
        assertThat(without).isEqualTo(new TreeSet<>(UNBOUND));
    }

    @Test
    void everyRowIsOfAComputationAndOneOfItsArguments() {
        assertThat(plausible.figures()).isNotEmpty();
        plausible.figures().forEach((figure, arguments) -> {
            assertThat(Figures.names()).contains(figure);
            assertThat(Figures.named(figure).parameters()).extracting(p -> p.name()).as(figure).containsAll(arguments.keySet());
        });
    }

    private static boolean isAmount(String example) {
        try {
            Quantity.parse(example);
            return true;
        } catch (UnreadableQuantity e) {
            return false;
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "brake-efficiency force=110kgf mass=30000kg|mass 30000 kg is not possible: it lies between 50 kg and 2500 kg. Perhaps 300 kg? Weigh machine and rider together; check pounds against kilograms",
        "purge volume=0.2m³ airflow=100m³/h from=257ppm to=20ppm|volume 0.2 m³ is not possible: it lies between 1 m³ and 1000000 m³",
        "compression-at-sea-level reading=100psi altitude=30000ft|altitude 30000 ft is not possible: it lies between -500 m and 9000 m"})
    void refusesWhatCannotBe(String figure, String says) {
        Run run = Run.of(("figure " + figure).split(" "));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains(says);
    }
}

package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.UnusableInput;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The order of the trade, what one look answers, and the rows of undoing are read strictly, with file and line. */
class OrderReaderTest {
    private static RuleBook load(String file, String text) {
        SortedMap<String, String> files = new TreeMap<>(RuleBookLoader.shippedFiles());
        files.put(file, text);
        return new RuleBookLoader().load(files, () -> RuleBook.shipped().rules());
    }

    private static String shipped(String file) {
        return RuleBookLoader.shippedFiles().get(file);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            order.yaml   | tyres.spindle-torque | tyres.spindel-torque            | 'tyres.spindel-torque' is not a proof
            order.yaml   | parts: [ignition]    | parts: [ignishun]               | 'ignishun' is not a place
            order.yaml   | - tyres.direction    | - tyres.spindle-torque          | 'tyres.spindle-torque' is listed twice
            order.yaml   | stage: ignition      | stages: ignition                | stages
            looks.yaml   | "fuel/cap cap-vent"  | "fuel/cap cap-went"             | no check asks for 'fuel/cap cap-went'
            looks.yaml   | "fuel/cap cap-vent"  | "fuel/cap filled"               | no check asks for 'fuel/cap filled'
            looks.yaml   | "fuel/cap cap-vent"  | "frame frame-condition"         | 'frame frame-condition' belongs to 'try the cap' as well
            looks.yaml   | look: try the cap    | look: try the stand             | 'try the stand' is listed twice
            looks.yaml   | at: fuel/cap         | at: "{fuel}/cap"                | '{fuel}/cap' is not a place
            looks.yaml   | , "fuel/cap cap-vent"] | ]                             | one look for one question
            undoing.yaml | at: engine/mounts,   | at: engine/mount,               | 'engine/mount' is not a place
            undoing.yaml | work: [heat-cycled]  | work: [heat-cicled]             | 'heat-cicled' is not a known work
            undoing.yaml | [engine.head-retorque]} | [engine.head-retork]}        | 'engine.head-retork' is not a proof
            undoing.yaml | [engine.head-retorque]} | [engine.head-retorque, engine.head-retorque]} | 'engine.head-retorque' has this row twice
            """)
    void whatDoesNotFitIsRefused(String file, String from, String to, String says) {
        String text = shipped(file);
        assertThat(text).contains(from);
        int at = text.indexOf(from);
        assertThatThrownBy(() -> load(file, text.substring(0, at) + to + text.substring(at + from.length()))).isInstanceOf(UnusableInput.class)
                .hasMessageMatching("(?s)rules/" + file + ":\\d+: .*").hasMessageContaining(says);
    }

    @Test
    void aStepComesWhereItsFirstListedProofDoes() {
        TradeOrder order = RuleBook.shipped().library().order();
        TradeOrder.Rank spindle = order.rank("rear-wheel/spindle", List.of("tyres.spindle-torque"), List.of("torqued"));
        TradeOrder.Rank slack = order.rank("transmission/chain", List.of("transmission.chain-slack"), List.of("slack-at-tightest"));
        TradeOrder.Rank front = order.rank("front-wheel/spindle", List.of("tyres.spindle-torque"), List.of("torqued"));
        TradeOrder.Rank tread = order.rank("rear-wheel/tyre", List.of("tyres.tread-depth"), List.of("tread-depth"));
        assertThat(spindle).isLessThan(slack).isGreaterThan(front).isGreaterThan(tread);
        assertThat(order.rank("a-place-of-a-house", List.of("house.check"), List.of("look")).stage()).isEqualTo(order.stages().size());
    }
}

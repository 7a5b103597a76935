package chock.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.board.store.Kept;
import chock.board.store.Store;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A machine altered in the workshop, written at the board: its description goes with it, each with its day. */
class DescriptionAtTheBoardTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String ID = "HV-0142";
    @TempDir private Path folder;
    private Store store;
    private Shop shop;

    @BeforeEach
    void takeTheReleasedRecordIn() throws Exception {
        store = Store.open(folder.toString());
        shop = Bench.shop(store);
        shop.take("lark.yaml", Files.readAllBytes(Path.of("docs/examples/lark-released.yaml")), "ida", null);
    }

    private static ObjectNode json(String text) throws Exception {
        return (ObjectNode) JSON.readTree(text.replace('\'', '"'));
    }

    private ObjectNode machine() {
        return (ObjectNode) shop.find(ID).map(Kept::sheet).orElseThrow().get("machine");
    }

    @Test
    void aDatedChangeIsAddedAndTheMachineDescribedAfterIt() throws Exception {
        String work = shop.write(ID, 1, List.of(Bench.entry("point", "electrics/battery", "done", "replaced")), Bench.IDA, null).entries().get(0);
        shop.changeSheet(ID, 2, json("{'changes': [{'at': '2026-11-25 12:00', 'field': 'volts', 'from': '6', 'to': '12', 'because': '" + work + "'}]}"), Bench.IDA, null);
        assertThat(machine().get("volts").asText()).isEqualTo("12");
        assertThat(machine().get("changes").get(0).get("by").asText()).isEqualTo("ida");
        assertThat(machine().get("as-built").get("facts").get("volts").asText()).as("what it was built with stays").isEqualTo("6");
    }

    @Test
    void aChangeThatDoesNotFitIsRefusedAndNothingIsWritten() throws Exception {
        ObjectNode wrong = json("{'changes': [{'at': '2026-11-25 12:00', 'field': 'volts', 'from': '12', 'to': '12', 'because': 'e1'}]}");
        assertThatThrownBy(() -> shop.changeSheet(ID, 1, wrong, Bench.IDA, null)).hasMessageContaining("machine.changes[0].to: from 12 to 12 is no change");
        ObjectNode unknown = json("{'changes': [{'at': '2026-11-25 12:00', 'field': 'volt', 'from': '6', 'to': '12', 'because': 'e1'}]}");
        assertThatThrownBy(() -> shop.changeSheet(ID, 1, unknown, Bench.IDA, null)).hasMessageContaining("'volt' is not a field of the description that work can change");
        assertThat(machine().has("changes")).isFalse();
        assertThat(machine().get("volts").asText()).isEqualTo("6");
    }

    @Test
    void whatItWasBuiltWithIsWrittenInOnesOwnName() throws Exception {
        shop.changeSheet(ID, 1, json("{'as-built': {'document': 'List of parts', 'page': '2', 'by': 'tom', 'facts': {'volts': '6'}}}"), Bench.IDA, null);
        assertThat(machine().get("as-built").get("by").asText()).isEqualTo("ida");
        assertThat(machine().get("as-built").get("document").asText()).isEqualTo("List of parts");
    }

    @Test
    void anEntryAboutAPartThatIsNotThereIsRefused() {
        assertThatThrownBy(() -> shop.write(ID, 1, List.of(Bench.entry("point", "front-brake/drum", "done", "cleaned")), Bench.IDA, null))
                .hasMessageContaining("'cleaned' at front-brake/drum (").hasMessageContaining("does not go with front-brake.type: disc");
        assertThat(shop.find(ID).orElseThrow().version()).isEqualTo(1);
    }
}

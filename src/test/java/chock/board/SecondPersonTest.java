package chock.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.board.store.Kept;
import chock.board.store.Store;
import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nobody at the board makes a second person up: whoever reads a figure is signed in, and so is whoever reads it after them. */
class SecondPersonTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String LOOSER = "'for': 'brakes.disc-runout', 'at-most': '0.4 mm', 'document': 'Merle 350 workshop manual', 'page': '58'";
    @TempDir private Path folder;
    private Store store;
    private Shop shop;
    private String id;

    @BeforeEach
    void takeTheReleasedRecordIn() throws Exception {
        store = Store.open(folder.toString());
        shop = Bench.shop(store);
        id = shop.take("merle.yaml", Files.readAllBytes(Path.of("docs/examples/merle-released.yaml")), "ida", null).machine();
    }

    @AfterEach
    void close() {
        store.close();
    }

    private static ObjectNode json(String text) throws Exception {
        return (ObjectNode) JSON.readTree(text.replace('\'', '"'));
    }

    private long version() {
        return shop.find(id).map(Kept::version).orElseThrow();
    }

    private ObjectNode maker() {
        return (ObjectNode) shop.find(id).map(Kept::sheet).orElseThrow().get("maker").deepCopy();
    }

    private ObjectNode figure(String limit) {
        for (var figure : maker().get("figures")) {
            if (figure.get("for").textValue().equals(limit)) {
                return (ObjectNode) figure;
            }
        }
        throw new AssertionError("no figure for " + limit);
    }

    /** The maker's part with another figure for the runout. */
    private ObjectNode withRunout(String figure) throws Exception {
        ObjectNode maker = maker();
        ArrayNode figures = (ArrayNode) maker.get("figures");
        for (int i = 0; i < figures.size(); i++) {
            if (figures.get(i).get("for").textValue().equals("brakes.disc-runout")) {
                figures.set(i, json("{" + figure + "}"));
            }
        }
        return json("{}").set("maker", maker);
    }

    private void second(String said, chock.board.store.Accounts.Account by) throws Exception {
        shop.second(id, version(), json(said), by, null);
    }

    @Test
    void whoReadsAFigureIsWhoIsSignedIn() throws Exception {
        shop.changeSheet(id, version(), withRunout(LOOSER), Bench.IDA, null);
        assertThat(figure("brakes.disc-runout").get("by").textValue()).isEqualTo("ida");
        assertThat(figure("controls.throttle-play").get("seconded-by").textValue()).as("another figure, not touched").isEqualTo("tom");
    }

    @Test
    void nobodyWritesALocalLawAtTheBoard() {
        assertThatThrownBy(() -> shop.changeSheet(id, version(), json("{'local-law': {'limits': [], 'sets-none': [{'limit': 'tyres.tread-depth', 'document': 'Vehicle Order 1967', 'section': 'whole', 'as-of': '2024-12-31', 'by': 'ida', 'seconded-by': 'tom'}]}}"), Bench.IDA, null))
                .isInstanceOf(UnusableInput.class).hasMessageContaining("local-law cannot be changed here").hasMessageContaining("Take the record in as a file with local-law in it");
        assertThat(version()).isEqualTo(1);
    }

    @Test
    void aLocalLawInAFileThatIsTakenInIsKept() throws Exception {
        String text = chock.record.RecordedLawText.whole().replace("record: HV-0142", "record: HV-0999");
        String taken = shop.take("french.yaml", text.getBytes(java.nio.charset.StandardCharsets.UTF_8), "ida", null).machine();
        ObjectNode sheet = shop.find(taken).orElseThrow().sheet();
        assertThat(sheet.at("/local-law/limits/0/seconded-by").textValue()).isEqualTo("tom");
        assertThat(sheet.at("/local-law/sets-none")).hasSize(chock.record.RecordedLawText.limits().size() - 1);
        assertThatThrownBy(() -> shop.take("british.yaml", text.replace("HV-0999", "HV-0998").replace("territory: FR", "territory: GB").getBytes(java.nio.charset.StandardCharsets.UTF_8), "ida", null))
                .isInstanceOf(UnusableInput.class).hasMessageContaining("the law of GB is in this rule book");
    }

    @Test
    void nobodyReadsAFigureInAnothersName() {
        assertThatThrownBy(() -> shop.changeSheet(id, version(), withRunout(LOOSER + ", 'by': 'tom'"), Bench.IDA, null))
                .isInstanceOf(UnusableInput.class).hasMessageContaining("by is given by the board");
        assertThat(version()).isEqualTo(1);
    }

    @Test
    void nobodySecondsTheirOwnFigureInAnothersName() {
        assertThatThrownBy(() -> shop.changeSheet(id, version(), withRunout(LOOSER + ", 'by': 'ida', 'seconded-by': 'tom'"), Bench.IDA, null))
                .isInstanceOf(UnusableInput.class).hasMessageContaining("seconded-by is given by the board");
        assertThat(version()).isEqualTo(1);
    }

    @Test
    void aFigureThatWasSecondedAndIsChangedIsSecondedNoMore() throws Exception {
        ObjectNode maker = maker();
        for (var figure : maker.get("figures")) {
            if (figure.get("for").textValue().equals("controls.throttle-play")) {
                ((ObjectNode) figure).put("at-most", "8 mm");
            }
        }
        assertThatThrownBy(() -> shop.changeSheet(id, version(), json("{}").set("maker", maker), Bench.IDA, null)).hasMessageContaining("seconded-by is given by the board");
    }

    @Test
    void anotherPersonWhoReadsTheSameSecondsIt() throws Exception {
        shop.changeSheet(id, version(), withRunout(LOOSER), Bench.IDA, null);
        second("{'figure': {'for': 'brakes.disc-runout', 'at-most': '0.4 mm'}}", Bench.TOM);
        assertThat(figure("brakes.disc-runout").get("seconded-by").textValue()).isEqualTo("tom");
        java.util.List<chock.board.store.Events.Event> events = store.read(lines -> lines.events().latest(0, 10));
        assertThat(events).anyMatch(e -> e.action().equals("figure seconded") && e.account().equals("tom") && e.detail().contains("brakes.disc-runout"));
    }

    @Test
    void whoReadItDoesNotSecondIt() throws Exception {
        shop.changeSheet(id, version(), withRunout(LOOSER), Bench.IDA, null);
        assertThatThrownBy(() -> second("{'figure': {'for': 'brakes.disc-runout', 'at-most': '0.4 mm'}}", Bench.IDA)).hasMessageContaining("by yourself");
        assertThat(figure("brakes.disc-runout").has("seconded-by")).isFalse();
    }

    @Test
    void whoReadSomethingElseDoesNotSecondIt() throws Exception {
        shop.changeSheet(id, version(), withRunout(LOOSER), Bench.IDA, null);
        assertThatThrownBy(() -> second("{'figure': {'for': 'brakes.disc-runout', 'at-most': '0.3 mm'}}", Bench.TOM)).hasMessageContaining("you read at most 0.3 mm");
        assertThatThrownBy(() -> second("{'figure': {'for': 'brakes.disc-runout', 'is': '0.4 mm'}}", Bench.TOM)).hasMessageContaining("you read 0.4 mm");
        assertThatThrownBy(() -> second("{'figure': {'for': 'brakes.disc-runout'}}", Bench.TOM)).hasMessageContaining("no figure");
        assertThatThrownBy(() -> second("{'figure': {'for': 'brakes.pad-thickness', 'at-least': '1 mm'}}", Bench.TOM)).hasMessageContaining("no figure for brakes.pad-thickness");
        assertThat(figure("brakes.disc-runout").has("seconded-by")).isFalse();
    }

    @Test
    void theSameInAnotherUnitIsTheSame() throws Exception {
        shop.changeSheet(id, version(), withRunout(LOOSER), Bench.IDA, null);
        second("{'figure': {'for': 'brakes.disc-runout', 'at-most': '0.04 cm'}}", Bench.TOM);
        assertThat(figure("brakes.disc-runout").get("seconded-by").textValue()).isEqualTo("tom");
    }

    @Test
    void aFigureThatCameInAFileHasNoReaderHereAndIsNotSeconded() {
        // The file names Ida. Nobody was signed in as Ida when it came in.
        assertThatThrownBy(() -> second("{'figure': {'for': 'brakes.disc-runout', 'at-most': '0.3 mm'}}", Bench.TOM)).hasMessageContaining("came in a file");
    }

    @Test
    void whatItWasBuiltWithIsSecondedByAnotherPersonAsWell() throws Exception {
        String built = "{'as-built': {'document': 'none', 'facts': {'volts': '12'}%s}}";
        assertThatThrownBy(() -> shop.changeSheet(id, version(), json(String.format(built, ", 'seconded-by': 'tom'")), Bench.IDA, null)).hasMessageContaining("seconded-by is given by the board");
        shop.changeSheet(id, version(), json(String.format(built, "")), Bench.IDA, null);
        assertThatThrownBy(() -> second("{'as-built': {'facts': {'volts': '12'}}}", Bench.IDA)).hasMessageContaining("by yourself");
        assertThatThrownBy(() -> second("{'as-built': {'facts': {'volts': '6'}}}", Bench.TOM)).hasMessageContaining("volts");
        second("{'as-built': {'facts': {'volts': '12'}}}", Bench.TOM);
        assertThat(shop.find(id).orElseThrow().sheet().at("/machine/as-built/seconded-by").textValue()).isEqualTo("tom");
    }
}

package chock.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.board.store.Store;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An entry that is dated far back says why it is written only now, and the board shows it. */
class DatedBackTest {
    private static final String BACK = "2026-11-25 09:59";
    @TempDir private Path folder;
    private Store store;
    private Shop shop;
    private String id;

    @BeforeEach
    void takeARecordIn() {
        store = Store.open(folder.toString());
        shop = Bench.shop(store);
        id = shop.take("lark", Bench.example("lark-released.yaml"), "ida", null).machine();
    }

    @AfterEach
    void close() {
        store.close();
    }

    private void write(String... words) {
        shop.write(id, shop.find(id).orElseThrow().version(), List.of(Bench.entry(words)), Bench.TOM, null);
    }

    private List<String> told() {
        return store.read(lines -> lines.events().of(id, Shop.DATED_BACK)).stream().map(event -> event.account() + ": " + event.detail()).toList();
    }

    @Test
    void moreThanTwoHoursBackWantsAReason() {
        // The clock says 12:00; 09:59 is two hours and a minute back.
        assertThatThrownBy(() -> write("at", BACK, "point", "front-brake/caliper", "done", "removed")).hasMessageContaining("written more than two hours later, and does not say why");
        assertThatThrownBy(() -> write("at", BACK, "late", "  ", "point", "front-brake/caliper", "done", "removed")).hasMessageContaining("does not say why");
        assertThatThrownBy(() -> write("at", "2026-11-20", "point", "front-brake/caliper", "done", "removed")).hasMessageContaining("does not say why");
        assertThat(shop.find(id).orElseThrow().version()).isEqualTo(1);
        assertThat(told()).isEmpty();
    }

    @Test
    void theReasonIsKeptBesideTheRecordAndTheEntryStaysAsItWasWritten() {
        write("at", BACK, "late", "the tablet was flat", "point", "front-brake/caliper", "done", "removed");
        var entries = shop.find(id).orElseThrow().entries();
        var entry = entries.get(entries.size() - 1);
        assertThat(entry.has("late")).as("the form of the record has no such key").isFalse();
        assertThat(told()).containsExactly("tom: " + entry.get("id").textValue() + " of " + BACK + ": the tablet was flat");
    }

    @Test
    void whatIsNewerNeedsNone() {
        write("at", "2026-11-25 10:00", "point", "front-brake/caliper", "done", "removed");
        write("point", "front-brake/caliper", "done", "refitted");
        write("at", "2026-11-25 11:50", "late", "just because", "point", "rear-brake/drum", "done", "cleaned");
        assertThat(told()).isEmpty();
    }

    @Test
    void aPageAsksForItAndTheTimeLineShowsIt() {
        try (Running running = new Running(folder.resolve("board"))) {
            Visit lead = running.lead();
            running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
            String[] removed = {"seen", "1", "work", "removed", "point", "front-brake/caliper", "when", "2026-11-25 09:30"};
            var refused = lead.post("/machines/HV-0142/write", removed);
            assertThat(refused.statusCode()).isEqualTo(422);
            assertThat(refused.body()).contains("does not say why").contains("name=\"late\"");
            String[] reasoned = java.util.Arrays.copyOf(removed, removed.length + 2);
            reasoned[removed.length] = "late";
            reasoned[removed.length + 1] = "written up from <b>paper</b>";
            assertThat(lead.post("/machines/HV-0142/write", reasoned).statusCode()).isEqualTo(303);
            assertThat(lead.get("/machines/HV-0142").body()).containsPattern("<strong>Dated back:</strong> written on [^.<]*12:00[^.<]*\\. written up from &lt;b");
            assertThat(lead.get("/journal").body()).contains("entry dated back");
        }
    }
}

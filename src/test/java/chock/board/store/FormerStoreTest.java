package chock.board.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.board.Bench;
import chock.board.Shop;
import chock.record.JobRecord;
import chock.record.RecordReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A board's store as the program made it when records were {@code job-record/1}, with a record taken in and two entries written at the board. */
class FormerStoreTest {
    @TempDir private Path folder;

    @Test
    void it_opens_and_its_record_comes_out_as_it_went_in_and_takes_entries() throws Exception {
        Files.copy(Path.of("src/test/resources/board/v1/board.sqlite"), folder.resolve("board.sqlite"));
        try (Store store = Store.open(folder.toString())) {
            Shop shop = Bench.shop(store);
            Kept kept = shop.find("HV-0142").orElseThrow();
            assertThat(kept.version()).isEqualTo(2);
            assertThat(kept.sheet().get("chock").textValue()).isEqualTo("job-record/1");
            assertThat(kept.entries()).hasSize(300);
            assertThat(kept.entries().get(299).toString()).isEqualTo("{\"id\":\"e300\",\"at\":\"2026-11-25 12:00\",\"by\":\"ida\",\"point\":\"front-brake\",\"tried\":\"lever-feel\",\"is\":\"firm\",\"note\":\"by hand\"}");
            assertThat(shop.write("HV-0142", 2, List.of(Bench.entry("point", "front-brake/control", "tried", "lever-feel", "is", "firm")), Bench.IDA, null).entries()).containsExactly("e301");
            JobRecord now = RecordReader.read("kept", shop.find("HV-0142").orElseThrow().record().toString().getBytes(StandardCharsets.UTF_8), Bench.book().vocabulary(), Bench.NOON);
            assertThat(now.form()).isEqualTo(1);
            assertThat(now.entry("e301").orElseThrow().at().seq()).as("a record of that form has no such key").isZero();
            assertThatThrownBy(() -> shop.changeSheet("HV-0142", 3, Bench.entry("chock", "job-record/1"), Bench.IDA, null)).hasMessageContaining("a record is moved to the newest form only. Write job-record/2");
            shop.changeSheet("HV-0142", 3, Bench.entry("chock", "job-record/2"), Bench.IDA, null);
            shop.write("HV-0142", 4, List.of(Bench.entry("point", "front-brake/control", "tried", "lever-feel", "is", "firm")), Bench.IDA, null);
            assertThat(shop.find("HV-0142").orElseThrow().entries().get(301).get("seq").asInt()).isEqualTo(1);
        }
    }
}

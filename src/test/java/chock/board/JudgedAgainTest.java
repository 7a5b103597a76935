package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.board.store.Floor;
import chock.board.store.Kept;
import chock.board.store.Store;
import chock.board.store.Summary;
import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** After a change of rules every machine is judged again, whatever is the matter with one of them. */
class JudgedAgainTest {
    @TempDir
    Path folder;

    @Test
    void oneRecordThatCannotBeReadKeepsNoOtherWaiting() {
        Summary former = new Summary("former rules", List.of(), null);
        try (Store store = Store.open(folder.toString())) {
            Shop shop = Bench.shop(store);
            shop.take("lark", Bench.example("lark-released.yaml"), "lead", null);
            Kept good = shop.find("HV-0142").orElseThrow();
            // Two that come before it in the order of ids, and more of them than are judged at once.
            for (String id : List.of("A-1", "A-2")) {
                ObjectNode sheet = good.sheet().deepCopy().put("record", id);
                ((ObjectNode) sheet.get("machine")).put("drive", "cain");
                assertThat(store.<Boolean>write(lines -> lines.records().add(new Kept(id, 1, sheet, good.entries()), former, "lead", Bench.NOON))).isTrue();
            }
            store.write(lines -> lines.records().summarise("HV-0142", 1, former));
            assertThat(judged(store)).containsExactly(Map.entry("A-1", false), Map.entry("A-2", false), Map.entry("HV-0142", false));
            Map<String, RuntimeException> unjudged = new TreeMap<>();
            int rounds = 0;
            while (shop.judgeAgain(1, unjudged) > 0) {
                rounds++;
                assertThat(rounds).as("rounds").isLessThan(10);
            }
            assertThat(rounds).isEqualTo(3);
            assertThat(unjudged).containsOnlyKeys("A-1", "A-2");
            assertThat(unjudged.get("A-1")).isInstanceOf(UnusableInput.class).hasMessageContaining("cain");
            assertThat(judged(store)).as("what cannot be judged counts as held").containsExactly(Map.entry("A-1", false), Map.entry("A-2", false), Map.entry("HV-0142", true));
        }
    }

    private static Map<String, Boolean> judged(Store store) {
        Map<String, Boolean> judged = new TreeMap<>();
        store.read(lines -> lines.floor().list(Floor.Sieve.ALL, Floor.Order.ID, 0, 9, new Judging(Bench.book()).key(), Bench.NOON)).forEach(row -> judged.put(row.id(), row.judged()));
        return judged;
    }
}

package chock.board.store;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.time.Instant;
import java.util.List;

/** A program that adds entries until it is killed, and says of each when it is acknowledged. */
final class Writer {
    private Writer() { }

    public static void main(String[] where) {
        Summary none = new Summary("", List.of(), null);
        try (Store store = Store.open(where[0])) {
            long version = store.read(lines -> lines.records().find("HV-0142")).orElseThrow().version();
            while (true) {
                long seen = version;
                String id = "w" + (seen + 1);
                boolean written = store.write(lines -> lines.records().append("HV-0142", seen, null, List.of(JsonNodeFactory.instance.objectNode().put("id", id)), none, "tom", Instant.EPOCH));
                if (!written) {
                    throw new IllegalStateException("somebody else writes here");
                }
                System.out.println(id);
                System.out.flush();
                version++;
            }
        }
    }
}

package chock.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** Makes job records by the thousand: a demo record with so many of its entries, drawn anew each time. The same seed gives the same records. */
public final class RecordMill {
    private static final ObjectMapper JSON = new ObjectMapper();
    private final ObjectNode whole;
    private final int entries;
    private final Random random;
    private int made;

    public RecordMill(String example, int entries, long seed) throws IOException {
        this.whole = (ObjectNode) new YAMLMapper().readTree(Files.readAllBytes(Path.of("docs/examples", example)));
        this.entries = entries;
        this.random = new Random(seed);
        whole.putArray("claims");
    }

    /** The next record as one line of JSON, without a line end. */
    public String next() {
        ObjectNode record = JSON.createObjectNode().setAll(whole);
        record.put("record", "M-" + ++made);
        ArrayNode all = (ArrayNode) whole.get("entries");
        List<Integer> drawn = new ArrayList<>(IntStream.range(0, all.size()).boxed().toList());
        Collections.shuffle(drawn, random);
        ArrayNode some = record.putArray("entries");
        drawn.stream().limit(entries).sorted(Comparator.naturalOrder()).map(all::get).filter(entry -> !entry.has("corrects")).forEach((JsonNode entry) -> some.add(entry));
        return record.toString();
    }

    /**
     * Writes a stream to standard output.
     *
     * @param args how many records, of how many entries, from which demo record
     */
    public static void main(String[] args) throws IOException {
        RecordMill mill = new RecordMill(args.length > 2 ? args[2] : "lark-released.yaml", Integer.parseInt(args[1]), 1);
        PrintStream out = new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out), false, StandardCharsets.UTF_8);
        for (int i = Integer.parseInt(args[0]); i > 0; i--) {
            out.print(mill.next() + "\n");
        }
        out.flush();
    }
}

package chock.board;

import chock.record.RecordReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;

/**
 * A shop of seventy machines to try the board on, none of them real: the example records under other names, each stopped
 * at another stage of the work, with every date moved so that the shop is busy today.
 */
final class DemoShop {
    static final int MACHINES = 70;
    /** The moment at which the example records tell their story. */
    private static final LocalDateTime TOLD = LocalDateTime.of(2026, 11, 25, 12, 0);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);
    private static final List<String> MARQUES = List.of("Tarnbeck", "Dovrel", "Ashgarth", "Pellamor", "Stourwen", "Vintrell", "Cobbrake", "Orlsby", "Fennimar", "Quellan");
    private static final List<String> MODELS = List.of("Lark 250", "Merle 125", "Plover 175", "Dunlin 350", "Siskin 200", "Whin 500", "Tern 150", "Knot 400", "Rail 300", "Brant 650");
    /** How far the work has come, in parts of the whole; the last ones are done. */
    private static final int[] STAGES = {15, 40, 60, 75, 85, 92, 96, 98, 100, 100, 100};

    private DemoShop() { }

    /** The record files, as JSON. */
    static List<byte[]> records(Instant now) {
        List<ObjectNode> examples = examples();
        Random random = new Random(70);
        List<byte[]> all = new ArrayList<>();
        for (int n = 0; n < MACHINES; n++) {
            ObjectNode record = examples.get(n % examples.size()).deepCopy();
            ZoneId zone = ZoneId.of(record.get("zone").textValue());
            stop(record, STAGES[n % STAGES.length], random);
            ObjectNode named = (ObjectNode) moved(renamed(record, n), Duration.between(TOLD, now.atZone(zone).toLocalDateTime()), zone);
            all.add(named.toString().getBytes(StandardCharsets.UTF_8));
        }
        return all;
    }

    private static List<ObjectNode> examples() {
        List<ObjectNode> examples = new ArrayList<>();
        new String(resource("/examples/index.txt"), StandardCharsets.UTF_8).lines().map(String::strip).filter(line -> !line.isEmpty() && !line.startsWith("#"))
                .map(line -> line.split("\\s")[0]).forEach(file -> examples.add(RecordReader.written(file, resource("/examples/" + file))));
        return examples;
    }

    private static byte[] resource(String name) {
        try (InputStream in = DemoShop.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks " + name);
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Leaves out what comes after a stage, and in some machines a few lines before it. */
    private static void stop(ObjectNode record, int percent, Random random) {
        ArrayNode entries = (ArrayNode) record.get("entries");
        int kept = entries.size() * percent / 100;
        Set<String> gone = new HashSet<>();
        ArrayNode left = JsonNodeFactory.instance.arrayNode();
        for (int i = 0; i < entries.size(); i++) {
            ObjectNode entry = (ObjectNode) entries.get(i);
            boolean forgotten = percent < 100 && random.nextInt(100) < 2;
            if (i >= kept || forgotten || entry.has("corrects") && gone.contains(entry.get("corrects").textValue())) {
                gone.add(entry.get("id").textValue());
            } else {
                left.add(entry);
            }
        }
        record.set("entries", left);
        for (JsonNode claim : record.get("claims")) {
            ArrayNode supports = JsonNodeFactory.instance.arrayNode();
            claim.get("supported-by").forEach(id -> {
                if (!gone.contains(id.textValue())) {
                    supports.add(id);
                }
            });
            ((ObjectNode) claim).set("supported-by", supports);
        }
    }

    private static JsonNode renamed(ObjectNode record, int n) {
        ObjectNode machine = (ObjectNode) record.get("machine");
        String frame = machine.get("frame-number").textValue();
        String engine = machine.get("engine-number").textValue();
        String model = machine.get("model").textValue();
        String marque = MARQUES.get(n / 2 % MARQUES.size());
        String as = n < 9 ? model : MODELS.get((n * 7 + n / 10) % MODELS.size());
        machine.put("marque", marque);
        record.put("record", "HV-" + (3001 + n));
        String stamped = marque.substring(0, 2).toUpperCase(Locale.ROOT) + "-" + (10_382 + n * 137);
        return replaced(record, List.of(List.of(engine, stamped.replace("-", "E-")), List.of(frame, stamped), List.of(model, as)));
    }

    private static JsonNode replaced(JsonNode node, List<List<String>> pairs) {
        return each(node, text -> {
            String now = text;
            for (List<String> pair : pairs) {
                now = pair.get(0).equals("none") ? now : now.replace(pair.get(0), pair.get(1));
            }
            return now;
        });
    }

    /** Moves days and times; the machine itself stays as old as it is. */
    private static JsonNode moved(JsonNode record, Duration by, ZoneId zone) {
        ObjectNode moved = (ObjectNode) record.deepCopy();
        for (String part : List.of("entries", "instruments")) {
            moved.set(part, each(moved.get(part), text -> move(text, by, zone)));
        }
        return moved;
    }

    private static String move(String text, Duration by, ZoneId zone) {
        if (text.matches("20\\d{2}-\\d{2}-\\d{2} \\d{2}:\\d{2}")) {
            // Over a change of the clocks it is the time they showed.
            return LocalDateTime.parse(text, MINUTE).plus(by).atZone(zone).format(MINUTE);
        }
        if (text.matches("20\\d{2}-\\d{2}-\\d{2}")) {
            return LocalDate.parse(text).plusDays(by.toDays()).toString();
        }
        return text.matches("20\\d{2}-\\d{2}") ? YearMonth.parse(text).plusMonths(by.toDays() / 30).toString() : text;
    }

    private static JsonNode each(JsonNode node, java.util.function.UnaryOperator<String> change) {
        if (node.isTextual()) {
            return TextNode.valueOf(change.apply(node.textValue()));
        }
        if (node.isArray()) {
            ArrayNode all = JsonNodeFactory.instance.arrayNode();
            node.forEach(one -> all.add(each(one, change)));
            return all;
        }
        if (node.isObject()) {
            ObjectNode all = JsonNodeFactory.instance.objectNode();
            node.fields().forEachRemaining(field -> all.set(field.getKey(), each(field.getValue(), change)));
            return all;
        }
        return node;
    }
}

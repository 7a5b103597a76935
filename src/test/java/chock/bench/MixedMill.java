package chock.bench;

import chock.rulebook.Card;
import chock.rulebook.RuleBook;
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
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes job records of many kinds of machine by the thousand, no two alike: entries of the demo records, of which some
 * say something else, were written earlier, by hearsay, at another place or with a note, and with corrections, work and
 * defects on top. The same seed gives the same records.
 */
public final class MixedMill {
    /** How many descriptions of machines it deals out by turns. */
    public static final int DESCRIPTIONS = 60;
    private static final ObjectMapper JSON = new ObjectMapper();
    /** Demo records as they were once: a new entry in one of today would change every record. */
    private static final String RECORDS = "src/test/resources/golden/records";
    private static final List<String> EXAMPLES = List.of("lark-released.yaml", "merle-released.yaml",
            "harrow-prewar-single.yaml");
    private static final Pattern AMOUNT = Pattern.compile("(\\d+(?:\\.\\d+)?)(.*)", Pattern.DOTALL);
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    /** Written out, as a word more in the rule book would change every record. */
    private static final List<String> WORKS = List.of("removed",
            "refitted", "replaced", "opened", "stripped", "repaired",
            "damaged", "adjusted", "tightened", "loosened", "torqued",
                    "cleaned", "drained", "filled", "bled", "inflated",
            "ridden", "left-off");

    private final List<ObjectNode> examples = new ArrayList<>();
    private final List<ObjectNode> machines = new ArrayList<>();
    private final Map<String, List<String>> answers = new HashMap<>();
    private final List<String> points;
    private final Random random;
    private int made;
    private int written;

    public MixedMill(RuleBook book, long seed) throws IOException {
        for (String name : EXAMPLES) {
            examples.add((ObjectNode) new YAMLMapper().readTree(Files.readAllBytes(Path.of(RECORDS, name))));
        }
        for (int number = 0; number < DESCRIPTIONS; number++) {
            machines.add(MixedMachine.of(number, (ObjectNode) examples.get(number % EXAMPLES.size()).get("machine")));
        }
        Map<String, TreeSet<String>> known = new TreeMap<>();
        book.cards().values().stream().flatMap(card -> card.wants().stream()).forEach((Card.Want want) -> {
            known.computeIfAbsent(want.aspect(), a -> new TreeSet<>()).addAll(want.good());
            known.get(want.aspect()).addAll(want.bad());
        });
        known.forEach((aspect, words) -> answers.put(aspect, List.copyOf(words)));
        TreeSet<String> places = new TreeSet<>();
        examples.forEach(one -> one.get("entries").forEach(entry -> places.add(entry.get("point").asText())));
        points = List.copyOf(places);
        random = new Random(seed);
    }

    /** The next record as one line of JSON, without a line end: 60 entries, ten more or less. */
    public String next() {
        return next(50 + random.nextInt(21));
    }

    /** The same with so many entries, as far as the demo record has them. */
    public String next(int entries) {
        int number = made++ % DESCRIPTIONS;
        ObjectNode whole = examples.get(number % EXAMPLES.size());
        ObjectNode record = JSON.createObjectNode().setAll(whole.deepCopy());
        record.put("record", "M-" + made);
        record.set("machine", machines.get(number).deepCopy());
        ArrayNode gates = record.putArray("seeks");
        List.of("first-start", "indoor-run", "road-test", "on-show", "hand-over", "non-runner").forEach(gates::add);
        record.put("territory", number % 7 == 3 ? "DE" : number % 11 == 5 ? "US-VA" : number % 13 == 6 ? "FR" : "GB");
        if (random.nextInt(8) == 0) {
            alone(record);
        }
        if (number % 9 == 4) {
            record.put("chock", "job-record/1");
            ((ObjectNode) record.get("machine")).remove("as-built");
        }
        record.putArray("claims");
        record.set("entries", entries(whole, entries, record));
        return record.toString();
    }

    /** One person works alone, and wrote everything. */
    private static void alone(ObjectNode record) {
        record.put("one-person", "yes");
        ArrayNode people = (ArrayNode) record.get("people");
        while (people.size() > 1) {
            people.remove(people.size() - 1);
        }
        record.get("maker").get("figures").forEach(figure -> ((ObjectNode) figure).remove("seconded-by"));
    }

    private ArrayNode entries(ObjectNode whole, int wanted, ObjectNode record) {
        List<ObjectNode> pool = new ArrayList<>();
        whole.get("entries").forEach((JsonNode entry) -> pool.add((ObjectNode) entry));
        List<Integer> drawn = new ArrayList<>();
        for (int i = 0; i < pool.size(); i++) {
            drawn.add(i);
        }
        Collections.shuffle(drawn, random);
        List<String> people = new ArrayList<>();
        record.get("people").forEach(person -> people.add(person.get("id").asText()));
        boolean second = record.get("chock").asText().endsWith("2");
        List<ObjectNode> all = new ArrayList<>();
        written = 0;
        drawn.stream().limit(wanted).sorted(Comparator.naturalOrder())
                .forEach(i -> all.add(changed(pool.get(i).deepCopy(), people, second)));
        corrections(all, people);
        for (int i = random.nextInt(4); i > 0; i--) {
            all.add(work(people));
        }
        if (second && random.nextInt(4) == 0) {
            defect(all, people);
        }
        if (random.nextInt(10) == 0) {
            JsonNode instruments = record.get("instruments");
            all.add(line("2026-11-20 15:" + minute(), people).put("found-out", "reads low")
                    .put("instrument", instruments.get(random.nextInt(instruments.size())).get("id").asText()));
        }
        if (random.nextInt(10) == 0) {
            all.add(line("2026-11-21 08:" + minute(), people)
                    .put("inspected", random.nextBoolean() ? "refused" : "passed").put("licence", "L 100")
                    .put("inspector", "Nan Oak").put("document", "D 7"));
        }
        ArrayNode entries = JSON.createArrayNode();
        all.forEach(entries::add);
        return entries;
    }

    private ObjectNode line(String at, List<String> people) {
        return JSON.createObjectNode().put("id", "m" + ++written).put("at", at)
                .put("by", people.get(random.nextInt(people.size())));
    }

    private String minute() {
        return String.valueOf(10 + random.nextInt(50));
    }

    /** One entry of a demo record, mostly as it was. */
    private ObjectNode changed(ObjectNode entry, List<String> people, boolean second) {
        List.of("seq", "corrects", "reason").forEach(entry::remove);
        entry.put("id", "e" + ++written);
        if (!people.contains(entry.get("by").asText())) {
            entry.put("by", people.get(0));
        }
        if (!second && entry.has("done")) {
            List.of("with", "is").forEach(entry::remove);
        }
        switch (random.nextInt(16)) {
            case 0 -> otherAnswer(entry);
            case 1 -> otherAmount(entry);
            case 2 -> earlier(entry, 1 + random.nextInt(400));
            case 3 -> hearsay(entry);
            case 4 -> elsewhere(entry);
            case 5 -> noted(entry, second);
            case 6 -> entry.put("at", entry.get("at").asText().substring(0, 10));
            default -> { }
        }
        return entry;
    }

    private void otherAnswer(ObjectNode entry) {
        List<String> words = answers.getOrDefault(aspect(entry), List.of());
        if (entry.has("is") && words.contains(entry.get("is").asText())) {
            entry.put("is", words.get(random.nextInt(words.size())));
        }
    }

    private static String aspect(ObjectNode entry) {
        for (String deed : List.of("measured", "tried", "seen", "told", "assumed", "done")) {
            if (entry.has(deed)) {
                return entry.get(deed).asText();
            }
        }
        return "";
    }

    private void otherAmount(ObjectNode entry) {
        Matcher amount = entry.has("measured") ? AMOUNT.matcher(entry.get("is").asText()) : null;
        if (amount != null && amount.matches()) {
            long hundredths = Math.round(Double.parseDouble(amount.group(1)) * (30 + random.nextInt(170)));
            entry.put("is", hundredths / 100 + "." + (hundredths % 100 < 10
                    ? "0" : "") + hundredths % 100 + amount.group(2));
        }
    }

    private static void earlier(ObjectNode entry, int days) {
        String at = entry.get("at").asText();
        entry.put("at", LocalDate.parse(at.substring(0, 10)).minusDays(days) + at.substring(10));
    }

    private static void hearsay(ObjectNode entry) {
        for (String deed : List.of("measured", "tried", "seen")) {
            JsonNode what = entry.remove(deed);
            if (what != null) {
                entry.remove("with");
                entry.set("told", what);
                entry.put("is", entry.get("is").asText().replaceAll(" ±.*", ""));
            }
        }
    }

    private void elsewhere(ObjectNode entry) {
        String point = entry.get("point").asText();
        boolean up = point.contains("/") && random.nextBoolean();
        String other = up ? point.substring(0, point.lastIndexOf('/')) : points.get(random.nextInt(points.size()));
        if (points.contains(other)) {
            entry.put("point", other);
        }
    }

    private void noted(ObjectNode entry, boolean second) {
        entry.put("note", "heard a rattle there");
        if (second && random.nextInt(3) > 0) {
            entry.put("note-is", random.nextBoolean() ? "remark" : "defect");
        }
    }

    private void corrections(List<ObjectNode> all, List<String> people) {
        List<ObjectNode> before = List.copyOf(all);
        TreeSet<Integer> wrong = new TreeSet<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            wrong.add(random.nextInt(before.size()));
        }
        for (int i : wrong) {
            ObjectNode again = before.get(i).deepCopy();
            again.put("id", "m" + ++written).put("at", DAY + " 09:" + minute())
                    .put("by", people.get(random.nextInt(people.size())));
            if (random.nextBoolean()) {
                otherAnswer(again);
            } else {
                otherAmount(again);
            }
            String day = before.get(i).get("at").asText().substring(0, 10);
            if (LocalDate.parse(day).isBefore(DAY)) {
                all.add(again.put("corrects", before.get(i).get("id").asText()).put("reason", "misread"));
            }
        }
    }

    private ObjectNode work(List<String> people) {
        return line("2026-11-2" + random.nextInt(5) + " 17:" + minute(), people)
                .put("point", points.get(random.nextInt(points.size())))
                .put("done", WORKS.get(random.nextInt(WORKS.size())));
    }

    private void defect(List<ObjectNode> all, List<String> people) {
        ObjectNode defect = line("2026-11-19 10:" + minute(), people)
                .put("point", points.get(random.nextInt(points.size()))).put("defect", "rubs on full lock");
        defect.putArray("dangers").add("steering-loss");
        all.add(defect);
        if (random.nextBoolean()) {
            all.add(line("2026-11-22 10:" + minute(), people).put("closed", defect.get("id").asText())
                    .put("reason", "cable led anew"));
        }
    }

    /**
     * Writes a stream to standard output.
     *
     * @param args how many records
     */
    public static void main(String[] args) throws IOException {
        MixedMill mill = new MixedMill(RuleBook.shipped(), 1);
        PrintStream out = new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out),
                false, StandardCharsets.UTF_8);
        for (int i = Integer.parseInt(args[0]); i > 0; i--) {
            out.print(mill.next() + "\n");
        }
        out.flush();
    }
}

package chock.board;

import chock.board.store.Accounts.Account;
import chock.quantity.Quantity;
import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Who read what two people have to read: a maker's figure, or what the machine was built with. At the board the first reader is
 * whoever is signed in, and the second is another account that reads the same by itself. Nobody writes in another's name. The
 * journal keeps what was read by whom; a file can only claim it.
 */
final class SecondReader {
    static final String READ = "figure read";
    static final String COMPARED = "as-built compared";
    private static final List<String> NUMBERS = List.of("at-least", "at-most", "is");
    private static final Set<String> SAID = Set.of("for", "at", "at-least", "at-most", "is");

    private SecondReader() { }

    /** The maker's part with new and changed figures in the name of who is signed in; the others stay as they are. */
    static JsonNode maker(String record, JsonNode before, JsonNode written, Account by, List<Noted> readings) {
        if (!(written.path("figures") instanceof ArrayNode)) {
            return written;
        }
        ObjectNode maker = written.deepCopy();
        ArrayNode figures = (ArrayNode) maker.get("figures");
        for (int i = 0; i < figures.size(); i++) {
            // What is no set of keys is left for the reader to refuse.
            if (figures.get(i) instanceof ObjectNode figure && !stands(before.path("figures"), figure)) {
                inTheNameOf(record, "maker.figures[" + i + "]", figure, by);
                readings.add(new Noted(READ, words(figure)));
            }
        }
        return maker;
    }

    private static boolean stands(JsonNode figures, ObjectNode figure) {
        for (JsonNode one : figures) {
            if (one.equals(figure)) {
                return true;
            }
        }
        return false;
    }

    /** What it was built with, in the name of who is signed in. */
    static JsonNode asBuilt(String record, JsonNode before, JsonNode written, Account by, List<Noted> readings) {
        if (!(written instanceof ObjectNode) || written.equals(before)) {
            return written;
        }
        ObjectNode built = written.deepCopy();
        // Whoever copies what stands there and alters it reads it anew.
        built.remove("by");
        inTheNameOf(record, "as-built", built, by);
        readings.add(new Noted(COMPARED, facts(built)));
        return built;
    }

    private static void inTheNameOf(String record, String path, ObjectNode written, Account by) {
        if (written.has("by") && !written.get("by").asText().equals(by.id())) {
            throw UnusableInput.of(record, path + ".by is given by the board: what is new or changed was read by who is signed in", "Leave by out");
        }
        if (written.has("seconded-by")) {
            throw UnusableInput.of(record, path + ".seconded-by is given by the board, when somebody else signs in and reads the same", "Leave seconded-by out of what is new or changed");
        }
        written.put("by", by.id());
    }

    /**
     * Puts the second reader into a sheet.
     *
     * @param said what they read: {@code figure} with {@code for}, {@code at} and the figure, or {@code as-built} with {@code facts}
     * @param wasRead whether the journal has it that this account read it here
     */
    static Noted second(String record, ObjectNode sheet, ObjectNode said, Account by, WasRead wasRead) {
        if (said.size() == 1 && said.path("figure") instanceof ObjectNode figure) {
            return figure(record, sheet, figure, by, wasRead);
        }
        if (said.size() == 1 && said.at("/as-built/facts") instanceof ObjectNode facts && said.get("as-built").size() == 1) {
            return built(record, sheet, facts, by, wasRead);
        }
        throw UnusableInput.of(record, "it does not say what you read", "Write {\"figure\": {\"for\": limit, \"at-most\": what you read}}, or {\"as-built\": {\"facts\": {field: what you found}}}");
    }

    /** Whether an account read this at the board. */
    interface WasRead {
        boolean by(String account, Noted reading);
    }

    private static Noted figure(String record, ObjectNode sheet, ObjectNode said, Account by, WasRead wasRead) {
        said.fieldNames().forEachRemaining(name -> {
            if (!SAID.contains(name)) {
                throw UnusableInput.of(record, "'" + name + "' is not known here", "Write for, at and at-least, at-most or is, as you read it");
            }
        });
        if (NUMBERS.stream().noneMatch(said::has)) {
            throw UnusableInput.of(record, "no figure was sent", "Write at-least, at-most or is, as you read it in the manual");
        }
        String what = said.path("for").asText() + (said.has("at") ? " at " + said.get("at").asText() : "");
        ObjectNode figure = null;
        for (JsonNode one : sheet.at("/maker/figures")) {
            if (one.path("for").asText().equals(said.path("for").asText()) && one.path("at").asText().equals(said.path("at").asText())) {
                figure = (ObjectNode) one;
            }
        }
        if (figure == null) {
            throw UnusableInput.of(record, "there is no figure for " + what, "Name the limit and the place as the record does");
        }
        for (String number : NUMBERS) {
            if (!same(record, figure.get(number), said.get(number))) {
                throw UnusableInput.of(record, "you read " + number(said) + " for " + what + ", and that is not what the record has", "Look at the manual together with who read it first");
            }
        }
        Noted reading = new Noted(READ, words(figure));
        another(record, "the figure for " + what, figure, by, reading, wasRead);
        figure.put("seconded-by", by.id());
        return new Noted("figure seconded", reading.detail());
    }

    private static Noted built(String record, ObjectNode sheet, ObjectNode said, Account by, WasRead wasRead) {
        if (!(sheet.at("/machine/as-built") instanceof ObjectNode built)) {
            throw UnusableInput.of(record, "nobody has written what it was built with", "Write as-built first");
        }
        Map<String, String> mine = texts(said);
        Map<String, String> theirs = texts(built.path("facts"));
        List<String> differ = new ArrayList<>();
        theirs.keySet().stream().filter(field -> !theirs.get(field).equals(mine.get(field))).forEach(differ::add);
        mine.keySet().stream().filter(field -> !theirs.containsKey(field)).forEach(differ::add);
        if (!differ.isEmpty()) {
            throw UnusableInput.of(record, "you found otherwise what it was built with, or say nothing of it: " + String.join(", ", differ), "Look at the machine together with who wrote it");
        }
        Noted reading = new Noted(COMPARED, facts(built));
        another(record, "what it was built with", built, by, reading, wasRead);
        built.put("seconded-by", by.id());
        return new Noted("as-built seconded", reading.detail());
    }

    private static void another(String record, String what, ObjectNode read, Account by, Noted reading, WasRead wasRead) {
        String first = read.path("by").asText();
        if (read.has("seconded-by")) {
            throw UnusableInput.of(record, what + " is seconded already, by " + read.get("seconded-by").asText(), "Nothing is left to do");
        }
        if (first.equals(by.id())) {
            throw UnusableInput.of(record, what + " was read by yourself", "Let somebody else sign in and read it");
        }
        if (!wasRead.by(first, reading)) {
            throw UnusableInput.of(record, what + " came in a file, or before the board kept who read it: nobody was signed in as " + first + " for it",
                    "Let somebody write it anew at the board, and second that");
        }
    }

    private static boolean same(String record, JsonNode one, JsonNode other) {
        if (one == null || other == null) {
            return one == other;
        }
        try {
            Quantity a = Quantity.parse(one.asText());
            Quantity b = Quantity.parse(other.asText());
            return a.unit().dimension() == b.unit().dimension() && a.compareTo(b) == 0;
        } catch (IllegalArgumentException e) {
            throw UnusableInput.of(record, e.getMessage(), "Write the figure with its unit");
        }
    }

    private static String number(JsonNode figure) {
        List<String> parts = new ArrayList<>();
        NUMBERS.stream().filter(figure::has).forEach(name -> parts.add((name.equals("is") ? "" : name.replace('-', ' ') + " ") + figure.get(name).asText()));
        return String.join(", ", parts);
    }

    private static String words(ObjectNode figure) {
        return figure.path("for").asText() + (figure.has("at") ? " at " + figure.get("at").asText() : "") + ": " + number(figure) + ", " + figure.path("document").asText() + ", " + figure.path("page").asText();
    }

    private static String facts(ObjectNode built) {
        return "by " + built.path("document").asText() + (built.has("page") ? ", " + built.get("page").asText() : "") + ": " + texts(built.path("facts"));
    }

    private static Map<String, String> texts(JsonNode facts) {
        Map<String, String> texts = new TreeMap<>();
        facts.fields().forEachRemaining(fact -> texts.put(fact.getKey(), fact.getValue().isTextual() ? fact.getValue().textValue() : fact.getValue().toString()));
        return texts;
    }
}

package chock.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Sessions that were filled in on a sheet, added to a record. Each line is read as it would be if it were written into the record by
 * hand now; what would be refused there is refused here, line by line, and the rest is taken.
 *
 * @param record the text of the record with the sessions added; as it was when nothing was taken
 * @param entries ids of the entries that were added
 * @param there how many lines the record has already, from taking the same sheet in before
 * @param refused what was not taken, each with its line on the sheet
 * @param notes what was changed in taking it in
 */
public record SheetTakenIn(byte[] record, List<String> entries, int there, List<Fault> refused, List<String> notes) {
    /** The first line of a sheet says {@code chock: } and this. */
    public static final String FORM = "session-sheet/1";

    private static final List<String> KEYS = List.of("chock", "record", Sessions.KEY);

    /**
     * @param asOf nothing on the sheet may be later
     * @throws UnusableInput when the record or the sheet as a whole cannot be used
     */
    public static SheetTakenIn of(String sheetName, byte[] sheet, String recordName, byte[] record, Vocabulary words, Instant asOf) {
        JobRecord before = RecordReader.read(recordName, record, words, asOf);
        if (before.form() < 2) {
            throw UnusableInput.of(recordName, "sessions go into " + RecordForm.name(2) + ", and this file is " + RecordForm.name(before.form()), "Write " + RecordForm.name(2) + " on its first line, and read what that asks for besides");
        }
        return new Taking(sheetName, sheet, recordName, record, words, asOf).taken(before);
    }

    private static final class Taking {
        private final String sheetName;
        private final String recordName;
        private final byte[] record;
        private final Vocabulary words;
        private final Instant asOf;
        private final Map<String, Integer> lines = new HashMap<>();
        private final Faults sheetFaults;
        private final JsonNode sheet;
        private final List<Fault> refused = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();

        Taking(String sheetName, byte[] sheet, String recordName, byte[] record, Vocabulary words, Instant asOf) {
            this.sheetName = sheetName;
            this.recordName = recordName;
            this.record = record;
            this.words = words;
            this.asOf = asOf;
            this.sheetFaults = new Faults(sheetName, lines);
            this.sheet = Written.read(sheet, sheetFaults, lines);
        }

        SheetTakenIn taken(JobRecord before) {
            ArrayNode sessions = filledIn(before);
            ObjectNode base = RecordReader.written(recordName, record);
            int there = withoutKnown(sessions, base);
            unnumberWhereTaken(sessions, base);
            List<String> ids = List.of();
            while (!sessions.isEmpty()) {
                List<Fault> faults = new ArrayList<>();
                ids = read(sessions, base, faults);
                if (faults.isEmpty()) {
                    break;
                }
                if (!refuse(sessions, faults)) {
                    throw new UnusableInput(faults);
                }
            }
            return sessions.isEmpty() ? new SheetTakenIn(record, List.of(), there, List.copyOf(refused), List.copyOf(notes))
                    : new SheetTakenIn(RecordAdded.sessions(recordName, record, sessions), ids, there, List.copyOf(refused), List.copyOf(notes));
        }

        /** The sessions without their blanks; what has no answer at all falls away. */
        private ArrayNode filledIn(JobRecord before) {
            if (sheet instanceof ObjectNode keys) {
                keys.fieldNames().forEachRemaining(key -> {
                    if (!KEYS.contains(key)) {
                        sheetFaults.add(key, "the key " + Faults.quoted(key) + " is not known on a sheet", Choices.advice("Write", key, KEYS));
                    }
                });
                if (!FORM.equals(keys.path("chock").asText())) {
                    sheetFaults.add("chock", "this is no sheet to take in", "Take one that 'chock worksheet RECORD --gate GATE --format yaml' prints; it begins with chock: " + FORM);
                } else if (!before.id().equals(keys.path("record").asText())) {
                    sheetFaults.add("record", "the sheet is of " + Faults.quoted(keys.path("record").asText()) + ", and the record is " + before.id(), "Name the record that the sheet was printed of");
                } else if (!(keys.get(Sessions.KEY) instanceof ArrayNode)) {
                    sheetFaults.add(Sessions.KEY, "no sessions stand here", "Take the sheet as it was printed, with the answers filled in");
                }
            }
            if (sheetFaults.any() || sheet == null) {
                throw sheetFaults.toException();
            }
            ArrayNode sessions = (ArrayNode) sheet.get(Sessions.KEY);
            ArrayNode kept = sessions.arrayNode();
            for (int i = 0; i < sessions.size(); i++) {
                // One place for each, so that the paths of the sheet stay what they are; a null is a session without answers.
                kept.add(sessions.get(i) instanceof ObjectNode session && hasAnswers(session) ? session : null);
            }
            return prunedTail(kept);
        }

        private static ArrayNode prunedTail(ArrayNode sessions) {
            boolean any = false;
            for (JsonNode one : sessions) {
                any |= one.isObject();
            }
            return any ? sessions : sessions.removeAll();
        }

        private static boolean hasAnswers(ObjectNode session) {
            for (String key : names(session)) {
                boolean head = Sessions.HEADER.contains(key) && !key.equals("with");
                if (!head && isBlank(session.get(key))) {
                    session.remove(key);
                }
            }
            if (session.get("with") instanceof ObjectNode with) {
                Set<String> read = new HashSet<>();
                names(session).stream().filter(key -> !Sessions.HEADER.contains(key)).forEach(key -> words(key, session.get(key), read));
                names(with).stream().filter(what -> !read.contains(what)).forEach(with::remove);
                if (with.isEmpty()) {
                    session.remove("with");
                }
            }
            return names(session).stream().anyMatch(key -> !Sessions.HEADER.contains(key));
        }

        private static void words(String key, JsonNode value, Set<String> into) {
            into.addAll(List.of(key.trim().split("\\s+")));
            if (value.isObject()) {
                value.properties().forEach(below -> words(below.getKey(), below.getValue(), into));
            } else if (value.isArray()) {
                value.forEach(one -> into.add(one.asText()));
            } else {
                into.add(value.asText());
            }
        }

        private static boolean isBlank(JsonNode node) {
            if (node instanceof ObjectNode keys) {
                names(keys).stream().filter(key -> isBlank(keys.get(key))).forEach(keys::remove);
                return keys.isEmpty();
            }
            return node.isNull() || node.isTextual() && node.asText().isBlank();
        }

        private static List<String> names(ObjectNode node) {
            List<String> names = new ArrayList<>();
            node.fieldNames().forEachRemaining(names::add);
            return names;
        }

        /** A sheet may be taken in again after its refused lines were put right: what is there already is passed over. */
        private int withoutKnown(ArrayNode sessions, ObjectNode base) {
            Map<String, String> known = new HashMap<>();
            base.get("entries").forEach(entry -> known.put(fact(entry), entry.path("is").asText() + " " + entry.path("with").asText()));
            int there = 0;
            Map<String, JsonNode> expanded = expanded(sessions);
            for (Map.Entry<String, JsonNode> line : expanded.entrySet()) {
                String before = known.get(fact(line.getValue()));
                if (before == null) {
                    continue;
                }
                if (before.equals(line.getValue().path("is").asText() + " " + line.getValue().path("with").asText())) {
                    there++;
                } else {
                    refused.add(new Fault(sheetName, lines.getOrDefault(line.getKey(), 0), line.getKey(), "the record has another answer of that moment already: " + before.trim(),
                            "Write what replaces it as an entry of its own, with corrects and a reason"));
                }
                remove(sessions, line.getKey());
            }
            return there;
        }

        private static String fact(JsonNode entry) {
            String kind = Sessions.KINDS.stream().filter(entry::has).findFirst().orElse("");
            return Sessions.minute(entry) + " " + entry.path("by").asText() + " " + entry.path("point").asText() + " " + kind + " " + entry.path(kind).asText();
        }

        /** Each line that can be written out, by its path on the sheet. */
        private Map<String, JsonNode> expanded(ArrayNode sessions) {
            Map<String, JsonNode> expanded = new LinkedHashMap<>();
            Sessions.expand(sessions, sessions.arrayNode(), new HashMap<>(lines), new Faults(sheetName, new HashMap<>(lines)), expanded::put);
            return expanded;
        }

        private void unnumberWhereTaken(ArrayNode sessions, ObjectNode base) {
            Set<String> numbered = new HashSet<>();
            base.get("entries").forEach(entry -> {
                if (entry.has("seq")) {
                    numbered.add(Sessions.minute(entry));
                }
            });
            Set<String> ids = new HashSet<>();
            base.get("entries").forEach(entry -> ids.add(entry.path("id").asText().replaceFirst("\\..*", "")));
            for (JsonNode node : sessions) {
                if (!(node instanceof ObjectNode session)) {
                    continue;
                }
                if (session.has("in-order") && numbered.contains(Sessions.minute(session))) {
                    session.remove("in-order");
                    notes.add("Session " + session.path("id").asText() + " is taken in without its order: the record has numbered entries of that minute already.");
                }
                String id = session.path("id").asText();
                for (int next = 2; ids.contains(session.path("id").asText()); next++) {
                    session.put("id", id.substring(0, Math.min(id.length(), 12)) + "-" + next);
                }
            }
        }

        /** Reads the record with the sessions behind it; ids of what they add. */
        private List<String> read(ArrayNode sessions, ObjectNode base, List<Fault> into) {
            ObjectNode whole = base.deepCopy();
            int before = whole.get("entries").size();
            Map<String, Integer> all = new HashMap<>(lines);
            // Only which paths are written matters of the record itself: it was read before.
            paths("", whole, all);
            Faults faults = new Faults(sheetName, all);
            Sessions.expand(sessions, (ArrayNode) whole.get("entries"), all, faults, (path, entry) -> { });
            Raw.Job raw = new Binding(faults, all).bind(whole);
            RecordReader.Opened opened = RecordReader.opened(all, faults, raw);
            try {
                JobRecord read = opened.read(words, asOf, ReadAs.withEntriesFrom(before));
                return read.entries().subList(before, read.entries().size()).stream().map(Entry::id).toList();
            } catch (UnusableInput wrong) {
                into.addAll(wrong.faults());
                return List.of();
            }
        }

        private static void paths(String path, JsonNode node, Map<String, Integer> into) {
            into.putIfAbsent(path, 0);
            if (node.isObject()) {
                node.properties().forEach(key -> paths(path.isEmpty() ? key.getKey() : path + "." + key.getKey(), key.getValue(), into));
            } else if (node.isArray()) {
                for (int i = 0; i < node.size(); i++) {
                    paths(path + "[" + i + "]", node.get(i), into);
                }
            }
        }

        /** Takes the lines at fault out; false when none of them is on the sheet. */
        private boolean refuse(ArrayNode sessions, List<Fault> faults) {
            boolean any = false;
            Set<String> done = new LinkedHashSet<>();
            for (Fault fault : faults) {
                if (fault.path().startsWith(Sessions.KEY + "[") && done.add(fault.path())) {
                    any |= remove(sessions, fault.path());
                }
                refused.add(fault);
            }
            return any;
        }

        /** Takes a line, an instrument with all that was read with it, or a session whose head is wrong, out of the sheet. */
        private static boolean remove(ArrayNode sessions, String path) {
            int index = Integer.parseInt(path.substring(path.indexOf('[') + 1, path.indexOf(']')));
            if (!(sessions.get(index) instanceof ObjectNode session)) {
                return false;
            }
            String rest = path.substring(path.indexOf(']') + 1);
            String key = rest.startsWith(".") ? rest.substring(1) : "";
            if (key.startsWith("with.") && session.get("with") instanceof ObjectNode with) {
                with.remove(key.substring("with.".length()));
                removeRead(session, key.substring("with.".length()));
            } else if (key.isEmpty() || Sessions.HEADER.contains(key)) {
                sessions.set(index, sessions.nullNode());
                prunedTail(sessions);
                return true;
            } else if (!removeAt(session, key)) {
                return false;
            }
            if (!hasAnswers(session)) {
                sessions.set(index, sessions.nullNode());
                prunedTail(sessions);
            }
            return true;
        }

        private static void removeRead(ObjectNode node, String what) {
            for (String key : names(node)) {
                if (node.get(key) instanceof ObjectNode below && !key.equals("with")) {
                    removeRead(below, what);
                } else if (key.equals(what) || key.endsWith(" " + what)) {
                    node.remove(key);
                }
            }
        }

        /** A path is keys joined by full stops; a key may hold full stops itself, so the keys that are there decide. */
        private static boolean removeAt(ObjectNode node, String path) {
            for (String key : names(node)) {
                if (path.equals(key) || path.startsWith(key + "[")) {
                    node.remove(key);
                    return true;
                }
                if (path.startsWith(key + ".") && node.get(key) instanceof ObjectNode below && removeAt(below, path.substring(key.length() + 1))) {
                    return true;
                }
            }
            return false;
        }
    }
}

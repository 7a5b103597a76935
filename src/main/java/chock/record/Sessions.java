package chock.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.regex.Pattern;

/**
 * Writes the sessions of a file out as single entries, before anything else looks at it. What a line becomes follows from the file
 * alone and from no rule book, so that a signed record has one digest under every rule book. A session gives time, person and
 * instruments once; below it stand places, and at each place what was found:
 *
 * <pre>
 *   - id: s1
 *     at: 2026-11-18 16:00
 *     by: ida
 *     with: {thickness: tread-1, torqued: wrench-1}
 *     rear-brake: {shoes thickness: 3.2 mm, drum -condition: sound, adjuster/: in-hand-and-locked, tried release: free}
 *     with cal-1: {rear-brake/drum bore: 140.3 mm}
 * </pre>
 *
 * <p>{@code drum -condition} is {@code drum drum-condition}, and {@code adjuster/} is {@code adjuster adjuster}.
 */
final class Sessions {
    static final String KEY = "sessions";
    static final List<String> HEADER = List.of("id", "at", "by", "in-order", "with");
    /** The kinds of entry that a session may hold. */
    static final List<String> KINDS = List.of(Deed.MEASURED.key(), Deed.TRIED.key(), Deed.SEEN.key(), Deed.TOLD.key(), Deed.DONE.key());
    static final String ID = "[A-Za-z0-9][A-Za-z0-9_-]{0,15}";

    private static final String DONE = Deed.DONE.key();
    private static final int LONGEST_WORD = 16;
    private static final int LETTERS = 6;
    private static final String ALPHABET = "abcdefghijkmnpqrstuvwxyz23456789";
    // What is read off an instrument: a number, also with a fraction, and something behind it that is no further digit of a code.
    private static final Pattern AMOUNT = Pattern.compile("[-+−]?\\s*(\\d+([.,]\\d+)?(\\s+\\d+\\s*/\\s*\\d+)?|\\d+\\s*/\\s*\\d+)\\s*(±|\\+/?-|[^\\d\\s.,/:±+-]).*", Pattern.DOTALL);
    private static final Pattern TIMED = Pattern.compile("\\d{4}-\\d{2}-\\d{2}[ T]+\\d{2}:\\d{2}");

    private final ArrayNode entries;
    private final Map<String, Integer> lines;
    private final Faults faults;
    private final BiConsumer<String, ObjectNode> told;
    private final Map<String, String> ids = new HashMap<>();
    /** Minutes in which numbers say what came first: those of two sessions prove nothing against each other. */
    private final Set<String> numbered = new HashSet<>();

    private Sessions(ArrayNode entries, Map<String, Integer> lines, Faults faults, BiConsumer<String, ObjectNode> told) {
        this.entries = entries;
        this.told = told;
        this.lines = lines;
        this.faults = faults;
        entries.forEach(entry -> {
            if (entry.has("seq")) {
                numbered.add(minute(entry));
            }
        });
    }

    /**
     * Takes the sessions out of what is written, and puts their entries behind the others.
     *
     * @param lines line of each path; gains the paths of the entries
     * @param faults receives what is wrong, under the path within the session
     */
    static void expand(ObjectNode written, Map<String, Integer> lines, Faults faults) {
        JsonNode sessions = written.remove(KEY);
        // In an earlier form the key itself is refused, and a list of entries that is none is refused by whoever reads it.
        if (sessions == null || RecordForm.of(written.path("chock").asText()) < 2 || !(written.get("entries") instanceof ArrayNode entries)) {
            return;
        }
        if (!(sessions instanceof ArrayNode list)) {
            faults.add(KEY, sessions.isNull() || sessions.asText("x").isBlank() ? "this is empty" : "a single value stands here", "Write a list of sessions, each behind a dash, or leave the key out");
            return;
        }
        Sessions reader = new Sessions(entries, lines, faults, (path, entry) -> { });
        for (int i = 0; i < list.size(); i++) {
            reader.session(KEY + "[" + i + "]", list.get(i));
        }
    }

    /**
     * The same of sessions that do not stand in the record yet. What is no set of keys among them is passed over, so that the path
     * of each stays what it is on the sheet.
     *
     * @param told takes each entry with the path of its line
     */
    static void expand(ArrayNode sessions, ArrayNode entries, Map<String, Integer> lines, Faults faults, BiConsumer<String, ObjectNode> told) {
        Sessions reader = new Sessions(entries, lines, faults, told);
        for (int i = 0; i < sessions.size(); i++) {
            if (sessions.get(i).isObject()) {
                reader.session(KEY + "[" + i + "]", sessions.get(i));
            }
        }
    }

    private void session(String path, JsonNode node) {
        if (!(node instanceof ObjectNode session)) {
            faults.add(path, node.isNull() ? "this is empty" : "a single value stands here", "Write keys and values: id, at, by, with, and the places with what was found");
            return;
        }
        boolean sound = header(path, session);
        Map<String, String> with = with(path, session);
        boolean ordered = inOrder(path, session);
        List<Line> found = new ArrayList<>();
        session.properties().stream().filter(key -> !HEADER.contains(key.getKey()))
                .forEach(key -> new Places(found, with, path + ".with").read(path + "." + key.getKey(), new Above("", null, null, null), key.getKey(), key.getValue()));
        if (found.isEmpty() && !faults.anyUnder(path)) {
            faults.add(path, "a session without a line", "Write places and what was found there, such as rear-brake: {drum drum-condition: sound}, or leave the session out");
        }
        refuseUnused(path, with, found);
        found.removeAll(refusedTwice(found));
        if (!sound || with.containsValue(null)) {
            return;
        }
        for (int i = 0; i < found.size(); i++) {
            enter(path, session, found.get(i), ordered ? i + 1 : 0);
        }
    }

    private boolean header(String path, ObjectNode session) {
        boolean sound = text(path + ".id", session.get("id"), "Write a short id of the session, such as s1");
        sound &= text(path + ".at", session.get("at"), "Write the day, or day and time, such as 2026-11-20 09:40");
        sound &= text(path + ".by", session.get("by"), "Write the id of the person");
        String id = session.path("id").asText();
        if (sound && !id.matches(ID)) {
            faults.add(path + ".id", Faults.quoted(id) + " cannot be the id of a session", "Write up to 16 letters, figures and dashes, such as s1");
            return false;
        }
        String first = sound ? ids.putIfAbsent(id, path) : null;
        if (first != null) {
            faults.add(path + ".id", "the id " + Faults.quoted(id) + " is used twice, first on line " + lines.get(first + ".id"), "Give this session an id of its own");
            return false;
        }
        return sound;
    }

    private boolean text(String path, JsonNode value, String advice) {
        if (value == null || value.isNull() || value.isTextual() && value.asText().isBlank()) {
            faults.add(path, value == null ? "this is missing" : "this is empty", advice);
            return false;
        }
        if (!value.isTextual()) {
            faults.add(path, (value.isArray() ? "a list" : "a set of keys") + " stands here", "Write one value");
            return false;
        }
        return true;
    }

    /** Instruments by what is read with them; one that is no text is null, and already refused. */
    private Map<String, String> with(String path, ObjectNode session) {
        Map<String, String> with = new LinkedHashMap<>();
        JsonNode written = session.get("with");
        if (written == null) {
            return with;
        }
        if (!(written instanceof ObjectNode named) || named.isEmpty()) {
            faults.add(path + ".with", written.isNull() || written.isObject() ? "this is empty" : "no keys stand here", "Write what is read and with which instrument, such as {thickness: tread-1}, or leave the key out");
            return with;
        }
        named.properties().forEach(one -> with.put(one.getKey(), text(path + ".with." + one.getKey(), one.getValue(), "Write the id of the instrument") ? one.getValue().asText() : null));
        return with;
    }

    private boolean inOrder(String path, ObjectNode session) {
        JsonNode written = session.get("in-order");
        if (written == null || !text(path + ".in-order", written, "Write yes, or leave the key out")) {
            return false;
        }
        String word = written.asText();
        boolean yes = word.equals("yes") || word.equals("true");
        if (!yes && !word.equals("no") && !word.equals("false")) {
            faults.add(path + ".in-order", Faults.quoted(word) + " is neither yes nor no", "Write yes when its lines were done in the order in which they are written");
        } else if (yes && !TIMED.matcher(session.path("at").asText()).matches()) {
            faults.add(path + ".in-order", "a session in order without a time of day", "Write at with day and time, such as 2026-11-20 09:40, or leave in-order out");
        } else if (yes && !numbered.add(minute(session))) {
            faults.add(path + ".at", "another session in order, or a numbered entry, has this minute as well, and which came first is not known", "Write the minute it was, or leave in-order out");
            return false;
        }
        return yes;
    }

    /**
     * A line of a session: one entry to be.
     *
     * @param tool the instrument, or null
     * @param toolPath where the instrument is named, or null
     */
    private record Line(String path, String point, Deed kind, String what, String is, String tool, String toolPath) {
        String key() {
            return point + " " + (kind == Deed.DONE ? DONE + " " : "") + what;
        }
    }

    /**
     * What holds for everything below.
     *
     * @param place so far, or empty
     * @param kind of entry, or null
     * @param tool id of the instrument, or null
     * @param toolPath where it is named
     */
    private record Above(String place, String kind, String tool, String toolPath) {
        Above in(String further) {
            return new Above(place.isEmpty() ? further : place + "/" + further, kind, tool, toolPath);
        }
    }

    /** Reads the places of one session, from the outer to the inner. */
    private final class Places {
        private final List<Line> found;
        private final Map<String, String> with;
        private final String withPath;

        Places(List<Line> found, Map<String, String> with, String withPath) {
            this.found = found;
            this.with = with;
            this.withPath = withPath;
        }

        /** @param key a place, a kind, an instrument, or a place and what was found there */
        void read(String path, Above above, String key, JsonNode value) {
            if (value instanceof ObjectNode below) {
                Above inside = inside(path, above, key.trim(), below);
                if (inside != null) {
                    below.properties().forEach(next -> read(path + "." + next.getKey(), inside, next.getKey(), next.getValue()));
                }
                return;
            }
            List<String> words = new ArrayList<>(Arrays.asList(key.trim().split("\\s+")));
            Above here = above;
            if (words.size() > 2 && words.get(words.size() - 2).equals("with")) {
                here = byTool(path, here, words.remove(words.size() - 1));
                words.remove(words.size() - 1);
            }
            String what = words.remove(words.size() - 1);
            if (here == null) {
                return;
            }
            if (!what.equals(DONE) && !words.isEmpty() && KINDS.contains(words.get(words.size() - 1))) {
                here = ofKind(path, here, words.remove(words.size() - 1));
            }
            if (here == null) {
                return;
            }
            if (words.size() > 1) {
                faults.add(path, Faults.quoted(key) + " cannot be read", "Write the place with slashes, then one of " + String.join(", ", KINDS) + " where it is needed, then one word: hydraulic/hose tried hose-run");
                return;
            }
            here = words.isEmpty() ? here : here.in(words.get(0));
            if (what.length() > 1 && what.endsWith("/")) {
                here = here.in(what.substring(0, what.length() - 1));
                what = last(here.place);
            }
            if (here.place.isEmpty() && !(DONE.equals(here.kind) && value.isArray())) {
                faults.add(path, "no place: " + Faults.quoted(key) + " stands beside the places", Choices.advice("Write a place before it, such as rear-brake " + key + "; or", key, HEADER));
            } else {
                leaf(path, here, what.length() > 1 && what.startsWith("-") ? last(here.place) + what : what, value);
            }
        }

        private String last(String place) {
            return place.substring(place.lastIndexOf('/') + 1);
        }

        private Above ofKind(String path, Above above, String kind) {
            if (above.kind != null && !above.kind.equals(kind) || above.tool != null && !kind.equals(DONE) && !kind.equals(Deed.MEASURED.key())) {
                faults.add(path, Faults.quoted(kind) + " stands within " + (above.kind == null ? "with " + above.tool : above.kind), "Write it outside of that");
                return null;
            }
            return new Above(above.place, kind, above.tool, above.toolPath);
        }

        private Above byTool(String path, Above above, String tool) {
            if (above.tool != null || above.kind != null && !above.kind.equals(DONE) && !above.kind.equals(Deed.MEASURED.key())) {
                faults.add(path, "an instrument within " + (above.tool == null ? above.kind : "with " + above.tool), "Write it outside of that");
                return null;
            }
            return new Above(above.place, above.kind, tool, path);
        }

        private Above inside(String path, Above above, String key, ObjectNode below) {
            if (below.isEmpty()) {
                faults.add(path, "this is empty", "Write what was found there, or leave it out");
                return null;
            }
            if (KINDS.contains(key)) {
                return ofKind(path, above, key);
            }
            if (key.startsWith("with ")) {
                return byTool(path, above, key.substring("with ".length()).trim());
            }
            if (key.contains(" ")) {
                faults.add(path, "keys stand here", "Write a place alone before keys, with slashes: front-brake/hydraulic");
                return null;
            }
            return above.in(key);
        }

        private void leaf(String path, Above at, String what, JsonNode value) {
            if (value.isNull() || value.isTextual() && value.asText().isBlank() || value.isEmpty() && value.isArray()) {
                faults.add(path, "this is empty", "Write what was found, or leave the line out");
            } else if (what.equals(DONE)) {
                each(path, value, "Write what was done, such as refitted", (where, work) -> add(where, at, Deed.DONE, work, null));
            } else if (DONE.equals(at.kind) && value.isArray()) {
                each(path, value, "Write the place where it was done", (where, place) -> add(where, at.in(place), Deed.DONE, what, null));
            } else if (value.isArray()) {
                faults.add(path, "a list stands here", "Write one answer");
            } else if (DONE.equals(at.kind)) {
                work(path, at, what, value.asText());
            } else {
                evidence(path, at, what, value.asText());
            }
        }

        private void each(String path, JsonNode value, String advice, BiConsumer<String, String> then) {
            for (int i = 0; i < (value.isArray() ? value.size() : 1); i++) {
                String where = value.isArray() ? path + "[" + i + "]" : path;
                JsonNode one = value.isArray() ? value.get(i) : value;
                if (text(where, one, advice)) {
                    then.accept(where, one.asText());
                }
            }
        }

        private void work(String path, Above at, String what, String is) {
            if (is.equals("no") || is.equals("false")) {
                faults.add(path, Faults.quoted(is) + " says that it was not done", "Leave the line out");
            } else {
                add(path, at, Deed.DONE, what, is.equals("yes") || is.equals("true") ? null : is);
            }
        }

        private void evidence(String path, Above at, String what, String is) {
            boolean measured = Deed.MEASURED.key().equals(at.kind) || at.tool != null || at.kind == null && AMOUNT.matcher(is).matches();
            if (measured && at.tool == null && !with.containsKey(what)) {
                faults.add(path, "no instrument is named for " + Faults.quoted(what), "Write it under with at the top of the session, such as {" + what + ": cal-1}; of what was only looked at, write 'seen " + what + "'");
            } else {
                add(path, at, measured ? Deed.MEASURED : at.kind == null ? Deed.SEEN : Deed.valueOf(at.kind.toUpperCase(Locale.ROOT)), what, is);
            }
        }

        private void add(String path, Above at, Deed kind, String what, String is) {
            boolean takes = kind == Deed.MEASURED || kind == Deed.DONE;
            boolean own = takes && at.tool != null;
            found.add(new Line(path, at.place, kind, what, is, own ? at.tool : takes ? with.get(what) : null, own ? at.toolPath : withPath + "." + what));
        }
    }

    private void refuseUnused(String path, Map<String, String> with, List<Line> found) {
        List<String> read = found.stream().filter(line -> line.toolPath.startsWith(path + ".with.") && (line.kind == Deed.MEASURED || line.kind == Deed.DONE)).map(Line::what).distinct().sorted().toList();
        with.keySet().stream().filter(what -> !read.contains(what) && !faults.anyUnder(path)).toList()
                .forEach(what -> faults.add(path + ".with." + what, "no line of this session reads " + Faults.quoted(what), Choices.advice("Leave it out, or write", what, read)));
    }

    private List<Line> refusedTwice(List<Line> found) {
        Map<String, Line> first = new HashMap<>();
        List<Line> twice = new ArrayList<>();
        for (Line line : found) {
            Line before = first.putIfAbsent(line.key(), line);
            if (before != null) {
                faults.add(line.path, Faults.quoted(line.what) + " at " + line.point + " is written twice in this session, first on line " + lines.get(before.path),
                        "Keep one of the two; what was found again later belongs to a session of its own");
                twice.add(line);
            }
        }
        return twice;
    }

    private void enter(String path, ObjectNode session, Line line, int seq) {
        String at = "entries[" + entries.size() + "]";
        ObjectNode entry = entries.addObject();
        origin(at, line.path, null);
        put(entry, at, "id", id(session.get("id").asText(), line), line.path);
        put(entry, at, "at", session.get("at").asText(), path + ".at");
        if (seq > 0) {
            put(entry, at, "seq", String.valueOf(seq), path + ".in-order");
        }
        put(entry, at, "by", session.get("by").asText(), path + ".by");
        put(entry, at, "point", line.point, line.path);
        put(entry, at, line.kind.key(), line.what, line.path);
        if (line.is != null) {
            put(entry, at, "is", line.is, line.path);
        }
        if (line.tool != null) {
            put(entry, at, "with", line.tool, line.toolPath);
        }
        told.accept(line.path, entry);
    }

    private void put(ObjectNode entry, String at, String key, String value, String origin) {
        entry.put(key, value);
        origin(at, origin, key);
    }

    private void origin(String at, String origin, String key) {
        String path = key == null ? at : at + "." + key;
        lines.put(path, lines.getOrDefault(origin, 0));
        faults.origin(path, origin);
    }

    /** From session, place and what was found there, never from where the line stands. */
    private static String id(String session, Line line) {
        String word = line.what.replaceAll("[^A-Za-z0-9._-]", "");
        return session + "." + word.substring(0, Math.min(LONGEST_WORD, word.length())) + "-" + letters(session + " " + line.key());
    }

    private static String letters(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            StringBuilder letters = new StringBuilder();
            for (int i = 0; i < LETTERS; i++) {
                letters.append(ALPHABET.charAt(digest[i] & 31));
            }
            return letters.toString();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** The moment as it is written, spelled in one way. */
    static String minute(JsonNode node) {
        return node.path("at").asText().trim().replaceAll("[ T]+", " ");
    }
}

package chock.useful;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Types single entries as a person at the bench would type them as sessions: who, when and with what once, and several answers on a line. */
public final class AsSessions {
    /** Marks a line that stands within a group of its kind. */
    private static final String AROUND = "around";
    private static final int WIDTH = 120;
    private static final Set<String> PLAIN = Set.of("id", "at", "by", "seq", "point", "measured", "tried", "seen", "told", "done", "is", "with");
    private static final List<String> KINDS = List.of("measured", "tried", "seen", "told", "done");

    /**
     * @param sessions the block {@code sessions:}
     * @param rest the entries that are no lines of a session, such as corrections
     * @param at by id of each entry that became a line: the time of its session
     */
    public record Typed(String sessions, List<ObjectNode> rest, Map<String, String> at) { }

    private AsSessions() { }

    /** @param entries in any order; sessions follow one another by time */
    public static Typed of(ArrayNode entries) {
        List<ObjectNode> all = new ArrayList<>();
        entries.forEach(entry -> all.add((ObjectNode) entry));
        all.sort(Comparator.comparing(entry -> entry.path("at").asText()));
        StringBuilder text = new StringBuilder("sessions:\n");
        Map<String, String> at = new LinkedHashMap<>();
        List<ObjectNode> rest = new ArrayList<>();
        List<ObjectNode> run = new ArrayList<>();
        int number = 0;
        for (ObjectNode entry : all) {
            if (!isPlain(entry)) {
                rest.add(entry);
                continue;
            }
            if (!run.isEmpty() && !goesWith(run, entry)) {
                session(++number, run, text, at);
                run.clear();
            }
            run.add(entry);
        }
        if (!run.isEmpty()) {
            session(++number, run, text, at);
        }
        return new Typed(text.toString(), rest, at);
    }

    private static boolean isPlain(ObjectNode entry) {
        Set<String> keys = new HashSet<>();
        entry.fieldNames().forEachRemaining(keys::add);
        return PLAIN.containsAll(keys) && entry.path("at").asText().length() > 10 && !entry.has("assumed");
    }

    private static boolean goesWith(List<ObjectNode> run, ObjectNode entry) {
        ObjectNode first = run.get(0);
        return first.path("by").equals(entry.path("by")) && first.has("done") == entry.has("done") && day(first).equals(day(entry)) && run.stream().noneMatch(one -> key(one).equals(key(entry))) && !comesAgain(run, entry);
    }

    /** Work of one kind stands together in a session; where the same kind comes again after another, a session of its own begins. */
    private static boolean comesAgain(List<ObjectNode> run, ObjectNode entry) {
        return entry.has("done") && !what(run.get(run.size() - 1)).equals(what(entry)) && run.stream().anyMatch(one -> what(one).equals(what(entry)));
    }

    private static String day(ObjectNode entry) {
        return entry.path("at").asText().substring(0, 10);
    }

    private static String kind(ObjectNode entry) {
        return KINDS.stream().filter(entry::has).findFirst().orElseThrow();
    }

    private static String what(ObjectNode entry) {
        return entry.path(kind(entry)).asText();
    }

    private static String key(ObjectNode entry) {
        return entry.path("point").asText() + " " + what(entry);
    }

    private static void session(int number, List<ObjectNode> run, StringBuilder text, Map<String, String> at) {
        String when = run.get(run.size() - 1).path("at").asText().replace('T', ' ');
        run.forEach(entry -> at.put(entry.path("id").asText(), when));
        boolean work = run.get(0).has("done");
        List<String> items = new ArrayList<>(List.of("id: s" + number, "at: " + when, "by: " + run.get(0).path("by").asText()));
        if (work && run.size() > 1) {
            items.add("in-order: yes");
        }
        if (work) {
            runs(run).forEach(items::addAll);
        } else {
            items.addAll(shortest(run));
        }
        wrapped("- {", items, text);
    }

    /** Each instrument either around all it read, or behind each reading, whichever is less to type. */
    private static List<String> shortest(List<ObjectNode> run) {
        Set<String> around = new HashSet<>();
        run.stream().filter(entry -> entry.has("with")).forEach(entry -> around.add(entry.path("with").asText()));
        for (String tool : List.copyOf(around)) {
            int with = String.join(", ", items(run, around)).length();
            around.remove(tool);
            if (String.join(", ", items(run, around)).length() >= with) {
                around.add(tool);
            }
        }
        return items(run, around);
    }

    private static List<String> items(List<ObjectNode> run, Set<String> around) {
        Map<String, List<ObjectNode>> tools = new LinkedHashMap<>();
        List<ObjectNode> others = new ArrayList<>();
        for (ObjectNode entry : run) {
            String tool = entry.path("with").asText();
            if (around.contains(tool)) {
                ObjectNode read = entry.deepCopy();
                read.remove("with");
                tools.computeIfAbsent(tool, t -> new ArrayList<>()).add(read);
            } else {
                others.add(entry);
            }
        }
        List<String> items = new ArrayList<>(nested(others, ""));
        tools.forEach((tool, read) -> items.addAll(bracketed("with " + tool + ": {", nested(read, ""))));
        return items;
    }

    /** Work in its order: of one kind after the other, what was set with the wrench that set it. */
    private static List<List<String>> runs(List<ObjectNode> run) {
        List<List<String>> all = new ArrayList<>();
        List<String> inside = new ArrayList<>();
        for (int from = 0; from < run.size();) {
            int to = from;
            while (to < run.size() && what(run.get(to)).equals(what(run.get(from))) && run.get(to).path("with").equals(run.get(from).path("with"))) {
                to++;
            }
            List<ObjectNode> same = run.subList(from, to);
            if (same.get(0).has("with")) {
                inside.addAll(bracketed("with " + same.get(0).path("with").asText() + ": {", ofEachPart(same)));
            } else {
                inside.addAll(bracketed(what(same.get(0)) + ": [", same.stream().map(entry -> entry.path("point").asText()).toList(), "]"));
            }
            from = to;
        }
        all.add(bracketed("done: {", inside));
        return all;
    }

    /** What was set with one wrench in one go, part by part; in which order says nothing. */
    private static List<String> ofEachPart(List<ObjectNode> same) {
        List<ObjectNode> plain = new ArrayList<>();
        same.forEach(entry -> plain.add(entry.deepCopy().without("with")));
        return nested(plain, "");
    }

    private static List<String> bracketed(String head, List<String> inside) {
        return bracketed(head, inside, "}");
    }

    private static List<String> bracketed(String head, List<String> inside, String close) {
        List<String> items = new ArrayList<>(inside);
        items.set(0, head + items.get(0));
        items.set(items.size() - 1, items.get(items.size() - 1) + close);
        return items;
    }

    /** Everything below a place, with what was tried either marked line by line or around all of it, whichever is less to type. */
    private static List<String> nested(List<ObjectNode> entries, String above) {
        List<String> marked = marked(entries, above);
        List<ObjectNode> tried = new ArrayList<>();
        entries.stream().filter(entry -> entry.has("tried")).forEach(entry -> tried.add(entry.deepCopy().put(AROUND, "yes")));
        if (tried.size() < 2 || entries.get(0).has(AROUND)) {
            return marked;
        }
        List<ObjectNode> others = entries.stream().filter(entry -> !entry.has("tried")).toList();
        List<String> around = new ArrayList<>(others.isEmpty() ? List.of() : nested(others, above));
        around.addAll(bracketed("tried: {", nested(tried, above)));
        return String.join(", ", around).length() < String.join(", ", marked).length() ? around : marked;
    }

    /** With the places further in bracketed where several answers share one. */
    private static List<String> marked(List<ObjectNode> entries, String above) {
        Map<String, List<ObjectNode>> byPlace = new LinkedHashMap<>();
        entries.forEach(entry -> byPlace.computeIfAbsent(next(entry, above), p -> new ArrayList<>()).add(entry));
        List<String> items = new ArrayList<>();
        byPlace.forEach((place, there) -> {
            if (place.equals(above)) {
                there.forEach(entry -> items.add(leaf(entry, above)));
            } else if (there.size() == 1) {
                items.add(leaf(there.get(0), above));
            } else {
                String deep = deepest(there, place);
                items.addAll(bracketed(deep.substring(above.isEmpty() ? 0 : above.length() + 1) + ": {", nested(there, deep)));
            }
        });
        return items;
    }

    private static String next(ObjectNode entry, String above) {
        String point = entry.path("point").asText();
        if (point.equals(above)) {
            return above;
        }
        int slash = point.indexOf('/', above.isEmpty() ? 0 : above.length() + 1);
        return slash < 0 ? point : point.substring(0, slash);
    }

    /** The innermost place that all of these share. */
    private static String deepest(List<ObjectNode> there, String place) {
        String at = place;
        while (true) {
            String here = at;
            Set<String> further = new HashSet<>();
            there.forEach(entry -> further.add(next(entry, here)));
            if (further.size() != 1 || further.contains(at)) {
                return at;
            }
            at = further.iterator().next();
        }
    }

    /** One answer: where below the place above, how where that needs saying, what, and what was found. */
    private static String leaf(ObjectNode entry, String above) {
        String point = entry.path("point").asText();
        String place = point.equals(above) ? "" : above.isEmpty() ? point : point.substring(above.length() + 1);
        String last = point.substring(point.lastIndexOf('/') + 1);
        String is = entry.path("is").asText().replace("N·m", "Nm");
        String what = what(entry).startsWith(last + "-") ? what(entry).substring(last.length()) : what(entry);
        boolean looksRead = is.matches("[-+]?\\d+(\\.\\d+)?(\\s+\\d+/\\d+)?\\s*[^\\d\\s.,/:±+-].*");
        String kind = entry.has(AROUND) ? "" : entry.has("tried") || entry.has("told") ? kind(entry) + " " : entry.has("seen") && looksRead ? "seen " : "";
        boolean plain = is.matches("[A-Za-z0-9][A-Za-z0-9 ./°±%·Ωµ+-]*");
        String tool = entry.has("with") ? " with " + entry.path("with").asText() : "";
        String key = (what.equals(last) && !place.isEmpty() ? kind + place + "/" : (place.isEmpty() ? "" : place + " ") + kind + what) + tool;
        return key + ": " + (plain ? is : TextNode.valueOf(is).toString());
    }

    private static void wrapped(String head, List<String> items, StringBuilder text) {
        StringBuilder line = new StringBuilder(head);
        for (int i = 0; i < items.size(); i++) {
            for (String word : (items.get(i) + (i == items.size() - 1 ? "}" : ",")).split("(?<=:) ")) {
                if (line.length() + 1 + word.length() > WIDTH) {
                    text.append(line).append('\n');
                    line = new StringBuilder(" ");
                }
                line.append(line.toString().isBlank() || line.toString().endsWith("- {") ? "" : " ").append(word);
            }
        }
        text.append(line).append('\n');
    }
}

package chock.useful;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The cards and limits as they stand in {@code rules/}.
 *
 * @param cards in the order of their files
 * @param makerLimits ids of the limits that a maker's figure replaces, with whether nothing passes without one
 * @param instruments kinds of instrument
 * @param apart what is read while a part is apart, and what closes it again
 */
record CardCatalogue(List<Card> cards, Map<String, Boolean> makerLimits, List<String> instruments, List<Apart> apart) {
    private static final YAMLMapper YAML = new YAMLMapper();
    private static final List<String> VERBS = List.of("measured", "tried", "seen", "told", "done");
    static final CardCatalogue SHIPPED = read(Path.of("rules"));

    /** One card: {@code needs} is standing where the card does not say. */
    record Card(String id, String applies, String place, String needs, String holds, boolean critical, List<String> gates, List<Want> wants, List<Work> undoneBy, List<Work> clearedBy) { }

    /** One thing a card wants: the place is a template, as on the card. */
    record Want(String name, String verb, String aspect, String place, String holds, List<String> good, List<String> bad) {
        boolean isWork() {
            return verb.equals("done");
        }
    }

    /** Kinds of work at a place; no kinds means any work that disturbs, and no want all of the card. */
    record Work(List<String> kinds, String place, String only) {
        boolean bearsOn(Want want) {
            return only.isEmpty() || only.equals(want.name());
        }
    }

    /** Proofs, each a check or a check and a want, with the answers of which it is so; none means all. */
    record Apart(List<String> read, List<String> only, List<String> closes) { }

    private static CardCatalogue read(Path rules) {
        List<Card> cards = new ArrayList<>();
        Map<String, Boolean> maker = new TreeMap<>();
        Map<String, List<Work>> undoing = new TreeMap<>();
        List<Apart> apart = new ArrayList<>();
        try {
            YAML.readTree(rules.resolve("assembly.yaml").toFile()).get("apart").forEach(row -> apart.add(new Apart(words(row.get("read")), words(row.path("only")), words(row.get("closes")))));
            YAML.readTree(rules.resolve("undoing.yaml").toFile()).get("undoes").forEach(row -> words(row.get("proofs")).forEach(proof -> {
                String[] named = proof.split(" ");
                undoing.computeIfAbsent(named[0], id -> new ArrayList<>()).add(new Work(words(row.path("work")), row.get("at").asText(), named.length == 1 ? "" : named[1]));
            }));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        try (DirectoryStream<Path> systems = Files.newDirectoryStream(rules)) {
            List<Path> sorted = new ArrayList<>();
            systems.forEach(sorted::add);
            sorted.sort(null);
            for (Path system : sorted) {
                rows(system.resolve("checks.yaml")).forEach(c -> cards.add(card(c, undoing.getOrDefault(c.get("id").asText(), List.of()))));
                rows(system.resolve("limits.yaml")).stream().filter(l -> List.of("replaces", "needed").contains(l.path("maker").asText()))
                        .forEach(l -> maker.put(l.get("id").asText(), l.get("maker").asText().equals("needed")));
            }
            List<String> kinds = rows(rules.resolve("evidence/instruments.yaml")).stream().map(k -> k.get("kind").asText()).toList();
            return new CardCatalogue(List.copyOf(cards), maker, kinds, List.copyOf(apart));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** True when this is read while the part is apart. */
    boolean isReadApart(Card card, Want want) {
        return apart.stream().anyMatch(row -> names(row.read(), card, want));
    }

    /** The wants whose reading means that this was opened. */
    List<Want> opening(Card closing, Want closed, String answer) {
        return apart.stream().filter(row -> names(row.closes(), closing, closed) && (row.only().isEmpty() || row.only().contains(answer)))
                .flatMap(row -> cards.stream().flatMap(card -> card.wants().stream().filter(want -> names(row.read(), card, want)))).toList();
    }

    private static boolean names(List<String> proofs, Card card, Want want) {
        return proofs.contains(card.id()) || proofs.contains(card.id() + " " + want.name());
    }

    static List<JsonNode> rows(Path file) throws IOException {
        List<JsonNode> rows = new ArrayList<>();
        if (Files.exists(file)) {
            YAML.readTree(file.toFile()).forEach(rows::add);
        }
        return rows;
    }

    private static Card card(JsonNode c, List<Work> undoing) {
        String place = c.path("place").asText();
        String holds = c.path("holds").asText();
        List<Want> wants = new ArrayList<>();
        c.path("wants").forEach(w -> {
            String verb = VERBS.stream().filter(w::has).findFirst().orElseThrow(() -> new IllegalStateException("no verb on " + c.get("id").asText() + ": " + w));
            wants.add(new Want(w.path("name").asText(w.get(verb).asText()), verb, w.get(verb).asText(), w.path("place").asText(place), w.path("holds").asText(holds), words(w.path("good")), words(w.path("bad"))));
        });
        return new Card(c.get("id").asText(), c.path("applies").asText(), place, c.path("needs").asText("standing"), holds, c.path("critical").asBoolean() || c.path("critical").asText().equals("yes"), words(c.path("gates")), wants, undoing, works(c.path("cleared-by")));
    }

    private static List<Work> works(JsonNode rows) {
        List<Work> works = new ArrayList<>();
        rows.forEach(r -> works.add(new Work(words(r.path("work")), r.get("place").asText(), "")));
        return works;
    }

    private static List<String> words(JsonNode list) {
        List<String> words = new ArrayList<>();
        list.forEach(w -> words.add(w.asText()));
        return List.copyOf(words);
    }
}

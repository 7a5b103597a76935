package chock.assess;

import chock.record.Gate;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The cards as they are written in {@code rules/*}{@code /checks.yaml}, read here by hand and not by the program's own loader:
 * what a bad answer anywhere on a machine has to close.
 */
final class Catalogue {
    private static final Path RULES = Path.of("rules");
    private static final Pattern BRACES = Pattern.compile("\\{([a-z]+)}");

    /** One question to the machine: which check, where the check is asked, where the answer is looked for, and what is asked. */
    record Ask(String check, String at, String point, String aspect) { }

    /** @param bad answers that are a fault; empty for an amount, a day or a code */
    record Want(String aspect, String place, Set<String> bad) { }

    /** One card. */
    record Card(String id, Set<Gate> gates, String place, List<Want> wants) { }

    /** Gates that a fault closes besides those that ask: for these answers, or for any; and surely, or only where an amount, a place or an exception says so. */
    private record Further(Set<Gate> gates, Set<String> answers, boolean surely) { }

    private static final Map<Character, Gate> LETTERS = Map.of('F', Gate.FIRST_START, 'I', Gate.INDOOR_RUN, 'R', Gate.ROAD_TEST, 'S', Gate.ON_SHOW, 'H', Gate.HAND_OVER, 'N', Gate.NON_RUNNER);

    /** What each danger closes as a rule. */
    private static final Map<String, String> DANGERS = Map.ofEntries(Map.entry("fire", "FIRH"), Map.entry("gas", "I"), Map.entry("runaway", "FIRH"), Map.entry("seizure", "FIRH"), Map.entry("brake-loss", "RH"),
            Map.entry("steering-loss", "RH"), Map.entry("wheel-loss", "RH"), Map.entry("lock-up", "RH"), Map.entry("grip-loss", "RH"), Map.entry("rider-off", "RH"), Map.entry("not-seen", "RH"),
            Map.entry("shock-burn", "FIRH"), Map.entry("crush", "FIRSH"), Map.entry("stranded", ""), Map.entry("proof", ""), Map.entry("legal", ""), Map.entry("none", ""));

    private final Map<String, Card> cards = new TreeMap<>();
    private final Map<String, List<String>> dangers = new TreeMap<>();
    private final Map<String, List<Further>> further = new TreeMap<>();
    private final Map<String, List<String>> words = new TreeMap<>();

    private Catalogue() { }

    static Catalogue read() throws IOException {
        Catalogue catalogue = new Catalogue();
        YAMLMapper yaml = new YAMLMapper();
        JsonNode places = yaml.readTree(RULES.resolve("evidence/words.yaml").toFile()).get("places");
        places.properties().forEach(word -> catalogue.words.put(word.getKey(), texts(word.getValue())));
        try (Stream<Path> files = Files.list(RULES)) {
            for (Path folder : files.filter(f -> Files.exists(f.resolve("checks.yaml"))).sorted().toList()) {
                yaml.readTree(folder.resolve("checks.yaml").toFile()).forEach(catalogue::card);
            }
        }
        for (String line : Files.readAllLines(Path.of("src/test/resources/dangers/table.txt"))) {
            if (!line.startsWith("#")) {
                String[] cells = line.split(" \\| ");
                catalogue.dangers.put(cells[0], List.of(cells[2].split(" ")));
                catalogue.further.put(cells[0], cells[3].equals("-") ? List.of() : Stream.of(cells[3].split("; ")).map(Catalogue::further).toList());
            }
        }
        return catalogue;
    }

    private static Further further(String words) {
        String[] sides = words.replaceFirst(" unless .*", "").split(" for ");
        String letters = sides[0].replaceFirst(" (below|over|at) .*", "");
        Set<Gate> gates = EnumSet.noneOf(Gate.class);
        Stream.of(letters.split(" ")).forEach(letter -> gates.add(LETTERS.get(letter.charAt(0))));
        return new Further(gates, sides.length == 1 ? Set.of() : Set.of(sides[1].split(" ")), letters.equals(sides[0]) && !words.contains(" unless "));
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        if (list != null) {
            // YAML reads a bare yes or no as a truth; a record's answers are words.
            list.forEach(item -> texts.add(item.isBoolean() ? item.asBoolean() ? "yes" : "no" : item.asText()));
        }
        return texts;
    }

    private void card(JsonNode node) {
        List<Want> wants = new ArrayList<>();
        for (JsonNode want : node.get("wants")) {
            for (String verb : List.of("measured", "tried", "seen", "told", "assumed")) {
                if (want.has(verb)) {
                    wants.add(new Want(want.get(verb).asText(), want.path("place").asText(node.get("place").asText()), new TreeSet<>(texts(want.get("bad")))));
                }
            }
        }
        Set<Gate> gates = EnumSet.noneOf(Gate.class);
        texts(node.get("gates")).forEach(gate -> gates.add(Gate.of(gate).orElseThrow()));
        cards.put(node.get("id").asText(), new Card(node.get("id").asText(), gates, node.get("place").asText(), wants));
    }

    Set<Gate> gatesOf(String check) {
        return cards.get(check).gates();
    }

    /** The gates that a fault of this check with this answer surely closes, by the cards and the table of dangers. */
    Set<Gate> closedBy(String check, String answer) {
        return closed(check, answer, true);
    }

    /** Those, and the gates that it closes unless something else keeps them open. */
    Set<Gate> mayBeClosedBy(String check, String answer) {
        return closed(check, answer, false);
    }

    /** The gates that an answer closes which no check of the machine asks for: what the dangers of the checks that would ask close as a rule. */
    Set<Gate> closedUnread(String aspect) {
        Set<Gate> closed = EnumSet.copyOf(gatesOf("record.open-defects"));
        cards.values().stream().filter(card -> card.wants().stream().anyMatch(want -> want.aspect().equals(aspect))).flatMap(card -> dangers.get(card.id()).stream())
                .forEach(danger -> DANGERS.get(danger).chars().forEach(letter -> closed.add(LETTERS.get((char) letter))));
        return closed;
    }

    private Set<Gate> closed(String check, String answer, boolean surely) {
        Set<Gate> closed = EnumSet.copyOf(gatesOf(check));
        further.get(check).stream().filter(f -> (f.answers.isEmpty() || f.answers.contains(answer)) && (f.surely || !surely)).forEach(f -> closed.addAll(f.gates));
        return closed;
    }

    /** Every bad answer, by what it answers. */
    Map<String, Set<String>> badAnswers() {
        Map<String, Set<String>> bad = new TreeMap<>();
        cards.values().forEach(card -> card.wants().stream().filter(want -> !want.bad().isEmpty()).forEach(want -> bad.computeIfAbsent(want.aspect(), a -> new TreeSet<>()).addAll(want.bad())));
        return bad;
    }

    /** Every place with everything that carries it, at which some card asks something. */
    Set<String> places() {
        Set<String> all = new TreeSet<>();
        for (Card card : cards.values()) {
            Stream.concat(Stream.of(card.place()), card.wants().stream().map(Want::place)).flatMap(pattern -> spelled(pattern).stream()).forEach(point -> {
                for (int end = point.length(); end > 0; end = point.lastIndexOf('/', end - 1)) {
                    all.add(point.substring(0, end));
                }
            });
        }
        return all;
    }

    /** Every pair of what is asked and a place where it is asked on some machine. */
    Map<String, Set<String>> askedAnywhere() {
        Map<String, Set<String>> pairs = new TreeMap<>();
        cards.values().forEach(card -> card.wants().forEach(want -> pairs.computeIfAbsent(want.aspect(), a -> new TreeSet<>()).addAll(spelled(want.place()))));
        return pairs;
    }

    private List<String> spelled(String pattern) {
        Matcher name = BRACES.matcher(pattern);
        return !name.find() ? List.of(pattern) : words.get(name.group(1)).stream().flatMap(word -> spelled(pattern.replace(name.group(), word)).stream()).toList();
    }

    /** What a card asks where it is required at a point: the words in braces mean there what they mean in its place. */
    List<Ask> asks(String check, String at) {
        Card card = cards.get(check);
        Map<String, String> meaning = new TreeMap<>();
        List<String> names = BRACES.matcher(card.place()).results().map(r -> r.group(1)).toList();
        StringBuilder regex = new StringBuilder();
        int from = 0;
        Matcher braces = BRACES.matcher(card.place());
        while (braces.find()) {
            regex.append(Pattern.quote(card.place().substring(from, braces.start()))).append('(').append(String.join("|", words.get(braces.group(1)))).append(')');
            from = braces.end();
        }
        Matcher found = Pattern.compile(regex + Pattern.quote(card.place().substring(from))).matcher(at);
        if (!found.matches()) {
            throw new AssertionError(check + " is asked at " + at + ", its card is at " + card.place());
        }
        for (int i = 0; i < names.size(); i++) {
            meaning.put("{" + names.get(i) + "}", found.group(i + 1));
        }
        List<Ask> asks = new ArrayList<>();
        for (Want want : card.wants()) {
            String point = want.place();
            for (Map.Entry<String, String> word : meaning.entrySet()) {
                point = point.replace(word.getKey(), word.getValue());
            }
            asks.add(new Ask(check, at, point, want.aspect()));
        }
        return asks;
    }

    /** Which of a machine's questions an entry answers: those at its place, else the nearest of the same kind, all that are as near; none when nothing of the kind is asked. */
    static List<Ask> readBy(List<Ask> asked, String point, String aspect) {
        List<Ask> alike = asked.stream().filter(ask -> ask.aspect().equals(aspect)).toList();
        List<Ask> here = alike.stream().filter(ask -> ask.point().equals(point)).toList();
        if (!here.isEmpty()) {
            return here;
        }
        int nearest = alike.stream().mapToInt(ask -> together(ask.point(), point)).max().orElse(0);
        return alike.stream().filter(ask -> together(ask.point(), point) == nearest).toList();
    }

    private static int together(String one, String other) {
        List<String> a = List.of(one.split("/"));
        List<String> b = List.of(other.split("/"));
        int same = 0;
        while (same < Math.min(a.size(), b.size()) && a.get(same).equals(b.get(same))) {
            same++;
        }
        return same;
    }
}

package chock.record;

import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Collectors;

/** The released two-stroke of the examples, to be ridden where the rule book has no law, with that law in its record. */
public final class RecordedLawText {
    /** When the example is released. */
    public static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    private static final String TREAD = "    - {limit: tyres.tread-depth, at-least: 1.6 mm, document: Vehicle Order 1967, section: \"§ 4 (4)\", as-of: 2024-12-31, by: ida, seconded-by: tom}\n";

    /** Great Britain asks no machine of that year for indicators. */
    private static final String INDICATORS = "  - {id: fr1, at: 2026-11-19 11:50, by: ida, point: electrics/indicators, seen: indicators-fitted, is: 0 times}\n";

    private RecordedLawText() { }

    /** Every limit that wants a local law. */
    public static List<String> limits() {
        return List.copyOf(RuleBook.shipped().vocabulary().law().sides().keySet());
    }

    /** In this territory, without a word on the law there. */
    public static String without(String territory) throws IOException {
        return Files.readString(Path.of("docs/examples/lark-released.yaml")).replace("\nterritory: GB", "\nterritory: " + territory) + INDICATORS;
    }

    /** In France, with all of the law there but for these limits. */
    public static String but(List<String> left) throws IOException {
        String none = limits().stream().filter(id -> !id.equals("tyres.tread-depth") && !left.contains(id))
                .map(id -> "    - {limit: " + id + ", document: Vehicle Order 1967, section: whole, as-of: 2024-12-31, by: ida, seconded-by: tom}\n").collect(Collectors.joining());
        String law = "local-law:\n  limits:" + (left.contains("tyres.tread-depth") ? " []\n" : "\n" + TREAD) + "  sets-none:\n" + none;
        return without("FR").replace("\npeople:\n", "\n" + law + "people:\n");
    }

    /** In France, with all of the law there. */
    public static String whole() throws IOException {
        return but(List.of());
    }

    public static JobRecord read(String text) {
        return RecordReader.read("record.yaml", text.getBytes(StandardCharsets.UTF_8), RuleBook.shipped().vocabulary(), NOON);
    }
}

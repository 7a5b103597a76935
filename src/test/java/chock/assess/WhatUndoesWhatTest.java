package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Required;
import chock.assess.facts.Wanted;
import chock.record.Deed;
import chock.record.Entry;
import chock.rulebook.Assembled;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/**
 * The page {@code docs/what-undoes-what.md}, written from {@code rules/assembly.yaml} and {@code rules/undoing.yaml}, for an
 * inspector to read and to sign. Run with {@code -Dchock.approve=true} it is written anew; then read the difference.
 */
class WhatUndoesWhatTest {
    private static final Path PAGE = Path.of("docs/what-undoes-what.md");
    private static final List<String> LEVELS = List.of("out", "loose", "off", "open", "set", "dry", "new");
    private static final Map<String, String> IN_WORDS = Map.of("out", "out and in", "loose", "slackened", "off", "end off", "open", "opened", "set", "set anew", "dry", "emptied and filled",
            "new", "another one");
    private static final List<String> PARTS = List.of("{end}-wheel", "front-wheel", "rear-wheel", "third-wheel", "parking-brake", "transmission", "{end}-brake", "front-brake", "rear-brake", "steering", "{end}-fork",
            "front-fork", "rear-fork", "front-mudguard", "rear-mudguard", "frame", "engine", "ignition", "electrics", "headlamp", "fuel", "oil", "exhaust", "controls", "machine", "room");
    private static final Map<String, String> EVERYDAY = new LinkedHashMap<>();

    static {
        EVERYDAY.put("rear-wheel/tube replaced", "A rear tube");
        EVERYDAY.put("transmission/chain adjusted", "The chain adjusted");
        EVERYDAY.put("front-brake/caliper/inner-pad replaced", "A brake pad");
        EVERYDAY.put("rear-brake/shoes replaced", "Rear brake shoes");
        EVERYDAY.put("front-brake/hydraulic/hose replaced", "A brake hose");
        EVERYDAY.put("steering/head adjusted", "The steering head adjusted");
        EVERYDAY.put("front-fork removed", "The fork legs out");
        EVERYDAY.put("fuel/tank removed", "The tank off");
        EVERYDAY.put("fuel/carburettors cleaned", "The carburettors cleaned");
        EVERYDAY.put("engine removed", "The engine out");
    }

    private final YAMLMapper yaml = new YAMLMapper();

    @Test
    void thePageIsWhatTheRulesSay() throws IOException {
        String page = page();
        assertThat(page.lines().count()).as("lines, so that it can still be read").isLessThan(1500);
        if (Boolean.getBoolean("chock.approve")) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE)).as("%s; renew it with -Dtest=WhatUndoesWhatTest -DargLine=-Dchock.approve=true", PAGE).isEqualTo(page);
    }

    private String page() throws IOException {
        JsonNode assembly = yaml.readTree(Path.of("rules/assembly.yaml").toFile());
        JsonNode undoing = yaml.readTree(Path.of("rules/undoing.yaml").toFile());
        StringBuilder page = new StringBuilder("""
                # What undoes what

                Which work makes which earlier proof worthless, on motorcycles, mopeds and outfits of 1925 to 1990. **This is common \
                practice, without a published source. The manual of the maker goes before every line here.** Where good mechanics \
                differ, the safe side is built in. The page is written from `rules/assembly.yaml` and `rules/undoing.yaml` by a test.

                Read and found right by: ______________________ on ______________

                ## Work and the part itself

                Work that takes a part off, opens or changes it does so to everything the part carries as well; other work to the part alone.

                | work | takes away on that part |
                |---|---|
                """);
        assembly.get("takes").properties().forEach(work -> page.append("| `").append(work.getKey()).append("` | ").append(words(work.getValue())).append(" |\n"));
        page.append("\nPut back whole, with what is inside left alone: ").append(code(assembly.get("units"))).append(".\n\n");
        page.append("Work here ends no fault of another part, though it undoes proofs there: ").append(code(assembly.get("mends-only-itself"))).append(".\n\n");
        page.append("""
                ## Work that implies other work

                The same part is put back. Implied work implies more in turn, until nothing new turns up. It proves nothing and ends no fault.

                | implied | counts as | takes away there |
                |---|---|---|
                """);
        assembly.get("levels").properties().forEach(level -> page.append("| ").append(IN_WORDS.get(level.getKey())).append(" | ").append(code(level.getValue().get("acts-like"))).append(" | ")
                .append(words(level.getValue().get("takes"))).append(" |\n"));
        everyday(page);
        page.append("\n## Place by place\n\n\"Any work\" means removed, refitted, replaced, repaired, stripped or opened; \"work that disturbs\" is the same, or damaged.\n");
        Map<String, List<String>> lines = new TreeMap<>();
        assembly.get("reach").forEach(row -> each(row.get("at")).forEach(at -> lines.computeIfAbsent(at, a -> new ArrayList<>()).add(implies(row))));
        undoing.get("undoes").forEach(row -> lines.computeIfAbsent(row.get("at").asText(), a -> new ArrayList<>()).add(asks(row, "must be proven again")));
        undoing.get("spares").forEach(row -> lines.computeIfAbsent(row.get("at").asText(), a -> new ArrayList<>()).add(asks(row, "stands all the same")));
        for (String part : PARTS) {
            List<String> places = lines.keySet().stream().filter(at -> Entry.covers(part, at)).toList();
            if (!places.isEmpty()) {
                page.append("\n### ").append(part.replace("{end}-", "Either ")).append("\n");
                places.forEach(at -> {
                    page.append("\n`").append(at).append("`\n\n");
                    lines.remove(at).forEach(line -> page.append("- ").append(line).append("\n"));
                });
            }
        }
        assertThat(lines.keySet()).as("places under none of " + PARTS).isEmpty();
        return page.toString();
    }

    /** What some everyday work comes to on one machine, with the chain told. */
    private static void everyday(StringBuilder page) {
        AssemblyCases.Proofs twin = AssemblyCases.Proofs.ofMachine("two-stroke");
        Assembled machine = Examples.BOOK.library().assembly().of(CaseMachines.named("two-stroke").fields());
        page.append("\n## What everyday work comes to\n\nOn a two-stroke twin: disc brake in front, rod-worked drum behind, chain, telescopic fork, swing arm, oil pump, points.\n");
        EVERYDAY.forEach((work, title) -> {
            String[] at = work.split(" ");
            Entry entry = new Entry("", null, "", Deed.DONE, at[0], at[1], null, null, null, null, null, 0);
            List<String> implied = machine.reached(at[1], at[0]).all().stream().filter(one -> !one.place().equals(at[0]))
                    .map(one -> Points.words(one.place()) + " " + IN_WORDS.get(one.level().toString()) + (one.from() == null ? "" : " (for " + Points.words(one.from().place()) + ")")).toList();
            List<String> again = Examples.BOOK.cards().keySet().stream().filter(check -> dies(twin, check, entry)).map(check -> "`" + check + "`").toList();
            page.append("\n**").append(title).append("** (`").append(work).append("`)\n\n- implies ").append(implied.isEmpty() ? "nothing else" : String.join("; ", implied))
                    .append("\n- must be proven again: ").append(String.join(", ", again)).append("\n");
        });
    }

    private static boolean dies(AssemblyCases.Proofs twin, String check, Entry work) {
        for (Required required : twin.concluded().required(check)) {
            if (twin.concluded().of(required, Wanted.class).stream().anyMatch(w -> w.isUndoneBy(work))) {
                return true;
            }
        }
        return false;
    }

    private static String implies(JsonNode row) {
        String levels = LEVELS.stream().filter(row::has).map(level -> code(row.get(level)) + " " + IN_WORDS.get(level)).collect(Collectors.joining("; "));
        String when = row.has("when") ? " (where " + row.get("when").properties().stream().map(f -> f.getKey() + " is " + words(f.getValue()).replace(", ", " or ").replace("true", "yes").replace("false", "no")).collect(Collectors.joining(" and ")) + ")" : "";
        return words(row.get("work")).replace("any", "any work").replace("touch", "any work, or slackened, tightened, adjusted or damaged") + when + " implies " + levels;
    }

    private static String asks(JsonNode row, String outcome) {
        return (row.has("work") ? words(row.get("work")) : "work that disturbs") + ": " + code(row.get("proofs")) + " " + outcome;
    }

    private static List<String> each(JsonNode one) {
        return one.isArray() ? StreamSupport.stream(one.spliterator(), false).map(JsonNode::asText).toList() : List.of(one.asText());
    }

    private static String words(JsonNode list) {
        return String.join(", ", each(list));
    }

    private static String code(JsonNode list) {
        return each(list).stream().map(word -> "`" + word + "`").collect(Collectors.joining(", "));
    }
}

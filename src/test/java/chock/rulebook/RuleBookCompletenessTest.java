package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Gate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every check has all its parts, and every part belongs to a check. */
class RuleBookCompletenessTest {
    private final RuleBook book = RuleBook.shipped();

    private static String all(String folder, String ending) throws IOException {
        StringBuilder text = new StringBuilder();
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            for (Path file : files.filter(f -> f.toString().endsWith(ending)).sorted().toList()) {
                text.append(Files.readString(file)).append('\n');
            }
        }
        return text.toString();
    }

    private static Set<String> ruleNames(String drl) {
        Set<String> names = new TreeSet<>();
        for (Matcher m = Pattern.compile("(?m)^rule \"([^\"]+)\"").matcher(drl); m.find(); ) {
            names.add(m.group(1));
        }
        return names;
    }

    @Test
    void theCompiledRulesAreTheRulesInTheFolder() throws IOException {
        assertThat(book.rules().names()).isNotEmpty().isEqualTo(ruleNames(all("rules", ".drl")));
    }

    @Test
    void everyRuleIsNamedByACheckOrIsGeneralReasoning() throws IOException {
        List<String> strangers = ruleNames(all("rules", ".drl")).stream().filter(n -> !n.startsWith("evidence.") && !n.startsWith("outcome."))
                .filter(n -> book.cards().keySet().stream().noneMatch(id -> n.equals(id) || n.startsWith(id + "-"))).toList();
        assertThat(strangers).as("rules that belong to no card").isEmpty();
    }

    @Test
    void conditionsHoldNoNumbersThatAreLimits() throws IOException {
        String drl = all("rules", ".drl");
        List<String> numbers = new ArrayList<>();
        for (Matcher m = Pattern.compile("(?s)\\bwhen\\b(.*?)\\bthen\\b(.*?)\\bend\\b").matcher(drl); m.find(); ) {
            for (String part : List.of(m.group(1), m.group(2))) {
                Matcher number = Pattern.compile("(?<![\\w.\"-])\\d+(?:\\.\\d+)?").matcher(part.replaceAll("\"[^\"]*\"", "\"\""));
                while (number.find()) {
                    // One disc, no discs, one seat, no battery: counts of parts, not limits.
                    if (!Set.of("0", "1").contains(number.group())) {
                        numbers.add(number.group() + " in " + part.strip());
                    }
                }
            }
        }
        assertThat(numbers).as("numbers belong in limits.yaml").isEmpty();
    }

    @Test
    void everyLimitIsUsed() throws IOException {
        Set<String> used = new TreeSet<>();
        book.cards().values().forEach(c -> used.add(String.valueOf(c.limit())));
        String drl = all("rules", ".drl");
        List<String> idle = book.limits().stream().map(Limit::id).filter(id -> !used.contains(id) && !drl.contains("\"" + id + "\"")).toList();
        assertThat(idle).as("limits no check uses").isEmpty();
    }

    @Test
    void everyCheckIsShownMetInFaultAndMissing() throws IOException {
        Map<String, Set<String>> shown = new TreeMap<>();
        String[] blocks = all("features", ".feature").split("(?m)^\\s*Rule:");
        String tags = "";
        for (int i = 0; i < blocks.length; i++) {
            String block = blocks[i];
            if (i > 0) {
                for (String id : tags.split("\\s+")) {
                    if (id.startsWith("@")) {
                        Set<String> states = shown.computeIfAbsent(id.substring(1), k -> new TreeSet<>());
                        for (Matcher m = Pattern.compile("\\b(met|fault|doubt|stale|missing)\\b").matcher(outcomes(block)); m.find(); ) {
                            states.add(m.group());
                        }
                    }
                }
            }
            String[] lines = block.strip().split("\n");
            tags = lines[lines.length - 1].strip();
        }
        List<String> holes = new ArrayList<>();
        for (Card card : book.cards().values()) {
            Set<String> states = shown.getOrDefault(card.id(), Set.of());
            if (card.wants().isEmpty()) {
                // It decides from the record itself, and may hold a machine in one way only.
                if (!states.contains("met") || states.size() < 2) {
                    holes.add(card.id() + " wants a scenario that shows it met and one that shows it hold the machine");
                }
                continue;
            }
            for (String wanted : List.of("met", "fault", "missing")) {
                boolean cannotBe = wanted.equals("fault") && onlyWork(card);
                if (!states.contains(wanted) && !cannotBe) {
                    holes.add(card.id() + " has no scenario that shows it " + wanted);
                }
            }
        }
        assertThat(holes).isEmpty();
        assertThat(shown.keySet()).as("scenarios of checks that do not exist").isSubsetOf(book.cards().keySet());
    }

    // Work that was done cannot be a fault: it is there, undone or missing.
    private static boolean onlyWork(Card card) {
        return card.wants().stream().allMatch(w -> w.weakest() == chock.record.Deed.DONE);
    }

    // Only what follows Then and what stands in a table of examples says an outcome.
    private static String outcomes(String block) {
        StringBuilder text = new StringBuilder();
        block.lines().map(String::strip).filter(l -> l.startsWith("Then ") || l.startsWith("|") || l.startsWith("And ") && l.contains(" is ")).forEach(l -> text.append(l).append('\n'));
        return text.toString();
    }

    @Test
    void noScenarioIsLeftUnfinished() throws IOException {
        assertThat(all("features", ".feature").lines().filter(line -> line.contains("FILL IN"))).as("scenarios still to be written").isEmpty();
    }

    @Test
    void aCriticalCheckNeverAcceptsHearsay() {
        assertThat(book.cards().values()).filteredOn(Card::critical).isNotEmpty()
                .allMatch(c -> c.wants().stream().allMatch(w -> w.weakest() == chock.record.Deed.DONE || w.weakest().atLeast(chock.record.Deed.SEEN)));
    }

    @Test
    void theRoadTestAsksSomethingAndEverySourceIsNamed() {
        assertThat(book.cards().values()).anyMatch(c -> c.gates().contains(Gate.ROAD_TEST));
        assertThat(book.limits()).allMatch(l -> l.reviewed() != null && l.source() != null);
    }
}

package chock.rehearse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** One scenario, or one line of its examples: the checks its rule is about, and its steps without Given, And and Then. */
public record ToldScenario(Set<String> checks, List<String> steps) {
    /** A step that tells of work. */
    public static final Pattern WORK = Pattern.compile("(?:(?:ida|tom) wrote that )?([a-z0-9/-]+) was ([a-z-]+)(?: \\d+ (?:day|month|year)s? ago)?");
    /** A step that expects a state of a check. */
    public static final Pattern OUTCOME = Pattern.compile("([a-z]+\\.[a-z0-9-]+) is (met|fault|doubt|stale|missing|not applicable)(?: at [a-z0-9/-]+)?");
    /** Steps that only look at the outcome. */
    public static final Pattern LOOKS = Pattern.compile("^it (?:says|notes|holds|is cleared) |^it does not lapse |^it is (?:not )?safety-critical|^the limit came |^the [a-z-]+ is (?:released|blocked|closed|not closed)"
            + "|^the first step to |^for [a-z-]+ nothing (?:but|is proven) |^for [a-z-]+ [a-z0-9/-]+ is to be ");

    public boolean says(String check, String state) {
        return checks.contains(check) && steps.stream().map(OUTCOME::matcher).anyMatch(m -> m.matches() && m.group(1).equals(check) && m.group(2).equals(state));
    }

    public boolean speaksOfWork() {
        return steps.stream().anyMatch(s -> WORK.matcher(s).matches());
    }

    /** What is said of the machine and its record, without what is expected. */
    public List<String> given() {
        return steps.stream().filter(s -> !LOOKS.matcher(s).find() && !OUTCOME.matcher(s).matches()).toList();
    }

    /** Every scenario, and every line of examples as one. */
    public static List<ToldScenario> all() throws IOException {
        List<ToldScenario> told = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("features"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".feature")).sorted().toList()) {
                Set<String> tags = Set.of();
                Set<String> checks = Set.of();
                List<String> background = new ArrayList<>();
                List<String> steps = new ArrayList<>();
                List<String> head = null;
                boolean examples = false;
                for (String line : Stream.concat(Files.readAllLines(file).stream().map(String::strip), Stream.of("Rule:")).toList()) {
                    if (line.startsWith("@")) {
                        tags = new LinkedHashSet<>(Arrays.stream(line.split("\\s+")).map(t -> t.substring(1)).toList());
                    } else if (line.startsWith("Rule:") || line.startsWith("Scenario")) {
                        if (!steps.isEmpty() && !examples) {
                            told.add(new ToldScenario(checks, steps));
                        }
                        checks = line.startsWith("Rule:") ? tags : checks;
                        background = line.startsWith("Rule:") ? new ArrayList<>() : background;
                        steps = new ArrayList<>(background);
                        examples = false;
                    } else if (line.startsWith("Background:")) {
                        // What it says is said by every scenario below it, and is none itself.
                        background = new ArrayList<>();
                        steps = background;
                        examples = true;
                        head = List.of();
                    } else if (line.startsWith("Examples")) {
                        examples = true;
                        head = null;
                    } else if (line.startsWith("|") && examples) {
                        List<String> cells = Arrays.stream(line.substring(1, line.lastIndexOf('|')).split("\\|")).map(String::strip).toList();
                        if (head == null) {
                            head = cells;
                        } else {
                            told.add(new ToldScenario(checks, filled(steps, head, cells)));
                        }
                    } else if (line.matches("(Given|When|Then|And|But) .+")) {
                        steps.add(line.substring(line.indexOf(' ') + 1));
                    }
                }
            }
        }
        return told;
    }

    private static List<String> filled(List<String> steps, List<String> head, List<String> cells) {
        return steps.stream().map(step -> {
            String text = step;
            for (int i = 0; i < head.size(); i++) {
                text = text.replace("<" + head.get(i) + ">", cells.get(i));
            }
            return text;
        }).toList();
    }
}

package chock.cli;

import chock.record.UnusableInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The parts of a new check, with {@code FILL IN} wherever only its author knows what to write. Until all of these are
 * gone the rule book refuses to load, and names each.
 *
 * @param id id of the check
 * @param measured whether it is measured against a limit, or else looked at
 * @param today the day the limit is written down
 */
record Scaffold(String id, boolean measured, LocalDate today) {

    String system() {
        return id.substring(0, id.indexOf('.'));
    }

    String thing() {
        return id.substring(id.indexOf('.') + 1);
    }

    /** Into a rules tree: the folder that holds {@code rules} and {@code features}. */
    List<Path> intoTree(Path root) {
        Path rules = root.resolve("rules");
        if (!Files.isDirectory(rules)) {
            throw UnusableInput.of(root.toString(), "there is no folder rules in it", "Name the folder that holds rules and features, or a house folder with --house");
        }
        Path system = rules.resolve(system());
        Map<Path, String> parts = new LinkedHashMap<>();
        if (measured) {
            parts.put(system.resolve("limits.yaml"), limit());
        }
        parts.put(system.resolve("checks.yaml"), card(""));
        parts.put(system.resolve(system() + ".drl"), rule());
        return write(parts, root.resolve("features").resolve(system()).resolve(thing() + ".feature"));
    }

    /** Into a house folder. */
    List<Path> intoHouse(Path house) {
        if (!Files.exists(house.resolve("house.yaml"))) {
            throw UnusableInput.of(house.resolve("house.yaml").toString(), "there is no such file, so this is not a house folder", "Write it, with one line: name: and what the house calls its rules");
        }
        Map<Path, String> parts = new LinkedHashMap<>();
        if (measured) {
            parts.put(house.resolve("limits.yaml"), houseLimit());
        }
        parts.put(house.resolve("checks.yaml"), card("  asked-with: FILL IN a shipped check; this one is asked wherever that is. Or write asked-of: every machine\n"));
        return write(parts, house.resolve("features").resolve(thing() + ".feature"));
    }

    // Nothing is written before it is sure that nothing would be overwritten.
    private List<Path> write(Map<Path, String> parts, Path feature) {
        try {
            if (Files.exists(feature)) {
                throw UnusableInput.of(feature.toString(), "it is there already, and nothing is overwritten", "Choose another id, or write into it by hand");
            }
            for (Path file : parts.keySet()) {
                if (Files.exists(file) && Files.readString(file).lines().anyMatch(line -> line.strip().equals("- id: " + id) || line.startsWith("rule \"" + id + "\""))) {
                    throw UnusableInput.of(file.toString(), "'" + id + "' stands there already, and nothing is overwritten", "Choose another id");
                }
            }
            for (Map.Entry<Path, String> part : parts.entrySet()) {
                Files.createDirectories(part.getKey().getParent());
                String before = Files.exists(part.getKey()) ? Files.readString(part.getKey()) : "";
                Files.writeString(part.getKey(), part.getKey().toString().endsWith(".drl") ? withImports(before) + "\n" + part.getValue() : before + (before.isEmpty() ? "" : "\n") + part.getValue());
            }
            Files.createDirectories(feature.getParent());
            Files.writeString(feature, feature());
        } catch (IOException e) {
            throw UnusableInput.of(e.getMessage(), "it cannot be read or written", "Name a folder you may write to");
        } catch (UncheckedIOException e) {
            throw UnusableInput.of(String.valueOf(e.getCause().getMessage()), "it cannot be read as text", "Save it as UTF-8");
        }
        List<Path> written = new ArrayList<>(parts.keySet());
        written.add(feature);
        return written;
    }

    private String withImports(String drl) {
        List<String> lines = new ArrayList<>(drl.isEmpty() ? List.of("package rules." + system() + ";", "") : drl.stripTrailing().lines().toList());
        int last = 1;
        for (int i = 0; i < lines.size(); i++) {
            last = lines.get(i).startsWith("import ") ? i + 1 : last;
        }
        for (String fact : List.of("MachineFact", "Required")) {
            String line = "import chock.assess.facts." + fact + ";";
            if (lines.stream().noneMatch(l -> l.equals(line) || l.equals("import chock.assess.facts.*;"))) {
                lines.add(Math.min(++last, lines.size()), line);
            }
        }
        return String.join("\n", lines) + "\n";
    }

    private String limit() {
        return """
                - id: %s
                  of: FILL IN what the number limits, as in "friction material of a disc pad at its thinnest point"
                  sense: FILL IN at-least, at-most or between
                  value: FILL IN the number with its unit, as it was printed
                  at-limit: FILL IN passes or fails: is exactly that number still good?
                  resolution: FILL IN the smallest step that means something, in the same kind of unit
                  from: always
                  source: {kind: practice}  # FILL IN law, standard, maker or practice; all but practice with document:, section: and known:
                  maker: FILL IN replaces, needed or none
                  local: no
                  reviewed: %s
                """.formatted(id, today);
    }

    private String houseLimit() {
        return """
                - id: %s
                  of: FILL IN what the number limits
                  sense: FILL IN at-least, at-most or between
                  value: FILL IN the number with its unit
                  at-limit: FILL IN passes or fails: is exactly that number still good?
                  resolution: FILL IN the smallest step that means something, in the same kind of unit
                  reason: FILL IN why this house asks for it
                  author: FILL IN who decided it
                  date: %s
                """.formatted(id, today);
    }

    private String card(String asked) {
        String wants = measured ? "    - {measured: " + thing() + ", unit: FILL IN}\n  limit: " + id + "\n"
                : "    - {seen: " + thing() + ", good: [FILL IN what is good], bad: [FILL IN what is bad]}\n";
        return "- id: " + id + "\n" + """
                  question: FILL IN what it asks, ending in a question mark
                  applies: FILL IN what it is asked of, completing "asked of …"
                """ + asked + """
                  gates: [road-test, hand-over]  # FILL IN the gates: first-start, indoor-run, road-test, on-show, hand-over, non-runner
                  critical: yes  # FILL IN yes when somebody gets hurt when it is wrong, else no
                  dangers: [FILL IN what a known fault can do]  # rules/evidence/dangers.yaml lists them
                  place: machine  # FILL IN the place; names in braces stand in rules/evidence/words.yaml
                  wants:
                """ + wants + """
                  holds: FILL IN until undone, same day, or a time such as 12 months
                  ends-by: work  # FILL IN work, look, document or time: what ends a fault
                  remedy: FILL IN what clears it, in the imperative
                """;
    }

    private String rule() {
        return """
                // FILL IN of which machines or parts it is asked: chock.assess.facts holds what a rule may look at.
                rule "%s"
                when
                  MachineFact()
                then
                  insertLogical(new Required("%s", "machine"));
                end
                """.formatted(id, id);
    }

    private String feature() {
        String values = measured ? """
                    # FILL IN the last value that passes, the first that does not, and one too close to tell
                    Scenario Outline: on both sides of the limit
                      Given a motorcycle with one hydraulic disc in front and a rod drum behind
                      And machine measured THING <value>
                      Then ID is <state>

                      Examples:
                        | value                 | state |
                        | FILL IN 1.4 mm ± 0.1 mm | fault |
                        | FILL IN 1.5 mm ± 0.1 mm | doubt |
                        | FILL IN 1.7 mm ± 0.1 mm | met   |
                """ : """
                    Scenario Outline: good and bad
                      Given a motorcycle with one hydraulic disc in front and a rod drum behind
                      And machine seen THING <answer>
                      Then ID is <state>

                      Examples:
                        | answer               | state |
                        | FILL IN what is good | met   |
                        | FILL IN what is bad  | fault |
                """;
        return """
                Feature: FILL IN the thing inspected

                  @ID
                  Rule: FILL IN what must hold, as a sentence

                """.replace("ID", id) + values.replace("ID", id).replace("THING", thing()).indent(0) + """

                    Scenario: nobody looked
                      Given a motorcycle with one hydraulic disc in front and a rod drum behind
                      Then ID is missing
                """.replace("ID", id);
    }
}

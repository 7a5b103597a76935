package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** Every text file of the project: no conflict markers, no dead links, no path or test that does not exist, and README's commands. */
class TidyFilesTest {
    private static final Pattern QUOTED = Pattern.compile("`([^`]+)`");

    private static TrackedFiles project;

    @BeforeAll
    static void read() throws Exception {
        project = TrackedFiles.of(Path.of("").toAbsolutePath());
        assertThat(project.text().keySet()).hasSizeGreaterThan(1000).contains("README.md", "DEVELOPERS.md", "pom.xml", ".ci/run", "docs/guide.md", "rules/book.yaml", "src/main/launcher/chock");
    }

    @Test
    void noMergeLeftItsMarkers() {
        assertThat(project.conflictMarkers()).isEmpty();
    }

    @Test
    void everyLinkLeadsSomewhere() {
        assertThat(project.deadLinks()).isEmpty();
    }

    @Test
    void everyPathThatIsNamedExists() {
        assertThat(project.absentPaths()).isEmpty();
    }

    @Test
    void theTableOfCommandsInReadmeIsWhatTheProgramHas() {
        TreeSet<String> program = new TreeSet<>();
        Chock.line(Run.bench("", new ByteArrayOutputStream(), new ByteArrayOutputStream(), null)).getSubcommands().forEach((name, command) -> names(name, command, program));
        assertThat(program).contains("assess", "keys revoke");
        TreeSet<String> table = commandTable(project.text().get("README.md"));
        assertThat(table).as("commands in README.md, compared with those of the program").isEqualTo(program);
    }

    private static void names(String name, CommandLine command, TreeSet<String> all) {
        all.add(name);
        command.getSubcommands().forEach((further, sub) -> names(name + " " + further, sub, all));
    }

    /** What the first column of the table names: {@code keys new}, then {@code list}, are {@code keys new} and {@code keys list}. */
    private static TreeSet<String> commandTable(String readme) {
        TreeSet<String> named = new TreeSet<>();
        String table = readme.substring(readme.indexOf("\n## Commands\n")).split("\n\n", 2)[0];
        for (String row : table.split("\n")) {
            if (!row.startsWith("| `")) {
                continue;
            }
            String command = null;
            Matcher quoted = QUOTED.matcher(row.split("(?<!\\\\)\\|")[1]);
            while (quoted.find()) {
                List<String> words = List.of(quoted.group(1).split(" "));
                boolean first = command == null;
                command = first ? words.get(0) : command;
                String further = first ? words.size() > 1 ? words.get(1) : "" : words.get(words.get(0).equals(command) ? 1 : 0);
                named.add(command);
                // FILE, [ID] and --gate are what a command takes.
                if (further.matches("[a-z-]+") && !further.startsWith("-")) {
                    named.add(command + " " + further);
                }
            }
        }
        return named;
    }

    /** In these a {@code ´} stands for a backtick, so that this file names no path that does not exist. */
    private static TrackedFiles files(String... pathAndText) {
        TreeMap<String, String> text = new TreeMap<>(Map.of("docs/guide.md", "# The guide\n\n## Signing & more\n\n## Signing & more\n", "src/main/Main.java", "class Main { }\n"));
        for (int i = 0; i < pathAndText.length; i += 2) {
            text.put(pathAndText[i], pathAndText[i + 1].replace('´', '`'));
        }
        return new TrackedFiles(text);
    }

    // Built here, so that this file holds none.
    private static String marker(char sign) {
        return String.valueOf(sign).repeat(7);
    }

    @Test
    void everyKindOfConflictMarkerIsFound() {
        String torn = "one\n" + marker('<') + " HEAD\ntwo\n" + marker('|') + " base\n" + marker('=') + "\nthree\r\n" + marker('>') + " other\r\n";
        assertThat(files("a.yaml", torn).conflictMarkers()).containsExactly("a.yaml:2: conflict marker " + marker('<') + " HEAD", "a.yaml:4: conflict marker " + marker('|') + " base",
                "a.yaml:5: conflict marker " + marker('='), "a.yaml:7: conflict marker " + marker('>') + " other");
        assertThat(files("a.yaml", "x " + marker('=') + "\n" + marker('=') + "=\n").conflictMarkers()).isEmpty();
    }

    @Test
    void deadLinksAreFoundWithTheirLine() {
        assertThat(files("README.md", "[a](docs/guide.md) [b](docs) [c](https://example.org/x) [d](docs/guide.md#signing--more) [e](docs/guide.md#signing--more-1) ´[f](g.md)´\n```\n[h](i.md)\n```\n").deadLinks()).isEmpty();
        assertThat(files("docs/other.md", "words\n[a](docs/guide.md) [b](guide.md#selling)\n[c]: ../src/Main.java\n").deadLinks()).containsExactly(
                "docs/other.md:2: link to docs/guide.md, which does not exist", "docs/other.md:2: link to guide.md#selling, and docs/guide.md has no such heading",
                "docs/other.md:3: link to ../src/Main.java, which does not exist");
    }

    @Test
    void pathsAndTestsThatDoNotExistAreFound() {
        assertThat(files("README.md", "´docs/guide.md:3´, ´docs/´, ´sh src/main/<name>.java x´, ´src/**/Main.java´, ´other/thing´, ´target/chock´\n").absentPaths()).isEmpty();
        assertThat(files("README.md", "´docs/guides.md´ ´sh src/main/<name>.sh´\n´MainTest´\n", "src/main/Other.java", "/** As {@code docs/{x}.yaml} says. */\n").absentPaths()).containsExactly(
                "README.md:1: docs/guides.md does not exist", "README.md:1: src/main/<name>.sh does not exist", "README.md:2: there is no test MainTest",
                "src/main/Other.java:1: docs/{x}.yaml does not exist");
    }

    @Test
    void theTableOfCommandsIsReadByItsFirstColumn() {
        String table = "\n## Commands\n| command | does |\n|---|---|\n| `assess RECORD…` | judges, see `order` |\n| `keys new`, `list` | makes |\n| `board`, `board take RECORD…` | serves |\n| `rules [ID]` | lists |\n\n| `other` | not this |\n";
        assertThat(commandTable(table)).containsExactly("assess", "board", "board take", "keys", "keys list", "keys new", "rules");
    }
}

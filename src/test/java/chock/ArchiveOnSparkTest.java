package chock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The job for Apache Spark, which this build does not compile: it stays in its place, and its engine out of ours. */
class ArchiveOnSparkTest {
    private static final Pattern ROOM = Pattern.compile("\\bchock\\.([a-z]+)\\.[A-Z]");
    private static final Set<String> MAY_USE = Set.of("archive", "assess", "report", "record", "rulebook", "signoff", "spark");

    @Test
    void it_uses_what_judges_and_neither_commands_nor_board() throws IOException {
        List<Path> sources = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/spark/java"))) {
            files.filter(file -> file.toString().endsWith(".java")).forEach(sources::add);
        }
        assertThat(sources).hasSizeGreaterThan(5);
        TreeSet<String> rooms = new TreeSet<>();
        for (Path source : sources) {
            Matcher named = ROOM.matcher(Files.readString(source));
            while (named.find()) {
                rooms.add(named.group(1));
            }
        }
        assertThat(rooms).contains("archive").isSubsetOf(MAY_USE);
    }

    @Test
    void nothing_of_its_engine_is_asked_for_by_the_program() throws IOException {
        assertThat(Files.readString(Path.of("src/spark/pom.xml"))).contains("<groupId>org.apache.spark</groupId>");
        assertThat(Files.readString(Path.of("pom.xml"))).doesNotContain("org.apache.spark");
    }

    @Test
    void every_library_sent_along_is_one_of_the_program() throws IOException {
        List<String> named = Files.readAllLines(Path.of("src/spark/libraries.txt")).stream().filter(line -> !line.startsWith("#")).toList();
        assertThat(named).hasSizeGreaterThan(25).isSorted().doesNotHaveDuplicates();
        Set<String> ours = new TreeSet<>();
        for (String part : System.getProperty("java.class.path").split(Pattern.quote(System.getProperty("path.separator")))) {
            ours.add(Path.of(part).getFileName().toString().replaceFirst("-\\d[^-]*\\.jar$", ""));
        }
        assertThat(ours).containsAll(named);
    }
}

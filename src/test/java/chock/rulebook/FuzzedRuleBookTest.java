package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import chock.fuzz.Fuzz;
import chock.record.UnusableInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is done to the files of a rule book or of a house, it loads whole or is refused. */
class FuzzedRuleBookTest {
    private static final RuleBook SHIPPED = RuleBook.shipped();

    private static List<byte[]> good(String... names) {
        SortedMap<String, String> files = RuleBookLoader.shippedFiles();
        return java.util.Arrays.stream(names).map(name -> files.get(name).getBytes(StandardCharsets.UTF_8)).toList();
    }

    private static void altered(String name) {
        int[] refused = {0};
        int all = Fuzz.run(good(name), bytes -> {
            SortedMap<String, String> files = RuleBookLoader.shippedFiles();
            files.put(name, new String(bytes, StandardCharsets.UTF_8));
            try {
                new RuleBookLoader().load(files, SHIPPED::rules);
            } catch (UnusableInput e) {
                assertThat(e.faults()).isNotEmpty();
                refused[0]++;
            }
        });
        assertThat(refused[0]).as("refused, of " + all).isBetween(1, all);
    }

    @Test
    void limits() {
        altered("brakes/limits.yaml");
    }

    @Test
    void cards() {
        altered("tyres/checks.yaml");
    }

    @Test
    void aLocalCode() {
        altered("codes/GB.yaml");
    }

    @Test
    void theFilesOfAHouse(@TempDir Path folder) throws IOException {
        Path house = Path.of("docs/examples/house");
        Files.copy(house.resolve("house.yaml"), folder.resolve("house.yaml"));
        for (String name : List.of("limits.yaml", "checks.yaml")) {
            int[] refused = {0};
            for (String other : List.of("limits.yaml", "checks.yaml")) {
                Files.copy(house.resolve(other), folder.resolve(other), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            }
            int all = Fuzz.run(List.of(Files.readAllBytes(house.resolve(name))), bytes -> {
                Files.write(folder.resolve(name), bytes);
                try {
                    SHIPPED.with(HouseBook.read(folder));
                } catch (UnusableInput e) {
                    refused[0]++;
                }
            });
            assertThat(refused[0]).as(name + " refused, of " + all).isBetween(1, all);
        }
    }
}

package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Wanted;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.JobRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Every work word at every place against every proof asked of a machine, held against a table that was read and approved: no pair
 * is added or forgotten without a line that changes. Renew it with {@code -DargLine=-Dchock.approve=true}, and read the difference.
 */
@Tag("slow")
class UndoneTableTest {
    private static final Path FOLDER = Path.of("src/test/resources/assembly");

    @ParameterizedTest
    @ValueSource(strings = {"merle-released", "harrow-prewar-single"})
    void everyPairIsTheOneThatWasApproved(String name) throws IOException {
        JobRecord record = Examples.read(name + ".yaml");
        Conclusions concluded = Assessor.conclude(record.withEntries(List.of()), Examples.BOOK, Examples.DAY);
        Set<String> works = new TreeSet<>(Examples.BOOK.library().works().keySet());
        List<String> points = Examples.BOOK.vocabulary().points().stream().sorted().toList();
        List<Wanted> proofs = Examples.BOOK.cards().keySet().stream().flatMap(check -> concluded.required(check).stream()).flatMap(r -> concluded.of(r, Wanted.class).stream())
                .sorted(Comparator.comparing((Wanted w) -> w.required().check()).thenComparing(w -> w.required().point()).thenComparing(Wanted::name)).toList();
        assertThat(proofs).hasSizeGreaterThan(200);
        List<String> lines = new ArrayList<>();
        for (Wanted proof : proofs) {
            Map<String, List<String>> places = new LinkedHashMap<>();
            for (String point : points) {
                Set<String> undoing = new TreeSet<>();
                for (String work : works) {
                    if (proof.isUndoneBy(new Entry("", null, "", Deed.DONE, point, work, null, null, null, null, null, 0))) {
                        undoing.add(work);
                    }
                }
                if (!undoing.isEmpty()) {
                    places.computeIfAbsent(words(undoing), w -> new ArrayList<>()).add(point);
                }
            }
            lines.add(proof.required().check() + " " + proof.name() + " at " + proof.required().point());
            new TreeMap<>(places).forEach((undoing, at) -> lines.add("  " + undoing + ": " + String.join(" ", at)));
        }
        Path approved = FOLDER.resolve("undone-" + name + ".txt");
        String found = String.join("\n", lines) + "\n";
        if (Boolean.getBoolean("chock.approve")) {
            Files.writeString(approved, found);
        }
        assertThat(Files.readString(approved).lines().toList()).as("%s; renew it with -Dtest=UndoneTableTest -DargLine=-Dchock.approve=true and read the difference", approved).isEqualTo(lines);
    }

    /** All that disturb go by one word. */
    private static String words(Set<String> undoing) {
        Set<String> disturbing = Examples.BOOK.library().disturbing();
        if (!undoing.containsAll(disturbing)) {
            return String.join(" ", undoing);
        }
        Set<String> rest = new TreeSet<>(undoing);
        rest.removeAll(disturbing);
        return rest.isEmpty() ? "disturbing" : "disturbing " + String.join(" ", rest);
    }
}

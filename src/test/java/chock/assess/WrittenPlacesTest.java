package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import chock.record.Fault;
import chock.record.ReadAs;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.record.Vocabulary;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
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
import org.junit.jupiter.api.Test;

/** What is written at a place where no check of any machine asks for it is refused, and nothing else is. */
class WrittenPlacesTest {
    private static final Path APPROVED = Path.of("src/test/resources/record/places-written.txt");
    private static final Pattern ENTRY = Pattern.compile("entries\\[(\\d+)]\\.point");
    private static final Vocabulary WORDS = Examples.BOOK.vocabulary();

    /** One aspect at one place. */
    private record Pair(String aspect, String point) { }

    private static byte[] record(List<Pair> pairs) throws IOException {
        ObjectNode record = (ObjectNode) new YAMLMapper().readTree(Examples.bytes("lark-released.yaml"));
        record.put("chock", "job-record/2");
        ArrayNode entries = record.putArray("entries");
        for (int i = 0; i < pairs.size(); i++) {
            entries.addObject().put("id", "e" + i).put("at", "2026-11-25 09:00").put("by", "ida").put("point", pairs.get(i).point()).put("seen", pairs.get(i).aspect()).put("is", "?");
        }
        record.putArray("claims");
        return new ObjectMapper().writeValueAsBytes(record);
    }

    private static List<Fault> faults(List<Pair> pairs, ReadAs as) throws IOException {
        byte[] bytes = record(pairs);
        UnusableInput refused = catchThrowableOfType(UnusableInput.class, () -> RecordReader.read("written.json", bytes, WORDS, Examples.DAY, as));
        return refused == null ? List.of() : refused.faults().stream().filter(f -> ENTRY.matcher(f.path()).matches()).toList();
    }

    private static Map<String, Set<String>> refused() throws IOException {
        List<Pair> all = new ArrayList<>();
        WORDS.aspects().keySet().stream().sorted().forEach(aspect -> WORDS.points().forEach(point -> all.add(new Pair(aspect, point))));
        assertThat(all).hasSizeGreaterThan(50_000);
        Map<String, Set<String>> refused = new TreeMap<>();
        for (int from = 0; from < all.size(); from += 10_000) {
            List<Pair> some = all.subList(from, Math.min(all.size(), from + 10_000));
            for (Fault fault : faults(some, ReadAs.WRITTEN)) {
                Matcher entry = ENTRY.matcher(fault.path());
                assertThat(entry.matches()).isTrue();
                Pair pair = some.get(Integer.parseInt(entry.group(1)));
                assertThat(fault.what()).isEqualTo("no check asks for " + pair.aspect() + " at '" + pair.point() + "'");
                assertThat(fault.advice()).startsWith("Write it at ").contains("write defect with what is wrong in your own words");
                refused.computeIfAbsent(pair.aspect(), a -> new TreeSet<>()).add(pair.point());
            }
        }
        return refused;
    }

    @Test
    void onlyWhatNoMachineIsAskedIsRefused() throws IOException {
        Map<String, Set<String>> refused = refused();
        Map<String, Set<String>> asked = Catalogue.read().askedAnywhere();
        assertThat(asked).hasSizeGreaterThan(250);
        StringBuilder approved = new StringBuilder("# Where each thing may be written. At every other place of the vocabulary it is refused when it is written.\n");
        for (String aspect : new TreeSet<>(WORDS.aspects().keySet())) {
            Set<String> places = new TreeSet<>(WORDS.points());
            places.removeAll(refused.getOrDefault(aspect, Set.of()));
            boolean besides = Examples.BOOK.library().besides().contains(aspect);
            assertThat(places).as(aspect).isEqualTo(besides ? WORDS.points() : asked.get(aspect));
            approved.append(aspect).append(": ").append(besides ? "anywhere" : String.join(", ", places)).append('\n');
        }
        if (Boolean.getBoolean("chock.approve")) {
            Files.writeString(APPROVED, approved.toString());
        }
        assertThat(Files.readString(APPROVED)).isEqualTo(approved.toString());
    }

    @Test
    void whatIsStoredStaysReadable() throws IOException {
        assertThat(faults(List.of(new Pair("cord", "front-wheel"), new Pair("lever-feel", "fuel/tank")), ReadAs.STORED)).isEmpty();
    }

    @Test
    void theRefusalNamesTheNearestPlaces() throws IOException {
        assertThat(faults(List.of(new Pair("cord", "front-wheel")), ReadAs.WRITTEN)).singleElement().satisfies(fault ->
                assertThat(fault.advice()).isEqualTo("Write it at front-wheel/tyre; when it belongs to none of these and something is wrong, write defect with what is wrong in your own words"));
        assertThat(faults(List.of(new Pair("lever-feel", "steering")), ReadAs.WRITTEN)).singleElement().satisfies(fault ->
                assertThat(fault.advice()).startsWith("Write it at front-brake/control or rear-brake/control; "));
    }
}

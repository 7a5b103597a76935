package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.assess.facts.SetAside;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.ReadAs;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.record.Value;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every number of the released examples with every common slip of the pen: it is refused when it is written, or it blocks a
 * gate that was released. What stays released is listed in docs/safety.md. That list may only shrink. A share is tried in
 * every build, all with {@code -Dchock.whole=true}, and only then can the list be renewed.
 */
@Tag("slow")
class SlipsTest {
    private static final boolean WHOLE = Boolean.getBoolean("chock.whole");
    private static final int EVERY = WHOLE ? 1 : 6;
    private static final Path SAFETY = Path.of("docs/safety.md");
    private static final String FROM = "<!-- slips -->";
    private static final String TO = "<!-- end of slips -->";
    /** Which units are taken for one another. */
    private static final List<List<Unit>> TAKEN_FOR = List.of(List.of(Unit.PSI, Unit.BAR, Unit.KPA), List.of(Unit.MM, Unit.INCH), List.of(Unit.DEGREES_CELSIUS, Unit.DEGREES_FAHRENHEIT), List.of(Unit.MPH, Unit.KMH));
    private static final Map<String, String> EXCHANGED = Map.of("gap-at-rest", "gap-when-on", "unworn-diameter", "worn-diameter");

    private final SortedMap<String, Set<String>> stays = new TreeMap<>();
    private final Set<String> tried = new HashSet<>();
    private final List<Slip> slips = new ArrayList<>();
    private final AtomicInteger refused = new AtomicInteger();
    private final AtomicInteger blocked = new AtomicInteger();

    /** One slip in one file: the answers at these entries, and what is written instead. */
    private record Slip(String example, ObjectNode file, String aspect, String name, List<Integer> at, List<String> instead) { }

    @Test
    void aSlipIsRefusedOrBlocksOrIsListed() throws IOException {
        for (String example : Examples.RELEASED) {
            slipsOf(example);
        }
        assertThat(slips).as("slips of the pen").hasSizeGreaterThan(1000);
        List<Slip> some = IntStream.range(0, slips.size()).filter(i -> i % EVERY == 0).mapToObj(slips::get).toList();
        List<Slip> unnoticed = some.parallelStream().filter(this::staysReleased).toList();
        unnoticed.forEach(slip -> stays.computeIfAbsent(slip.aspect(), a -> new LinkedHashSet<>()).add(slip.name()));
        assertThat(refused.get()).isGreaterThan(some.size() / 4);
        assertThat(blocked.get()).isPositive();
        String page = Files.readString(SAFETY);
        if (!WHOLE) {
            assertThat(unnoticed).isNotEmpty();
            assertThat(stays.entrySet().stream().flatMap(what -> what.getValue().stream().map(which -> words(what.getKey()) + ": " + which)))
                    .as("slips that nothing notices; the list may only shrink").isSubsetOf(listed(page));
            return;
        }
        String now = page.substring(0, page.indexOf(FROM) + FROM.length()) + "\n" + table() + page.substring(page.indexOf(TO));
        if (Boolean.getBoolean("chock.approve")) {
            Files.writeString(SAFETY, now);
        }
        assertThat(now).as("slips that nothing notices; the list may only shrink").isEqualTo(Files.readString(SAFETY));
    }

    /** What the page lists, {@code background: a part in 10}. */
    private static Set<String> listed(String page) {
        Set<String> listed = new HashSet<>();
        page.substring(page.indexOf(FROM), page.indexOf(TO)).lines().filter(line -> line.startsWith("| ")).map(line -> line.split(" ?\\| ?"))
                .forEach(cells -> List.of(cells[2].split(", ")).forEach(which -> listed.add(cells[1] + ": " + which)));
        return listed;
    }

    private static String words(String aspect) {
        return aspect.replace('-', ' ');
    }

    private String table() {
        StringBuilder table = new StringBuilder("| what is read | slips that can stay unnoticed |\n|---|---|\n");
        stays.forEach((what, which) -> table.append("| ").append(words(what)).append(" | ").append(String.join(", ", which)).append(" |\n"));
        return table.toString();
    }

    private void slipsOf(String example) throws IOException {
        ObjectNode file = RecordReader.written(example, Examples.bytes(example));
        JobRecord record = Examples.read(example);
        assertThat(Examples.judge(record).gates()).as(example).isNotEmpty().allMatch(GateVerdict::released);
        ArrayNode entries = (ArrayNode) file.get("entries");
        Conclusions concluded = Assessor.conclude(record, Examples.BOOK, Examples.DAY);
        Set<String> over = Examples.BOOK.cards().keySet().stream().flatMap(check -> concluded.required(check).stream()).flatMap(required -> concluded.of(required, SetAside.class).stream())
                .filter(aside -> aside.reason() == SetAside.Reason.OPENED || aside.reason() == SetAside.Reason.UNDONE)
                .map(SetAside::entry).collect(Collectors.toSet());
        for (int i = 0; i < record.entries().size(); i++) {
            Entry entry = record.entries().get(i);
            if (entry.is() instanceof Value.Amount && !isLookedAtAgain(record, i) && !over.contains(entry.id())) {
                String is = entries.get(i).get("is").asText();
                for (Map.Entry<String, String> slip : slips(is).entrySet()) {
                    if (tried.add(record.seeks() + entry.point() + entry.what() + is + slip.getKey())) {
                        slips.add(new Slip(example, file, entry.what(), slip.getKey(), List.of(i), List.of(slip.getValue())));
                    }
                }
                exchange(example, file, record, i);
            }
        }
    }

    /** Of the weather and the like the latest look decides, and a nut torqued once more was torqued anew: what was written before says nothing more. Nor does what work undid or a reading opened since. */
    private static boolean isLookedAtAgain(JobRecord record, int i) {
        Entry one = record.entries().get(i);
        return (one.deed() == Deed.DONE || Examples.BOOK.library().ofTheDay().has(one.point()))
                && record.entries().stream().anyMatch(e -> e.point().equals(one.point()) && e.what().equals(one.what()) && e.at().surelyAfter(one.at()));
    }

    private void exchange(String example, ObjectNode file, JobRecord record, int i) {
        Entry one = record.entries().get(i);
        String other = EXCHANGED.get(one.what());
        for (int j = 0; other != null && j < record.entries().size(); j++) {
            Entry two = record.entries().get(j);
            if (two.point() != null && two.point().equals(one.point()) && other.equals(two.what())) {
                slips.add(new Slip(example, file, one.what(), "exchanged with " + other.replace('-', ' '), List.of(i, j),
                        List.of(file.get("entries").get(j).get("is").asText(), file.get("entries").get(i).get("is").asText())));
            }
        }
    }

    /** What somebody could have written instead, by the name of the slip. */
    private static Map<String, String> slips(String is) {
        Measured written = Measured.parse(is);
        Quantity value = written.value();
        String rest = written.uncertainty() == null ? "" : " ± " + written.uncertainty().number() + " " + written.uncertainty().unit().symbol();
        Map<String, String> slips = new LinkedHashMap<>();
        if (value.value().signum() != 0) {
            for (int places : new int[] {1, 2, 3}) {
                String times = "1" + "0".repeat(places);
                slips.put(times + " times", plain(value.value().movePointRight(places), value.unit()) + rest);
                slips.put("a part in " + times, plain(value.value().movePointLeft(places), value.unit()) + rest);
            }
            slips.put("the sign", plain(value.value().negate(), value.unit()) + rest);
            TAKEN_FOR.stream().filter(units -> units.contains(value.unit())).flatMap(List::stream).filter(unit -> unit != value.unit())
                    .forEach(unit -> slips.put(value.unit().symbol() + " for " + unit.symbol(), plain(value.value(), unit)));
        }
        return slips;
    }

    private static String plain(BigDecimal value, Unit unit) {
        return value.stripTrailingZeros().toPlainString() + " " + unit.symbol();
    }

    private boolean staysReleased(Slip slip) {
        ObjectNode changed = slip.file().deepCopy();
        for (int i = 0; i < slip.at().size(); i++) {
            ((ObjectNode) changed.get("entries").get(slip.at().get(i))).put("is", slip.instead().get(i));
        }
        byte[] bytes = changed.toString().getBytes(StandardCharsets.UTF_8);
        try {
            JobRecord record = RecordReader.read(slip.example(), bytes, Examples.BOOK.vocabulary(), Examples.DAY, ReadAs.WRITTEN);
            boolean released = Examples.judge(record).gates().stream().allMatch(GateVerdict::released);
            blocked.addAndGet(released ? 0 : 1);
            return released;
        } catch (UnusableInput e) {
            refused.incrementAndGet();
            // What is refused when it is written and was stored all the same must not release either.
            assertThat(storedReleases(slip.example(), bytes)).as(slip.example() + " " + slip.aspect() + " " + slip.instead() + ": " + e.getMessage()).isFalse();
            return false;
        }
    }

    private static boolean storedReleases(String example, byte[] bytes) {
        try {
            return Examples.judge(RecordReader.read(example, bytes, Examples.BOOK.vocabulary(), Examples.DAY)).gates().stream().allMatch(GateVerdict::released);
        } catch (UnusableInput e) {
            return false;
        }
    }
}

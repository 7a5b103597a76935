package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Required;
import chock.assess.facts.Wanted;
import chock.record.Deed;
import chock.record.DescribedTimes;
import chock.record.DescriptionField;
import chock.record.Entry;
import chock.record.FieldRule;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.record.Moment;
import chock.record.OtherMachine;
import chock.record.Value;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Every field of a machine's description with every value it can have: which checks fall away by it, and who would notice if it
 * were written by mistake. The table is {@code docs/description.md}; with {@code -Dchock.approve=true} it is written anew.
 */
@Tag("slow")
class DescriptionFieldsTest {
    private static final Path PAGE = Path.of("docs/description.md");
    private static final List<FieldRule> RULES = Examples.BOOK.vocabulary().fields();
    /** What else has to be written with a value, since no machine is otherwise. */
    private static final Map<String, Map<String, String>> WITH = Map.ofEntries(
            brake("none", "none", "0", "none", "no"), brake("disc", "hydraulic", "1", "bonded", "yes"), brake("drum", "cable", "0", "bonded", "yes"),
            Map.entry("engine.cycle electric", Map.of("engine.displacement", "0 cc", "engine.cylinders", "0", "engine.oiling", "none", "engine.ignition", "none", "equipment.starter", "none",
                    "equipment.carburettors", "0", "equipment.fuel-tap", "none")),
            Map.entry("engine.cycle two-stroke", Map.of("engine.oiling", "oil-injection")), Map.entry("engine.cycle four-stroke", Map.of("engine.oiling", "wet-sump")),
            Map.entry("engine.oiling wet-sump", Map.of("engine.cycle", "four-stroke")), Map.entry("engine.oiling dry-sump", Map.of("engine.cycle", "four-stroke")),
            Map.entry("engine.oiling premix", Map.of("engine.cycle", "two-stroke")), Map.entry("engine.oiling oil-injection", Map.of("engine.cycle", "two-stroke")),
            Map.entry("volts 0", Map.of("equipment.starter", "kick")), Map.entry("equipment.lamps no", Map.of("equipment.indicators", "no")));

    private static Map.Entry<String, Map<String, String>> brake(String type, String workedBy, String discs, String lining, String lamp) {
        return Map.entry("brake.type " + type, Map.of("worked-by", workedBy, "discs", discs, "lining", lining, "stop-lamp-switch", lamp));
    }

    /** Machines as different as the description allows. */
    private static final List<Map<String, String>> BASES = List.of(Map.of(),
            Map.of("engine.cycle", "four-stroke", "engine.oiling", "wet-sump", "engine.cylinders", "2", "equipment.carburettors", "2", "front-brake.discs", "2", "drive", "belt", "equipment.indicators", "yes"),
            Map.of("engine.cycle", "four-stroke", "engine.oiling", "dry-sump", "engine.ignition", "magneto", "front-brake.type", "drum", "front-brake.worked-by", "cable", "front-brake.discs", "0",
                    "drive", "shaft", "equipment.front-springing", "girder", "equipment.rear-springing", "plunger", "equipment.starter", "both"),
            Map.of("kind", "motorcycle-sidecar", "linked-brakes", "yes", "rear-brake.type", "disc", "rear-brake.worked-by", "hydraulic", "rear-brake.discs", "1", "engine.ignition", "electronic",
                    "equipment.clutch", "hydraulic", "equipment.fuel-tap", "vacuum"));

    /** What a value takes away and how it is noticed. */
    private record Row(String field, String value, Set<String> removed, Set<String> keys, boolean otherLimit, Set<String> denied, boolean rare) {
        boolean takes() {
            return !removed.isEmpty() || otherLimit;
        }

        List<String> noticed() {
            List<String> by = new ArrayList<>();
            RULES.stream().filter(r -> r.field().equals(field) && r.asBuilt()).findFirst().ifPresent(r -> by.add("what it was built with"));
            if (rare) {
                by.add("it is rare");
            }
            if (!denied.isEmpty()) {
                by.add(denied.size() + " of " + keys.size() + " entries about it");
            }
            return by;
        }
    }

    private static final List<Row> ROWS = new ArrayList<>();

    @BeforeAll
    static void askEveryMachine() throws IOException {
        JobRecord lark = Examples.read("lark-released.yaml");
        List<JobRecord> bases = BASES.stream().map(values -> OtherMachine.bare(lark, machine(lark, values).orElseThrow())).toList();
        Map<JobRecord, Set<Required>> asked = new LinkedHashMap<>();
        bases.forEach(base -> asked.put(base, required(base)));
        for (String field : DescriptionField.names()) {
            for (String value : values(field)) {
                ROWS.add(row(field, value, bases, asked));
            }
        }
    }

    private static List<String> values(String field) {
        return switch (field) {
            case "top-speed" -> List.of("50 km/h", "90 km/h");
            case "engine.displacement" -> List.of("49 cc");
            case "volts" -> List.of("0", "6", "12", "24");
            case "engine-number" -> List.of();
            default -> DescriptionField.valuesOf(field);
        };
    }

    private static Optional<Machine> machine(JobRecord record, Map<String, String> values) {
        return OtherMachine.with(record, values, Examples.BOOK.vocabulary(), Examples.DAY);
    }

    private static Map<String, String> together(String field, String value) {
        Map<String, String> all = new TreeMap<>();
        if (field.endsWith("-brake.type")) {
            WITH.get("brake.type " + value).forEach((key, with) -> all.put(field.replace("type", key), with));
            if (value.equals("none")) {
                all.put("linked-brakes", "no");
            }
        }
        all.putAll(WITH.getOrDefault(field + " " + value, Map.of()));
        all.put(field, value);
        return all;
    }

    private static Set<Required> required(JobRecord record) {
        Conclusions concluded = Assessor.conclude(record, Examples.BOOK, Examples.DAY);
        return Examples.BOOK.cards().keySet().stream().flatMap(c -> concluded.required(c).stream()).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Row row(String field, String value, List<JobRecord> bases, Map<JobRecord, Set<Required>> asked) {
        Set<String> removed = new TreeSet<>();
        Set<String> keys = new TreeSet<>();
        Set<String> denied = new TreeSet<>();
        boolean otherLimit = false;
        boolean rare = false;
        for (JobRecord base : bases) {
            Optional<Machine> machine = machine(base, together(field, value));
            if (machine.isEmpty()) {
                continue;
            }
            JobRecord other = OtherMachine.bare(base, machine.get());
            Set<Required> now = required(other);
            Set<String> places = now.stream().map(r -> r.check() + " " + r.point()).collect(Collectors.toSet());
            Requirements requirements = new Requirements(Examples.BOOK, base, LocalDate.of(2026, 11, 25));
            Requirements then = new Requirements(Examples.BOOK, other, LocalDate.of(2026, 11, 25));
            Set<String> wanted = now.stream().flatMap(r -> then.wantedFor(r).stream()).map(Wanted::key).collect(Collectors.toSet());
            DescribedTimes times = new DescribedTimes(machine.get(), List.of(), RULES, other.form());
            for (Required before : asked.get(base)) {
                boolean gone = !places.contains(before.check() + " " + before.point());
                otherLimit |= !gone && !now.contains(before);
                if (gone) {
                    removed.add(before.check());
                    for (Wanted want : requirements.wantedFor(before)) {
                        if (!wanted.contains(want.key())) {
                            keys.add(want.key());
                            times.contradiction(entry(want.point(), want)).ifPresent(c -> denied.add(want.key()));
                        }
                    }
                }
            }
            Map<String, String> fields = machine.get().fields();
            rare |= RULES.stream().anyMatch(r -> r.field().equals(field) && !r.removedOn(fields).isEmpty());
            now.forEach(r -> then.wantedFor(r).forEach(want -> assertThat(times.contradiction(entry(want.point(), want)))
                    .as("%s: %s is asked %s at %s, and by its description has no such part", field, value, want.want().aspect(), want.point()).isEmpty()));
        }
        return new Row(field, value, removed, keys, otherLimit, denied, rare);
    }

    private static Entry entry(String point, Wanted want) {
        Moment at = new Moment(LocalDate.of(2026, 11, 24), null, java.time.ZoneOffset.UTC);
        Deed deed = want.want().weakest();
        return new Entry("e1", at, "ida", deed, point, want.want().aspect(), deed == Deed.DONE ? null : new Value.Code("x"), null, null, null, null, 0);
    }

    @Test
    void manyAreTried() {
        assertThat(ROWS).hasSizeGreaterThan(80);
        assertThat(ROWS.stream().filter(Row::takes)).hasSizeGreaterThan(50);
    }

    /** In a record that says what the machine was built with, no check falls away unseen. */
    @Test
    void whatTakesAChecksAwayIsNoticed() {
        assertThat(ROWS).filteredOn(row -> !row.removed.isEmpty() && !row.noticed().contains("what it was built with")).extracting(row -> row.field + ": " + row.value)
                // Mirrors come and go with the owner, and the law asks for them where it wants them, whatever is described.
                // Not every record says whether there is a generator; that there is none is rare, and has to be shown in any.
                .containsExactly("generator: no", "equipment.mirrors: 0");
    }

    @Test
    void aRareValueTakesSomethingAwayAndIsAskedForAsBuilt() {
        assertThat(RULES).filteredOn(rule -> !rule.field().equals("generator"))
                .allSatisfy(rule -> assertThat(rule.asBuilt() || rule.unusual().isEmpty()).as(rule.field()).isTrue());
        // The symbols that a lower speed lets pass are the tyres' own, so no check falls away by it.
        assertThat(ROWS).filteredOn(row -> row.rare && !row.takes()).extracting(row -> row.field + ": " + row.value).containsExactly("top-speed: 50 km/h");
    }

    @Test
    void thePageIsWhatTheRulesSay() throws IOException {
        StringBuilder page = new StringBuilder("""
                # What each field of the description takes away

                A check that does not apply to a machine is not asked of it, and the description decides which apply. So a field written by mistake can make checks fall away. This page lists, for \
                every field and value, the checks that are not asked because of it, on machines of several kinds, and what would notice a mistake. It is written by a test.

                - *What it was built with*: `machine.as-built` has to say it, from a document or by two people, and a difference without a dated change holds the machine (`record.description`, `record.as-built`).
                - *It is rare*: the value has to be shown in records of the first form as well; which machines it is usual on stands in `rules/evidence/description.yaml`.
                - *Entries about it*: so many of the entries that the checks asked for would not go with the description of their day (`record.description`). An entry that is not counted here is at a \
                place that such a machine may have all the same.

                | field | value | checks not asked because of it | would be noticed by |
                |---|---|---|---|
                """);
        for (Row row : ROWS) {
            if (row.takes()) {
                String gone = row.removed.isEmpty() ? "none; another limit" : row.removed.stream().map(c -> "`" + c + "`").collect(Collectors.joining(", ")) + (row.otherLimit ? "; another limit for others" : "");
                page.append("| `").append(row.field).append("` | ").append(row.value).append(" | ").append(gone).append(" | ")
                        .append(row.noticed().isEmpty() ? "nothing" : String.join("; ", row.noticed())).append(" |\n");
            }
        }
        if (Boolean.getBoolean("chock.approve")) {
            Files.writeString(PAGE, page);
        }
        assertThat(PAGE).as("write it with -Dtest=DescriptionFieldsTest -DargLine=-Dchock.approve=true").exists();
        assertThat(page.toString()).isEqualTo(Files.readString(PAGE));
    }
}

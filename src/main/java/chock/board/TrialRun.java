package chock.board;

import chock.assess.Assessment;
import chock.board.store.Kept;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.ReadAs;
import chock.record.Value;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * A run under a roof tried out: the record with what was typed in place of what it says of room, air, engine and plan,
 * judged as any record is, and kept nowhere. What has nothing to do with the air, people and meter, is supposed to be in
 * order, so that a figure can be given at all.
 */
record TrialRun(JobRecord record, Assessment assessment) {
    /**
     * What the form asks for.
     *
     * @param deed verb of the entry it stands for
     * @param kind of instrument that measures it, or null
     * @param unit meant by a bare number, or null
     */
    enum Ask {
        GOES("run-plan", "seen", "exhaust-goes", null, null), RUNS("run-plan", "seen", "planned-runs", null, null), SPEED("run-plan", "seen", "planned-speed", null, null),
        VOLUME("room", "measured", "volume", "tape-measure", "m³"), OPENINGS("room", "seen", "openings", null, null), AIRFLOW("room", "measured", "airflow", "anemometer", "m³/h"),
        MIXING("room", "measured", "mixing-factor", "tracer-gas-test", "times"), BACKGROUND("room/co-instrument", "measured", "background", "co-meter", "ppm"),
        EXHAUST("exhaust", "seen", "exhaust-data", null, null), SHARE("exhaust", "measured", "co-share", "exhaust-gas-analyser", "%"), RPM("exhaust", "measured", "exhaust-rpm", "tachometer", "rpm");

        final String point;
        final String deed;
        final String aspect;
        final String kind;
        final String unit;

        Ask(String point, String deed, String aspect, String kind, String unit) {
            this.point = point;
            this.deed = deed;
            this.aspect = aspect;
            this.kind = kind;
            this.unit = unit;
        }

        String key() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        /** What the record says last of it, or nothing. */
        String said(JobRecord record) {
            Set<String> corrected = record.entries().stream().map(Entry::corrects).filter(java.util.Objects::nonNull).collect(Collectors.toSet());
            return record.entries().stream().filter(e -> point.equals(e.point()) && aspect.equals(e.what()) && e.is() != null && !corrected.contains(e.id()))
                    .max(java.util.Comparator.comparing(e -> e.at().earliest())).map(e -> e.is() instanceof Value.Amount amount ? amount.measured().value().toString() : e.is().toString()).orElse("");
        }

        /** As it is written into an entry: a bare number is meant in the unit printed beside it. */
        String written(String typed) {
            String is = typed.strip();
            return unit != null && is.matches("[0-9]+([.,][0-9]+)?") ? is.replace(',', '.') + " " + unit : is;
        }
    }

    /** Each with its point, verb, aspect and answer. */
    private static final List<String[]> IN_ORDER = List.of(new String[] {"room", "seen", "people", "staff-only"}, new String[] {"room", "seen", "adjoining-rooms", "none"}, new String[] {"room", "seen", "way-out", "clear"}, new String[] {"room", "seen", "other-engines", "none-running"},
            new String[] {"room/co-instrument", "seen", "meter-kind", "direct-reading"}, new String[] {"room/co-instrument", "tried", "bump-test", "passed"}, new String[] {"room/co-instrument", "seen", "meter-height", "breathing"});

    /**
     * @param typed by {@link Ask}; what is empty is not said
     * @throws chock.record.UnusableInput when something typed would be refused in a record
     */
    static TrialRun of(Kept kept, JobRecord record, Map<Ask, String> typed, Judging judging, Instant now) {
        List<ObjectNode> added = new ArrayList<>();
        ObjectNode sheet = kept.sheet().deepCopy();
        sheet.putArray("claims");
        Function<String[], ObjectNode> entry = words -> sheet.objectNode().put("id", "trial-" + (added.size() + 1)).put("at", now.atZone(record.zone()).toLocalDateTime().toString().substring(0, 16).replace('T', ' '))
                .put("by", record.people().get(0).id()).put("point", words[0]).put(words[1], words[2]).put("is", words[3]);
        for (Ask ask : counts(typed)) {
            ObjectNode one = entry.apply(new String[] {ask.point, ask.deed, ask.aspect, ask.written(typed.get(ask))});
            if (ask.kind != null) {
                one.put("with", instrument(record, sheet, ask.kind, now));
            }
            added.add(one);
        }
        List<String[]> supposed = new ArrayList<>(IN_ORDER);
        if ("fan-running".equals(typed.get(Ask.OPENINGS))) {
            supposed.add(new String[] {"room", "tried", "fan", "moves-air-to-outdoors"});
        }
        if ("measured".equals(typed.get(Ask.EXHAUST))) {
            supposed.add(new String[] {"run-plan", "seen", "engine-at-start", "warm"});
        }
        supposed.forEach(words -> added.add(entry.apply(words)));
        List<ObjectNode> left = without(kept.entries(), supposed);
        JobRecord trial = judging.read(new Kept(kept.id(), kept.version(), sheet, left).with(sheet, added), now, ReadAs.withEntriesFrom(left.size()));
        return new TrialRun(trial, judging.assess(trial, List.of(Gate.INDOOR_RUN), now));
    }

    private static List<Ask> counts(Map<Ask, String> typed) {
        return java.util.Arrays.stream(Ask.values()).filter(ask -> !typed.getOrDefault(ask, "").isBlank())
                .filter(ask -> ask != Ask.AIRFLOW || "fan-running".equals(typed.get(Ask.OPENINGS)))
                .filter(ask -> ask != Ask.SHARE && ask != Ask.RPM || "measured".equals(typed.get(Ask.EXHAUST))).toList();
    }

    /** The entries less those that speak of what was typed or is supposed, and whatever corrects one of these. */
    private static List<ObjectNode> without(List<ObjectNode> entries, List<String[]> supposed) {
        Set<String> keys = new HashSet<>();
        java.util.Arrays.stream(Ask.values()).forEach(ask -> keys.add(ask.point + " " + ask.aspect));
        supposed.forEach(words -> keys.add(words[0] + " " + words[2]));
        Set<String> gone = new HashSet<>();
        List<ObjectNode> left = new ArrayList<>();
        for (ObjectNode entry : entries) {
            boolean replaced = List.of("measured", "tried", "seen", "told", "assumed").stream().anyMatch(deed -> entry.has(deed) && keys.contains(entry.path("point").textValue() + " " + entry.get(deed).textValue()));
            if (replaced || entry.has("corrects") && gone.contains(entry.get("corrects").textValue())) {
                gone.add(entry.get("id").textValue());
            } else {
                left.add(entry);
            }
        }
        return left;
    }

    /** One of this kind that is in calibration; where there is none, one as good as its kind is believed to be. */
    private static String instrument(JobRecord record, ObjectNode sheet, String kind, Instant now) {
        LocalDate today = now.atZone(record.zone()).toLocalDate();
        return record.instruments().stream().filter(i -> i.kind().equals(kind) && !i.due().isBefore(today) && !i.calibrated().isAfter(today)).findFirst().map(Instrument::id).orElseGet(() -> {
            String id = "trial-" + kind;
            ((ArrayNode) sheet.get("instruments")).addObject().put("id", id).put("kind", kind).put("uncertainty", "by-kind").put("calibrated", today.toString()).put("due", today.toString());
            return id;
        });
    }

    /** What the form starts with: the record's own words, and where it has none the plain case. */
    static Map<Ask, String> start(JobRecord record) {
        Map<Ask, String> start = new LinkedHashMap<>();
        Map<Ask, String> plain = Map.of(Ask.GOES, "into-the-room", Ask.RUNS, "2on", Ask.SPEED, "idle", Ask.OPENINGS, "shut", Ask.BACKGROUND, "0 ppm", Ask.EXHAUST, "not-measured");
        for (Ask ask : Ask.values()) {
            String said = ask.said(record);
            start.put(ask, said.isEmpty() || said.equals("unknown") ? plain.getOrDefault(ask, "") : said);
        }
        return start;
    }
}

package chock.rulebook;

import chock.quantity.Quantity;
import chock.record.JobRecord;
import chock.record.LocalLaw;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The law of a place that is not in the rule book, as one record has it. It is asked of the record each time and never kept with the rule book. */
final class RecordedLaw {
    private RecordedLaw() { }

    /** The same as a local code: it can only be stricter than what is known without it. */
    static LocalCode code(JobRecord record) {
        Map<String, Source> none = new LinkedHashMap<>();
        record.localLaw().setsNone().forEach(line -> none.put(line.limit(), source(line, record)));
        return new LocalCode(record.territory(), record.territory(), false, List.of(), List.of(), record.localLaw().limits().stream().map(line -> limit(line, record)).toList(), none);
    }

    private static Limit limit(LocalLaw.Line line, JobRecord record) {
        Limit.Sense sense = line.atLeast() == null ? Limit.Sense.AT_MOST : line.atMost() == null ? Limit.Sense.AT_LEAST : Limit.Sense.BETWEEN;
        Quantity value = line.atLeast() == null ? line.atMost() : line.atLeast();
        return new Limit(line.limit(), null, sense, value, sense == Limit.Sense.BETWEEN ? line.atMost() : null, true, null, Limit.ALWAYS, null, null, null, null,
                source(line, record), line.asOf(), Limit.Maker.NONE, false, record.territory(), record.id(), 0);
    }

    private static Source source(LocalLaw.Line line, JobRecord record) {
        String readers = record.nameOf(line.by()) + (line.isSeconded() ? " and " + record.nameOf(line.secondedBy()) : " alone");
        return new Source(Source.Kind.LAW, line.document(), line.section() + ", text of " + line.asOf() + ", read by " + readers, Source.Known.RECORDED);
    }

    /** {@code Vehicle Order 1967 (text of 2024-12-31), read by Ida Marrow, seconded by Tom Fell}: each document once for each day and readers. */
    static String words(JobRecord record) {
        return record.localLaw().lines().stream().sorted(Comparator.comparing(LocalLaw.Line::document).thenComparing(LocalLaw.Line::asOf))
                .map(line -> line.document() + " (text of " + line.asOf() + "), read by " + record.nameOf(line.by())
                        + (line.isSeconded() ? ", seconded by " + record.nameOf(line.secondedBy()) : ", seconded by nobody")).distinct().collect(Collectors.joining("; "));
    }
}

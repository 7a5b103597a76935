package chock.board;

import chock.board.store.Store;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Entry;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.Vocabulary;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the readings of a round are taken with: instruments of the record that are in calibration today. */
final class BenchInstruments {
    private final Store store;
    private final Vocabulary words;

    BenchInstruments(Store store, Vocabulary words) {
        this.store = store;
        this.words = words;
    }

    List<Instrument> fit(JobRecord record, Unit.Dimension dimension, LocalDate today) {
        return record.instruments().stream().filter(one -> !one.due().isBefore(today) && kind(one).leastUncertainty().containsKey(dimension)).toList();
    }

    private Vocabulary.InstrumentKind kind(Instrument one) {
        return words.instruments().get(one.kind());
    }

    /** The one this person took for it last, else the one it was last read with here, else the only one that reads it; empty where none of these is in calibration. */
    String usual(JobRecord record, String account, BenchQuestion question, LocalDate today) {
        List<Instrument> fit = fit(record, question.dimension(), today);
        Optional<String> habit = store.read(lines -> lines.accounts().habit(account, question.what()));
        Optional<String> last = habit.or(() -> record.entries().stream().filter(e -> question.what().equals(e.what()) && e.with() != null).reduce((a, b) -> b).map(Entry::with));
        return last.filter(id -> fit.stream().anyMatch(one -> one.id().equals(id))).orElse(fit.size() == 1 ? fit.get(0).id() : "");
    }

    /** The kinds of reading among these questions, each with what it is usually read with. */
    Map<BenchQuestion, String> kinds(List<BenchQuestion> questions, JobRecord record, String account, LocalDate today) {
        Map<BenchQuestion, String> kinds = new LinkedHashMap<>();
        questions.stream().filter(BenchQuestion::namesInstrument).filter(question -> kinds.keySet().stream().noneMatch(one -> one.what().equals(question.what())))
                .forEach(question -> kinds.put(question, usual(record, account, question, today)));
        return kinds;
    }

    static String words(Instrument one) {
        return one.id() + (one.id().equals(one.kind()) ? "" : ", " + one.kind().replace('-', ' ')) + (one.uncertainty() == null ? "" : ", ± " + one.uncertainty());
    }

    /** U (k = 2) of a reading of about this size, or null where its kind says none. */
    Quantity uncertainty(Instrument one, Quantity reading) {
        boolean own = one.uncertainty() != null && one.uncertainty().unit().dimension() == reading.unit().dimension();
        return own ? one.uncertainty() : kind(one).leastOf(reading).orElse(null);
    }
}

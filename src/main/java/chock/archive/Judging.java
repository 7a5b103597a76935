package chock.archive;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Impact;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.rulebook.RuleBook;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.function.Function;

/**
 * Judges lines out of many, each by itself: the bytes of one job record in JSON go in, what came of it comes out. The same
 * line under the same terms comes to the same, wherever and however often it is judged. May be used by several threads.
 */
public final class Judging {
    /** Bytes of the longest line; the same bound as for a record in a file of its own. */
    public static final int LONGEST_LINE = 5_000_000;
    private static final String ADVICE = "Write one job record a line";
    /** Late enough that no entry lies in the future; for a record that is refused for naming no zone. */
    private static final Instant LATE = Instant.parse("9999-12-30T00:00:00Z");

    private final RuleBook book;
    private final AsOf asOf;
    private final List<Gate> gates;

    /**
     * @param book the rule book in force
     * @param asOf the moment of judgement
     * @param gates the gates to judge, or null for those that each record seeks
     */
    public Judging(RuleBook book, AsOf asOf, List<Gate> gates) {
        this.book = book;
        this.asOf = asOf;
        this.gates = gates;
    }

    /** A record and the moment it is judged at. */
    public record Read(JobRecord record, Instant asOf) { }

    /**
     * A record that was opened, read to its end.
     *
     * @throws UnusableInput when it cannot be used
     */
    public Read read(RecordReader.Opened opened) {
        Instant when = asOf.instant() != null ? asOf.instant() : opened.zone().map(asOf::in).orElse(LATE);
        return new Read(book.heldAgainstRegister(opened.read(book.vocabulary(), when), when), when);
    }

    /**
     * Judges one line as it stands, without looking ahead.
     *
     * @param where how the line is called in messages
     * @param line its bytes without a line end, or null when there are more of them than {@link #LONGEST_LINE}
     */
    public Outcome<Assessment> assess(String where, byte[] line) {
        return each(where, line, read -> Assessor.assess(read.record, book, asked(read), read.asOf));
    }

    /** Judges one line twice, under this rule book and under another: one result for each gate. */
    public Outcome<List<Impact>> compare(String where, byte[] line, RuleBook other) {
        return each(where, line, read -> Impact.of(read.record, book, other, asked(read), read.asOf));
    }

    private List<Gate> asked(Read read) {
        return List.copyOf(new LinkedHashSet<>(gates == null ? read.record.seeks() : gates));
    }

    private <T> Outcome<T> each(String where, byte[] line, Function<Read, T> judge) {
        try {
            return Outcome.of(judge.apply(read(RecordReader.open(where, sound(where, line)))));
        } catch (UnusableInput e) {
            return Outcome.refused(e);
        } catch (RuntimeException | StackOverflowError e) {
            return Outcome.failed(e);
        }
    }

    private static byte[] sound(String where, byte[] line) {
        if (line == null || line.length > LONGEST_LINE) {
            throw UnusableInput.of(where, "it is longer than 5 MB", ADVICE);
        }
        if (new String(line, StandardCharsets.ISO_8859_1).isBlank()) {
            throw UnusableInput.of(where, "it is empty", ADVICE);
        }
        return line;
    }
}

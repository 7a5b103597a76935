package chock.cli;

import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import java.time.Instant;

/**
 * Reads job records for judgement.
 *
 * @param asOf the moment as the user gave it, or null for now
 */
record Records(Bench bench, RuleBook book, AsOf asOf) {
    /** Late enough that no entry lies in the future; used only to learn the zone a record is kept in. */
    private static final Instant LATE = Instant.parse("9999-12-30T00:00:00Z");

    /** A record and the moment it is judged at. */
    record Read(JobRecord record, Instant asOf) { }

    /**
     * The record in a file, or on standard input for {@code -}.
     *
     * @throws chock.record.UnusableInput when it cannot be used
     */
    Read read(String file) {
        byte[] bytes = bench.read(file);
        AsOf moment = asOf == null ? new AsOf(bench.clock().instant(), null) : asOf;
        Instant when = moment.instant() != null ? moment.instant() : moment.in(RecordReader.read(Bench.name(file), bytes, book.vocabulary(), LATE).zone());
        return new Read(RecordReader.read(Bench.name(file), bytes, book.vocabulary(), when), when);
    }
}

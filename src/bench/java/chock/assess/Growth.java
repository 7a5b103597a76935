package chock.assess;

import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.RecordReader;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** How the cost of one judgement grows: with the entries of a record, and with the checks of a rule book. Prints a table. */
public final class Growth {
    private static final Instant DAY = Instant.parse("2026-11-25T12:00:00Z");

    private Growth() { }

    public static void main(String[] args) throws IOException {
        RuleBook book = RuleBook.shipped();
        JobRecord merle = RecordReader.read("merle", Files.readAllBytes(Path.of("docs/examples/merle-released.yaml")), book.vocabulary(), DAY);
        System.out.println("entries    ms a judgement");
        for (int entries : new int[] {10, 100, 400, 1_000, 3_000, 10_000}) {
            System.out.printf("%7d    %.1f%n", entries, milliseconds(grown(merle, entries), book));
        }
        System.out.println("checks     ms a judgement");
        int shipped = book.cards().size();
        for (int times : new int[] {1, 2, 4, 8}) {
            RuleBook more = times == 1 ? book : book.with(house(shipped * (times - 1)));
            System.out.printf("%6d     %.1f%n", more.cards().size(), milliseconds(merle, more));
        }
    }

    /** So many entries: those there are, and then the same again, written in earlier years. */
    private static JobRecord grown(JobRecord whole, int entries) {
        List<Entry> all = new ArrayList<>();
        for (int i = 0; i < entries; i++) {
            Entry e = whole.entries().get(whole.entries().size() - 1 - i % whole.entries().size());
            int round = i / whole.entries().size();
            Moment at = new Moment(e.at().date().minusYears(round), e.at().time(), e.at().zone());
            all.add(round == 0 ? e : new Entry(e.id() + "-" + round, at, e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(), null, null, null, 0));
        }
        return RandomRecords.with(whole, all);
    }

    /** A house that asks for so much more, each of every machine. */
    private static HouseBook house(int checks) throws IOException {
        Path folder = Files.createTempDirectory("house");
        Files.writeString(folder.resolve("house.yaml"), "name: Bench\n");
        StringBuilder cards = new StringBuilder();
        for (int i = 0; i < checks; i++) {
            cards.append("""
                    - id: house.look-%d
                      question: Has somebody looked at part %d?
                      applies: every machine
                      asked-of: every machine
                      gates: [road-test]
                      critical: no
                      place: machine/part-%d
                      wants:
                        - {seen: condition-%d, good: [sound], bad: [worn]}
                      holds: 12 months
                      undone-by: []
                      remedy: Look at it.
                    """.formatted(i, i, i, i));
        }
        Files.writeString(folder.resolve("checks.yaml"), cards);
        return HouseBook.read(folder);
    }

    private static double milliseconds(JobRecord record, RuleBook book) {
        List<Gate> gates = record.seeks();
        for (long end = System.nanoTime() + 3_000_000_000L; System.nanoTime() < end; ) {
            Assessor.assess(record, book, gates, DAY);
        }
        int times = 0;
        long start = System.nanoTime();
        while (System.nanoTime() - start < 3_000_000_000L) {
            Assessor.assess(record, book, gates, DAY);
            times++;
        }
        return (System.nanoTime() - start) / 1e6 / times;
    }
}

package chock.assess;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.DescribedTimes;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.Value;
import chock.record.Vocabulary;
import chock.rulebook.Card;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/** The demo records, each time with other entries gone, older, worse, or with more work on top. */
final class RandomRecords {
    /** How many a test judges; {@code -Dchock.records=10000} for the long run. */
    static final int COUNT = Integer.getInteger("chock.records", 0);
    private static final Set<String> OFF_MACHINE = Set.of("ride", "rider", "outdoors", "workshop");
    private static final List<JobRecord> WHOLE = whole();

    private final Random random;

    RandomRecords(long seed) {
        this.random = new Random(seed);
    }

    private static List<JobRecord> whole() {
        List<JobRecord> all = new ArrayList<>();
        for (String name : List.of("merle-released.yaml", "lark-released.yaml", "harrow-prewar-single.yaml", "lark-on-show.yaml", "lark-non-runner.yaml")) {
            try {
                all.add(Examples.read(name));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return all;
    }

    /** True in the long run. */
    static boolean many() {
        return COUNT > 0;
    }

    /** Runs a property for fixed seeds and one that is new each time, which a failure names; in the long run on all cores. */
    static void forSeeds(int ordinarily, IntConsumer property) {
        IntStream seeds = IntStream.rangeClosed(1, many() ? COUNT : ordinarily);
        (many() ? seeds.parallel() : seeds).forEach(seed -> tried(seed, property));
        tried(new Random().nextInt(1_000_000_000), property);
    }

    private static void tried(int seed, IntConsumer property) {
        try {
            property.accept(seed);
        } catch (AssertionError | RuntimeException e) {
            throw new AssertionError("for the random record of seed " + seed + ": " + e.getMessage(), e);
        }
    }

    JobRecord next() {
        JobRecord whole = WHOLE.get(random.nextInt(WHOLE.size()));
        List<Entry> entries = new ArrayList<>(whole.entries());
        boolean complete = random.nextInt(4) == 0;
        double kept = complete ? 1 : random.nextInt(4) == 0 ? random.nextDouble() : 1 - random.nextDouble() * 0.1;
        entries.removeIf(e -> random.nextDouble() > kept);
        int changes = random.nextInt(4);
        int works = random.nextInt(3);
        boolean nothingElse = complete && changes == 1 && works == 0;
        for (int i = changes; i > 0 && !entries.isEmpty(); i--) {
            int at = random.nextInt(entries.size());
            entries.set(at, random.nextInt(3) == 0 ? older(entries.get(at)) : worse(entries.get(at), nothingElse));
        }
        for (int i = works; i > 0; i--) {
            entries.add(work(whole, i));
        }
        return with(whole, entries);
    }

    static JobRecord with(JobRecord r, List<Entry> entries) {
        return r.withEntries(List.copyOf(entries));
    }

    private Entry older(Entry e) {
        Moment then = new Moment(e.at().date().minusDays(1 + random.nextInt(400)), e.at().time(), e.at().zone());
        return new Entry(e.id(), then, e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(), null, null, null, 0);
    }

    /** The other answer, or another amount. What is no part of the machine stays: no work puts the weather right. */
    private Entry worse(Entry e, boolean nothingElse) {
        Value is = e.is();
        // An amount that counts together with others shows its fault when those are there, and no order can know before.
        List<Card.Want> wants = Examples.BOOK.cards().values().stream().flatMap(c -> c.wants().stream()).filter(w -> w.aspect().equals(e.what())).toList();
        boolean hidden = is instanceof Value.Amount && !nothingElse && (wants.isEmpty() || !wants.stream().allMatch(Card.Want::judged));
        if (hidden || OFF_MACHINE.contains(e.point())) {
            return e;
        }
        if (is instanceof Value.Answer answer) {
            List<String> bad = new ArrayList<>(new TreeSet<>(badAnswers(e.what())));
            is = bad.isEmpty() ? answer : new Value.Answer(bad.get(random.nextInt(bad.size())));
        } else if (is instanceof Value.Amount amount) {
            Quantity value = amount.measured().value();
            BigDecimal factor = BigDecimal.valueOf(random.nextInt(300)).movePointLeft(2);
            is = new Value.Amount(new Measured(value.times(factor), amount.measured().uncertainty()));
        }
        return new Entry(e.id(), e.at(), e.by(), e.deed(), e.point(), e.what(), is, e.with(), null, null, null, 0);
    }

    private static Set<String> badAnswers(String aspect) {
        Set<String> bad = new HashSet<>();
        Examples.BOOK.cards().values().stream().flatMap(c -> c.wants().stream()).filter(w -> w.aspect().equals(aspect)).map(Card.Want::bad).forEach(bad::addAll);
        return bad;
    }

    private Entry work(JobRecord record, int number) {
        Vocabulary words = Examples.BOOK.vocabulary();
        // Work on a part that the machine does not have is no random work but a contradiction, which no order of work settles.
        DescribedTimes times = new DescribedTimes(record.machine(), List.of(), words.fields(), record.form());
        List<String> points = words.points().stream().filter(p -> !OFF_MACHINE.contains(p) && !p.equals("machine"))
                .filter(p -> times.contradiction(new Entry("any", record.entries().get(0).at(), "tom", chock.record.Deed.DONE, p, "opened", null, null, null, null, null, 0)).isEmpty()).toList();
        List<String> works = new ArrayList<>(new TreeSet<>(words.works().keySet()));
        Moment at = new Moment(Examples.DAY.atZone(record.zone()).toLocalDate(), java.time.LocalTime.of(11, 10 * number), record.zone());
        return new Entry("more" + number, at, record.people().get(0).id(), chock.record.Deed.DONE, points.get(random.nextInt(points.size())), works.get(random.nextInt(works.size())), null, null, null, null, null, 0);
    }
}

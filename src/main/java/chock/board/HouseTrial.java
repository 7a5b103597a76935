package chock.board;

import chock.assess.Impact;
import chock.board.store.Store;
import chock.record.UnusableInput;
import chock.rulebook.HouseBook;
import chock.rulebook.Limit;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.node.TextNode;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A tighter limit of the house tried out: loaded as the house folder would be, so that what is refused there is refused
 * here, and held against every machine. It changes neither the folder nor any verdict.
 */
final class HouseTrial implements AutoCloseable {
    /** Machines judged at most in one go; with more, {@code chock impact} does it away from the board. */
    static final int MOST = 300;
    private static final Duration KEPT = Duration.ofMinutes(10);

    private final Store store;
    private final Shop shop;
    private final Judging judging;
    private final Clock clock;
    private final ZoneId zone;
    /** One at a time: it takes much of what the board has. */
    private final Beside beside = new Beside("trying a limit");
    private Running last;

    HouseTrial(Store store, Shop shop, Judging judging, Clock clock, ZoneId zone) {
        this.store = store;
        this.shop = shop;
        this.judging = judging;
        this.clock = clock;
        this.zone = zone;
    }

    ZoneId zone() {
        return zone;
    }

    /**
     * A limit as it is typed.
     *
     * @param value such as {@code 2.5 mm}, or {@code 2 mm to 3 mm} for a limit with two ends
     */
    record Wish(String limit, String value, boolean passesAtLimit, String reason, String author, String house) { }

    /**
     * What it would do.
     *
     * @param what in words: the limit, its value then and its value now
     * @param house the house with it
     * @param impacts one for each machine and gate that was judged
     * @param all how many machines the shop has
     * @param asOf the moment of judgement
     */
    record Done(String what, HouseBook house, List<Impact> impacts, int judged, int all, Instant asOf) { }

    /** The limits that have a number to tighten, by id. */
    static List<Limit> limits(RuleBook book) {
        return book.limits().stream().filter(l -> l.sense() != Limit.Sense.MAKER_ONLY && !l.id().startsWith("house."))
                .collect(Collectors.toMap(Limit::id, l -> l, (a, b) -> a.from().isAfter(b.from()) ? a : b)).values().stream().sorted(Comparator.comparing(Limit::id)).toList();
    }

    static Optional<Limit> limit(RuleBook book, String id) {
        return limits(book).stream().filter(l -> l.id().equals(id)).findFirst();
    }

    /** In words, such as {@code at least 1.5 mm}. */
    static String words(Limit limit) {
        return limit.sense() == Limit.Sense.WITHIN ? "within " + limit.value() + " of the maker's figure" : limit.bounds().words();
    }

    /**
     * The house with the wish among its limits, sound by the rule book.
     *
     * @throws UnusableInput when it would loosen, or cannot be read; both numbers are named
     */
    RuleBook with(Wish wish) {
        Limit base = limit(judging.book(), wish.limit()).orElseThrow(() -> UnusableInput.of("limit", "the rule book has no limit '" + wish.limit() + "' with a number", "Choose one from the list"));
        String value = wish.value().strip();
        if (value.isEmpty() || wish.reason().isBlank()) {
            throw UnusableInput.of("limit", value.isEmpty() ? "no value is written" : "no reason is written", value.isEmpty() ? "Write one, such as " + base.value() : "Say why the house asks for more");
        }
        List<String> ends = Stream.of(value.split("\\s+to\\s+")).map(end -> quoted(end.strip())).toList();
        String row = "- id: " + wish.limit() + "\n  sense: " + base.sense().key() + "\n  value: " + (base.sense() == Limit.Sense.BETWEEN ? "[" + String.join(", ", ends) + "]" : quoted(value))
                + "\n  at-limit: " + (wish.passesAtLimit() ? "passes" : "fails") + "\n  reason: " + quoted(wish.reason().strip()) + "\n  author: " + quoted(wish.author()) + "\n  date: " + clock.instant().atZone(zone).toLocalDate() + "\n";
        HouseBook house = judging.book().house().orElseGet(() -> HouseBook.named(wish.house().isBlank() ? "House rules" : wish.house().strip()));
        RuleBook bare = judging.book().house().isEmpty() ? judging.book() : RuleBook.shipped().at(judging.book().position());
        return bare.with(house.withLimits(row));
    }

    private static String quoted(String text) {
        return TextNode.valueOf(text).toString();
    }

    /**
     * Judges every machine twice, by the rules in force and by the others, beside whatever else the board does. The answer
     * is kept for some minutes, so that asking again fetches it.
     *
     * @param wait how long to wait for it
     * @return what it would do, or how many machines are judged so far
     * @throws UnusableInput when it would loosen, or cannot be read
     * @throws Refusal when somebody else is trying one
     */
    Asked ask(Wish wish, Duration wait) {
        Running mine = running(wish);
        return new Asked(Beside.within(mine.done, wait).orElse(null), mine.judged.get(), mine.of);
    }

    /** @param done what it would do, or null while only so many of the machines are judged */
    record Asked(Done done, int judged, int of) { }

    private static final class Running {
        private final Wish wish;
        private final Instant began;
        private final int of;
        private final AtomicInteger judged = new AtomicInteger();
        private CompletableFuture<Done> done;

        Running(Wish wish, Instant began, int of) {
            this.wish = wish;
            this.began = began;
            this.of = of;
        }
    }

    private synchronized Running running(Wish wish) {
        Instant now = clock.instant();
        if (last != null && last.wish.equals(wish) && !last.done.isCompletedExceptionally() && last.began.plus(KEPT).isAfter(now)) {
            return last;
        }
        RuleBook other = with(wish);
        if (last != null && !last.done.isDone()) {
            throw new Refusal(429, "Somebody is trying a limit at this moment. Wait a little, then ask again.", 5);
        }
        List<String> ids = store.read(lines -> lines.records().ids());
        Running next = new Running(wish, now, Math.min(MOST, ids.size()));
        next.done = beside.begin(() -> judged(next, other, ids));
        last = next;
        return next;
    }

    private Done judged(Running running, RuleBook other, List<String> ids) {
        List<Impact> impacts = new ArrayList<>();
        for (String id : ids.stream().limit(MOST).toList()) {
            shop.find(id).map(kept -> judging.read(kept, running.began)).ifPresent(record -> impacts.addAll(Impact.of(record, judging.book(), other, record.seeks(), running.began)));
            running.judged.incrementAndGet();
        }
        String id = running.wish.limit();
        Limit then = tightened(other, id).orElseThrow();
        String now = tightened(judging.book(), id).map(l -> words(l) + " (the house's own)").orElseGet(() -> words(limit(judging.book(), id).orElseThrow()));
        return new Done(id + ": " + words(then) + " instead of " + now, other.house().orElseThrow(), impacts, running.of, ids.size(), running.began);
    }

    private static Optional<Limit> tightened(RuleBook book, String id) {
        return book.tightened().stream().filter(l -> l.id().equals(id)).max(Comparator.comparing(Limit::from));
    }

    @Override
    public void close() {
        beside.close();
    }
}

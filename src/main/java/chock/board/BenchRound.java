package chock.board;

import chock.assess.OrderOfWork;
import chock.assess.OrderOfWork.Step;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.report.SessionSheet;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A round at the bench: one person, one machine, one gate. What is asked next is read off an order of work, which supposes good
 * results; as soon as a result is not so, or somebody else writes, the order is worked out anew. A round proves nothing: each
 * answer is an entry, and the rules judge entries.
 */
final class BenchRound {
    /** How long an order is trusted though nothing was written: what holds for hours may have run out. */
    private static final long TRUSTED_SECONDS = 1200;

    final String name;
    final Gate gate;
    final boolean byPlace;
    final Set<String> parts;
    /** What each kind of reading is taken with, as this person chose it. */
    final Map<String, String> with = new HashMap<>();
    final Set<String> skipped = new LinkedHashSet<>();
    /** Ids of the entries written in this round. */
    final List<String> written = new ArrayList<>();
    /** What the last act did, in words. */
    String told = "";
    boolean fault;
    /** Counts what was sent, so that nothing is taken twice. */
    int turn;
    private String sent = "";
    private List<List<Step>> screens = List.of();
    private List<Step> elsewhere = List.of();
    private List<String> cycle = List.of();
    private final Set<String> done = new LinkedHashSet<>();
    private final Map<String, String> cautions = new HashMap<>();
    private long version = -1;
    private Instant workedOut = Instant.MIN;

    BenchRound(String name, Gate gate, boolean byPlace, Set<String> parts) {
        this.name = name;
        this.gate = gate;
        this.byPlace = byPlace;
        this.parts = Set.copyOf(parts);
    }

    /** Whether the order was worked out for this version, not long ago, and still has something to ask. */
    boolean isCurrent(long seen, Instant now) {
        return version == seen && now.isBefore(workedOut.plusSeconds(TRUSTED_SECONDS)) && !screen().isEmpty();
    }

    void workOut(JobRecord record, RuleBook book, long seen, Instant now) {
        OrderOfWork order = OrderOfWork.of(record, book, gate, now);
        screens = screens(order, byPlace, book).stream().map(screen -> screen.stream().filter(step -> isIn(parts).test(step) && isNotProven(step) && isMine(step) && BenchQuestion.isFor(step)).toList()).filter(screen -> !screen.isEmpty()).toList();
        elsewhere = order.steps().stream().filter(isIn(parts)).filter(step -> isNotProven(step) && (!isMine(step) || !BenchQuestion.isFor(step))).toList();
        cycle = order.cycle();
        done.clear();
        version = seen;
        workedOut = now;
    }

    static List<List<Step>> screens(OrderOfWork order, boolean byPlace, RuleBook book) {
        return byPlace ? SessionSheet.byPlace(order, book) : order.together();
    }

    /** Everything, where no part was chosen. */
    private static Predicate<Step> isIn(Set<String> parts) {
        return step -> parts.isEmpty() || parts.contains(part(step));
    }

    static String part(Step step) {
        return step.point().replaceFirst("/.*", "");
    }

    /** What later work will undo is asked again once that work is written, and not before. */
    private static boolean isNotProven(Step step) {
        return !step.again();
    }

    /** What somebody else has to look at is left to somebody else. */
    private boolean isMine(Step step) {
        return step.notBy() == null || !step.notBy().isEmpty() && !step.notBy().equals(name);
    }

    /** What is on the screen now; empty when nothing is left. */
    List<Step> screen() {
        return screens.stream().map(screen -> screen.stream().filter(this::isOpen).toList()).filter(screen -> !screen.isEmpty()).findFirst().orElse(List.of());
    }

    /** The screen with these questions, wherever it is in the round now; empty where they are no longer asked. */
    List<Step> screen(String keys) {
        return screens.stream().map(screen -> screen.stream().filter(this::isOpen).toList()).filter(screen -> keys(screen).equals(keys)).findFirst().orElse(List.of());
    }

    static String keys(List<Step> screen) {
        return screen.stream().map(BenchRound::key).collect(Collectors.joining("\n"));
    }

    boolean isWorkedOutFor(long seen) {
        return version == seen;
    }

    private boolean isOpen(Step step) {
        return !done.contains(key(step)) && !skipped.contains(key(step));
    }

    static String key(Step step) {
        return chock.record.Entry.key(step.point(), step.what());
    }

    int left() {
        return (int) screens.stream().filter(screen -> screen.stream().anyMatch(this::isOpen)).count();
    }

    List<Step> elsewhere() {
        return elsewhere;
    }

    List<String> cycle() {
        return cycle;
    }

    /** A caution is read once for each part; it stays on the screen that showed it first. */
    List<String> cautions(List<Step> screen) {
        String here = key(screen.get(0));
        return screen.stream().filter(step -> step.caution() != null).filter(step -> cautions.computeIfAbsent(part(step) + " " + step.caution(), none -> here).equals(here)).map(Step::caution).distinct().toList();
    }

    /** Whether this was sent before: a second tap, or a page gone back to and sent again. */
    boolean isSentAgain(String form) {
        return !form.isEmpty() && form.equals(sent);
    }

    /**
     * Goes on to the next screen.
     *
     * @param form what named this sending
     * @param answered keys that were written
     * @param left keys that were left out
     * @param seen version of the record now
     * @param asSupposed whether what was written is as the order supposes
     */
    void goOn(String form, Set<String> answered, Set<String> left, long seen, boolean asSupposed) {
        sent = form;
        turn++;
        done.addAll(answered);
        skipped.addAll(left);
        version = asSupposed ? seen : -1;
    }

    /** Asks again what was left out. */
    void again() {
        skipped.clear();
        version = -1;
    }

    /** Open questions for each part, in order. */
    static Map<String, Long> counts(OrderOfWork order) {
        return order.steps().stream().filter(BenchQuestion::isFor).collect(Collectors.groupingBy(BenchRound::part, LinkedHashMap::new, Collectors.counting()));
    }
}

package chock.assess.facts;

import chock.figure.Daylight;
import chock.quantity.Bounds;
import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Moment;
import chock.record.Value;
import chock.record.Vocabulary.Form;
import chock.rulebook.Assembled;
import chock.rulebook.Assembled.Implied;
import chock.rulebook.Assembly;
import chock.rulebook.Card;
import chock.rulebook.Holds;
import chock.rulebook.LaidOut;
import chock.rulebook.LimitFor;
import chock.rulebook.Coordinates;
import chock.rulebook.Touch;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * One piece of evidence a required check wants, at its place.
 *
 * @param required what it is for
 * @param card the check
 * @param want what is wanted
 * @param point where
 * @param key point and aspect together
 * @param laid what undoes it elsewhere, and what leaves it untouched
 * @param disturbing works that undo whatever lies on or below the part worked on
 * @param mendsNothing works that may undo a proof and mend nothing
 * @param ofTheDay whether its place is one whose state changes by the hour
 * @param position where the workshop is, or null
 * @param limit the limit in force there, or null when the check has none
 * @param kind what it is a proof of, or null where the rule book does not say
 * @param machine what work on this machine implies
 */
public record Wanted(Required required, Card card, Card.Want want, String point, String key, LaidOut laid,
                     Set<String> disturbing, Set<String> mendsNothing, boolean ofTheDay, Coordinates position, LimitFor limit, Assembly.Kind kind, Assembled machine) {

    /** For questions about the card alone: of a machine of which no assembly is known. */
    public Wanted(Required required, Card card, Card.Want want, String point, String key, LaidOut laid, Set<String> disturbing, Set<String> mendsNothing, boolean ofTheDay,
                  Coordinates position, LimitFor limit) {
        this(required, card, want, point, key, laid, disturbing, mendsNothing, ofTheDay, position, limit, null, Assembled.unknown());
    }

    public String name() {
        return want.name();
    }

    /** What is measured, tried or seen, or the work. */
    public String aspect() {
        return want.aspect();
    }

    /** True when this place shares more of its path with that of the entry than the other's does. */
    public boolean isNearerTo(Evidence evidence, Wanted other) {
        String at = evidence.entry().point();
        return Entry.shared(at, point) > Entry.shared(at, other.point);
    }

    /** True when the entry is work that takes away what was proven here: by touching it, or by what it implies. */
    public boolean isUndoneBy(Entry work) {
        return isTouchedBy(work) || impliedBy(work).isPresent();
    }

    /** True when the entry is work on what was proven here, or at a place where the card says that work undoes it. */
    public boolean isTouchedBy(Entry work) {
        return isTouchedAt(point, kind, work) || countsTogether() && others().anyMatch(i -> isTouchedAt(laid.points().get(i), laid.kinds().get(i), work));
    }

    /** The implied work by which an entry takes away what was proven here though it is work elsewhere, or empty. */
    public Optional<Implied> impliedBy(Entry work) {
        Assembled.Reached reached = machine.reached(work.what(), work.point());
        Optional<Implied> own = impliedAt(point, kind, reached);
        return own.isPresent() || !countsTogether() ? own : others().mapToObj(i -> impliedAt(laid.points().get(i), laid.kinds().get(i), reached)).flatMap(Optional::stream).findFirst();
    }

    /** What belongs together is undone together: one of the readings alone can no longer be put with a new one. */
    private IntStream others() {
        return IntStream.range(0, card.wants().size()).filter(i -> card.together().wants().contains(card.wants().get(i).name()) && !laid.points().get(i).equals(point));
    }

    private boolean isTouchedAt(String place, Assembly.Kind kind, Entry work) {
        return !isSpared(work) && (takes(place, kind, work) || isNamed(work));
    }

    private boolean isSpared(Entry work) {
        return laid.survives().stream().anyMatch(harmless -> harmless.works().contains(work.what()) && harmless.point().equals(work.point()));
    }

    private boolean takes(String place, Assembly.Kind kind, Entry work) {
        boolean on = machine.isOn(work.what(), work.point(), place);
        if (kind == null) {
            return on && disturbing.contains(work.what());
        }
        if (machine.isEverything(work.what(), work.point())) {
            // Another frame is another number, though what it carries keeps its own.
            return machine.takesEverywhere(work.what(), kind) || kind == Assembly.Kind.MARKING && work.point().equals(place) && machine.takes(work.what(), kind);
        }
        return (disturbing.contains(work.what()) ? on : work.point().equals(place)) && machine.takes(work.what(), kind);
    }

    /** True when the card names such work, at the place of the entry, on what carries it or on something it carries. */
    private boolean isNamed(Entry work) {
        for (Touch undoer : laid.undoneBy()) {
            boolean named = undoer.works().isEmpty() ? disturbing.contains(work.what()) : undoer.works().contains(work.what());
            if (named && undoer.bearsOn(want.name()) && isAround(work, undoer.point())) {
                return true;
            }
        }
        return false;
    }

    private boolean isAround(Entry work, String place) {
        return Entry.covers(place, work.point()) || Entry.covers(work.point(), place) && !machine.isUnit(work.what(), work.point());
    }

    private Optional<Implied> impliedAt(String place, Assembly.Kind kind, Assembled.Reached reached) {
        for (Implied one : reached.at(place)) {
            if ((kind == null ? machine.countsAs(one.level(), disturbing) : machine.takes(one.level(), kind)) && !isSpared(one)) {
                return Optional.of(one);
            }
        }
        for (Touch undoer : laid.undoneBy()) {
            if (undoer.bearsOn(want.name()) && reached.within(undoer.point()).stream().anyMatch(level -> isNamed(undoer, level))) {
                Optional<Implied> there = reached.all().stream().filter(one -> isNamed(undoer, one.level()) && Entry.covers(undoer.point(), one.place()) && !isSpared(one)).findFirst();
                if (there.isPresent()) {
                    return there;
                }
            }
        }
        return Optional.empty();
    }

    /** Wear and markings outlive implied work, which puts the same part back. */
    private boolean isNamed(Touch undoer, Assembly.Level level) {
        boolean lasting = (kind == Assembly.Kind.SUBSTANCE || kind == Assembly.Kind.MARKING) && level != Assembly.Level.NEW;
        return !lasting && machine.countsAs(level, undoer.works().isEmpty() ? disturbing : undoer.works());
    }

    private boolean isSpared(Implied one) {
        return laid.survives().stream().anyMatch(harmless -> harmless.point().equals(one.place()) && machine.isNoMoreThan(one.level(), harmless.works()));
    }

    /**
     * True when the entry is work that ends the fault this evidence shows: work the card says clears it, or work on the part, or
     * where the card says that work undoes it, which mends something. Implied work ends no fault: it is not entered that it was done.
     */
    public boolean isMendedBy(Entry work, Evidence fault) {
        for (Touch cure : laid.clearedBy()) {
            boolean near = Entry.covers(work.point(), cure.point()) || Entry.covers(cure.point(), work.point());
            if (near && cure.works().contains(work.what()) && (cure.only().isEmpty() || cure.only().contains(fault.says()))) {
                return true;
            }
        }
        return !mendsNothing.contains(work.what()) && !isSpared(work) && (isNamed(work) && machine.mayMend(work.what(), work.point(), point) || disturbing.contains(work.what()) && (isDone(work, point) || countsTogether() && others().anyMatch(i -> isDone(work, laid.points().get(i)))));
    }

    /** Keys of the readings that cannot be taken while this is closed. */
    public List<String> openedFor() {
        return opened().stream().map(LaidOut.Opened::key).toList();
    }

    /** True when this had to be opened for a reading, and its remark does not say how it was taken assembled. */
    public boolean isOpenedFor(Evidence reading) {
        return reading.isFirstHand() && !reading.impossible() && !reading.saysHow(laid.readAssembled())
                && opened().stream().anyMatch(one -> one.key().equals(reading.key()) && (one.only().isEmpty() || one.only().contains(reading.says())));
    }

    private List<LaidOut.Opened> opened() {
        return laid.opened().get(card.wants().indexOf(want));
    }

    /** True when the work was done at a place or on what carries it, unless that came off and went back whole. */
    private boolean isDone(Entry work, String place) {
        return Entry.covers(work.point(), place) && (work.point().equals(place) || !machine.isUnit(work.what(), work.point()));
    }

    /** True when a fault found here ends with the day it was found on. */
    public boolean faultEndsWithTheDay() {
        return card.endsBy() == Card.EndsBy.TIME || latestDecides();
    }

    /** True when nothing but work ends a fault found here. */
    public boolean faultEndsByWork() {
        return card.endsBy() == Card.EndsBy.WORK && !latestDecides();
    }

    /** True when it shows a fault only with others, and nothing but work ends that fault. */
    public boolean maySpoilOthers() {
        return !decidesAlone() && want.form() == Form.AMOUNT && faultEndsByWork();
    }

    /** True when this later, good evidence ends a fault: a look where nothing was broken, an answer that names its document. */
    public boolean isSettledBy(Evidence good) {
        return switch (card.endsBy()) {
            case LOOK -> true;
            case DOCUMENT -> good.namesDocument();
            default -> false;
        };
    }

    /** True when the evidence is of a kind this check does not accept. */
    public boolean tooWeak(Evidence evidence) {
        return want.weakest() == Deed.DONE ? evidence.entry().deed() != Deed.DONE : !evidence.entry().deed().atLeast(want.weakest());
    }

    /** The first instant at which the evidence is too old, or null. */
    public Instant lapse(Evidence evidence) {
        Holds holds = holds();
        Moment at = evidence.entry().at();
        // Without a time of day it may be as old as the morning; and a fault may be as new as the evening.
        Instant from = holds.hours() != null && faulty(evidence) ? at.latest() : at.earliest();
        return holds.lapse(at, from, holds.sunset() && position != null ? Daylight.on(position.latitude(), position.longitude(), at.date(), at.zone()).sunset().map(ZonedDateTime::toInstant) : Optional.empty());
    }

    /** True when sunset ends what it proves, and nobody has said where the workshop is. */
    public boolean lacksSunset() {
        return holds().sunset() && position == null;
    }

    /** True when the latest look alone decides, good or bad: weather, road, room and rider change without work. */
    public boolean latestDecides() {
        return ofTheDay && holds().ofTheDay();
    }

    /** True when it counts only together with other readings, taken within a stated time of it. */
    public boolean countsTogether() {
        return card.together() != null && card.together().wants().contains(name());
    }

    /** The first instant that the evidence speaks of: a time during which something was watched ended when it was written. */
    public Instant began(Evidence evidence) {
        Instant written = evidence.entry().at().earliest();
        if (!want.covers() || !(evidence.entry().is() instanceof Value.Amount watched)) {
            return written;
        }
        BigDecimal seconds = watched.measured().value().to(Unit.SECONDS).value();
        BigDecimal most = BigDecimal.valueOf(written.getEpochSecond() - Instant.MIN.getEpochSecond());
        // A slip of the pen may claim more time than a calendar has.
        return seconds.compareTo(most) > 0 ? Instant.MIN : written.minusSeconds(seconds.max(BigDecimal.ZERO).longValue());
    }

    public Holds holds() {
        return want.holds() == null ? card.holds() : want.holds();
    }

    public boolean tooOld(Evidence evidence, AsOf asOf) {
        Instant lapse = lapse(evidence);
        return lapse != null && !asOf.instant().isBefore(lapse);
    }

    /** True when the value alone shows a fault, whatever its kind, or its writer's note is a defect. */
    public boolean faulty(Evidence evidence) {
        if (evidence.isNotedAsDefect()) {
            return true;
        }
        Value is = evidence.entry().is();
        if (want.form() == Form.ANSWER && is instanceof Value.Answer answer) {
            return !want.good().contains(answer.word());
        }
        if (judged() && want.form() == Form.AMOUNT && is instanceof Value.Amount amount && limit != null && limit.applied() != null) {
            return limit.applied().bounds().standing(amount.measured()) == Bounds.Standing.OUTSIDE;
        }
        return false;
    }

    /** True when this want alone is held against the limit of the check. */
    public boolean judged() {
        return want.judged();
    }

    /** True when this want yields an outcome without a rule of its own. */
    public boolean decidesAlone() {
        return want.form() == Form.ANSWER || want.weakest() == Deed.DONE || want.judged();
    }


    // Identity is the requirement and the name of the want: the rest follows from them, and the engine compares often.
    @Override
    public boolean equals(Object other) {
        return other instanceof Wanted w && w.required.equals(required) && w.want.name().equals(want.name());
    }

    @Override
    public int hashCode() {
        return 31 * required.hashCode() + want.name().hashCode();
    }
}

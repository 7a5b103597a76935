package chock.assess;

import chock.assess.OrderOfWork.Kind;
import chock.assess.facts.Wanted;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Moment;
import chock.record.Value;
import chock.record.Vocabulary;
import chock.rulebook.Applied;
import chock.rulebook.Card;
import chock.rulebook.TradeOrder;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/** A step while the order is being found: what it proves, and what it does to the proofs of others. */
final class Task {
    private static final List<String> PARTS = List.of("engine", "ignition", "oil", "fuel", "exhaust", "transmission", "controls", "front-fork", "steering", "front-brake", "front-wheel",
            "rear-brake", "rear-wheel", "rear-fork", "third-wheel", "frame", "electrics", "headlamp", "machine", "room", "run-plan", "workshop", "outdoors", "rider", "ride");

    final String point;
    final String what;
    final List<String> works;
    final Set<String> checks = new TreeSet<>();
    final Set<String> because = new LinkedHashSet<>();
    final Set<String> remedies = new LinkedHashSet<>();
    final Set<String> corrects = new TreeSet<>();
    final List<Wanted> wanted = new ArrayList<>();
    final Set<Task> follows = new HashSet<>();
    Kind kind;
    String caution;
    String notBy;
    boolean critical;

    Task(Kind kind, String point, String what, List<String> works) {
        this.kind = kind;
        this.point = point;
        this.what = what;
        this.works = works;
    }

    /** Takes one more want that this step answers. */
    void answers(Wanted want) {
        if (!wanted.contains(want)) {
            wanted.add(want);
            if (kind.compareTo(Kind.DO) >= 0 && kindOf(want).compareTo(kind) < 0) {
                kind = kindOf(want);
            }
        }
    }

    static Kind kindOf(Wanted want) {
        return switch (want.want().weakest()) {
            case DONE -> Kind.DO;
            case MEASURED -> Kind.MEASURE;
            case TRIED -> Kind.TRY;
            case SEEN -> Kind.LOOK;
            default -> Kind.ASK;
        };
    }

    Deed deed() {
        return switch (kind) {
            case MEASURE -> Deed.MEASURED;
            case TRY -> Deed.TRIED;
            case LOOK -> Deed.SEEN;
            case ASK -> Deed.TOLD;
            default -> Deed.DONE;
        };
    }

    boolean isWork() {
        return !works.isEmpty();
    }

    /** True when this step must come first: its work takes away what the other proves, or is what the other looks at, or what the other closes is open for it. */
    boolean comesBefore(Task other) {
        return other.follows.contains(this) || this != other && works.stream().map(this::done).anyMatch(work -> other.wanted.stream().anyMatch(w -> w.isUndoneBy(work)))
                || this != other && !isWork() && other.wanted.stream().anyMatch(w -> w.openedFor().contains(Entry.key(point, what)))
                || kind == Kind.PUT_RIGHT && other.kind == Kind.PUT_TOGETHER && Entry.covers(other.point, point);
    }

    private Entry done(String work) {
        return new Entry("", null, "", Deed.DONE, point, work, null, null, null, null, null, 0);
    }

    Card.Needs needs() {
        return wanted.stream().map(w -> w.card().needs()).min(Comparator.naturalOrder()).orElse(Card.Needs.STANDING);
    }

    /** The limit that what is read here is held against; null where it has none, or several that differ. */
    Applied limit() {
        List<Applied> limits = wanted.stream().filter(w -> w.judged() && w.limit() != null).map(w -> w.limit().applied()).filter(Objects::nonNull).distinct().toList();
        return limits.size() == 1 ? limits.get(0) : null;
    }

    /** True when only an answer that names its document ends the fault. */
    boolean namesDocument() {
        return !because.isEmpty() && wanted.stream().anyMatch(w -> w.card().endsBy() == Card.EndsBy.DOCUMENT);
    }

    /** At rest, then with the engine running, then what holds for hours only as the weather does, then on the road. */
    private int phase() {
        if (needs() == Card.Needs.RIDING) {
            return 3;
        }
        return wanted.stream().anyMatch(w -> w.holds().hours() != null) ? 2 : needs().ordinal();
    }

    /** The part of the machine it is at: one place for everything on one end of it. */
    String part() {
        return point.replaceFirst("/.*", "");
    }

    /** Order among steps that may come in any order: the trade's own, then the place, work before proof, what may fail first. */
    static Comparator<Task> order(TradeOrder trade) {
        Map<Task, TradeOrder.Rank> ranks = new HashMap<>();
        return Comparator.comparing((Task t) -> t.kind != Kind.SETTLE).thenComparing(Task::phase)
                .thenComparing(t -> ranks.computeIfAbsent(t, one -> one.rank(trade)))
                .thenComparing(t -> place(t.part())).thenComparing(Task::part)
                .thenComparing((Task t) -> !t.isWork()).thenComparing((Task t) -> t.because.isEmpty()).thenComparing((Task t) -> t.kind != Kind.MEASURE)
                .thenComparing((Task t) -> !t.critical).thenComparing((Task t) -> t.point).thenComparing((Task t) -> String.valueOf(t.what));
    }

    private TradeOrder.Rank rank(TradeOrder trade) {
        return trade.rank(point, wanted.stream().map(w -> w.card().id()).toList(), wanted.stream().map(Wanted::name).toList());
    }

    private static int place(String part) {
        int at = PARTS.indexOf(part);
        return at < 0 ? PARTS.size() : at;
    }

    /** The id of an instrument that work is supposed to be done with. */
    static String supposed(Vocabulary.Tooled tooled) {
        return "~" + tooled.with();
    }

    private static Value set(Vocabulary.Tooled tooled) {
        return tooled == null ? null : new Value.Amount(new Measured(new Quantity(BigDecimal.ONE, tooled.unit()), null));
    }

    /** The lines this step would leave in a record, good results supposed; none where no good result can be made up. */
    List<Entry> supposed(String id, List<Moment> at, Map<String, Vocabulary.Tooled> tooled) {
        List<Entry> lines = new ArrayList<>();
        if (isWork()) {
            for (int i = 0; i < works.size(); i++) {
                lines.add(new Entry(id + (i == 0 ? "" : "-" + i), at.get(i), "~worker", Deed.DONE, point, works.get(i), set(tooled.get(works.get(i))),
                        tooled.containsKey(works.get(i)) ? supposed(tooled.get(works.get(i))) : null, null, null, null, 0));
            }
        } else if (kind != Kind.SETTLE && !wanted.isEmpty()) {
            Value good = GoodResult.of(wanted);
            if (good != null) {
                List<String> instead = corrects.isEmpty() ? Collections.singletonList(null) : List.copyOf(corrects);
                for (int i = 0; i < instead.size(); i++) {
                    lines.add(new Entry(id + (i == 0 ? "" : "-" + i), at.get(0), "~other", deed(), point, what, good, null, instead.get(i), null, namesDocument() ? "document" : null, 0));
                }
            }
        }
        return lines;
    }
}

package chock.rulebook;

import chock.record.Entry;
import chock.rulebook.Assembly.Kind;
import chock.rulebook.Assembly.Level;
import chock.rulebook.Assembly.Reach;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The assembly of one machine: what each work on it implies. Worked out once for a work at a place, whoever does it and how often. */
public final class Assembled {
    private final Assembly assembly;
    private final Map<String, String> fields;
    private final Map<String, Reached> known = new ConcurrentHashMap<>();

    /**
     * Work that other work implies.
     *
     * @param level how far it goes
     * @param place where
     * @param from the implied work that implies it in turn, or null where the written work does
     */
    public record Implied(Level level, String place, Implied from) {
        /** This and what implies it, the nearest to the written work first. */
        public List<Implied> chain() {
            List<Implied> chain = new ArrayList<>();
            for (Implied one = this; one != null; one = one.from) {
                chain.add(0, one);
            }
            return chain;
        }
    }

    /** Everything one work implies, found by place. */
    public static final class Reached {
        private final Map<String, List<Implied>> at = new LinkedHashMap<>();
        private final Map<String, EnumSet<Level>> within = new HashMap<>();

        private boolean add(Implied one) {
            List<Implied> here = at.computeIfAbsent(one.place, p -> new ArrayList<>());
            if (here.stream().anyMatch(other -> other.level == one.level)) {
                return false;
            }
            here.add(one);
            for (String up : Entry.upFrom(one.place)) {
                within.computeIfAbsent(up, p -> EnumSet.noneOf(Level.class)).add(one.level);
            }
            return true;
        }

        /** Implied work at exactly this place. */
        public List<Implied> at(String place) {
            return at.getOrDefault(place, List.of());
        }

        /** Levels of the implied work at this place and on what it carries. */
        public Set<Level> within(String place) {
            EnumSet<Level> levels = within.get(place);
            return levels == null ? Set.of() : levels;
        }

        /** Every place reached, and what carries it. */
        public Set<String> places() {
            return Collections.unmodifiableSet(within.keySet());
        }

        /** All of it, in the order it was found. */
        public List<Implied> all() {
            return at.values().stream().flatMap(List::stream).toList();
        }
    }

    Assembled(Assembly assembly, Map<String, String> fields) {
        this.assembly = assembly;
        this.fields = fields;
    }

    /** A machine of which no assembly is known: work reaches nothing but what cards name. */
    public static Assembled unknown() {
        return new Assembled(Assembly.NONE, Map.of());
    }

    /** What a work at a place implies on this machine. */
    public Reached reached(String work, String place) {
        return known.computeIfAbsent(Entry.key(place, work), key -> follow(work, place));
    }

    private Reached follow(String work, String place) {
        Reached reached = new Reached();
        Deque<Implied> open = new ArrayDeque<>();
        Level like = assembly.like().get(work);
        if (like != null) {
            Implied same = new Implied(like, place, null);
            reached.add(same);
            open.add(same);
        }
        imply(Set.of(work), place, null, reached, open);
        while (!open.isEmpty()) {
            Implied one = open.poll();
            imply(assembly.actsLike().getOrDefault(one.level, Set.of()), one.place, one, reached, open);
        }
        return reached;
    }

    private void imply(Set<String> works, String place, Implied from, Reached reached, Deque<Implied> open) {
        for (Reach row : assembly.reach().getOrDefault(place, List.of())) {
            if (Collections.disjoint(row.works(), works) || !row.fits(fields)) {
                continue;
            }
            row.implies().forEach((level, places) -> places.forEach(other -> {
                Implied next = new Implied(level, other, from);
                if (reached.add(next)) {
                    open.add(next);
                }
            }));
        }
    }

    /** True when this work is work on a place: there, on what carries it unless that comes off whole, or on the whole machine. */
    public boolean isOn(String work, String at, String place) {
        return Entry.covers(at, place) && (at.equals(place) || !isUnit(work, at)) || isEverything(work, at);
    }

    /** True when what comes off and goes back here does so with its inside untouched. */
    public boolean isUnit(String work, String at) {
        return (work.equals("removed") || work.equals("refitted")) && assembly.units().contains(at);
    }

    /** True when work here may have put right what was found there: a wheel out and in ends no fault of its brake, nor does a bolt tightened elsewhere. */
    public boolean mayMend(String work, String at, String place) {
        String within = assembly.mendsOnlyItself().get(at);
        return (within == null || Entry.covers(within, place)) && (!assembly.mendsInPlace().contains(work) || Entry.covers(place, at));
    }

    /** True when this work counts as work on every part of the machine. */
    public boolean isEverything(String work, String at) {
        return assembly.whole().getOrDefault(at, Set.of()).contains(work);
    }

    /** True when work on the whole machine takes away a proof of this kind wherever on the machine it was found. What belongs to no part outlives it, and so does the day. */
    public boolean takesEverywhere(String work, Kind kind) {
        return kind != Kind.WHOLE && kind != Kind.DAY && kind != Kind.MARKING && (takes(work, kind) || takes("stripped", kind));
    }

    /** True when a work takes away a proof of this kind on the part worked on. */
    public boolean takes(String work, Kind kind) {
        return assembly.takes(work).contains(kind);
    }

    /** True when implied work of this level takes away a proof of this kind on the part reached. */
    public boolean takes(Level level, Kind kind) {
        return assembly.acts().getOrDefault(level, Set.of()).contains(kind);
    }

    /** True when implied work of this level is nothing but these works. */
    public boolean isNoMoreThan(Level level, Set<String> works) {
        Set<String> like = assembly.actsLike().getOrDefault(level, Set.of());
        return !like.isEmpty() && works.containsAll(like);
    }

    /** True when implied work of this level counts as one of these works, where a card names them. */
    public boolean countsAs(Level level, Set<String> works) {
        return !Collections.disjoint(assembly.actsLike().getOrDefault(level, Set.of()), works);
    }
}

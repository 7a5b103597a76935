package chock.rulebook;

import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Fault;
import chock.record.FieldRule;
import chock.record.LawWords;
import chock.record.Plausible;
import chock.record.UnusableInput;
import chock.record.Vocabulary;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Gathers the words that a record may use from cards and limits. */
final class Words {
    private final Map<String, List<String>> places;
    private final TreeSet<String> points = new TreeSet<>();
    private final Map<String, Vocabulary.Aspect> aspects = new TreeMap<>();
    private final Map<String, Unit.Dimension> ids = new TreeMap<>();

    /** @param places words behind the names in braces */
    Words(Map<String, List<String>> places) {
        this.places = places;
    }

    /** Everything known so far. */
    Words and(Vocabulary known) {
        points.addAll(known.points());
        aspects.putAll(known.aspects());
        ids.putAll(known.limits());
        return this;
    }

    /** Places and aspects of cards. */
    Words and(Collection<Card> cards, Collection<Limit> limits) {
        for (Card card : cards) {
            placesOf(card).forEach(this::addPoints);
            card.wants().forEach(want -> addAspect(want, want.place() == null ? card.place() : want.place(), card.file(), card.line(), card.id()));
        }
        limits.forEach(l -> ids.put(l.id(), l.sense() == Limit.Sense.WITHIN ? l.resolution().unit().dimension() : l.value().unit().dimension()));
        return this;
    }

    void addPoints(Place place) {
        place.points(Map.of(), places).forEach(point -> addWithParts(points, point));
    }

    Vocabulary vocabulary(Map<String, String> works, Map<String, Vocabulary.InstrumentKind> instruments, Plausible plausible, Map<String, Vocabulary.Tooled> tooled, Map<String, String> formerly, List<FieldRule> fields, LawWords law) {
        return new Vocabulary(points, aspects, works, instruments, ids, plausible, tooled, formerly, fields, law);
    }

    private static List<Place> placesOf(Card card) {
        List<Place> all = new ArrayList<>(List.of(card.place()));
        card.wants().stream().filter(w -> w.place() != null).forEach(w -> all.add(w.place()));
        card.undoneBy().forEach(u -> all.add(u.place()));
        return all;
    }

    /** @param place where it is asked for, or null when it may be written anywhere */
    void addAspect(Card.Want want, Place place, String file, int line, String path) {
        if (want.weakest() != Deed.DONE) {
            Set<String> answers = new TreeSet<>(want.good());
            answers.addAll(want.bad());
            Unit.Dimension dimension = want.unit() == null ? null : want.unit().dimension();
            aspects.merge(want.aspect(), new Vocabulary.Aspect(want.aspect(), want.form(), dimension, answers, place == null ? Set.of() : new TreeSet<>(place.points(Map.of(), places))), (a, b) -> merged(file, line, path, a, b));
        }
    }

    private static Vocabulary.Aspect merged(String file, int line, String path, Vocabulary.Aspect a, Vocabulary.Aspect b) {
        if (a.form() != b.form() || a.dimension() != b.dimension()) {
            throw new UnusableInput(List.of(new Fault(file, line, path, "'" + a.name() + "' is written in another form by another check", "Choose another name for it.")));
        }
        Set<String> answers = new TreeSet<>(a.answers());
        answers.addAll(b.answers());
        Set<String> asked = new TreeSet<>();
        // Where one of the two may be written anywhere, so may both.
        if (!a.places().isEmpty() && !b.places().isEmpty()) {
            asked.addAll(a.places());
            asked.addAll(b.places());
        }
        return new Vocabulary.Aspect(a.name(), a.form(), a.dimension(), answers, asked);
    }

    static void addWithParts(Set<String> points, String point) {
        points.addAll(Entry.upFrom(point));
    }
}

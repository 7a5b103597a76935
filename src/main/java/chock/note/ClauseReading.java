package chock.note;

import chock.assess.Subjects.Subject;
import chock.note.Note.Candidate;
import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Vocabulary.Form;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What one clause can mean. It means something only when every word of it belongs to a place, to what was looked at, to the answer,
 * to an amount, to work, or says nothing at all: a word too many may turn the whole into its contrary.
 */
final class ClauseReading {
    /** As many as somebody can still choose from. */
    private static final int MOST = 12;
    private static final Set<String> ENDS = Set.of("front", "rear", "back");
    private static final Set<String> SIDES = Set.of("left", "right", "inner", "outer", "inboard", "outboard", "inside", "outside");
    private static final Set<String> CONDITIONS = Set.of("after", "under", "at", "walking", "warm", "standing", "straight");
    private static final Set<String> STATES = Set.of("is", "are", "has", "have", "it", "its", "been");
    /** Work that may be done to any part; other work only where it is asked for. */
    private static final Set<String> ANYWHERE = Set.of("removed", "refitted", "replaced", "opened", "stripped", "repaired", "damaged", "adjusted", "cleaned", "lubricated", "drained");

    private final Lexicon lexicon;
    private final List<Subject> subjects;
    private final Set<String> points;
    private final Set<String> works;
    /** While it is asked what the words could mean if they need not say front or rear, left or right. */
    private boolean anyEnd;

    /**
     * A meaning, and how plainly it was named: by words for the thing itself before words for its place.
     *
     * @param guessed whether it rests on a word that was not known as it stands
     */
    private record Meaning(Candidate entry, int plainness, boolean guessed) { }

    /** Words, the amounts and the instrument in them. */
    private record Said(List<Word> words, List<SpokenAmount> amounts, String with) { }

    ClauseReading(Lexicon lexicon, List<Subject> subjects, Set<String> points, Set<String> works) {
        this.lexicon = lexicon;
        this.subjects = subjects;
        this.points = points;
        this.works = works;
    }

    private Said said(List<Word> words) {
        List<Word> rest = new ArrayList<>();
        String with = null;
        for (Word word : words) {
            String instrument = lexicon.instrument(word.text());
            if (instrument == null) {
                rest.add(word);
            } else {
                with = with == null ? instrument : "";
            }
        }
        return new Said(rest, SpokenAmount.in(rest, lexicon), with);
    }

    /**
     * The one or several things that the clause says, or nothing when it may mean this or that, or has a word too many.
     *
     * @param context words of the place that was spoken of before
     */
    List<Candidate> plain(List<Word> words, List<Word> context) {
        List<Candidate> pair = ofPair(words, context);
        if (!pair.isEmpty()) {
            return pair;
        }
        List<Meaning> all = meanings(said(words), context);
        if (all.size() != 1 || all.get(0).guessed) {
            return List.of();
        }
        // "Hose replaced": of the fuel, or of either brake, had its end been said?
        anyEnd = true;
        boolean several = meanings(said(words), context).stream().anyMatch(other -> !other.entry.point().equals(all.get(0).entry.point()));
        anyEnd = false;
        return several ? List.of() : List.of(all.get(0).entry);
    }

    /** Of both ends, both sides or both pads, where it says so. */
    private List<Candidate> ofPair(List<Word> words, List<Word> context) {
        int both = -1;
        for (int i = 0; i < words.size(); i++) {
            both = words.get(i).text().equals("both") ? i : both;
        }
        boolean pads = both < 0 && words.stream().anyMatch(word -> word.text().equals("pads")) && words.stream().noneMatch(word -> SIDES.contains(word.text()));
        if (both < 0 && !pads || pads && !said(words).amounts.isEmpty()) {
            return List.of();
        }
        for (List<String> pair : pads ? List.of(List.of("inner", "outer")) : List.of(List.of("front", "rear"), List.of("left", "right"), List.of("inner", "outer"))) {
            List<Candidate> found = new ArrayList<>();
            for (String one : pair) {
                List<Word> single = new ArrayList<>(words);
                int at = pads ? indexOf(words, "pads") : both;
                if (pads) {
                    single.add(at, new Word(one, one, false));
                } else {
                    single.set(at, new Word(one, one, false));
                }
                List<Meaning> meanings = meanings(said(single), context);
                if (meanings.size() == 1 && !meanings.get(0).guessed) {
                    found.add(meanings.get(0).entry);
                }
            }
            if (found.size() == 2 && found.get(0).what().equals(found.get(1).what()) && !found.get(0).point().equals(found.get(1).point())) {
                return found;
            }
        }
        return List.of();
    }

    private static int indexOf(List<Word> words, String text) {
        return words.stream().map(Word::text).toList().indexOf(text);
    }

    /** Every meaning that uses up all words, the most plainly named only. */
    private List<Meaning> meanings(Said said, List<Word> context) {
        if (said.amounts.size() > 1 || "".equals(said.with)) {
            return List.of();
        }
        List<Meaning> all = new ArrayList<>();
        for (Subject subject : subjects) {
            if (subject.kind() != Deed.DONE) {
                evidence(subject, said, context, all);
            }
        }
        work(said, context, all);
        int plainest = all.stream().mapToInt(Meaning::plainness).max().orElse(0);
        List<Meaning> best = new ArrayList<>();
        Set<Candidate> seen = new HashSet<>();
        all.stream().filter(one -> one.plainness == plainest && seen.add(one.entry)).forEach(best::add);
        return best;
    }

    private void evidence(Subject subject, Said said, List<Word> context, List<Meaning> into) {
        Set<String> place = lexicon.placeWords(subject.point());
        Set<Integer> named = spans(said.words, lexicon.called(subject));
        if (!fits(subject.point(), said.words, context, place)) {
            return;
        }
        int plainness = !named.isEmpty() ? 2 : isNamed(subject.point(), said.words, context) && !isOfCondition(subject) ? 1 : 0;
        if (subject.form() == Form.ANSWER) {
            answer(subject, said, context, place, named, plainness, into);
        } else if (subject.form() == Form.AMOUNT && said.amounts.size() == 1 && plainness > 0) {
            SpokenAmount amount = said.amounts.get(0);
            boolean fits = amount.unit() != null && subject.units().stream().anyMatch(unit -> unit.dimension() == amount.unit().dimension());
            Set<Integer> used = new HashSet<>(named);
            range(amount.from(), amount.to(), used);
            if (fits && isUsedUp(said.words, used, place)) {
                String with = subject.kind() == Deed.MEASURED ? said.with : null;
                if (said.with == null || with != null) {
                    into.add(new Meaning(new Candidate(subject.point(), subject.kind().key(), subject.what(), amount.in(amount.unit()), with), plainness, isGuessed(said.words, amount.from(), amount.to())));
                }
            }
        } else if (subject.what().equals("date-code") && !named.isEmpty() && said.amounts.size() == 1 && said.amounts.get(0).unit() == null && said.amounts.get(0).number().matches("\\d{4}")) {
            Set<Integer> used = new HashSet<>(named);
            range(said.amounts.get(0).from(), said.amounts.get(0).to(), used);
            if (isUsedUp(said.words, used, place) && said.with == null) {
                into.add(new Meaning(new Candidate(subject.point(), subject.kind().key(), subject.what(), said.amounts.get(0).number(), null), plainness, false));
            }
        }
    }

    private void answer(Subject subject, Said said, List<Word> context, Set<String> place, Set<Integer> named, int plainness, List<Meaning> into) {
        if (said.with != null) {
            return;
        }
        List<Found> found = answers(subject, said.words);
        if (found.isEmpty()) {
            return;
        }
        Found longest = found.get(0);
        // Two answers to one question are no answer, unless one is only a part of the other's words.
        if (found.stream().anyMatch(other -> !other.answer.equals(longest.answer) && (other.to <= longest.from || other.from >= longest.to || other.to - other.from == longest.to - longest.from))) {
            return;
        }
        int how = !longest.alone ? plainness : fullySaid(subject.point(), said.words) ? 3 : isPlaced(subject, said.words, context) ? 2
                : named.stream().allMatch(at -> at >= longest.from && at < longest.to) ? 0 : plainness;
        Set<Integer> used = new HashSet<>(named);
        range(longest.from, longest.to, used);
        if (how > 0 && isUsedUp(said.words, used, place)) {
            into.add(new Meaning(new Candidate(subject.point(), subject.kind().key(), subject.what(), longest.answer, null), how, isGuessed(said.words, longest.from, longest.to)));
        }
    }

    /** "No leaks" says of what only together with the place, or with something that carries it; "no spark" says it alone. */
    private boolean isPlaced(Subject subject, List<Word> words, List<Word> context) {
        return Entry.upFrom(subject.point()).stream().anyMatch(place -> isNamed(place, words, context)) || !find(words, lexicon.stems(subject.what())).isEmpty() && !hasEnd(subject.point());
    }

    /** True of what is found under some condition, such as after the ride: the place alone does not say so. */
    private static boolean isOfCondition(Subject subject) {
        return Stream.of(subject.what().split("-")).anyMatch(CONDITIONS::contains);
    }

    private static boolean hasEnd(String point) {
        return point.matches("(front|rear)-(brake|wheel|mudguard)(/.*)?|transmission/sprockets/(front|rear)(/.*)?");
    }

    private boolean fullySaid(String point, List<Word> words) {
        return !spans(words, lexicon.own(point)).isEmpty();
    }

    /** Words of an answer: from the first to behind the last; alone when they say the question as well. */
    private record Found(String answer, int from, int to, boolean alone) { }

    /** The longest first. */
    private List<Found> answers(Subject subject, List<Word> words) {
        List<Found> found = new ArrayList<>();
        for (String answer : subject.answers()) {
            lexicon.answers(subject, answer).forEach(phrase -> find(words, phrase).forEach(at -> found.add(new Found(answer, at, at + phrase.size(), false))));
            lexicon.alone(subject, answer).forEach(phrase -> find(words, phrase).forEach(at -> found.add(new Found(answer, at, at + phrase.size(), true))));
        }
        found.sort(Comparator.comparingInt((Found one) -> one.from - one.to).thenComparing(one -> !one.alone).thenComparing(Found::answer));
        return found;
    }

    private static List<Integer> find(List<Word> words, List<String> phrase) {
        List<Integer> at = new ArrayList<>();
        for (int i = 0; !phrase.isEmpty() && i + phrase.size() <= words.size(); i++) {
            boolean same = true;
            for (int j = 0; same && j < phrase.size(); j++) {
                same = words.get(i + j).stem().equals(phrase.get(j));
            }
            if (same) {
                at.add(i);
            }
        }
        return at;
    }

    private static Set<Integer> spans(List<Word> words, List<List<String>> phrases) {
        Set<Integer> used = new HashSet<>();
        phrases.forEach(phrase -> find(words, phrase).forEach(at -> range(at, at + phrase.size(), used)));
        return used;
    }

    private static void range(int from, int to, Set<Integer> into) {
        for (int i = from; i < to; i++) {
            into.add(i);
        }
    }

    private static boolean isGuessed(List<Word> words, int from, int to) {
        return words.subList(from, to).stream().anyMatch(Word::guessed);
    }

    private boolean isUsedUp(List<Word> words, Set<Integer> used, Set<String> place) {
        for (int i = 0; i < words.size(); i++) {
            if (!used.contains(i) && !place.contains(words.get(i).stem()) && !lexicon.isFiller(words.get(i).stem())) {
                return false;
            }
        }
        return true;
    }

    /** True when the words speak of this place and of no other: the end, the side and the context go with it. */
    private boolean fits(String point, List<Word> words, List<Word> context, Set<String> place) {
        if (!context.stream().allMatch(word -> place.contains(word.stem()))) {
            return false;
        }
        List<Word> all = new ArrayList<>(context);
        all.addAll(words);
        Set<String> said = new HashSet<>(all.stream().map(Word::stem).toList());
        boolean end = hasEnd(point);
        boolean side = point.matches(".*/(left|right)-leg(/.*)?|.*/(inner|outer)-pad|.*/(left|right)(/.*)?|.*/(left|right)-(caliper|disc)(/.*)?");
        return anyEnd || (!end || said.stream().anyMatch(word -> ENDS.contains(word) && place.contains(word))) && (!side || said.stream().anyMatch(word -> SIDES.contains(word) && place.contains(word)));
    }

    private boolean isNamed(String point, List<Word> words, List<Word> context) {
        List<Word> all = new ArrayList<>(context);
        all.addAll(words);
        return !spans(all, lexicon.own(point)).isEmpty();
    }

    private void work(Said said, List<Word> context, List<Meaning> into) {
        for (String work : works) {
            Set<Integer> used = new HashSet<>();
            boolean guessed = false;
            for (List<String> phrase : lexicon.work(work)) {
                for (int at : find(said.words, phrase)) {
                    // "The tyre is new" may be the state it was bought in; "new tyre" is what somebody has just fitted.
                    if (phrase.equals(List.of("new")) && (at == said.words.size() - 1 || said.words.stream().anyMatch(word -> STATES.contains(word.text())))) {
                        continue;
                    }
                    range(at, at + phrase.size(), used);
                    guessed |= isGuessed(said.words, at, at + phrase.size());
                }
            }
            if (used.isEmpty() || isPartOfOther(work, said.words, used.size())) {
                continue;
            }
            boolean torque = work.equals("torqued");
            String is = null;
            if (said.amounts.size() == 1) {
                SpokenAmount amount = said.amounts.get(0);
                if (!torque || amount.unit() == null || amount.unit().dimension() != Unit.Dimension.TORQUE) {
                    continue;
                }
                range(amount.from(), amount.to(), used);
                is = amount.in(amount.unit());
            } else if (said.with != null && !torque) {
                continue;
            }
            for (String point : points) {
                boolean inWords = fullySaid(point, said.words);
                if ((inWords || isNamed(point, said.words, context)) && fits(point, said.words, context, lexicon.placeWords(point)) && isUsedUp(said.words, used, lexicon.placeWords(point))) {
                    for (String at : where(work, point)) {
                        into.add(new Meaning(new Candidate(at, Deed.DONE.key(), work, is, said.with), inWords ? 2 : 1, guessed));
                    }
                }
            }
        }
        keepInnermost(into);
    }

    /** "Topped up" holds no other work; "taken off" is no "off". */
    private boolean isPartOfOther(String work, List<Word> words, int size) {
        return works.stream().filter(other -> !other.equals(work)).flatMap(other -> lexicon.work(other).stream()).anyMatch(phrase -> phrase.size() > size && !find(words, phrase).isEmpty());
    }

    /** Where such work is asked for: at this place, or at the one place below it; at the place itself for work that any part can have. */
    private List<String> where(String work, String point) {
        List<String> asked = subjects.stream().filter(one -> one.kind() == Deed.DONE && one.what().equals(work) && Entry.covers(point, one.point())).map(Subject::point).distinct().toList();
        if (asked.contains(point) || ANYWHERE.contains(work)) {
            return List.of(point);
        }
        return asked;
    }

    /** Of places on one another the one that was meant is the inner: a caliper on a brake. */
    private static void keepInnermost(List<Meaning> all) {
        all.removeIf(one -> one.entry.kind().equals(Deed.DONE.key()) && all.stream().anyMatch(other -> other.entry.kind().equals(one.entry.kind()) && other.entry.what().equals(one.entry.what())
                && other.plainness >= one.plainness && !other.entry.point().equals(one.entry.point()) && Entry.covers(one.entry.point(), other.entry.point())));
    }

    /**
     * What the clause may be about, though it does not say so plainly; best first.
     *
     * @param past whether it speaks of what was: work is then only told
     */
    List<Candidate> perhaps(List<Word> words, List<Word> context, boolean past) {
        Said said = said(words);
        String with = "".equals(said.with) ? null : said.with;
        List<Meaning> all = new ArrayList<>();
        List<Meaning> several = meanings(said, context);
        if (!several.isEmpty()) {
            return several.stream().map(Meaning::entry).map(one -> past && one.kind().equals(Deed.DONE.key()) ? new Candidate(one.point(), Deed.TOLD.key(), one.what(), one.is(), one.with()) : one).limit(MOST).toList();
        }
        for (Subject subject : subjects) {
            if (subject.kind() != Deed.DONE && agrees(subject.point(), words, context)) {
                perhaps(subject, said, context, with, all);
            }
        }
        perhapsWork(said, context, past, with, all);
        int most = all.stream().mapToInt(Meaning::plainness).max().orElse(0);
        Set<Candidate> best = new TreeSet<>(Comparator.comparing(Candidate::point).thenComparing(Candidate::what).thenComparing(Candidate::kind).thenComparing(one -> String.valueOf(one.is())));
        all.stream().filter(one -> one.plainness == most).forEach(one -> best.add(one.entry));
        return best.stream().limit(MOST).toList();
    }

    private void perhaps(Subject subject, Said said, List<Word> context, String with, List<Meaning> into) {
        int named = spans(said.words, lexicon.called(subject)).size();
        int own = isNamed(subject.point(), said.words, context) || isOneOfTwo(subject.point(), said.words) ? 1 : 0;
        if (subject.form() == Form.ANSWER) {
            List<Found> found = answers(subject, said.words);
            for (Found one : found) {
                if (one.alone || named + own > 0) {
                    into.add(new Meaning(new Candidate(subject.point(), subject.kind().key(), subject.what(), one.answer, null), 3 * (one.to - one.from) + 2 * named + own, false));
                }
            }
            if (found.isEmpty() && named > 0 && said.amounts.isEmpty()) {
                subject.answers().forEach(answer -> into.add(new Meaning(new Candidate(subject.point(), subject.kind().key(), subject.what(), answer, null), named + own, false)));
            }
        } else if (subject.form() == Form.AMOUNT && (named + own > 0 || isRare(subject) || !context.isEmpty() && lexicon.placeWords(subject.point()).containsAll(context.stream().map(Word::stem).toList()))) {
            for (SpokenAmount amount : said.amounts) {
                boolean fits = amount.unit() == null ? named + own > 0 : subject.units().stream().anyMatch(unit -> unit.dimension() == amount.unit().dimension());
                if (fits) {
                    Unit unit = amount.unit() == null ? subject.units().iterator().next() : amount.unit();
                    into.add(new Meaning(new Candidate(subject.point(), subject.kind().key(), subject.what(), amount.in(unit), subject.kind() == Deed.MEASURED ? with : null), 3 + 2 * named + own, false));
                }
            }
        }
    }

    /** "Pads" without a side: both the inner and the outer may be meant. */
    private static boolean isOneOfTwo(String point, List<Word> words) {
        return point.endsWith("-pad") && words.stream().anyMatch(word -> word.stem().equals("pad"));
    }

    /** True of a unit in which few things are read on this machine: "28 psi" is a tyre or the compression. */
    private boolean isRare(Subject subject) {
        return subjects.stream().filter(one -> one.form() == Form.AMOUNT && one.units().stream().anyMatch(unit -> subject.units().stream().anyMatch(other -> other.dimension() == unit.dimension()))).count() <= 6;
    }

    private void perhapsWork(Said said, List<Word> context, boolean past, String with, List<Meaning> into) {
        for (String work : works) {
            int size = Stream.concat(lexicon.work(work).stream(), lexicon.asked(work).stream()).filter(phrase -> !find(said.words, phrase).isEmpty()).mapToInt(List::size).max().orElse(0);
            if (size == 0 || isPartOfOther(work, said.words, size)) {
                continue;
            }
            Set<String> places = new LinkedHashSet<>();
            points.stream().filter(point -> agrees(point, said.words, context) && (isNamed(point, said.words, context) || isOneOfTwo(point, said.words))).forEach(point -> places.addAll(where(work, point)));
            if (places.isEmpty()) {
                subjects.stream().filter(one -> one.kind() == Deed.DONE && one.what().equals(work) && agrees(one.point(), said.words, context)).map(Subject::point).forEach(places::add);
            }
            places.removeIf(place -> places.stream().anyMatch(other -> !other.equals(place) && Entry.covers(place, other) && fullySaid(other, said.words)));
            String is = work.equals("torqued") && said.amounts.size() == 1 && said.amounts.get(0).unit() != null && said.amounts.get(0).unit().dimension() == Unit.Dimension.TORQUE ? said.amounts.get(0).in(null) : null;
            places.forEach(place -> into.add(new Meaning(new Candidate(place, past ? Deed.TOLD.key() : Deed.DONE.key(), work, is, work.equals("torqued") ? with : null), 3 * size + (fullySaid(place, said.words) ? 2 : 0), false)));
        }
    }

    /** True when the words name no other end or side than that of the place. */
    private boolean agrees(String point, List<Word> words, List<Word> context) {
        Set<String> place = lexicon.placeWords(point);
        boolean ended = point.matches("(front|rear)-.*|transmission/sprockets/.+");
        boolean sided = point.matches(".*(left|right|inner|outer)-.*|.*/(left|right)");
        List<Word> all = new ArrayList<>(context);
        all.addAll(words);
        return all.stream().noneMatch(word -> ended && ENDS.contains(word.text()) && !place.contains(word.stem()) || sided && SIDES.contains(word.text()) && !place.contains(word.stem()))
                && context.stream().allMatch(word -> place.contains(word.stem()) || !ENDS.contains(word.text()));
    }

    /** True when one of the words is for the place itself or for what carries it. */
    boolean namesPlace(List<Word> words, String point) {
        return words.stream().anyMatch(word -> lexicon.placeWords(point).contains(word.stem()));
    }

    /** The words that name a place of this machine, when all of them do; else none. */
    List<Word> place(List<Word> words) {
        List<Word> rest = words.stream().filter(word -> !lexicon.isFiller(word.stem())).toList();
        boolean place = !rest.isEmpty() && points.stream().anyMatch(point -> rest.stream().allMatch(word -> lexicon.placeWords(point).contains(word.stem())));
        return place ? rest : List.of();
    }

    /** Of a clause that was understood: its words for the place, to be understood with what follows. */
    List<Word> placeWords(List<Word> words, List<Word> context, String point) {
        Set<String> place = lexicon.placeWords(point);
        List<Word> kept = new ArrayList<>(context);
        words.stream().filter(word -> place.contains(word.stem()) && !kept.contains(word)).forEach(kept::add);
        return Collections.unmodifiableList(kept);
    }
}

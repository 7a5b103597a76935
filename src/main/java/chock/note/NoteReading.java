package chock.note;

import chock.assess.Subjects;
import chock.note.Note.Candidate;
import chock.note.Note.Choice;
import chock.note.Note.Proposal;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.rulebook.RuleBook;
import chock.rulebook.Synonyms;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Turns a spoken or typed line into proposed entries. It does not guess: what is not understood to its last word is asked, and what
 * was, will be, should be, is not, or was said by somebody else is never an entry of today.
 */
public final class NoteReading {
    private static final Pattern SENTENCES = Pattern.compile("(?<=[.!?])\\s+|\\n+");
    private static final Pattern CLAUSES = Pattern.compile("(?<!\\d),|,(?!\\d)|\\s[-–—]+\\s|[()]|\\s+but\\s+|\\s+then\\s+|\\s+while\\s+|\\s+whereas\\s+");
    private static final Pattern PARTS = Pattern.compile("\\s+(?:and|&|\\+)\\s+");
    private static final Pattern ASKS = Pattern.compile("(?i)\\s*(is|are|was|were|has|have|had|do|does|did|can|could|should|shall|will|would)\\b.*");

    private final Lexicon lexicon;
    private final ClauseReading reading;

    private NoteReading(Lexicon lexicon, ClauseReading reading) {
        this.lexicon = lexicon;
        this.reading = reading;
    }

    /** For notes on this machine: only places and questions that it has, as it is described. */
    public static NoteReading of(JobRecord record, RuleBook book, Subjects subjects) {
        return of(record, book.library().works().keySet(), book.library().synonyms(), subjects);
    }

    /** The same in other words. */
    static NoteReading of(JobRecord record, Set<String> known, Synonyms synonyms, Subjects subjects) {
        Set<String> points = new TreeSet<>();
        subjects.all().forEach(one -> points.addAll(Entry.upFrom(one.point())));
        Set<String> works = new TreeSet<>(known);
        Lexicon lexicon = new Lexicon(synonyms, subjects.all(), points, works, record.instruments());
        return new NoteReading(lexicon, new ClauseReading(lexicon, subjects.all(), points, works));
    }

    /** One clause, and what was made of it. */
    private final class Clause {
        private final String said;
        private final List<Word> words;
        private List<Word> context = List.of();
        private List<Candidate> plain = List.of();
        private List<Candidate> perhaps = List.of();
        private boolean past;

        Clause(String said) {
            this.said = said;
            this.words = lexicon.words(said);
        }

        boolean hedges() {
            return words.stream().anyMatch(word -> lexicon.isHedge(word.stem()) || lexicon.isHedge(word.text()));
        }

        boolean isScope() {
            return words.stream().anyMatch(word -> lexicon.isScope(word.stem()) || lexicon.isScope(word.text()));
        }

        void isOnlyAsked(boolean was) {
            perhaps = plain.isEmpty() ? perhaps : plain;
            plain = List.of();
            past |= was;
        }

        boolean isPast() {
            return past || words.stream().anyMatch(word -> lexicon.isPast(word.stem()) || lexicon.isPast(word.text()) || word.text().matches("(18|19|20)\\d\\d"));
        }

        boolean isAbout() {
            return !plain.isEmpty() || !perhaps.isEmpty();
        }
    }

    /** What stands between two semicolons: clauses that are understood together. */
    private record Segment(List<Clause> clauses, boolean[] asked) { }

    /** What the note may mean. The same note on the same machine gives the same. */
    public Note read(String text) {
        List<List<Segment>> sentences = new ArrayList<>();
        List<Word> heading = List.of();
        for (String sentence : SENTENCES.split(text.strip())) {
            List<Word> place = reading.place(lexicon.words(sentence));
            if (!place.isEmpty()) {
                // "Front brake. Bled. Lever firm." is a heading as one with a colon is.
                heading = place;
            } else if (!sentence.isBlank()) {
                sentences.add(sentence(sentence.strip(), heading));
            }
        }
        if (sentences.isEmpty() && !text.isBlank()) {
            return new Note(List.of(), List.of(), List.of(text.strip()));
        }
        // A sentence about none of the machine's parts, such as "Bill told me all this", may be about every other sentence.
        boolean none = sentences.stream().anyMatch(sentence -> sentence.stream().flatMap(segment -> segment.clauses.stream()).noneMatch(Clause::isAbout));
        boolean past = none && sentences.stream().flatMap(List::stream).flatMap(segment -> segment.clauses.stream()).anyMatch(clause -> !clause.isAbout() && clause.isPast());
        return told(sentences.stream().flatMap(List::stream).toList(), none, past);
    }

    private List<Segment> sentence(String sentence, List<Word> above) {
        boolean asks = sentence.endsWith("?") || ASKS.matcher(sentence).matches();
        List<Segment> segments = new ArrayList<>();
        List<Word> heading = above;
        boolean headed = false;
        for (String part : sentence.replaceAll("[.!?]+$", "").replaceAll("(?i)\\b(front and (rear|back)|(rear|back) and front)\\b", "both").replaceAll("(?i)\\b(left and right|right and left)\\b", "both").split(";")) {
            String rest = part;
            List<Clause> clauses = new ArrayList<>();
            int colon = part.replaceAll("(?<=\\d):(?=\\d)", " ").indexOf(':');
            if (colon >= 0) {
                Clause head = new Clause(part.substring(0, colon).strip());
                heading = reading.place(head.words);
                rest = part.substring(colon + 1);
                if (heading.isEmpty()) {
                    // Under "to do", "from Bill" or "the other one" nothing is a statement about this machine today.
                    clauses.add(head);
                    headed = true;
                }
            }
            List<Word> before = List.of();
            for (String clause : CLAUSES.split(rest)) {
                if (clause.isBlank()) {
                    continue;
                }
                before = read(clause.strip(), heading, before, clauses);
            }
            asks |= clauses.stream().anyMatch(clause -> ASKS.matcher(clause.said).matches());
            segments.add(new Segment(clauses, new boolean[] {headed}));
        }
        boolean all = asks || segments.stream().flatMap(segment -> segment.clauses.stream()).anyMatch(Clause::isScope);
        segments.forEach(segment -> segment.asked[0] |= all || segment.clauses.stream().anyMatch(clause -> !clause.isAbout() && reading.place(clause.words).isEmpty()));
        return segments;
    }

    /** Reads one clause, as a whole or part by part; answers the words of the place for the next one. */
    private List<Word> read(String said, List<Word> heading, List<Word> before, List<Clause> into) {
        List<Word> after = one(said, heading, before, into);
        Clause whole = into.get(into.size() - 1);
        String[] parts = PARTS.split(said);
        if (!whole.plain.isEmpty() || parts.length < 2) {
            return after;
        }
        List<Clause> split = new ArrayList<>();
        List<Word> context = before;
        for (String part : parts) {
            context = part.isBlank() ? context : one(part.strip(), heading, context, split);
        }
        // Parts that are all understood to their last word hold no hedge, though "clean" is one elsewhere.
        boolean hedged = whole.hedges() && split.stream().anyMatch(part -> part.plain.isEmpty());
        if (hedged) {
            // "Last winter the shoes were replaced and the brake was bled" speaks twice of last winter.
            split.forEach(part -> part.isOnlyAsked(whole.isPast()));
        }
        boolean some = hedged || split.stream().anyMatch(part -> !part.plain.isEmpty());
        if (some && split.stream().allMatch(part -> !part.plain.isEmpty() || part.isAbout() && (hedged || !part.hedges()))) {
            into.remove(into.size() - 1);
            into.addAll(split);
            return context;
        }
        return after;
    }

    private List<Word> one(String said, List<Word> heading, List<Word> before, List<Clause> into) {
        Clause clause = new Clause(said);
        into.add(clause);
        for (List<Word> context : contexts(heading, before, clause.words)) {
            List<Candidate> plain = reading.plain(clause.words, context);
            boolean astray = !context.equals(heading) && into.size() > 2 && plain.stream().anyMatch(work -> work.kind().equals("done") && !reading.namesPlace(clause.words, work.point()));
            // "Front wheel removed, tube replaced, refitted": the wheel, or the tube?
            if (!plain.isEmpty() && !astray) {
                clause.context = context;
                clause.plain = plain;
                return reading.placeWords(clause.words, context, plain.get(0).point());
            }
        }
        for (List<Word> context : contexts(heading, before, clause.words)) {
            clause.perhaps = reading.perhaps(clause.words, context, clause.isPast());
            if (!clause.perhaps.isEmpty()) {
                clause.context = context;
                break;
            }
        }
        List<Word> place = reading.place(clause.words);
        boolean one = clause.perhaps.stream().map(Candidate::point).distinct().count() == 1;
        return !place.isEmpty() ? place : one && !clause.hedges() ? reading.placeWords(clause.words, clause.context, clause.perhaps.get(0).point()) : before;
    }

    /** What the clause may go on from: the place just spoken of, its end of the machine, the heading, or nothing. */
    private static List<List<Word>> contexts(List<Word> heading, List<Word> before, List<Word> words) {
        Set<List<Word>> all = new LinkedHashSet<>();
        all.add(before.isEmpty() ? heading : before);
        if (!heading.isEmpty()) {
            all.add(heading);
        }
        all.add(before.stream().filter(NoteReading::isEnd).toList());
        if (words.stream().anyMatch(NoteReading::isEnd)) {
            // "Rear tyre 28 psi, front 26 psi" is about two tyres.
            all.add(before.stream().filter(word -> !isEnd(word)).toList());
        }
        all.add(List.of());
        return List.copyOf(all);
    }

    private static boolean isEnd(Word word) {
        return Set.of("front", "rear", "back").contains(word.text());
    }

    private Note told(List<Segment> segments, boolean none, boolean past) {
        Map<String, Set<String>> answers = new HashMap<>();
        // What is only asked about the same thing counts too: "firm but slowly sinks" says neither.
        segments.forEach(segment -> segment.clauses.forEach(clause -> (clause.plain.isEmpty() ? clause.perhaps : clause.plain).forEach(one -> answers.computeIfAbsent(Entry.key(one.point(), one.what()), key -> new HashSet<>()).add(String.valueOf(one.is())))));
        List<Proposal> proposals = new ArrayList<>();
        List<Choice> choices = new ArrayList<>();
        List<String> unknown = new ArrayList<>();
        Set<Candidate> proposed = new HashSet<>();
        for (Segment segment : segments) {
            for (Clause clause : segment.clauses) {
                boolean twofold = clause.plain.stream().anyMatch(one -> answers.get(Entry.key(one.point(), one.what())).size() > 1);
                if (!clause.plain.isEmpty() && !none && !segment.asked[0] && !twofold) {
                    clause.plain.stream().filter(proposed::add).forEach(one -> proposals.add(new Proposal(one, clause.said)));
                } else if (clause.isAbout()) {
                    boolean was = past || clause.isPast() || segment.asked[0] && segment.clauses.stream().anyMatch(Clause::isPast);
                    choices.add(new Choice(clause.said, (clause.plain.isEmpty() ? clause.perhaps : clause.plain).stream().map(one -> was ? asTold(one) : one).toList()));
                } else if (reading.place(clause.words).isEmpty() || segment.clauses.size() == 1) {
                    unknown.add(clause.said);
                }
            }
        }
        return new Note(List.copyOf(proposals), List.copyOf(choices), List.copyOf(unknown));
    }

    /** Work of another day is told, and its date is open. */
    private static Candidate asTold(Candidate one) {
        return one.kind().equals("done") ? new Candidate(one.point(), "told", one.what(), one.is(), one.with()) : one;
    }
}

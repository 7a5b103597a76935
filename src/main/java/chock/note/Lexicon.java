package chock.note;

import chock.assess.Subjects.Subject;
import chock.quantity.Unit;
import chock.record.Instrument;
import chock.rulebook.Synonyms;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.en.EnglishMinimalStemmer;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.util.automaton.CharacterRunAutomaton;
import org.apache.lucene.util.automaton.LevenshteinAutomata;

/** The words by which a machine can be spoken of: its places, what is asked of each, answers, work and units, and what is said instead. */
final class Lexicon {
    /** Words this short are not guessed at: too many are one letter from another. */
    private static final int SHORTEST_GUESS = 5;
    private static final String SIGN = "signsign";
    private static final Pattern INSTRUMENT_GLUE = Pattern.compile("[^A-Za-z0-9]");

    private final Synonyms synonyms;
    private final Map<String, List<List<String>>> places = new HashMap<>();
    private final Map<String, Unit> units = new LinkedHashMap<>();
    private final Set<String> fillers = new HashSet<>();
    private final Set<String> hedges = new HashSet<>();
    private final Set<String> scopes = new HashSet<>();
    private final Set<String> past = new HashSet<>();
    private final Set<String> known = new HashSet<>();
    private final Map<String, String> instruments = new LinkedHashMap<>();
    private final Map<String, List<String>> stemmed = new HashMap<>();
    private final Map<String, Set<String>> placeWords = new HashMap<>();
    private final Map<String, List<List<String>>> phrases = new HashMap<>();

    /** A unit, and behind which word it ends. */
    record UnitPhrase(Unit unit, int to) { }

    Lexicon(Synonyms synonyms, List<Subject> subjects, Set<String> points, Set<String> works, List<Instrument> instruments) {
        this.synonyms = synonyms;
        points.forEach(this::learnPlace);
        subjects.forEach(this::learn);
        works.forEach(work -> {
            phrasesOf(work, synonyms.works().get(work)).forEach(known::addAll);
            asked(work).forEach(known::addAll);
        });
        for (Unit unit : Unit.values()) {
            for (String phrase : synonyms.units().getOrDefault(unit.symbol(), List.of())) {
                units.put(String.join(" ", stems(phrase)), unit);
                known.addAll(stems(phrase));
            }
        }
        synonyms.fillers().forEach(word -> fillers.addAll(stems(word)));
        synonyms.hedges().forEach(word -> hedges.addAll(stems(word)));
        synonyms.past().forEach(word -> past.addAll(stems(word)));
        synonyms.scopes().forEach(word -> scopes.addAll(stems(word)));
        instruments.forEach(one -> this.instruments.put(glued(one.id()), one.id()));
        List.of(fillers, hedges, past, scopes).forEach(known::addAll);
        known.addAll(List.of("front", "rear", "back", "left", "right", "both", "and", "inner", "outer", "point", "all", "each"));
        known.addAll(SpokenAmount.numbers());
    }

    private void learnPlace(String point) {
        String own = point.substring(point.lastIndexOf('/') + 1);
        String above = point.contains("/") ? point.substring(0, point.lastIndexOf('/')) : "";
        // An end or a side alone is no name: the rear one of the sprockets is the rear sprocket.
        String name = Set.of("front", "rear", "left", "right").contains(own) || synonyms.notAlone().contains(point) ? (synonyms.notAlone().contains(point) ? above + " " + own : own + " " + above.substring(above.lastIndexOf('/') + 1)) : own;
        List<List<String>> phrases = new ArrayList<>(List.of(stems(name.replace('-', ' '))));
        for (Map.Entry<String, List<String>> other : synonyms.places().entrySet()) {
            if (other.getKey().equals(own) || other.getKey().equals(point) || point.endsWith("/" + other.getKey())) {
                other.getValue().forEach(phrase -> phrases.add(stems(phrase)));
            }
        }
        places.put(point, phrases);
        phrases.forEach(known::addAll);
    }

    private void learn(Subject subject) {
        called(subject).forEach(known::addAll);
        subject.answers().forEach(answer -> {
            answers(subject, answer).forEach(known::addAll);
            alone(subject, answer).forEach(known::addAll);
        });
    }

    private List<List<String>> phrasesOf(String name, List<String> others) {
        List<List<String>> phrases = new ArrayList<>(List.of(stems(name.replace('-', ' '))));
        (others == null ? List.<String>of() : others).forEach(other -> phrases.add(stems(other)));
        return phrases;
    }

    private Synonyms.Aspect aspect(Subject subject) {
        return synonyms.aspects().getOrDefault(subject.what(), Synonyms.Aspect.NONE);
    }

    List<List<String>> called(Subject subject) {
        return phrases.computeIfAbsent(subject.what(), what -> phrasesOf(what, aspect(subject).called()));
    }

    List<List<String>> answers(Subject subject, String answer) {
        return phrases.computeIfAbsent(subject.what() + " is " + answer, key -> phrasesOf(answer, aspect(subject).answers().get(answer)));
    }

    List<List<String>> alone(Subject subject, String answer) {
        return phrases.computeIfAbsent(subject.what() + " alone " + answer, key -> aspect(subject).alone().getOrDefault(answer, List.of()).stream().map(this::stems).toList());
    }

    List<List<String>> work(String work) {
        return synonyms.works().containsKey(work) ? synonyms.works().get(work).stream().map(this::stems).toList() : List.of(stems(work.replace('-', ' ')));
    }

    /** How a place itself is called, without what carries it. */
    List<List<String>> own(String point) {
        return places.getOrDefault(point, List.of());
    }

    /** Every word that may stand for a place or for what carries it. */
    Set<String> placeWords(String point) {
        return placeWords.computeIfAbsent(point, this::gathered);
    }

    private Set<String> gathered(String point) {
        Set<String> words = new HashSet<>();
        for (String place = point; !place.isEmpty(); place = place.contains("/") ? place.substring(0, place.lastIndexOf('/')) : "") {
            own(place).forEach(words::addAll);
            if (place.startsWith("rear") || place.endsWith("/rear")) {
                words.add("back");
            }
        }
        return words;
    }

    /** The word for work still to do: {@code bleed}. */
    List<List<String>> asked(String work) {
        return synonyms.toDo().getOrDefault(work, List.of()).stream().map(this::stems).toList();
    }

    boolean isFiller(String stem) {
        return fillers.contains(stem);
    }

    boolean isHedge(String stem) {
        return hedges.contains(stem) || past.contains(stem) || scopes.contains(stem);
    }

    boolean isScope(String stem) {
        return scopes.contains(stem);
    }

    boolean isPast(String stem) {
        return past.contains(stem);
    }

    /** The instrument named by this word, or null. */
    String instrument(String word) {
        return instruments.get(word);
    }

    private static String glued(String id) {
        return INSTRUMENT_GLUE.matcher(id.toLowerCase(Locale.ROOT)).replaceAll("_");
    }

    UnitPhrase unitAt(List<Word> words, int from) {
        for (int length = 4; length > 0; length--) {
            if (from + length <= words.size()) {
                Unit unit = units.get(String.join(" ", words.subList(from, from + length).stream().map(Word::stem).toList()));
                if (unit != null) {
                    return new UnitPhrase(unit, from + length);
                }
            }
        }
        // Behind a number at the end of a clause, "in" is the inch; anywhere else it may be the little word.
        boolean fraction = from > 0 && from < words.size() && words.get(from - 1).text().contains("/");
        return (from == words.size() - 1 || fraction) && words.get(from).text().equals("in") ? new UnitPhrase(Unit.INCH, from + 1) : null;
    }

    /** The words of a clause; what is not known is replaced by the one nearest word, and marked. */
    List<Word> words(String clause) {
        List<Word> words = new ArrayList<>();
        for (String text : tokens(spelled(clause))) {
            String stem = stem(text);
            String near = known.contains(stem) || text.length() < SHORTEST_GUESS || text.matches(".*\\d.*") ? null : nearest(stem);
            words.add(new Word(text, near == null ? stem : near, near != null));
        }
        return words;
    }

    /** Signs become words, a decimal comma a point, and a number loses what is glued to it. */
    private String spelled(String clause) {
        String text = clause;
        for (Map.Entry<String, String> one : instruments.entrySet()) {
            text = text.replaceAll("(?i)(?<![\\w-])" + Pattern.quote(one.getValue()) + "(?![\\w-])", Matcher.quoteReplacement(one.getKey()));
        }
        text = text.replace("½", " 1/2").replace("¼", " 1/4").replace("¾", " 3/4").replace("°C", " celsius").replace("°", " degrees").replace("kΩ", " kilohm").replace("Ω", " ohm")
                .replace("%", " percent").replace("N·m", " nm").replace("N.m", " nm").replace("’", "'").replaceAll("(?<=\\d)\\s*\"", " inches").replaceAll("(?<=\\d),(?=\\d)", ".");
        text = text.replaceAll("(?<=\\d)(?=(mm|cm|psi|bar|kpa|v|nm|in|thou|kg|s|sec|ma|rpm|l)\\b)(?i)", " ");
        // A sign may turn the meaning (-28, >28, ~28, "bled"), so it stays as a word that nothing explains.
        text = text.replaceAll("(?<![\\p{L}\\p{N}])[-−–—]+(?=[\\p{L}\\p{N}])", " " + SIGN + " ").replaceAll("[^\\p{L}\\p{N}\\s'.,/_\\-−–—]", " " + SIGN + " ");
        return text.replaceAll("(?<=\\d)\\s*/\\s*(?=\\d)", "SLASH");
    }

    private static List<String> tokens(String text) {
        List<String> tokens = new ArrayList<>();
        try (StandardTokenizer tokenizer = new StandardTokenizer()) {
            tokenizer.setReader(new StringReader(text));
            TokenStream stream = tokenizer;
            CharTermAttribute term = stream.addAttribute(CharTermAttribute.class);
            stream.reset();
            while (stream.incrementToken()) {
                tokens.add(term.toString().replace("SLASH", "/").toLowerCase(Locale.ROOT));
            }
            stream.end();
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory", e);
        }
        return tokens;
    }

    List<String> stems(String phrase) {
        return stemmed.computeIfAbsent(phrase, Lexicon::split);
    }

    private static List<String> split(String phrase) {
        return tokens(phrase.replace("-", " ")).stream().map(Lexicon::stem).toList();
    }

    private static String stem(String word) {
        char[] letters = word.toCharArray();
        // "is" and "its" are no plurals.
        return word.length() < 4 ? word : new String(Arrays.copyOf(letters, new EnglishMinimalStemmer().stem(letters, letters.length)));
    }

    /** The one word within one slip, or null when there is none, or more than one. */
    private String nearest(String stem) {
        CharacterRunAutomaton within = new CharacterRunAutomaton(new LevenshteinAutomata(stem, true).toAutomaton(1));
        List<String> near = known.stream().filter(word -> word.length() >= SHORTEST_GUESS - 1 && within.run(word)).limit(2).toList();
        return near.size() == 1 ? near.get(0) : null;
    }
}

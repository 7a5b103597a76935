package chock.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How people at the bench say what the rule book calls otherwise.
 *
 * @param places other names of a place, by its path or by its last part alone
 * @param notAlone places whose own name is that of another place too, so that it is said with what carries it
 * @param aspects other names of what is looked at, and of its answers
 * @param works other names of work
 * @param toDo the words by which work is asked for and not said to be done
 * @param units other names of units, by their symbol
 * @param fillers words that say nothing
 * @param hedges words by which a sentence is no statement of today: of its own clause
 * @param scopes the same, of everything in the sentence: hearsay, conditions, books
 * @param past those among the hedges that speak of the past
 */
public record Synonyms(Map<String, List<String>> places, List<String> notAlone, Map<String, Aspect> aspects, Map<String, List<String>> works, Map<String, List<String>> toDo, Map<String, List<String>> units, List<String> fillers,
                       List<String> hedges, List<String> scopes, List<String> past) {
    static final String FILE = "evidence/synonyms.yaml";

    /** Of a rule book without such a file. */
    public static final Synonyms NONE = new Synonyms(Map.of(), List.of(), Map.of(), Map.of(), Map.of(), Map.of(), List.of(), List.of(), List.of(), List.of());

    /**
     * @param called other names
     * @param answers other words for each answer
     * @param alone words that say both, such as {@code no leaks}, for each answer
     */
    public record Aspect(List<String> called, Map<String, List<String>> answers, Map<String, List<String>> alone) {
        public static final Aspect NONE = new Aspect(List.of(), Map.of(), Map.of());
    }

    static Synonyms read(Sheet sheet) {
        if (sheet == null) {
            return NONE;
        }
        Map<String, Aspect> aspects = new LinkedHashMap<>();
        Sheet named = sheet.sheet("aspects");
        if (named != null) {
            for (String name : named.keys()) {
                Sheet one = named.sheet(name);
                aspects.put(name, new Aspect(one.texts("called"), lists(one, "answers"), lists(one, "alone")));
                one.done();
            }
        }
        Synonyms read = new Synonyms(lists(sheet, "places"), sheet.texts("not-alone"), aspects, lists(sheet, "works"), lists(sheet, "to-do"), lists(sheet, "units"), sheet.texts("fillers"), sheet.texts("hedges"), sheet.texts("scopes"), sheet.texts("past"));
        sheet.done();
        return read;
    }

    private static Map<String, List<String>> lists(Sheet above, String key) {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        if (above.has(key)) {
            Sheet sheet = above.sheet(key);
            sheet.keys().forEach(name -> lists.put(name, sheet.texts(name)));
        }
        return lists;
    }

    /** Names in it that the rule book does not know: each would be a word that is never understood. */
    public List<String> strangers(chock.record.Vocabulary words) {
        List<String> strangers = new ArrayList<>();
        places.keySet().stream().filter(place -> words.points().stream().noneMatch(point -> point.equals(place) || point.endsWith("/" + place))).forEach(strangers::add);
        notAlone.stream().filter(place -> !words.points().contains(place)).forEach(strangers::add);
        aspects.forEach((name, aspect) -> {
            var known = words.aspects().get(name);
            if (known == null) {
                strangers.add(name);
            } else {
                aspect.answers.keySet().stream().filter(answer -> !known.answers().contains(answer)).forEach(answer -> strangers.add(name + " " + answer));
                aspect.alone.keySet().stream().filter(answer -> !known.answers().contains(answer)).forEach(answer -> strangers.add(name + " " + answer));
            }
        });
        works.keySet().stream().filter(work -> !words.works().containsKey(work)).forEach(strangers::add);
        toDo.keySet().stream().filter(work -> !words.works().containsKey(work)).forEach(strangers::add);
        units.keySet().stream().filter(unit -> chock.quantity.Unit.spelled(unit).isEmpty()).forEach(strangers::add);
        return strangers;
    }
}

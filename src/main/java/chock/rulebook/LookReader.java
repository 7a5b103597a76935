package chock.rulebook;

import chock.record.Deed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads what one look answers: strictly, and against what the cards of the rule book ask. */
final class LookReader {
    static final String FILE = "looks.yaml";

    private final Map<String, List<String>> places;
    private final Set<String> asked;

    /**
     * @param places words behind the names in braces
     * @param asked place and aspect of everything that is looked at, or null where not all of it is known
     */
    LookReader(Map<String, List<String>> places, Set<String> asked) {
        this.places = places;
        this.asked = asked;
    }

    /** Place and aspect of everything that cards ask to be looked at, tried, measured or told, work left out. */
    static Set<String> asked(Iterable<Card> cards, Map<String, List<String>> places) {
        Set<String> asked = new HashSet<>();
        for (Card card : cards) {
            for (String at : card.place().points(Map.of(), places)) {
                Map<String, String> names = card.place().match(at, places).orElseThrow();
                card.wants().stream().filter(want -> want.weakest() != Deed.DONE).forEach(want -> {
                    Place place = want.place() == null ? card.place() : want.place();
                    place.points(names, places).forEach(point -> asked.add(point + " " + want.aspect()));
                });
            }
        }
        return asked;
    }

    /** The look for each question that belongs to one, by place and aspect. */
    Map<String, Look> read(List<Sheet> sheets) {
        Map<String, Look> looks = new HashMap<>();
        Set<String> names = new HashSet<>();
        for (Sheet sheet : sheets) {
            String name = sheet.text("look");
            if (!names.add(name)) {
                sheet.fault("look", "'" + name + "' is listed twice", "Give each look a name of its own.");
            }
            String says = sheet.text("says");
            Place at = new Place(sheet.text("at"));
            List<String> answers = sheet.texts("answers");
            if (answers.size() < 2) {
                sheet.fault("answers", "one look for one question", "List at least two answers, or leave the look out.");
            }
            sheet.done();
            if (!at.names().stream().allMatch(places::containsKey)) {
                sheet.fault("at", "'" + at + "' is not a place", "Write a place that a card asks at.");
                continue;
            }
            for (String point : at.points(Map.of(), places)) {
                Look look = new Look(name, point, says, points(answers, at.match(point, places).orElseThrow()));
                look.answers().forEach(answer -> enter(sheet, looks, answer, look));
            }
            answers.stream().filter(answer -> asked != null && points(List.of(answer), Map.of()).stream().noneMatch(asked::contains))
                    .forEach(answer -> sheet.fault("answers", "no check asks for '" + answer + "'", "Write a place and what is found there, such as fuel/cap cap-vent; work is no look."));
        }
        return Map.copyOf(looks);
    }

    private static void enter(Sheet sheet, Map<String, Look> looks, String answer, Look look) {
        Look other = looks.put(answer, look);
        if (other != null) {
            sheet.fault("answers", "'" + answer + "' belongs to '" + other.name() + "' as well", "Keep it in one look.");
        }
    }

    private List<String> points(List<String> answers, Map<String, String> binding) {
        List<String> points = new ArrayList<>();
        for (String answer : answers) {
            int blank = answer.lastIndexOf(' ');
            Place place = new Place(answer.substring(0, Math.max(0, blank)));
            if (place.names().stream().allMatch(places::containsKey)) {
                place.points(binding, places).forEach(point -> points.add(point + answer.substring(Math.max(0, blank))));
            }
        }
        return List.copyOf(points);
    }
}

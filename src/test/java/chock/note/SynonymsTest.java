package chock.note;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Subjects;
import chock.assess.Subjects.Subject;
import chock.quantity.Unit;
import chock.record.JobRecord;
import chock.record.Vocabulary.Form;
import chock.rulebook.Synonyms;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Every other word stands for something, and is understood where it stands. */
class SynonymsTest {
    private static final Synonyms WORDS = Spoken.BOOK.library().synonyms();
    private static final List<String> MACHINES = List.of("lark-gaps.yaml", "harrow-prewar-single.yaml", "merle-released.yaml", "lark-on-show.yaml");

    private record Machine(NoteReading reading, List<Subject> subjects) { }

    private static final Map<String, Machine> READINGS = readings();

    private static Map<String, Machine> readings() {
        Map<String, Machine> all = new TreeMap<>();
        for (String name : MACHINES) {
            JobRecord record = Spoken.record(name);
            Subjects subjects = Subjects.of(record, Spoken.BOOK, Spoken.DAY);
            all.put(name, new Machine(NoteReading.of(record, Spoken.BOOK, subjects), subjects.all()));
        }
        return all;
    }

    @Test
    void noneIsOfAThingThatTheRuleBookDoesNotKnow() {
        assertThat(WORDS.strangers(Spoken.BOOK.vocabulary())).isEmpty();
        assertThat(WORDS.aspects()).hasSizeGreaterThan(100);
    }

    /** The place in its own words, then what is said; proposed, or among what is asked. */
    private static boolean understood(Machine machine, String sentence, String point, String what, String is) {
        Note note = machine.reading.read(sentence);
        return note.proposals().stream().map(Note.Proposal::entry).anyMatch(one -> one.point().equals(point) && one.what().equals(what) && (is == null || is.equals(one.is())))
                || note.choices().stream().flatMap(choice -> choice.candidates().stream()).anyMatch(one -> one.point().equals(point) && one.what().equals(what) && (is == null || is.equals(one.is())));
    }

    private static String words(String point) {
        return point.replace('/', ' ').replace('-', ' ');
    }

    @Test
    void eachWordForAnAspectAndForItsAnswers() {
        List<String> missed = new ArrayList<>();
        WORDS.aspects().forEach((name, aspect) -> {
            boolean anywhere = false;
            for (Machine machine : READINGS.values()) {
                for (Subject subject : machine.subjects) {
                    if (!subject.what().equals(name) || subject.form() == null || anywhere) {
                        continue;
                    }
                    anywhere = true;
                    for (String called : aspect.called()) {
                        String is = subject.form() == Form.ANSWER ? subject.answers().iterator().next() : subject.form() == Form.AMOUNT ? "3 " + subject.units().iterator().next().symbol() : "1524";
                        String sentence = words(subject.point()) + " " + called + " " + (subject.form() == Form.ANSWER ? is.replace('-', ' ') : is);
                        if (!understood(machine, sentence, subject.point(), name, subject.form() == Form.ANSWER ? is : null)) {
                            missed.add(sentence);
                        }
                    }
                    aspect.answers().forEach((answer, others) -> others.forEach(other -> {
                        String sentence = words(subject.point()) + " " + words(name) + " " + other;
                        if (!understood(machine, sentence, subject.point(), name, answer)) {
                            missed.add(sentence);
                        }
                    }));
                    aspect.alone().forEach((answer, others) -> others.forEach(other -> {
                        String sentence = words(subject.point()) + " " + other;
                        if (!understood(machine, sentence, subject.point(), name, answer)) {
                            missed.add(sentence);
                        }
                    }));
                }
            }
            if (!anywhere) {
                missed.add(name + " is asked on none of " + MACHINES);
            }
        });
        assertThat(missed).isEmpty();
    }

    @Test
    void eachWordForAPlace() {
        List<String> missed = new ArrayList<>();
        WORDS.places().forEach((place, others) -> {
            String point = READINGS.values().stream().flatMap(machine -> machine.subjects.stream()).flatMap(subject -> chock.record.Entry.upFrom(subject.point()).stream())
                    .filter(at -> at.equals(place) || at.endsWith("/" + place)).findFirst().orElse(null);
            if (point == null) {
                missed.add(place + " is on none of " + MACHINES);
                return;
            }
            for (String other : others) {
                String above = point.contains("/") ? words(point.substring(0, point.lastIndexOf('/'))) + " " : "";
                if (READINGS.values().stream().noneMatch(machine -> understood(machine, above + other + " removed", point, "removed", null))) {
                    missed.add(above + other);
                }
            }
        });
        assertThat(missed).isEmpty();
    }

    @Test
    void eachWordForWork() {
        Machine lark = READINGS.get("lark-gaps.yaml");
        List<String> missed = new ArrayList<>();
        WORDS.works().forEach((work, others) -> {
            String point = lark.subjects.stream().filter(one -> one.form() == null && one.what().equals(work)).map(Subject::point).findFirst().orElse("transmission/chain");
            for (String other : others) {
                boolean before = other.contains("new") || other.equals("put back");
                String sentence = before ? other + " " + words(point) : words(point) + " " + other;
                // Work that no check asks for, at a part that may not have it, is not understood; that is right.
                if (!understood(lark, sentence, point, work, null) && lark.subjects.stream().anyMatch(one -> one.form() == null && one.what().equals(work))) {
                    missed.add(sentence);
                }
            }
        });
        WORDS.toDo().forEach((work, others) -> others.forEach(other -> assertThat(lark.reading.read(other + " the front brake caliper").proposals()).as(other).isEmpty()));
        assertThat(missed).isEmpty();
    }

    @Test
    void eachWordForAUnit() {
        List<String> missed = new ArrayList<>();
        WORDS.units().forEach((symbol, others) -> {
            Unit unit = Unit.spelled(symbol).orElseThrow();
            for (String other : others) {
                boolean read = READINGS.values().stream().anyMatch(machine -> machine.subjects.stream().filter(one -> one.form() == Form.AMOUNT && one.units().stream().anyMatch(u -> u.dimension() == unit.dimension()))
                        .anyMatch(one -> understood(machine, words(one.point()) + " " + words(one.what()) + " 3 " + other, one.point(), one.what(), "3 " + unit.symbol()))
                        || machine.subjects.stream().filter(one -> one.form() == null && one.what().equals("torqued")).anyMatch(one -> understood(machine, words(one.point()) + " torqued 3 " + other, one.point(), "torqued", "3 " + unit.symbol())));
                if (!read) {
                    missed.add("3 " + other);
                }
            }
        });
        assertThat(missed).isEmpty();
    }
}

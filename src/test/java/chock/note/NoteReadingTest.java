package chock.note;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Sentences of the bench, and what becomes of them. */
class NoteReadingTest {
    private static final NoteReading LARK = Spoken.reading("lark-gaps.yaml");

    /** Of the second hundred: expected to be asked, proposed today, and said by the sentence in as many words. */
    private static final Map<String, List<String>> SAYS_SO = Map.of("Bled the front brake, lever is nice and firm", List.of("front-brake/hydraulic done bled"),
            "Put new pads in the front caliper", List.of("front-brake/caliper/inner-pad done replaced", "front-brake/caliper/outer-pad done replaced"),
            "Rear brake lamp switch: stop lamp stays lit", List.of("rear-brake/stop-lamp-switch tried stop-lamp stays-lit"), "Fitted a new rear tube and rim tape", List.of("rear-wheel/tube done replaced"),
            "Front wheel spokes all even", List.of("front-wheel/spokes tried ring even"), "Swinging arm play 0.2 mm", List.of("rear-fork/pivot measured side-play 0.2 mm"));

    @Test
    void sentencesOfTheBench() {
        List<Spoken> all = Spoken.all("sentences.txt");
        assertThat(all).hasSizeGreaterThanOrEqualTo(300);
        List<String> missed = new ArrayList<>();
        for (Spoken one : all) {
            Note note = LARK.read(one.sentence());
            assertThat(one.wrong(note)).as(one.sentence()).isEmpty();
            if (!one.isRight(note)) {
                missed.add(one.sentence() + ": " + note);
            }
        }
        assertThat(missed).hasSizeLessThanOrEqualTo(all.size() / 20);
    }

    @Test
    void trapsAreNeverTaken() {
        List<Spoken> all = Spoken.all("traps.txt");
        assertThat(all).hasSizeGreaterThanOrEqualTo(120);
        assertThat(all).allSatisfy(one -> assertThat(one.wrong(LARK.read(one.sentence()))).as(one.sentence()).isEmpty());
        assertThat(all).allSatisfy(one -> assertThat(one.isRight(LARK.read(one.sentence()))).as(one.sentence() + ": " + LARK.read(one.sentence())).isTrue());
    }

    @Test
    void theSecondHundred() {
        List<Spoken> all = Spoken.all("second.txt");
        assertThat(all).hasSize(100);
        assertThat(all).allSatisfy(one -> {
            Set<String> wrong = one.wrong(LARK.read(one.sentence()));
            wrong.removeAll(SAYS_SO.getOrDefault(one.sentence(), List.of()));
            assertThat(wrong).as(one.sentence()).isEmpty();
        });
        assertThat(all.stream().filter(one -> one.isRight(LARK.read(one.sentence())))).hasSizeGreaterThanOrEqualTo(80);
    }

    /** Whatever is put before or behind a plain statement so that it is none any more. */
    @Test
    void noStatementSurvivesAHedge() {
        List<String> plain = List.of("front brake lever firm", "rear tyre 28 psi", "front brake bled", "head torqued 24 Nm with wrench-1", "horn loud", "rear brake: shoes 3.2 mm, drum sound", "new rear tyre");
        List<String> before = List.of("not", "I think", "Bill says", "he told me that", "tomorrow", "yesterday", "last year", "if", "maybe", "should be:", "the book says", "is", "was", "will be", "no longer", "before the crash", "when I bought it", "almost", "the other bike:",
                "supposed to have", "need", "to do:", "get", "make sure", "who has", "why is", "hopefully", "without", "except", "unless", "until", "seller:", "according to Bill", "never", "in 2019");
        List<String> behind = List.of("?", " I think", ", I think", ", says Bill", " tomorrow", " yesterday", " last year", " if it stops raining", ", maybe", " according to the book", " or not", ", not", " no longer", " before the crash", " when I bought it", " at least", " at most", " not", " soon", " next week",
                " if needed", ", probably", " on the other bike", ", he said", ". That is what Bill told me.", ". Or so I hope.", " in 2019", ", was it", " as far as I know", ", kidding", " in the manual", " unless hot", " - not really", " (Bill)", " wanted", " ordered", " missing");
        for (String one : plain) {
            assertThat(LARK.read(one).proposals()).as(one).isNotEmpty();
            String key = LARK.read(one).proposals().get(LARK.read(one).proposals().size() - 1).said();
            before.forEach(word -> assertThat(LARK.read(word + " " + one).proposals()).as(word + " " + one).noneMatch(p -> one.indexOf(':') < 0 || p.said().equals(one.substring(one.indexOf(':') + 1).strip().split(",")[0])));
            behind.forEach(word -> assertThat(LARK.read(one + word).proposals()).as(one + word).noneMatch(p -> p.said().startsWith(key)));
        }
    }

    @Test
    void onlyWhatTheMachineHas() {
        NoteReading harrow = Spoken.reading("harrow-prewar-single.yaml");
        assertThat(harrow.read("front brake bled").proposals()).isEmpty();
        assertThat(harrow.read("battery 6.4 V").proposals()).isEmpty();
        assertThat(LARK.read("battery 6.4 V").proposals()).hasSize(1);
        assertThat(harrow.read("front brake shoes 3 mm").proposals()).hasSize(1);
        assertThat(LARK.read("front brake shoes 3 mm").proposals()).isEmpty();
    }

    @Test
    void theSameNoteIsReadAlikeEveryTime() {
        String note = "front brake: new pads, 4.2 and 4.1 millimetres, bled, lever firm, no leaks; rear tyre 28 psi cold";
        assertThat(Spoken.reading("lark-gaps.yaml").read(note)).isEqualTo(LARK.read(note));
    }

    @Test
    void oddTextIsNoTrouble() {
        for (String odd : List.of("", " ", ".", ";;;", ":", "::: , ,", "?!", "\u0000\u0001", "🏍 firm", "1/0 psi", "9999999999999999 psi", "rear tyre -28 psi", "rear tyre >28 psi", "rear tyre ~28 psi", "rear tyre 28±2 psi", "rear tyre <= 28 psi", "front brake \"bled\"", "front brake lever firm*", "✗ front brake lever firm", "~~front brake bled~~", "front brake -bled", "a".repeat(4000), "(".repeat(500), "front brake ".repeat(200))) {
            assertThat(LARK.read(odd).proposals()).as(odd).isEmpty();
        }
    }
}

package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.OrderOfWork.Kind;
import chock.assess.OrderOfWork.Step;
import chock.rulebook.Card;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A step keeps apart what to do and what to write, and says both in one text. */
class StepWordsTest {
    private static String says(Kind kind, String doing, String writing) {
        return new Step(1, kind, "front-brake/caliper", "cleaned", doing, writing, false, List.of(), List.of(), null, Card.Needs.STANDING, false, List.of(), null, null, null, null).says();
    }

    @Test
    void whatToWriteComesBehindWhatToDo() {
        assertThat(says(Kind.DO, "Clean the caliper.", "'cleaned'")).isEqualTo("Front brake, caliper: Clean the caliper. Write 'cleaned'.");
        assertThat(says(Kind.PUT_RIGHT, "Fit a new seal.", "'repaired' or 'replaced' on the part, or whatever work it was"))
                .isEqualTo("Front brake, caliper: Fit a new seal. Write 'repaired' or 'replaced' on the part, or whatever work it was.");
        assertThat(says(Kind.PUT_TOGETHER, "put it together again.", "'refitted', or 'replaced'; 'left-off' on what stays off for good"))
                .isEqualTo("Front brake, caliper: put it together again and write 'refitted', or 'replaced'; 'left-off' on what stays off for good.");
        assertThat(says(Kind.PUT_TOGETHER, "tighten it again, to its figure where it has one.", "'torqued' or 'tightened'"))
                .isEqualTo("Front brake, caliper: tighten it again, to its figure where it has one, and write 'torqued' or 'tightened'.");
        assertThat(says(Kind.LOOK, "leaks, dry.", null)).isEqualTo("Front brake, caliper: leaks, dry.");
    }

    @Test
    void whatIsPutTogetherAgainIsToldByTheWorkThatClosesIt() {
        Task tightened = new Task(Kind.PUT_TOGETHER, "rear-wheel/spindle", "tightened", List.of("tightened"));
        assertThat(StepWords.doing(tightened) + " " + StepWords.writing(tightened)).isEqualTo("tighten it again, to its figure where it has one. 'torqued' or 'tightened'");
        Task filled = new Task(Kind.PUT_TOGETHER, "oil/tank", "filled", List.of("filled"));
        assertThat(StepWords.doing(filled) + " " + StepWords.writing(filled)).isEqualTo("fill it again. 'filled'");
        Task refitted = new Task(Kind.PUT_TOGETHER, "oil/tank", "refitted", List.of("refitted"));
        assertThat(StepWords.doing(refitted) + " " + StepWords.writing(refitted)).isEqualTo("put it together again. 'refitted', or 'replaced'; 'left-off' on what stays off for good");
    }
}

package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.OrderOfWork;
import chock.assess.OrderOfWork.Kind;
import chock.record.Gate;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import chock.useful.PrintedMachine;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What stands above the blanks of a printed session. */
class SessionSheetTest {
    private static final RuleBook BOOK = RuleBook.shipped();
    private static final OrderOfWork ORDER = OrderOfWork.of(RecordReader.read("blank.yaml", PrintedMachine.blank(), BOOK.vocabulary(), PrintedMachine.moment()), BOOK, Gate.ROAD_TEST, PrintedMachine.moment());

    /** The comments in one line, without the breaks. */
    private static String comments() {
        return SessionSheet.of(ORDER, BOOK).lines().map(String::strip).filter(line -> line.startsWith("#")).map(line -> line.substring(1).strip()).collect(Collectors.joining(" "));
    }

    @Test
    void workSaysOnceWhatToWrite() {
        List<String> works = ORDER.steps().stream().filter(step -> step.kind() == Kind.DO).map(OrderOfWork.Step::what).distinct().toList();
        assertThat(works).contains("filled", "torqued");
        String comments = comments();
        // The line names the work already: "petrol done filled:".
        works.forEach(work -> assertThat(comments).doesNotContain("Write '" + work + "'"));
        assertThat(comments).contains("fill it with new oil from a sealed bottle, bleed the pump, and write the filling down. Write yes.")
                .contains("with the machine on its wheels, and write it down. Write the figure in N·m, or yes where none was found.");
    }
}

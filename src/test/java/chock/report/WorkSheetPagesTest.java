package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.OrderOfWork;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import chock.useful.PrintedMachine;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The work sheet of a whole machine: every question of the order of work, in its order, on few pages. */
class WorkSheetPagesTest {
    private static final RuleBook BOOK = RuleBook.shipped();
    /** Letter paper is 18 mm shorter than A4. */
    private static final java.util.Map<PaperSize, Integer> MOST_PAGES = java.util.Map.of(PaperSize.A4, 8, PaperSize.LETTER, 9);

    private static OrderOfWork order() {
        JobRecord blank = RecordReader.read("blank.yaml", PrintedMachine.blank(), BOOK.vocabulary(), PrintedMachine.moment());
        return OrderOfWork.of(blank, BOOK, Gate.ROAD_TEST, PrintedMachine.moment());
    }

    @Test
    void aWholeMachineTakesAtMostEightPagesOfA4() throws Exception {
        OrderOfWork order = order();
        for (PaperSize size : PaperSize.values()) {
            byte[] pdf = Papers.pdf(Papers.html(WorkSheet.of(order, BOOK), size), PrintedMachine.moment());
            Files.createDirectories(Path.of("target/bench"));
            Files.write(Path.of("target/bench/worksheet-" + size + ".pdf"), pdf);
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getNumberOfPages()).as(size.toString()).isLessThanOrEqualTo(MOST_PAGES.get(size));
                assertThat(new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ")).contains("at least 1.5 mm").contains("whole and dry");
            }
        }
    }

    @Test
    void everyQuestionHasItsBlankInTheOrderOfWork() {
        OrderOfWork order = order();
        List<WorkSheet.Section> sections = WorkSheet.of(order, BOOK).sections();
        assertThat(sections.stream().flatMap(section -> section.jobs().stream()).map(WorkSheet.Job::number).toList()).isSorted().doesNotHaveDuplicates().hasSize(order.together().size());
        assertThat(sections.stream().flatMap(section -> section.jobs().stream()).mapToInt(job -> job.items().size()).sum()).isEqualTo(order.steps().size());
        assertThat(sections).allSatisfy(section -> assertThat(section.cautions()).doesNotHaveDuplicates());
    }
}

package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessor;
import chock.assess.OrderOfWork;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.ValidationResult;

/** Every paper as a PDF, held against the profile of PDF/UA-1, and what of it the profile does not ask. */
class PaperPdfTest {
    private static final Instant DAY = Instant.parse("2026-11-25T12:00:00Z");
    private static final RuleBook BOOK = RuleBook.shipped();

    // Made once: setting a long paper takes longer than holding it against the profile.
    private static final List<Made> PAPERS = make().toList();

    static {
        VeraGreenfieldFoundryProvider.initialise();
    }

    /** A paper that was made, and words that must stand on it in this order. */
    record Made(String name, byte[] pdf, String title, String first, String then) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static JobRecord read(String name) {
        try {
            return RecordReader.read(name, Files.readAllBytes(Path.of("docs/examples", name)), BOOK.vocabulary(), DAY);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static String statement(String name, PaperSize size) {
        return Papers.html(Statement.of(read(name), BOOK, DAY), size);
    }

    private static String tag(String name, PaperSize size) {
        JobRecord record = read(name);
        return Papers.html(Tag.of(Assessor.assess(record, BOOK, record.seeks(), DAY)), size);
    }

    private static String sheet(String name, PaperSize size) {
        return Papers.html(WorkSheet.of(OrderOfWork.of(read(name), BOOK, Gate.ROAD_TEST, DAY), BOOK), size);
    }

    private static String signOff(Instant moment, PaperSize size) {
        try {
            return Papers.html(SignOffSheetTest.sheet(Files.createTempDirectory(Path.of("target"), "shop"), moment), size);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    static List<Made> papers() {
        return PAPERS;
    }

    private static Stream<Made> make() {
        Map<String, String[]> all = new LinkedHashMap<>();
        all.put("statement of a long record", new String[] {statement("merle-released.yaml", PaperSize.A4), "Condition statement: Tarnbeck Merle 350 Twin, HV-0160", "It may leave to be ridden", "What was measured"});
        all.put("statement of a non-runner", new String[] {statement("lark-non-runner.yaml", PaperSize.LETTER), "Condition statement: Tarnbeck Lark 250, HV-0159", "NOT TO BE RIDDEN", "What was made safe"});
        all.put("tag of four gates", new String[] {tag("merle-released.yaml", PaperSize.LETTER), "Tag for the handlebar: Tarnbeck Merle 350 Twin, HV-0160", "OPEN", "Caution: carbon monoxide"});
        all.put("tag of a blocked machine", new String[] {tag("lark-faults.yaml", PaperSize.A4), "Tag for the handlebar: Tarnbeck Lark 250, HV-0147", "CLOSED", "What holds it"});
        all.put("sign-off sheet", new String[] {signOff(DAY, PaperSize.A4), "Sign-off for road test: Tarnbeck Lark 250, HV-0142", "May be ridden to try it", "Where the limits come from"});
        all.put("sign-off sheet of what lapsed", new String[] {signOff(DAY.plusSeconds(86_400), PaperSize.LETTER), "Sign-off for road test: Tarnbeck Lark 250, HV-0142", "DOES NOT HOLD", "Cautions"});
        all.put("work sheet", new String[] {sheet("lark-worked-on-after.yaml", PaperSize.A4), "Work sheet for road test: Tarnbeck Lark 250, HV-0153", "With the machine standing", "this sheet releases nothing"});
        all.put("work sheet with nothing on it", new String[] {sheet("lark-released.yaml", PaperSize.LETTER), "Work sheet for road test: Tarnbeck Lark 250, HV-0142", "Nothing remains to be done", "this sheet releases nothing"});
        return all.entrySet().stream().map(e -> new Made(e.getKey(), Papers.pdf(e.getValue()[0], DAY), e.getValue()[1], e.getValue()[2], e.getValue()[3]));
    }

    @ParameterizedTest
    @MethodSource("papers")
    void everyPaperKeepsToTheProfile(Made made) throws Exception {
        assertThat(broken(made.pdf())).isEmpty();
    }

    @Test
    void theProfileFindsAPaperThatDoesNotSayWhatItIs() throws Exception {
        ByteArrayOutputStream poorer = new ByteArrayOutputStream();
        try (PDDocument document = Loader.loadPDF(Papers.pdf(tag("lark-non-runner.yaml", PaperSize.A4), DAY))) {
            document.getDocumentCatalog().setMetadata(null);
            document.save(poorer);
        }
        assertThat(broken(poorer.toByteArray())).anyMatch(rule -> rule.startsWith("7.1-8"));
    }

    /** The clauses of the profile that a file does not keep. */
    private static TreeSet<String> broken(byte[] pdf) throws Exception {
        try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(pdf), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            ValidationResult result = validator.validate(parser);
            TreeSet<String> broken = new TreeSet<>();
            result.getTestAssertions().forEach(a -> broken.add(a.getRuleId().getClause() + "-" + a.getRuleId().getTestNumber() + ": " + a.getMessage()));
            assertThat(result.getTotalAssertions()).as("assertions tried").isGreaterThan(100);
            assertThat(result.isCompliant()).isEqualTo(broken.isEmpty());
            return broken;
        }
    }

    @ParameterizedTest
    @MethodSource("papers")
    void everyPaperCanBeReadAndFound(Made made) throws IOException {
        try (PDDocument document = Loader.loadPDF(made.pdf())) {
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo(made.title());
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(document.getDocumentCatalog().getStructureTreeRoot()).isNotNull();
            assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertThat(text).containsSubsequence(made.first(), made.then()).contains("Local law and the licensed inspector or technician decide.");
            int fonts = 0;
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                    assertThat(font.getName()).as("only the letters used").matches("[A-Z]{6}\\+.+");
                    fonts++;
                }
            }
            assertThat(fonts).isPositive();
        }
    }

    @Test
    void aTagIsOneSheetAndALongPaperCountsItsPages() throws IOException {
        try (PDDocument tag = Loader.loadPDF(Papers.pdf(tag("lark-worked-on-after.yaml", PaperSize.LETTER), DAY));
                PDDocument statement = Loader.loadPDF(PAPERS.get(0).pdf())) {
            assertThat(tag.getNumberOfPages()).isEqualTo(1);
            assertThat(tag.getPage(0).getMediaBox().getWidth()).isEqualTo(612);
            int pages = statement.getNumberOfPages();
            assertThat(pages).isGreaterThan(5);
            assertThat(new PDFTextStripper().getText(statement)).contains("page 1 of " + pages, "page " + pages + " of " + pages);
        }
    }

    @Test
    void noTimeOfDayAndNoDigestIsBrokenBehindItsColon() throws IOException {
        for (Made made : PAPERS) {
            try (PDDocument document = Loader.loadPDF(made.pdf())) {
                assertThat(new PDFTextStripper().getText(document)).as(made.name()).doesNotContainPattern("(\\d|sha256):\\s*\\R\\s*[0-9a-f]{2}");
            }
        }
    }

    @Test
    void aTagWithEveryGateOnItIsStillOneSheet() throws IOException {
        for (PaperSize size : PaperSize.values()) {
            for (String name : List.of("merle-released.yaml", "lark-non-runner.yaml")) {
                Tag tag = Tag.of(Assessor.assess(read(name), BOOK, List.of(Gate.values()), DAY));
                assertThat(tag.gates()).hasSize(6);
                try (PDDocument document = Loader.loadPDF(Papers.pdf(Papers.html(tag, size), DAY))) {
                    assertThat(document.getNumberOfPages()).as(name + " on " + size).isEqualTo(1);
                }
            }
        }
    }

    @Test
    void theSameRecordAndMomentGiveTheSameBytes() {
        String html = statement("lark-non-runner.yaml", PaperSize.A4);
        assertThat(Papers.pdf(html, DAY)).isEqualTo(Papers.pdf(html, DAY));
    }
}

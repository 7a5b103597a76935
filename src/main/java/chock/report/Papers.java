package chock.report;

import com.openhtmltopdf.extend.FSTextBreaker;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.BreakIterator;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The papers that go with a machine, each from one template, as a page or as a PDF with its fonts inside. */
public final class Papers {
    private record Font(String file, String family, int weight, FontStyle style) { }

    private static final String SANS = "/com/formdev/flatlaf/fonts/roboto/Roboto-";
    private static final String SERIF = "/liberation/LiberationSerif-";
    private static final List<Font> FONTS = List.of(
            new Font(SANS + "Regular.ttf", "Roboto", 400, FontStyle.NORMAL), new Font(SANS + "Bold.ttf", "Roboto", 700, FontStyle.NORMAL),
            new Font(SERIF + "Regular.ttf", "Liberation Serif", 400, FontStyle.NORMAL), new Font(SERIF + "Bold.ttf", "Liberation Serif", 700, FontStyle.NORMAL),
            new Font(SERIF + "Italic.ttf", "Liberation Serif", 400, FontStyle.ITALIC));

    private Papers() { }

    /** The condition statement as a page that needs nothing else, in UTF-8. */
    public static String html(Statement statement, PaperSize size) {
        return html("statement.jte", Map.of("it", statement, "size", size));
    }

    /** The hang tag as a page. */
    public static String html(Tag tag, PaperSize size) {
        return html("tag.jte", Map.of("it", tag, "size", size));
    }

    /** The work sheet as a page. */
    public static String html(WorkSheet sheet, PaperSize size) {
        return html("worksheet.jte", Map.of("it", sheet, "size", size));
    }

    /** The sign-off sheet as a page. */
    public static String html(SignOffSheet sheet, PaperSize size) {
        Map<String, Object> model = new HashMap<>(Map.of("it", sheet, "size", size));
        model.put("code", QrCode.picture(sheet.seal()));
        return html("signoff.jte", model);
    }

    private static String html(String template, Map<String, Object> model) {
        StringOutput page = new StringOutput();
        TemplateEngine.createPrecompiled(null, ContentType.Html, Papers.class.getClassLoader(), "chock.report.page").render(template, model, page);
        return page.toString().lines().map(Page::clean).filter(line -> !line.isBlank()).collect(Collectors.joining("\n", "", "\n"));
    }

    /**
     * The same page as a tagged PDF (PDF/UA-1): text to select, fonts embedded, title and language set.
     *
     * @param html a page made here
     * @param made what the file says of when it was made; the same page and moment give the same bytes
     */
    public static byte[] pdf(String html, Instant made) {
        XRLog.setLoggingEnabled(false);
        PdfRendererBuilder builder = new PdfRendererBuilder().withHtmlContent(html, null).withProducer("chock").usePdfUaAccessibility(true).useUnicodeLineBreaker(new Breaks());
        FONTS.forEach(font -> builder.useFont(() -> open(font.file), font.family, font.weight, font.style, true));
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            document.setDocumentId(made.toEpochMilli());
            document.getDocumentInformation().setCreationDate(GregorianCalendar.from(made.atZone(ZoneOffset.UTC)));
            document.save(pdf);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return pdf.toByteArray();
    }

    /** Where a line may end: not inside a time of day, a digest or the name of a file. */
    private static final class Breaks implements FSTextBreaker {
        private final BreakIterator all = BreakIterator.getLineInstance(Locale.UK);
        private String text = "";

        @Override
        public int next() {
            int at = all.next();
            while (at > 0 && at < text.length() && ":.".indexOf(text.charAt(at - 1)) >= 0 && Character.isLetterOrDigit(text.charAt(at))) {
                at = all.next();
            }
            return at;
        }

        @Override
        public void setText(String words) {
            text = words;
            all.setText(words);
        }
    }

    private static InputStream open(String font) {
        InputStream file = Papers.class.getResourceAsStream(font);
        if (file == null) {
            throw new IllegalStateException("its font " + font + " is not inside");
        }
        return file;
    }
}

package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessment;
import chock.assess.Foresight;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The same record, rule book and moment give the same bytes, wherever and however often they are judged. */
class SameBytesTest {
    private static final Instant DAY = Instant.parse("2026-11-25T12:00:00Z");
    private static final Locale HERE = Locale.getDefault();
    private static final TimeZone ZONE = TimeZone.getDefault();

    @AfterEach
    void backHome() {
        Locale.setDefault(HERE);
        TimeZone.setDefault(ZONE);
    }

    /** Read, loaded and judged anew, in every form. */
    private static String everything(String name) throws IOException {
        RuleBook book = RuleBook.shipped();
        JobRecord record = RecordReader.read(name, Files.readAllBytes(Path.of("docs/examples", name)), book.vocabulary(), DAY);
        return told(record, book) + StatementText.of(Statement.of(record, book, DAY), false);
    }

    private static String told(JobRecord record, RuleBook book) {
        List<Assessment> judged = List.of(Foresight.assess(record, book, record.seeks(), DAY));
        return JsonReport.of(judged) + TextReport.of(judged, false) + HtmlReport.of(judged);
    }

    /** Turkish has an I of its own, Arabic and Hindi digits of their own, German and Lithuanian commas before decimals. */
    @ParameterizedTest
    @CsvSource({"tr-TR, Europe/Istanbul", "ar-EG-u-nu-arab, Africa/Cairo", "hi-IN-u-nu-deva, Asia/Kolkata", "de-DE, America/St_Johns", "lt-LT, Pacific/Kiritimati", "th-TH-u-ca-buddhist-nu-thai, Pacific/Pago_Pago"})
    void inEveryCountry(String locale, String zone) throws IOException {
        String here = everything("merle-released.yaml");
        String faults = everything("lark-faults.yaml");
        Locale.setDefault(Locale.forLanguageTag(locale));
        TimeZone.setDefault(TimeZone.getTimeZone(zone));
        assertThat(everything("merle-released.yaml")).isEqualTo(here);
        assertThat(everything("lark-faults.yaml")).isEqualTo(faults);
    }

    @Test
    void asOftenAsYouLike() throws IOException {
        assertThat(everything("lark-worked-on-after.yaml")).isEqualTo(everything("lark-worked-on-after.yaml"));
    }

    /** In which order lines stand in the file says nothing; when they were written does. */
    @ParameterizedTest
    @ValueSource(strings = {"lark-released.yaml", "lark-faults.yaml", "lark-worked-on-after.yaml", "harrow-prewar-single.yaml"})
    void inWhicheverOrderTheLinesStand(String name) throws IOException {
        RuleBook book = RuleBook.shipped();
        JobRecord record = RecordReader.read(name, Files.readAllBytes(Path.of("docs/examples", name)), book.vocabulary(), DAY);
        for (int seed = 1; seed <= 5; seed++) {
            List<Entry> shuffled = new ArrayList<>(record.entries());
            Collections.shuffle(shuffled, new Random(seed));
            JobRecord other = record.withEntries(shuffled);
            assertThat(told(other, book)).as("shuffled with seed " + seed).isEqualTo(told(record, book));
        }
    }
}

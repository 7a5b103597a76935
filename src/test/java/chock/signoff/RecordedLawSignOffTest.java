package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.RecordedLawText;
import chock.report.Papers;
import chock.report.PaperSize;
import chock.report.SignOffSheet;
import chock.report.SignOffSheetText;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A release that rests on the law in the record: what is signed, and what ends it. */
class RecordedLawSignOffTest {
    @TempDir
    private Path folder;
    private ShopBench bench;

    @BeforeEach
    void setUp() throws IOException {
        bench = new ShopBench(folder);
    }

    private static String payload(SignOffs.Signed signed) {
        return new String(signed.signOff().bytes(), StandardCharsets.UTF_8);
    }

    @Test
    void the_sign_off_carries_it_and_verifies() throws IOException {
        Files.writeString(bench.record, RecordedLawText.whole());
        SignOffs.Signed signed = bench.sign();
        assertThat(signed.signOff().recordedLaw()).startsWith("The law of FR is not in this rule book. It is taken as this record has it: Vehicle Order 1967");
        assertThat(signed.signOff().localCode()).endsWith("; not checked here");
        assertThat(payload(signed)).contains("\"recordedLaw\":\"The law of FR");
        Verification found = bench.verify(signed.file(), true, ShopBench.NOON);
        assertThat(found.things()).allSatisfy(thing -> assertThat(thing.holds()).as(thing.says()).isNotEqualTo(Verification.Holds.NO));
        String sheet = Papers.html(SignOffSheet.of(found, ShopBench.NOON), PaperSize.A4);
        assertThat(sheet).containsSubsequence("Sign-off:", "Law not checked here.", "The law of FR is not in this rule book", "May be ridden to try it");
        assertThat(SignOffSheetText.of(SignOffSheet.of(found, ShopBench.NOON), false)).containsSubsequence("LAW NOT CHECKED HERE", "The law of FR is not in this rule", "May be ridden to try it");
    }

    @Test
    void a_sign_off_without_it_is_written_as_before() throws IOException {
        SignOffs.Signed signed = bench.sign();
        assertThat(signed.signOff().recordedLaw()).isNull();
        assertThat(payload(signed)).doesNotContain("recordedLaw");
        String sheet = Papers.html(SignOffSheet.of(bench.verify(signed.file(), true, ShopBench.NOON), ShopBench.NOON), PaperSize.A4);
        assertThat(sheet).doesNotContain("Law not checked here");
    }

    @Test
    void a_law_that_says_something_else_now_ends_it() throws IOException {
        Files.writeString(bench.record, RecordedLawText.whole());
        SignOffs.Signed signed = bench.sign();
        for (String other : new String[] {RecordedLawText.whole().replace("at-least: 1.6 mm", "at-least: 1.7 mm"), RecordedLawText.without("FR")}) {
            Verification found = bench.verify(Files.readAllBytes(signed.file()), other.getBytes(StandardCharsets.UTF_8), ShopBench.NOON);
            assertThat(found.holds()).isFalse();
            assertThat(found.things()).extracting(Verification.Thing::says).anySatisfy(says -> assertThat(says).contains("'local-law' says something else"));
        }
    }
}

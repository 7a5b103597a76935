package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Finding;
import chock.assess.State;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.report.JsonReport;
import chock.report.TextReport;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a workshop knows of its instruments reaches every record that used them. */
class WorkshopRegisterTest {
    private static final RuleBook BOOK = RuleBook.shipped();
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    private static final String REGISTER = """
            chock: instruments/1
            instruments:
              - id: wrench-1
                kind: torque-wrench
                calibrations:
                  - {on: 2026-03-02, due: 2027-03-02, certificate: C-118}
                found-out:
                  - {on: 2026-11-24, by: Nora Pell, says: reads 18 % low at 40 N·m}
            people:
              - {id: ida, name: Ida Marrow}
            """;
    @TempDir private Path folder;

    private static JobRecord lark(Instant asOf) throws IOException {
        return RecordReader.read("lark", Files.readAllBytes(Path.of("docs/examples/lark-released.yaml")), BOOK.vocabulary(), asOf);
    }

    private RuleBook with(String register) throws IOException {
        return BOOK.withRegister(Files.writeString(folder.resolve("instruments.yaml"), register));
    }

    private static Assessment judged(RuleBook book, Instant asOf) throws IOException {
        JobRecord record = book.heldAgainstRegister(lark(asOf), asOf);
        return Assessor.assess(record, book, record.seeks(), asOf);
    }

    private static List<String> open(Assessment assessment) {
        return assessment.gates().get(0).findings().stream().filter(f -> f.state() != State.MET).map(Finding::check).toList();
    }

    @Test
    void a_finding_about_a_wrench_undoes_what_was_torqued_with_it_in_a_record_that_does_not_know_the_finding() throws IOException {
        assertThat(open(judged(BOOK, NOON))).isEmpty();
        Assessment found = judged(with(REGISTER), NOON);
        assertThat(open(found)).contains("brakes.caliper-bolts", "tyres.spindle-torque", "fasteners.engine-mounts", "record.instrument-calibrated");
        Finding bolts = found.gates().get(0).findings().stream().filter(f -> f.check().equals("brakes.caliper-bolts")).findFirst().orElseThrow();
        assertThat(bolts.state()).isEqualTo(State.STALE);
        assertThat(bolts.says()).contains("was done with wrench-1, later found out of tolerance (register:wrench-1:1)");
        assertThat(found.record().entry("register:wrench-1:1")).hasValueSatisfying(e -> {
            assertThat(e.deed()).isEqualTo(Deed.FOUND_OUT);
            assertThat(e.what()).isEqualTo("reads 18 % low at 40 N·m");
            assertThat(found.record().nameOf(e.by())).isEqualTo("Nora Pell");
        });
    }

    @Test
    void a_finding_of_a_later_day_was_not_known() throws IOException {
        assertThat(open(judged(with(REGISTER.replace("2026-11-24", "2026-11-26")), NOON))).isEmpty();
    }

    @Test
    void a_finding_about_an_instrument_the_record_did_not_use_changes_nothing() throws IOException {
        assertThat(open(judged(with(REGISTER.replace("wrench-1", "wrench-7")), NOON))).isEmpty();
    }

    @Test
    void the_register_says_when_an_instrument_was_calibrated_and_earlier_work_keeps_the_calibration_it_had() throws IOException {
        String lapsed = REGISTER.replaceAll("    found-out:\n.*\n", "").replace("{on: 2026-03-02, due: 2027-03-02, certificate: C-118}", "{on: 2025-11-10, due: 2026-11-10}");
        Assessment found = judged(with(lapsed), NOON);
        assertThat(open(found)).contains("brakes.caliper-bolts", "record.instrument-calibrated");
        assertThat(found.gates().get(0).findings()).anySatisfy(f -> assertThat(f.says()).contains("outside its calibration (2025-11-10 to 2026-11-10)"));
        String again = lapsed.replace("due: 2026-11-10}", "due: 2026-11-20}\n      - {on: 2026-11-22, due: 2027-11-22}");
        assertThat(open(judged(with(again), NOON))).as("torqued on 18 November, calibrated anew on 22 November").isEmpty();
    }

    @Test
    void work_done_after_it_was_calibrated_anew_is_not_reached() throws IOException {
        String again = REGISTER.replace("2026-11-24", "2026-11-10").replace("certificate: C-118}", "certificate: C-118}\n      - {on: 2026-11-12, due: 2027-11-12}");
        assertThat(open(judged(with(again), NOON))).as("found out on 10 November, calibrated on 12, torqued on 18").isEmpty();
    }

    @Test
    void the_verdict_says_which_register_and_what_is_not_in_it() throws IOException {
        assertThat(TextReport.of(List.of(judged(BOOK, NOON)), false)).contains("Register:   none; findings about instruments in other records are not known");
        assertThat(JsonReport.of(List.of(judged(BOOK, NOON)))).contains("\"register\" : null");
        RuleBook book = with(REGISTER.replace("name: Ida Marrow", "name: Ina Marrow"));
        Assessment found = judged(book, NOON);
        assertThat(found.record().register().digest()).isEqualTo(book.registerDigest()).startsWith("sha256:");
        assertThat(found.record().register().unknown()).contains("instrument cal-1", "person ida, Ida Marrow (the register has Ina Marrow)", "person tom, Tom Fell").noneMatch(u -> u.contains("wrench-1"));
        assertThat(JsonReport.of(List.of(found))).contains("\"unknown\" : [").contains("instrument cal-1");
        assertThat(TextReport.of(List.of(found), false)).contains("not in it: instrument");
    }

    @Test
    void a_changed_file_is_read_again() throws IOException {
        RuleBook book = with(REGISTER.replace("2026-11-24", "2026-11-26"));
        assertThat(open(judged(book, NOON))).isEmpty();
        String before = book.registerDigest();
        Files.writeString(folder.resolve("instruments.yaml"), REGISTER);
        assertThat(open(judged(book, NOON))).isNotEmpty();
        assertThat(book.registerDigest()).isNotEqualTo(before);
        Files.delete(folder.resolve("instruments.yaml"));
        assertThatThrownBy(() -> judged(book, NOON)).isInstanceOf(UnusableInput.class).hasMessageContaining("there is no such file");
    }

    @Test
    void applied_twice_it_says_everything_once() throws IOException {
        RuleBook book = with(REGISTER);
        JobRecord once = book.heldAgainstRegister(lark(NOON), NOON);
        assertThat(book.heldAgainstRegister(once, NOON).entries()).extracting(Entry::id).doesNotHaveDuplicates().contains("register:wrench-1:1");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "chock: instruments/1 | chock: instruments/2 | instruments.yaml:1: chock: 'instruments/2': write instruments/1, the only form this program reads",
        "kind: torque-wrench | kind: spanner | instruments.yaml:4: instruments[0].kind: 'spanner' is not a kind of instrument this rule book knows",
        "due: 2027-03-02 | due: 2025-03-02 | instruments[0].calibrations[0].due: due 2025-03-02, before it was calibrated (2026-03-02). Look at both again on the certificate.",
        "on: 2026-11-24 | on: yesterday | instruments[0].found-out[0].on: 'yesterday' is not a date. Write it as 2026-11-25.",
        "says: | reads: | instruments[0].found-out[0].says: the key is missing. Add says:",
        "people: | staff: | unknown key 'staff'. Known here: chock, instruments, people."})
    void what_is_wrong_with_it_is_said_with_its_line(String good, String bad, String says) {
        assertThat(REGISTER).contains(good);
        assertThatThrownBy(() -> with(REGISTER.replace(good, bad))).isInstanceOf(UnusableInput.class).hasMessageContaining(says);
    }

    @Test
    void an_instrument_without_a_calibration_and_one_listed_twice_are_refused() {
        assertThatThrownBy(() -> with("chock: instruments/1\ninstruments:\n  - {id: a, kind: caliper, calibrations: []}\n")).hasMessageContaining("no calibration is listed. List each as {on: 2026-03-02, due: 2027-03-02}.");
        assertThatThrownBy(() -> with("chock: instruments/1\ninstruments: []\n")).hasMessageContaining("no instrument is listed");
        String one = "  - {id: a, kind: caliper, calibrations: [{on: 2026-03-02, due: 2027-03-02}]}\n";
        assertThatThrownBy(() -> with("chock: instruments/1\ninstruments:\n" + one + one)).hasMessageContaining("the instrument 'a' is listed twice");
    }
}

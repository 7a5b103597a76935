package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessor;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.useful.PrintedMachine;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the bench takes in presses, read off the pages it sends, with the same machine and findings as by file. */
@Tag("slow")
class BenchCountTest {
    @TempDir
    private Path folder;
    private Running running;
    private Visit ida;
    private Visit tom;

    @BeforeEach
    void start() {
        running = new Running(folder);
        running.pass(Duration.between(Bench.NOON, PrintedMachine.moment().minus(Duration.ofHours(5))));
        Visit lead = running.lead();
        ida = running.person(lead, "ida", "Ida Marrow", "inspector");
        tom = running.person(lead, "tom", "Tom Fell", "technician");
    }

    @AfterEach
    void stop() {
        running.close();
    }

    private String machine(String number) {
        String text = new String(PrintedMachine.blank(), StandardCharsets.UTF_8).replaceFirst("record: \"[^\"]*\"", "record: \"" + number + "\"");
        return running.board.shop().take(number, text.getBytes(StandardCharsets.UTF_8), "lead", null).machine();
    }

    private static void tell(String what, Hand hand) throws Exception {
        String line = String.format(Locale.ROOT, "%s: %d entries in %d steps, %d presses (%.2f an entry; %d on the pad, %d instruments, %d skips), modelled %.1f min, of which the board %.1f s%n", what, hand.entries, hand.steps, hand.presses,
                (double) hand.presses / hand.entries, hand.digits, hand.instruments, hand.skips, hand.modelledMinutes(), hand.waited / 1e9);
        System.out.print(line);
        Files.createDirectories(Path.of("target/bench"));
        Files.writeString(Path.of("target/bench", what.replace(' ', '-') + ".txt"), line);
    }

    @Test
    void both_brakes_take_no_more_than_is_allowed() throws Exception {
        Hand hand = new Hand(running, ida, machine("HV-7201"));
        hand.begin("front-brake", "rear-brake");
        hand.work();
        tell("both brakes", hand);
        assertThat(hand.entries).isGreaterThanOrEqualTo(45);
        assertThat(hand.presses).isLessThanOrEqualTo(155);
        assertThat(hand.modelledMinutes()).isLessThanOrEqualTo(4);
    }

    @Test
    void a_whole_machine_takes_no_more_than_is_allowed_and_is_released() throws Exception {
        String machine = machine("HV-7202");
        Hand hand = new Hand(running, ida, machine);
        hand.begin();
        hand.work();
        // What Ida torqued and bled, somebody else looks at.
        hand.handedTo(tom).begin();
        hand.work();
        tell("whole machine", hand);
        JobRecord record = running.board.shop().find(machine).map(kept -> new Judging(Bench.book()).read(kept, running.now())).orElseThrow();
        assertThat(Assessor.assess(record, Bench.book(), List.of(Gate.ROAD_TEST), running.now()).gates().get(0).open()).extracting(f -> f.check() + ": " + f.says()).isEmpty();
        assertThat(record.entries()).hasSize(hand.entries);
        assertThat(hand.presses).isLessThanOrEqualTo(800);
        assertThat((double) hand.presses / hand.entries).isLessThanOrEqualTo(2.6);
        assertThat(hand.modelledMinutes()).isLessThanOrEqualTo(25);
    }
}

package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LedgerTest {
    @TempDir private Path folder;
    private ShopBench bench;

    @BeforeEach
    void fourLines() throws IOException {
        bench = new ShopBench(folder);
        bench.refuse("HV-0001");
        bench.refuse("HV-0002");
    }

    @Test
    void each_line_carries_the_digest_of_the_one_before() throws Exception {
        List<String> lines = Files.readAllLines(bench.ledger());
        assertThat(lines).hasSize(4);
        assertThat(Ledgers.verify(bench.shop())).isEqualTo(new Ledgers.Checked(4, lines.get(3).substring(0, 64), null));
        String before = "0".repeat(64);
        for (String line : lines) {
            String json = line.substring(65);
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(json.getBytes(StandardCharsets.UTF_8));
            assertThat(line).startsWith(HexFormat.of().formatHex(digest) + " {");
            assertThat(json).contains("\"previous\":\"" + before + "\"");
            before = line.substring(0, 64);
        }
    }

    @Test
    void no_byte_can_be_altered_left_out_or_put_in() throws IOException {
        byte[] good = Files.readAllBytes(bench.ledger());
        assertThat(LedgerText.parse(good).isSound()).isTrue();
        for (int i = 0; i < good.length; i++) {
            for (int flip : new int[] {1, 0x20, 0x80}) {
                byte[] altered = good.clone();
                altered[i] ^= (byte) flip;
                assertThat(LedgerText.parse(altered).isSound()).as("byte %d, flipped by %d", i, flip).isFalse();
            }
            byte[] without = new byte[good.length - 1];
            System.arraycopy(good, 0, without, 0, i);
            System.arraycopy(good, i + 1, without, i, good.length - 1 - i);
            assertThat(LedgerText.parse(without).isSound()).as("without byte %d", i).isFalse();
            byte[] with = Arrays.copyOf(good, good.length + 1);
            System.arraycopy(good, i, with, i + 1, good.length - i);
            assertThat(LedgerText.parse(with).isSound()).as("byte %d twice", i).isFalse();
        }
    }

    @Test
    void the_first_bad_line_is_named() throws IOException {
        List<String> good = Files.readAllLines(bench.ledger());
        assertThat(fault(good.get(0), good.get(1), good.get(2).replace("HV-0001", "HV-0009"), good.get(3))).isEqualTo(
                bench.ledger() + ":3: the ledger is not sound: it was altered. Nothing is written to it: find out who changed it, and put the kept copy back");
        assertThat(fault(good.get(0), good.get(1), good.get(3))).contains(":3: the ledger is not sound: it is numbered 4; lines before it were taken out or put in");
        assertThat(fault(good.get(0), good.get(2))).contains(":2: ").contains("it is numbered 3");
        assertThat(fault(good.get(1), good.get(0))).contains(":1: ").contains("it is numbered 2");
        assertThat(fault(good.get(0), good.get(1), good.get(2), good.get(2))).contains(":4: ").contains("it is numbered 3");
        assertThat(fault(good.get(0), good.get(1), good.get(2), good.get(3).replace("\"at\":", "\"at\" :"))).contains(":4: ").contains("it was altered");
    }

    private String fault(String... lines) throws IOException {
        Files.writeString(bench.ledger(), String.join("\n", lines) + "\n");
        String fault = Ledgers.verify(bench.shop()).fault();
        assertThatThrownBy(() -> OpenLedger.at(bench.ledger())).isInstanceOf(UnusableInput.class).hasMessage(fault);
        assertThatThrownBy(() -> Ledgers.recover(bench.shop(), bench.clock())).isInstanceOf(UnusableInput.class).hasMessage(fault);
        return fault;
    }

    @Test
    void a_ledger_chained_anew_is_betrayed_by_the_first_line_that_a_key_signed() throws IOException {
        bench.at(ShopBench.NOON.plusSeconds(60));
        bench.sign();
        List<LedgerLine> lines = Ledgers.lines(bench.ledger());
        assertThat(lines).extracting(LedgerLine::kind).containsExactly("key-trusted", "key-trusted", "refused", "refused", "signed");
        StringBuilder forged = new StringBuilder();
        String before = LedgerLine.NOTHING_BEFORE;
        for (LedgerLine line : lines) {
            ObjectNode said = line.said().deepCopy().put("previous", before);
            if (line.number() == 3) {
                said.put("why", "nothing");
            }
            LedgerLine written = LedgerLine.of(said);
            before = written.digest();
            forged.append(new String(written.bytes(), StandardCharsets.UTF_8));
        }
        Files.writeString(bench.ledger(), forged);
        assertThat(LedgerText.parse(Files.readAllBytes(bench.ledger())).isSound()).as("the chain alone").isTrue();
        assertThat(Ledgers.verify(bench.shop()).fault()).contains(":5: the ledger is not sound: it does not carry the signature of Ida Marrow, who should have written it");
    }

    @Test
    void a_line_torn_anywhere_is_told_and_mended_and_no_line_before_it_is_lost() throws IOException {
        byte[] good = Files.readAllBytes(bench.ledger());
        int last = new String(good, StandardCharsets.UTF_8).lastIndexOf('\n', good.length - 2) + 1;
        for (int cut = last + 1; cut < good.length - 1; cut += 23) {
            Files.write(bench.ledger(), Arrays.copyOf(good, cut));
            String torn = bench.ledger() + ":4: the last line is torn, as after a crash. 'chock ledger recover' keeps what is left of it and mends the ledger; hold the last line you know of against it";
            assertThatThrownBy(() -> bench.sign()).isInstanceOf(UnusableInput.class).hasMessage(torn);
            assertThat(Ledgers.verify(bench.shop()).fault()).isEqualTo(torn);
            List<String> says = Ledgers.recover(bench.shop(), bench.clock()).says();
            assertThat(says).singleElement().asString().contains("The last line was torn. Whether somebody was told that it is written cannot be seen from it. Its " + (cut - last) + " bytes are kept in ");
            List<LedgerLine> lines = Ledgers.lines(bench.ledger());
            assertThat(lines).extracting(LedgerLine::kind).containsExactly("key-trusted", "key-trusted", "refused", "recovered");
            assertThat(Files.readAllBytes(folder.resolve(lines.get(3).text("kept")))).isEqualTo(Arrays.copyOfRange(good, last, cut));
        }
    }

    @Test
    void a_line_that_lacks_only_its_end_is_completed() throws IOException {
        byte[] good = Files.readAllBytes(bench.ledger());
        Files.write(bench.ledger(), Arrays.copyOf(good, good.length - 1));
        assertThat(Ledgers.recover(bench.shop(), bench.clock()).says()).containsExactly("The last line, 4, was whole but for its end, and is completed.");
        assertThat(bench.ledger()).hasBinaryContent(good);
        assertThat(Ledgers.recover(bench.shop(), bench.clock()).says()).isEmpty();
    }

    @Test
    void a_clock_behind_the_last_line_writes_nothing() throws IOException {
        byte[] good = Files.readAllBytes(bench.ledger());
        bench.at(ShopBench.NOON.minusSeconds(1));
        assertThatThrownBy(() -> bench.sign()).isInstanceOf(NotSigned.class)
                .hasMessage("the clock of this machine says 2026-11-25T11:59:59Z, but the last line of the ledger is of 2026-11-25T12:00:00Z. Set the clock right; nothing is written with a time that has passed");
        assertThat(bench.ledger()).hasBinaryContent(good);
    }

    @Test
    @Tag("slow")
    void two_threads_and_two_processes_append_at_once_and_lose_nothing() throws Exception {
        List<Process> processes = new ArrayList<>();
        for (String name : List.of("one", "two")) {
            processes.add(LedgerChild.start(bench.ledger(), name, 40));
        }
        Thread thread = new Thread(() -> LedgerChild.append(bench.ledger(), "three", 40, n -> { }));
        thread.start();
        LedgerChild.append(bench.ledger(), "four", 40, n -> { });
        thread.join();
        for (Process process : processes) {
            assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
            assertThat(process.exitValue()).isZero();
        }
        List<LedgerLine> lines = Ledgers.lines(bench.ledger());
        assertThat(lines).hasSize(4 + 160);
        for (String name : List.of("one", "two", "three", "four")) {
            assertThat(lines.stream().filter(line -> line.text("record").equals(name)).map(line -> line.text("why"))).as(name).hasSize(40).doesNotHaveDuplicates();
        }
    }

    @Test
    @Tag("slow")
    void a_full_disk_is_told_and_the_ledger_stays_as_it_was() throws Exception {
        // No file of this child may grow beyond 8 kB, which to it is a full disk in the middle of a line.
        Process process = LedgerChild.startLimited(bench.ledger(), "full", 1000, 8);
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(err).isEqualTo(3);
        assertThat(out.lines().count()).isPositive();
        assertThat(err).contains(bench.ledger() + ": it cannot be written: this user may write no more here. Nothing was changed; make room or name another place, and do it again");
        assertThat(Ledgers.lines(bench.ledger())).hasSize(4 + (int) out.lines().count());
        assertThat(Ledgers.verify(bench.shop()).fault()).isNull();
    }

    @Test
    void a_ledger_in_a_folder_that_is_not_there_is_told() throws IOException {
        Path nowhere = folder.resolve("none/ledger.txt");
        assertThatThrownBy(() -> OpenLedger.at(nowhere)).isInstanceOf(UnusableInput.class).hasMessage(nowhere + ": it cannot be written: its folder is not there. Nothing was changed; make room or name another place, and do it again");
        Files.delete(bench.ledger());
        assertThatThrownBy(() -> Ledgers.lines(bench.ledger())).hasMessage(bench.ledger() + ": there is no ledger yet. The first 'chock keys trust' begins it");
        assertThatThrownBy(() -> OpenLedger.at(folder)).isInstanceOf(UnusableInput.class).hasMessageContaining("it cannot be written");
    }

    @Test
    @Tag("slow")
    void ten_thousand_lines_are_read_in_a_time_nobody_waits_for() {
        StringBuilder text = new StringBuilder();
        String before = LedgerLine.NOTHING_BEFORE;
        for (int i = 1; i <= 10_000; i++) {
            LedgerLine line = LedgerLine.of(JsonNodeFactory.instance.objectNode().put("line", i).put("previous", before).put("at", "2026-11-25T12:00:00Z").put("kind", "refused").put("why", "blocked"));
            before = line.digest();
            text.append(new String(line.bytes(), StandardCharsets.UTF_8));
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        long start = System.nanoTime();
        assertThat(LedgerText.parse(bytes).lines()).hasSize(10_000);
        assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(Duration.ofSeconds(20));
    }

    @Test
    void the_trust_list_can_be_written_anew_from_the_ledger() throws IOException {
        Path trust = bench.shop().trust();
        byte[] good = Files.readAllBytes(trust);
        Files.writeString(trust, Files.readString(trust).replace("Ida Marrow", "Tom Fell"));
        assertThat(Ledgers.verify(bench.shop()).fault()).isEqualTo(trust + ": the trust list is not what the ledger says. 'chock ledger recover' writes it anew");
        assertThat(Ledgers.recover(bench.shop(), Clock.fixed(ShopBench.NOON, ZoneOffset.UTC)).says()).singleElement().asString().contains("was not what the ledger says, and is written anew");
        assertThat(trust).hasBinaryContent(good);
    }
}

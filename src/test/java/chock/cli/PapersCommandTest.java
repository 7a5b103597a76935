package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.io.ByteArrayOutputStream;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PapersCommandTest {
    private static final String MERLE = "docs/examples/merle-released.yaml";
    private static final String FAULTS = "docs/examples/lark-faults.yaml";

    @TempDir private Path folder;

    @Test
    void theStatementIsMadeOfAMachineInAnyCondition() {
        Run ridden = Run.of("statement", MERLE);
        assertThat(ridden.status()).isZero();
        assertThat(ridden.err()).isEmpty();
        assertThat(ridden.out()).startsWith("Hollow Vale Motor Works; record HV-0160; 25 November 2026, 12:00\n").contains("It may leave to be ridden", "Local law and the licensed inspector");
        assertThat(Run.of("statement", FAULTS).status()).isZero();
        assertThat(Run.of("statement", FAULTS).out()).contains("NOT TO BE RIDDEN");
    }

    @Test
    void theTagSaysWhichGatesAreOpenAndWhatHolds() {
        Run closed = Run.of("tag", FAULTS);
        assertThat(closed.status()).isZero();
        assertThat(closed.out()).contains("road test: CLOSED", "Do not ride.", "5 faults", "- Front brake, caliper, inner pad: 1.2 mm ± 0.06 mm, at least 1.5 mm").doesNotContain("OPEN");
        assertThat(Run.of("tag", MERLE, "--gate", "road-test").out()).contains("road test: OPEN", "until 25 November 2026, 13:50", "! The top end is fresh: up to 50 mph (80 km/h)").doesNotContain("CLOSED");
        assertThat(Run.of("tag", "docs/examples/lark-non-runner.yaml").out()).contains("NOT TO BE RIDDEN\n", "non runner: OPEN");
        assertThat(Run.of("tag", "docs/examples/lark-on-show.yaml").out()).contains("NOT TO BE STARTED\n", "on show: OPEN");
        assertThat(Run.of("tag", "docs/examples/lark-worked-on-after.yaml").out()).containsPattern("- and \\d+ more: see the work sheet");
    }

    @Test
    void noPaperShowsAGateOpenThatTheHouseHolds(@TempDir Path shop) throws IOException {
        String lark = "docs/examples/lark-released.yaml";
        assertThat(Run.of("tag", lark).out()).contains("road test: OPEN");
        assertThat(Run.of("tag", lark, "--house", "docs/examples/house").out()).contains("road test: CLOSED").doesNotContain("OPEN");
        assertThat(Run.of("worksheet", lark, "--gate", "road-test").status()).isZero();
        assertThat(Run.of("worksheet", lark, "--gate", "road-test", "--house", "docs/examples/house").status()).isEqualTo(1);
        Path settings = Files.writeString(shop.resolve("shop.yaml"), """
                chock: shop/1
                workshop: Hollow Vale Motor Works
                zone: Europe/London
                trust: trust.json
                ledger: ledger.txt
                house: {folder: "%s", digest: "sha256:%s"}
                """.formatted(Path.of("docs/examples/house").toAbsolutePath(), "0".repeat(64)));
        for (String command : List.of("tag", "assess")) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            Bench plain = Run.bench("", out, new ByteArrayOutputStream(), null);
            Bench bound = new Bench(plain.in(), plain.out(), plain.err(), plain.clock(), false, null, Map.of("CHOCK_SHOP", settings.toString()), plain.prompt());
            Chock.run(bound, command, lark);
            assertThat(out.toString(StandardCharsets.UTF_8)).as(command).containsPattern("road test: CLOSED|BLOCKED at road-test");
        }
    }

    @Test
    void whatTheBackOfATagListsAndLeavesOutAddsUpToItsFront() {
        for (String name : List.of("lark-worked-on-after", "lark-faults", "merle-released")) {
            String tag = Run.of("tag", "docs/examples/" + name + ".yaml", "--gate", "road-test", "--gate", "non-runner").out().replaceAll("\n {3,}", " ");
            for (String gate : tag.split("(?=: CLOSED)")) {
                Matcher front = Pattern.compile("held by (\\d+): (.+)").matcher(gate);
                if (front.find()) {
                    int inAll = Integer.parseInt(front.group(1));
                    Matcher more = Pattern.compile("- and (\\d+) more: see the work sheet").matcher(gate);
                    boolean left = more.find();
                    long listed = gate.lines().filter(line -> line.startsWith("  - ")).count() - (left ? 1 : 0);
                    assertThat(listed + (left ? Integer.parseInt(more.group(1)) : 0)).as(name).isEqualTo(inAll);
                    assertThat(Pattern.compile("\\d+").matcher(front.group(2)).results().mapToInt(n -> Integer.parseInt(n.group())).sum()).as(name).isEqualTo(inAll);
                }
            }
        }
        assertThat(Run.of("tag", "docs/examples/lark-worked-on-after.yaml").out()).contains("held by 12: 11 stale, 1 missing", "- and 2 more: see the work sheet");
    }

    @Test
    void theWorkSheetKeepsToTheOrderOfWork() {
        Run order = Run.of("order", "--gate", "road-test", FAULTS);
        Run text = Run.of("worksheet", "--gate", "road-test", FAULTS);
        assertThat(text.status()).isEqualTo(1);
        assertThat(text.out()).isEqualTo(order.out());
        Run page = Run.of("worksheet", "--gate", "road-test", FAULTS, "--format", "html");
        int steps = Integer.parseInt(order.out().split(" ", 2)[0]);
        assertThat(steps).isGreaterThan(5);
        int at = -1;
        for (int i = 1; i <= steps; i++) {
            int next = page.out().indexOf("<td class=\"number\">" + i + "</td>");
            assertThat(next).as("step " + i).isGreaterThan(at);
            at = next;
        }
        assertThat(page.out()).doesNotContain("<td class=\"number\">" + (steps + 1) + "</td>").contains("class=\"box\"");
        Run done = Run.of("worksheet", "--gate", "road-test", "docs/examples/lark-released.yaml", "--format", "html");
        assertThat(done.status()).isZero();
        assertThat(done.out()).contains("Nothing remains to be done.");
    }

    @Test
    void aPdfGoesIntoAFileAndTheNameOfTheFileSaysWhichForm() throws IOException {
        Run nowhere = Run.of("tag", FAULTS, "--format", "pdf");
        assertThat(nowhere.status()).isEqualTo(2);
        assertThat(nowhere.out()).isEmpty();
        assertThat(nowhere.err()).startsWith("A PDF goes into a file; add --out FILE.pdf.\n");
        Path pdf = folder.resolve("tag.pdf");
        Run made = Run.of("tag", FAULTS, "--out", pdf.toString(), "--paper", "letter");
        assertThat(made.status()).as(made.err()).isZero();
        assertThat(made.out()).isEmpty();
        assertThat(new String(Files.readAllBytes(pdf), StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
        Path html = folder.resolve("tag.html");
        assertThat(Run.of("tag", FAULTS, "--out", html.toString()).status()).isZero();
        assertThat(Files.readString(html)).startsWith("<!DOCTYPE html>").contains("210mm 297mm");
    }

    @Test
    void whatCannotBeUsedIsSaidAndNothingIsWritten() {
        Run paper = Run.of("statement", MERLE, "--paper", "a5");
        assertThat(paper.status()).isEqualTo(2);
        assertThat(paper.err()).contains("'a5' is not one of a4, letter");
        assertThat(Run.of("statement", MERLE, "--format", "docx").err()).contains("'docx' is not one of text, html, pdf");
        Run lost = Run.of("statement", MERLE, "--out", folder.resolve("none").resolve("x.pdf").toString());
        assertThat(lost.status()).isEqualTo(2);
        assertThat(lost.err()).contains("it cannot be written");
        Run missing = Run.of("tag", "no-such.yaml", "--out", folder.resolve("y.html").toString());
        assertThat(missing.status()).isEqualTo(2);
        assertThat(missing.err()).isEqualTo("no-such.yaml: there is no such file\n");
        assertThat(folder.resolve("y.html")).doesNotExist();
        assertThat(Run.of("worksheet", MERLE).err()).contains("--gate");
    }
}

package chock.packaged;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as it is handed out: the jar, its libraries and the launcher. */
class PackagedProgramIT {
    private record Ended(int status, String out, String err) { }

    private static Ended run(List<String> command) throws IOException, InterruptedException {
        return run(command, Path.of(""), null);
    }

    /** @param javaHome folder whose {@code bin/java} the launcher is to run, or null for the one on the path */
    private static Ended run(List<String> command, Path folder, Path javaHome) throws IOException, InterruptedException {
        Path out = Files.createTempFile("chock", ".out");
        Path err = Files.createTempFile("chock", ".err");
        try {
            ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toAbsolutePath().toFile()).redirectOutput(out.toFile()).redirectError(err.toFile());
            builder.environment().remove("JAVA_HOME");
            if (javaHome != null) {
                builder.environment().put("JAVA_HOME", javaHome.toString());
            }
            Process process = builder.start();
            process.getOutputStream().close();
            assertThat(process.waitFor(120, TimeUnit.SECONDS)).as("ended in time").isTrue();
            return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    private static Ended chock(String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(java(), "-jar", "target/chock.jar"));
        command.addAll(List.of(args));
        return run(command);
    }

    @Test
    void theJarHoldsEveryRuleOfTheFolder() throws IOException, InterruptedException {
        long written;
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            written = files.filter(f -> f.toString().endsWith(".drl")).flatMap(PackagedProgramIT::lines).filter(l -> l.startsWith("rule \"")).count();
        }
        assertThat(written).isGreaterThan(50);
        Path probe = Files.createTempFile("Count", ".java");
        Files.writeString(probe, "public class Count { public static void main(String[] a) { System.out.println(chock.rulebook.RuleBook.shipped()"
                + ".rules().names().size()); } }", StandardCharsets.UTF_8);
        Ended counted = run(List.of(java(), "-cp", "target/chock.jar" + File.pathSeparator + "target/lib/*", probe.toString()));
        Files.delete(probe);
        assertThat(counted.out().strip()).as(counted.err()).isEqualTo(Long.toString(written));
    }

    private static Stream<String> lines(Path file) {
        try {
            return Files.readAllLines(file).stream();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void theLauncherReleasesAndBlocksWithTheStatusesPromised() throws IOException, InterruptedException {
        assertThat(run(List.of("target/chock", "assess", "--as-of", "2026-11-25T12:00", "docs/examples/lark-released.yaml")).status()).isZero();
        assertThat(run(List.of("target/chock", "assess", "--as-of", "2026-11-25T12:00", "docs/examples/lark-faults.yaml")).status()).isEqualTo(1);
        Ended wrong = run(List.of("target/chock", "assess", "no-such-record.yaml"));
        assertThat(wrong.status()).isEqualTo(2);
        assertThat(wrong.err()).isEqualTo("no-such-record.yaml: there is no such file\n");
        assertThat(run(List.of("target/chock", "asess")).status()).isEqualTo(2);
    }

    @Test
    void theJarRunsByItselfAndSaysTheSameEveryTime() throws IOException, InterruptedException {
        Ended first = chock("assess", "--as-of", "2026-11-25T12:00", "--format", "json", "docs/examples/lark-too-close.yaml");
        Ended second = chock("assess", "--as-of", "2026-11-25T12:00", "--format", "json", "docs/examples/lark-too-close.yaml");
        assertThat(first.status()).isEqualTo(1);
        assertThat(first.err()).isEmpty();
        assertThat(second.out()).isEqualTo(first.out());
    }

    @Test
    void neitherTheDrawingNorTheSignOffIsLoadedWhereNobodyAsksForIt() throws IOException, InterruptedException {
        Ended loaded = run(List.of(java(), "-Xlog:class+load", "-jar", "target/chock.jar", "assess", "--as-of", "2026-11-25T12:00", "--gate", "indoor-run", "docs/examples/lark-released.yaml"));
        assertThat(loaded.out()).contains("chock.assess.RunPlan ").doesNotContain(" chock.signoff.").doesNotContain(" org.jose4j.").doesNotContain(" org.bouncycastle.").doesNotContain(" org.jfree.").doesNotContain(" org.apache.batik.").doesNotContain(" java.awt.")
                .doesNotContain(" gg.jte.").doesNotContain(" com.openhtmltopdf.").doesNotContain(" org.apache.pdfbox.").doesNotContain(" chock.report.Papers ").doesNotContain(" chock.report.page.");
    }

    @Test
    void theBoardIsNotLoadedWhereNobodyAsksForIt() throws IOException, InterruptedException {
        Ended loaded = run(List.of(java(), "-Xlog:class+load", "-jar", "target/chock.jar", "assess", "--as-of", "2026-11-25T12:00", "docs/examples/lark-released.yaml"));
        assertThat(loaded.out()).contains("chock.assess.Assessor").doesNotContain("io.javalin").doesNotContain("org.eclipse.jetty").doesNotContain("org.sqlite").doesNotContain("org.jdbi")
                .doesNotContain("org.flywaydb").doesNotContain("com.zaxxer").doesNotContain("io.micrometer").doesNotContain("org.springframework").doesNotContain("gg.jte");
    }

    @Test
    void theClassArchiveIsUsedFromEveryFolder(@TempDir Path elsewhere) throws IOException, InterruptedException {
        assumeThat(run(List.of(java(), "-Xshare:on", "-version")).status()).as("this JVM shares classes").isZero();
        assertThat(Path.of("target/chock.jsa")).as("see target/class-archive.log").exists();
        // The launcher turns all logging off, so a java of the test's own asks for the list of classes behind its back.
        Path loaded = elsewhere.resolve("loaded.txt");
        Path java = Files.createDirectories(elsewhere.resolve("home/bin")).resolve("java");
        Files.writeString(java, "#!/bin/sh\nfor arg in \"$@\"; do\n  shift\n  [ \"$arg\" != -jar ] || set -- \"$@\" '-Xlog:class+load:file=" + loaded + "'\n  set -- \"$@\" \"$arg\"\ndone\nexec '" + java() + "' \"$@\"\n");
        assertThat(java.toFile().setExecutable(true)).isTrue();
        String launcher = Path.of("target/chock").toAbsolutePath().toString();
        String record = Path.of("docs/examples/lark-released.yaml").toAbsolutePath().toString();
        for (Path folder : List.of(Path.of(""), elsewhere, elsewhere.getRoot())) {
            Files.deleteIfExists(loaded);
            Ended ended = run(List.of(launcher, "assess", "--as-of", "2026-11-25T12:00", record), folder, elsewhere.resolve("home"));
            assertThat(ended.status()).as(folder + ": " + ended.err()).isZero();
            List<String> ours = Files.readAllLines(loaded).stream().filter(line -> line.matches(".* (chock|org\\.drools)\\..*")).toList();
            List<String> archived = ours.stream().filter(line -> line.contains("source: shared objects file")).toList();
            assertThat(ours).as(folder.toString()).hasSizeGreaterThan(500);
            // A few classes cannot be archived, such as those made while the program runs.
            assertThat(archived.size()).as("classes from the archive, of " + ours.size() + ", started in " + folder).isGreaterThan(ours.size() * 9 / 10);
        }
    }

    @Test
    void anArchiveIsMadeWhereTheProgramWasMovedTo(@TempDir Path elsewhere) throws IOException, InterruptedException {
        assumeThat(run(List.of(java(), "-Xshare:on", "-version")).status()).as("this JVM shares classes").isZero();
        Path moved = Files.createDirectories(elsewhere.resolve("a place of its own"));
        for (String file : List.of("chock", "chock.jar")) {
            Files.copy(Path.of("target").resolve(file), moved.resolve(file));
        }
        Files.createSymbolicLink(moved.resolve("lib"), Path.of("target/lib").toAbsolutePath());
        String launcher = moved.resolve("chock").toString();
        List<String> assess = List.of(launcher, "assess", "--as-of", "2026-11-25T12:00", "docs/examples/lark-faults.yaml");
        assertThat(run(List.of(launcher, "--version", "--verbose")).out()).contains("class archive: none that fits");
        assertThat(run(List.of(launcher, "assess", "no-such-record.yaml")).status()).isEqualTo(2);
        assertThat(moved.resolve("chock.jsa")).as("after a run that judged nothing").doesNotExist();
        Ended first = run(assess);
        assertThat(first.status()).isEqualTo(1);
        assertThat(first.err()).isEmpty();
        assertThat(run(List.of(launcher, "--version", "--verbose")).out()).contains("class archive: in use, ");
        Object made = Files.getLastModifiedTime(moved.resolve("chock.jsa"));
        assertThat(run(assess).out()).isEqualTo(first.out());
        assertThat(Files.getLastModifiedTime(moved.resolve("chock.jsa"))).as("made once").isEqualTo(made);
        try (Stream<Path> left = Files.list(moved)) {
            assertThat(left.map(file -> file.getFileName().toString())).containsExactlyInAnyOrder("chock", "chock.jar", "lib", "chock.jsa", "chock.jsa.for");
        }
    }

    /** Another country, clock, alphabet and character set of the machine it runs on. */
    @Test
    void theSameBytesOnEveryMachine() throws IOException, InterruptedException {
        List<String> assess = List.of("-jar", "target/chock.jar", "assess", "--as-of", "2026-11-25T12:00", "--format", "json", "docs/examples/lark-released.yaml", "docs/examples/lark-faults.yaml");
        List<String> here = new ArrayList<>(List.of(java()));
        here.addAll(assess);
        List<String> there = new ArrayList<>(List.of(java(), "-Dfile.encoding=US-ASCII", "-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=Pacific/Kiritimati"));
        there.addAll(assess);
        assertThat(run(there).out()).isEqualTo(run(here).out()).contains("±");
    }

    @Test
    void aResultThatCannotBeWrittenIsNotCalledAResult() throws IOException, InterruptedException {
        Ended full = run(List.of("sh", "-c", "exec \"$@\" > /dev/full", "sh", java(), "-jar", "target/chock.jar", "assess", "--as-of", "2026-11-25T12:00", "docs/examples/lark-released.yaml"));
        assertThat(full.status()).isEqualTo(3);
        assertThat(full.err()).contains("the result could not be written").doesNotContain("\tat ");
    }

    @Test
    void noStackTraceReachesTheUser() throws IOException, InterruptedException {
        for (List<String> args : List.of(List.of("assess", "pom.xml"), List.of("assess", "target/chock.jar"), List.of("assess", "docs"), List.of("figure", "tyre-date", "code=99"),
                List.of("rules", "no.such"), List.of("assess", "--gate", "moon", "docs/examples/lark-gaps.yaml"))) {
            Ended ended = chock(args.toArray(String[]::new));
            assertThat(ended.status()).as(args.toString()).isEqualTo(2);
            assertThat(ended.err()).as(args.toString()).isNotBlank().doesNotContain("\tat ").doesNotContain("Exception");
        }
    }
}

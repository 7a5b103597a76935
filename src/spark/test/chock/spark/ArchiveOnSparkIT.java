package chock.spark;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The launcher as a user calls it, held against {@code chock} on one machine. Executors are processes of their own, and one of
 * them is killed while it judges. {@code -Dchock.archive=20000} says how many records,
 * {@code -Dchock.impact=2000} how many are judged under two rule books.
 */
class ArchiveOnSparkIT {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String NOON = "2026-11-25T12:00";
    private static final int RECORDS = Integer.getInteger("chock.archive");
    private static final int COMPARED = Integer.getInteger("chock.impact");
    private static final int BAD = 40;
    private static final String HOUSE = "src/test/resources/house/rules/sound-with-rules";
    private static final String REFUSED_HOUSE = "src/test/resources/house/refused/rule-does-not-compile";
    /** Of few records, most of the time would go into code that is compiled to be fast. */
    private static final String QUICK = "spark.executor.extraJavaOptions=-XX:TieredStopAtLevel=1";
    private static final String CLUSTER = "local-cluster[2,1,1024]";
    /** Of about twenty partitions, so many are judged when an executor is killed. */
    private static final int MIDWAY = 8;
    /** Small partitions, so that few records fill many of them: about twenty. */
    private static final List<String> SHORT = List.of("--spark", "spark.chock.partitionBytes=" + 60_000L * Math.max(4, RECORDS / 100), "--spark", "spark.executor.memory=1g");

    @TempDir private static Path folder;
    private static List<byte[]> records;
    private static List<byte[]> compared;

    /** One run of a program: its exit status and what it said. */
    private record Run(int status, String out, String err) { }

    @BeforeAll
    static void makeRecords() throws IOException {
        Path made = folder.resolve("made");
        Process mill = new ProcessBuilder("java", "-cp", "target/classes" + File.pathSeparator + "target/test-classes" + File.pathSeparator + "target/lib/*", "chock.bench.MixedMill", String.valueOf(Math.max(RECORDS, COMPARED)))
                .redirectOutput(made.toFile()).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        assertThat(status(mill)).isZero();
        List<byte[]> all = lines(Files.readAllBytes(made));
        assertThat(all).hasSize(Math.max(RECORDS, COMPARED));
        records = all.subList(0, RECORDS);
        compared = all.subList(0, COMPARED);
    }

    private static int status(Process process) {
        try {
            return process.waitFor();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<byte[]> lines(byte[] text) {
        List<byte[]> lines = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < text.length; i++) {
            if (text[i] == '\n') {
                lines.add(Arrays.copyOfRange(text, from, i));
                from = i + 1;
            }
        }
        return lines;
    }

    private static Path write(String name, List<byte[]> lines) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] line : lines) {
            all.write(line);
            all.write('\n');
        }
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.write(file, all.toByteArray());
    }

    private static Process start(Path out, Path err, List<String> command) throws IOException {
        return start(out, err, command, null);
    }

    private static Process start(Path out, Path err, List<String> command, String sparkHome) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().put("SPARK_LOCAL_IP", "127.0.0.1");
        List.of("CHOCK_SHOP", "SPARK_HOME").forEach(builder.environment()::remove);
        if (sparkHome != null) {
            builder.environment().put("SPARK_HOME", sparkHome);
        }
        return builder.start();
    }

    private static Run run(List<String> command) throws IOException {
        return run(command, null);
    }

    private static Run run(List<String> command, String sparkHome) throws IOException {
        Path out = Files.createTempFile(folder, "out", "");
        Path err = Files.createTempFile(folder, "err", "");
        int status = status(start(out, err, command, sparkHome));
        return new Run(status, Files.readString(out), Files.readString(err));
    }

    private static List<String> spark(String job, Object in, Path out, String... more) {
        List<String> command = new ArrayList<>(List.of("target/chock-spark", job, "--as-of", NOON, "--in", in.toString(), "--out", out.toString()));
        command.addAll(SHORT);
        command.addAll(List.of(more));
        return command;
    }

    private static List<String> bulk(Path stream, String... more) {
        List<String> command = new ArrayList<>(List.of("target/chock", "assess", "--bulk", "--as-of", NOON, stream.toString()));
        command.addAll(List.of(more));
        return command;
    }

    /** The rows of one kind, over all slices, in order. */
    private static List<String> rows(Path out, String came) throws IOException {
        List<String> rows = new ArrayList<>();
        try (Stream<Path> files = Files.walk(out.resolve("rows"))) {
            for (Path file : files.filter(f -> f.getFileName().toString().startsWith("part-") && f.getParent().endsWith("came=" + came)).toList()) {
                rows.addAll(Files.readAllLines(file));
            }
        }
        rows.sort(null);
        return rows;
    }

    private static List<String> withoutNumbers(String bulk) {
        return bulk.lines().map(line -> line.replaceFirst("^\\{\"line\":\\d+,", "{")).sorted().toList();
    }

    private static void await(BooleanSupplier what, Process alive) {
        while (!what.getAsBoolean()) {
            assertThat(alive.isAlive()).as("it ended before it could be disturbed").isTrue();
            try {
                Thread.sleep(20);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    /** Lines that are no records, of every kind that was thought of. */
    private static List<byte[]> bad() {
        List<byte[]> bad = new ArrayList<>();
        byte[] broken = records.get(0).clone();
        broken[new String(broken, StandardCharsets.ISO_8859_1).indexOf("\"marque\":\"") + 11] = (byte) 0xff;
        byte[] endless = new byte[5_000_001];
        Arrays.fill(endless, (byte) 'x');
        for (int i = 0; i < BAD; i++) {
            bad.add(switch (i % 5) {
                case 0 -> new byte[0];
                case 1 -> Arrays.copyOf(records.get(i), records.get(i).length / 2);
                case 2 -> broken;
                case 3 -> i == 3 ? endless : " \t\r".getBytes(StandardCharsets.UTF_8);
                default -> ("{\"chock\": \"job-record/2\", \"record\": " + i + "}\r").getBytes(StandardCharsets.UTF_8);
            });
        }
        return bad;
    }

    @Test
    void anExecutorKilledAtWorkLosesNothingAndDoublesNothingAndASecondRunJudgesWhatIsNew() throws IOException {
        List<byte[]> all = new ArrayList<>(records);
        List<byte[]> bad = bad();
        for (int i = 0; i < BAD; i++) {
            all.add((i + 1) * all.size() / (BAD + 2), bad.get(i));
        }
        int half = all.size() / 2;
        int most = all.size() * 95 / 100;
        Path in = folder.resolve("archive");
        write("archive/first.ndjson", all.subList(0, half));
        write("archive/second.ndjson", all.subList(half, most));
        Path out = folder.resolve("judged");
        Path said = folder.resolve("said");
        Process driver = start(folder.resolve("told"), said, spark("judge", in, out, "--master", CLUSTER));
        await(() -> written(out.resolve("rows")) >= MIDWAY, driver);
        List<ProcessHandle> executors = driver.descendants().filter(p -> p.info().commandLine().orElse("").contains("CoarseGrainedExecutorBackend")).toList();
        assertThat(executors).as("executors in processes of their own").hasSize(2);
        assertThat(executors.get(0).destroyForcibly()).isTrue();
        assertThat(status(driver)).as("lines were refused").isEqualTo(2);
        assertThat(Files.readString(said)).contains("2 files, 2 not planned before; 1 slice to judge.", "Lost executor");
        long begun = System.nanoTime();
        Run bulk = run(bulk(write("all.ndjson", all)));
        System.out.printf("%s%d records on one machine, at once: %.1f s%n", Files.readString(said), RECORDS, (System.nanoTime() - begun) / 1e9);
        String before = bulk.out.lines().filter(line -> Integer.parseInt(line.replaceFirst("^\\{\"line\":(\\d+),.*", "$1")) <= most).collect(Collectors.joining("\n"));
        assertThat(rows(out, "judged")).isEqualTo(withoutNumbers(before));
        assertRefused(all.subList(0, most), out);

        write("archive/third.ndjson", all.subList(most, all.size()));
        Map<Path, Long> touched = times(out.resolve("rows/slice=000001"));
        Run second = run(spark("judge", in, out));
        assertThat(second.err).contains("3 files, 1 not planned before; 1 slice to judge.").doesNotContain("Slice 000001");
        assertThat(times(out.resolve("rows/slice=000001"))).isNotEmpty().isEqualTo(touched);
        assertThat(rows(out, "judged")).hasSize(RECORDS).isEqualTo(withoutNumbers(bulk.out));
        assertRefused(all, out);
        assertThat(second.out).contains(RECORDS + " records judged as of " + NOON, BAD + " lines were refused");
        verdictsAddUp(JSON.readTree(out.resolve("summary.json").toFile()).get("counts"), bulk.out);
    }

    /** How many partitions of a slice have been judged. */
    private static long written(Path rows) {
        if (!Files.exists(rows)) {
            return 0;
        }
        try (Stream<Path> files = Files.walk(rows)) {
            return files.filter(f -> f.toString().matches(".*_temporary/\\d+/task_[^/]*")).count();
        } catch (IOException | java.io.UncheckedIOException e) {
            return 0;
        }
    }

    private static Map<Path, Long> times(Path rows) throws IOException {
        Map<Path, Long> times = new TreeMap<>();
        try (Stream<Path> files = Files.walk(rows)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                times.put(file, Files.getLastModifiedTime(file).toMillis());
            }
        }
        return times;
    }

    /** Every line of which nothing could be made stands there once, byte for byte, with where it was and why; of one that is too long the beginning. */
    private static void assertRefused(List<byte[]> all, Path out) throws IOException {
        List<String> expected = new ArrayList<>();
        for (byte[] line : all) {
            if (records.stream().noneMatch(record -> record == line)) {
                expected.add(text(line.length > 5_000_000 ? Arrays.copyOf(line, 10_000) : line));
            }
        }
        expected.sort(null);
        List<String> found = new ArrayList<>();
        for (String row : rows(out, "refused")) {
            JsonNode node = JSON.readTree(row);
            byte[] raw = node.get("raw").binaryValue();
            found.add(text(raw));
            assertThat(node.get("reason").asText()).contains(node.get("file").asText() + ", byte " + node.get("at").asLong());
            try (var file = new java.io.RandomAccessFile(java.net.URI.create(node.get("file").asText()).getPath(), "r")) {
                byte[] there = new byte[raw.length];
                file.seek(node.get("at").asLong());
                file.readFully(there);
                assertThat(there).isEqualTo(raw);
            }
        }
        found.sort(null);
        assertThat(found).isNotEmpty().isEqualTo(expected);
        assertThat(rows(out, "failed")).isEmpty();
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static void verdictsAddUp(JsonNode counts, String bulk) throws IOException {
        Map<String, Long> expected = new TreeMap<>();
        for (String line : bulk.lines().toList()) {
            JSON.readTree(line).get("gates").properties().forEach(gate -> expected.merge(gate.getKey() + " " + gate.getValue().get("verdict").asText(), 1L, Long::sum));
        }
        Map<String, Long> found = new TreeMap<>();
        counts.forEach(one -> {
            if (one.get("what").asText().equals("verdict")) {
                found.put(one.get("gate").asText() + " " + one.get("was").asText(), one.get("times").asLong());
            }
        });
        assertThat(found).isNotEmpty().isEqualTo(expected);
    }

    @Test
    void aRunThatWasKilledGoesOnWhereItWasAndOnlyUnderTheSameTerms() throws IOException {
        List<byte[]> some = records.subList(0, 120);
        Path in = folder.resolve("parts");
        for (int i = 0; i < 4; i++) {
            write("parts/part-" + i + ".ndjson", some.subList(i * 30, i * 30 + 30));
        }
        Path out = folder.resolve("broken-off");
        // A slice takes 64 partitions for each of at least two cores: of 3 kB, that is one file of 30 records.
        List<String> command = new ArrayList<>(List.of("target/chock-spark", "judge", "--as-of", NOON, "--in", in.toString(), "--out", out.toString(),
                "--master", "local[2]", "--spark", "spark.chock.partitionBytes=3000"));
        Process driver = start(folder.resolve("told-1"), folder.resolve("said-1"), command);
        await(() -> Files.exists(out.resolve("slices/000001.done.json")), driver);
        driver.destroyForcibly();
        status(driver);
        assertThat(Files.exists(out.resolve("slices/000004.done.json"))).isFalse();
        Run again = run(command);
        assertThat(again.status).isEqualTo(1);
        assertThat(again.err).doesNotContain("Slice 000001").contains("Slice 000004");
        Run bulk = run(bulk(write("some.ndjson", some)));
        assertThat(rows(out, "judged")).hasSize(120).isEqualTo(withoutNumbers(bulk.out));

        List<String> later = new ArrayList<>(command);
        later.set(3, "2026-11-26T12:00");
        Run other = run(later);
        assertThat(other.status).isEqualTo(2);
        assertThat(other.err).contains("it was begun with asOf \"" + NOON + "\", and this run has \"2026-11-26T12:00\"");
        write("parts/part-1.ndjson", some.subList(0, 29));
        Run changed = run(command);
        assertThat(changed.status).isEqualTo(2);
        assertThat(changed.err).contains("part-1.ndjson: it was written to since it was judged into this folder");
    }

    /** The same on one machine: a file for each record. */
    private static List<String> alone(List<byte[]> some, String name, String... more) throws IOException {
        List<String> command = new ArrayList<>(List.of("target/chock", "impact", "--format", "json", "--as-of", NOON));
        command.addAll(List.of(more));
        Files.createDirectories(folder.resolve(name));
        for (int i = 0; i < some.size(); i++) {
            command.add(Files.write(folder.resolve(name).resolve(i + ".json"), some.get(i)).toString());
        }
        return command;
    }

    private static List<String> impacts(Run alone) throws IOException {
        List<String> rows = new ArrayList<>();
        JSON.readTree(alone.out).get("impacts").forEach(impact -> rows.add(impact.toString()));
        rows.sort(null);
        return rows;
    }

    @Test
    void whatOtherLimitsAndAHouseChangeIsTheSameAsOnOneMachine() throws IOException {
        List<byte[]> some = compared;
        Path in = write("impact.ndjson", some);
        Run one = run(alone(some, "records", "--set", "tyres.age=1y", "--house", HOUSE));
        List<String> expected = impacts(one);
        Path out = folder.resolve("impact");
        Run many = run(spark("impact", in, out, "--set", "tyres.age=1y", "--house", HOUSE, "--master", CLUSTER));
        assertThat(rows(out, "judged")).hasSizeGreaterThanOrEqualTo(some.size()).isEqualTo(expected);
        assertThat(many.status).isEqualTo(one.status);
        assertThat(many.out).contains("tyres.age: 1 y instead of 10 y", "house.cam-lever-photo at road-test: ");
    }

    /** A workshop that trusts an author and an inspector, and a rule book of the author's with one limit and the rules of tyres changed. */
    private static Path ruleBook() throws IOException {
        Path shop = Files.createDirectories(folder.resolve("shop"));
        if (Files.exists(shop.resolve("mine.rules"))) {
            return shop;
        }
        Files.writeString(shop.resolve("shop.yaml"), run(List.of("target/chock", "new", "shop")).out);
        Files.writeString(shop.resolve("words"), "three words and a number 7\n");
        Map<String, String> roles = new LinkedHashMap<>();
        roles.put("lead", "Nora Pell");
        roles.put("author", "Petra Lomax");
        roles.put("inspector", "Ida Marrow");
        for (Map.Entry<String, String> one : roles.entrySet()) {
            String key = shop.resolve(one.getKey() + ".pem").toString();
            locked(shop, "keys", "new", key);
            locked(shop, "keys", "trust", key + ".jwk", "--shop", shop.resolve("shop.yaml").toString(), "--by", shop.resolve("lead.pem").toString(),
                    "--name", one.getValue(), "--role", one.getKey(), "--until", LocalDate.now().plusYears(1).toString());
        }
        Path rules = shop.resolve("rules");
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            for (Path file : files.toList()) {
                Files.copy(file, rules.resolve(Path.of("rules").relativize(file).toString()));
            }
        }
        changed(rules.resolve("tyres/limits.yaml"), "value: 0.8 mm", "value: 9 mm");
        changed(rules.resolve("tyres/tyres.drl"), "\nimport ", "\n// Written anew, so that it is compiled.\nimport ");
        locked(shop, "rules", "pack", shop.resolve("mine.rules").toString(), "--rules", rules.toString(), "--house", HOUSE, "--key", shop.resolve("author.pem").toString());
        locked(shop, "rules", "pack", shop.resolve("other.rules").toString(), "--key", shop.resolve("lead.pem").toString());
        locked(shop, "rules", "pack", shop.resolve("inspector.rules").toString(), "--key", shop.resolve("inspector.pem").toString());
        return shop;
    }

    private static void locked(Path shop, String... command) throws IOException {
        List<String> all = new ArrayList<>(List.of("target/chock"));
        all.addAll(List.of(command));
        all.addAll(List.of("--passphrase-file", shop.resolve("words").toString()));
        Run run = run(all);
        assertThat(run.status).as(run.err).isZero();
    }

    private static void changed(Path file, String was, String is) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(was);
        Files.writeString(file, text.replaceFirst(Pattern.quote(was), is));
    }

    private static String[] by(Path shop, String name, String... more) {
        List<String> options = new ArrayList<>(List.of("--rule-book", shop.resolve(name).toString(), "--trust", shop.resolve("trust.json").toString()));
        options.addAll(List.of(more));
        return options.toArray(String[]::new);
    }

    @Test
    void aPackedRuleBookIsCheckedCompiledOnceInEachExecutorAndJudgesAsOnOneMachine() throws IOException {
        Path shop = ruleBook();
        List<byte[]> some = records.subList(0, 60);
        Path in = write("packed.ndjson", some);
        Path out = folder.resolve("packed");
        Run many = run(spark("judge", in, out, by(shop, "mine.rules", "--master", CLUSTER, "--spark", "spark.chock.partitionBytes=100000",
                "--spark", QUICK + " -Xlog:class+load:file=" + folder.resolve("executor-%p.classes"))));
        Run bulk = run(bulk(in, by(shop, "mine.rules")));
        assertThat(rows(out, "judged")).as(many.err).hasSize(some.size()).isEqualTo(withoutNumbers(bulk.out));
        assertThat(many.status).isEqualTo(bulk.status);
        assertThat(many.err).startsWith("Judging by rule book 2 (sha256:").contains(", signed by Petra Lomax with chock ");
        JsonNode summary = JSON.readTree(out.resolve("summary.json").toFile());
        String digest = JSON.readTree(bulk.out.lines().findFirst().orElseThrow()).get("rulebook").get("digest").asText();
        assertThat(summary.get("rulePack").get("digest").asText()).isEqualTo(digest).isEqualTo(summary.get("digest").asText());
        assertThat(summary.get("rulePack").get("file").asText()).isEqualTo(shop.resolve("mine.rules").toString());
        assertThat(summary.get("rulePack").get("signedBy").asText()).isEqualTo("Petra Lomax");
        int compiled = 0;
        try (Stream<Path> logs = Files.list(folder)) {
            for (Path log : logs.filter(file -> file.toString().endsWith(".classes")).toList()) {
                long times = Files.readAllLines(log).stream().filter(line -> line.matches(".*\\] rules\\.tyres\\.Rules[0-9A-F]{32} source: .*") && !line.contains("chock.jar")).count();
                assertThat(times).as("how often one executor loaded rules of tyres that it compiled").isEqualTo(1);
                compiled++;
            }
        }
        assertThat(compiled).as("executors").isEqualTo(2);

        assertRefused(spark("judge", in, out, by(shop, "other.rules")), "it was begun with digest \"" + digest + "\", and this run has \"sha256:");
        assertRefused(spark("judge", in, out), "it was begun with digest \"" + digest + "\", and this run has \"sha256:");
        assertRefused(spark("judge", in, out, by(shop, "mine.rules", "--house", HOUSE)), "--house: the rule book already contains the house rules");
    }

    @Test
    void aPackedRuleBookIsComparedWithTheShippedOneAsOnOneMachine() throws IOException {
        Path shop = ruleBook();
        List<byte[]> some = records.subList(0, 60);
        Path in = write("against.ndjson", some);
        Run one = run(alone(some, "against-records", by(shop, "mine.rules", "--set", "tyres.age=1y")));
        Path out = folder.resolve("against");
        Run many = run(spark("impact", in, out, by(shop, "mine.rules", "--set", "tyres.age=1y", "--master", CLUSTER, "--spark", QUICK)));
        assertThat(rows(out, "judged")).as(many.err).hasSizeGreaterThanOrEqualTo(some.size()).isEqualTo(impacts(one));
        assertThat(many.status).isEqualTo(one.status);
        List<String> tried = new ArrayList<>();
        JSON.readTree(out.resolve("summary.json").toFile()).get("tried").forEach(words -> tried.add(words.asText()));
        List<String> alone = new ArrayList<>();
        JSON.readTree(one.out).get("tried").forEach(words -> alone.add(words.asText()));
        assertThat(tried).hasSize(3).isEqualTo(alone);
        assertThat(many.out).contains("tyres.tread-depth at road-test: ", "house.cam-lever-photo at road-test: ");
        Path held = folder.resolve("held-by-packed");
        Run holds = run(spark("holds", in, held, by(shop, "mine.rules")));
        assertThat(holds.out).as(holds.err).contains("machines: house.cam-lever-photo");
    }

    @Test
    void aRuleBookThatIsNotByATrustedAuthorIsRefusedBeforeItIsRead() throws IOException {
        Path shop = ruleBook();
        Path in = write("refused.ndjson", records.subList(0, 1));
        Path out = folder.resolve("not-judged");
        String mine = shop.resolve("mine.rules").toString();
        assertRefused(spark("judge", in, out, by(shop, "inspector.rules")), "inspector.rules: signed by Ida Marrow (inspector); contents not read. Only a rule author or a lead may sign a rule book");
        Path nobody = Files.writeString(shop.resolve("nobody.json"), "{\"chock\": \"trust/2\", \"keys\": []}");
        assertRefused(spark("impact", in, out, "--rule-book", mine, "--trust", nobody.toString()), ", which is not trusted now; contents not read. A lead trusts the key of a rule author");
        String text = Files.readString(Path.of(mine));
        int at = text.length() / 2;
        Files.writeString(shop.resolve("altered.rules"), text.substring(0, at) + (text.charAt(at) == 'A' ? 'B' : 'A') + text.substring(at + 1));
        assertRefused(spark("holds", in, out, by(shop, "altered.rules")), "altered.rules: invalid signature: altered since Petra Lomax signed it");
        assertRefused(spark("judge", in, out, "--rule-book", mine), "--rule-book: no trust list to check its signature with. Give --trust FILE");
        assertRefused(spark("judge", in, out, "--trust", nobody.toString()), "--trust: it is only used with --rule-book. Add --rule-book FILE, or leave it out");
        assertRefused(spark("judge", in, out, by(shop, "nowhere.rules")), "nowhere.rules: there is no such file. Name the file of a packed rule book");
        assertRefused(spark("judge", in, out, "--rule-book", in.toString(), "--trust", shop.resolve("trust.json").toString()), "refused.ndjson: not a packed rule book");
        assertThat(Files.exists(out)).isFalse();
    }

    @Test
    void whatHoldsMachinesIsCountedByCheckAndKindOfMachine() throws IOException {
        List<byte[]> some = records.subList(0, 200);
        Path in = write("holds.ndjson", some);
        Path out = folder.resolve("holds");
        assertThat(run(spark("holds", in, out)).status).isEqualTo(1);
        Map<String, Long> found = new TreeMap<>();
        try (Stream<Path> files = Files.list(out.resolve("holds"))) {
            for (Path file : files.filter(f -> f.getFileName().toString().startsWith("part-")).toList()) {
                for (String row : Files.readAllLines(file)) {
                    JsonNode node = JSON.readTree(row);
                    found.merge(key(node.get("gate"), node.get("check"), node.get("finding"), node.get("marque"), node.get("built"), node.get("kind"), node.get("territory")), node.get("machines").asLong(), Long::sum);
                }
            }
        }
        Map<String, Long> expected = new TreeMap<>();
        List<String> judged = run(bulk(in)).out.lines().toList();
        for (int i = 0; i < judged.size(); i++) {
            JsonNode record = JSON.readTree(some.get(i));
            JsonNode machine = record.get("machine");
            JsonNode[] of = {machine.get("marque"), machine.get("built"), machine.path("kind"), record.get("territory")};
            TreeMap<String, String> anywhere = new TreeMap<>();
            JSON.readTree(judged.get(i)).get("gates").properties().forEach(gate -> {
                TreeMap<String, String> here = new TreeMap<>();
                gate.getValue().get("notMet").properties().forEach(one -> here.merge(one.getKey(), one.getValue().asText(), ArchiveOnSparkIT::worse));
                gate.getValue().get("closedBy").forEach(check -> here.merge(check.asText(), "fault", ArchiveOnSparkIT::worse));
                here.forEach((check, finding) -> {
                    anywhere.merge(check, finding, ArchiveOnSparkIT::worse);
                    expected.merge(gate.getKey() + " " + check + " " + finding + " " + key(of), 1L, Long::sum);
                });
            });
            anywhere.forEach((check, finding) -> expected.merge("null " + check + " " + finding + " " + key(of), 1L, Long::sum));
        }
        assertThat(found).isNotEmpty().isEqualTo(expected);
    }

    private static String worse(String one, String other) {
        List<String> worst = List.of("fault", "doubt", "stale", "missing");
        return worst.indexOf(one) <= worst.indexOf(other) ? one : other;
    }

    private static String key(JsonNode... parts) {
        return String.join(" ", Arrays.stream(parts).map(JsonNode::asText).toList());
    }

    @Test
    void tablesAreReadAndWritten() throws IOException {
        List<byte[]> some = new ArrayList<>(records.subList(0, 60));
        some.add(7, "no record".getBytes(StandardCharsets.UTF_8));
        Path text = write("table.ndjson", some);
        Path table = folder.resolve("table.parquet");
        assertThat(table("to-table", text, table).status).isZero();
        Path out = folder.resolve("from-table");
        Run run = run(spark("judge", table, out, "--format", "parquet"));
        assertThat(run.err).contains("Slice 000001: 60 records");
        assertThat(run.status).isEqualTo(2);
        Run printed = table("to-text", out.resolve("rows"), folder.resolve("unused"));
        Map<String, String> found = new TreeMap<>();
        List<JsonNode> refused = new ArrayList<>();
        for (String row : printed.out.lines().toList()) {
            JsonNode node = JSON.readTree(row);
            if (node.get("came").asText().equals("judged")) {
                found.put(node.get("record").asText() + " " + node.get("gate").asText(), node.get("verdict").asText() + " " + node.get("as_of").asText() + " " + node.get("digest").asText() + " " + sorted(node.get("not_met")) + " " + node.get("closed_by"));
                assertThat(node.get("fault").asInt() + node.get("doubt").asInt() + node.get("stale").asInt() + node.get("missing").asInt()).isEqualTo(node.get("not_met").size());
            } else if (node.get("came").asText().equals("refused")) {
                refused.add(node);
            }
        }
        Map<String, String> expected = new TreeMap<>();
        for (String line : run(bulk(text)).out.lines().toList()) {
            JsonNode node = JSON.readTree(line);
            node.get("gates").properties().forEach(gate -> expected.put(node.get("record").asText() + " " + gate.getKey(), gate.getValue().get("verdict").asText() + " " + node.get("asOf").asText() + " "
                    + node.get("rulebook").get("digest").asText() + " " + sorted(gate.getValue().get("notMet")) + " " + gate.getValue().get("closedBy")));
        }
        assertThat(found).isNotEmpty().isEqualTo(expected);
        assertThat(refused).hasSize(1);
        assertThat(refused.get(0).get("at").asLong()).isEqualTo(7);
        assertThat(new String(refused.get(0).get("raw").binaryValue(), StandardCharsets.UTF_8)).isEqualTo("no record");
    }

    @Test
    void theStoreOfABoardIsJudgedAsItGivesItsRecords() throws IOException {
        Path place = folder.resolve("board");
        storeIsJudged(place.toString(), "jdbc:sqlite:" + place.resolve("board.sqlite"), "sqlite");
        try (EmbeddedPostgres server = EmbeddedPostgres.builder().start()) {
            String store = "jdbc:postgresql://localhost:" + server.getPort() + "/postgres?user=postgres&password=never-written-down";
            storeIsJudged(store, store, "postgresql");
        }
    }

    private static void storeIsJudged(String store, String url, String name) throws IOException {
        List<String> taking = new ArrayList<>(List.of("target/chock", "board", "take", "--store", store));
        Files.readAllLines(Path.of("docs/examples/index.txt")).stream().map(example -> example.split("\\s")[0]).forEach(example -> taking.add("docs/examples/" + example));
        Run take = run(taking);
        assertThat(take.out.lines().count()).as(take.err).isGreaterThan(5);
        String machine = take.out.lines().findFirst().orElseThrow();
        Run given = run(List.of("target/chock", "board", "give", "--store", store));
        Run bulk = run(bulk(Files.writeString(folder.resolve(name + ".ndjson"), given.out)));
        assertThat(bulk.out).contains("\"record\":\"" + machine + "\"");
        Path out = folder.resolve("from-" + name);
        Run run = run(spark("judge", url, out));
        assertThat(rows(out, "judged")).as(run.err).isEqualTo(withoutNumbers(bulk.out));
        assertThat(run.status).isEqualTo(bulk.status);
        assertThat(run.out + run.err).doesNotContain("never-written-down");
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                assertThat(new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)).doesNotContain("never-written-down");
            }
        }
        if (name.equals("postgresql")) {
            return;
        }
        Run again = run(spark("judge", url, out));
        assertThat(again.status).isEqualTo(2);
        assertThat(again.err).contains("this store was judged into this folder already");
        releasesAreLost(given.out, url);
    }

    /** The made-up records are all blocked; among the examples are some that are released now and would not be. */
    private static void releasesAreLost(String examples, String url) throws IOException {
        String[] stricter = {"--set", "tyres.age=1y"};
        Run one = run(alone(lines(examples.getBytes(StandardCharsets.UTF_8)), "examples", stricter));
        Path out = folder.resolve("lost");
        Run many = run(spark("impact", url, out, stricter));
        assertThat(one.status).as("a release would be lost").isEqualTo(1);
        assertThat(many.status).as(many.err).isEqualTo(1);
        assertThat(rows(out, "judged")).isEqualTo(impacts(one)).anyMatch(row -> row.contains("\"before\":\"released\",\"after\":\"blocked\""));
        assertThat(many.out).containsPattern("  road-test: \\d+ released, then blocked");
    }

    private static String sorted(JsonNode map) {
        Map<String, String> entries = new TreeMap<>();
        map.properties().forEach(entry -> entries.put(entry.getKey(), entry.getValue().asText()));
        return entries.toString();
    }

    private static Run table(String what, Path from, Path to) throws IOException {
        return run(List.of("java", "-Dlog4j2.configurationFile=file:target/spark/log4j2.properties", "-cp", "target/spark/build/test-classes" + File.pathSeparator + "target/spark/jars/*", "chock.spark.Tables", what, from.toString(), to.toString()));
    }

    @Test
    void whatIsAskedForBadlyIsRefusedWithTheWayToSayIt() throws IOException {
        Path in = write("one.ndjson", records.subList(0, 1));
        Path out = folder.resolve("never");
        assertRefused(List.of("target/chock-spark", "judge", "--in", in.toString(), "--out", out.toString()), "Missing required option: '--as-of=DATE-TIME'");
        assertRefused(List.of("target/chock-spark", "judge", "--as-of", "now", "--in", in.toString(), "--out", out.toString()), "'now' is not a date and time. Write 2026-11-25T12:00");
        assertRefused(spark("impact", in, out), "impact: it is not said what is to be tried. Give --set LIMIT=VALUE, --house DIR or --rule-book FILE");
        assertRefused(spark("judge", in, out, "--set", "tyres.age=8 mm"), "--set: tyres.age is 10 y now, and 8 mm is of another kind");
        assertRefused(spark("judge", in, out, "--set", "tyres.agge=8y"), "--set: there is no limit 'tyres.agge'. Did you mean tyres.age?");
        assertRefused(spark("judge", in, out, "--house", REFUSED_HOUSE), REFUSED_HOUSE + "/");
        assertRefused(spark("judge", in, out, "--master", "nowhere:7077"), "--master: 'nowhere:7077' is no cluster; name spark://HOST:PORT");
        assertRefused(spark("judge", in, out, "--spark", "spark.driver.maxResultSize=lots"), "--master: Spark cannot be started on local[*] with these settings: ");
        assertRefused(spark("judge", folder.resolve("nowhere"), out), "there is no such file or folder");
        assertThat(Files.exists(out)).isFalse();
        assertRefused(spark("judge", in, Files.createDirectories(folder.resolve("letters/old")).getParent()), "it is there already, and no archive was judged into it");
    }

    private static void assertRefused(List<String> command, String why) throws IOException {
        Run run = run(command);
        assertThat(run.err).contains(why).doesNotContain("\tat ").doesNotContainPattern("(?m)^spark: ");
        assertThat(run.status).isEqualTo(2);
        assertThat(run.out).isEmpty();
    }

    @Test
    void aLineThatIsLongerThanMemoryIsCutAndTheRecordsAroundItAreJudged() throws IOException {
        Path in = folder.resolve("long.ndjson.gz");
        byte[] much = new byte[1 << 20];
        Arrays.fill(much, (byte) 'x');
        try (OutputStream out = new GZIPOutputStream(Files.newOutputStream(in))) {
            out.write(records.get(0));
            out.write('\n');
            // 1.5 GB, and the executor has 1 GB.
            for (int i = 0; i < 1500; i++) {
                out.write(much);
            }
            out.write('\n');
            out.write(records.get(1));
        }
        Path out = folder.resolve("long");
        Run run = run(spark("judge", in, out, "--gate", "on-show", "--master", "local-cluster[1,1,1024]", "--spark", QUICK));
        assertThat(rows(out, "judged")).as(run.err).hasSize(2).isEqualTo(withoutNumbers(run(bulk(write("around.ndjson", records.subList(0, 2)), "--gate", "on-show")).out));
        assertThat(run.err).doesNotContain("Lost executor");
        List<String> refused = rows(out, "refused");
        assertThat(refused).hasSize(1);
        assertThat(JSON.readTree(refused.get(0)).get("bytes").asLong()).isEqualTo(1500L << 20);
        assertThat(JSON.readTree(refused.get(0)).get("raw").binaryValue()).hasSize(10_000).containsOnly('x');
        assertThat(JSON.readTree(refused.get(0)).get("reason").asText()).endsWith("it is longer than 5 MB. Write one job record a line");
    }

    @Test
    void theSparkThatIsNamedIsCalledAlsoWhereItsPathHasABlank() throws IOException {
        List<String> nothing = List.of("target/chock-spark", "weigh", "--as-of", NOON, "--in", "a b", "--out", "c", "--master", "spark://head:7077");
        Run own = run(nothing, Path.of("target/spark").toAbsolutePath().toString());
        assertThat(own.err).as("the one beside the program may be named").startsWith("weigh: there is no such job");
        Path installed = folder.resolve("a Spark that is installed");
        Run none = run(nothing, installed.toString());
        assertThat(none.err).contains("SPARK_HOME names " + installed + ", which is no Spark 4.2 for Scala 2.13");
        assertThat(none.status).isEqualTo(2);
        Files.createDirectories(installed.resolve("jars"));
        Files.createFile(installed.resolve("jars/spark-core_2.13-4.2.0.jar"));
        Path submit = Files.createDirectories(installed.resolve("bin")).resolve("spark-submit");
        Files.writeString(submit, "#!/bin/sh\nfor one; do printf '%s\\n' \"$one\"; done\nexit 7\n");
        assertThat(submit.toFile().setExecutable(true)).isTrue();
        Run called = run(nothing, installed.toString());
        assertThat(called.status).as(called.err).isEqualTo(7);
        assertThat(called.out.lines().toList()).containsSubsequence("--master", "spark://head:7077", "--deploy-mode", "client", "--class", "chock.spark.ChockSpark", "--jars")
                .containsSubsequence("weigh", "--as-of", NOON, "--in", "a b", "--out", "c").contains("spark.executor.userClassPathFirst=true");
    }

    @Test
    void everyLibraryThatJudgingLoadsLiesBesideTheJob() throws IOException, InterruptedException {
        Path shop = ruleBook();
        Path loaded = folder.resolve("loaded");
        Path in = write("few.ndjson", records.subList(0, 10));
        Process judging = new ProcessBuilder("java", "-Xlog:class+load:file=" + loaded, "-cp", "target/classes" + File.pathSeparator + "target/lib/*", "chock.cli.Chock", "assess", "--bulk", "--as-of", NOON,
                "--rule-book", shop.resolve("mine.rules").toString(), "--trust", shop.resolve("trust.json").toString(), in.toString())
                .redirectOutput(folder.resolve("few").toFile()).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        assertThat(judging.waitFor(5, TimeUnit.MINUTES)).isTrue();
        TreeSet<String> jars = new TreeSet<>();
        for (String line : Files.readAllLines(loaded)) {
            int at = line.indexOf("target/lib/");
            if (at >= 0) {
                jars.add(line.substring(at + 11).strip());
            }
        }
        // The progress bar and the way to log belong to the program on one machine.
        jars.removeIf(jar -> jar.startsWith("slf4j-") || jar.startsWith("progressbar-"));
        assertThat(jars).hasSizeGreaterThan(25);
        try (Stream<Path> beside = Files.list(Path.of("target/spark/judging"))) {
            assertThat(beside.map(jar -> jar.getFileName().toString()).toList()).containsAll(jars);
        }
        for (String name : Files.readAllLines(Path.of("src/spark/libraries.txt"))) {
            if (!name.startsWith("#")) {
                try (Stream<Path> beside = Files.list(Path.of("target/spark/judging"))) {
                    assertThat(beside.map(jar -> jar.getFileName().toString()).filter(jar -> jar.matches(java.util.regex.Pattern.quote(name) + "-\\d.*\\.jar")).toList()).as(name).hasSize(1);
                }
            }
        }
    }
}

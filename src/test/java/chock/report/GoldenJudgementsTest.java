package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Explainer;
import chock.assess.Finding;
import chock.assess.Foresight;
import chock.assess.State;
import chock.bench.MixedMill;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What the program says, held fast: of each demo record and of a thousand random ones a line with how many findings
 * there are of each state, and a digest of every word of the JSON. A change of how judging works must leave them as
 * they are. After a change of the rules run it with {@code -Dchock.approve=true}, and read in the difference how many
 * findings changed their state.
 */
class GoldenJudgementsTest {
    private static final Instant DAY = Instant.parse("2026-11-25T12:00:00Z");
    private static final RuleBook BOOK = RuleBook.shipped();
    private static final List<Gate> GATES = List.of(Gate.values());
    private static final Path GOLDEN = Path.of("src/test/resources/golden");
    private static final int RECORDS = 1_020;
    /** Looking ahead takes several judgements, so not every record is looked ahead for. */
    private static final int AHEAD = 60;
    private static final boolean APPROVE = Boolean.getBoolean("chock.approve");
    /** Every so manieth record in every build, all of them where asked for, and to approve them. */
    private static final int EVERY = APPROVE || "whole".equals(System.getProperty("chock.golden")) ? 1 : 10;

    @Test
    void theDemoRecordsAreJudgedAndExplainedAsBefore() throws IOException {
        List<String> lines = new ArrayList<>();
        for (Path example : demoRecords()) {
            JobRecord record = RecordReader.read("demo", Files.readAllBytes(example), BOOK.vocabulary(), DAY);
            Assessment assessment = Foresight.assess(record, BOOK, GATES, DAY);
            lines.add(line(example.getFileName().toString(), assessment, JsonReport.of(List.of(assessment))));
            List<String> checks = List.copyOf(BOOK.cards().keySet());
            AnswersReport why = new AnswersReport(assessment, Explainer.explain(record, BOOK, checks, DAY), true, null);
            lines.add(line(example.getFileName() + " explained", assessment, JsonReport.answering(List.of(why))));
        }
        assertThat(lines).hasSize(18);
        hold("examples.txt", lines);
    }

    private static List<Path> demoRecords() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("docs/examples"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    @Test
    void aThousandRandomRecordsAreJudgedAsBefore() throws IOException {
        MixedMill mill = new MixedMill(BOOK, 18);
        List<byte[]> records = new ArrayList<>();
        for (int i = 0; i < RECORDS; i++) {
            records.add(mill.next().getBytes(StandardCharsets.UTF_8));
        }
        List<String> lines = IntStream.range(0, RECORDS).filter(i -> i % EVERY == 0).parallel()
                .mapToObj(i -> judged(i, records.get(i))).toList();
        hold("random.txt", lines);
    }

    private static String judged(int number, byte[] json) {
        String name = "%04d".formatted(number);
        JobRecord record = RecordReader.read("random record " + name, json, BOOK.vocabulary(), DAY);
        if (number % AHEAD == 0) {
            Assessment ahead = Foresight.assess(record, BOOK, GATES, DAY);
            return line(name, ahead, JsonReport.of(List.of(ahead)));
        }
        Assessor.Judged judged = Assessor.judge(record, BOOK, GATES, DAY);
        return line(name, judged.assessment(), judged.mayChange() + JsonReport.of(List.of(judged.assessment())));
    }

    /** The random records are many kinds of machine in every state, so that holding them fast holds something. */
    @Test
    void theRandomRecordsAreOfManyKinds() throws IOException {
        MixedMill mill = new MixedMill(BOOK, 18);
        Set<String> descriptions = new TreeSet<>();
        Set<State> states = new TreeSet<>();
        for (int i = 0; i < MixedMill.DESCRIPTIONS; i++) {
            byte[] json = mill.next().getBytes(StandardCharsets.UTF_8);
            JobRecord record = RecordReader.read("random record", json, BOOK.vocabulary(), DAY);
            descriptions.add(record.machine().fields().toString());
            assertThat(record.entries()).hasSizeBetween(50, 80);
            findings(Assessor.assess(record, BOOK, GATES, DAY)).map(Finding::state).forEach(states::add);
        }
        assertThat(descriptions).hasSizeGreaterThan(50);
        assertThat(states).containsExactlyInAnyOrder(State.values());
    }

    private static Stream<Finding> findings(Assessment assessment) {
        return assessment.gates().stream().flatMap(gate -> gate.findings().stream());
    }

    private static String line(String name, Assessment assessment, String json) {
        List<Finding> all = findings(assessment).toList();
        String states = Arrays.stream(State.values())
                .map(state -> state.id() + " " + all.stream().filter(f -> f.state() == state).count())
                .collect(Collectors.joining(", "));
        return name + ": " + states + "; " + digest(json.replace(assessment.ruleBookDigest(), ""));
    }

    private static String digest(String text) {
        try {
            byte[] all = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(all, 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void hold(String name, List<String> lines) throws IOException {
        Path golden = GOLDEN.resolve(name);
        if (APPROVE) {
            Files.createDirectories(GOLDEN);
            Files.write(golden, lines);
        }
        List<String> held = Files.readAllLines(golden);
        List<String> tried = name.equals("random.txt")
                ? IntStream.range(0, held.size()).filter(i -> i % EVERY == 0).mapToObj(held::get).toList() : held;
        assertThat(lines).as("%s; after a change of the rules renew it with -Dtest=GoldenJudgementsTest"
                + " -DargLine=-Dchock.approve=true, and read the difference", golden)
                        .isEqualTo(tried);
    }
}

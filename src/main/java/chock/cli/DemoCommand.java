package chock.cli;

import chock.archive.AsOf;
import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.report.Page;
import chock.report.TextReport;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Walks through the example records inside the program. The comment at the head of each record is its story. */
@Command(name = "demo", description = "Judge the example records and tell the story of each.")
final class DemoCommand implements Callable<Integer> {
    /** The day the examples are written for; on a later day their evidence would have gone stale. */
    private static final AsOf DAY = new AsOf(null, LocalDateTime.of(2026, 11, 25, 12, 0));
    private static final Instant LATE = Instant.parse("9999-12-30T00:00:00Z");

    private final Bench bench;

    @Mixin private HelpOption help;

    DemoCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        RuleBook book = bench.ruleBook();
        Page page = new Page(bench.bold());
        page.heading("A workshop on one day, " + DAY.local().toString().replace('T', ' '));
        List<String> names = text("index.txt").lines().map(String::strip).filter(name -> !name.isEmpty()).toList();
        bench.print(page.toString());
        for (String name : names) {
            String yaml = text(name);
            bench.print(new Page(bench.bold()).gap().heading(name).put(2, story(yaml)).toString());
            bench.print(TextReport.verdicts(judge(name, yaml, book), bench.bold()));
        }
        bench.print(new Page(bench.bold()).gap().put(0, "Each of these is a file in docs/examples. To see all of one: chock assess --as-of " + DAY.local() + " FILE").toString());
        return 0;
    }

    private static Assessment judge(String name, String yaml, RuleBook book) {
        byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
        try {
            Instant when = DAY.in(RecordReader.read(name, bytes, book.vocabulary(), LATE).zone());
            JobRecord record = RecordReader.read(name, bytes, book.vocabulary(), when);
            return Assessor.assess(record, book, record.seeks(), when);
        } catch (UnusableInput e) {
            throw new IllegalStateException("its own example is not usable: " + e.getMessage(), e);
        }
    }

    private static String story(String yaml) {
        return yaml.lines().takeWhile(line -> line.startsWith("#")).map(line -> line.substring(1).strip()).collect(Collectors.joining(" "));
    }

    private static String text(String name) {
        try (InputStream resource = DemoCommand.class.getResourceAsStream("/examples/" + name)) {
            if (resource == null) {
                throw new IllegalStateException("its example " + name + " is not inside");
            }
            return new String(resource.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException("its example " + name + " cannot be read", e);
        }
    }
}

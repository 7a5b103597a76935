package chock.cli;

import chock.archive.Judging;
import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.record.Gate;
import chock.report.Papers;
import chock.report.Tag;
import chock.report.TagText;
import chock.rulebook.RuleBook;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The tag for the handlebar. Open or closed, it is hung on; so making it is no verdict. */
@Command(name = "tag", sortOptions = false, description = "Write the tag for the handlebar: which gates are open, until when, and what holds the machine.",
        footer = {"", "Exit status: 0 the tag was made, whatever it says; 2 unusable input or usage; 3 chock itself failed."})
final class TagCommand implements Callable<Integer> {
    private final Bench bench;

    @Mixin private HelpOption help;
    @Mixin private RecordOptions record;
    @Mixin private PaperOptions paper;

    @Option(names = "--gate", paramLabel = "GATE", converter = AssessCommand.GateWord.class,
            description = "Gate to show; may be given several times. Default: the gates the record seeks.")
    private List<Gate> gates;

    TagCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        paper.ready();
        RuleBook book = record.book(bench);
        Judging.Read read = record.read(bench, book);
        List<Gate> shown = List.copyOf(new LinkedHashSet<>(gates == null ? read.record().seeks() : gates));
        Assessment assessment = Assessor.assess(read.record(), book, shown, read.asOf());
        Tag tag = Tag.of(assessment);
        paper.put(bench, read.asOf(), () -> TagText.of(tag, bench.bold()), size -> Papers.html(tag, size));
        return 0;
    }
}

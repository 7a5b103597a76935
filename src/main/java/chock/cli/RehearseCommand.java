package chock.cli;

import chock.rehearse.Boundaries;
import chock.rehearse.Coverage;
import chock.rehearse.Rehearsal;
import chock.rehearse.Rehearsed;
import chock.rehearse.Scope;
import chock.rehearse.Shake;
import chock.report.Json;
import chock.rulebook.RuleBook;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Runs scenarios against the rule book, and says what they leave open. */
@Command(name = "rehearse", sortOptions = false, description = "Run scenarios against the rule book, and say what they leave open.",
        footer = {"", "The steps of a scenario stand in docs/steps.md."})
final class RehearseCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    @Parameters(arity = "0..*", paramLabel = "FEATURES", description = "Feature files, or folders of them. Default: those of the house with --house, else those inside the program.")
    private List<String> features = List.of();

    @ArgGroup
    private Question question;

    @Option(names = "--require", description = "With --coverage: fail when a state that can come about is not shown.")
    private boolean require;

    @Option(names = "--meaning", description = "With --shake: change every field of a card that decides, and every condition of a shipped rule, as well.")
    private boolean meaning;

    @Option(names = "--of", paramLabel = "ID", description = "With --coverage, --boundaries or --shake: only what bears this id or begins with it, such as brakes or brakes.pad-thickness.")
    private String of;

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "text", description = "text or json; for a plain rehearsal also junit or html. Default: text.")
    private String format;

    @Option(names = "--rules", paramLabel = "DIR", description = "Rehearse against the rule book in this folder, laid out like rules/ of the project; only systems that differ from those inside the program are compiled. Its *.drl files are code: name only a folder you trust.")
    private String rules;

    @Mixin private RuleBookOption house;

    /** What is asked of the scenarios besides whether they hold. */
    private static final class Question {
        @Option(names = "--coverage", description = "Count for every check the scenarios that show each state.")
        private boolean coverage;

        @Option(names = "--boundaries", description = "Try every limit just inside, at, and just outside its number.")
        private boolean boundaries;

        @Option(names = "--shake", description = "Change every number, date and rule a little, and say which change no scenario notices.")
        private boolean shake;
    }

    RehearseCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        checkUsage();
        RuleBook book = rules == null ? house.named(bench) : PackCommand.of(rules).load();
        ByteArrayOutputStream formed = new ByteArrayOutputStream();
        Rehearsal.Form form = question == null && !format.equals("text") ? Rehearsal.Form.valueOf(format.toUpperCase(Locale.ROOT)) : null;
        Rehearsed rehearsed = Rehearsal.run(book, features(book), form, formed);
        if (form != null) {
            bench.print(formed.toString(StandardCharsets.UTF_8));
        }
        RehearsalText text = new RehearsalText(bench.bold());
        text.unreadable(rehearsed).forEach(bench::say);
        if (question == null || !rehearsed.holds()) {
            String told = text.of(rehearsed);
            if (form == null && question == null) {
                bench.print(told);
            } else if (!rehearsed.holds()) {
                bench.say(told);
            }
            return rehearsed.hasUnreadable() ? Bench.UNUSABLE : rehearsed.holds() ? Bench.RELEASED : Bench.BLOCKED;
        }
        return asked(book, rehearsed, text);
    }

    // The scenarios inside the program speak of the shipped limits, which a house may have tightened: its own speak of its rules.
    private List<String> features(RuleBook book) {
        return features.isEmpty() ? book.house().map(rules -> List.of(rules.features().toString())).orElse(features) : features;
    }

    private void checkUsage() {
        List<String> known = question == null ? List.of("text", "json", "junit", "html") : List.of("text", "json");
        if (!known.contains(format)) {
            throw new ParameterException(spec.commandLine(), "'" + format + "' is not one of " + String.join(", ", known) + (question == null ? "" : ": junit and html are for a plain rehearsal") + ".");
        }
        if (rules != null && house.isGiven()) {
            throw new ParameterException(spec.commandLine(), "--rules names a whole rule book; leave --house and --rule-book out.");
        }
        if (require && (question == null || !question.coverage)) {
            throw new ParameterException(spec.commandLine(), "--require goes with --coverage.");
        }
        if (meaning && (question == null || !question.shake)) {
            throw new ParameterException(spec.commandLine(), "--meaning goes with --shake.");
        }
        if (of != null && question == null) {
            throw new ParameterException(spec.commandLine(), "--of goes with --coverage, --boundaries or --shake.");
        }
    }

    private int asked(RuleBook book, Rehearsed rehearsed, RehearsalText text) {
        Scope scope = new Scope(of, features.isEmpty() && book.house().isPresent());
        if (question.coverage) {
            Coverage coverage = Coverage.of(book, rehearsed, scope);
            checkNotEmpty(coverage.rows(), scope);
            bench.print(format.equals("json") ? Json.pretty(RehearsalJson.of(coverage)) : text.of(coverage));
            return require && !coverage.isWhole() ? Bench.BLOCKED : Bench.RELEASED;
        }
        if (question.boundaries) {
            Boundaries boundaries = Boundaries.of(book, rehearsed, scope);
            checkNotEmpty(boundaries.rows(), scope);
            bench.print(format.equals("json") ? Json.pretty(RehearsalJson.of(boundaries)) : text.of(boundaries));
            return boundaries.wrong() > 0 ? Bench.BLOCKED : Bench.RELEASED;
        }
        Shake.Shaken shaken = meaning ? Shake.runWithMeaning(book, rehearsed, scope) : Shake.run(book, rehearsed, scope);
        if (shaken.changes() == 0 && shaken.idle().isEmpty()) {
            checkNotEmpty(List.of(), scope);
        }
        bench.print(format.equals("json") ? Json.pretty(RehearsalJson.of(shaken)) : text.of(shaken));
        return shaken.unnoticed().isEmpty() ? Bench.RELEASED : Bench.BLOCKED;
    }

    private void checkNotEmpty(List<?> rows, Scope scope) {
        if (rows.isEmpty()) {
            throw new ParameterException(spec.commandLine(), (scope.houseOnly() ? "The house has nothing of its own to ask this of" : "Nothing in the rule book bears the id '" + of + "' or begins with it")
                    + (scope.houseOnly() && of != null ? " whose id is '" + of + "' or begins with it" : "") + ". " + (scope.houseOnly() ? "Name FEATURES besides, and the whole rule book is asked about." : "'chock rules' lists the checks."));
        }
    }
}

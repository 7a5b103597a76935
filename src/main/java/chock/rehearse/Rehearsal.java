package chock.rehearse;

import chock.record.Fault;
import chock.record.Spelling;
import chock.record.UnusableInput;
import chock.rulebook.RuleBook;
import io.cucumber.core.feature.FeatureParser;
import io.cucumber.core.gherkin.Feature;
import io.cucumber.core.gherkin.FeatureParserException;
import io.cucumber.core.options.RuntimeOptionsBuilder;
import io.cucumber.core.plugin.HtmlFormatter;
import io.cucumber.core.plugin.JUnitFormatter;
import io.cucumber.core.plugin.JsonFormatter;
import io.cucumber.core.runtime.Runtime;
import io.cucumber.plugin.Plugin;
import io.cucumber.tagexpressions.TagExpressionParser;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Runs scenarios against a rule book. */
public final class Rehearsal {
    private static final int THREADS = Math.max(1, java.lang.Runtime.getRuntime().availableProcessors());
    private static final Pattern UNREADABLE = Pattern.compile("\\((\\d+):\\d+\\): (.*)");

    private static final Pattern CHECK = Pattern.compile("[a-z]+\\.[a-z0-9-]+");

    private Rehearsal() { }

    /** A form in which others read the result. */
    public enum Form {
        JSON, JUNIT, HTML;

        Plugin writing(OutputStream to) {
            try {
                return switch (this) {
                    case JSON -> new JsonFormatter(to);
                    case JUNIT -> new JUnitFormatter(to);
                    case HTML -> new HtmlFormatter(to);
                };
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    /**
     * Runs scenarios.
     *
     * @param book the rule book they are to hold against
     * @param names feature files and folders; empty for the features inside the program
     * @param form a form to write the result in besides, or null
     * @param to takes that form, or null
     * @throws UnusableInput when a file cannot be read, or is not written as scenarios are
     */
    public static Rehearsed run(RuleBook book, List<String> names, Form form, OutputStream to) {
        List<FeatureFile> files = names.isEmpty() ? FeatureFile.shipped() : FeatureFile.named(names);
        return run(book, files, new RuntimeOptionsBuilder().setThreads(THREADS), form, to);
    }

    /**
     * Runs the scenarios that show what a check means, one after the other: those inside the program, and those in the
     * folder of the house in force.
     *
     * @param most how many at most, a row of an outline counting as one
     * @throws UnusableInput when a file of the house cannot be read, or is not written as scenarios are
     */
    public static Rehearsed ofCheck(RuleBook book, String check, int most) {
        Stream<FeatureFile> house = book.house().stream().flatMap(own -> FeatureFile.ofHouse(own.features()).stream());
        List<FeatureFile> files = Stream.concat(FeatureFile.shipped().stream(), house).filter(file -> file.text().contains("@" + check)).toList();
        return run(book, files, new RuntimeOptionsBuilder().setThreads(1).setCount(most).addTagFilter(TagExpressionParser.parse("@" + check)), null, null);
    }

    private static Rehearsed run(RuleBook book, List<FeatureFile> files, RuntimeOptionsBuilder options, Form form, OutputStream to) {
        List<Feature> features = parsed(book, files);
        BenchMaker benches = new BenchMaker(book);
        Prompter prompter = new Prompter(benches);
        List<Plugin> plugins = new ArrayList<>(List.of(prompter));
        if (form != null) {
            plugins.add(form.writing(to));
        }
        Runtime.builder()
                .withRuntimeOptions(options.addGlue(URI.create("classpath:/chock/rehearse")).setMonochrome().setPublishQuiet(true).build())
                .withObjectFactorySupplier(benches)
                .withFeatureSupplier(() -> features)
                .withAdditionalPlugins(plugins.toArray(Plugin[]::new))
                .build().run();
        return prompter.rehearsed(files.size());
    }

    private static List<Feature> parsed(RuleBook book, List<FeatureFile> files) {
        FeatureParser parser = new FeatureParser(UUID::randomUUID);
        List<Feature> features = new ArrayList<>();
        List<Fault> faults = new ArrayList<>();
        for (FeatureFile file : files) {
            try {
                parser.parseResource(file).ifPresent(features::add);
                faults.addAll(lostSteps(file));
                faults.addAll(strangeTags(book, file));
            } catch (FeatureParserException unreadable) {
                faults.addAll(faults(file, unreadable.getMessage()));
            }
        }
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return features;
    }

    // A tag of another form is anybody's own; one of the form of a check's id that is none would hide the scenario from its check.
    private static List<Fault> strangeTags(RuleBook book, FeatureFile file) {
        List<Fault> faults = new ArrayList<>();
        List<String> lines = file.text().lines().map(String::strip).toList();
        for (int i = 0; i < lines.size(); i++) {
            for (String tag : lines.get(i).startsWith("@") ? lines.get(i).split("\\s+") : new String[0]) {
                String id = tag.substring(Math.min(1, tag.length()));
                if (CHECK.matcher(id).matches() && !book.cards().containsKey(id) && !(id.startsWith(Scope.OF_A_HOUSE) && book.house().isEmpty())) {
                    List<String> near = Spelling.nearest(id, book.cards().keySet());
                    faults.add(new Fault(file.name(), i + 1, "", "the tag '" + tag + "' names no check", near.isEmpty() ? "'chock rules' lists the checks" : "Did you mean @" + near.get(0) + "?"));
                }
            }
        }
        return faults;
    }

    // What stands between the name of a scenario and its first step is a description: a step without its keyword would be lost there.
    private static List<Fault> lostSteps(FeatureFile file) {
        StepList steps = StepList.known();
        List<Fault> faults = new ArrayList<>();
        boolean describing = false;
        boolean outside = true;
        List<String> lines = file.text().lines().map(String::strip).toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            if (line.matches("(Scenario|Example|Scenario Outline|Scenario Template|Background):.*")) {
                describing = true;
                outside = false;
            } else if (line.matches("(Feature|Rule|Ability|Business Need):.*")) {
                outside = true;
            } else if (outside && (steps.knows(line) || steps.knows(line.replaceFirst("^\\S+\\s+", "")))) {
                faults.add(new Fault(file.name(), i + 1, "", "'" + line + "' stands in no scenario and would be passed over", "Begin one above it with Scenario: or Scenario Outline: and its name"));
                outside = false;
                describing = false;
            } else if (line.matches("(Given|When|Then|And|But|\\*) .*")) {
                describing = false;
            } else if (describing && (steps.knows(line) || steps.knows(line.replaceFirst("^\\S+\\s+", "")))) {
                faults.add(new Fault(file.name(), i + 1, "", "'" + line + "' reads like a step and would be passed over", "Begin it with Given, And or Then"));
            }
        }
        return faults;
    }

    private static List<Fault> faults(FeatureFile file, String message) {
        List<Fault> faults = new ArrayList<>();
        for (Matcher m = UNREADABLE.matcher(message); m.find(); ) {
            faults.add(new Fault(file.name(), Integer.parseInt(m.group(1)), "", what(m.group(2)), "A scenario is written as in docs/steps.md"));
        }
        return faults.isEmpty() ? List.of(new Fault(file.name(), 0, "", "this is not written as scenarios are", "See docs/steps.md")) : faults;
    }

    private static String what(String message) {
        int got = message.lastIndexOf("got '");
        if (got < 0) {
            return message.replace("inconsistent cell count within the table", "the rows of this table have different numbers of columns");
        }
        String line = message.substring(got + 5).replaceFirst("'$", "");
        return message.contains("unexpected end of file") ? "the file ends in the middle of something"
                : "'" + line + "' cannot stand here; a step begins with Given, When, Then, And or But, and what groups steps is Feature:, Rule:, Scenario:, Scenario Outline: or Examples:";
    }
}

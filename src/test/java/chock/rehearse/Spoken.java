package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import chock.rulebook.RuleBook;
import io.cucumber.gherkin.GherkinParser;
import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import io.cucumber.messages.types.Envelope;
import io.cucumber.messages.types.Pickle;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Scenarios spoken to a rule book other than the shipped one. */
public final class Spoken {
    private Spoken() { }

    /** What did not hold, one line each, of the scenarios in all feature files below a folder. Nothing to run is a failure. */
    public static List<String> against(RuleBook book, Path folder) throws IOException {
        List<String> slips = new ArrayList<>();
        int run = 0;
        List<Path> files;
        try (Stream<Path> all = Files.walk(folder)) {
            files = all.filter(f -> f.toString().endsWith(".feature")).sorted().toList();
        }
        for (Path file : files) {
            try (Stream<Envelope> read = GherkinParser.builder().build().parse(file.toString(), Files.readAllBytes(file))) {
                for (Pickle pickle : read.map(Envelope::getPickle).flatMap(Optional::stream).toList()) {
                    run++;
                    speak(book, pickle).ifPresent(slip -> slips.add(file.getFileName() + ", " + pickle.getName() + ": " + slip));
                }
            }
        }
        assertThat(run).as("scenarios in " + folder).isPositive();
        return slips;
    }

    private static Optional<String> speak(RuleBook book, Pickle pickle) {
        BenchSteps steps = new BenchSteps(new Bench(book));
        for (var step : pickle.getSteps()) {
            Optional<String> slip = say(steps, step.getText());
            if (slip.isPresent()) {
                return Optional.of(step.getText() + ": " + slip.get());
            }
        }
        return Optional.empty();
    }

    private static Optional<String> say(BenchSteps steps, String text) {
        for (Method method : BenchSteps.class.getDeclaredMethods()) {
            String pattern = method.isAnnotationPresent(Given.class) ? method.getAnnotation(Given.class).value() : method.isAnnotationPresent(Then.class) ? method.getAnnotation(Then.class).value() : null;
            Matcher m = pattern == null ? null : Pattern.compile(pattern).matcher(text);
            if (m != null && m.find()) {
                Object[] args = new Object[m.groupCount()];
                for (int i = 0; i < args.length; i++) {
                    Class<?> type = method.getParameterTypes()[i];
                    String group = m.group(i + 1);
                    args[i] = group == null || type == String.class ? group : Integer.valueOf(group);
                }
                try {
                    method.invoke(steps, args);
                    return Optional.empty();
                } catch (InvocationTargetException e) {
                    return Optional.of(String.valueOf(e.getCause().getMessage()));
                } catch (IllegalAccessException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
        return Optional.of("no step is written like this");
    }
}

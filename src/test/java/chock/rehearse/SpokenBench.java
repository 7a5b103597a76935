package chock.rehearse;

import chock.record.JobRecord;
import chock.rulebook.RuleBook;
import io.cucumber.cucumberexpressions.Argument;
import io.cucumber.cucumberexpressions.CaptureGroupTransformer;
import io.cucumber.cucumberexpressions.Expression;
import io.cucumber.cucumberexpressions.ExpressionFactory;
import io.cucumber.cucumberexpressions.ParameterType;
import io.cucumber.cucumberexpressions.ParameterTypeRegistry;
import io.cucumber.java.en.Given;
import java.lang.reflect.Method;
import java.time.Instant;
import java.time.Period;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** A bench that is told single steps, without a feature around them. */
public final class SpokenBench {
    private static final Map<Method, Expression> STEPS = steps();

    private final Bench bench;
    private final BenchSteps steps;

    public SpokenBench(RuleBook book) {
        bench = new Bench(book);
        steps = new BenchSteps(bench);
    }

    private static Map<Method, Expression> steps() {
        ParameterTypeRegistry registry = new ParameterTypeRegistry(Locale.ENGLISH);
        StepWords words = new StepWords();
        for (Method word : StepWords.class.getDeclaredMethods()) {
            io.cucumber.java.ParameterType form = word.getAnnotation(io.cucumber.java.ParameterType.class);
            if (form != null) {
                registry.defineParameterType(new ParameterType<>(word.getName(), List.of(form.value()), Object.class,
                        (CaptureGroupTransformer<Object>) groups -> word.invoke(words, (Object[]) groups), false, false));
            }
        }
        ExpressionFactory expressions = new ExpressionFactory(registry);
        Map<Method, Expression> steps = new LinkedHashMap<>();
        for (Method step : BenchSteps.class.getDeclaredMethods()) {
            Given given = step.getAnnotation(Given.class);
            if (given != null) {
                steps.put(step, expressions.createExpression(given.value()));
            }
        }
        return steps;
    }

    /** Says what a machine is like or what was written about it, without Given or And. */
    public void say(String step) throws ReflectiveOperationException {
        for (Map.Entry<Method, Expression> known : STEPS.entrySet()) {
            List<Argument<?>> arguments = known.getValue().match(step);
            if (arguments != null) {
                known.getKey().invoke(steps, arguments.stream().map(Argument::getValue).toArray());
                return;
            }
        }
        throw new IllegalArgumentException("no step is written like this: " + step);
    }

    /** The record as it was said so far. */
    public JobRecord record() {
        return bench.record();
    }

    /** The moment it is judged at. */
    public Instant asOf() {
        return bench.judgedAt();
    }

    public void work(String point, String work) {
        bench.work(Bench.INSPECTOR, point, work, Ago.ON_THE_DAY);
    }

    /** What was found instead of this state, or nothing. */
    public Optional<String> otherwise(String check, String state, String place) {
        try {
            steps.outcome(check, state, place);
            return Optional.empty();
        } catch (AssertionError differs) {
            return Optional.of(differs.getMessage());
        }
    }
}

package chock.rehearse;

import io.cucumber.plugin.ConcurrentEventListener;
import io.cucumber.plugin.event.EventPublisher;
import io.cucumber.plugin.event.PickleStepTestStep;
import io.cucumber.plugin.event.Result;
import io.cucumber.plugin.event.Status;
import io.cucumber.plugin.event.TestCase;
import io.cucumber.plugin.event.TestCaseFinished;
import io.cucumber.plugin.event.TestStepFinished;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;

/** Listens while scenarios run: keeps what each put together, and which step did not hold. */
final class Prompter implements ConcurrentEventListener {
    private final BenchMaker benches;
    private final StepList steps = StepList.known();
    private final Map<TestCase, List<Slip>> slips = new ConcurrentHashMap<>();
    private final Queue<Rehearsed.Shown> shown = new ConcurrentLinkedQueue<>();

    private record Slip(PickleStepTestStep step, Result result) { }

    Prompter(BenchMaker benches) {
        this.benches = benches;
    }

    @Override
    public void setEventPublisher(EventPublisher events) {
        events.registerHandlerFor(TestStepFinished.class, this::stepFinished);
        events.registerHandlerFor(TestCaseFinished.class, this::finished);
    }

    private void stepFinished(TestStepFinished event) {
        Status status = event.getResult().getStatus();
        if (event.getTestStep() instanceof PickleStepTestStep step && status != Status.PASSED && status != Status.SKIPPED) {
            slips.computeIfAbsent(event.getTestCase(), c -> new ArrayList<>()).add(new Slip(step, event.getResult()));
        }
    }

    private void finished(TestCaseFinished event) {
        TestCase ran = event.getTestCase();
        String file = ran.getUri().getSchemeSpecificPart();
        String place = file + ":" + ran.getLocation().getLine();
        List<Rehearsed.Slip> all = new ArrayList<>(slips.getOrDefault(ran, List.of()).stream().map(slip -> slip(file, slip)).toList());
        if (!all.isEmpty()) {
            all.addAll(unknownBehind(ran, file, all.get(all.size() - 1).line()));
        }
        Scenario kept = all.isEmpty() ? benches.bench().scenario(place, ran.getName()) : null;
        shown.add(new Rehearsed.Shown(file, ran.getLocation().getLine(), ran.getName(), all, kept));
    }

    private Rehearsed.Slip slip(String file, Slip slip) {
        String written = written(slip.step);
        int line = slip.step.getStep().getLine();
        if (slip.result.getStatus() == Status.UNDEFINED) {
            return unknown(file, slip.step);
        }
        Throwable cause = slip.result.getError();
        while (cause != null && !(cause instanceof NotUnderstood) && !(cause instanceof AssertionError) && cause.getCause() != null) {
            cause = cause.getCause();
        }
        if (cause instanceof AssertionError) {
            return new Rehearsed.Slip(file, line, written, Rehearsed.Kind.OTHERWISE, cause.getMessage(), List.of());
        }
        String message = cause == null || cause.getMessage() == null ? "it cannot be tried" : cause.getMessage();
        return new Rehearsed.Slip(file, line, written, Rehearsed.Kind.NOT_UNDERSTOOD, message, List.of());
    }

    private static String written(PickleStepTestStep step) {
        return step.getStep().getKeyword().strip() + " " + step.getStep().getText();
    }

    private Rehearsed.Slip unknown(String file, PickleStepTestStep step) {
        return new Rehearsed.Slip(file, step.getStep().getLine(), written(step), Rehearsed.Kind.UNKNOWN_STEP, "no step is written like this",
                steps.nearest(step.getStep().getKeyword().strip(), step.getStep().getText()));
    }

    // Behind a step that does not hold none is tried; one that is not written right is told all the same, to be mended in one go.
    private List<Rehearsed.Slip> unknownBehind(TestCase ran, String file, int line) {
        return ran.getTestSteps().stream().filter(PickleStepTestStep.class::isInstance).map(PickleStepTestStep.class::cast)
                .filter(step -> step.getStep().getLine() > line && !steps.knows(step.getStep().getText())).map(step -> unknown(file, step)).toList();
    }

    Rehearsed rehearsed(int files) {
        return new Rehearsed(files, shown.stream().sorted().toList());
    }
}

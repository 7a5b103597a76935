package chock.board;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Skips browser tests on a machine without a browser, and says how to enable them: the build needs nothing but JDK and
 * Maven. With {@code -Dchock.browser=required} nothing is skipped, and a test without a browser fails.
 */
final class BrowserWanted implements ExecutionCondition {
    static final Path CHROMIUM = Path.of("/usr/bin/chromium");
    static final Path DRIVER = Path.of("/usr/bin/chromedriver");
    static final String HOW = "sudo apt-get install -y chromium chromium-driver";
    private static final String SETTING = "chock.browser";
    private static final String REQUIRED = "required";

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        ConditionEvaluationResult result = decide(absent(List.of(CHROMIUM, DRIVER)), System.getProperty(SETTING));
        if (result.isDisabled()) {
            // Maven prints how many tests were skipped and keeps the reason in a file; this line is for whoever reads the build.
            System.out.println(context.getDisplayName() + " skipped: " + result.getReason().orElseThrow());
        }
        return result;
    }

    static List<Path> absent(List<Path> programs) {
        return programs.stream().filter(program -> !Files.isExecutable(program)).toList();
    }

    /**
     * @param absent programs that are not installed
     * @param setting value of {@code chock.browser}, or null
     * @throws IllegalArgumentException when the setting is neither absent nor {@code required}: a misspelt one must not skip anything
     */
    static ConditionEvaluationResult decide(List<Path> absent, String setting) {
        if (setting != null && !setting.equals(REQUIRED)) {
            throw new IllegalArgumentException("-D" + SETTING + "=" + setting + ": write -D" + SETTING + "=" + REQUIRED + ", or leave it out");
        }
        if (absent.isEmpty()) {
            return ConditionEvaluationResult.enabled("Chromium and its driver are installed");
        }
        if (setting != null) {
            return ConditionEvaluationResult.enabled("a browser is required");
        }
        return ConditionEvaluationResult.disabled(absent.stream().map(Path::toString).collect(Collectors.joining(" and ")) + " not installed. To run browser tests: " + HOW);
    }
}

package chock.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;

/** Browser tests are skipped where there is no browser, and nowhere else. */
class BrowserWantedTest {
    private static final List<Path> BOTH = List.of(BrowserWanted.CHROMIUM, BrowserWanted.DRIVER);

    @TempDir
    Path folder;

    @Test
    void withBothProgramsTheTestsRun() {
        assertThat(BrowserWanted.decide(List.of(), null).isDisabled()).isFalse();
        assertThat(BrowserWanted.decide(List.of(), "required").isDisabled()).isFalse();
    }

    @Test
    void withoutThemTheTestsAreSkippedAndTheReasonSaysHowToEnableThem() {
        ConditionEvaluationResult neither = BrowserWanted.decide(BOTH, null);
        assertThat(neither.isDisabled()).isTrue();
        assertThat(neither.getReason()).contains("/usr/bin/chromium and /usr/bin/chromedriver not installed. To run browser tests: sudo apt-get install -y chromium chromium-driver");
        assertThat(BrowserWanted.decide(List.of(BrowserWanted.DRIVER), null).getReason().orElseThrow()).startsWith("/usr/bin/chromedriver not installed. ");
    }

    @Test
    void whereABrowserIsRequiredNothingIsSkipped() {
        assertThat(BrowserWanted.decide(BOTH, "required").isDisabled()).isFalse();
        assertThatThrownBy(() -> Browser.program(folder.resolve("chromedriver"))).isInstanceOf(AssertionError.class).hasMessageContaining("sudo apt-get install -y chromium chromium-driver");
    }

    @Test
    void aMisspeltSettingSkipsNothing() {
        assertThatThrownBy(() -> BrowserWanted.decide(BOTH, "requierd")).hasMessage("-Dchock.browser=requierd: write -Dchock.browser=required, or leave it out");
    }

    @Test
    void aProgramThatCannotBeRunCountsAsAbsent() throws Exception {
        Path file = Files.writeString(folder.resolve("no-program"), "words");
        Path program = Files.writeString(folder.resolve("program"), "#!/bin/sh\n");
        assertThat(program.toFile().setExecutable(true)).isTrue();
        assertThat(BrowserWanted.absent(List.of(file, program, folder.resolve("nothing")))).containsExactly(file, folder.resolve("nothing"));
    }
}

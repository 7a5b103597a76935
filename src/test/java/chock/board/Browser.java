package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.BooleanSupplier;
import java.util.logging.Level;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A real browser: Debian's {@code chromium} with {@code chromium-driver}. */
final class Browser {
    static final Dimension DESK = new Dimension(1280, 900);
    static final Dimension PHONE = new Dimension(390, 844);
    static final Path PICTURES = Path.of("target/board-pictures");
    private static final String AXE = axe();

    private Browser() { }

    private static String axe() {
        try (InputStream script = Browser.class.getResourceAsStream("/axe.min.js")) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Opens one with a fresh profile below this folder; it keeps what its console says of errors. */
    static ChromeDriver open(Path folder) {
        ChromeOptions options = new ChromeOptions();
        options.setBinary(program(BrowserWanted.CHROMIUM).toFile());
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
                "--disable-dev-shm-usage", "--user-data-dir=" + folder.resolve("profile"));
        LoggingPreferences logs = new LoggingPreferences();
        logs.enable(LogType.BROWSER, Level.SEVERE);
        options.setCapability("goog:loggingPrefs", logs);
        ChromeDriver browser = new ChromeDriver(new ChromeDriverService.Builder().usingDriverExecutable(program(BrowserWanted.DRIVER).toFile()).usingAnyFreePort().build(), options);
        browser.manage().timeouts().pageLoadTimeout(Duration.ofSeconds(60)).scriptTimeout(Duration.ofSeconds(60));
        return browser;
    }

    /** The program, which has to be installed. */
    static Path program(Path path) {
        assertThat(path).as("to install it: " + BrowserWanted.HOW).isExecutable();
        return path;
    }

    static void size(ChromeDriver browser, Dimension size) {
        browser.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", size.getWidth(), "height", size.getHeight(), "deviceScaleFactor", 1, "mobile", size.equals(PHONE)));
    }

    /**
     * Does what leads to another page, and waits for that page. The page one leaves is marked, and the wait ends at a whole page
     * without this mark: an element of a page on its way out must not be asked anything, the browser may have let go of half of it.
     * Each mark is new, since the browser may keep a page that was left and show it again.
     */
    static void leave(ChromeDriver browser, Runnable deed) {
        String mark = UUID.randomUUID().toString();
        browser.executeScript("window.left = arguments[0]", mark);
        deed.run();
        await(browser, () -> Boolean.TRUE.equals(browser.executeScript("return window.left !== arguments[0] && document.readyState === 'complete'", mark)));
    }

    /** Waits a minute at most; while a page changes, what cannot be asked yet is asked again. */
    static void await(ChromeDriver browser, BooleanSupplier good) {
        new WebDriverWait(browser, Duration.ofSeconds(60)).ignoring(WebDriverException.class).until(there -> good.getAsBoolean());
    }

    /** Takes a picture at this size, and sees that nothing runs off the side. */
    static void picture(ChromeDriver browser, String name, Dimension size) throws IOException {
        size(browser, size);
        Files.createDirectories(PICTURES);
        Files.copy(browser.getScreenshotAs(OutputType.FILE).toPath(), PICTURES.resolve(name + (size.equals(PHONE) ? "-phone.png" : "-desk.png")), StandardCopyOption.REPLACE_EXISTING);
        Number wide = (Number) browser.executeScript("return document.documentElement.scrollWidth - document.documentElement.clientWidth");
        assertThat(wide.intValue()).as(name + " runs off the side at " + size).isZero();
    }

    /** What the rules of WCAG 2.2 A and AA that a machine can try have against this page. */
    @SuppressWarnings("unchecked")
    static List<String> complaints(ChromeDriver browser) {
        Map<String, Object> results = (Map<String, Object>) browser.executeAsyncScript(AXE + "\nconst done = arguments[arguments.length - 1];"
                + "axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']}).then(r => done({passes: r.passes.length, found: r.violations.map(v => v.id + ': ' + v.help + ' ' + v.nodes.slice(0, 2).map(n => n.html))}));");
        assertThat((Long) results.get("passes")).as("rules that had something to look at").isGreaterThan(5);
        return (List<String>) results.get("found");
    }
}

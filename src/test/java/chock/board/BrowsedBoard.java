package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Cookie;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.logging.LogType;

/** One board with a store of its own and one browser, for all tests of a class. A test that goes to another page waits for it: {@link #go} and {@link #leave}. */
@NeedsBrowser
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class BrowsedBoard {
    Path folder;
    Running running;
    ChromeDriver browser;

    @BeforeAll
    final void open(@TempDir Path folder) throws Exception {
        this.folder = folder;
        running = board(Files.createDirectories(folder.resolve("store")));
        browser = Browser.open(folder);
    }

    @AfterAll
    final void close() {
        if (browser != null) {
            browser.quit();
        }
        if (running != null) {
            running.close();
        }
    }

    /** Starts the board on this store. */
    Running board(Path store) throws Exception {
        return new Running(store);
    }

    /** Hands the browser the session of somebody who is signed in. */
    final void continueAs(Visit visit) {
        go("/sign-in");
        browser.manage().addCookie(new Cookie("chock", visit.cookie.substring("chock=".length())));
    }

    /** Opens a page of the board and waits until it is loaded. */
    final void go(String path) {
        browser.get("http://127.0.0.1:" + running.board.port() + path);
    }

    /** Does what leads to another page, and waits until that page is loaded. */
    final void leave(Runnable deed) {
        Browser.leave(browser, deed);
    }

    /** Touches what leads to another page, and waits until that page is loaded. */
    final void touch(WebElement what) {
        leave(what::click);
    }

    /** Does something as in a browser whose scripts are switched off. */
    final void withoutScripts(Runnable deed) {
        browser.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
        try {
            deed.run();
        } finally {
            browser.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
        }
    }

    /** Holds the browser to having refused nothing and complained of nothing since its console was last read. */
    final void assertQuiet() {
        assertThat(browser.manage().logs().get(LogType.BROWSER).getAll()).as("what the browser refused or complained of").isEmpty();
    }
}

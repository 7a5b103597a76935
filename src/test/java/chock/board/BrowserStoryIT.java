package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Points;
import chock.record.RecordReader;
import java.io.File;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.OutputType;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;

/**
 * A real browser walks through a day at the shop. Wants Debian's {@code chromium} and {@code chromium-driver}; without
 * them it fails, it is never left out.
 */
class BrowserStoryIT {
    private static final Dimension DESK = new Dimension(1280, 900);
    private static final Dimension PHONE = new Dimension(390, 844);
    private static final Path PICTURES = Path.of("target/board-pictures");

    @TempDir
    static Path folder;
    private static Running running;
    private static ChromeDriver browser;
    private static String axe;

    @BeforeAll
    static void start() throws Exception {
        Path driver = Path.of("/usr/bin/chromedriver");
        assertThat(driver).as("install Debian's chromium and chromium-driver").exists();
        running = new Running(folder.resolve("store"));
        ChromeOptions options = new ChromeOptions();
        options.setBinary("/usr/bin/chromium");
        options.addArguments("--headless=new", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
                "--disable-dev-shm-usage", "--user-data-dir=" + folder.resolve("profile"));
        browser = new ChromeDriver(new ChromeDriverService.Builder().usingDriverExecutable(driver.toFile()).usingAnyFreePort().build(), options);
        browser.manage().timeouts().pageLoadTimeout(Duration.ofSeconds(60)).scriptTimeout(Duration.ofSeconds(60));
        Files.createDirectories(PICTURES);
        try (InputStream script = BrowserStoryIT.class.getResourceAsStream("/axe.min.js")) {
            axe = new String(script.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.quit();
        }
        if (running != null) {
            running.close();
        }
    }

    private static void go(String path) {
        browser.get("http://127.0.0.1:" + running.board.port() + path);
    }

    private static void type(String id, String words) {
        WebElement field = browser.findElement(By.id(id));
        field.clear();
        field.sendKeys(words);
    }

    private static void press(String words) {
        touch(browser.findElement(By.xpath("//main//button[normalize-space()='" + words + "']")));
    }

    /** Touches what leads to another page, and waits for that page. */
    private static void touch(WebElement what) {
        WebElement old = browser.findElement(By.tagName("html"));
        what.click();
        new WebDriverWait(browser, Duration.ofSeconds(60)).until(ExpectedConditions.stalenessOf(old));
        new WebDriverWait(browser, Duration.ofSeconds(60)).until(there -> "complete".equals(browser.executeScript("return document.readyState")));
    }

    private static String page() {
        return browser.findElement(By.tagName("main")).getText();
    }

    /** Pages that are laid out otherwise at a desk; the others differ in width alone, and are held against WCAG on the phone. */
    private static final List<String> OTHERWISE_AT_A_DESK = List.of("machines", "machine", "people");

    /** Takes a picture at both sizes, and holds the page against WCAG 2.2 AA. */
    private static void look(String name) throws Exception {
        for (Map.Entry<String, Dimension> size : Map.of("desk", DESK, "phone", PHONE).entrySet()) {
            size(size.getValue());
            File picture = browser.getScreenshotAs(OutputType.FILE);
            Files.copy(picture.toPath(), PICTURES.resolve(name + "-" + size.getKey() + ".png"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            if (size.getValue().equals(PHONE) || OTHERWISE_AT_A_DESK.contains(name)) {
                assertThat(complaints()).as(name + " on the " + size.getKey()).isEmpty();
            }
            Number wide = (Number) browser.executeScript("return document.documentElement.scrollWidth - document.documentElement.clientWidth");
            assertThat(wide.intValue()).as(name + " runs off the side of the " + size.getKey()).isZero();
        }
    }

    /** What the rules of WCAG 2.2 A and AA that a machine can try have against this page. */
    @SuppressWarnings("unchecked")
    private static List<String> complaints() {
        Map<String, Object> results = (Map<String, Object>) browser.executeAsyncScript(axe + "\nconst done = arguments[arguments.length - 1];"
                + "axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']}).then(r => done({passes: r.passes.length, found: r.violations.map(v => v.id + ': ' + v.help + ' ' + v.nodes.slice(0, 2).map(n => n.html))}));");
        assertThat((Long) results.get("passes")).as("rules that had something to look at").isGreaterThan(5);
        return (List<String>) results.get("found");
    }

    private static void size(Dimension size) {
        browser.executeCdpCommand("Emulation.setDeviceMetricsOverride", Map.of("width", size.getWidth(), "height", size.getHeight(), "deviceScaleFactor", 1, "mobile", size.equals(PHONE)));
    }

    private static String signInFirst(String id, String secret) {
        go("/sign-in");
        type("id", id);
        type("password", secret);
        press("Sign in");
        String own = "own words of " + id + " " + secret.substring(0, 5);
        own = own.replace(id, "the bench");
        type("old", secret);
        type("new", own);
        type("again", own);
        press("Set it");
        assertThat(browser.getTitle()).startsWith("All machines");
        return own;
    }

    private static String person(String id, String name, String role) {
        go("/people");
        type("id", id);
        type("name", name);
        new org.openqa.selenium.support.ui.Select(browser.findElement(By.id("role"))).selectByValue(role);
        press("Add");
        return browser.findElement(By.id("secret")).getText();
    }

    /** Links of what is open, but for the checks that look at the record itself. */
    private static final String OWN = ".finding:not(.met) a.button[href*='check=']:not([href*='check=record.'])";

    private static List<WebElement> open(String which) {
        return browser.findElements(By.cssSelector(which));
    }

    @Test
    void from_the_first_start_to_a_gate_that_frees_and_is_held_again() throws Exception {
        go("/");
        assertThat(browser.getTitle()).startsWith("Sign in");
        look("sign-in");
        signInFirst("lead", running.leadSecret);
        String ida = person("ida", "Ida Marrow", "inspector");
        String tom = person("tom", "Tom Fell", "technician");
        look("people");

        go("/take");
        // The caliper came off and went back on; the hose was left alone.
        Path record = folder.resolve("lark.yaml");
        Files.write(record, Files.readAllLines(Path.of("docs/examples/lark-worked-on-after.yaml")).stream().filter(line -> !line.contains("id: w3") && !line.contains("id: w4")).toList());
        browser.findElement(By.id("record")).sendKeys(record.toAbsolutePath().toString());
        look("take");
        press("Take it in");
        assertThat(page()).contains("Lark 250").contains("held");
        String machine = browser.findElement(By.tagName("h1")).getText().split(" ")[0];
        for (String other : List.of("lark-released", "merle-released", "lark-faults", "lark-on-show")) {
            running.board.shop().take(other, Bench.example(other + ".yaml"), "lead", null);
        }
        go("/journal");
        assertThat(page()).contains("account made").contains("record taken in");
        look("journal");
        go("/");
        look("machines");
        touch(browser.findElement(By.xpath("//button[text()='Sign out']")));

        signInFirst("ida", ida);
        go("/password");
        look("password");
        go("/machines/" + machine + "?gate=road-test");
        look("machine");
        int written = 0;
        size(PHONE);
        for (List<WebElement> open = open(OWN); !open.isEmpty() && written < 40; open = open(OWN)) {
            running.pass(Duration.ofMinutes(3));
            // Touch one; two is the answer.
            touch(open.get(0));
            if (written == 0) {
                look("write");
                size(PHONE);
            }
            fill();
            // The last touch.
            press("Write it down");
            assertThat(page()).contains("Written.").contains("road-test held by");
            written++;
        }
        assertThat(written).isBetween(3, 39);
        assertThat(open(".finding:not(.met)")).isNotEmpty().allSatisfy(left -> assertThat(left.getText()).contains("record.second-person").contains("nobody else has looked at it"));

        touch(browser.findElement(By.xpath("//button[text()='Sign out']")));
        signInFirst("tom", tom);
        size(PHONE);
        for (int looked = 0; looked < 15 && !browser.getPageSource().contains("now released"); looked++) {
            running.pass(Duration.ofMinutes(3));
            go("/machines/" + machine + "?gate=road-test");
            touch(open(".finding:not(.met) a.button").get(0));
            if (looked == 0) {
                look("second-person");
                size(PHONE);
            }
            touch(open(".looks a").get(looked));
            fill();
            press("Write it down");
        }
        assertThat(page()).contains("now released");
        assertThat(browser.findElement(By.id("verdict")).getText()).isEqualTo("road-test: released");
        look("machine-released");

        running.pass(Duration.ofMinutes(10));
        go("/machines/" + machine + "/write?gate=road-test");
        type("point", "front-brake/caliper");
        new org.openqa.selenium.support.ui.Select(browser.findElement(By.id("work"))).selectByValue("removed");
        look("work");
        press("Write it down");
        assertThat(page()).contains("road-test released, now held by");
        assertThat(browser.findElement(By.id("verdict")).getText()).isEqualTo("road-test: held");
        go("/people");
        assertThat(page()).contains("This is not for a technician to do.");
        look("refused");
    }

    /** What a bench that finds everything in order writes: what stands of it in the record of the same machine in order. */
    private static void fill() {
        for (WebElement field : browser.findElements(By.tagName("fieldset"))) {
            String question = field.findElement(By.tagName("legend")).getText();
            String is = IN_ORDER.get(question);
            List<WebElement> choices = field.findElements(By.cssSelector("label.choice"));
            if (choices.size() == 1) {
                choices.get(0).click();
            } else if (!choices.isEmpty()) {
                assertThat(is).as(question).isNotNull();
                field.findElement(By.cssSelector("input[value='" + is + "']")).click();
            } else {
                assertThat(is).as(question).isNotNull();
                field.findElement(By.cssSelector("input")).sendKeys(is);
            }
        }
    }

    private static final Map<String, String> IN_ORDER = new HashMap<>();

    static {
        RecordReader.written("lark", Bench.example("lark-released.yaml")).get("entries").forEach(entry -> List.of("measured", "tried", "seen").forEach(deed -> {
            if (entry.has(deed)) {
                IN_ORDER.put(Points.title(entry.get("point").textValue()) + ": " + deed + " " + entry.get(deed).textValue().replace('-', ' '), entry.get("is").textValue());
            }
        }));
    }

    @Test
    void every_control_is_reached_by_keyboard_alone() {
        browser.manage().deleteAllCookies();
        go("/sign-in");
        List<String> reached = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            browser.switchTo().activeElement().sendKeys(org.openqa.selenium.Keys.TAB);
            WebElement at = browser.switchTo().activeElement();
            reached.add(at.getTagName() + " " + (at.getAttribute("id") == null || at.getAttribute("id").isEmpty() ? at.getText() : at.getAttribute("id")));
        }
        assertThat(reached).contains("a To the content", "input id", "input password", "button Sign in");
    }
}

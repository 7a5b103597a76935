package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Points;
import chock.record.RecordReader;
import chock.report.CodeOnPaper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.WebElement;

/** A real browser walks through a day at the shop. */
class BrowserStoryIT extends BrowsedBoard {
    private Map<String, String> passphrases;

    @Override
    Running board(Path store) throws Exception {
        passphrases = DemoKeys.make(store, java.time.Clock.fixed(Bench.NOON, java.time.ZoneOffset.UTC));
        return new Running(store, chock.signoff.Shop.of(store.resolve("shop.yaml")));
    }

    private void type(String id, String words) {
        WebElement field = browser.findElement(By.id(id));
        field.clear();
        field.sendKeys(words);
    }

    private void press(String words) {
        touch(browser.findElement(By.xpath("//main//button[normalize-space()='" + words + "']")));
    }

    private void signOut() {
        browser.findElement(By.xpath("//summary[text()='Menu']")).click();
        touch(browser.findElement(By.xpath("//button[text()='Sign out']")));
    }

    private String page() {
        return browser.findElement(By.tagName("main")).getText();
    }

    /** Pages that are laid out otherwise at a desk; the others differ in width alone, and are held against WCAG on the phone. */
    private static final List<String> OTHERWISE_AT_A_DESK = List.of("machines", "machine", "people", "ledger", "machines-void");

    /** Takes a picture at both sizes, and holds the page against WCAG 2.2 AA. */
    private void look(String name) throws Exception {
        for (Dimension size : List.of(Browser.DESK, Browser.PHONE)) {
            Browser.picture(browser, name, size);
            if (size.equals(Browser.PHONE) || OTHERWISE_AT_A_DESK.contains(name)) {
                assertThat(Browser.complaints(browser)).as(name + " at " + size).isEmpty();
            }
        }
    }

    private String signInFirst(String id, String secret) {
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

    private String person(String id, String name, String role) {
        go("/people");
        type("id", id);
        type("name", name);
        new org.openqa.selenium.support.ui.Select(browser.findElement(By.id("role"))).selectByValue(role);
        press("Add");
        return browser.findElement(By.id("secret")).getText();
    }

    /** Links of what is open, but for the checks that look at the record itself. */
    private static final String OWN = ".finding:not(.met) a.button[href*='check=']:not([href*='check=record.'])";

    private List<WebElement> open(String which) {
        return browser.findElements(By.cssSelector(which));
    }

    @Test
    void from_the_first_start_to_a_signed_release_and_the_work_that_voids_it() throws Exception {
        Map<String, String> demo = running.board.demo();
        go("/");
        assertThat(browser.getTitle()).startsWith("Sign in");
        look("sign-in");
        signInFirst("lead", running.leadSecret);
        String pim = person("pim", "Pim Oake", "technician");
        assertThat(pim).isNotEmpty();
        String key = new org.openqa.selenium.support.ui.Select(browser.findElement(By.id("key-ida"))).getFirstSelectedOption().getAttribute("value");
        assertThat(key).as("the demo binds it").hasSize(43);
        bind("ida", "");
        bind("ida", key);
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
        go("/journal");
        assertThat(page()).contains("account made").contains("record taken in").contains("key bound to account");
        look("journal");
        go("/");
        assertThat(page()).contains("71 machines, page 1");
        look("machines");
        signOut();

        String idas = signInFirst("ida", demo.get("ida"));
        go("/password");
        look("password");
        go("/machines/" + machine + "?gate=road-test");
        look("machine");
        int written = 0;
        Browser.size(browser, Browser.PHONE);
        for (List<WebElement> open = open(OWN); !open.isEmpty() && written < 40; open = open(OWN)) {
            running.pass(Duration.ofMinutes(3));
            // Touch one; two is the answer.
            touch(open.get(0));
            if (written == 0) {
                look("write");
                Browser.size(browser, Browser.PHONE);
            }
            fill();
            // The last touch.
            press("Write it down");
            assertThat(page()).contains("Written.").contains("road-test held by");
            written++;
        }
        assertThat(written).isBetween(3, 39);
        assertThat(open(".finding:not(.met)")).isNotEmpty().allSatisfy(left -> assertThat(left.getText()).contains("record.second-person").contains("nobody else has looked at it"));

        signOut();
        String toms = signInFirst("tom", demo.get("tom"));
        Browser.size(browser, Browser.PHONE);
        for (int looked = 0; looked < 15 && !browser.getPageSource().contains("now released"); looked++) {
            running.pass(Duration.ofMinutes(3));
            go("/machines/" + machine + "?gate=road-test");
            touch(open(".finding:not(.met) a.button").get(0));
            if (looked == 0) {
                look("second-person");
                Browser.size(browser, Browser.PHONE);
            }
            touch(open(".looks a").get(looked));
            fill();
            press("Write it down");
        }
        assertThat(page()).contains("now released");
        assertThat(browser.findElement(By.id("verdict")).getText()).isEqualTo("road-test: released");
        look("machine-released");
        assertThat(open("a[href*='/sign?']")).as("a technician is not asked to sign").isEmpty();
        signOut();

        running.pass(Duration.ofMinutes(3));
        signIn("ida", idas);
        Browser.size(browser, Browser.PHONE);
        go("/machines/" + machine + "?gate=road-test");
        touch(browser.findElement(By.linkText("Sign road-test")));
        look("sign");
        type("passphrase", "not the passphrase");
        press("Sign it");
        assertThat(page()).contains("The passphrase does not open the key of Ida Marrow. Nothing was signed.");
        look("sign-refused");
        type("passphrase", passphrases.get("ida"));
        press("Sign it");
        assertThat(page()).contains("road-test sign-off stands until").contains("Holds: road-test of " + machine).contains("by Ida Marrow (inspector)");
        look("sign-off");
        String code = onPaper(browser.findElement(By.linkText("Sign-off sheet")).getAttribute("href"), machine);
        go("/machines/" + machine);
        look("machine-signed");
        for (String paper : List.of("Condition statement", "Tag for the handlebar", "Work sheet for road-test")) {
            assertThat(browser.findElement(By.linkText(paper)).getAttribute("href")).contains("/papers/");
        }
        go("/");
        type("q", machine);
        press("Find");
        assertThat(page()).contains("road-test sign-off stands until");
        look("machines-signed");
        go("/machines/" + machine + "/sign?gate=hand-over");
        assertThat(page()).contains("Held, so there is nothing to sign");
        look("sign-held");
        signOut();

        // Somebody who has nothing but the paper.
        verify(code);
        assertThat(page()).contains("Holds: road-test of " + machine).contains("Nothing was written since.");
        look("verify");

        running.pass(Duration.ofMinutes(7));
        signIn("tom", toms);
        go("/machines/" + machine + "/write?gate=road-test");
        type("point", "front-brake/caliper");
        new org.openqa.selenium.support.ui.Select(browser.findElement(By.id("work"))).selectByValue("removed");
        look("work");
        press("Write it down");
        assertThat(page()).contains("road-test released, now held by");
        assertThat(browser.findElement(By.id("verdict")).getText()).isEqualTo("road-test: held");
        assertThat(page()).contains("The sign-off at road-test by Ida Marrow is void now").contains("road-test sign-off VOID: entry");
        look("machine-void");
        go("/");
        type("q", machine);
        press("Find");
        assertThat(page()).contains("road-test sign-off VOID: entry");
        look("machines-void");
        go("/people");
        assertThat(page()).contains("This is not for a technician to do.");
        look("refused");
        signOut();
        verify(code);
        assertThat(page()).contains("Does not hold: road-test of " + machine).contains("that voids it");
        look("verify-void");

        signIn("ida", idas);
        go("/ledger");
        assertThat(page()).contains("Sound: 4 lines, each as it was written.").contains("voided: a sign-off of " + machine);
        look("ledger");
        go("/sign-offs");
        assertThat(page()).contains("road-test sign-off VOID");
        look("sign-offs");
    }

    private void bind(String id, String key) {
        new org.openqa.selenium.support.ui.Select(browser.findElement(By.id("key-" + id))).selectByValue(key);
        touch(browser.findElement(By.cssSelector("form[action='/people/" + id + "/key'] button")));
    }

    private void signIn(String id, String password) {
        go("/sign-in");
        type("id", id);
        type("password", password);
        press("Sign in");
        assertThat(browser.getTitle()).startsWith("All machines");
    }

    private void verify(String code) {
        go("/verify");
        type("code", code);
        press("Look");
    }

    /** Fetches the sheet as the browser would, looks whether it is a PDF about this machine, and reads the code on it. */
    private String onPaper(String address, String machine) throws Exception {
        Visit visit = running.visitor();
        visit.cookie = "chock=" + browser.manage().getCookieNamed("chock").getValue();
        var answer = visit.bytes(address.replaceFirst("^http://[^/]+", ""));
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/pdf");
        Files.write(Browser.PICTURES.resolve("sign-off.pdf"), answer.body());
        try (var pdf = org.apache.pdfbox.Loader.loadPDF(answer.body())) {
            assertThat(new org.apache.pdfbox.text.PDFTextStripper().getText(pdf)).contains(machine).contains("Lark 250").contains("Ida Marrow");
            return CodeOnPaper.read(pdf);
        }
    }

    /** What a bench that finds everything in order writes: what stands of it in the record of the same machine in order. */
    private void fill() {
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

package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.logging.LogType;

/** The tools of the board in a real browser: at a desk and on a phone, by keyboard, with a script and without. */
class BrowserToolsIT extends BrowsedBoard {
    private static final String RUN = "/run?goes=into-the-room&speed=idle&openings=shut&background=0&exhaust=not-measured&runs=5on&volume=300";

    private String machine;

    @BeforeAll
    void take() throws Exception {
        machine = "/machines/" + running.board.shop().take("lark", Bench.example("lark-faults.yaml"), "lead", null).machine();
        continueAs(running.lead());
    }

    private void look(String name) throws Exception {
        for (Dimension size : List.of(Browser.DESK, Browser.PHONE)) {
            Browser.picture(browser, name, size);
        }
        assertThat(Browser.complaints(browser)).as(name).isEmpty();
    }

    @Test
    void every_page_is_fit_for_desk_phone_and_reader() throws Exception {
        Map<String, String> pages = new LinkedHashMap<>();
        pages.put("order", machine + "/order?gate=road-test");
        pages.put("look", machine + "/write?look=look+over+the+tyre&at=front-wheel%2Ftyre&gate=road-test");
        pages.put("why", machine + "/why?check=brakes.pad-thickness&gate=road-test");
        pages.put("run", machine + RUN);
        pages.put("sheet", machine + "/sheet");
        pages.put("photo", machine + "/photo?entry=e5");
        pages.put("new-machine", "/new-machine?like=" + machine.substring("/machines/".length()));
        pages.put("rules", "/rules?system=brakes");
        pages.put("rule", "/rules/brakes.pad-thickness");
        pages.put("house", "/house?limit=brakes.pad-thickness&value=3+mm&reason=hills");
        pages.put("house-refused", "/house?limit=brakes.pad-thickness&value=1+mm&reason=hills");
        for (Map.Entry<String, String> page : pages.entrySet()) {
            go(page.getValue());
            assertThat(browser.findElement(By.tagName("h1")).getText()).as(page.getKey()).isNotEqualTo("Not there").isNotEqualTo("Refused");
            look("tools-" + page.getKey());
        }
        assertThat(browser.findElement(By.tagName("main")).getText()).contains("at least 1 mm is looser than at least 1.5 mm");
    }

    @Test
    void the_chart_is_redrawn_while_one_types() {
        Browser.size(browser, Browser.DESK);
        go(machine + RUN);
        browser.manage().logs().get(LogType.BROWSER);
        WebElement page = browser.findElement(By.tagName("html"));
        String before = browser.findElement(By.cssSelector("#air svg")).getAttribute("outerHTML");
        WebElement volume = browser.findElement(By.id("volume"));
        volume.sendKeys(Keys.chord(Keys.CONTROL, "a"), "90");
        Browser.await(browser, () -> !browser.findElement(By.cssSelector("#air svg")).getAttribute("outerHTML").equals(before));
        assertThat(page.isDisplayed()).as("the page itself was not loaded anew").isTrue();
        assertThat(browser.findElement(By.id("air")).getText()).contains("a room of 90 m³");
        assertThat(browser.findElement(By.id("says")).getText()).contains("This run would not do");
        assertThat(browser.switchTo().activeElement().getAttribute("id")).as("who types keeps their place").isEqualTo("volume");
        volume.sendKeys(Keys.chord(Keys.CONTROL, "a"), "sixty");
        Browser.await(browser, () -> browser.findElement(By.id("air")).getText().contains("'sixty' is not an amount"));
        assertThat(browser.findElements(By.cssSelector("#air svg"))).isEmpty();
        assertQuiet();
    }

    @Test
    void the_planner_works_by_keyboard_and_without_a_script() {
        withoutScripts(() -> {
            Browser.size(browser, Browser.DESK);
            go(machine + RUN);
            browser.findElement(By.id("runs")).sendKeys(Keys.chord(Keys.CONTROL, "a"), "0.25on", Keys.TAB, Keys.TAB, Keys.TAB);
            WebElement at = browser.switchTo().activeElement();
            assertThat(at.getAttribute("id")).isEqualTo("volume");
            leave(() -> at.sendKeys(Keys.chord(Keys.CONTROL, "a"), "2000", Keys.ENTER));
            assertThat(browser.findElement(By.id("says")).getText()).isEqualTo("As far as the air goes, this run would do.");
            assertThat(browser.findElement(By.cssSelector("#air svg")).isDisplayed()).isTrue();
        });
    }

    @Test
    void a_step_of_the_order_is_written_down_and_shown_with_a_photo() throws Exception {
        Browser.size(browser, Browser.PHONE);
        go(machine + "/order?gate=road-test");
        WebElement write = browser.findElement(By.cssSelector(".step a.button"));
        assertThat(write.getText()).startsWith("Write this");
        String step = browser.findElement(By.cssSelector(".step h3")).getText();
        touch(write);
        assertThat(browser.findElements(By.cssSelector("form.tall"))).hasSize(1);
        assertThat(browser.getCurrentUrl()).as(step).contains("/write?");
        Path photo = folder.resolve("pad.png");
        ImageIO.write(new BufferedImage(900, 600, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
        go(machine + "/photo?entry=e5");
        browser.findElement(By.id("photo")).sendKeys(photo.toAbsolutePath().toString());
        touch(browser.findElement(By.cssSelector("main form button")));
        assertThat(browser.getCurrentUrl()).endsWith("entries=all#e5");
        WebElement shown = browser.findElement(By.cssSelector("#e5 .photos img"));
        browser.executeScript("arguments[0].scrollIntoView()", shown);
        Browser.await(browser, () -> ((Number) browser.executeScript("return arguments[0].naturalWidth", shown)).intValue() == 900);
        look("tools-machine-with-photo");
    }
}

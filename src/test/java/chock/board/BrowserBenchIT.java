package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.useful.PrintedMachine;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Dimension;
import org.openqa.selenium.WebElement;

/** The bench in a real browser on a phone: keys are pressed, the limit is drawn, and every step can be read and reached. */
class BrowserBenchIT extends BrowsedBoard {
    private String machine;

    @BeforeAll
    void take() {
        machine = "/machines/" + running.board.shop().take("blank", PrintedMachine.blank(), "lead", null).machine();
        continueAs(running.lead());
    }

    private void look(String name) throws Exception {
        for (Dimension size : List.of(Browser.DESK, Browser.PHONE)) {
            for (String colours : List.of("light", "dark")) {
                browser.executeCdpCommand("Emulation.setEmulatedMedia", Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", colours))));
                Browser.picture(browser, name + "-" + colours, size);
                assertThat(Browser.complaints(browser)).as(name + " " + colours).isEmpty();
            }
        }
    }

    private WebElement key(String name) {
        return browser.findElement(By.xpath("//button[contains(@class,'key') and (text()='" + name + "' or @aria-label='" + name + "')]"));
    }

    private void press(WebElement one) {
        browser.executeScript("arguments[0].scrollIntoView({block: 'center'})", one);
        one.click();
    }

    private WebElement save() {
        return browser.findElement(By.cssSelector(".act .go"));
    }

    @Test
    void a_reading_is_pressed_on_the_pad_drawn_on_its_limit_and_saved() throws Exception {
        Browser.size(browser, Browser.PHONE);
        go(machine + "/bench");
        look("bench-start");
        browser.findElement(By.xpath("//summary[text()='Only some parts']")).click();
        press(browser.findElement(By.cssSelector("input[value='front-brake']")));
        leave(() -> press(browser.findElement(By.cssSelector("button.main"))));
        look("bench-measure");
        for (String one : List.of("1", "point", "2")) {
            press(key(one));
        }
        WebElement reading = browser.findElement(By.id("is-0"));
        assertThat(reading.getAttribute("value")).isEqualTo("1.2");
        assertThat(reading.getAttribute("inputmode")).as("no keyboard of letters over the keys").isEqualTo("none");
        double band = Double.parseDouble(browser.findElement(By.cssSelector("fieldset svg.bar .band")).getAttribute("x"));
        double limit = Double.parseDouble(browser.findElement(By.cssSelector("fieldset svg.bar .line")).getAttribute("d").replaceFirst("M([0-9.]+),.*", "$1"));
        assertThat(band).as("1.2 lies on the hatched side of 1.5").isLessThan(limit);
        press(key("rub out"));
        press(key("rub out"));
        press(key("rub out"));
        for (String one : List.of("4", "point", "2")) {
            press(key(one));
        }
        press(browser.findElement(By.id("is-1")));
        for (String one : List.of("4", "point", "2")) {
            press(key(one));
        }
        for (WebElement tool : browser.findElements(By.xpath("//input[@value='micrometer']/.."))) {
            press(tool);
        }
        Browser.picture(browser, "bench-measured", Browser.PHONE);
        touch(save());
        assertThat(browser.findElement(By.cssSelector(".told")).getText()).contains("Thickness: met").contains("road-test held by");
        look("bench-look");
        WebElement answer = browser.findElement(By.cssSelector("input[value='whole-and-dry']"));
        assertThat(answer.isSelected()).isFalse();
        press(answer.findElement(By.xpath("./..")));
        touch(save());
        look("bench-several");
        // The page gone back to is not sent again: what is on the screen is what is asked now.
        String asked = browser.findElement(By.name("keys")).getAttribute("value");
        leave(browser.navigate()::back);
        assertThat(browser.findElement(By.name("keys")).getAttribute("value")).isEqualTo(asked);
        assertQuiet();
    }

    @Test
    void a_step_is_answered_without_a_script() {
        withoutScripts(() -> {
            Browser.size(browser, Browser.PHONE);
            go(machine + "/bench");
            touch(browser.findElement(By.cssSelector("button.main")));
            assertThat(browser.findElements(By.cssSelector(".pad"))).as("no keys without a script").isEmpty();
            touch(browser.findElement(By.cssSelector(".act button[value='skip']")));
            assertThat(browser.findElement(By.cssSelector(".told")).getText()).contains("Skipped, nothing written");
        });
    }
}

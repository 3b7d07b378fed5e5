package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** The way of a scout: a question, a player, what he lacks, the rep that says so, the film of it. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class FromQuestionToClipTest {
    private final Browser browser;

    FromQuestionToClipTest(Browser browser) {
        this.browser = browser;
    }

    @Test
    void a_question_leads_to_a_player_to_a_gap_to_a_rep_to_its_film() {
        browser.open("/board");
        browser.keys("/");
        browser.keys("what does Tavish Mordell lack", Keys.ENTER);
        browser.sees("Read as");
        browser.click(browser.named(".answer-title a, .rep-link, .answers a", "inside counter"));
        browser.drawn();

        browser.open("/?q=who has no inside counter, confirmed");
        browser.click(browser.named(".answer-title a", "Tavish Mordell"));
        browser.sees("What he lacks");
        assertThat(browser.path()).startsWith("/prospect/tavish-mordell");

        WebElement gap = browser.one("article#no-inside-counter");
        assertThat(gap.getText()).contains("13 of 15", "confirmed", "Ask his coach");
        browser.click(gap.findElements(By.cssSelector(".rep-link")).stream()
                .filter(link -> link.getText().contains("r04"))
                .findFirst()
                .orElseThrow());
        browser.sees("What the rules make of it");
        assertThat(browser.path()).startsWith("/rep/tavish-mordell/calder-mill-at-harrow-vale-2025-09-13/r04");
        browser.sees("A counter is taught for that answer, and he tried no second move.");

        browser.waitsUntil(
                "for the film", () -> browser.number("return document.querySelector('video').readyState") >= 2);
        assertThat(browser.number("return document.querySelector('video').currentTime"))
                .isEqualTo(26);
        browser.script("document.activeElement.blur()");
        browser.keys("k");
        browser.waitsUntil(
                "for it to run",
                () -> browser.script("return document.querySelector('video').currentTime > 26.4")
                        .equals(true));
        browser.keys("k");
        browser.keys("i");
        browser.waitsUntil(
                "to jump to its start",
                () -> browser.script("return document.querySelector('video').currentTime === 26")
                        .equals(true));
        browser.keys(".");
        browser.waitsUntil(
                "to step on by a frame",
                () -> browser.script(
                                "const at = document.querySelector('video').currentTime; return at > 26 && at < 27")
                        .equals(true));
    }

    @Test
    void to_leave_out_a_chip_is_to_ask_again() {
        browser.open("/?q=who wrong-arms kick-outs, at least 10");
        browser.sees("Read as");
        int before = browser.all("ul.chips .chip").size();
        browser.click(browser.named("button.chip", "10"));
        browser.click(browser.named(".chip-editor button", "Leave it out"));
        browser.waitsUntil(
                "for fewer chips", () -> browser.all("ul.chips .chip").size() == before - 1);
        assertThat(browser.path()).doesNotContain("10");
    }

    @Test
    void what_was_not_read_is_said() {
        browser.open("/?q=who wrong-arms kick-outs zygomorphically");
        browser.sees("Not read");
        browser.sees("zygomorphically");
    }
}

package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** An evaluator writes his summary, sees the two pages it makes, and keeps it; nobody's words are lost. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class ReportPageTest {
    private static final String SHOWN = "const frame = document.querySelector('.report-stage iframe:not(.coming)');"
            + " return frame ? frame.contentDocument.body.innerText : ''";

    /** Somebody else keeps another summary meanwhile. */
    private static final String MEANWHILE = """
        return fetch(arguments[0]).then(answer => answer.json()).then(sheet => fetch(arguments[0], { method: 'PUT',
          headers: { 'Content-Type': 'application/json', 'If-Match': sheet.etag },
          body: JSON.stringify({ summary: arguments[1], author: 'Dole Marrow', parts: [] }) })).then(answer => answer.status);
        """;

    private final Browser browser;

    ReportPageTest(Browser browser) {
        this.browser = browser;
    }

    @Test
    void a_sentence_is_taken_seen_on_the_page_kept_and_taken_back() {
        browser.open("/prospect/kwame-addlestone");
        browser.click(browser.named(".links a", "Report"));
        browser.drawn();
        String sentence = browser.one(".sentence-choice span").getText();

        browser.script("document.activeElement.blur()");
        browser.keys("1");
        browser.keys("w");
        browser.keys(Keys.END, " He is " + Stage.HOSTILE + ".");
        browser.waitsUntil("to see it on the page", () -> shown().contains(sentence + " He is <script>"));
        assertThat(browser.one(".sentence-choice").getDomAttribute("aria-pressed"))
                .isEqualTo("true");
        assertThat(browser.one("#summary").getDomProperty("value")).startsWith(sentence + " He is <");

        browser.one("#author").sendKeys("Kim Vale");
        browser.click(browser.one("#part-lines"));
        browser.click(browser.one("#part-gaps ~ .move-up"));
        browser.chord(Keys.HOME, Keys.CONTROL);
        browser.waitsUntil(
                "for the house lines to go and the gaps to move up",
                () -> !shown().contains("House lines")
                        && shown().contains("Written by Kim Vale")
                        && shown().indexOf("What he lacks") < shown().indexOf("What he does well"));
        browser.click(browser.named("button", "Keep it"));
        browser.sees("Kept the report.");

        browser.open("/report/kwame-addlestone");
        assertThat(browser.one("#summary").getDomProperty("value")).startsWith(sentence);
        assertThat(browser.one("#part-lines").isSelected()).isFalse();
        assertThat(browser.script("return window.struck")).isEqualTo("");
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void what_was_not_kept_is_there_again_and_can_be_dropped() {
        browser.open("/report/niko-vantry");
        browser.one("#summary").sendKeys("Better from the left.");

        browser.open("/report/niko-vantry");

        browser.sees("what you wrote last time");
        assertThat(browser.one("#summary").getDomProperty("value")).isEqualTo("Better from the left.");
        browser.click(browser.named("button", "Undo"));
        assertThat(browser.one("#summary").getDomProperty("value")).isEqualTo("");
        browser.sees("Nothing to keep.");
    }

    @Test
    void of_two_who_wrote_at_once_neither_loses_a_word() {
        browser.open("/report/oren-castellow");
        browser.one("#summary").sendKeys("A speed rusher with a counter.");
        assertThat(browser.script(MEANWHILE, "/api/prospects/oren-castellow/report", "Soft against deep sets."))
                .isEqualTo(200L);

        browser.click(browser.named("button", "Keep it"));

        browser.sees("Somebody changed this report while you wrote.");
        WebElement both = browser.named(".clash button", "Both");
        assertThat(browser.one(".clash").getText())
                .contains("A speed rusher with a counter.", "Soft against deep sets.");
        browser.click(both);
        assertThat(browser.one("#summary").getDomProperty("value"))
                .isEqualTo("A speed rusher with a counter.\nSoft against deep sets.");
        assertThat(browser.one("#author").getDomProperty("value"))
                .as("what only the other changed")
                .isEqualTo("Dole Marrow");
        browser.click(browser.named("button", "Keep it"));
        browser.sees("Kept the report.");
        browser.waitsUntil("to see both on the page", () -> shown().contains("Soft against deep sets."));
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void a_summary_that_is_too_long_is_told_beside_the_last_drawing_and_shortened_it_is_drawn() {
        browser.open("/report/bram-aldersey");
        browser.waitsUntil("the first drawing", () -> !shown().isEmpty());
        browser.script("const box = document.querySelector('#summary'); box.value = 'a '.repeat(760) + 'b';"
                + " box.dispatchEvent(new Event('input'))");

        browser.sees("Not drawn: Two pages have room for 1500 letters of summary: take out 21.");

        browser.script("const box = document.querySelector('#summary'); box.value = 'Bends the edge.';"
                + " box.dispatchEvent(new Event('input'))");
        browser.waitsUntil("to see it on the page", () -> shown().contains("Bends the edge."));
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void what_the_server_refuses_is_told_in_its_own_words() {
        browser.open("/report/desmo-harkaway");
        browser.waitsUntil("the first drawing", () -> !shown().isEmpty());
        browser.script("const send = HTMLFormElement.prototype.submit; HTMLFormElement.prototype.submit = function () {"
                + " this.querySelector('[name=summary]').value = 'a'.repeat(1501); send.call(this) }");

        browser.one("#author").sendKeys("Kim Vale");

        browser.sees("Not drawn: \"summary\" has 1501 characters; two pages have room for 1500.");
        assertThat(shown()).as("the last drawing").isNotEmpty();
    }

    private String shown() {
        return String.valueOf(browser.script(SHOWN));
    }
}

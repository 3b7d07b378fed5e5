package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** What a coach said of a player stands on his page beside the finding it claims, until it is taken back. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class SaidOfHimTest {
    private static final String KEEP = """
        return fetch('/api/notes/opinions', { method: 'POST', headers: { 'Content-Type': 'application/json' },
          body: JSON.stringify({ name: 'friday.txt', prospect: 'Teo Maravale', game: 'Opener', evaluator: arguments[0],
            text: 'Wide nine, bull rush, stopped.\\n\\nOverall, he could use a counter inside. Rips a lot.\\n',
            accepted: ['in-general/inside-move:counter inside', 'in-general/rip:rips'] }) })
          .then(answer => answer.json()).then(kept => kept.opinions.length);
        """;
    private static final String SAID = ".said li[data-agreement]:not([hidden])";

    private final Browser browser;

    SaidOfHimTest(Browser browser) {
        this.browser = browser;
    }

    @Test
    void it_is_read_as_text_and_can_be_taken_back_and_brought_back() {
        browser.open("/prospect/teo-maravale");
        assertThat(browser.script(KEEP, "Kim " + Stage.HOSTILE)).isEqualTo(2L);

        browser.open("/prospect/teo-maravale");
        browser.sees("Said of him, and no finding answers it");
        browser.sees("The log ");
        assertThat(browser.one(".apart .said li").getText()).contains("Rips a lot.", "<script>");
        int before = browser.all(SAID).size();

        browser.click(browser.one(".apart .said button"));
        browser.waitsUntil("for it to go", () -> browser.all(SAID).size() == before - 1);
        browser.click(browser.named("button", "Undo"));
        browser.waitsUntil("for it to come back", () -> browser.all(SAID).size() == before);

        for (int i = 0; i < before; i++) {
            browser.click(browser.one(SAID + " button"));
            int left = before - i - 1;
            browser.waitsUntil("for the next to go", () -> browser.all(SAID).size() == left);
        }
        assertThat(browser.complaints()).isEmpty();
    }
}

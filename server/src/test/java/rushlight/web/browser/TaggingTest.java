package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** Tagging with both hands on the keyboard. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class TaggingTest {
    private static final String GAME = "lark-hollow-v-port-ellery";

    private final Browser browser;

    TaggingTest(Browser browser) {
        this.browser = browser;
    }

    @Test
    void a_rep_is_tagged_classified_saved_and_taken_back_without_a_mouse() {
        browser.open("/film/bram-aldersey");
        String game = String.valueOf(browser.script("return document.querySelector('#filter-game').options[1].value"));
        browser.open("/rep/bram-aldersey?game=" + game);
        assertThat(browser.script("return document.querySelector('#cell-rep').value")
                        .toString())
                .matches("r\\d\\d");

        browser.tabTo("cell-phase");
        browser.keys("pass");
        browser.tabTo("cell-exchange");
        browser.keys("bull rus");
        browser.waitsUntil(
                "for the completion", () -> !browser.all("[role=option]").isEmpty());
        browser.keys(Keys.ENTER);
        browser.keys(">[sits dow");
        browser.waitsUntil("for the blocker's answers", () -> browser.text().contains("sits down for power"));
        browser.keys(Keys.ENTER);
        assertThat(browser.script("return document.querySelector('#cell-exchange').value"))
                .isEqualTo("bull-rush > [sits-down]");
        browser.tabTo("cell-second_move_time");
        browser.keys("y");
        browser.tabTo("cell-result");
        browser.keys("l");
        browser.sees("A counter is taught for that answer, and he tried no second move.");

        browser.chord(Keys.ENTER, Keys.CONTROL);
        browser.waitsUntil("for the rep's own page", () -> browser.path().startsWith("/rep/bram-aldersey/" + game));
        browser.sees("Undo");
        assertThat(browser.complaints()).isEmpty();

        browser.script("document.activeElement.blur()");
        browser.chord("z", Keys.CONTROL);
        browser.waitsUntil("for the film log", () -> browser.path().startsWith("/film/bram-aldersey"));
    }

    @Test
    void while_a_rep_is_being_saved_or_taken_back_the_sheet_says_so() {
        browser.open("/film/bram-aldersey");
        browser.click(browser.one(".grid tbody a"));
        browser.one("#cell-note").sendKeys("Looks twice.");
        browser.sees("Not saved yet.");
        browser.script("const real = fetch; window.fetch = (...asked) => new Promise(go => setTimeout(go,"
                + " asked[1]?.method ? 700 : 0)).then(() => real(...asked))");

        browser.chord(Keys.ENTER, Keys.CONTROL);
        browser.sees("Saving \u2026");
        assertThat(browser.text()).doesNotContain("Not saved yet.");
        browser.sees("Saved.");
        browser.script("document.activeElement.blur()");
        browser.chord("z", Keys.CONTROL);
        browser.sees("Taking it back \u2026");
        browser.waitsUntil(
                "for the note to be gone",
                () -> !String.valueOf(browser.one("#cell-note").getDomProperty("value"))
                        .contains("Looks twice."));
        assertThat(browser.complaints()).isEmpty();
    }

    @Test
    void a_new_rep_of_a_game_without_film_names_the_player_and_no_id() {
        browser.open("/rep/bram-aldersey?game=Opener");

        assertThat(browser.one(".sheet-nav").getText())
                .contains("Bram Aldersey")
                .doesNotContain("bram-aldersey");
        assertThat(browser.script("return document.querySelector('#cell-prospect').value"))
                .isEqualTo("Bram Aldersey");
    }

    @Test
    void a_word_that_is_no_term_is_told_beside_its_cell_and_nothing_is_kept() {
        browser.open("/film/bram-aldersey");
        browser.click(browser.one(".grid tbody a"));
        browser.one("#cell-faults");
        browser.tabTo("cell-faults");
        browser.keys("hi pads ");
        browser.sees("there is no \"hi pads\"");
        browser.chord(Keys.ENTER, Keys.CONTROL);
        browser.waitsUntil(
                "for the field with the fault",
                () -> "cell-faults".equals(browser.active().getDomAttribute("id")));
    }

    @Test
    void a_cell_of_the_film_log_is_changed_in_its_place_and_back() {
        browser.open("/film/desmo-harkaway?columns=result,note");
        browser.one(".grid td[tabindex='0']").sendKeys("");
        String before = browser.active().getText();
        browser.keys(Keys.ENTER);
        browser.waitsUntil(
                "for the choice", () -> "select".equals(browser.active().getTagName()));
        browser.keys(before.equals("won") ? "e" : "w");
        browser.keys(Keys.ENTER);
        browser.sees("Undo");
        assertThat(browser.active().getText()).isEqualTo(before.equals("won") ? "even" : "won");

        browser.chord("z", Keys.CONTROL);
        browser.waitsUntil(
                "for the old value",
                () -> browser.one(".grid td[tabindex='0']").getText().equals(before));
    }

    @Test
    void the_keys_are_told() {
        browser.open("/film/" + "bram-aldersey?game=" + GAME);
        browser.keys("?");
        browser.sees("to the question box");
        browser.keys(Keys.ESCAPE);
        browser.keys("g", "b");
        browser.waitsUntil("for the board", () -> browser.path().equals("/board"));
    }
}

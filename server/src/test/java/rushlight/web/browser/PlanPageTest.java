package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** A coach changes the weeks by keyboard alone, hears what that breaks, takes it back and keeps the plan. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class PlanPageTest {
    private static final String FIRST = ".plan-session[data-place='0'] .plan-block";

    private final Browser browser;

    PlanPageTest(Browser browser) {
        this.browser = browser;
    }

    @Test
    void a_block_is_moved_by_the_arrow_keys_and_what_it_breaks_is_told_at_once() {
        browser.open("/plan/lucan-whitlow?weeks=1&sessions=2");
        browser.sees("Certified coaches and licensed medical staff decide");
        browser.sees("Week by week");
        browser.waitsUntil("for blocks", () -> !browser.all(FIRST).isEmpty());
        int before = browser.all(FIRST).size();

        browser.script("document.querySelector(\"" + FIRST + " button[id^=move-]\").focus()");
        browser.keys(Keys.ARROW_RIGHT);
        browser.sees("The limit: ");
        assertThat(browser.all(FIRST)).hasSize(before - 1);
        assertThat(browser.one(".plan-told").getText()).contains("Moved to week 1 ");
        assertThat(browser.one(".keep").isEnabled()).isFalse();
        assertThat(browser.active().getDomAttribute("id")).startsWith("move-");

        browser.keys("u");
        browser.sees("Took back the last step.");
        assertThat(browser.all(FIRST)).hasSize(before);
        assertThat(browser.text()).doesNotContain("The limit: ");

        browser.click(browser.one(".keep"));
        browser.sees("Kept the plan.");
        browser.sees("Sheet for the field");
        browser.click(browser.named("#notices button", "Undo"));
        browser.sees("The kept plan was taken back");
        assertThat(browser.complaints()).isEmpty();
    }
}

package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Two evaluators settle on a rep with the keys alone, and take it back. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class CrossCheckTest {
    private static final String SECONDS = "[data-rep]:has(.settled) input[value=second]:checked";

    private final Browser browser;

    CrossCheckTest(Browser browser) {
        this.browser = browser;
    }

    @Test
    void a_rep_is_settled_as_the_second_read_it_and_opened_again() {
        browser.open("/cross-check?prospect=jem-sorrelby&first=m-ordway&second=t-quillon");
        browser.sees("0 reps settled");
        String alike = browser.one(".agreement-line[data-column=result]").getText();
        assertThat(alike).contains("of 79 reps", "they agree", "kappa");

        browser.keys("j", "2", "s");
        browser.sees("1 rep settled");
        assertThat(browser.all(SECONDS))
                .hasSize(browser.all("[data-rep]:has(.settled) fieldset").size());
        assertThat(browser.all(SECONDS)).isNotEmpty();
        browser.sees("Added ");

        browser.click(browser.named("button", "Undo"));
        browser.sees("0 reps settled");
        assertThat(browser.complaints()).isEmpty();
    }
}

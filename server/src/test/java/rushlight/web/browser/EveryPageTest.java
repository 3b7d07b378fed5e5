package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each page at a desk by day and on a phone at night: it says what it is for, nothing sticks out, nobody is kept out.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class EveryPageTest {
    /** What the light and the width can change. */
    private static final List<String> AT_NIGHT =
            List.of("color-contrast", "target-size", "scrollable-region-focusable");

    private final Browser browser;

    EveryPageTest(Browser browser) {
        this.browser = browser;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        /                                                                  | Ask the film
        /?q=edge players who wrong-arm kick-outs                           | Read as
        /board                                                             | Anselm Corrigate
        /prospect/tavish-mordell                                           | Stopped his feet on 24 of 55 power rushes
        /prospect/keverne-toll                                             | Ask his coach
        /report/tavish-mordell                                             | Sentences the counts have earned
        /technique                                                         | Look up
        /technique/bull-rush                                               | Two hands on the chest
        /technique/wrong-arm                                               | On your film
        /technique/no-inside-counter                                       | Lucan Whitlow
        /film                                                              | A log is what one evaluator read
        /film/tavish-mordell                                               | Any cell can be changed
        /rep/tavish-mordell/calder-mill-at-harrow-vale-2025-09-13/r04      | What the rules make of it
        /rep                                                               | Whose, and where
        /import                                                            | Drop a CSV here
        /notes                                                             | Drop notes here
        /compare?id=tavish-mordell&id=keverne-toll                         | nobody can tell them apart for sure
        /cross-check                                                       | of them they read differently somewhere
        /programs                                                          | Questions in SPARQL
        /sign-in                                                           | Nobody has to sign in here
        /plan                                                              | Choose a player
        /plan/lucan-whitlow?weeks=1&sessions=2                             | Week by week
        /nowhere                                                           | There is no such page
        """)
    void a_page_is_whole_in_any_light_and_at_any_width(String path, String words) {
        browser.open(path);
        browser.sees(words);
        assertThat(browser.complaints()).isEmpty();
        assertThat(browser.scrollsSideways()).as("sticks out at a desk").isFalse();
        browser.script(
                "document.querySelectorAll('main details.evidence, main .claim:first-of-type details').forEach(one =>"
                        + " { one.open = true; })");
        assertThat(Barriers.on(browser.driver())).isEmpty();

        browser.look(Browser.PHONE, 844, true);
        assertThat(browser.scrollsSideways()).as("sticks out on a phone").isFalse();
        assertThat(Barriers.on(browser.driver(), AT_NIGHT)).isEmpty();
    }
}

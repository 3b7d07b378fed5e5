package rushlight.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A page is there at once and weighs little; budgets of the project, measured in the browser with its cache switched off. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@OnStage
class QuickAndLightTest {
    private static final long HEAVIEST = 400_000;
    private static final long LIGHTEST = 10_000;
    private static final long SLOWEST_MILLIS = 1_000;
    private static final int VISITS = 8;

    /** The clock is held against the budget only where it is asked for ({@code -Drushlight.timed=true}), on a machine at rest. */
    private static final boolean TIMED = Boolean.getBoolean("rushlight.timed");

    private final Browser browser;

    QuickAndLightTest(Browser browser) {
        this.browser = browser;
    }

    @AfterEach
    void remember_again() {
        browser.cdp("Network.setCacheDisabled", Map.of("cacheDisabled", false));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/board",
                "/prospect/tavish-mordell",
                "/technique/bull-rush",
                "/film/tavish-mordell",
                "/rep/tavish-mordell/calder-mill-at-harrow-vale-2025-09-13/r04"
            })
    void a_page_weighs_less_than_400_kB_without_film_and_can_be_read_within_a_second_where_that_is_timed(String path) {
        browser.cdp("Network.enable", Map.of());
        browser.cdp("Network.setCacheDisabled", Map.of("cacheDisabled", true));
        long quickest = Long.MAX_VALUE;
        for (int visit = 0; visit < VISITS && quickest >= SLOWEST_MILLIS; visit++) {
            browser.open(path);
            quickest = Math.min(
                    quickest,
                    browser.number("return Math.round(performance.getEntriesByName('page-shown')[0].startTime)"));
            assertThat(browser.number(
                            "return Math.round(performance.getEntriesByName('first-contentful-paint')[0].startTime)"))
                    .as("milliseconds until something is seen; the page itself may come at once or after it")
                    .isPositive();
        }

        if (TIMED) {
            assertThat(quickest).as("milliseconds until the page could be read").isLessThan(SLOWEST_MILLIS);
        }
        assertThat(weight()).as("bytes on the wire without film").isBetween(LIGHTEST, HEAVIEST);
    }

    private long weight() {
        return browser.number(
                "return performance.getEntries().filter(one => one.transferSize && !one.name.includes('/clips/'))"
                        + ".reduce((sum, one) => sum + one.transferSize, 0)");
    }
}

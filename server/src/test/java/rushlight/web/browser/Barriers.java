package rushlight.web.browser;

import com.deque.html.axecore.args.AxeRunOptions;
import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.util.List;
import java.util.Set;
import org.openqa.selenium.WebDriver;

/** What keeps people out of a page, by axe-core: the rules of WCAG 2.2 A and AA and its best practices, serious or critical. */
public final class Barriers {
    private static final Set<String> GRAVE = Set.of("serious", "critical");

    /** Seconds; a list of every name takes a busy machine long. */
    private static final int PATIENCE = 180;

    private Barriers() {}

    /** Every grave fault of the page that stands open, a line each; empty where there is none. */
    public static List<String> on(WebDriver browser) {
        return found(new AxeBuilder(), browser);
    }

    /** The same by some rules alone (their axe-core names). */
    public static List<String> on(WebDriver browser, List<String> rules) {
        return found(new AxeBuilder().withRules(rules), browser);
    }

    private static List<String> found(AxeBuilder axe, WebDriver browser) {
        return lean(axe).analyze(browser).getViolations().stream()
                .filter(rule -> GRAVE.contains(rule.getImpact()))
                .map(Barriers::told)
                .toList();
    }

    /** Without all that passed and without a second tab to put frames together in: most of the time went there. */
    @SuppressWarnings(
            "deprecation") // the one frame there is brings its own tests, and the older way needs no tab of its own
    private static AxeBuilder lean(AxeBuilder axe) {
        AxeRunOptions options = new AxeRunOptions();
        options.setResultTypes(List.of("violations"));
        axe.setTimeout(PATIENCE);
        return axe.withOptions(options).setLegacyMode();
    }

    private static String told(Rule rule) {
        return rule.getId() + ": " + rule.getHelp() + " "
                + rule.getNodes().stream().map(node -> node.getHtml()).limit(3).toList();
    }
}

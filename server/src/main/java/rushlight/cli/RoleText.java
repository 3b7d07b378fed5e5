package rushlight.cli;

import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rushlight.findings.Evidence;
import rushlight.findings.RoleFit;

/** The jobs on a front held against his film, as a coach reads them. */
final class RoleText {
    private RoleText() {}

    static void write(Page page, List<RoleFit> roles, Depth depth) {
        if (roles.isEmpty()) {
            return;
        }
        if (depth == Depth.SHORT) {
            brief(page, roles);
            return;
        }
        page.blank().line("Which job the film shows");
        for (RoleFit fit : roles) {
            String head = fit.fit().words();
            page.line("  " + head + " ".repeat(Math.max(1, 20 - head.length()))
                    + capital(fit.role().shown()));
            page.wrapped("      ", "      ", fit.summary());
            needs(page, "Required", fit.required(), depth);
            if (depth == Depth.FULL) {
                needs(page, "Welcome", fit.preferred(), depth);
            }
        }
    }

    private static void brief(Page page, List<RoleFit> roles) {
        String text = roles.stream()
                .collect(Collectors.groupingBy(RoleFit::fit, TreeMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(entry -> entry.getKey().words() + ": "
                        + entry.getValue().stream()
                                .map(fit -> fit.role().shown())
                                .collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
        page.blank().wrapped("Jobs: ", "    ", text + ".");
    }

    /** Each thing asked for with its reps; the sentence of its count where everything is spelled out. */
    private static void needs(Page page, String title, List<RoleFit.Need> needs, Depth depth) {
        for (RoleFit.Need need : needs) {
            String label = need.judged().finding().shown();
            var rate = need.judged().outcome().rate();
            String counted = rate.opportunities() == 0
                    ? "no chance on tape yet."
                    : rate.events() + " of " + rate.opportunities() + ".";
            page.wrapped(
                    "      " + title + ", " + need.shown().words() + ": ",
                    "        ",
                    (need.asked().without() ? "clear of \"" + label + "\"" : label)
                            + (depth == Depth.FULL ? ". " + need.judged().sentence() : ", " + counted));
            RepsText.list(
                    page,
                    "        ",
                    need.judged().evidence().reps().stream()
                            .filter(Evidence.Rep::event)
                            .map(Evidence.Rep::sighting)
                            .toList(),
                    Depth.SHORT.mostReps());
        }
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}

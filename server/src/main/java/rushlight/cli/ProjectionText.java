package rushlight.cli;

import java.util.List;
import rushlight.knowledge.Taxonomy;
import rushlight.web.ProjectionAnswer;

/** What evaluators think he will be; a part of its own, with name and day, since it is no evidence. */
final class ProjectionText {
    private ProjectionText() {}

    static void write(Page page, List<ProjectionAnswer> projections, Taxonomy taxonomy) {
        for (ProjectionAnswer one : projections) {
            page.blank()
                    .line("Projection by " + one.evaluator() + ", "
                            + one.when().substring(0, one.when().indexOf('T'))
                            + " (his judgement, no part of the counts)");
            line(page, "Sees him as", one.role().isEmpty() ? "" : taxonomy.shown(one.role()));
            line(page, "Readiness", one.readiness());
            line(page, "Ceiling", one.ceiling());
            line(page, "Floor", one.floor());
            line(page, "Risk", one.risk());
            line(page, capital(one.scale()), one.tier());
            line(page, "In his words", one.words());
        }
    }

    private static void line(Page page, String name, String text) {
        if (!text.isEmpty()) {
            page.wrapped("  " + name + ": ", "    ", text);
        }
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}

package rushlight.cli;

import java.util.List;
import java.util.stream.Collectors;
import rushlight.handbook.TeachAnswer;
import rushlight.knowledge.Lesson;
import rushlight.knowledge.Taxonomy;
import rushlight.knowledge.TeachingOrder;

/** The way to a technique, step by step. */
final class TeachText {
    private static final int MANY = 6;

    private final Taxonomy taxonomy;

    TeachText(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    Page of(TeachAnswer answer) {
        Page page = new Page();
        String title = "The way to the " + taxonomy.shown(answer.concept());
        page.line(title);
        page.line("=".repeat(Math.min(Page.WIDTH, title.length())));
        boolean alone = answer.ladder().size() == 1;
        page.wrapped(
                "",
                "",
                alone
                        ? "The book names nothing that has to come first."
                        : "Each step needs only what stands above it. What stands on one step can be taught side by side.");
        int step = 0;
        for (TeachingOrder.Rung rung : answer.ladder()) {
            if (rung.step() != step) {
                step = rung.step();
                page.blank();
                page.line(alone ? "" : "Step " + step);
            }
            rung(page, rung);
        }
        cautions(page, answer.cautions());
        return page;
    }

    private void rung(Page page, TeachingOrder.Rung rung) {
        page.line("  " + taxonomy.shown(rung.concept()));
        String definition =
                taxonomy.concept(rung.concept()).map(c -> c.definition()).orElse("");
        page.wrapped("      ", "      ", definition);
        say(page, "Needs: ", labels(rung.requires()));
        rung.oneOf().forEach(list -> say(page, "Needs one of: ", labels(list)));
        say(page, "Helped by: ", labels(rung.helpedBy()));
        List<String> drills = rung.drills();
        String more = drills.size() > MANY ? ", and " + (drills.size() - MANY) + " more" : "";
        say(page, "Drills: ", labels(drills.stream().limit(MANY).toList()) + more);
    }

    private void cautions(Page page, List<TeachAnswer.Caution> cautions) {
        if (cautions.isEmpty()) {
            return;
        }
        page.blank();
        page.line("Before anybody does it");
        for (TeachAnswer.Caution caution : cautions) {
            for (Lesson.Statement statement : caution.statements()) {
                page.wrapped("  " + taxonomy.shown(caution.concept()) + ": ", "    ", statement.text());
            }
        }
    }

    private static void say(Page page, String title, String text) {
        if (!text.isEmpty()) {
            page.wrapped("      " + title, "        ", text);
        }
    }

    private String labels(List<String> slugs) {
        return slugs.stream().map(taxonomy::shown).collect(Collectors.joining(", "));
    }
}

package rushlight.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rushlight.handbook.FitAnswer;
import rushlight.handbook.TechniqueAnswer;
import rushlight.knowledge.FitAnswers;
import rushlight.knowledge.FitRule;
import rushlight.knowledge.Lesson;
import rushlight.knowledge.Local;
import rushlight.knowledge.Taxonomy;

/** What is right and wrong against a block, duty by duty. */
final class FitText {
    private final Taxonomy taxonomy;

    FitText(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    /** The whole answer, with everything it hangs on. */
    Page of(FitAnswer answer) {
        Page page = new Page();
        String title = "Against the " + taxonomy.shown(answer.block())
                + answer.assignment()
                        .map(duty -> ", when his duty is " + taxonomy.shown(duty))
                        .orElse("");
        page.wrapped("", "", title);
        page.line("=".repeat(Math.min(Page.WIDTH, title.length())));
        if (answer.answers().isEmpty()) {
            page.line(
                    answer.assignment().isPresent()
                            ? "The book has no rule for that duty. Without --assignment it tells the duties it knows."
                            : "The book has no rule for that block.");
        }
        Map<String, List<FitAnswers.Answer>> byBlock = answer.answers().stream()
                .collect(Collectors.groupingBy(FitAnswers.Answer::block, LinkedHashMap::new, Collectors.toList()));
        byBlock.forEach((block, rules) -> {
            if (!block.equals(answer.block())) {
                page.blank();
                page.line("From the wider word \"" + taxonomy.shown(block) + "\":");
            }
            for (FitAnswers.Answer rule : rules) {
                page.blank();
                rule(page, rule);
            }
        });
        if (!answer.cautions().isEmpty()) {
            page.blank();
            page.line("Before anybody does it");
            answer.cautions().forEach(told -> page.wrapped("  ", "  ", told.text() + where(told)));
        }
        page.blank();
        page.line("\u25a0 printed   \u25e7 partly printed   \u25a1 habit of the trade");
        return page;
    }

    /** The rule book and the year a note rests on. */
    static String where(Lesson.Statement told) {
        return told.code()
                .map(code ->
                        " (" + code + told.edition().map(year -> ", " + year).orElse("") + ")")
                .orElse("");
    }

    private void rule(Page page, FitAnswers.Answer rule) {
        Columns columns = new Columns(page);
        page.line(TechniqueText.capital(taxonomy.shown(rule.assignment())) + "  " + Support.mark(rule.support())
                + Local.mark(rule.local()));
        columns.lines("  Only if", rule.onlyIf());
        columns.say("  Right", labels(rule.right()));
        columns.say("  Wrong", labels(rule.wrong()));
        columns.lines("  Hangs on", rule.dependsOn());
        columns.lines(
                "  Could turn around", rule.caveats().stream().map(this::caveat).toList());
    }

    private String caveat(FitRule.Caveat caveat) {
        List<String> flipped =
                caveat.flips().stream().map(taxonomy::shown).sorted().toList();
        return String.join(", ", flipped) + ": " + caveat.dependsOn();
    }

    /** The same in short, on the page of the block or the duty; where a fit is right and wrong, on the page of the fit. */
    void brief(Page page, Columns columns, TechniqueAnswer answer) {
        if (!answer.fits().isEmpty()) {
            boolean isBlock = taxonomy.isA(answer.slug(), answer.fits().get(0).block());
            page.blank();
            page.line(isBlock ? "Right and wrong by duty" : "Right and wrong by block");
            for (FitAnswers.Answer rule : answer.fits()) {
                String title = "  " + taxonomy.shown(isBlock ? rule.assignment() : rule.block());
                List<String> lines = new ArrayList<>();
                if (!rule.onlyIf().isEmpty()) {
                    lines.add("only if " + String.join(" and ", rule.onlyIf()));
                }
                if (!rule.right().isEmpty()) {
                    lines.add("right: " + labels(rule.right()));
                }
                if (!rule.wrong().isEmpty()) {
                    lines.add("wrong: " + labels(rule.wrong()));
                }
                columns.lines(title, lines);
            }
            if (isBlock) {
                page.line("  What each hangs on: rushlight answers \"" + answer.label() + "\"");
            }
        }
        if (!answer.judged().isEmpty()) {
            page.blank();
            columns.lines("Right against", judged(answer, true));
            columns.lines("Wrong against", judged(answer, false));
        }
    }

    private List<String> judged(TechniqueAnswer answer, boolean right) {
        return answer.judged().stream()
                .filter(j -> j.right() == right)
                .map(j -> taxonomy.shown(j.block()) + " (" + labels(j.assignments()) + ")")
                .toList();
    }

    private String labels(List<String> slugs) {
        return slugs.stream().map(taxonomy::shown).collect(Collectors.joining(", "));
    }
}

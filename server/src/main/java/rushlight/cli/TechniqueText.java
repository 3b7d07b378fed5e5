package rushlight.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rushlight.handbook.TechniqueAnswer;
import rushlight.knowledge.Lesson;
import rushlight.knowledge.Lessons;
import rushlight.knowledge.Local;
import rushlight.knowledge.Taxonomy;

/** One concept on one page, told in the order of a coach. */
final class TechniqueText {
    private static final int MANY = 20;
    private static final int SHORT = 3;
    private static final Set<String> LAST = Set.of(Lessons.HOW_TO_TELL, Lessons.CAUTION, Lessons.RULE_NOTE, "ask");
    private static final Set<String> TOLD_ELSEWHERE = Set.of("broader", "commonFault");
    private static final Map<String, String> PATHS = Map.of(
            "inside",
            "Goes inside.",
            "outside",
            "Goes outside.",
            "through",
            "Goes through him.",
            "either",
            "Goes either way.");

    private final Taxonomy taxonomy;

    TechniqueText(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    Page of(TechniqueAnswer answer) {
        Page page = new Page();
        Columns columns = new Columns(page);
        Support support = new Support(answer.sources());
        head(page, answer, support);
        facts(page, columns, answer);
        lessons(page, columns, answer, support, false);
        relations(page, columns, answer);
        pairings(page, columns, answer);
        new FitText(taxonomy).brief(page, columns, answer);
        lessons(page, columns, answer, support, true);
        sources(page, columns, support);
        return page;
    }

    private void head(Page page, TechniqueAnswer answer, Support support) {
        String kinds = String.join(", ", answer.kinds());
        String label = capital(Local.shown(answer.label(), answer.local()));
        int room = Math.max(1, Page.WIDTH - label.length() - kinds.length());
        page.line(label + " ".repeat(room) + kinds);
        page.line("=".repeat(Page.WIDTH));
        if (!answer.definition().isEmpty()) {
            page.wrapped("", "", answer.definition() + " " + support.of(answer.support(), answer.ownSources()));
        }
        List<String> more = new ArrayList<>();
        if (!answer.altLabels().isEmpty()) {
            more.add("Also called " + String.join(", ", answer.altLabels()) + ".");
        }
        List<String> wider = answer.related("broader");
        if (!wider.isEmpty()) {
            more.add("Family: " + labels(wider) + ".");
        }
        if (PATHS.containsKey(answer.side())) {
            more.add(PATHS.get(answer.side()));
        }
        if (!answer.seenIn().isEmpty()) {
            more.add("Needs a view of the " + String.join(" and ", answer.seenIn()) + ".");
        }
        if (!more.isEmpty()) {
            page.wrapped("", "", String.join(" ", more));
        }
        boolean toldApart =
                answer.parts().stream().anyMatch(lesson -> lesson.part().equals(Lessons.HOW_TO_TELL));
        if (!toldApart) {
            answer.notes().forEach(note -> page.wrapped("", "", note));
        }
    }

    private static void facts(Page page, Columns columns, TechniqueAnswer answer) {
        if (!answer.facts().isEmpty()) {
            page.blank();
            answer.facts().forEach(fact -> columns.say(fact.title(), fact.value()));
        }
    }

    private static void lessons(Page page, Columns columns, TechniqueAnswer answer, Support support, boolean last) {
        List<Lesson> told = answer.parts().stream()
                .filter(lesson -> LAST.contains(lesson.part()) == last)
                .toList();
        boolean more = last && !answer.cautions().isEmpty();
        String why = last ? "" : answer.because();
        if (told.isEmpty() && !more && why.isEmpty()) {
            return;
        }
        page.blank();
        columns.say("Why it matters", why);
        columns.say("Rule out first", last ? "" : answer.ruleOutFirst());
        for (Lesson lesson : told) {
            columns.list(
                    capital(lesson.title()),
                    lesson.statements().stream().map(s -> said(s, support)).toList());
        }
        if (more) {
            columns.lines(
                    "Caution",
                    answer.cautions().stream().map(s -> said(s, support)).toList());
        }
    }

    private static String said(Lesson.Statement statement, Support support) {
        String risk = statement.rulesRisk() ? "Rules risk. " : "";
        return risk + statement.text() + FitText.where(statement) + Local.mark(statement.local()) + " "
                + support.of(statement.support(), statement.sources());
    }

    private void relations(Page page, Columns columns, TechniqueAnswer answer) {
        List<TechniqueAnswer.Relation> shown = answer.relations().stream()
                .filter(relation -> !TOLD_ELSEWHERE.contains(relation.relation()))
                .toList();
        if (shown.isEmpty()
                && answer.faults().isEmpty()
                && answer.oneOf().isEmpty()
                && answer.numbers().isEmpty()) {
            return;
        }
        page.blank();
        columns.say(
                "Its number",
                answer.numbers().entrySet().stream()
                        .map(e -> String.join(" or ", e.getValue()) + " in numbering " + e.getKey())
                        .collect(Collectors.joining(", ")));
        answer.oneOf().forEach(list -> columns.say("Needs one of", labels(list)));
        shown.forEach(relation -> columns.say(relation.title(), some(relation.concepts())));
        columns.lines(
                "What goes wrong",
                answer.faults().stream()
                        .map(fault -> taxonomy.shown(fault.fault())
                                + fault.looksLike().map(look -> ": " + look).orElse(""))
                        .toList());
    }

    private void pairings(Page page, Columns columns, TechniqueAnswer answer) {
        if (!answer.pairings().isEmpty()) {
            page.blank();
            page.line(
                    answer.pairings().get(0).move().isPresent() ? "Off it, when the blocker shows" : "Best against it");
            for (TechniqueAnswer.Paired paired : answer.pairings()) {
                String title = paired.move().isPresent()
                        ? paired.trigger().map(taxonomy::shown).orElse("as a rule")
                        : "whatever he threw";
                columns.say("  " + title, first(paired.counters()));
            }
            String asked = answer.pairings().get(0).move().isPresent() ? "" : "--when ";
            page.line("  All of them, and why: rushlight counters " + asked + "\"" + answer.label() + "\"");
        }
        if (!answer.counterTo().isEmpty()) {
            page.blank();
            page.line("It is itself the counter that is taught");
            columns.say(
                    "  when he shows", some(distinct(answer.counterTo().stream().flatMap(p -> p.trigger().stream()))));
            columns.say("  off", some(distinct(answer.counterTo().stream().flatMap(p -> p.move().stream()))));
        }
    }

    private List<String> distinct(Stream<String> slugs) {
        return slugs.distinct().sorted(Comparator.comparing(taxonomy::shown)).toList();
    }

    private static void sources(Page page, Columns columns, Support support) {
        page.blank();
        columns.list("Sources", support.listed());
        page.line(Support.LEGEND);
    }

    private String first(List<String> slugs) {
        String shown = labels(slugs.stream().limit(SHORT).toList());
        return slugs.size() > SHORT ? shown + ", and " + (slugs.size() - SHORT) + " more" : shown;
    }

    private String some(List<String> slugs) {
        return slugs.size() <= MANY
                ? labels(slugs)
                : labels(slugs.subList(0, MANY)) + ", and " + (slugs.size() - MANY) + " more";
    }

    private String labels(List<String> slugs) {
        return slugs.stream().map(taxonomy::shown).collect(Collectors.joining(", "));
    }

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}

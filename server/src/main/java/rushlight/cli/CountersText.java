package rushlight.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rushlight.knowledge.Local;
import rushlight.knowledge.Taxonomy;
import rushlight.web.CountersAnswer;

/** What goes with a move, as people read it. */
final class CountersText {
    private final Taxonomy taxonomy;

    CountersText(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    Page of(CountersAnswer answer) {
        Page page = new Page();
        String title = answer.move().map(m -> "Off the " + taxonomy.shown(m)).orElse("Whatever he threw")
                + answer.when()
                        .map(t -> ", when the blocker shows " + taxonomy.shown(t))
                        .orElse("")
                + answer.from().map(f -> ", from a " + taxonomy.shown(f)).orElse("");
        page.wrapped("", "", title);
        page.line("=".repeat(Math.min(Page.WIDTH, title.length())));
        if (answer.counters().isEmpty()) {
            page.line("The book has no counter for that.");
        }
        Map<Optional<String>, List<CountersAnswer.Entry>> byTrigger = answer.counters().stream()
                .collect(Collectors.groupingBy(CountersAnswer.Entry::trigger, LinkedHashMap::new, Collectors.toList()));
        byTrigger.forEach((trigger, entries) -> {
            page.blank();
            page.line(trigger.map(slug -> "Taught against \"" + taxonomy.shown(slug) + "\":")
                    .orElse("As a rule:"));
            String told = "";
            int number = 0;
            for (CountersAnswer.Entry entry : entries) {
                number++;
                counter(page, number, entry, !entry.because().equals(told));
                told = entry.because();
            }
        });
        leftOut(page, answer);
        return page;
    }

    private void counter(Page page, int number, CountersAnswer.Entry entry, boolean withReason) {
        String timing = entry.timing().stream().sorted().collect(Collectors.joining(", "));
        page.line(String.format(
                "  %2d. %-28s %-9s %-22s %s",
                number,
                taxonomy.shown(entry.counter()),
                entry.side(),
                timing,
                entry.support() + Local.mark(entry.local())));
        if (withReason && !entry.because().isEmpty()) {
            page.wrapped("      ", "      ", entry.because());
        }
        if (!entry.requires().isEmpty()) {
            page.wrapped("      Needs first: ", "      ", labels(entry.requires()) + ".");
        }
        entry.seen()
                .filter(seen -> seen.reps() > 0)
                .ifPresent(seen -> page.line(
                        "      On your film: " + Numbers.of(seen.reps(), "rep") + ", " + seen.won() + " won."));
    }

    private void leftOut(Page page, CountersAnswer answer) {
        if (answer.leftOut().isEmpty()) {
            return;
        }
        page.blank();
        page.wrapped("Left out, since the book does not use it from there: ", "  ", labels(answer.leftOut()) + ".");
    }

    private String labels(List<String> slugs) {
        return slugs.stream().map(taxonomy::shown).collect(Collectors.joining(", "));
    }
}

package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.knowledge.Counters;
import rushlight.knowledge.Local;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Taxonomy;
import rushlight.web.CountersAnswer;
import rushlight.web.Json;
import rushlight.words.Meaning;
import rushlight.words.Vocabulary;

/** What goes with a move when the blocker answers it. */
@Command(
        name = "counters",
        mixinStandardHelpOptions = true,
        description = {
            "What goes with a move when the blocker answers it, best first.",
            "",
            "What works within the rep stands before what is for the next one. Name the move, the blocker's answer,"
                    + " or both, by any of their names.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  rushlight counters \"bull rush\" --when \"sits down\"",
            "  rushlight counters long-arm",
            "  rushlight counters --when over-set"
        })
final class CountersCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "MOVE", arity = "0..1", description = "the move that was stopped")
    private Optional<String> move = Optional.empty();

    @Option(names = "--when", paramLabel = "ANSWER", description = "what the blocker showed")
    private Optional<String> when = Optional.empty();

    @Option(
            names = "--format",
            paramLabel = "text|json",
            defaultValue = "text",
            description = "for people or for programs")
    private Format format = Format.TEXT;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (move.isEmpty() && when.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "Name a move, or what the blocker showed with --when, or both.");
        }
        if (!Files.isDirectory(data.folder())) {
            return answer(data.book().taxonomy(), Optional.empty());
        }
        try (Archive archive = data.open()) {
            return answer(archive.book().taxonomy(), Optional.of(archive));
        }
    }

    private int answer(Taxonomy taxonomy, Optional<Archive> film) {
        Optional<String> primary = move.map(text -> slug(taxonomy, text, primaries(taxonomy), "move"));
        Optional<String> trigger = when.map(text -> slug(taxonomy, text, triggers(taxonomy), "answer of a blocker"));
        if (primary.filter(String::isEmpty).isPresent()
                || trigger.filter(String::isEmpty).isPresent()) {
            return 1;
        }
        List<Pairing> pairings = new Counters(taxonomy).of(primary, trigger);
        List<CountersAnswer.Entry> entries = entries(taxonomy, pairings, primary, trigger, film);
        if (format == Format.JSON) {
            out().print(Json.text(new CountersAnswer(primary, trigger, entries)));
        } else {
            print(taxonomy, primary, trigger, entries);
        }
        return 0;
    }

    private List<CountersAnswer.Entry> entries(
            Taxonomy taxonomy,
            List<Pairing> pairings,
            Optional<String> primary,
            Optional<String> trigger,
            Optional<Archive> film) {
        return pairings.stream()
                .map(p -> CountersAnswer.entry(
                        p,
                        taxonomy,
                        film.map(archive -> archive.seen(primary, p.trigger().or(() -> trigger), p.counter()))
                                .map(seen -> new CountersAnswer.Seen(seen.opportunities(), seen.events()))))
                .toList();
    }

    private void print(
            Taxonomy taxonomy, Optional<String> primary, Optional<String> trigger, List<CountersAnswer.Entry> entries) {
        Page page = new Page();
        String title = primary.map(m -> "Off the " + taxonomy.shown(m)).orElse("Whatever he threw")
                + trigger.map(t -> ", when the blocker shows " + taxonomy.shown(t))
                        .orElse("");
        page.line(title);
        page.line("=".repeat(Math.min(Page.WIDTH, title.length())));
        if (entries.isEmpty()) {
            page.line("The book has no counter for that.");
        }
        Map<Optional<String>, List<CountersAnswer.Entry>> byTrigger = entries.stream()
                .collect(Collectors.groupingBy(CountersAnswer.Entry::trigger, LinkedHashMap::new, Collectors.toList()));
        byTrigger.forEach((t, some) -> {
            page.blank();
            page.line(t.map(slug -> "Taught against \"" + taxonomy.shown(slug) + "\":")
                    .orElse("As a rule:"));
            String told = "";
            int number = 0;
            for (CountersAnswer.Entry entry : some) {
                number++;
                counter(page, taxonomy, number, entry, !entry.because().equals(told));
                told = entry.because();
            }
        });
        out().print(page);
    }

    private static void counter(
            Page page, Taxonomy taxonomy, int number, CountersAnswer.Entry entry, boolean withReason) {
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
            String needs = entry.requires().stream().map(taxonomy::shown).collect(Collectors.joining(", "));
            page.wrapped("      Needs first: ", "      ", needs + ".");
        }
        entry.seen()
                .filter(seen -> seen.reps() > 0)
                .ifPresent(seen -> page.line(
                        "      On your film: " + Numbers.of(seen.reps(), "rep") + ", " + seen.won() + " won."));
    }

    /** The concept a text names; empty, and told, where it names none or several. */
    private String slug(Taxonomy taxonomy, String text, Set<String> slugs, String what) {
        Vocabulary vocabulary = Vocabulary.of(
                slugs.stream().flatMap(s -> taxonomy.concept(s).stream()).toList());
        Meaning meaning = vocabulary.meaning(text);
        if (meaning instanceof Meaning.One one) {
            return one.slug();
        }
        PrintWriter err = spec.commandLine().getErr();
        if (meaning instanceof Meaning.Several several) {
            err.println("\"" + text + "\" can mean " + String.join(" or ", several.slugs()) + ". Say which.");
        } else {
            err.println("The book has no " + what + " called \"" + text + "\". Nearest: "
                    + String.join(", ", vocabulary.nearest(text, 3)) + ".");
        }
        return "";
    }

    private static Set<String> primaries(Taxonomy taxonomy) {
        return taxonomy.pairings().stream()
                .flatMap(p -> p.primary().stream())
                .flatMap(p -> taxonomy.narrower(p).stream())
                .collect(Collectors.toSet());
    }

    private static Set<String> triggers(Taxonomy taxonomy) {
        return taxonomy.pairings().stream()
                .flatMap(p -> p.trigger().stream())
                .flatMap(t -> taxonomy.closure(t).stream())
                .collect(Collectors.toSet());
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}

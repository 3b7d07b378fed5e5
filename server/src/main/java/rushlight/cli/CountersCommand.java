package rushlight.cli;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Taxonomy;
import rushlight.web.CountersAnswer;

/** What goes with a move when the blocker answers it. */
@Command(
        name = "counters",
        mixinStandardHelpOptions = true,
        description = {
            "What goes with a move when the blocker answers it, best first.",
            "",
            "What works within the rep stands before what is for the next one. Name the move, the blocker's answer,"
                    + " or both, by any of their names; with --from only what is used from that spot.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  rushlight counters \"bull rush\" --when \"sits down\"",
            "  rushlight counters long-arm",
            "  rushlight counters --when over-set --from \"wide 9\""
        })
final class CountersCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "MOVE", arity = "0..1", description = "the move that was stopped")
    private Optional<String> move = Optional.empty();

    @Option(names = "--when", paramLabel = "ANSWER", description = "what the blocker showed")
    private Optional<String> when = Optional.empty();

    @Option(names = "--from", paramLabel = "ALIGNMENT", description = "where he lines up")
    private Optional<String> from = Optional.empty();

    @Mixin
    private NumberingOption numbering = new NumberingOption();

    @Mixin
    private FormatOption format = new FormatOption();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (move.isEmpty() && when.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(), "Name a move, or what the blocker showed with --when, or both.");
        }
        if (!data.isThere()) {
            return answer(data.book(), Optional.empty());
        }
        try (Archive archive = data.open()) {
            return answer(archive.book(), Optional.of(archive));
        }
    }

    private int answer(Book book, Optional<Archive> film) {
        Optional<String> system = numbering.system(book.taxonomy(), spec.commandLine());
        Lookup lookup = new Lookup(book, spec.commandLine().getErr());
        Optional<CountersAnswer> answer = answer(book, lookup, new Typed(move, when, from, system), film);
        answer.ifPresent(found -> spec.commandLine()
                .getOut()
                .print(format.print(found, () -> new CountersText(book.taxonomy()).of(found))));
        return answer.isPresent() ? 0 : 1;
    }

    /** What was typed: the move, the answer to it, where he lines up and in whose numbers. */
    record Typed(Optional<String> move, Optional<String> when, Optional<String> from, Optional<String> system) {}

    /** The answer to what was typed; empty, and told, where a name is not clear. */
    static Optional<CountersAnswer> answer(Book book, Lookup lookup, Typed typed, Optional<Archive> film) {
        Taxonomy taxonomy = book.taxonomy();
        Optional<String> primary = typed.move().flatMap(text -> lookup.among(text, primaries(taxonomy), "no move"));
        Optional<String> trigger =
                typed.when().flatMap(text -> lookup.among(text, triggers(taxonomy), "no answer of a blocker"));
        Optional<String> spot = typed.from().flatMap(text -> lookup.alignment(text, typed.system()));
        boolean found = primary.isPresent() == typed.move().isPresent()
                && trigger.isPresent() == typed.when().isPresent()
                && spot.isPresent() == typed.from().isPresent();
        return found
                ? Optional.of(CountersAnswer.of(
                        book,
                        primary,
                        trigger,
                        spot,
                        pairing -> film.map(archive ->
                                        archive.seen(primary, pairing.trigger().or(() -> trigger), pairing.counter()))
                                .map(seen -> new CountersAnswer.Seen(seen.opportunities(), seen.events()))))
                : Optional.empty();
    }

    /** The moves that counters are taught for, their kinds, and the moves they are a kind of. */
    private static List<Concept> primaries(Taxonomy taxonomy) {
        return concepts(
                taxonomy,
                taxonomy.pairings().stream()
                        .flatMap(p -> p.primary().stream())
                        .flatMap(p -> Stream.concat(taxonomy.narrower(p).stream(), wider(taxonomy, p))));
    }

    private static Stream<String> wider(Taxonomy taxonomy, String move) {
        Set<String> classes = taxonomy.concept(move).map(Concept::classes).orElse(Set.of());
        return taxonomy.closure(move).stream()
                .filter(slug -> taxonomy.concept(slug)
                        .filter(c -> c.classes().stream().anyMatch(classes::contains))
                        .isPresent());
    }

    private static List<Concept> triggers(Taxonomy taxonomy) {
        return concepts(
                taxonomy,
                taxonomy.pairings().stream()
                        .flatMap(p -> p.trigger().stream())
                        .flatMap(t -> taxonomy.closure(t).stream()));
    }

    private static List<Concept> concepts(Taxonomy taxonomy, Stream<String> slugs) {
        return slugs.distinct()
                .sorted()
                .flatMap(slug -> taxonomy.concept(slug).stream())
                .toList();
    }
}

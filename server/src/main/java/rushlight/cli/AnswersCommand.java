package rushlight.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Book;
import rushlight.handbook.FitAnswer;
import rushlight.knowledge.Concept;
import rushlight.knowledge.FitRule;
import rushlight.knowledge.Taxonomy;

/** What is right and wrong against a block. */
@Command(
        name = "answers",
        mixinStandardHelpOptions = true,
        description = {
            "What is right and what is wrong against a block, duty by duty.",
            "",
            "Each verdict says what it hangs on. The same fit is right for one duty and wrong for another. Name the duty if you know it.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  rushlight answers kick-out",
            "  rushlight answers kick-out --assignment spill",
            "  rushlight answers reach --assignment contain"
        })
final class AnswersCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Mixin
    private FormatOption format = new FormatOption();

    @Parameters(paramLabel = "BLOCK", arity = "1..*", description = "any name of the block")
    private List<String> block = List.of();

    @Option(names = "--assignment", paramLabel = "DUTY", description = "what he was told")
    private Optional<String> assignment = Optional.empty();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Book book = data.book();
        Lookup lookup = new Lookup(book, spec.commandLine().getErr());
        Optional<FitAnswer> answer = answer(book, lookup, String.join(" ", block), assignment);
        answer.ifPresent(found ->
                spec.commandLine().getOut().print(format.print(found, () -> new FitText(book.taxonomy()).of(found))));
        return answer.isPresent() ? 0 : 1;
    }

    /** The answer to what was typed; empty, and told, where a name is not clear. */
    static Optional<FitAnswer> answer(Book book, Lookup lookup, String block, Optional<String> assignment) {
        Taxonomy taxonomy = book.taxonomy();
        Optional<String> met = lookup.among(block, blocks(taxonomy), "no block");
        Optional<String> duty = assignment.flatMap(text -> lookup.among(text, duties(taxonomy), "no duty"));
        return met.filter(slug -> duty.isPresent() == assignment.isPresent())
                .map(slug -> book.handbook().answers(slug, duty));
    }

    /** What the rules speak about, and everything narrower and wider. */
    private static List<Concept> blocks(Taxonomy taxonomy) {
        return around(taxonomy, taxonomy.fitRules().stream().map(FitRule::block).toList());
    }

    private static List<Concept> duties(Taxonomy taxonomy) {
        return around(
                taxonomy, taxonomy.fitRules().stream().map(FitRule::assignment).toList());
    }

    private static List<Concept> around(Taxonomy taxonomy, List<String> ruled) {
        return taxonomy.concepts().stream()
                .filter(concept -> ruled.stream()
                        .anyMatch(slug -> taxonomy.isA(concept.slug(), slug) || taxonomy.isA(slug, concept.slug())))
                .toList();
    }
}

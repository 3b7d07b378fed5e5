package rushlight.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Book;
import rushlight.handbook.NumberAnswer;
import rushlight.handbook.TechniqueAnswer;
import rushlight.knowledge.Taxonomy;
import rushlight.words.FrontNumbers;
import rushlight.words.Meaning;
import rushlight.words.Vocabulary;

/** One page of the book. */
@Command(
        name = "technique",
        mixinStandardHelpOptions = true,
        description = {
            "One page of the book: what it is, how it looks, how it is taught.",
            "",
            "Name a move, a block, a fit, a fault, a drill, an alignment or anything else by any of its names. A bare"
                    + " number of a front is told system by system.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  rushlight technique bull rush",
            "  rushlight technique wrong-arm",
            "  rushlight technique a 7 --numbering B"
        })
final class TechniqueCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Mixin
    private FormatOption format = new FormatOption();

    @Parameters(paramLabel = "NAME", arity = "1..*", description = "any name of it")
    private List<String> name = List.of();

    @Mixin
    private NumberingOption numbering = new NumberingOption();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Book book = data.book();
        Optional<String> system = numbering.system(book.taxonomy(), spec.commandLine());
        String text = String.join(" ", name);
        Optional<String> number = book.taxonomy().concept(text).isPresent()
                ? Optional.empty()
                : FrontNumbers.of(book.taxonomy()).in(text);
        if (number.isPresent() && (system.isPresent() || !isName(book.taxonomy(), text, number.get()))) {
            return number(book, number.get(), system);
        }
        Optional<String> slug = new Lookup(book, spec.commandLine().getErr()).anything(text);
        return slug.isPresent() ? page(book, slug.get()) : 1;
    }

    /** Whether a text with a number in it is the name of one concept, and no two systems could mean two spots by it. */
    private static boolean isName(Taxonomy taxonomy, String text, String number) {
        long systems = taxonomy.numbering().systems().stream()
                .filter(name -> !taxonomy.numbering().positions(name, number).isEmpty())
                .count();
        return systems == 1 && Vocabulary.of(taxonomy).meaning(text) instanceof Meaning.One;
    }

    private int number(Book book, String number, Optional<String> system) {
        Optional<NumberAnswer> answer = new Lookup(book, spec.commandLine().getErr()).number(number, system);
        if (answer.isEmpty()) {
            return 1;
        }
        PrintWriter out = spec.commandLine().getOut();
        out.print(format.print(answer.get(), () -> new NumberText(book.taxonomy()).of(answer.get())));
        if (!format.isJson() && !answer.get().ambiguous()) {
            NumberAnswer.Meaning meaning = answer.get().meanings().get(0);
            out.println();
            return page(book, meaning.alignments().stream().findFirst().orElse(meaning.position()));
        }
        return 0;
    }

    private int page(Book book, String slug) {
        TechniqueAnswer answer = book.handbook().technique(slug).orElseThrow();
        spec.commandLine().getOut().print(format.print(answer, () -> new TechniqueText(book.taxonomy()).of(answer)));
        return 0;
    }
}

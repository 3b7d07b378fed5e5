package rushlight.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Book;
import rushlight.handbook.TeachAnswer;

/** What to teach before a technique. */
@Command(
        name = "teach",
        mixinStandardHelpOptions = true,
        description = {"What a technique needs first, in teaching order, with drills.", ""},
        footer = {"", "Examples:", "  rushlight teach push-pull", "  rushlight teach wrong-arm"})
final class TeachCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Mixin
    private FormatOption format = new FormatOption();

    @Parameters(paramLabel = "NAME", arity = "1..*", description = "any name of a move, a fit or a skill")
    private List<String> name = List.of();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Book book = data.book();
        Lookup lookup = new Lookup(book, spec.commandLine().getErr());
        Optional<TeachAnswer> answer = answer(book, lookup, String.join(" ", name));
        answer.ifPresent(found ->
                spec.commandLine().getOut().print(format.print(found, () -> new TeachText(book.taxonomy()).of(found))));
        return answer.isPresent() ? 0 : 1;
    }

    /** The answer to what was typed; empty, and told, where the name is not clear. */
    static Optional<TeachAnswer> answer(Book book, Lookup lookup, String name) {
        return lookup.anything(name).map(slug -> book.handbook().teach(slug));
    }
}

package rushlight.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Book;
import rushlight.report.book.BookPublisher;
import rushlight.report.book.BookPublisher.Outcome;

/** Writes the whole book into a folder. */
@Command(
        name = "publish",
        mixinStandardHelpOptions = true,
        description = {
            "The whole book as a folder of pages that need no program and no network.",
            "",
            "One page a concept, all names from A to Z, the sources, and the data as Turtle and JSON-LD; open index.html"
                    + " in any browser. Your own terms from the data folder are in it, marked as yours. A folder that"
                    + " holds other files is left alone.",
            ""
        },
        footer = {"", "Examples:", "  rushlight publish book", "  rushlight publish book --force"})
final class PublishCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "FOLDER", description = "a new or an empty folder")
    private Path folder = Path.of("book");

    @Option(names = "--force", description = "replace a book that was published there before")
    private boolean force;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Book book = data.book();
        Outcome outcome = BookPublisher.publish(book.ontology(), book.taxonomy(), folder, force);
        if (outcome instanceof Outcome.Refused refused) {
            refused.reasons().forEach(spec.commandLine().getErr()::println);
            spec.commandLine().getErr().println("Nothing was written.");
            return 1;
        }
        if (outcome instanceof Outcome.Written written) {
            spec.commandLine()
                    .getOut()
                    .println("Wrote " + Numbers.of(written.concepts(), "concept") + " in "
                            + Numbers.of(written.files(), "file") + ". Open " + folder.resolve("index.html") + ".");
        }
        return 0;
    }
}

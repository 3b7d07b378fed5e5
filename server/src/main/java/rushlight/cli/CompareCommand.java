package rushlight.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.film.Prospect;
import rushlight.findings.SideBySide;
import rushlight.index.Footage;
import rushlight.web.CompareAnswer;
import rushlight.web.Json;

/** Two to four prospects side by side, and where the tape tells them apart. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description = {
            "Holds two to four prospects against each other, finding by finding.",
            "",
            "Each difference has its likely range. With many comparisons some differ by luck: the tape is said to tell"
                    + " two men apart only where, of all that is so said, no more than one in ten is expected to be luck.",
            ""
        },
        footer = {
            "",
            "Examples:",
            "  rushlight compare \"Jory Penwick\" \"Tam Orrin\"",
            "  rushlight compare jory-penwick tam-orrin --all           what cannot be told apart, too",
            "  rushlight compare jory-penwick tam-orrin --format json   as the server answers it"
        })
final class CompareCommand implements Callable<Integer> {
    private static final int FEWEST = 2;
    private static final int MOST = 4;

    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "PROSPECT", arity = "2..4", description = "two to four names or ids")
    private List<String> names = List.of();

    @Option(names = "--all", description = "spell out what cannot be told apart, and what has not enough tape")
    private boolean all;

    @Mixin
    private FormatOption format = new FormatOption();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        if (!data.isThere()) {
            err.println(
                    "There is no film in " + data.folder() + " yet. Import a film log first: rushlight import FILE");
            return 1;
        }
        try (Archive archive = data.open()) {
            Optional<List<Prospect>> wanted = ProspectNames.named(names, archive.prospects(), err);
            if (wanted.isEmpty()) {
                return 1;
            }
            if (wanted.get().size() < FEWEST || wanted.get().size() > MOST) {
                throw new ParameterException(spec.commandLine(), "Name two to four different prospects.");
            }
            List<String> unseen = new ArrayList<>();
            List<CompareAnswer.Side> sides =
                    archive.watch(footage -> sides(archive.book(), footage, wanted.get(), unseen));
            if (!unseen.isEmpty()) {
                err.println("There is no film of " + String.join(" or ", unseen) + " yet; nothing to compare.");
                return 1;
            }
            print(archive.book(), sides, out);
            return 0;
        }
    }

    private void print(Book book, List<CompareAnswer.Side> sides, PrintWriter out) {
        if (format.isJson()) {
            out.print(Json.text(CompareAnswer.of(sides)));
            return;
        }
        SideBySide beside =
                SideBySide.of(sides.stream().map(CompareAnswer.Side::assessment).toList());
        out.print(new CompareText(book.taxonomy(), all).of(sides, beside));
    }

    private static List<CompareAnswer.Side> sides(
            Book book, Footage footage, List<Prospect> wanted, List<String> unseen) {
        List<CompareAnswer.Side> sides = new ArrayList<>();
        for (Prospect one : wanted) {
            CompareAnswer.Side.of(book, footage, one.id()).ifPresentOrElse(sides::add, () -> unseen.add(one.name()));
        }
        return sides;
    }
}

package rushlight.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.index.Footage;

/** Makes the index of a data folder again. */
@Command(
        name = "reindex",
        mixinStandardHelpOptions = true,
        description = {
            "Reads every stored rep again: classifies and indexes it anew.",
            "",
            "Nobody has to: an index that is missing, old or made with another book is made again when the folder is"
                    + " opened. Nothing that was charted changes.",
            ""
        },
        footer = {"", "Example:", "  rushlight reindex --data my-folder"})
final class ReindexCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (!data.isThere()) {
            spec.commandLine()
                    .getErr()
                    .println("There is no data folder " + data.folder()
                            + ". Import a film log first: rushlight import FILE");
            return 1;
        }
        try (Archive archive = data.open()) {
            long start = System.nanoTime();
            archive.rebuild();
            double seconds = (System.nanoTime() - start) / 1e9;
            int prospects = archive.watch(Footage::prospects).size();
            int readings = archive.logs().stream()
                    .mapToInt(log -> log.readings().size())
                    .sum();
            out.println("Indexed again: " + Numbers.of(readings, "reading") + " of " + Numbers.of(prospects, "prospect")
                    + String.format(Locale.ROOT, " in %.1f seconds.", seconds));
            return 0;
        }
    }
}

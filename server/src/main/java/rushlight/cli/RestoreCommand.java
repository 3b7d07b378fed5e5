package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.RefusedBackupException;
import rushlight.archive.Restoring;
import rushlight.store.Holdings;

/** Makes a data folder of a backup. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description = {
            "Makes a data folder of a backup.",
            "",
            "The backup is held to its checksums and counted before anything takes the folder's place. A folder that"
                    + " holds something is left alone; with --force it is kept under another name.",
            ""
        },
        footer = {"", "Example:", "  rushlight restore friday.zip --data film-of-friday"})
final class RestoreCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "FILE", description = "a file that rushlight backup wrote")
    private Path file = Path.of("rushlight.zip");

    @Option(names = "--force", description = "take the place of a folder that is there; it is kept under another name")
    private boolean force;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        if (data.isKept()) {
            throw new ParameterException(
                    spec.commandLine(),
                    "A backup is restored into a folder alone. Look at it there; then open that folder with --store and an"
                            + " empty store, which takes its film.");
        }
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        try {
            Restoring.Restored restored = Restoring.restore(file, data.folder(), force);
            Holdings holdings = restored.manifest().holdings();
            out.println("Restored " + Numbers.of(holdings.readings(), "reading") + " in "
                    + Numbers.of(holdings.logs(), "log") + ", "
                    + Numbers.of(holdings.changes(), "change") + " of history and "
                    + Numbers.of(holdings.kept(), "kept thing") + " into " + data.folder() + ", as they were on "
                    + restored.manifest().made() + ".");
            restored.aside().ifPresent(old -> out.println("What was there before is in " + old + "."));
            restored.unread().ifPresent(err::println);
            return 0;
        } catch (RefusedBackupException e) {
            err.println(e.getMessage());
            return 1;
        }
    }
}

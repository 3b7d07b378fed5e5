package rushlight.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rushlight.archive.Archive;
import rushlight.archive.BackupFile;
import rushlight.archive.BackupManifest;
import rushlight.archive.FolderInUseException;
import rushlight.store.Holdings;

/** Writes film, and all that people keep, into one file. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description = {
            "Writes film, and all that people keep, into one file.",
            "",
            "Film, history, saved questions, opinions, projections, plans, report texts, decisions, settings and your"
                    + " own terms, with a checksum for each part; not accounts and their record. The file is read back before it takes its place. While rushlight serve"
                    + " runs, ask it, at the address that it shows: curl -o FILE http://localhost:7070/api/backup",
            ""
        },
        footer = {"", "Example:", "  rushlight backup friday.zip"})
final class BackupCommand implements Callable<Integer> {
    @Mixin
    private DataFolder data = new DataFolder();

    @Parameters(paramLabel = "FILE", description = "where to write, as in friday.zip")
    private Path file = Path.of("rushlight.zip");

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        if (!data.isThere()) {
            err.println("There is no data folder " + data.folder() + "; nothing was written.");
            return 1;
        }
        Optional<String> refusal = WholeFile.refusal(file);
        if (refusal.isPresent()) {
            err.println(refusal.get());
            return 1;
        }
        try (Archive archive = data.open()) {
            Holdings holdings = write(archive).holdings();
            spec.commandLine()
                    .getOut()
                    .println("Wrote " + Numbers.of(holdings.readings(), "reading") + " in "
                            + Numbers.of(holdings.logs(), "log") + ", "
                            + Numbers.of(holdings.changes(), "change") + " of history and "
                            + Numbers.of(holdings.kept(), "kept thing") + " to " + file
                            + ", and read them back.");
            return 0;
        } catch (FolderInUseException e) {
            err.println("The data folder " + data.folder() + " is in use by " + e.holder()
                    + e.address()
                            .map(at -> ", a server, which makes the backup itself: curl -o " + file + " " + at
                                    + "api/backup")
                            .orElse(". Let that program end, or stop it, and type this again."));
            return Trouble.BROKE;
        }
    }

    /** Writes beside the file, reads that back and only then lets it take the place of what was there. */
    private BackupManifest write(Archive archive) {
        Path next = file.resolveSibling(file.getFileName() + ".part");
        try {
            BackupManifest manifest;
            try (FileChannel channel = FileChannel.open(
                            next,
                            StandardOpenOption.CREATE,
                            StandardOpenOption.WRITE,
                            StandardOpenOption.TRUNCATE_EXISTING);
                    OutputStream out = Channels.newOutputStream(channel)) {
                manifest = archive.backup(out);
                channel.force(true);
            }
            BackupFile.open(next).close();
            Files.move(next, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            return manifest;
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        } finally {
            WholeFile.discard(next);
        }
    }
}

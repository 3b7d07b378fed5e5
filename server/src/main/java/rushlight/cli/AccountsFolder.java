package rushlight.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import rushlight.accounts.AuditLog;

/** Where the accounts of a command are: in a data folder, or in a folder of teams. */
final class AccountsFolder {
    @Option(
            names = "--data",
            paramLabel = "DIR",
            converter = Folder.class,
            description = "the data folder (~/.rushlight or $RUSHLIGHT_DATA)")
    private Optional<Path> data = Optional.empty();

    @Option(
            names = "--teams",
            paramLabel = "DIR",
            converter = Folder.class,
            description = "the folder with a data folder for each team, as for serve --teams")
    private Optional<Path> teams = Optional.empty();

    boolean isOfTeams() {
        return teams.isPresent();
    }

    Path folder() {
        return teams.or(() -> data).orElseGet(DataFolder::usual);
    }

    /** Makes the folder of a team, where there is none. */
    void make(String team) {
        Path folder = folder().resolve(team);
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
    }

    /** Writes down that whoever is signed in to this machine gave a command. */
    void record(String command) {
        AuditLog.in(folder()).add(System.getProperty("user.name", ""), "command", command, 200, null);
    }
}

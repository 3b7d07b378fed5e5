package rushlight.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rushlight.accounts.Accounts;
import rushlight.archive.Archive;
import rushlight.archive.FolderException;
import rushlight.web.http.Serving;

/** The film that is served: one data folder, or one a team; closed together. */
final class Archives implements AutoCloseable {
    private final List<Serving.Team> teams = new ArrayList<>();

    private Archives() {}

    static Archives of(Path folder) {
        Archives archives = new Archives();
        archives.open("", folder);
        return archives;
    }

    /**
     * Opens a data folder for each team, by the names of the folders in one.
     *
     * @throws FolderException where there is no team
     */
    static Archives ofTeams(Path home) {
        List<Path> folders;
        try (Stream<Path> all = Files.list(home)) {
            folders = all.filter(Files::isDirectory)
                    .filter(folder -> Accounts.isTeam(String.valueOf(folder.getFileName())))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(home.toString(), e);
        }
        if (folders.isEmpty()) {
            throw new FolderException("There is no team in " + home
                    + ". Make one with its first account: rushlight user add NAME --role administrator --teams DIR"
                    + " --team TEAM");
        }
        Archives archives = new Archives();
        try {
            folders.forEach(folder -> archives.open(String.valueOf(folder.getFileName()), folder));
        } catch (RuntimeException e) {
            archives.close();
            throw e;
        }
        return archives;
    }

    private void open(String name, Path folder) {
        teams.add(new Serving.Team(name, folder, Archive.open(folder)));
    }

    List<Serving.Team> teams() {
        return teams;
    }

    @Override
    public void close() {
        teams.forEach(team -> team.archive().close());
    }
}

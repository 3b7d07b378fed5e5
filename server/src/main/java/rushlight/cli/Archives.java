package rushlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
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
    private final StorePlace place;
    private final PrintWriter err;
    private final Watch watch;

    private Archives(StorePlace place, PrintWriter err) {
        this.place = place;
        this.err = err;
        this.watch = new Watch(err);
    }

    static Archives of(Path folder, StorePlace place, PrintWriter err) {
        Archives archives = new Archives(place, err);
        archives.open("", folder);
        return archives;
    }

    /**
     * Opens a data folder for each team, by the names of the folders in one.
     *
     * @param place names no store, for each folder remembers its own, but perhaps who asks there
     * @throws FolderException where there is no team
     */
    static Archives ofTeams(Path home, StorePlace place, PrintWriter err) {
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
        Archives archives = new Archives(place, err);
        try {
            folders.forEach(folder -> archives.open(String.valueOf(folder.getFileName()), folder));
        } catch (RuntimeException e) {
            archives.close();
            throw e;
        }
        return archives;
    }

    private void open(String name, Path folder) {
        Archive archive = place.open(folder, err);
        teams.add(new Serving.Team(name, folder, archive));
        watch.follow(archive.following());
    }

    List<Serving.Team> teams() {
        return teams;
    }

    @Override
    public void close() {
        watch.close();
        teams.forEach(team -> team.archive().close());
    }
}

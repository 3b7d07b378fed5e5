package rushlight.bench;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.commons.io.FileUtils;
import rushlight.archive.Archive;
import rushlight.archive.DemoLeague;
import rushlight.film.csv.FilmLogWriter;

/** Writes film logs of made-up prospects into a folder, for whoever reads files: {@code league-batch/bench}. */
public final class SeasonFiles {
    private static final int REPS_A_PROSPECT = 300;
    private static final int PROSPECTS_A_FILE = 10;

    private SeasonFiles() {}

    /** Arguments: the folder, which is there and empty, and how many reps. */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        int reps = Integer.parseInt(args[1]);
        Path demo = Files.createTempDirectory("rushlight-league");
        try (Archive archive = Archive.open(demo)) {
            DemoLeague.into(archive);
            Season season = new Season(archive.logs());
            FilmLogWriter writer = FilmLogWriter.of(archive.book().taxonomy().film());
            for (int file = 0; file * PROSPECTS_A_FILE * REPS_A_PROSPECT < reps; file++) {
                Path to = folder.resolve(String.format(Locale.ROOT, "league-%04d.csv", file));
                try (Writer out = Files.newBufferedWriter(to)) {
                    writer.write(season.of(file, PROSPECTS_A_FILE, REPS_A_PROSPECT), out);
                }
            }
        }
        FileUtils.deleteDirectory(demo.toFile());
    }
}

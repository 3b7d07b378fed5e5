package rushlight.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ProspectsReader;
import rushlight.film.csv.ReadResult;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.PackedFiles;
import rushlight.store.Store;

/** The invented league that comes with the program. */
public final class DemoLeague {
    private static final String FOLDER = "/rushlight/demo/";

    private DemoLeague() {}

    /** Puts the league into a folder that does not hold it yet, or holds another edition of it. */
    public static void into(Archive archive) {
        Store store = archive.store();
        Set<Log.Source> held =
                store.logs().stream().flatMap(id -> store.source(id).stream()).collect(Collectors.toSet());
        if (held.containsAll(files())) {
            return;
        }
        List<Prospect> prospects = prospects();
        List<Log> logs = logs(archive.book(), prospects);

        if (archive.put(logs, prospects, false) instanceof PutResult.Refused refused) {
            throw new FolderException("The league does not go with what the folder holds: "
                    + refused.reasons().get(0));
        }
    }

    /** The packed logs by name and content, without reading what they say. */
    private static List<Log.Source> files() {
        List<Log.Source> files = new ArrayList<>();
        for (String file : PackedFiles.under(FOLDER + "logs/")) {
            try (InputStream in = open("logs/" + file)) {
                byte[] hash = MessageDigest.getInstance("SHA-256").digest(in.readAllBytes());
                files.add(new Log.Source(file, HexFormat.of().formatHex(hash)));
            } catch (IOException e) {
                throw new UncheckedIOException(file, e);
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException("Every Java has SHA-256.", e);
            }
        }
        return files;
    }

    private static List<Prospect> prospects() {
        try (InputStream in = open("prospects.csv")) {
            return ProspectsReader.read("prospects.csv", in).prospects();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Log> logs(Book book, List<Prospect> prospects) {
        FilmLogReader reader = FilmLogReader.of(book.taxonomy());
        FilmLogReader.Options options = new FilmLogReader.Options(Optional.empty(), Optional.empty(), prospects);
        List<Log> logs = new ArrayList<>();
        for (String file : PackedFiles.under(FOLDER + "logs/")) {
            try (InputStream in = open("logs/" + file)) {
                ReadResult result = reader.read(file, in, options);
                if (!(result instanceof ReadResult.Accepted accepted)) {
                    throw new BrokenBookException("The packed log " + file + " does not read.");
                }
                logs.addAll(accepted.logs());
            } catch (IOException e) {
                throw new UncheckedIOException(file, e);
            }
        }
        return logs;
    }

    private static InputStream open(String name) {
        InputStream in = DemoLeague.class.getResourceAsStream(FOLDER + name);
        if (in == null) {
            throw new BrokenBookException("The program was packed without its league: " + name + " is missing.");
        }
        return in;
    }
}

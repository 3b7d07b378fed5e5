package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import rushlight.archive.Archive;
import rushlight.archive.KeptAt;
import rushlight.store.RemoteLogin;

/** Where the film of a data folder is kept: in it, or in a SPARQL store on another machine. */
final class StorePlace {
    private static final String LOGIN = "RUSHLIGHT_STORE_PASSWORD";

    @Option(
            names = "--store",
            paramLabel = "URL",
            description =
                    "keep the film in a SPARQL 1.1 store elsewhere, and a copy in the data folder, which remembers it;"
                            + " \"" + KeptAt.HERE + "\" keeps it in the folder alone again")
    private Optional<String> address = Optional.empty();

    @Option(
            names = "--store-password",
            paramLabel = "FILE",
            description = "a file whose first line is name:password for that store (otherwise $" + LOGIN + ")")
    private Optional<Path> password = Optional.empty();

    /** Whether a store was named. */
    boolean isNamed() {
        return address.isPresent();
    }

    /** Opens a folder with its film there, and says what a person should know of it. */
    Archive open(Path folder, PrintWriter err) {
        Archive archive = Archive.open(folder, KeptAt.of(address, login()));
        archive.following().notes().forEach(err::println);
        err.flush();
        return archive;
    }

    /** Whether a person named a store on another machine. */
    boolean isElsewhere() {
        return address.filter(text -> !text.equals(KeptAt.HERE)).isPresent();
    }

    private Optional<RemoteLogin> login() {
        return Secret.of(password, LOGIN).filter(text -> !text.isBlank()).map(RemoteLogin::of);
    }
}

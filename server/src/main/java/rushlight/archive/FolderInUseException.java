package rushlight.archive;

import java.nio.file.Path;
import java.util.Optional;

/** A data folder is held by another program. */
public final class FolderInUseException extends FolderException {
    private final String holder;
    private final Optional<String> address;

    /**
     * Says which folder, who holds it, and what fits who holds it.
     *
     * @param address where the holder shows the folder in a browser; empty where nobody knows of it
     */
    FolderInUseException(Path folder, String holder, Optional<String> address) {
        super("The data folder " + folder + " is in use by " + holder
                + address.map(at -> ", a server at " + at
                                + ". Ask, import and print there in the browser, stop that server and type this again")
                        .orElse(". Let that program end, or stop it, and type this again")
                + ", or name another folder with --data.");
        this.holder = holder;
        this.address = address;
    }

    /** Who holds it and since when. */
    public String holder() {
        return holder;
    }

    /** Where the holder shows the folder in a browser, with a slash at its end; empty where nobody knows of it. */
    public Optional<String> address() {
        return address;
    }
}

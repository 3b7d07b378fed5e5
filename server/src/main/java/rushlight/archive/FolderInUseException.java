package rushlight.archive;

import java.nio.file.Path;

/** A data folder is held by another program. */
public final class FolderInUseException extends FolderException {
    private final String holder;

    FolderInUseException(Path folder, String holder) {
        super("The data folder " + folder + " is in use by " + holder
                + ". Close that program, or name another folder with --data. If it is rushlight serve, use its"
                + " page Import in the browser, or send the file: curl --data-binary @FILE -H 'Content-Type:"
                + " text/csv' http://localhost:7070/api/import");
        this.holder = holder;
    }

    /** Who holds it and since when. */
    public String holder() {
        return holder;
    }
}

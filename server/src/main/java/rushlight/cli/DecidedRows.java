package rushlight.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import rushlight.archive.Archive;
import rushlight.archive.NotesDecisions;
import rushlight.notes.Carrying;
import rushlight.notes.Narration;
import rushlight.notes.NoteReader;
import rushlight.notes.Notes;
import rushlight.notes.ProposedLog;
import rushlight.notes.TagKeys;

/** Rows of notes on which something was decided: kept decisions are carried to the file as it is. */
final class DecidedRows {
    private final List<NotesDecisions.Kept> kept;

    private DecidedRows(List<NotesDecisions.Kept> kept) {
        this.kept = kept;
    }

    /** The decisions a folder keeps; none where there is no such folder. */
    static Optional<DecidedRows> of(DataFolder data) {
        if (!Files.isDirectory(data.folder().resolve("store"))) {
            return Optional.empty();
        }
        try (Archive archive = data.open()) {
            return Optional.of(new DecidedRows(NotesDecisions.of(archive).all()));
        }
    }

    /** Whether decisions on a file of this name are kept. */
    boolean knows(String file) {
        return kept.stream().anyMatch(one -> one.file().equals(file));
    }

    static String nothing(String file) {
        return "Nothing is decided on " + file + "; every tag that was read is in the log.";
    }

    List<List<String>> rows(
            Narration narration, NoteReader reader, ProposedLog log, ProposedLog.Heading heading, PrintWriter err) {
        Notes notes = reader.read(narration, heading.prospect());
        NotesDecisions.Found found = NotesDecisions.among(kept, narration.source(), Carrying.outline(notes));
        if (found.version() == 0) {
            err.println(nothing(narration.source()));
        } else {
            long open = Carrying.outline(notes).stream()
                    .flatMap(List::stream)
                    .filter(key -> !key.startsWith(TagKeys.GENERAL)
                            && !found.decided().chosen().containsKey(key))
                    .count();
            err.println(narration.source() + ": decisions of " + found.when() + " hold; "
                    + (open == 0
                            ? "every tag is decided on."
                            : Numbers.of(open, "tag") + " not decided on, charted as read."));
        }
        return log.rows(reader.reviewed(narration, notes, found.decided(), true), heading);
    }
}

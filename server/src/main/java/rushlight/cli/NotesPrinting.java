package rushlight.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import rushlight.film.csv.RowsWriter;
import rushlight.knowledge.Taxonomy;
import rushlight.notes.Diagnostic;
import rushlight.notes.NoteFile;
import rushlight.notes.NoteReader;
import rushlight.notes.ProposedLog;
import rushlight.web.NotesStream;

/** Prints what files of notes say while they are read: of none, however long, is more than a piece held. */
interface NotesPrinting {
    /**
     * Prints what one file says.
     *
     * @param faults what was wrong in it
     */
    void file(NoteFile file, List<Diagnostic> faults) throws IOException;

    /** Prints what stands behind the last file. */
    void end() throws IOException;

    /** For people. */
    record AsText(NoteReader reader, Taxonomy taxonomy, String prospect, PrintWriter out) implements NotesPrinting {
        @Override
        public void file(NoteFile file, List<Diagnostic> faults) throws IOException {
            new NotesText(taxonomy).write(file.source(), use -> reader.each(file, prospect, faults, use), out);
        }

        @Override
        public void end() {
            out.flush();
        }
    }

    /** For programs. */
    record AsJson(NoteReader reader, String prospect, NotesStream stream) implements NotesPrinting {
        @Override
        public void file(NoteFile file, List<Diagnostic> faults) throws IOException {
            stream.file(file.source(), faults, use -> reader.each(file, prospect, List.of(), use));
        }

        @Override
        public void end() throws IOException {
            stream.end();
        }
    }

    /** As a film log, with what was decided on the files. */
    final class AsRows implements NotesPrinting {
        private static final int PHASE = ProposedLog.HEADER.indexOf("phase");

        private final NoteReader reader;
        private final ProposedLog log;
        private final ProposedLog.Heading heading;
        private final Optional<DecidedRows> decided;
        private final RowsWriter rows;
        private final PrintWriter err;
        private long unphased;

        AsRows(
                NoteReader reader,
                ProposedLog log,
                ProposedLog.Heading heading,
                Optional<DecidedRows> decided,
                PrintWriter out,
                PrintWriter err)
                throws IOException {
            this.reader = reader;
            this.log = log;
            this.heading = heading;
            this.decided = decided;
            this.rows = RowsWriter.begun(ProposedLog.HEADER, out);
            this.err = err;
        }

        @Override
        public void file(NoteFile file, List<Diagnostic> faults) {
            if (decided.isPresent() && decided.get().knows(file.source())) {
                write(decided.get().rows(file.whole(), reader, log, heading, err));
            } else {
                decided.ifPresent(any -> err.println(DecidedRows.nothing(file.source())));
                reader.each(file, heading.prospect(), faults, piece -> write(log.rows(piece, heading)));
            }
        }

        private void write(List<List<String>> some) {
            try {
                for (List<String> row : some) {
                    rows.write(row);
                    unphased += row.get(PHASE).isEmpty() ? 1 : 0;
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        @Override
        public void end() {
            if (unphased > 0) {
                err.println(Numbers.of(unphased, "rep") + " without a phase: nothing said whether he rushed or played"
                        + " the run. Fill the column before you import.");
            }
        }
    }
}

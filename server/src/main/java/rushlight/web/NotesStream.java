package rushlight.web;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;
import java.util.function.Consumer;
import rushlight.notes.Diagnostic;
import rushlight.notes.Notes;
import rushlight.notes.TagKeys;

/**
 * Writes what files of notes say as JSON while they are read, so that a piece of one is held and no more. What comes out is,
 * character by character, {@link Json#text} of the list of their {@link NotesAnswer answers}.
 */
public final class NotesStream {
    /** Behind these characters stands the first member of an object in a list. */
    private static final String LEAD = "[ {";

    private final Writer out;
    private final JsonGenerator json;

    /** Begins the list. */
    public NotesStream(Writer out) throws IOException {
        this.out = out;
        this.json = Json.generator(out);
        json.writeStartArray();
    }

    /** What is said in one file, piece by piece. */
    public void file(String source, List<Diagnostic> faults, Consumer<Consumer<Notes>> pieces) throws IOException {
        try (Part reps = new Part("reps");
                Part statements = new Part("statements");
                Part hidden = new Part("hidden")) {
            json.writeStartObject();
            json.writeStringField("source", source);
            json.writeFieldName("diagnostics");
            Json.write(json, faults);
            json.writeArrayFieldStart("segments");
            TagKeys keysOfReps = TagKeys.begun();
            TagKeys keysOfStatements = TagKeys.begun();
            pieces.accept(piece -> {
                NotesAnswer answer = NotesAnswer.of(piece, keysOfReps, keysOfStatements);
                answer.segments().forEach(one -> Json.write(json, one));
                reps.add(answer.reps());
                statements.add(answer.statements());
                hidden.add(answer.hidden());
            });
            json.writeEndArray();
            for (Part part : List.of(reps, statements, hidden)) {
                json.flush();
                out.write(',');
                part.copyTo(out);
            }
            json.writeEndObject();
        }
    }

    /** Ends the list. */
    public void end() throws IOException {
        json.writeEndArray();
        json.flush();
        out.write('\n');
        out.flush();
    }

    /** A member of the object that waits for those before it. */
    private static final class Part implements AutoCloseable {
        private final Spool spool = Spool.open();
        private final JsonGenerator json;

        Part(String name) throws IOException {
            this.json = Json.generator(spool.writer());
            json.writeStartArray();
            json.writeStartObject();
            json.writeArrayFieldStart(name);
        }

        void add(List<?> items) {
            items.forEach(item -> Json.write(json, item));
        }

        void copyTo(Writer out) throws IOException {
            json.writeEndArray();
            json.flush();
            spool.copyTo(out, LEAD.length());
        }

        @Override
        public void close() {
            try {
                spool.close();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}

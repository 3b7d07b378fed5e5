package rushlight.web.http;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import rushlight.archive.Archive;
import rushlight.film.csv.RowsWriter;
import rushlight.notes.Decisions;
import rushlight.notes.Narration;
import rushlight.notes.Narrations;
import rushlight.notes.Notes;
import rushlight.notes.ProposedLog;
import rushlight.web.NotesSheet;

/** Spoken or typed notes in, proposed reps out; nothing is kept. */
final class NotesRoutes {
    private static final int LONGEST = 16 << 20;
    private static final int LONGEST_NAME = 200;
    private static final Set<String> TYPES = Set.of("text/vtt", "text/plain", "application/x-subrip");
    private static final String UNNAMED = "notes";

    /** What becomes a film log: the notes, whose they are, and what a person decided. */
    record In(
            @Nullable String name,
            @Nullable String text,
            @Nullable String prospect,
            @Nullable String game,
            @Nullable String video,
            @Nullable String evaluator,
            @Nullable Set<String> accepted,
            @Nullable Map<String, String> phases) {}

    private final Archive archive;

    NotesRoutes(Archive archive) {
        this.archive = archive;
    }

    List<Route> routes() {
        return List.of(Route.post("/api/notes", this::read), Route.post("/api/notes/log", this::log));
    }

    private void read(Context ctx) {
        String prospect = Request.word(ctx, "prospect").orElse("");
        Narration narration = narration(ctx);
        Versions.json(ctx, NotesSheet.of(narration, archive.book().notes().read(narration, prospect)));
    }

    private static Narration narration(Context ctx) {
        String type = Body.mediaType(ctx);
        if (type.equals("multipart/form-data")) {
            UploadedFile file = ctx.uploadedFile("file");
            if (file == null) {
                throw Problem.of(400, "The form has no file in a part named \"file\".")
                        .thrown();
            }
            return Narrations.read(name(Request.word(ctx, "name").orElse(file.filename())), bytes(file.content()));
        }
        if (!TYPES.contains(type)) {
            throw Problem.of(
                            415,
                            "Send notes as Content-Type text/vtt, application/x-subrip or text/plain, or as a"
                                    + " form with a part named \"file\".")
                    .thrown();
        }
        return Narrations.read(name(Request.word(ctx, "name").orElse(UNNAMED)), bytes(ctx.bodyInputStream()));
    }

    private static byte[] bytes(InputStream content) {
        try (InputStream in = content) {
            byte[] bytes = in.readNBytes(LONGEST + 1);
            if (bytes.length > LONGEST) {
                throw Problem.of(
                                413,
                                "The notes are longer than " + (LONGEST >> 20)
                                        + " MB. Send them game by game, or use the command rushlight notes.")
                        .thrown();
            }
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException("The upload broke off.", e);
        }
    }

    /** The name of a file, without folders. */
    private static String name(String given) {
        String last = given.substring(Math.max(given.lastIndexOf('/'), given.lastIndexOf('\\')) + 1)
                .strip();
        String cut = last.length() > LONGEST_NAME ? last.substring(0, LONGEST_NAME) : last;
        return cut.isEmpty() ? UNNAMED : cut;
    }

    private void log(Context ctx) {
        In in = Body.json(ctx, In.class);
        String prospect = told("prospect", in.prospect());
        String game = told("game", in.game());
        Narration narration = narration(in);
        Notes kept = new Decisions(Objects.requireNonNullElse(in.accepted(), Set.of()), phases(in.phases()))
                .of(archive.book().notes().read(narration, prospect));
        var heading = new ProposedLog.Heading(
                prospect,
                game,
                Objects.requireNonNullElse(in.video(), "").strip(),
                Objects.requireNonNullElse(in.evaluator(), "").strip());
        StringWriter out = new StringWriter();
        try {
            RowsWriter.write(
                    ProposedLog.HEADER,
                    ProposedLog.of(archive.book().taxonomy()).rows(kept, heading),
                    out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        ctx.contentType("text/csv; charset=utf-8").result(out.toString());
    }

    static Narration narration(In in) {
        byte[] text = Objects.requireNonNullElse(in.text(), "").getBytes(StandardCharsets.UTF_8);
        return Narrations.read(name(Objects.requireNonNullElse(in.name(), UNNAMED)), text);
    }

    static String told(String field, @Nullable String value) {
        if (value == null || value.isBlank()) {
            throw Problem.of(400, "A film log names the player and the game: \"" + field + "\" is missing.")
                    .thrown();
        }
        return value.strip();
    }

    private static Map<Integer, String> phases(@Nullable Map<String, String> given) {
        Map<Integer, String> phases = new TreeMap<>();
        for (Map.Entry<String, String> one :
                Objects.requireNonNullElse(given, Map.<String, String>of()).entrySet()) {
            try {
                phases.put(Integer.parseInt(one.getKey()), one.getValue());
            } catch (NumberFormatException e) {
                throw Problem.of(400, "\"phases\" has the ordinals of reps as names, not \"" + one.getKey() + "\".")
                        .thrown();
            }
        }
        return phases;
    }
}

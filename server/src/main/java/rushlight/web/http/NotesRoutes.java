package rushlight.web.http;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rushlight.archive.Archive;
import rushlight.archive.NotesDecisions;
import rushlight.film.csv.RowsWriter;
import rushlight.notes.Carrying;
import rushlight.notes.Decisions;
import rushlight.notes.Narration;
import rushlight.notes.Narrations;
import rushlight.notes.NoteReader;
import rushlight.notes.Notes;
import rushlight.notes.ProposedLog;
import rushlight.notes.ReviewedRep;
import rushlight.web.DecidedIn;
import rushlight.web.NotesSheet;

/** Spoken or typed notes in, proposed reps out, with what was decided on them; no rep is kept. */
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
            @Nullable Map<String, String> phases,
            @Nullable DecidedIn decided) {
        /** The keys of the tags that hold. */
        Set<String> holding() {
            Map<String, Boolean> chosen = decided == null
                    ? Map.of()
                    : Objects.requireNonNullElse(decided.chosen(), Map.<String, Boolean>of());
            return chosen.isEmpty()
                    ? Objects.requireNonNullElse(accepted, Set.of())
                    : chosen.keySet().stream()
                            .filter(key -> Boolean.TRUE.equals(chosen.get(key)))
                            .collect(Collectors.toSet());
        }
    }

    private final Archive archive;
    private final NotesDecisions decisions;

    NotesRoutes(Archive archive) {
        this.archive = archive;
        this.decisions = NotesDecisions.of(archive);
    }

    List<Route> routes() {
        return List.of(Route.post("/api/notes", this::read), Route.post("/api/notes/log", this::log));
    }

    private void read(Context ctx) {
        String prospect = Request.word(ctx, "prospect").orElse("");
        Narration narration = narration(ctx);
        Notes notes = archive.book().notes().read(narration, prospect);
        NotesDecisions.Found found = decisions.of(narration.source(), Carrying.outline(notes));
        Versions.json(ctx, NotesSheet.of(narration, notes, found));
    }

    private static Narration narration(Context ctx) {
        String type = Body.mediaType(ctx);
        if (type.equals("multipart/form-data")) {
            UploadedFile file = Body.file(ctx);
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
        NoteReader reader = archive.book().notes();
        List<ReviewedRep> reps = reader.reviewed(narration, reader.read(narration, prospect), decisions(in), false);
        var heading = new ProposedLog.Heading(
                prospect,
                game,
                Objects.requireNonNullElse(in.video(), "").strip(),
                Objects.requireNonNullElse(in.evaluator(), "").strip());
        StringWriter out = new StringWriter();
        try {
            RowsWriter.write(
                    ProposedLog.HEADER,
                    ProposedLog.of(archive.book().taxonomy()).rows(reps, heading),
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

    private Decisions decisions(In in) {
        if (in.decided() != null) {
            return DecisionRoutes.decided(archive, in.decided());
        }
        Map<String, String> phases = Objects.requireNonNullElse(in.phases(), Map.of());
        phases.keySet().stream()
                .filter(key -> !key.matches("\\d{1,9}"))
                .findFirst()
                .ifPresent(key -> {
                    throw Problem.of(400, "\"phases\" has the ordinals of reps as names, not \"" + key + "\".")
                            .thrown();
                });
        Map<String, Boolean> chosen = new HashMap<>();
        in.holding().forEach(key -> chosen.put(key, true));
        return new Decisions(chosen, phases, Map.of(), List.of(), Set.of(), Set.of());
    }
}

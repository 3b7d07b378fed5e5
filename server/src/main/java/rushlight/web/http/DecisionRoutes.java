package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import rushlight.archive.Archive;
import rushlight.archive.NotesDecisions;
import rushlight.film.Identity;
import rushlight.notes.Decisions;
import rushlight.web.DecidedIn;
import rushlight.web.DecisionsAnswer;

/** Decisions on notes, kept by the file. */
final class DecisionRoutes {
    private static final int MOST = 50_000;
    private static final Pattern VERSION = Pattern.compile("^d(\\d{1,15})$");

    /** What is sent to be kept. */
    record In(
            @Nullable String file,
            @Nullable DecidedIn decided,
            @Nullable List<List<String>> outline) {}

    private final Archive archive;
    private final NotesDecisions sets;

    DecisionRoutes(Archive archive) {
        this.archive = archive;
        this.sets = NotesDecisions.of(archive);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/notes/decisions/{id}", this::one), Route.put("/api/notes/decisions/{id}", this::keep));
    }

    private void one(Context ctx) {
        String id = ctx.pathParam("id");
        OptionalInt version = Request.number(ctx, "version");
        Optional<NotesDecisions.Kept> found = version.isPresent()
                ? sets.before(id).stream()
                        .filter(one -> one.version() == version.getAsInt())
                        .findFirst()
                : sets.one(id);
        NotesDecisions.Kept kept = found.orElseThrow(() ->
                Problem.of(404, "No decisions on notes are kept under that id.").thrown());
        Versions.json(ctx, DecisionsAnswer.etag(kept.version()), () -> answer(kept));
    }

    private DecisionsAnswer answer(NotesDecisions.Kept kept) {
        return DecisionsAnswer.of(kept, sets.before(kept.id()));
    }

    private void keep(Context ctx) {
        String id = ctx.pathParam("id");
        long version = version(ctx);
        In in = Body.json(ctx, In.class);
        String file = Objects.requireNonNullElse(in.file(), "").strip();
        if (file.isEmpty() || id.length() > 300 || !Identity.slug(id).equals(id)) {
            throw Problem.of(422, "Decisions name the \"file\" they are about, and the id the server gave for it.")
                    .thrown();
        }
        Decisions decided = decided(archive, in.decided());
        List<List<String>> outline = Objects.requireNonNullElse(in.outline(), List.of());
        var review = new NotesDecisions.Review(decided, outline);
        NotesDecisions.Put put = sets.put(id, file, version, review);
        if (!put.done()) {
            throw Problem.of(
                            412,
                            "Somebody decided on these notes after you opened them. Look at both versions, then save"
                                    + " again.")
                    .withVersions(put.now().map(this::answer).orElse(null), review)
                    .thrown();
        }
        NotesDecisions.Kept now = put.now().orElseThrow();
        ctx.status(version == 0 ? 201 : 200).header("ETag", DecisionsAnswer.etag(now.version()));
        Versions.json(
                ctx,
                Map.of("id", id, "version", now.version(), "when", now.when().toString()));
    }

    /** The version that is changed; 0 for one that is not there yet. */
    private static long version(Context ctx) {
        if ("*".equals(ctx.header("If-None-Match"))) {
            return 0;
        }
        Matcher match = VERSION.matcher(
                Optional.ofNullable(ctx.header("If-Match")).map(Versions::plain).orElse(""));
        if (!match.matches()) {
            throw Problem.of(
                            428,
                            "Say with If-Match which version you change: the etag that came with it; If-None-Match: *"
                                    + " keeps the first.")
                    .thrown();
        }
        return Long.parseLong(match.group(1));
    }

    /** Decisions that were sent; what they name must be in the book. */
    static Decisions decided(Archive archive, @Nullable DecidedIn in) {
        if (in == null) {
            return Decisions.NONE;
        }
        Decisions decided = in.decisions();
        if (decided.count() > MOST) {
            throw Problem.of(413, "No file of notes has more than " + MOST + " decisions.")
                    .thrown();
        }
        List<String> unknown = in.concepts()
                .filter(slug -> archive.book().taxonomy().concept(slug).isEmpty())
                .distinct()
                .limit(5)
                .toList();
        if (!unknown.isEmpty()) {
            throw Problem.of(422, "The book has no concept \"" + String.join("\", \"", unknown) + "\".")
                    .thrown();
        }
        return decided;
    }
}

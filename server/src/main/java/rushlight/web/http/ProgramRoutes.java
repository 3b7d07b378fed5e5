package rushlight.web.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import rushlight.archive.Archive;
import rushlight.archive.LogSummary;
import rushlight.knowledge.BrokenBookException;
import rushlight.web.VersionAnswer;

/** What is said of the program itself. */
final class ProgramRoutes {
    private static final String DESCRIPTION = Rules.DESCRIPTION;

    private final Archive archive;
    private final boolean demo;
    private final byte[] description;

    ProgramRoutes(Archive archive, boolean demo) {
        this.archive = archive;
        this.demo = demo;
        this.description = description();
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/openapi.json", this::openapi),
                Route.get("/api/version", this::version),
                Route.get("/api/health", this::health));
    }

    private void openapi(Context ctx) {
        if (!Versions.isKnown(ctx, Versions.ofContent(description))) {
            ctx.contentType("application/json").result(description);
        }
    }

    private void version(Context ctx) {
        Versions.json(
                ctx,
                new VersionAnswer(
                        "rushlight",
                        archive.book().ontology().version(),
                        archive.book().ontology().fingerprint(),
                        archive.store().revision(),
                        archive.book().taxonomy().concepts().size(),
                        archive.watch(footage -> footage.prospects().size()),
                        LogSummary.all(archive.store()).stream()
                                .mapToInt(LogSummary::readings)
                                .sum(),
                        demo,
                        false));
    }

    private void health(Context ctx) {
        ctx.header("Cache-Control", "no-store");
        boolean isOurs = Visitor.of(ctx).isSomebody();
        Versions.json(
                ctx, isOurs ? Map.of("status", "up", "revision", archive.store().revision()) : Map.of("status", "up"));
    }

    private static byte[] description() {
        try (InputStream in = ProgramRoutes.class.getResourceAsStream(DESCRIPTION)) {
            if (in == null) {
                throw new BrokenBookException("The program was packed without " + DESCRIPTION + ".");
            }
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(DESCRIPTION, e);
        }
    }
}

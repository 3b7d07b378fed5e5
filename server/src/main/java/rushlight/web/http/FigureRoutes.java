package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.findings.Profile;
import rushlight.report.ProspectFigures;

/** Drawings of what a prospect does: where he lines up, and what follows what. */
final class FigureRoutes {
    private final FilmRoutes film;
    private final FilmVersion version;
    private final ProspectFigures figures;

    FigureRoutes(Archive archive, FilmVersion version, FilmRoutes film) {
        this.film = film;
        this.version = version;
        Book book = archive.book();
        this.figures = new ProspectFigures(book.ontology(), book.taxonomy(), book.handbook());
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/prospects/{id}/front.svg", this::front),
                Route.get("/api/prospects/{id}/flow.svg", this::flow));
    }

    private void front(Context ctx) {
        Profile profile = film.profile(ctx);
        HandbookRoutes.svg(ctx, version.now(), () -> figures.front(profile));
    }

    private void flow(Context ctx) {
        Profile profile = film.profile(ctx);
        if (profile.flow().ways().isEmpty()) {
            throw Problem.of(404, "None of these reps is a rush whose exchange was seen.")
                    .thrown();
        }
        HandbookRoutes.svg(ctx, version.now(), () -> figures.flow(profile).orElseThrow());
    }
}

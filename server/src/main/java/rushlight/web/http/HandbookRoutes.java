package rushlight.web.http;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.figure.Drawing;
import rushlight.figure.Fronts;
import rushlight.figure.Heading;
import rushlight.figure.Ladder;
import rushlight.handbook.Handbook;
import rushlight.handbook.TechniqueAnswer;
import rushlight.knowledge.Concept;

/** Pages of the book: what is told of a concept, what to teach before it, what is right by duty, and their drawings. */
final class HandbookRoutes {
    private final Book book;
    private final FilmVersion version;
    private final Function<Context, Concept> named;
    private final Handbook handbook;
    private final Fronts fronts;

    /** With what finds the concept that an address names. */
    HandbookRoutes(Archive archive, FilmVersion version, Function<Context, Concept> named) {
        this.book = archive.book();
        this.version = version;
        this.named = named;
        this.handbook = book.handbook();
        this.fronts = Fronts.of(book.ontology(), book.taxonomy());
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/concepts/{slug}", this::concept),
                Route.get("/api/concepts/{slug}/teach", this::teach),
                Route.get("/api/concepts/{slug}/answers", this::answers),
                Route.get("/api/concepts/{slug}/front.svg", this::front),
                Route.get("/api/concepts/{slug}/ladder.svg", this::ladder));
    }

    private void concept(Context ctx) {
        Concept concept = named.apply(ctx);
        Versions.json(ctx, version.ofBook(), () -> page(concept));
    }

    private void teach(Context ctx) {
        Concept concept = named.apply(ctx);
        Versions.json(ctx, version.ofBook(), () -> handbook.teach(concept.slug()));
    }

    private void answers(Context ctx) {
        Concept block = named.apply(ctx);
        Optional<String> duty = Request.word(ctx, "assignment");
        Versions.json(ctx, version.ofBook(), () -> handbook.answers(block.slug(), duty));
    }

    private TechniqueAnswer page(Concept concept) {
        return handbook.technique(concept.slug())
                .orElseThrow(() -> Problem.of(404, "The book tells nothing of \"" + concept.label() + "\".")
                        .thrown());
    }

    private void front(Context ctx) {
        Concept concept = named.apply(ctx);
        Heading heading = new Heading(
                "front",
                "Where " + concept.label() + " is",
                "The offensive line from behind, the square in the middle; the mark stands across from it.");
        Drawing drawing = fronts.of(heading, concept.slug())
                .orElseThrow(() -> Problem.of(404, "\"" + concept.label() + "\" has no one place along the line.")
                        .thrown());
        svg(ctx, version.ofBook(), () -> drawing);
    }

    private void ladder(Context ctx) {
        Concept concept = named.apply(ctx);
        List<Ladder.Rung> rungs = rungs(page(concept));
        if (rungs.isEmpty()) {
            throw Problem.of(404, "\"" + concept.label() + "\" needs nothing before it.")
                    .thrown();
        }
        Heading heading = new Heading(
                "ladder",
                "What " + concept.label() + " needs",
                "A ladder with " + rungs.size() + (rungs.size() == 1 ? " rung" : " rungs")
                        + ": what is taught first is at the foot.");
        svg(ctx, version.ofBook(), () -> new Ladder(heading, label(concept.slug()), rungs).draw());
    }

    private List<Ladder.Rung> rungs(TechniqueAnswer page) {
        List<Ladder.Rung> rungs = new ArrayList<>();
        handbook.teach(page.slug()).ladder().stream()
                .filter(rung -> !rung.concept().equals(page.slug()))
                .forEach(rung -> rungs.add(new Ladder.Rung(label(rung.concept()), Ladder.Need.MUST)));
        page.oneOf().stream()
                .flatMap(List::stream)
                .forEach(slug -> rungs.add(new Ladder.Rung(label(slug), Ladder.Need.ONE_OF)));
        page.related("helpedBy").forEach(slug -> rungs.add(new Ladder.Rung(label(slug), Ladder.Need.HELPS)));
        return rungs;
    }

    private String label(String slug) {
        return book.taxonomy().shown(slug);
    }

    /** Answers with a drawing, made only where the browser lacks it. */
    static void svg(Context ctx, String etag, Supplier<Drawing> drawing) {
        ctx.header("Cache-Control", "no-cache");
        if (!Versions.isKnown(ctx, etag)) {
            ctx.contentType("image/svg+xml").result(drawing.get().svg());
        }
    }
}

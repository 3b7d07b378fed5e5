package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import rushlight.archive.Archive;
import rushlight.archive.History;
import rushlight.film.Identity;
import rushlight.film.csv.Cells;
import rushlight.knowledge.FilmColumns;
import rushlight.store.PastChange;
import rushlight.web.ChangesAnswer;
import rushlight.web.ReadingAnswer;

/** What was changed, and the way back. */
final class ChangeRoutes {
    private static final int MOST = 200;
    private static final int READINGS = 50;

    private final Archive archive;
    private final FilmVersion version;
    private final FilmColumns film;

    ChangeRoutes(Archive archive, FilmVersion version) {
        this.archive = archive;
        this.version = version;
        this.film = archive.book().taxonomy().film();
    }

    List<Route> routes() {
        return List.of(Route.get("/api/changes", this::changes), Route.post("/api/undo", this::undo));
    }

    private void changes(Context ctx) {
        int limit = Request.number(ctx, "limit", 20, 1, MOST);
        Versions.json(
                ctx,
                version.now(),
                () -> new ChangesAnswer(History.latest(archive.store(), limit).stream()
                        .map(this::item)
                        .toList()));
    }

    private ChangesAnswer.Item item(History.Told told) {
        PastChange change = told.change();
        return new ChangesAnswer.Item(
                change.revision(),
                change.when().toString(),
                change.kind().isEmpty() ? "other" : change.kind(),
                change.said(),
                change.by(),
                change.hasContent(),
                told.undone(),
                change.before().stream().limit(READINGS).map(this::was).toList());
    }

    private ChangesAnswer.Was was(PastChange.Before before) {
        Map<String, String> cells = Cells.ofReading(before.reading(), film);
        return new ChangesAnswer.Was(
                before.log().prospect(),
                before.log().game(),
                before.reading().rep().rep(),
                Identity.slug(before.reading().evaluator()),
                cells);
    }

    private void undo(Context ctx) {
        OptionalInt revision = Request.number(ctx, "revision");
        Optional<Long> which = revision.isPresent() ? Optional.of((long) revision.getAsInt()) : Optional.empty();
        Edited.answer(
                ctx,
                archive.edits().by(Visitor.of(ctx).name()).undo(which),
                Map.of(),
                kept -> ReadingAnswer.of(kept.log(), kept.reading(), kept.classes(), film));
    }
}

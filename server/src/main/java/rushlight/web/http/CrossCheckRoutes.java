package rushlight.web.http;

import io.javalin.http.Context;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rushlight.agreement.CrossCheck;
import rushlight.agreement.Crossing;
import rushlight.archive.Archive;
import rushlight.archive.Reconciling;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.knowledge.FilmColumns;
import rushlight.web.AgreeAnswer;
import rushlight.web.ReadingAnswer;
import rushlight.web.ReconcileIn;

/** Two evaluators of the same games: how far they agree, and what they settle on. */
final class CrossCheckRoutes {
    private final Archive archive;
    private final FilmVersion version;
    private final FilmColumns film;
    private final Logs logs;
    private final Crossing crossing;
    private final Reconciling reconciling;

    CrossCheckRoutes(Archive archive, FilmVersion version) {
        this.archive = archive;
        this.version = version;
        this.film = archive.book().taxonomy().film();
        this.logs = new Logs(archive.store());
        this.crossing = Crossing.of(archive.book().ontology(), archive.book().taxonomy());
        this.reconciling = Reconciling.of(archive);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/cross-check", this::check), Route.post("/api/cross-check/reconcile", this::reconcile));
    }

    private void check(Context ctx) {
        String first = evaluator(ctx, "first");
        String second = evaluator(ctx, "second");
        Optional<String> prospect = Request.word(ctx, "prospect");
        if (first.equals(second)) {
            throw Problem.of(422, "Name two different evaluators.").thrown();
        }
        Versions.json(ctx, version.now(), () -> AgreeAnswer.of(crossed(first, second, prospect)));
    }

    private CrossCheck crossed(String first, String second, Optional<String> prospect) {
        return crossing.of(by(first, prospect), by(second, prospect), Set.of())
                .orElseThrow(() -> Problem.of(404, "These two have read no game in common.")
                        .thrown());
    }

    private List<Log> by(String evaluator, Optional<String> prospect) {
        return archive.store().logs().stream()
                .filter(id -> id.evaluator().equals(evaluator)
                        && prospect.filter(one -> !one.equals(id.prospect())).isEmpty())
                .flatMap(id -> logs.log(id).stream())
                .toList();
    }

    private static String evaluator(Context ctx, String name) {
        return Request.word(ctx, name)
                .map(Identity::slug)
                .orElseThrow(() -> Problem.of(400, "Name the evaluators to compare: first and second.")
                        .thrown());
    }

    private void reconcile(Context ctx) {
        ReconcileIn in = Body.json(ctx, ReconcileIn.class);
        Edited.answer(
                ctx,
                reconciling
                        .by(Visitor.of(ctx).name())
                        .settle(
                                in.rep(),
                                side(in, in.first()),
                                side(in, in.second()),
                                Optional.ofNullable(in.settled()).map(Versions::plain),
                                choices(in.choices())),
                Map.of(),
                kept -> ReadingAnswer.of(kept.log(), kept.reading(), kept.classes(), film));
    }

    private static Reconciling.Side side(ReconcileIn in, ReconcileIn.Side side) {
        LogId log = new LogId(Identity.slug(side.evaluator()), in.prospect(), in.game());
        return new Reconciling.Side(log, Versions.plain(side.etag()));
    }

    private static Map<String, Reconciling.Choice> choices(Map<String, String> words) {
        Map<String, Reconciling.Choice> choices = new HashMap<>();
        words.forEach((column, word) -> choices.put(column, choice(word)));
        return choices;
    }

    private static Reconciling.Choice choice(String word) {
        return switch (word) {
            case "first" -> Reconciling.Choice.FIRST;
            case "second" -> Reconciling.Choice.SECOND;
            default ->
                throw Problem.of(422, "A choice is \"first\" or \"second\", not \"" + word + "\".")
                        .thrown();
        };
    }
}

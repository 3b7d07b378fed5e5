package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import rushlight.archive.Archive;
import rushlight.evidence.Interval;
import rushlight.evidence.Rate;
import rushlight.figure.Games;
import rushlight.figure.Heading;
import rushlight.findings.Evidence;
import rushlight.findings.Judged;
import rushlight.plan.Progressing;
import rushlight.situation.Since;
import rushlight.situation.Tape;
import rushlight.situation.TapedGame;
import rushlight.web.ProgressAnswer;
import rushlight.words.NearestLabels;

/** Then and now of a prospect, and how a rate went from game to game. */
final class ProgressRoutes {
    private final Archive archive;
    private final FilmVersion version;
    private final FilmRoutes film;
    private final Progressing progressing;

    ProgressRoutes(Archive archive, FilmVersion version, FilmRoutes film) {
        this.archive = archive;
        this.version = version;
        this.film = film;
        this.progressing = new Progressing(archive.book().assessor());
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/prospects/{id}/progress", this::progress),
                Route.get("/api/prospects/{id}/findings/{finding}/games.svg", this::games));
    }

    private void progress(Context ctx) {
        String since = since(ctx);
        Versions.json(
                ctx,
                version.now(),
                () -> archive.watch(footage ->
                        ProgressAnswer.of(progressing.of(cut(film.tape(footage, ctx.pathParam("id")), since)))));
    }

    private void games(Context ctx) {
        String finding = film.finding(ctx.pathParam("finding"), 404).slug();
        String since = Request.word(ctx, "since").orElse("");
        HandbookRoutes.svg(
                ctx,
                version.now(),
                () -> archive.watch(footage -> {
                            Tape tape = film.tape(footage, ctx.pathParam("id"));
                            Judged judged =
                                    archive.book().assess(tape).finding(finding).orElseThrow();
                            OptionalInt at = since.isEmpty()
                                    ? OptionalInt.empty()
                                    : place(tape.games(), cut(tape, since).first());
                            return drawing(judged, at);
                        })
                        .draw());
    }

    private static Games drawing(Judged judged, OptionalInt cut) {
        List<Games.Played> played =
                judged.evidence().byGame().stream().map(ProgressRoutes::played).toList();
        return new Games(
                new Heading(
                        "games-of-" + judged.finding().slug(),
                        judged.finding().shown() + ", game by game",
                        "One row a game from the first to the last: a dot at the rate, a bar over its likely range. In"
                                + " all "
                                + judged.outcome().rate().events() + " of "
                                + judged.outcome().rate().opportunities() + "."),
                played,
                judged.finding().standard().line(),
                cut.isPresent() && cut.getAsInt() > 0 ? cut : OptionalInt.empty());
    }

    private static Games.Played played(Evidence.OfGame one) {
        Rate rate = one.rate();
        Interval shown = rate.jeffreys(Rate.SHOWN);
        return new Games.Played(
                one.game().opponent().isEmpty() ? one.game().name() : one.game().opponent(),
                rate.events(),
                rate.opportunities(),
                shown.low(),
                shown.high());
    }

    private static OptionalInt place(List<TapedGame> games, TapedGame first) {
        return IntStream.range(0, games.size())
                .filter(i -> games.get(i).id().equals(first.id()))
                .findFirst();
    }

    private static String since(Context ctx) {
        return Request.word(ctx, "since")
                .orElseThrow(() -> Problem.of(400, "Say since which game (id or name) or date, with since=.")
                        .thrown());
    }

    private static Since cut(Tape tape, String since) {
        return Since.at(tape, since).orElseThrow(() -> {
            List<String> ids = tape.games().stream().map(TapedGame::id).toList();
            return Problem.of(422, "His tape has no game \"" + since + "\", and none on such a date or later.")
                    .withNearest(NearestLabels.words(ids).to(since, 3))
                    .thrown();
        });
    }
}

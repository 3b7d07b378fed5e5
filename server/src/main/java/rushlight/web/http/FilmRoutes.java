package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import rushlight.archive.Archive;
import rushlight.archive.LogSummary;
import rushlight.archive.Opinions;
import rushlight.archive.Projections;
import rushlight.film.Game;
import rushlight.film.Prospect;
import rushlight.findings.Assessment;
import rushlight.findings.Finding;
import rushlight.findings.Peers;
import rushlight.findings.Profile;
import rushlight.index.Footage;
import rushlight.index.IndexedRep;
import rushlight.situation.Narrowing;
import rushlight.situation.Tape;
import rushlight.situation.TapedGame;
import rushlight.web.AssessAnswer;
import rushlight.web.Beside;
import rushlight.web.BoardAnswer;
import rushlight.web.CompareAnswer;
import rushlight.web.LogBrief;
import rushlight.web.ProspectAnswer;
import rushlight.web.ProspectBrief;
import rushlight.words.NearestLabels;

/** What film says of prospects. */
final class FilmRoutes {
    private static final int FEWEST = 2;
    private static final int MOST = 4;

    private final Archive archive;
    private final FilmVersion version;
    private final Opinions opinions;
    private final Projections projections;

    FilmRoutes(Archive archive, FilmVersion version) {
        this.archive = archive;
        this.version = version;
        this.opinions = Opinions.of(archive);
        this.projections = Projections.of(archive);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/prospects", this::prospects),
                Route.get("/api/prospects/{id}", this::prospect),
                Route.get("/api/prospects/{id}/assessment", this::assessment),
                Route.get("/api/prospects/{id}/findings/{finding}/reps", this::findingReps),
                Route.get("/api/board", this::board),
                Route.get("/api/compare", this::compare),
                Route.get("/api/logs", this::logs));
    }

    private void prospects(Context ctx) {
        Versions.json(
                ctx,
                version.now(),
                () -> Map.of(
                        "prospects",
                        archive.watch(footage ->
                                footage.tapes().map(ProspectBrief::of).toList())));
    }

    /** What is answered of one prospect, within the filter of the request. */
    private interface OfTape {
        Object answer(Footage footage, Tape tape, Narrowing narrowing);
    }

    private void ofTape(Context ctx, OfTape made) {
        Narrowing narrowing = Request.narrowing(ctx);
        Versions.json(
                ctx,
                version.now(),
                () -> archive.watch(footage -> made.answer(footage, tape(footage, ctx.pathParam("id")), narrowing)));
    }

    private void prospect(Context ctx) {
        ofTape(
                ctx,
                (footage, tape, narrowing) -> ProspectAnswer.of(
                        tape.prospect(), whole(footage, tape), narrowing, profile(footage, tape, narrowing)));
    }

    /** What the prospect of an address does, within the filter of the request. */
    Profile profile(Context ctx) {
        Narrowing narrowing = Request.narrowing(ctx);
        return archive.watch(footage -> profile(footage, tape(footage, ctx.pathParam("id")), narrowing));
    }

    private Profile profile(Footage footage, Tape tape, Narrowing narrowing) {
        List<IndexedRep> kept = reps(footage, tape, narrowing(narrowing, tape));
        return archive.book().profile(narrowing.of(tape), kept);
    }

    private void assessment(Context ctx) {
        ofTape(ctx, (footage, tape, narrowing) -> {
            Assessment assessed =
                    archive.book().assess(narrowing(narrowing, tape).of(tape));
            Beside beside = Beside.of(assessed, opinions, projections);
            boolean peers = Request.flag(ctx, "peers", false);
            return AssessAnswer.of(
                    assessed,
                    peers
                            ? beside.with(
                                    footage.once(
                                            Peers.class, all -> archive.book().peers(league(all))),
                                    assessed)
                            : beside,
                    Request.flag(ctx, "reps", true));
        });
    }

    private void findingReps(Context ctx) {
        Finding finding = archive.book()
                .findings()
                .counted(ctx.pathParam("finding"))
                .orElseGet(() -> finding(ctx.pathParam("finding"), 404));
        ofTape(ctx, (footage, tape, narrowing) -> {
            List<IndexedRep> kept = reps(footage, tape, narrowing(narrowing, tape));
            return new Evidences(archive.book().taxonomy())
                    .of(finding, archive.book().assess(narrowing.of(tape)), kept, games(footage));
        });
    }

    private void board(Context ctx) {
        List<String> chosen = ctx.queryParams("finding").stream().distinct().toList();
        chosen.forEach(slug -> finding(slug, 422));
        Versions.json(ctx, version.now(), () -> archive.watch(footage -> BoardAnswer.of(chosen, league(footage))));
    }

    private List<Assessment> league(Footage footage) {
        return footage.tapes().parallel().map(archive.book()::assess).toList();
    }

    private void compare(Context ctx) {
        List<String> ids = ctx.queryParams("id").stream().distinct().toList();
        if (ids.size() < FEWEST || ids.size() > MOST) {
            throw Problem.of(422, "Name two to four prospects, each with id=.").thrown();
        }
        Versions.json(
                ctx,
                version.now(),
                () -> archive.watch(footage -> {
                    return CompareAnswer.of(ids.stream()
                            .map(id -> CompareAnswer.Side.of(archive.book(), footage, id)
                                    .orElseThrow(() -> noFilm(footage, id)))
                            .toList());
                }));
    }

    private void logs(Context ctx) {
        Versions.json(
                ctx,
                version.now(),
                () -> Map.of(
                        "logs",
                        LogSummary.all(archive.store()).stream()
                                .map(LogBrief::of)
                                .toList()));
    }

    /** The tape of a prospect; a problem where there is none of this id. */
    Tape tape(Footage footage, String id) {
        return footage.tape(id).orElseThrow(() -> noFilm(footage, id));
    }

    private static ProblemException noFilm(Footage footage, String id) {
        return noFilm(id, footage.prospects().stream().map(Prospect::id).toList());
    }

    /** What ends a request for a prospect of an id that none of those there are has. */
    static ProblemException noFilm(String id, List<String> ids) {
        return Problem.of(404, "There is no film of \"" + id + "\".")
                .withNearest(NearestLabels.words(ids).to(id, 3))
                .thrown();
    }

    /** The finding of an address; a problem of this status where the book has none. */
    Finding finding(String slug, int status) {
        return archive.book().findings().finding(slug).orElseThrow(() -> {
            List<String> slugs =
                    archive.book().findings().all().stream().map(Finding::slug).toList();
            return Problem.of(status, "The book has no finding \"" + slug + "\".")
                    .withNearest(NearestLabels.words(slugs).to(slug, 3))
                    .thrown();
        });
    }

    /** The same narrowing, if the tape has what it asks for. */
    private static Narrowing narrowing(Narrowing asked, Tape tape) {
        check("game", asked.game(), tape.games().stream().map(TapedGame::id).toList());
        check("opponent", asked.opponent(), opponents(tape));
        check("over", asked.over(), List.copyOf(tape.rows("over").keySet()));
        return asked;
    }

    private static void check(String name, Optional<String> asked, List<String> known) {
        if (asked.isPresent() && !known.contains(asked.get())) {
            throw Problem.of(422, "His tape has no " + name + " \"" + asked.get() + "\".")
                    .withNearest(NearestLabels.words(known).to(asked.get(), 3))
                    .thrown();
        }
    }

    private static List<IndexedRep> reps(Footage footage, Tape tape, Narrowing narrowing) {
        List<IndexedRep> all = footage.reps(tape.prospect().id());
        return narrowing.kept(tape).stream().mapToObj(all::get).toList();
    }

    private ProspectAnswer.Whole whole(Footage footage, Tape tape) {
        Map<String, Game> games = games(footage);
        return new ProspectAnswer.Whole(
                tape.size(),
                tape.games().stream()
                        .map(g -> ProspectAnswer.Played.of(
                                Objects.requireNonNull(games.get(g.id())),
                                g.reps().cardinality()))
                        .toList(),
                opponents(tape),
                List.copyOf(tape.rows("over").keySet()),
                LogSummary.of(archive.store(), tape.prospect().id()).stream()
                        .map(LogBrief::of)
                        .toList());
    }

    /** Every game of the film by its id. */
    static Map<String, Game> games(Footage footage) {
        return footage.games().stream().collect(Collectors.toMap(Game::id, game -> game, (first, same) -> first));
    }

    private static List<String> opponents(Tape tape) {
        return tape.games().stream()
                .map(TapedGame::opponent)
                .filter(name -> !name.isEmpty())
                .distinct()
                .toList();
    }
}

package rushlight.web.http;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rushlight.archive.Archive;
import rushlight.archive.EditResult;
import rushlight.archive.Edits;
import rushlight.archive.KeptReading;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.csv.Cells;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.TypedRow;
import rushlight.knowledge.FilmColumns;
import rushlight.store.Store;
import rushlight.web.CellsIn;
import rushlight.web.ClassifiedAnswer;
import rushlight.web.FaultAnswer;
import rushlight.web.ReadingAnswer;
import rushlight.web.RepsAnswer;

/** The rows of the film log: looked at, changed, added, taken out. */
final class RepRoutes {
    private static final int MOST = 1_000;
    private static final Log.Source BY_HAND = new Log.Source("typed in", "0".repeat(64));
    private static final List<String> OF_THE_LOG =
            List.of("prospect", "game", "date", "level", "opponent", "evaluator");

    private final Archive archive;
    private final FilmVersion version;
    private final FilmColumns film;
    private final Logs logs;
    private final TypedRow typed;

    RepRoutes(Archive archive, FilmVersion version) {
        this.archive = archive;
        this.version = version;
        this.film = archive.book().taxonomy().film();
        this.logs = new Logs(archive.store());
        this.typed = TypedRow.of(archive.book().taxonomy());
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/reps", this::list),
                Route.post("/api/reps", this::add),
                Route.get("/api/reps/{prospect}/{game}/{rep}", this::one),
                Route.put("/api/reps/{prospect}/{game}/{rep}", this::edit),
                Route.delete("/api/reps/{prospect}/{game}/{rep}", this::remove),
                Route.get("/api/reps/{prospect}/{game}/{rep}/explanation", this::explanation),
                Route.post("/api/classify", this::classify));
    }

    private void list(Context ctx) {
        RowQuery query = new RowQuery(ctx, archive.book());
        int limit = Request.number(ctx, "limit", 100, 1, MOST);
        int offset = Request.number(ctx, "offset", 0, 0, Integer.MAX_VALUE);
        Versions.json(ctx, version.now(), () -> page(query, offset, limit));
    }

    private RepsAnswer page(RowQuery query, int offset, int limit) {
        List<LogId> wanted =
                archive.store().logs().stream().filter(query::wants).toList();
        if (query.wantsWholeLogs()) {
            return page(wanted, offset, limit);
        }
        List<RowQuery.Row> rows = query.of(read(wanted));
        return new RepsAnswer(
                rows.size(),
                offset,
                limit,
                rows.stream().skip(offset).limit(limit).map(this::answer).toList());
    }

    /** A page of whole logs: only those that reach into it are read. */
    private RepsAnswer page(List<LogId> wanted, int offset, int limit) {
        Store store = archive.store();
        List<ReadingAnswer> page = new ArrayList<>();
        int total = 0;
        for (LogId id : wanted) {
            int readings = store.readings(id);
            int from = Math.max(0, offset - total);
            if (from < readings && page.size() < limit) {
                logs.log(id)
                        .ifPresent(log -> log.readings().stream()
                                .skip(from)
                                .limit(limit - page.size())
                                .forEach(reading -> page.add(answer(new RowQuery.Row(log, reading)))));
            }
            total += readings;
        }
        return new RepsAnswer(total, offset, limit, page);
    }

    private Stream<Log> read(List<LogId> ids) {
        return ids.stream().flatMap(id -> logs.log(id).stream());
    }

    private ReadingAnswer answer(RowQuery.Row row) {
        Set<String> classes = archive.book()
                .rules()
                .classify(row.reading(), row.log().charted())
                .tagged("repClass");
        return ReadingAnswer.of(row.log(), row.reading(), classes, film);
    }

    private ReadingAnswer answer(KeptReading kept) {
        return ReadingAnswer.of(kept.log(), kept.reading(), kept.classes(), film);
    }

    private void one(Context ctx) {
        ReadingAnswer answer = answer(found(ctx));
        ctx.header("Cache-Control", "no-cache");
        if (!Versions.isKnown(ctx, answer.etag())) {
            Versions.json(ctx, answer);
        }
    }

    private void explanation(Context ctx) {
        KeptReading kept = found(ctx);
        Versions.json(
                ctx,
                Map.of(
                        "rep",
                        kept.reading().rep().rep(),
                        "explanations",
                        archive.book()
                                .rules()
                                .explain(kept.reading(), kept.log().charted())));
    }

    private void classify(Context ctx) {
        CellsIn in = Body.json(ctx, CellsIn.class);
        TypedRow.Result row = typed.read(in.cells(), new HashSet<>(in.charted()), options(), BY_HAND);
        Set<String> charted = new HashSet<>(in.charted());
        row.log().ifPresent(log -> charted.addAll(log.charted()));
        charted.addAll(row.reading().tags().keySet());
        charted.retainAll(film.all().stream()
                .filter(column -> column.list())
                .map(column -> column.name())
                .toList());
        Versions.json(
                ctx,
                new ClassifiedAnswer(
                        FaultAnswer.of(row.faults()),
                        FaultAnswer.of(row.warnings()),
                        Cells.ofReading(row.reading(), film),
                        archive.book().rules().explain(row.reading(), charted)));
    }

    private void add(Context ctx) {
        Log log = good(Body.json(ctx, CellsIn.class), Map.of());
        EditResult result = edits(ctx).add(log);
        ctx.status(201);
        if (result instanceof EditResult.Done done && done.reading().isPresent()) {
            ctx.header("Location", answer(done.reading().get()).href());
        }
        answer(ctx, result, Map.of());
    }

    private void edit(Context ctx) {
        KeptReading kept = found(ctx);
        String match = Versions.changed(ctx, "rep");
        CellsIn in = Body.json(ctx, CellsIn.class);
        Map<String, String> head = new LinkedHashMap<>();
        Map<String, String> now = Cells.of(kept.log(), kept.reading(), film);
        OF_THE_LOG.forEach(column -> head.put(column, now.getOrDefault(column, "")));
        Log log = good(in, head);
        answer(ctx, edits(ctx).edit(id(ctx, kept), kept.reading().rep().rep(), Versions.plain(match), log), in.cells());
    }

    private void remove(Context ctx) {
        KeptReading kept = found(ctx);
        Optional<String> match = Optional.ofNullable(ctx.header("If-Match")).map(Versions::plain);
        answer(ctx, edits(ctx).remove(id(ctx, kept), kept.reading().rep().rep(), match), Map.of());
    }

    /** The typed row as a log, or every fault of it. */
    private Log good(CellsIn in, Map<String, String> head) {
        Map<String, String> cells = new LinkedHashMap<>(in.cells());
        head.forEach((column, value) -> {
            String given = cells.getOrDefault(column, "").strip();
            if (!given.isEmpty() && !given.equals(value)) {
                throw Problem.of(
                                422,
                                "A rep stays in its log: \"" + column + "\" is \"" + value + "\" there, not \"" + given
                                        + "\". Add it to the other log, and remove it here.")
                        .thrown();
            }
            cells.put(column, value);
        });
        TypedRow.Result row = typed.read(cells, new HashSet<>(in.charted()), options(), BY_HAND);
        return row.log()
                .orElseThrow(() -> Problem.of(422, "The row has faults; nothing was changed.")
                        .withFaults(FaultAnswer.of(row.faults()))
                        .thrown());
    }

    private FilmLogReader.Options options() {
        return new FilmLogReader.Options(Optional.empty(), archive.numbering(), archive.prospects());
    }

    private void answer(Context ctx, EditResult result, Map<String, String> yours) {
        Edited.answer(ctx, result, yours, this::answer);
    }

    private Edits edits(Context ctx) {
        return archive.edits().by(Visitor.of(ctx).name());
    }

    private static LogId id(Context ctx, KeptReading kept) {
        return new LogId(Identity.slug(kept.log().evaluator()), ctx.pathParam("prospect"), ctx.pathParam("game"));
    }

    /** The reading that the address names: that of the evaluator it names, else of the one believed first. */
    private KeptReading found(Context ctx) {
        String prospect = ctx.pathParam("prospect");
        String game = ctx.pathParam("game");
        Optional<String> by = Request.word(ctx, "by").map(Identity::slug);
        return archive.store().logs().stream()
                .filter(id -> id.prospect().equals(prospect) && id.game().equals(game))
                .filter(id -> by.filter(slug -> !slug.equals(id.evaluator())).isEmpty())
                .sorted(archive.firstBelieved())
                .flatMap(id -> archive.edits().reading(id, ctx.pathParam("rep")).stream())
                .findFirst()
                .orElseThrow(() ->
                        Problem.of(404, "There is no reading of that rep.").thrown());
    }
}

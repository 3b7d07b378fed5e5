package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rushlight.archive.Archive;
import rushlight.archive.Projections;
import rushlight.film.Identity;
import rushlight.film.Projection;
import rushlight.findings.Role;
import rushlight.store.KeptProjections.Kept;
import rushlight.web.ProjectionAnswer;

/** What evaluators think a player will be: looked at, kept, taken back; every version stays. */
final class ProjectionRoutes {
    private static final String HOME = "/api/prospects/{id}/projections";
    private static final int LONGEST = 4_000;
    private static final int LONGEST_LINE = 400;

    /** What is sent to be kept; what is left out is empty. */
    record In(
            @Nullable String evaluator,
            @Nullable String role,
            @Nullable String readiness,
            @Nullable String ceiling,
            @Nullable String floor,
            @Nullable String risk,
            @Nullable String words,
            @Nullable String scale,
            @Nullable String tier) {}

    private final Archive archive;
    private final Projections projections;

    ProjectionRoutes(Archive archive) {
        this.archive = archive;
        this.projections = Projections.of(archive);
    }

    List<Route> routes() {
        return List.of(
                Route.get(HOME, this::all),
                Route.get(HOME + "/{evaluator}", this::one),
                Route.put(HOME + "/{evaluator}", this::keep),
                Route.delete(HOME + "/{evaluator}", this::takeBack));
    }

    private void all(Context ctx) {
        Versions.json(
                ctx,
                new ProjectionAnswer.All(projections.of(prospect(ctx)).stream()
                        .map(ProjectionAnswer::of)
                        .toList()));
    }

    private void one(Context ctx) {
        List<Kept> history = projections.history(prospect(ctx), evaluator(ctx));
        if (history.isEmpty()) {
            throw missing().thrown();
        }
        ctx.header("Cache-Control", "no-cache");
        if (!Versions.isKnown(ctx, tag(history.get(0)))) {
            Versions.json(
                    ctx,
                    new ProjectionAnswer.History(
                            history.stream().map(ProjectionAnswer::of).toList()));
        }
    }

    private void keep(Context ctx) {
        Projection projection = projection(ctx, Body.json(ctx, In.class));
        List<Kept> history = projections.history(projection.prospect(), projection.by());
        boolean stands = !history.isEmpty() && !history.get(0).takenBack();
        int newest = history.isEmpty() ? 0 : history.get(0).version();
        answer(ctx, projections.keep(projection, version(ctx, stands, newest)), stands ? 200 : 201);
    }

    private void takeBack(Context ctx) {
        String prospect = prospect(ctx);
        Projections.Result result = projections.takeBack(prospect, evaluator(ctx), version(ctx, true, 0));
        if (!result.done() && result.now().isEmpty()) {
            throw missing().thrown();
        }
        answer(ctx, result, 200);
    }

    private static void answer(Context ctx, Projections.Result result, int status) {
        Kept now = result.now().orElseThrow(() -> missing().thrown());
        if (!result.done()) {
            throw Problem.of(
                            412,
                            "This projection was changed after you opened it, on "
                                    + now.when() + " (version " + now.version()
                                    + "). Look at what stands there, then save again.")
                    .thrown();
        }
        ctx.header("ETag", tag(now)).status(status);
        Versions.json(ctx, ProjectionAnswer.of(now));
    }

    /** The version that a request changes: that of its If-Match, else the newest where nothing stands that could be lost. */
    private static int version(Context ctx, boolean stands, int newest) {
        String match = ctx.header("If-Match");
        if (match == null) {
            if (stands) {
                throw Problem.of(
                                428,
                                "Say with If-Match which version you change: the ETag you got with the projection.")
                        .thrown();
            }
            return newest;
        }
        String plain = Versions.plain(match);
        return plain.matches("p\\d{1,8}") ? Integer.parseInt(plain.substring(1)) : -1;
    }

    private Projection projection(Context ctx, In in) {
        Projection said = new Projection(
                prospect(ctx),
                Body.text("evaluator", in.evaluator(), LONGEST_LINE),
                Body.text("role", in.role(), LONGEST_LINE),
                Body.text("readiness", in.readiness(), LONGEST_LINE),
                Body.text("ceiling", in.ceiling(), LONGEST_LINE),
                Body.text("floor", in.floor(), LONGEST_LINE),
                Body.text("risk", in.risk(), LONGEST_LINE),
                Body.text("words", in.words(), LONGEST),
                Body.text("scale", in.scale(), LONGEST_LINE),
                Body.text("tier", in.tier(), LONGEST_LINE));
        if (said.by().isEmpty() || !said.by().equals(evaluator(ctx))) {
            throw refused("Whose judgement is it? Name the evaluator, the same as in the address.");
        }
        if (said.isBlank()) {
            throw refused("Nothing is said in it. Fill in one field at least.");
        }
        if (said.scale().isEmpty() != said.tier().isEmpty()) {
            throw refused("A tier stands on a scale: name both, such as \"rounds\" and \"third\", or neither.");
        }
        if (!said.role().isEmpty() && roles().noneMatch(said.role()::equals)) {
            throw Problem.of(422, "The book has no role \"" + said.role() + "\".")
                    .withNearest(roles().toList())
                    .thrown();
        }
        return said;
    }

    private Stream<String> roles() {
        return archive.book().findings().roles().stream().map(Role::slug);
    }

    private String prospect(Context ctx) {
        String id = ctx.pathParam("id");
        return Optional.of(id)
                .filter(one -> archive.prospects().stream().anyMatch(p -> p.id().equals(one)))
                .orElseThrow(() ->
                        Problem.of(404, "There is no film of \"" + id + "\".").thrown());
    }

    private static String evaluator(Context ctx) {
        return Identity.slug(ctx.pathParam("evaluator"));
    }

    private static String tag(Kept kept) {
        return "\"p" + kept.version() + "\"";
    }

    private static ProblemException refused(String why) {
        return Problem.of(422, why).thrown();
    }

    private static Problem missing() {
        return Problem.of(404, "He has no projection of that evaluator.");
    }
}

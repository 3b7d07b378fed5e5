package rushlight.web.http;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Supplier;
import rushlight.archive.Archive;
import rushlight.film.Prospect;
import rushlight.findings.Assessment;
import rushlight.plan.Plan;
import rushlight.plan.PlanAnswer;
import rushlight.plan.PlanByHand;
import rushlight.plan.Planner;
import rushlight.web.Json;
import rushlight.web.PlanChangeIn;
import rushlight.web.PlanCheckAnswer;
import rushlight.web.PlanIn;

/**
 * Makes plans of what is sent, and holds changed ones against the same limits. How good the best plan of a request can be is
 * remembered as long as the film stays, so that a change is told at once what it costs.
 */
final class Planning {
    private static final int REMEMBERED = 200;

    private final Archive archive;
    private final FilmVersion version;
    private final Map<String, Integer> bounds = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Integer> eldest) {
            return size() > REMEMBERED;
        }
    };

    Planning(Archive archive, FilmVersion version) {
        this.archive = archive;
        this.version = version;
    }

    /** What the film says of the prospect of an address. */
    Assessment assessment(Context ctx) {
        String id = ctx.pathParam("id");
        return archive.assess(id)
                .orElseThrow(() -> FilmRoutes.noFilm(
                        id, archive.prospects().stream().map(Prospect::id).toList()));
    }

    /** What came of a request; one that cannot be granted ends in a problem with every reason. */
    PlanAnswer plan(Assessment assessment, PlanIn in, Planner.Watcher watcher) {
        String key = key(assessment, in);
        PlanAnswer answer = archive.book().planner().plan(assessment, meant(in::request), watcher);
        if (answer instanceof PlanAnswer.Refused no) {
            throw refused("No plan", no.reasons());
        }
        if (answer instanceof PlanAnswer.Made made) {
            synchronized (bounds) {
                bounds.put(key, made.plan().result().bound());
            }
        }
        return answer;
    }

    /** Sessions that were changed by hand, held against everything a plan keeps to. */
    PlanByHand.Held held(Assessment assessment, PlanChangeIn in) {
        PlanIn asked = meant(in::asked);
        PlanByHand held = archive.book()
                .planner()
                .byHand(
                        assessment,
                        meant(asked::request),
                        meant(in::worked),
                        meant(in::changed),
                        bound(key(assessment, asked)));
        if (held instanceof PlanByHand.Refused no) {
            throw refused("These sessions cannot be checked", no.reasons());
        }
        return (PlanByHand.Held) held;
    }

    /** The plan of sessions that keep everything, with what is proven of it; a problem where they do not. */
    Plan sound(Assessment assessment, PlanChangeIn in) {
        PlanByHand.Held held = held(assessment, in);
        if (!held.breaches().isEmpty()) {
            throw refused(
                    "A plan that breaks a limit is not kept",
                    held.breaches().stream().map(PlanCheckAnswer::sentence).toList());
        }
        PlanIn asked = meant(in::asked);
        if (bound(key(assessment, asked)).isPresent()) {
            return held.plan();
        }
        plan(assessment, asked, (step, done) -> {});
        return held(assessment, in).plan();
    }

    /** What somebody sent, as it is meant; a problem where it cannot be. */
    static <T> T meant(Supplier<T> read) {
        try {
            return read.get();
        } catch (IllegalArgumentException e) {
            throw Problem.of(422, String.valueOf(e.getMessage())).thrown();
        }
    }

    private OptionalInt bound(String key) {
        synchronized (bounds) {
            Integer bound = bounds.get(key);
            return bound == null ? OptionalInt.empty() : OptionalInt.of(bound);
        }
    }

    private String key(Assessment assessment, PlanIn in) {
        return version.now() + " " + assessment.prospect().id() + " " + Json.compact(in);
    }

    private static ProblemException refused(String what, List<String> reasons) {
        return Problem.of(422, what + ": " + reasons.get(0))
                .withReasons(reasons)
                .thrown();
    }
}

package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import rushlight.archive.Archive;
import rushlight.archive.LearnedWords;
import rushlight.archive.LearnedWords.Outcome;
import rushlight.web.LearnedAnswer;

/** What kept decisions on notes teach, and what a person does with it. */
final class LearnedRoutes {
    /** Which suggestion is meant. */
    record In(@Nullable String key) {}

    /** What was done. */
    record Done(String said, List<String> notes, List<LearnedAnswer.Suggestion> suggestions) {}

    private final LearnedWords words;

    LearnedRoutes(Archive archive) {
        this.words = LearnedWords.of(archive);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/notes/learned", ctx -> Versions.json(ctx, LearnedAnswer.of(words.all()))),
                Route.post("/api/notes/learned/take", ctx -> wish(ctx, words::take)),
                Route.post("/api/notes/learned/ignore", ctx -> wish(ctx, words::ignore)),
                Route.post("/api/notes/learned/bring-back", ctx -> wish(ctx, words::bringBack)));
    }

    private void wish(Context ctx, Function<String, Outcome> deed) {
        String key = Body.json(ctx, In.class).key();
        Outcome outcome = deed.apply(key == null ? "" : key);
        if (outcome instanceof Outcome.Refused refused) {
            throw Problem.of(409, "Nothing was changed. " + refused.reasons().get(0))
                    .withReasons(refused.reasons())
                    .thrown();
        }
        if (!(outcome instanceof Outcome.Done done)) {
            throw Problem.of(404, "Nothing of what was learned goes by that key; \"key\" is one of the list.")
                    .thrown();
        }
        Versions.json(
                ctx,
                new Done(
                        done.said(), done.notes(), LearnedAnswer.of(words.all()).suggestions()));
    }
}

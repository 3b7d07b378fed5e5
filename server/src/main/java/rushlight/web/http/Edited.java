package rushlight.web.http;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rushlight.archive.EditResult;
import rushlight.archive.KeptReading;
import rushlight.web.ChangeAnswer;
import rushlight.web.ReadingAnswer;

/** Tells what came of a change. */
final class Edited {
    private Edited() {}

    /**
     * Answers, or ends the request with the problem it was.
     *
     * @param yours the cells that were sent, to be given back beside those that are there
     */
    static void answer(
            Context ctx, EditResult result, Map<String, String> yours, Function<KeptReading, ReadingAnswer> reading) {
        if (result instanceof EditResult.Done done) {
            Optional<ReadingAnswer> now = done.reading().map(reading);
            now.ifPresent(answer -> ctx.header("ETag", answer.etag()));
            Versions.json(ctx, new ChangeAnswer(done.revision(), done.said(), true, now));
        } else if (result instanceof EditResult.Stale stale) {
            throw Problem.of(
                            412,
                            "Somebody changed this rep after you opened it. Look at both versions, then save again.")
                    .withVersions(reading.apply(stale.current()), yours)
                    .thrown();
        } else if (result instanceof EditResult.Refused refused) {
            throw Problem.of(409, refused.reasons().get(0))
                    .withReasons(refused.reasons())
                    .thrown();
        } else {
            throw Problem.of(404, "There is nothing of that name to change.").thrown();
        }
    }
}

package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rushlight.archive.Archive;
import rushlight.archive.SavedQuestions;
import rushlight.film.Identity;
import rushlight.web.QuestionAnswer;

/** Questions that are kept under a name. */
final class QuestionRoutes {
    private static final int LONGEST = 2_000;
    private static final int LONGEST_NAME = 120;

    /** What is sent to be kept. */
    record In(@Nullable String question, @Nullable String note) {}

    private final SavedQuestions questions;

    QuestionRoutes(Archive archive) {
        this.questions = SavedQuestions.of(archive);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/questions", this::all),
                Route.get("/api/questions/{name}", this::one),
                Route.put("/api/questions/{name}", this::keep),
                Route.delete("/api/questions/{name}", this::forget));
    }

    private void all(Context ctx) {
        Versions.json(
                ctx,
                Map.of(
                        "questions",
                        questions.all().stream().map(QuestionAnswer::of).toList()));
    }

    private void one(Context ctx) {
        Versions.json(
                ctx,
                questions
                        .named(ctx.pathParam("name"))
                        .map(QuestionAnswer::of)
                        .orElseThrow(() -> missing().thrown()));
    }

    private void keep(Context ctx) {
        String name = ctx.pathParam("name").strip();
        if (name.length() > LONGEST_NAME || Identity.slug(name).isEmpty()) {
            throw Problem.of(422, "A name has a letter or a digit, and at most " + LONGEST_NAME + " characters.")
                    .thrown();
        }
        In in = Body.json(ctx, In.class);
        String question = in.question() == null ? "" : in.question().strip();
        String note = in.note() == null ? "" : in.note().strip();
        if (question.isEmpty() || question.length() > LONGEST || note.length() > LONGEST) {
            throw Problem.of(422, "A question, and a note where there is one, has 1 to " + LONGEST + " characters.")
                    .thrown();
        }
        boolean isNew = questions.named(name).isEmpty();
        ctx.status(isNew ? 201 : 200);
        Versions.json(ctx, QuestionAnswer.of(questions.save(name, question, note)));
    }

    private void forget(Context ctx) {
        if (!questions.forget(ctx.pathParam("name"))) {
            throw missing().thrown();
        }
        ctx.status(204);
    }

    private static Problem missing() {
        return Problem.of(404, "No question is saved under that name.");
    }
}

package rushlight.web.http;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import rushlight.archive.Archive;
import rushlight.archive.SavedQuestions;
import rushlight.ask.Answers;
import rushlight.ask.SavedQuestion;
import rushlight.ask.Suggestions;
import rushlight.web.AskAnswer;

/** Questions in a coach's words. */
final class AskRoutes {
    private static final int LONGEST = 2_000;
    private static final int USUAL = 100;
    private static final int MOST = 1_000;
    private static final int FARTHEST = 1_000_000;
    private static final int SUGGESTIONS = 10;

    /** A question that is sent. */
    record In(
            @Nullable String question,
            @Nullable Integer limit,
            @Nullable Integer offset) {}

    private final Archive archive;
    private final FilmVersion version;
    private final Suggestions suggestions;
    private final SavedQuestions saved;

    AskRoutes(Archive archive, FilmVersion version) {
        this.archive = archive;
        this.version = version;
        this.suggestions = archive.book().suggestions();
        this.saved = SavedQuestions.of(archive);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/ask", this::asked),
                Route.post("/api/ask", this::sent),
                Route.get("/api/suggest", this::suggest));
    }

    private void asked(Context ctx) {
        String question = Request.word(ctx, "q").orElse("");
        int limit = Request.number(ctx, "limit", USUAL, 1, MOST);
        int offset = Request.number(ctx, "offset", 0, 0, FARTHEST);
        Versions.json(ctx, version.now(), () -> answer(question, offset, limit));
    }

    private void sent(Context ctx) {
        In in = Body.json(ctx, In.class);
        String question = in.question() == null ? "" : in.question().strip();
        if (question.length() > LONGEST) {
            throw Problem.of(400, "The question is longer than " + LONGEST + " characters.")
                    .thrown();
        }
        int offset = within("offset", in.offset(), 0, FARTHEST);
        int limit = within("limit", in.limit(), USUAL, MOST);
        Versions.json(ctx, answer(question, offset, limit));
    }

    private AskAnswer answer(String question, int offset, int limit) {
        Answers answers =
                archive.watch(footage -> archive.book().answer(footage, question, new Answers.Window(offset, limit)));
        return AskAnswer.of(answers, archive.book().situations());
    }

    private static int within(String name, @Nullable Integer given, int otherwise, int most) {
        int value = given == null ? otherwise : given;
        if (value < 0 || value > most) {
            throw Problem.of(400, "\"" + name + "\" is a whole number from 0 to " + most + ".")
                    .thrown();
        }
        return value;
    }

    private void suggest(Context ctx) {
        String text = Request.word(ctx, "q").orElse("");
        List<Suggestions.Suggestion> all = new ArrayList<>(kept(text));
        if (!text.isEmpty()) {
            all.addAll(archive.watch(footage -> suggestions.toAsk(footage, text, SUGGESTIONS)));
        }
        Versions.json(ctx, Map.of("suggestions", all.stream().limit(SUGGESTIONS).toList()));
    }

    /** The saved questions in which what is typed stands. */
    private List<Suggestions.Suggestion> kept(String text) {
        String typed = text.toLowerCase(Locale.ROOT);
        return saved.all().stream()
                .filter(one -> (one.name() + " " + one.question())
                        .toLowerCase(Locale.ROOT)
                        .contains(typed))
                .map(AskRoutes::suggestion)
                .toList();
    }

    private static Suggestions.Suggestion suggestion(SavedQuestion question) {
        return new Suggestions.Suggestion(
                question.question(), Suggestions.QUESTION, question.question(), question.name());
    }
}

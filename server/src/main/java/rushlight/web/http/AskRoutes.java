package rushlight.web.http;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import rushlight.archive.Archive;
import rushlight.archive.SavedQuestions;
import rushlight.ask.SavedQuestion;
import rushlight.ask.Suggestions;

/** Questions in a coach's words. */
final class AskRoutes {
    private static final int SUGGESTIONS = 10;

    private final Archive archive;
    private final Suggestions suggestions;
    private final SavedQuestions saved;

    AskRoutes(Archive archive) {
        this.archive = archive;
        this.suggestions = Suggestions.of(archive.book().taxonomy(), List.of());
        this.saved = SavedQuestions.of(archive);
    }

    List<Route> routes() {
        return List.of(Route.get("/api/suggest", this::suggest));
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

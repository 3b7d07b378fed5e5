package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import rushlight.archive.Archive;
import rushlight.archive.Opinions;
import rushlight.film.Opinion;
import rushlight.notes.GeneralOpinions;
import rushlight.notes.Narration;
import rushlight.web.OpinionAnswer;

/** What notes say of a player in general: taken in, taken back, brought back. */
final class OpinionRoutes {
    private final Archive archive;
    private final Opinions opinions;

    OpinionRoutes(Archive archive) {
        this.archive = archive;
        this.opinions = Opinions.of(archive);
    }

    List<Route> routes() {
        return List.of(
                Route.post("/api/notes/opinions", this::keep),
                Route.delete("/api/opinions/{id}", ctx -> answer(ctx, opinions.takeBack(ctx.pathParam("id")))),
                Route.put("/api/opinions/{id}", ctx -> answer(ctx, opinions.bringBack(ctx.pathParam("id")))));
    }

    private void keep(Context ctx) {
        NotesRoutes.In in = Body.json(ctx, NotesRoutes.In.class);
        String name = NotesRoutes.told("prospect", in.prospect());
        Set<String> accepted = in.holding();
        Narration narration = NotesRoutes.narration(in);
        String speaker = Objects.requireNonNullElse(in.evaluator(), "");
        List<Opinion> said = new GeneralOpinions(
                        narration, archive.book().notes().read(narration, name), opinions.prospect(name), speaker)
                .of(accepted::contains);
        opinions.keep(said);
        Versions.json(
                ctx, Map.of("opinions", said.stream().map(OpinionAnswer::of).toList()));
    }

    private static void answer(Context ctx, Optional<Opinion> found) {
        Versions.json(
                ctx,
                found.map(OpinionAnswer::of)
                        .orElseThrow(() -> Problem.of(404, "No opinion is kept under that id.")
                                .thrown()));
    }
}

package rushlight.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import rushlight.archive.Archive;
import rushlight.archive.Opinions;
import rushlight.film.Opinion;
import rushlight.notes.GeneralOpinions;
import rushlight.notes.Narration;

/** Keeps what notes say of the player in general in the data folder; guesses stay out. */
final class OpinionSaving {
    private OpinionSaving() {}

    static void save(DataFolder data, List<Narration> all, String prospect, String speaker, PrintWriter out) {
        try (Archive archive = data.open()) {
            Opinions opinions = Opinions.of(archive);
            List<Opinion> said = new ArrayList<>();
            for (Narration narration : all) {
                said.addAll(new GeneralOpinions(
                                narration,
                                archive.book().notes().read(narration, prospect),
                                opinions.prospect(prospect),
                                speaker)
                        .sure());
            }
            opinions.keep(said);
            out.println("Kept " + Numbers.of(said.size(), "opinion") + " of " + prospect.strip()
                    + "; rushlight assess shows them beside what the reps say.");
        }
    }
}

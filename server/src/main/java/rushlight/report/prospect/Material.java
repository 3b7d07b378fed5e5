package rushlight.report.prospect;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rushlight.findings.Assessment;
import rushlight.findings.Profile;
import rushlight.findings.Spoken;

/**
 * What a report is made from.
 *
 * @param assessment what the film says of him
 * @param spoken what people said of him
 * @param profile where he lines up and what he opens with
 * @param readers who read which games
 * @param written what the evaluator puts in
 */
public record Material(Assessment assessment, Spoken spoken, Profile profile, List<Reader> readers, Written written) {
    /**
     * One evaluator's reading of one game.
     *
     * @param evaluator his name
     * @param game name of the game
     * @param day when it was played
     * @param readings how many reps he read
     */
    public record Reader(String evaluator, String game, Optional<LocalDate> day, int readings) {}

    public Material {
        readers = List.copyOf(readers);
    }
}

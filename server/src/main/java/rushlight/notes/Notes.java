package rushlight.notes;

import java.util.List;

/**
 * What notes say.
 *
 * @param source name of the file
 * @param diagnostics what was wrong in the file
 * @param segments the whole text, in stretches
 * @param reps the reps it speaks of
 * @param statements what it says of the player in general
 * @param hidden what names a concept and was left out, with the reason
 */
public record Notes(
        String source,
        List<Diagnostic> diagnostics,
        List<Segment> segments,
        List<ProposedRep> reps,
        List<Mention> statements,
        List<Hidden> hidden) {
    public Notes {
        diagnostics = List.copyOf(diagnostics);
        segments = List.copyOf(segments);
        reps = List.copyOf(reps);
        statements = List.copyOf(statements);
        hidden = List.copyOf(hidden);
    }
}

package rushlight.notes;

import java.util.List;
import java.util.function.Function;

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

    /** What notes say that were read in pieces. */
    static Notes joined(Narration narration, List<Notes> pieces) {
        return new Notes(
                narration.source(),
                narration.diagnostics(),
                all(pieces, Notes::segments),
                all(pieces, Notes::reps),
                all(pieces, Notes::statements),
                all(pieces, Notes::hidden));
    }

    private static <T> List<T> all(List<Notes> pieces, Function<Notes, List<T>> part) {
        return pieces.stream().flatMap(piece -> part.apply(piece).stream()).toList();
    }
}

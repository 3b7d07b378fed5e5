package rushlight.notes;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A rep that the notes speak of, for a person to look at.
 *
 * @param ordinal its place in the notes, from 1
 * @param phase {@code pass-rush}, {@code run} or {@code drop}; empty where nothing tells
 * @param start seconds from the beginning of the recording; empty where the notes have no times
 * @param end seconds
 * @param from where it begins in the text
 * @param to where it ends
 * @param replays the stretches that look at it again
 * @param tags what was said of it, in the order of the text
 */
public record ProposedRep(
        int ordinal,
        Optional<String> phase,
        OptionalDouble start,
        OptionalDouble end,
        int from,
        int to,
        List<Segment> replays,
        List<Mention> tags) {
    public ProposedRep {
        replays = List.copyOf(replays);
        tags = List.copyOf(tags);
    }
}

package rushlight.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.film.Opinion;

/**
 * What somebody said of the player in general; no evidence, and in no count.
 *
 * @param agreement {@code agrees}, {@code disagrees} or {@code not-enough-tape}; null where no finding answers it
 * @param sentence what a person reads
 */
public record SaidAnswer(
        String id,
        String speaker,
        String text,
        String assertion,
        String concept,
        List<String> against,
        String source,
        OptionalDouble at,
        Optional<String> agreement,
        String sentence) {
    static SaidAnswer of(Opinion opinion, Optional<String> agreement, String sentence) {
        return new SaidAnswer(
                opinion.id(),
                opinion.speaker(),
                opinion.words(),
                opinion.polarity().slug(),
                opinion.concept(),
                opinion.against(),
                opinion.source(),
                opinion.at(),
                agreement,
                sentence);
    }
}

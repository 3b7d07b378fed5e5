package rushlight.web;

import java.util.List;
import java.util.OptionalDouble;
import rushlight.film.Opinion;

/**
 * Something that was said of a player in general, as programs read it.
 *
 * @param id by which it is taken back
 * @param prospect id of the player
 * @param speaker who said it; empty where nobody is named
 * @param text the sentence
 * @param at seconds from the beginning of the recording, null where there are none
 * @param source name of the file
 * @param assertion {@code performed}, {@code not-performed} or {@code uncertain}
 * @param concept slug of what is named
 * @param against slugs of what he is said to do it against
 */
public record OpinionAnswer(
        String id,
        String prospect,
        String speaker,
        String text,
        OptionalDouble at,
        String source,
        String assertion,
        String concept,
        List<String> against) {
    /** The answer for one of them. */
    public static OpinionAnswer of(Opinion said) {
        return new OpinionAnswer(
                said.id(),
                said.prospect(),
                said.speaker(),
                said.words(),
                said.at(),
                said.source(),
                said.polarity().slug(),
                said.concept(),
                said.against());
    }
}

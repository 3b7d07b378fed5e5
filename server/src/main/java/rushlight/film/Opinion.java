package rushlight.film;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Something that was said of a player in general. It is shown beside what his reps say, and is never counted as one of them.
 *
 * @param id the same for the same words of the same file about the same player
 * @param prospect id of the player
 * @param speaker who said it; empty where nobody is named
 * @param words the sentence it was said in
 * @param at seconds from the beginning of the recording; empty where the notes have no times
 * @param source name of the file
 * @param polarity whether he is said to do it
 * @param concept slug of what is named
 * @param against slugs of what he is said to do it against, in the order of the words
 */
public record Opinion(
        String id,
        String prospect,
        String speaker,
        String words,
        OptionalDouble at,
        String source,
        Polarity polarity,
        String concept,
        List<String> against) {
    /** Whether he is said to do it, or to have it. */
    public enum Polarity {
        DOES("performed"),
        /** It was denied, or wished for: who could use a counter has none. */
        DOES_NOT("not-performed"),
        /** Said with doubt, or of what might be: it claims nothing. */
        UNSURE("uncertain");

        private final String slug;

        Polarity(String slug) {
            this.slug = slug;
        }

        /** The word in files and in JSON, as claims of the book are asserted. */
        public String slug() {
            return slug;
        }

        /**
         * The one with this word.
         *
         * @throws IllegalArgumentException where there is none
         */
        public static Polarity of(String slug) {
            for (Polarity one : values()) {
                if (one.slug.equals(slug)) {
                    return one;
                }
            }
            throw new IllegalArgumentException("No polarity is written \"" + slug + "\".");
        }
    }

    public Opinion {
        against = List.copyOf(against);
    }
}

package rushlight.words;

import java.util.List;

/** What a text means among the labels of a vocabulary. */
public sealed interface Meaning {
    /**
     * The text names one concept.
     *
     * @param slug the concept
     */
    record One(String slug) implements Meaning {}

    /**
     * The text names several concepts, and nothing in it says which.
     *
     * @param slugs the concepts, in order of their slugs
     */
    record Several(List<String> slugs) implements Meaning {
        public Several {
            slugs = List.copyOf(slugs);
        }
    }

    /** The text names nothing here. */
    record None() implements Meaning {}
}

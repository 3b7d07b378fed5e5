package rushlight.agreement;

import java.util.Locale;
import rushlight.film.RepId;

/**
 * Two readings under different names that may be of one rep; nothing counts until a person accepts it.
 *
 * @param first the first evaluator's name for it
 * @param second the second's
 * @param why what they have in common
 */
public record Proposal(RepId first, RepId second, Why why) {
    /** What two readings have in common, the surest first. */
    public enum Why {
        SNAP("the same snap of the game"),
        CLIP("the same stretch of film"),
        CLOCK("the same quarter and clock");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        /** The word in JSON. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** For people. */
        public String words() {
            return words;
        }
    }
}

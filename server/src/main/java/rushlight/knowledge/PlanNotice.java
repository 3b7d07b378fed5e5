package rushlight.knowledge;

import java.util.List;
import java.util.Locale;

/**
 * Something that stands on every plan.
 *
 * @param slug the notice
 * @param part where it stands
 * @param order its place in its part, from 1
 * @param text what it says, in whole sentences
 * @param support {@code strong}, {@code fair} or {@code common-practice}
 * @param sources where it comes from
 * @param local whether the user's own file added it
 */
public record PlanNotice(
        String slug, Part part, int order, String text, String support, List<Source> sources, boolean local) {
    /** The parts of the notices, in the order in which they are read. */
    public enum Part {
        /** Who decides. */
        DECIDES,
        /** Who must approve before anything is done. */
        APPROVAL,
        /** What holds for every session. */
        RULE,
        /** What ends a session at once. */
        STOP;

        /** The word as the book and the answers write it. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public PlanNotice {
        sources = List.copyOf(sources);
    }
}

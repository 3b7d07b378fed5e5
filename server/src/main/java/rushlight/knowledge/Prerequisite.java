package rushlight.knowledge;

/**
 * One skill that another wants first.
 *
 * @param skill the skill that is to be trained
 * @param needs what comes first
 * @param strength whether it must
 * @param group for {@link Strength#ONE_OF} the number of the choice among those of the skill, from 1; 0 else
 * @param because why it comes first; empty where nothing is said
 * @param safety whether it is a matter of safety, which no plan may pass over
 */
public record Prerequisite(String skill, String needs, Strength strength, int group, String because, boolean safety) {
    /** How much a skill wants another first. */
    public enum Strength {
        /** It is trained first. */
        MUST,
        /** It, or another of the same choice, is trained first. */
        ONE_OF,
        /** It only helps. */
        HELPS
    }
}

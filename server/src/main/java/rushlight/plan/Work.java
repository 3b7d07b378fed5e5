package rushlight.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a block works on, and why; and what it does not.
 *
 * @param targets the skills in the order in which they are taught: no skill stands before one it needs
 * @param left what film showed and the block leaves out
 * @param look skills that the targets need and film has shown neither way: looked at before heavier work
 * @param contactBlocked why there is no full contact whatever the rules allow; empty where nothing forbids it
 */
public record Work(List<Target> targets, List<Left> left, List<Look> look, Optional<String> contactBlocked) {
    /** Why a skill is worked on. */
    public enum Role {
        /** Somebody's health is at stake. */
        SAFETY,
        /** Film showed that it is missing. */
        GAP,
        /** Another one needs it first. */
        PREREQUISITE;

        /** The word as it is written in answers. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A skill to be worked on.
     *
     * @param skill slug of the skill
     * @param label its name
     * @param role why
     * @param weight what one set of it is worth, above 0
     * @param findings slugs of the findings it answers, the most telling first; for a prerequisite those it prepares
     * @param first slugs of the targets that come before it
     * @param because why it was chosen, in sentences
     */
    public record Target(
            String skill,
            String label,
            Role role,
            int weight,
            List<String> findings,
            List<String> first,
            List<String> because) {
        public Target {
            findings = List.copyOf(findings);
            first = List.copyOf(first);
            because = List.copyOf(because);
        }
    }

    /**
     * What film showed and the block leaves out.
     *
     * @param finding slug of the finding, or of the skill where none was named
     * @param label its name
     * @param why in a sentence
     */
    public record Left(String finding, String label, String why) {}

    /**
     * A skill to be looked at before heavier work.
     *
     * @param skill slug of the skill
     * @param label its name
     * @param why in a sentence
     */
    public record Look(String skill, String label, String why) {}

    public Work {
        targets = List.copyOf(targets);
        left = List.copyOf(left);
        look = List.copyOf(look);
    }

    /** The target for a skill. */
    public Optional<Target> target(String skill) {
        return targets.stream().filter(t -> t.skill().equals(skill)).findFirst();
    }
}

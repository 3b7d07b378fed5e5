package rushlight.knowledge;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is right and what is wrong against one block under one duty.
 *
 * @param id slug of the rule
 * @param block the block he meets
 * @param assignment his duty
 * @param right fits that answer it
 * @param wrong fits and faults that do not
 * @param onlyIf where given, the rule speaks only when this is known to hold
 * @param dependsOn what the whole rule hangs on; printed beside the verdict, changes no class
 * @param caveats what single fits hang on
 * @param local whether the user's own file added it
 */
public record FitRule(
        String id,
        String block,
        String assignment,
        Set<String> right,
        Set<String> wrong,
        Optional<String> onlyIf,
        List<String> dependsOn,
        List<Caveat> caveats,
        boolean local) {
    /**
     * Something that turns single fits of a rule around.
     *
     * @param flips the fits and faults it turns
     * @param dependsOn what it hangs on, in words
     */
    public record Caveat(Set<String> flips, String dependsOn) {
        public Caveat {
            flips = Set.copyOf(flips);
        }
    }

    public FitRule {
        right = Set.copyOf(right);
        wrong = Set.copyOf(wrong);
        dependsOn = List.copyOf(dependsOn);
        caveats = List.copyOf(caveats);
    }
}

package rushlight.findings;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * A role held against one prospect's tape. It says what film shows and what it does not, never what he cannot do.
 *
 * @param role the job
 * @param required what it must have, strengths and tasks first
 * @param preferred what would be welcome
 * @param summary what a person reads
 */
public record RoleFit(Role role, List<Need> required, List<Need> preferred, String summary) {
    /**
     * One thing the role asks for.
     *
     * @param asked what
     * @param shown whether film shows it
     * @param judged the count behind it, of the finding or the task
     */
    public record Need(Role.Asked asked, Shown shown, Judged judged) {
        static Need of(Role.Asked asked, Judged judged) {
            return new Need(asked, Shown.of(judged.verdict(), asked.without()), judged);
        }
    }

    public RoleFit {
        required = List.copyOf(required);
        preferred = List.copyOf(preferred);
    }

    static RoleFit of(Role role, List<Need> required, List<Need> preferred) {
        return new RoleFit(role, required, preferred, RoleWords.say(required, preferred));
    }

    /**
     * Shown where film shows all that is required, not shown where there are chances enough for something required and film
     * does not show it, else no tape.
     */
    public Shown fit() {
        return count(Shown.NOT_SHOWN) > 0 ? Shown.NOT_SHOWN : count(Shown.NO_TAPE) > 0 ? Shown.NO_TAPE : Shown.SHOWN;
    }

    /** Everything it asks for, what is required first. */
    public Stream<Need> needs() {
        return Stream.concat(required.stream(), preferred.stream());
    }

    private long count(Shown shown) {
        return required.stream().filter(need -> need.shown() == shown).count();
    }

    /** What fits best first: the fewest things required that are not shown, then the fewest without tape, then what is welcome. */
    static Comparator<RoleFit> bestFirst() {
        return Comparator.<RoleFit>comparingLong(fit -> fit.count(Shown.NOT_SHOWN))
                .thenComparingLong(fit -> fit.count(Shown.NO_TAPE))
                .thenComparingLong(fit -> -fit.preferred.stream()
                        .filter(need -> need.shown() == Shown.SHOWN)
                        .count())
                .thenComparing(fit -> fit.role.slug());
    }
}

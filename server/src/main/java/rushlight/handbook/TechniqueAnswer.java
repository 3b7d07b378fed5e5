package rushlight.handbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rushlight.knowledge.FitAnswers;
import rushlight.knowledge.Lesson;
import rushlight.knowledge.Source;

/**
 * Everything the book teaches of one concept, as programs read it.
 *
 * @param slug the concept
 * @param label its preferred label
 * @param altLabels other names in the trade
 * @param kinds what it is, such as {@code rush move}
 * @param definition one sentence, or empty
 * @param notes what its names mean and do not mean
 * @param side which way it goes, as the book words it; empty where it goes none
 * @param seenIn which view is needed to see it; empty where any will do
 * @param because why it matters, for a finding; empty else
 * @param ruleOutFirst what else may explain it, for a finding; empty else
 * @param facts short facts: what it takes to run a drill, how a skill is judged; none for anything else
 * @param parts what a coach tells, in the order in which he tells it
 * @param cautions cautions that are told of a wider concept and hold here too, and what can hurt in a drill
 * @param relations how it hangs together with others, in the order in which they are told
 * @param oneOf lists of concepts of which one must be owned
 * @param faults what each of its common faults looks like
 * @param pairings what is taught off it or against it, best first
 * @param counterTo where it is itself the counter that is taught
 * @param fits the rules for it, where it is a block or a duty
 * @param judged where the fit rules call it right or wrong
 * @param numbers which numbers stand for its spot, by numbering system
 * @param support {@code strong}, {@code fair} or {@code common-practice}
 * @param ownSources where the concept itself is described
 * @param sources those and the ones of everything told about it
 * @param local whether it is the user's own term
 */
public record TechniqueAnswer(
        String slug,
        String label,
        List<String> altLabels,
        List<String> kinds,
        String definition,
        List<String> notes,
        String side,
        List<String> seenIn,
        String because,
        String ruleOutFirst,
        List<Fact> facts,
        List<Lesson> parts,
        List<Lesson.Statement> cautions,
        List<Relation> relations,
        List<List<String>> oneOf,
        List<FaultLook> faults,
        List<Paired> pairings,
        List<Paired> counterTo,
        List<FitAnswers.Answer> fits,
        List<Judged> judged,
        Map<String, List<String>> numbers,
        String support,
        List<Source> ownSources,
        List<Source> sources,
        boolean local) {
    /** A short fact; {@code property} is what programs call it. */
    public record Fact(String property, String title, String value) {}

    /** Concepts that one relation leads to; {@code relation} is the property, {@code inverse-} before it when read backwards. */
    public record Relation(String relation, String title, List<String> concepts) {}

    /** A common fault, and what is seen when it happens. */
    public record FaultLook(String fault, Optional<String> looksLike) {}

    /** Counters in order, off one move against one answer; either may be absent. */
    public record Paired(Optional<String> move, Optional<String> trigger, List<String> counters) {}

    /** A block under a duty, where the concept is right or wrong. */
    public record Judged(boolean right, String block, List<String> assignments) {}

    /** The concepts of one relation; none where it has none. */
    public List<String> related(String relation) {
        return relations.stream()
                .filter(r -> r.relation().equals(relation))
                .flatMap(r -> r.concepts().stream())
                .toList();
    }
}

package rushlight.report.book;

import java.util.List;
import java.util.Optional;
import rushlight.figure.Drawing;

/**
 * Everything that stands on the page of one concept, in the order of the page.
 *
 * @param heading its name, and how it is marked
 * @param definition one sentence; may be empty
 * @param notes what its names mean and do not mean
 * @param facts short facts, such as the side it goes to
 * @param support how well it is borne out, and by what
 * @param cautions what can hurt, and who decides
 * @param front where it is; empty for what has no place
 * @param parts what a coach tells, in his order
 * @param rules what a rule book says of it
 * @param faults what goes wrong in it, and what that looks like
 * @param around what it beats, what stops it and what follows; empty where nothing is known
 * @param pairings what is taught off it or against it
 * @param counterTo where it is itself the counter that is taught
 * @param fits what is right and wrong, duty by duty or block by block
 * @param judged where it is itself called right or wrong
 * @param ladder what it needs; empty where it needs nothing
 * @param steps the same with what trains each step
 * @param relations how it hangs together with the rest
 * @param numbers what its spot is called in each numbering system
 */
public record ConceptPage(
        Heading heading,
        String definition,
        List<String> notes,
        List<Fact> facts,
        Support support,
        List<Told> cautions,
        Optional<Drawing> front,
        List<Part> parts,
        List<Told> rules,
        List<Fault> faults,
        Optional<Drawing> around,
        List<Pairs> pairings,
        List<CounterTo> counterTo,
        List<Fit> fits,
        List<Judged> judged,
        Optional<Drawing> ladder,
        List<Step> steps,
        List<Links> relations,
        List<Fact> numbers) {
    /**
     * Its name.
     *
     * @param slug the name that never changes
     * @param label the preferred label
     * @param local whether the user's own file added it
     * @param kinds the kinds it is listed under
     * @param otherNames other names in the trade
     */
    public record Heading(String slug, String label, boolean local, List<Link> kinds, List<String> otherNames) {}

    /** A short fact: what, and its value. */
    public record Fact(String what, String value) {}

    /** How well something is borne out, in words, and the sources it names. */
    public record Support(String words, List<Link> sources) {}

    /** Something that is told: {@code about} names a wider concept it is told of; {@code note} the edition of a rule. */
    public record Told(String text, Support support, Optional<Link> about, String note, boolean risk, boolean local) {}

    /** A part of a lesson. */
    public record Part(String title, List<Told> told) {}

    /** A common fault and what is seen when it happens. */
    public record Fault(Link fault, String looksLike) {}

    /** Counters against one thing, best first, in groups that share a reason. */
    public record Pairs(String title, Optional<Link> trigger, List<Reason> reasons) {
        /** All of them, in order. */
        public List<Counter> counters() {
            return reasons.stream().flatMap(r -> r.counters().stream()).toList();
        }
    }

    /** Counters taught for one reason, with what bears it out; {@code from} is the place of the first in the order. */
    public record Reason(String because, Support support, int from, List<Counter> counters) {}

    /** One counter: which way, and when. */
    public record Counter(Link counter, String side, String timing, boolean local) {}

    /** A move and an answer to which the concept is a counter. */
    public record CounterTo(Optional<Link> move, Optional<Link> trigger) {}

    /** What is right and wrong against a block under a duty. */
    public record Fit(
            Link block,
            Link duty,
            boolean wider,
            List<Link> right,
            List<Link> wrong,
            List<String> onlyIf,
            List<String> dependsOn,
            List<Turn> turns,
            Support support) {}

    /** Something that turns single answers around. */
    public record Turn(List<Link> answers, String dependsOn) {}

    /** A block under duties where the concept is right or wrong. */
    public record Judged(boolean right, Link block, List<Link> duties) {}

    /** A step on the way, and what trains it. */
    public record Step(int number, Link concept, List<Link> drills, boolean itself) {}

    /** Concepts that one relation leads to. */
    public record Links(String title, List<Link> links) {}
}

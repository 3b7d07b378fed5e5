package rushlight.notes;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Which lines speak of the player in general: traits, faults and wishes, and nothing that happened. */
final class Generalities {
    private static final Set<Assertion> OPEN =
            EnumSet.of(Assertion.WANTED, Assertion.TENDENCY, Assertion.UNCERTAIN, Assertion.HYPOTHETICAL);

    /** How many words of what he is like there are for one of what he did, where a line speaks of what he is like. */
    private static final int MOST = 2;

    private final List<Clause> clauses;
    private final List<List<Hit>> hits;
    private final List<List<Mention>> said;

    Generalities(List<Clause> clauses, List<List<Hit>> hits, List<List<Mention>> said) {
        this.clauses = clauses;
        this.hits = hits;
        this.said = said;
    }

    /** Whether nothing happens in a clause, and nobody lines up. */
    boolean isGeneral(int clause) {
        for (int i = 0; i < hits.get(clause).size(); i++) {
            Hit hit = hits.get(clause).get(i);
            Mention mention = said.get(clause).get(i);
            boolean done = mention.assertion() == Assertion.PERFORMED;
            boolean his = mention.actor() == Actor.PROSPECT;
            if (hit.isPlace() || (hit.happens() && (done || !his))) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether the last line of the notes, from a clause that begins it, speaks in general after a rep was told; one that
     * begins with the player in general may tell of as many events as traits.
     */
    boolean isOutside(int first, Openings.SoFar before) {
        int cue = clauses.get(first).cue();
        if (!before.told() || clauses.get(clauses.size() - 1).cue() != cue) {
            return false;
        }
        int general = 0;
        int happened = 0;
        boolean open = false;
        boolean leads = false;
        for (int i = first; i < clauses.size(); i++) {
            for (int j = 0; j < hits.get(i).size(); j++) {
                Hit hit = hits.get(i).get(j);
                Mention mention = said.get(i).get(j);
                boolean done = mention.assertion() == Assertion.PERFORMED;
                boolean his = mention.actor() == Actor.PROSPECT;
                if (hit.isPlace() || (hit.happens() && !his) || (hit.isEnd() && done)) {
                    return false;
                }
                open |= OPEN.contains(mention.assertion());
                boolean event = hit.happens() && done;
                leads |= !event && happened + general == 0;
                happened += event ? 1 : 0;
                general += event ? 0 : 1;
            }
        }
        boolean most = happened == 0 ? before.ended() || open : general >= (leads ? 1 : MOST) * happened;
        return general > 0 && most;
    }
}

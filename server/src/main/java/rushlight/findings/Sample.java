package rushlight.findings;

import java.util.BitSet;
import java.util.List;
import rushlight.evidence.Rate;
import rushlight.situation.TapedGame;

/**
 * The reps of a tape that a finding counts. Neither set is ever changed.
 *
 * @param opportunities the reps that could show it
 * @param events the reps among them that do
 */
record Sample(BitSet opportunities, BitSet events) {
    static final Sample NONE = new Sample(new BitSet(), new BitSet());

    /** The events among the opportunities. */
    static Sample of(BitSet opportunities, BitSet events) {
        return new Sample(opportunities, and(events, opportunities));
    }

    Rate rate() {
        return new Rate(events.cardinality(), opportunities.cardinality());
    }

    /** What of it lies in {@code reps}. */
    Sample within(BitSet reps) {
        return new Sample(and(opportunities, reps), and(events, reps));
    }

    /** The counts of each game, in order of play. */
    List<Rate> byGame(List<TapedGame> games) {
        return games.stream().map(game -> within(game.reps()).rate()).toList();
    }

    /** How many games have an opportunity. */
    int games(List<TapedGame> games) {
        int count = 0;
        for (TapedGame game : games) {
            count += opportunities.intersects(game.reps()) ? 1 : 0;
        }
        return count;
    }

    Sample or(Sample other) {
        return new Sample(or(opportunities, other.opportunities), or(events, other.events));
    }

    static BitSet and(BitSet a, BitSet b) {
        BitSet both = (BitSet) a.clone();
        both.and(b);
        return both;
    }

    static BitSet or(BitSet a, BitSet b) {
        BitSet either = (BitSet) a.clone();
        either.or(b);
        return either;
    }

    static BitSet without(BitSet a, BitSet b) {
        BitSet rest = (BitSet) a.clone();
        rest.andNot(b);
        return rest;
    }

    /** The last {@code most} members of a set. */
    static BitSet latest(BitSet reps, int most) {
        BitSet latest = new BitSet();
        int at = reps.length() - 1;
        for (int left = most; left > 0 && at >= 0; left--) {
            latest.set(at);
            at = at == 0 ? -1 : reps.previousSetBit(at - 1);
        }
        return latest;
    }
}

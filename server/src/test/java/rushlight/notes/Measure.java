package rushlight.notes;

import java.util.ArrayList;
import java.util.List;

/**
 * A figure from counts.
 *
 * @param name as the report calls it
 * @param counted the name of its counts
 * @param figure how it is had from them
 * @param tuned the bar where the reader was tuned on the narrations; not a number where there is none
 * @param unseen the bar for narrations not seen before
 */
record Measure(String name, String counted, Figure figure, double tuned, double unseen) {
    /** How a figure is had from counts. */
    enum Figure {
        PRECISION,
        RECALL,
        F1,
        SHARE,
        /** A share of which less is better. */
        FAULTS
    }

    private static final double NONE = Double.NaN;
    private static final double ROUNDING = 1e-9;

    /** Every measure that has one figure of a whole set, and the bars it is held to; the mean over concepts stands alone. */
    static List<Measure> all() {
        List<Measure> all = new ArrayList<>();
        all.add(new Measure("concept precision", "concepts", Figure.PRECISION, 0.95, 0.90));
        all.add(new Measure("concept recall", "concepts", Figure.RECALL, 0.94, 0.82));
        all.add(new Measure("concept F1", "concepts", Figure.F1, 0.94, 0.85));
        all.add(new Measure("concept F1, the very same words", "concepts, same words", Figure.F1, NONE, NONE));
        all.add(new Measure("hidden though it stands", "wrongly hidden", Figure.FAULTS, NONE, NONE));
        both(all, "moves", 0.96, 0.96, 0.92, 0.88);
        both(all, "blocks", 0.95, 0.95, 0.94, 0.90);
        both(all, "run fits", 0.95, 0.94, 0.90, 0.72);
        both(all, "outcomes", 0.95, 0.93, 0.90, 0.80);
        both(all, "alignments", 0.97, 0.92, 0.95, 0.75);
        both(all, "blocker behaviour", 0.95, 0.92, 0.90, 0.80);
        both(all, "traits", 0.85, 0.92, 0.80, 0.72);
        both(all, "faults", 0.92, 0.75, 0.85, 0.60);
        both(all, "other", NONE, NONE, NONE, NONE);
        all.add(new Measure("assertion", "assertion", Figure.SHARE, 0.96, 0.93));
        all.add(new Measure("performed F1", "assertion:performed", Figure.F1, NONE, NONE));
        all.add(new Measure("not performed F1", "assertion:not-performed", Figure.F1, 0.95, 0.88));
        all.add(new Measure("wanted F1", "assertion:wanted", Figure.F1, 0.88, 0.78));
        all.add(new Measure("hypothetical F1", "assertion:hypothetical", Figure.F1, 0.80, 0.78));
        all.add(new Measure("uncertain F1", "assertion:uncertain", Figure.F1, NONE, NONE));
        all.add(new Measure("tendency F1", "assertion:tendency", Figure.F1, 0.85, 0.75));
        all.add(new Measure("inverted assertions", "inverted", Figure.FAULTS, 3 / 63.0, 0.10));
        all.add(new Measure("actor", "actor", Figure.SHARE, 0.98, 0.97));
        all.add(new Measure("recall of another actor", "actor:other", Figure.RECALL, 6 / 8.0, 4 / 7.0));
        all.add(new Measure("side, hand and target", "side, hand, target", Figure.SHARE, 0.90, 0.85));
        all.add(new Measure("side", "side", Figure.SHARE, NONE, NONE));
        all.add(new Measure("hand", "hand", Figure.SHARE, NONE, NONE));
        all.add(new Measure("target", "target", Figure.SHARE, NONE, NONE));
        all.add(new Measure("order of steps, by pairs", "order", Figure.SHARE, 0.97, 0.93));
        all.add(new Measure("sign of the opinion", "opinion", Figure.SHARE, NONE, NONE));
        all.add(new Measure("rep starts, precision", "rep starts", Figure.PRECISION, NONE, NONE));
        all.add(new Measure("rep starts, recall", "rep starts", Figure.RECALL, NONE, NONE));
        all.add(new Measure("rep starts, F1", "rep starts", Figure.F1, 0.95, 0.93));
        all.add(new Measure("exact number of reps", "rep count", Figure.SHARE, 37 / 40.0, 33 / 40.0));
        all.add(new Measure("replays that opened a rep", "replays", Figure.FAULTS, 0, 1 / 19.0));
        all.add(new Measure("Pk", "Pk", Figure.FAULTS, NONE, NONE));
        all.add(new Measure("WindowDiff", "WindowDiff", Figure.FAULTS, 0.05, 0.06));
        all.add(new Measure("rep tags, precision", "rep tags", Figure.PRECISION, NONE, NONE));
        all.add(new Measure("rep tags, recall", "rep tags", Figure.RECALL, NONE, NONE));
        all.add(new Measure("rep tags, F1", "rep tags", Figure.F1, 0.88, 0.72));
        all.add(new Measure("statements in general, F1", "statements", Figure.F1, 0.85, 0.75));
        all.add(new Measure("distractors shown", "distractors", Figure.FAULTS, 2 / 14.0, 4 / 19.0));
        return all;
    }

    private static void both(List<Measure> all, String group, double p, double r, double unseenP, double unseenR) {
        all.add(new Measure(group + ", precision", "class:" + group, Figure.PRECISION, p, unseenP));
        all.add(new Measure(group + ", recall", "class:" + group, Figure.RECALL, r, unseenR));
    }

    double of(Tally tally) {
        return switch (figure) {
            case PRECISION -> tally.precision();
            case F1 -> tally.f1();
            case RECALL, SHARE, FAULTS -> tally.recall();
        };
    }

    double bar(boolean seen) {
        return seen ? tuned : unseen;
    }

    /** Whether a value is as good as a bar. */
    boolean meets(double value, double bar) {
        return figure == Figure.FAULTS ? value <= bar + ROUNDING : value >= bar - ROUNDING;
    }

    /** Whether one value is better than another. */
    boolean isBetter(double value, double than) {
        return figure == Figure.FAULTS ? value < than : value > than;
    }
}

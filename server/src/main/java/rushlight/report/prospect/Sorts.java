package rushlight.report.prospect;

import rushlight.evidence.Verdict;
import rushlight.findings.Judged;
import rushlight.findings.Polarity;

/** Which part of a report a finding belongs to. */
final class Sorts {
    private Sorts() {}

    /** Safety comes before everything and always prints. */
    static boolean isSafety(Judged one) {
        return one.finding().safety()
                && one.finding().polarity() != Polarity.STRENGTH
                && one.outcome().rate().events() > 0;
    }

    static boolean isGap(Judged one) {
        return stands(one) && one.finding().polarity() == Polarity.GAP;
    }

    static boolean isStrength(Judged one) {
        return stands(one) && one.finding().polarity() == Polarity.STRENGTH;
    }

    /** Something to know beside the rest, and nothing that a duty decides. */
    static boolean isNote(Judged one) {
        return stands(one)
                && !isGap(one)
                && !isStrength(one)
                && one.conditional().isEmpty();
    }

    /** Whether an answer to the question of his duty could make the finding stand, or take it away. */
    static boolean hangsOnDuty(Judged one) {
        if (one.conditional().isEmpty() || isGap(one) || isStrength(one)) {
            return false;
        }
        return stands(one)
                || one.conditional().stream().anyMatch(c -> c.verdict().stands());
    }

    static boolean isOpen(Judged one) {
        return one.verdict() == Verdict.WATCH && !hangsOnDuty(one);
    }

    private static boolean stands(Judged one) {
        return one.verdict().stands();
    }
}

package rushlight.cli;

import rushlight.evidence.Verdict;
import rushlight.report.VerdictMarks;

/** A verdict in the text of a command, as everywhere else. */
final class Marks {
    private Marks() {}

    static String of(Verdict verdict) {
        return VerdictMarks.of(verdict);
    }

    static String word(Verdict verdict) {
        return VerdictMarks.word(verdict);
    }
}

package rushlight.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rushlight.evidence.Change;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;
import rushlight.findings.Evidence;
import rushlight.findings.Finding;

/**
 * One finding then and now.
 *
 * @param finding which
 * @param then the count before the cut
 * @param verdict the word it had earned then
 * @param now the count since, of reps that had no part in finding it
 * @param games the games since that have an opportunity
 * @param change what the count since says
 * @param luck the chance that an unchanged player does as well or better by luck, 0 to 1; empty where no rate is tried
 * @param amongAll whether that still tells a change from luck when all his gaps are tried together (Benjamini-Hochberg)
 * @param better the probability that he truly does better than then, 0 to 1; empty where no rate is tried
 * @param trend how it goes over all his games; empty under four games with an opportunity
 * @param byGame the count of every game of the tape
 * @param sentence what a person reads
 */
public record Progress(
        Finding finding,
        Rate then,
        Verdict verdict,
        Rate now,
        int games,
        Change change,
        OptionalDouble luck,
        boolean amongAll,
        OptionalDouble better,
        Optional<Course> trend,
        List<Evidence.OfGame> byGame,
        String sentence) {
    /**
     * How a rate goes over the games.
     *
     * @param rises whether there are more events the later the game
     * @param p two-sided, 0 to 1: exact mid-p of the test of Cochran and Armitage for few events, else its score test
     * @param amongAll whether it still stands when the courses of all his gaps are tried together
     */
    public record Course(boolean rises, double p, boolean amongAll) {}

    public Progress {
        byGame = List.copyOf(byGame);
    }

    Progress with(boolean holds, Optional<Course> course) {
        return new Progress(finding, then, verdict, now, games, change, luck, holds, better, course, byGame, sentence);
    }

    Progress saying(String words) {
        return new Progress(finding, then, verdict, now, games, change, luck, amongAll, better, trend, byGame, words);
    }
}

package rushlight.bench;

import java.util.Arrays;
import java.util.Optional;
import rushlight.archive.Archive;
import rushlight.archive.EditResult;
import rushlight.ask.Answers;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.store.LogGraph;

/**
 * What a change costs, and what it costs whoever asks next.
 *
 * @param edit milliseconds of a change of one rep, until it is acknowledged
 * @param question milliseconds of the first question after it
 */
record AfterEdits(double edit, double question) {
    private static final String QUESTION = "who wins with the long arm";

    /** Takes a rep out and back in, so many times after as many to warm up, and asks after each; the film stays as it is. */
    static AfterEdits of(Archive archive, Log log, int runs) {
        LogId id = LogGraph.idOf(log);
        String rep = log.readings().get(0).rep().rep();
        double[] edits = new double[2 * runs];
        double[] questions = new double[2 * runs];
        for (int i = 0; i < 2 * runs; i++) {
            long start = System.nanoTime();
            EditResult done = i % 2 == 0
                    ? archive.edits().remove(id, rep, Optional.empty())
                    : archive.edits().undo(Optional.empty());
            edits[i] = (System.nanoTime() - start) / 1e6;
            if (!(done instanceof EditResult.Done)) {
                throw new IllegalStateException("Not done: " + done);
            }
            start = System.nanoTime();
            archive.watch(footage -> archive.book().answer(footage, QUESTION, Answers.Window.first(10)));
            questions[i] = (System.nanoTime() - start) / 1e6;
        }
        return new AfterEdits(median(edits, runs), median(questions, runs));
    }

    private static double median(double[] times, int runs) {
        return AskBench.at(Arrays.copyOfRange(times, runs, times.length), 0.50);
    }
}

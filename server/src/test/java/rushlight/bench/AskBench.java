package rushlight.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import rushlight.archive.Archive;
import rushlight.ask.Answers;
import rushlight.web.AskAnswer;
import rushlight.web.Json;

/** Times questions as people ask them, from the text to the JSON, beside a plain SPARQL answer of the same question. */
final class AskBench {
    private static final int WARM = 15;
    private static final int RUNS = 40;
    private static final Answers.Window FIRST_TEN = Answers.Window.first(10);

    /** Questions of every kind. */
    private static final List<String> QUESTIONS = List.of(
            "edge players who wrong-arm kick-outs",
            "who never wrong-arms kick-outs",
            "who wins with the long arm",
            "who loses the edge on kick-outs",
            "players with a confirmed no inside counter",
            "who gets pressure from a wide 9",
            "top five players against double teams",
            "players with at least 5 sacks",
            "who is better against tight ends than tackles",
            "reps with late eyes on split zone",
            "third down sacks",
            "notes about \"loud cadence\"",
            "counters to a bull rush when the tackle sits down",
            "how do I attack a jump set",
            "what beats a soft set",
            "what does the inside spin need first",
            "drills for feet that stop on contact",
            "what goes wrong in an inside spin",
            "players like Bench 0 7",
            "confirmed gaps of Bench 0 7");

    private final Archive archive;

    AskBench(Archive archive) {
        this.archive = archive;
    }

    void run() {
        List<Double> all = new ArrayList<>();
        for (String question : QUESTIONS) {
            double[] times = times(question);
            Arrays.stream(times).forEach(all::add);
            Answers answers = archive.watch(f -> archive.book().answer(f, question, FIRST_TEN));
            line(
                    "ask: " + question,
                    "p50 %.1f ms, p95 %.1f ms (%s, %d answers)",
                    at(times, 0.50),
                    at(times, 0.95),
                    answers.asked().find().slug(),
                    answers.total());
        }
        double[] together = all.stream().mapToDouble(Double::doubleValue).toArray();
        line(
                "ask: all " + QUESTIONS.size() + " questions, " + RUNS + " times each",
                "p50 %.1f ms, p95 %.1f ms, p99 %.1f ms",
                at(together, 0.50),
                at(together, 0.95),
                at(together, 0.99));
        sparql(
                "edge players who wrong-arm kick-outs",
                "?r rl:blockerStep/rl:does/skos:broader* kb:kick-out-block",
                "?r rl:hisStep/rl:does/skos:broader* kb:wrong-arm");
        sparql(
                "who wins with the long arm",
                "?r rl:hisStep/rl:does/skos:broader* kb:long-arm",
                "?r rl:outcome \"won\"");
        sparql("third down sacks", "?r rl:phase \"pass-rush\" ; rl:down 3", "?r rl:result/skos:broader* kb:sack");
    }

    /** How long each took of all questions. */
    double[] all() {
        return QUESTIONS.stream().flatMapToDouble(q -> Arrays.stream(times(q))).toArray();
    }

    private double[] times(String question) {
        double[] times = new double[RUNS];
        for (int i = -WARM; i < RUNS; i++) {
            long start = System.nanoTime();
            String json = archive.watch(footage -> Json.text(AskAnswer.of(
                    archive.book().answer(footage, question, FIRST_TEN),
                    archive.book().situations())));
            double took = (System.nanoTime() - start) / 1e6;
            if (json.isEmpty()) {
                throw new IllegalStateException("Nothing was measured.");
            }
            if (i >= 0) {
                times[i] = took;
            }
        }
        return times;
    }

    private void sparql(String question, String opportunity, String event) {
        long start = System.nanoTime();
        int rows = SameInSparql.rows(archive, opportunity, event);
        line("the same in SPARQL over TDB2: " + question, "%.0f ms (%d rows)", (System.nanoTime() - start) / 1e6, rows);
    }

    static double at(double[] times, double share) {
        double[] sorted = times.clone();
        Arrays.sort(sorted);
        return sorted[(int) Math.ceil(share * sorted.length) - 1];
    }

    private static void line(String what, String figures, Object... values) {
        System.out.printf(Locale.ROOT, "%-62s %s%n", what, String.format(Locale.ROOT, figures, values));
    }
}

package rushlight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The right answers to the judged questions, with grades, and two measures of a ranked list.
 *
 * <p>Precision at 5 is the share of right answers among the first five (Manning, Raghavan and Schuetze 2008, Introduction to
 * Information Retrieval, section 8.4); where a question has fewer than five right answers, among as many as there are. nDCG at
 * 10 divides the gain of the first ten, each discounted by the logarithm of its place, by the best there could be (Jaervelin
 * and Kekaelaeinen 2002, ACM Transactions on Information Systems 20:422-446); the gain of grade g is 2^g - 1. Where only some
 * answers were judged, the others are taken out of the list before it is measured (condensed lists: Sakai 2007, SIGIR, 71-78).
 */
final class Judgment {
    private final Map<String, Map<String, Integer>> grades = new LinkedHashMap<>();

    static Judgment read() {
        Judgment judgment = new Judgment();
        for (String[] row : RightReadings.rows("answers.tsv")) {
            judgment.grades.computeIfAbsent(row[0], q -> new HashMap<>()).put(row[1], Integer.parseInt(row[2]));
        }
        return judgment;
    }

    /** The grades of a question's answers; empty where it has no right answer. */
    Map<String, Integer> of(String question) {
        return grades.getOrDefault(question, Map.of());
    }

    List<String> condensed(String question, List<String> answers) {
        return answers.stream().filter(of(question)::containsKey).toList();
    }

    double precisionAt5(String question, List<String> answers) {
        long right = of(question).values().stream().filter(g -> g > 0).count();
        if (right == 0) {
            return answers.isEmpty() ? 1 : 0;
        }
        int depth = (int) Math.min(5, right);
        long found = answers.stream()
                .limit(depth)
                .filter(answer -> of(question).getOrDefault(answer, 0) > 0)
                .count();
        return (double) found / depth;
    }

    double ndcgAt10(String question, List<String> answers) {
        List<Integer> best = new ArrayList<>(of(question).values());
        best.sort(Comparator.reverseOrder());
        double ideal = gain(best);
        if (ideal == 0) {
            return answers.isEmpty() ? 1 : 0;
        }
        return gain(answers.stream().map(a -> of(question).getOrDefault(a, 0)).toList()) / ideal;
    }

    private static double gain(List<Integer> graded) {
        double gain = 0;
        for (int i = 0; i < Math.min(10, graded.size()); i++) {
            gain += (Math.pow(2, graded.get(i)) - 1) / (Math.log(i + 2) / Math.log(2));
        }
        return gain;
    }
}

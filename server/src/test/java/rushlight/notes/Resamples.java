package rushlight.notes;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Intervals by the bootstrap of Efron (Annals of Statistics 7, 1979): narrations are drawn with replacement, as what is said in
 * one hangs together; the figure is taken of each draw, and its middle 95 % is the interval. Two runs are compared on the same
 * draws.
 */
final class Resamples {
    static final int DRAWS = 2_000;
    private static final long SEED = 20_260_101L;
    private static final double TAIL = 0.025;

    /** The middle 95 % of the draws; not numbers where the figure has none. */
    record Interval(double low, double high) {}

    /** The difference of a newer run, and the share of draws in which it is better. */
    record Difference(double difference, Interval interval, double better) {}

    private final List<String> narrations;
    private final int[][] weights;

    Resamples(List<String> narrations) {
        this.narrations = List.copyOf(narrations);
        Random random = new Random(SEED);
        int n = narrations.size();
        weights = new int[DRAWS][n];
        for (int[] draw : weights) {
            for (int i = 0; i < n; i++) {
                draw[random.nextInt(n)]++;
            }
        }
    }

    Interval of(Score score, Measure measure) {
        return interval(draws(score, measure));
    }

    /** Of the mean of F1 over the concepts that a draw has. */
    Interval ofMacroF1(Score score) {
        List<Tally[]> columns = new ArrayList<>();
        score.counted("slug:").forEach(name -> columns.add(column(score, name)));
        double[] values = new double[DRAWS];
        for (int d = 0; d < DRAWS; d++) {
            int[] draw = weights[d];
            values[d] = columns.stream()
                    .map(column -> total(column, draw))
                    .filter(tally -> tally.marked() > 0)
                    .mapToDouble(Tally::f1)
                    .average()
                    .orElse(Double.NaN);
        }
        return interval(values);
    }

    Difference compare(Score older, Score newer, Measure measure) {
        double[] before = draws(older, measure);
        double[] now = draws(newer, measure);
        double[] differences = new double[DRAWS];
        int better = 0;
        for (int d = 0; d < DRAWS; d++) {
            differences[d] = now[d] - before[d];
            better += measure.isBetter(now[d], before[d]) ? 1 : 0;
        }
        double difference = measure.of(newer.of(measure.counted())) - measure.of(older.of(measure.counted()));
        return new Difference(difference, interval(differences), better / (double) DRAWS);
    }

    private double[] draws(Score score, Measure measure) {
        Tally[] column = column(score, measure.counted());
        return Arrays.stream(weights)
                .mapToDouble(draw -> measure.of(total(column, draw)))
                .toArray();
    }

    private Tally[] column(Score score, String counted) {
        return narrations.stream().map(id -> score.of(id, counted)).toArray(Tally[]::new);
    }

    private static Tally total(Tally[] column, int[] draw) {
        double right = 0;
        double wrong = 0;
        double missed = 0;
        for (int i = 0; i < draw.length; i++) {
            right += draw[i] * column[i].right();
            wrong += draw[i] * column[i].wrong();
            missed += draw[i] * column[i].missed();
        }
        return new Tally(right, wrong, missed);
    }

    private static Interval interval(double[] values) {
        double[] sorted =
                Arrays.stream(values).filter(v -> !Double.isNaN(v)).sorted().toArray();
        if (sorted.length == 0) {
            return new Interval(Double.NaN, Double.NaN);
        }
        int last = sorted.length - 1;
        return new Interval(sorted[(int) Math.round(TAIL * last)], sorted[(int) Math.round((1 - TAIL) * last)]);
    }
}

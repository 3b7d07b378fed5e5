package rushlight.evidence.raters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rushlight.evidence.Interval;

/**
 * Cohen's kappa of two raters who rated the same units, plain or weighted, with its large-sample error
 * (Cohen 1960 and 1968; error of Fleiss, Cohen &amp; Everitt 1969). Undefined, and so empty, where chance alone gives full
 * agreement.
 *
 * @param observed weighted share agreed, 0 to 1
 * @param expected the same by chance, from how often each rater gave each label
 * @param value (observed - expected) / (1 - expected)
 * @param error standard error of {@code value}
 */
public record Kappa(double observed, double expected, double value, double error) {
    private static final double Z90 = 1.644854;

    /** Kappa of a square table of counts, a row a label of the first rater; only the same label agrees. */
    public static Optional<Kappa> of(int[][] table) {
        double[][] same = new double[table.length][table.length];
        for (int i = 0; i < table.length; i++) {
            same[i][i] = 1;
        }
        return weighted(table, same);
    }

    /**
     * Weighted kappa.
     *
     * @param agreement how far two labels agree, 1 for the same and less for others; of a weight of disagreement d it is
     *     1 - d / (largest d)
     */
    public static Optional<Kappa> weighted(int[][] table, double[][] agreement) {
        int k = table.length;
        double n = 0;
        double[] rows = new double[k];
        double[] columns = new double[k];
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                n += table[i][j];
                rows[i] += table[i][j];
                columns[j] += table[i][j];
            }
        }
        if (n == 0) {
            return Optional.empty();
        }
        double observed = 0;
        double expected = 0;
        double[] rowMean = new double[k];
        double[] columnMean = new double[k];
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                observed += agreement[i][j] * table[i][j] / n;
                expected += agreement[i][j] * rows[i] * columns[j] / n / n;
                rowMean[i] += agreement[i][j] * columns[j] / n;
                columnMean[j] += agreement[i][j] * rows[i] / n;
            }
        }
        if (expected >= 1) {
            return Optional.empty();
        }
        double square = 0;
        for (int i = 0; i < k; i++) {
            for (int j = 0; j < k; j++) {
                double part = agreement[i][j] * (1 - expected) - (rowMean[i] + columnMean[j]) * (1 - observed);
                square += table[i][j] / n * part * part;
            }
        }
        double bias = observed * expected - 2 * expected + observed;
        double variance = (square - bias * bias) / (n * Math.pow(1 - expected, 4));
        return Optional.of(new Kappa(
                observed, expected, (observed - expected) / (1 - expected), Math.sqrt(Math.max(0, variance))));
    }

    /** Kappa of two raters over the units both rated; the labels are told apart by {@code equals}. */
    public static <T> Optional<Kappa> of(Ratings<T> ratings) {
        List<T> labels = new ArrayList<>(ratings.common().labels());
        int[][] table = new int[labels.size()][labels.size()];
        ratings.common()
                .units()
                .forEach(unit -> table[labels.indexOf(unit.get(0).orElseThrow())][
                        labels.indexOf(unit.get(1).orElseThrow())]++);
        return of(table);
    }

    /** The range of 90 % about the value by the normal approximation, held to -1 to 1. */
    public Interval interval() {
        return new Interval(Math.max(-1, value - Z90 * error), Math.min(1, value + Z90 * error));
    }
}

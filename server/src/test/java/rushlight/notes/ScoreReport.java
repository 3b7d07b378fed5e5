package rushlight.notes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A score as a page of Markdown: every measure with its interval and bar, each kind of concept, and the lines read worst. */
final class ScoreReport {
    private static final int FEW = 20;
    private static final int WORST = 40;

    private final StringBuilder out = new StringBuilder();
    private final Score score;
    private final boolean seen;

    private ScoreReport(Score score, boolean seen) {
        this.score = score;
        this.seen = seen;
    }

    /**
     * @param seen whether the reader was tuned on these narrations, which the bars depend on
     */
    static String of(String title, Score score, boolean seen) {
        ScoreReport report = new ScoreReport(score, seen);
        report.measures(title);
        report.rows("By style", "style:", "style");
        report.rows("By kind of concept", "class:", "kind");
        report.rows("By assertion, of what was found", "assertion:", "assertion");
        report.rows("By actor, of what was found", "actor:", "actor");
        report.concepts();
        report.lines();
        return report.out.toString();
    }

    private void measures(String title) {
        Resamples resamples = new Resamples(score.ids());
        line("# %s", title);
        line("");
        line(
                "%d narrations; intervals of 95 %% from %d draws of narrations; bars for narrations %s.",
                score.narrations(), Resamples.DRAWS, seen ? "the reader was tuned on" : "not seen before");
        line("");
        line("| measure | value | interval | counts | bar | |");
        line("|---|---|---|---|---|---|");
        for (Measure measure : Measure.all()) {
            Tally tally = score.of(measure.counted());
            double value = measure.of(tally);
            Resamples.Interval interval = resamples.of(score, measure);
            double bar = measure.bar(seen);
            String sign = measure.figure() == Measure.Figure.FAULTS ? "at most " : "";
            boolean windows =
                    measure.counted().equals("Pk") || measure.counted().equals("WindowDiff");
            line(
                    "| %s | %s | %s | %s | %s | %s |",
                    measure.name(),
                    figure(value),
                    figure(interval.low()) + " to " + figure(interval.high()),
                    windows ? "mean of narrations" : counts(measure, tally),
                    Double.isNaN(bar) ? "" : sign + figure(bar),
                    verdict(measure, value, bar, tally.marked()));
            if (measure.name().equals("concept F1")) {
                macro(resamples);
            }
        }
    }

    private void macro(Resamples resamples) {
        Resamples.Interval interval = resamples.ofMacroF1(score);
        long concepts = score.counted("slug:").stream()
                .filter(name -> score.of(name).marked() > 0)
                .count();
        line(
                "| concept F1, mean over concepts | %s | %s to %s | %d concepts | | |",
                figure(score.macroF1()), figure(interval.low()), figure(interval.high()), concepts);
    }

    private static String counts(Measure measure, Tally tally) {
        return switch (measure.figure()) {
            case SHARE, FAULTS ->
                String.format(Locale.ROOT, "%.0f of %.0f", tally.right(), tally.marked())
                        + (tally.wrong() > 0 ? String.format(Locale.ROOT, ", %.0f unasked", tally.wrong()) : "");
            case PRECISION, RECALL, F1 -> tally.toString();
        };
    }

    private static String verdict(Measure measure, double value, double bar, double cases) {
        if (Double.isNaN(bar) || Double.isNaN(value)) {
            return "";
        }
        boolean alone =
                !measure.counted().equals("rep count") && !measure.counted().equals("WindowDiff");
        return (measure.meets(value, bar) ? "met" : "MISSED") + (alone && cases < FEW ? " (few)" : "");
    }

    private void rows(String title, String prefix, String head) {
        line("");
        line("## %s", title);
        line("");
        line("| %s | precision | recall | F1 | counts |", head);
        line("|---|---|---|---|---|");
        for (String name : score.counted(prefix)) {
            Tally tally = score.of(name);
            boolean few = tally.marked() < FEW;
            line(
                    "| %s | %s | %s | %s | %s |",
                    name.substring(prefix.length()),
                    few ? "few" : figure(tally.precision()),
                    few ? "few" : figure(tally.recall()),
                    few ? "few" : figure(tally.f1()),
                    tally);
        }
    }

    private void concepts() {
        line("");
        line("## Concepts read worst");
        line("");
        line("| concept | counts |");
        line("|---|---|");
        score.counted("slug:").stream()
                .filter(name -> score.of(name).wrong() + score.of(name).missed() > 0)
                .sorted(Comparator.comparing((String name) ->
                        -score.of(name).wrong() - score.of(name).missed()))
                .limit(WORST)
                .forEach(name -> line("| %s | %s |", name.substring("slug:".length()), score.of(name)));
    }

    /** The faults by the line they stand in, the lines with most first. */
    private void lines() {
        Map<String, List<Miss>> byLine = new LinkedHashMap<>();
        for (Miss miss : score.misses()) {
            byLine.computeIfAbsent(miss.narration() + ": " + miss.line(), key -> new ArrayList<>())
                    .add(miss);
        }
        line("");
        line("## Lines read worst");
        byLine.entrySet().stream()
                .sorted(Comparator.comparing(entry -> -entry.getValue().size()))
                .forEach(entry -> {
                    line("");
                    line("%s", entry.getKey());
                    entry.getValue().forEach(m -> line("- \"%s\" as `%s`: %s", m.words(), m.concept(), m.what()));
                });
    }

    private static String figure(double value) {
        return Double.isNaN(value) ? "-" : String.format(Locale.ROOT, "%.3f", value);
    }

    private void line(String format, Object... values) {
        out.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}

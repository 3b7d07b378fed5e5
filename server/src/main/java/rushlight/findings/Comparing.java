package rushlight.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rushlight.evidence.Difference;
import rushlight.evidence.Margin;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;

/** Turns the reps of a finding into the difference of two rows and its word. */
final class Comparing {
    /**
     * Two rows to be compared.
     *
     * @param parent slug of the finding whose reps they are, or empty
     * @param first the row expected to be larger
     * @param second the other
     * @param firstName its name
     * @param secondName the other's
     */
    private record Rows(String parent, Sample first, Sample second, String firstName, String secondName) {
        Difference difference() {
            return new Difference(first.rate(), second.rate());
        }

        Rows turned() {
            return new Rows(parent, /* first= */ second, /* second= */ first, secondName, firstName);
        }

        int smaller() {
            return Math.min(
                    first.opportunities().cardinality(), second.opportunities().cardinality());
        }
    }

    /**
     * The difference of a finding: over its own reps, or over those of each parent that stands at watch or worse. Of several
     * the most telling one is shown.
     *
     * @param samples the reps to look at, by the slug of the parent; an empty slug for the finding's own
     */
    Measuring.Measured compare(Finding finding, Counts counts, Map<String, Sample> samples) {
        Margin margin = new Margin(
                finding.standard().line().orElse(0), finding.standard().minimum());
        List<Rows> all = new ArrayList<>();
        samples.forEach((parent, sample) -> finding.counting().pairs().forEach(pair -> {
            Rows rows = new Rows(
                    parent,
                    sample.within(counts.fitting(pair.first())),
                    sample.within(counts.fitting(pair.second())),
                    pair.firstName(),
                    pair.secondName());
            boolean turn =
                    finding.standard().side().isEmpty() && rows.difference().observed() < 0;
            all.add(turn ? rows.turned() : rows);
        }));
        Rows best = all.stream()
                .max(Comparator.<Rows>comparingInt(rows -> Math.min(rows.smaller(), margin.enough()))
                        .thenComparingDouble(rows -> reach(rows.difference(), margin)))
                .orElse(new Rows("", Sample.NONE, Sample.NONE, "", ""));
        Outcome outcome = outcome(best, margin, counts);
        Sample both = best.first.or(best.second);
        Outcome judged = counts.hasTapeFor(finding.counting()) ? outcome : outcome.notEnough();
        return new Measuring.Measured(finding.standard().atMostWatch() ? judged.atMostWatch() : judged, both);
    }

    /** How many standard errors the difference lies over the margin: good enough to choose which one to look at. */
    private static double reach(Difference difference, Margin margin) {
        double p = (difference.first().events() + 0.5) / (difference.first().opportunities() + 1);
        double q = (difference.second().events() + 0.5) / (difference.second().opportunities() + 1);
        double spread = p * (1 - p) / (difference.first().opportunities() + 2)
                + q * (1 - q) / (difference.second().opportunities() + 2);
        return (p - q - margin.value()) / Math.sqrt(spread);
    }

    private static Outcome outcome(Rows rows, Margin margin, Counts counts) {
        Difference difference = rows.difference();
        Rate both = difference.first().plus(difference.second());
        if (rows.smaller() < margin.enough()) {
            return outcome(rows, both, Verdict.NOT_ENOUGH_TAPE, OptionalDouble.empty(), false);
        }
        double probability = margin.probability(difference);
        Verdict alone = margin.verdict(difference);
        Verdict word = alone.settled() ? margin.verdict(byGame(rows, counts)) : alone;
        return outcome(rows, both, word, OptionalDouble.of(probability), word != alone);
    }

    private static List<Difference> byGame(Rows rows, Counts counts) {
        return counts.games().stream()
                .map(game -> new Difference(
                        rows.first.within(game.reps()).rate(),
                        rows.second.within(game.reps()).rate()))
                .toList();
    }

    private static Outcome outcome(
            Rows rows, Rate both, Verdict word, OptionalDouble probability, boolean needsAnotherGame) {
        Difference difference = rows.difference();
        boolean known = rows.smaller() > 0;
        return new Outcome(
                word,
                both,
                known ? OptionalDouble.of(difference.observed()) : OptionalDouble.empty(),
                known ? Optional.of(difference.newcombe(Rate.SHOWN)) : Optional.empty(),
                probability,
                OptionalInt.empty(),
                needsAnotherGame,
                rows.firstName.isEmpty()
                        ? List.of()
                        : List.of(
                                new Outcome.Row(rows.firstName, difference.first()),
                                new Outcome.Row(rows.secondName, difference.second())),
                rows.parent.isEmpty() ? Optional.empty() : Optional.of(rows.parent));
    }
}

package rushlight.findings;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rushlight.evidence.Line;
import rushlight.evidence.Rate;
import rushlight.evidence.Remembered;
import rushlight.evidence.Tally;
import rushlight.evidence.Verdict;
import rushlight.situation.TapedGame;

/** Turns the reps of a finding into a count and its word: rates, shares and counts of rare events. */
final class Measuring {
    private final Remembered remembered;

    Measuring(Remembered remembered) {
        this.remembered = remembered;
    }

    /**
     * A count with the reps behind it.
     *
     * @param outcome what it came to
     * @param sample the reps it counted
     */
    record Measured(Outcome outcome, Sample sample) {}

    /** The count of a finding over reps that were chosen before. */
    Measured measure(Finding finding, Counts counts, Sample sample) {
        Measured raw = finding.counting()
                .tally()
                .map(tally -> tallied(counts, sample, tally))
                .orElseGet(() -> finding.counting()
                        .split()
                        .map(split -> split(finding, counts, sample, split))
                        .orElseGet(() -> judged(finding, counts, sample, List.of())));
        Outcome outcome = counts.hasTapeFor(finding.counting()) ? raw.outcome : raw.outcome.notEnough();
        return new Measured(finding.standard().atMostWatch() ? outcome.atMostWatch() : outcome, raw.sample);
    }

    private Measured tallied(Counts counts, Sample sample, Tally tally) {
        Sample latest = sample.within(Sample.latest(sample.opportunities(), tally.within()));
        int gamesWithEvent = 0;
        for (TapedGame game : counts.games()) {
            gamesWithEvent += latest.events().intersects(game.reps()) ? 1 : 0;
        }
        Rate rate = latest.rate();
        return new Measured(
                outcome(rate, tally.verdict(rate, gamesWithEvent), OptionalDouble.empty(), List.of()), latest);
    }

    private Measured split(Finding finding, Counts counts, Sample sample, Counting.Split split) {
        NavigableMap<String, BitSet> rows = counts.rows(split, sample.opportunities());
        List<Outcome.Row> shown = rows.entrySet().stream()
                .map(row -> new Outcome.Row(
                        row.getKey(), sample.within(row.getValue()).rate()))
                .sorted(Comparator.comparing(row -> -row.rate().opportunities()))
                .toList();
        Optional<String> chosen = row(split.row(), counts, shown);
        BitSet reps = chosen.map(rows::get).map(BitSet.class::cast).orElseGet(BitSet::new);
        Sample counted = switch (split.row()) {
            case PRIMARY -> sample.within(reps);
            case LARGEST -> new Sample(sample.opportunities(), Sample.and(sample.events(), reps));
            case OTHERS -> sample.within(Sample.without(sample.opportunities(), reps));
        };
        Measured measured = judged(finding, counts, counted, shown);
        boolean held = split.check().isPresent()
                && chosen.isPresent()
                && holdsBack(split, split.check().orElseThrow(), chosen.orElseThrow(), rows, counts, sample);
        return held ? new Measured(measured.outcome.atMostWatch(), counted) : measured;
    }

    private static Optional<String> row(Counting.Row row, Counts counts, List<Outcome.Row> shown) {
        return switch (row) {
            case PRIMARY -> counts.primary().primary().map(Primary::move);
            case LARGEST ->
                shown.stream()
                        .max(Comparator.comparingInt(one -> one.rate().events()))
                        .map(Outcome.Row::value);
            case OTHERS -> shown.stream().findFirst().map(Outcome.Row::value);
        };
    }

    /**
     * For the largest row: another row has its share and a rep of the kind asked for. For the rest: the main row has not its
     * share of such reps.
     */
    private static boolean holdsBack(
            Counting.Split split,
            Counting.Check check,
            String chosen,
            Map<String, BitSet> rows,
            Counts counts,
            Sample sample) {
        BitSet wanted = counts.fitting(check.of());
        if (split.row() == Counting.Row.OTHERS) {
            BitSet main = rows.getOrDefault(chosen, new BitSet());
            return Sample.and(main, wanted).cardinality() < check.share() * main.cardinality();
        }
        int all = sample.opportunities().cardinality();
        return rows.entrySet().stream()
                .filter(row -> !row.getKey().equals(chosen))
                .anyMatch(row -> Sample.and(sample.events(), row.getValue()).cardinality() >= check.share() * all
                        && row.getValue().intersects(wanted));
    }

    private Measured judged(Finding finding, Counts counts, Sample sample, List<Outcome.Row> rows) {
        Rate rate = sample.rate();
        Standard standard = finding.standard();
        Optional<Line> held = standard.held();
        if (held.isEmpty()) {
            int enough = standard.enough();
            Verdict word = rate.opportunities() < enough ? Verdict.NOT_ENOUGH_TAPE : Verdict.WATCH;
            return new Measured(outcome(rate, word, OptionalDouble.empty(), rows), sample);
        }
        Line line = held.get();
        Verdict alone = line.verdict(rate);
        Verdict word = alone.settled() ? line.verdict(sample.byGame(counts.games())) : alone;
        return new Measured(
                new Outcome(
                        word,
                        rate,
                        rate.share(),
                        Optional.of(remembered.shown(rate)),
                        OptionalDouble.of(line.probability(rate)),
                        remembered.moreNeeded(rate, line),
                        word != alone,
                        rows,
                        Optional.empty()),
                sample);
    }

    private Outcome outcome(Rate rate, Verdict word, OptionalDouble probability, List<Outcome.Row> rows) {
        return new Outcome(
                word,
                rate,
                rate.share(),
                Optional.of(remembered.shown(rate)),
                probability,
                OptionalInt.empty(),
                false,
                rows,
                Optional.empty());
    }
}

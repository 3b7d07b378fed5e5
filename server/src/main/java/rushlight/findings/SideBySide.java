package rushlight.findings;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import rushlight.evidence.BenjaminiHochberg;
import rushlight.evidence.Difference;
import rushlight.evidence.Fourfold;
import rushlight.evidence.Interval;
import rushlight.evidence.Rate;

/**
 * A few prospects held against each other, finding by finding: each two of them by the difference of their rates with its likely
 * range, and by Fisher's mid-p, adjusted for all the comparisons that were made.
 *
 * @param names theirs, in the order asked for
 * @param rows a finding each, in order of the slugs, of what all were judged by
 * @param comparisons how many differences were tested
 */
public record SideBySide(List<String> names, List<Row> rows, int comparisons) {
    /** What the tape says of two rates. */
    public enum Standing {
        /** They differ, and among all that are so called at most one in ten is expected to be luck. */
        APART,
        /** They would differ if nothing else had been compared. */
        LEANING,
        /** The tape cannot tell them apart, which does not make them equal. */
        NOT_TOLD_APART,
        /** One of them has fewer chances than the finding wants. */
        NOT_ENOUGH_TAPE,
        /** It is no rate that two men could share; never the standing of two of them. */
        NOT_COMPARED;

        /** The word in JSON. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * One finding.
     *
     * @param judged theirs, in the order of the names
     * @param gaps each two of them; none where it is no rate that is compared
     * @param whyNot their counts, and why they are not compared; empty where they are
     */
    public record Row(Finding finding, List<Judged> judged, List<Gap> gaps, Optional<String> whyNot) {
        public Row {
            judged = List.copyOf(judged);
            gaps = List.copyOf(gaps);
        }

        /** What the tape tells best of any two of them. */
        public Standing standing() {
            return gaps.stream().map(Gap::standing).min(Enum::compareTo).orElse(Standing.NOT_COMPARED);
        }

        /** The one of theirs that says most. */
        public Judged mostTelling() {
            return judged.stream().min(Judged.mostTellingFirst()).orElseThrow();
        }
    }

    /**
     * Two of them.
     *
     * @param first place of the one with the larger rate, from 0
     * @param second place of the other
     * @param difference of the two
     * @param likely its range of 90 %, after Newcombe
     * @param p two-sided, 0 to 1; 1 where it was not tested
     * @param adjusted p for all comparisons together
     * @param sentence what a person reads
     */
    public record Gap(
            int first,
            int second,
            Difference difference,
            Interval likely,
            double p,
            double adjusted,
            Standing standing,
            String sentence) {
        /** Whether both have chances enough to be compared. */
        public boolean isTested() {
            return standing != Standing.NOT_ENOUGH_TAPE;
        }
    }

    public SideBySide {
        names = List.copyOf(names);
        rows = List.copyOf(rows);
    }

    /** Two prospects or more. */
    public static SideBySide of(List<Assessment> all) {
        List<String> names = all.stream().map(one -> one.prospect().name()).toList();
        List<Row> rows = new ArrayList<>();
        for (Judged first : all.get(0).findings()) {
            List<Judged> judged = all.stream()
                    .flatMap(one -> one.finding(first.finding().slug()).stream())
                    .toList();
            if (judged.size() == all.size()) {
                rows.add(new Row(
                        first.finding(),
                        judged,
                        gaps(first.finding(), judged),
                        SideBySideWords.whyNot(first.finding(), names, judged)));
            }
        }
        List<Double> ps = rows.stream()
                .flatMap(row -> row.gaps().stream())
                .filter(Gap::isTested)
                .map(Gap::p)
                .toList();
        Iterator<Double> adjusted = BenjaminiHochberg.adjusted(ps).iterator();
        List<Row> told = new ArrayList<>();
        for (Row row : rows) {
            List<Gap> gaps = new ArrayList<>();
            for (Gap gap : row.gaps()) {
                gaps.add(told(row, gap, names, gap.isTested() ? adjusted.next() : 1.0));
            }
            told.add(new Row(row.finding(), row.judged(), gaps, row.whyNot()));
        }
        return new SideBySide(names, told, ps.size());
    }

    /** How many of the comparisons were expected to look like a difference by luck alone, had they been looked at one by one. */
    public long byLuck() {
        return Math.round(comparisons * BenjaminiHochberg.ALLOWED);
    }

    private static List<Gap> gaps(Finding finding, List<Judged> judged) {
        if (finding.measure() != Measure.RATE) {
            return List.of();
        }
        int enough = finding.standard().enough();
        List<Gap> gaps = new ArrayList<>();
        for (int i = 0; i < judged.size(); i++) {
            for (int j = i + 1; j < judged.size(); j++) {
                Difference found = new Difference(
                        judged.get(i).outcome().rate(), judged.get(j).outcome().rate());
                boolean turn = found.observed() < 0;
                Difference difference = turn ? found.turned() : found;
                boolean thin = IntStream.of(
                                difference.first().opportunities(),
                                difference.second().opportunities())
                        .anyMatch(n -> n < enough);
                double p = thin ? 1 : new Fourfold(difference.first(), difference.second()).midP();
                gaps.add(new Gap(
                        turn ? j : i,
                        turn ? i : j,
                        difference,
                        difference.newcombe(Rate.SHOWN),
                        p,
                        1,
                        thin ? Standing.NOT_ENOUGH_TAPE : Standing.NOT_TOLD_APART,
                        ""));
            }
        }
        return gaps;
    }

    private static Gap told(Row row, Gap gap, List<String> names, double adjusted) {
        Standing standing = !gap.isTested()
                ? Standing.NOT_ENOUGH_TAPE
                : adjusted <= BenjaminiHochberg.ALLOWED
                        ? Standing.APART
                        : gap.p() <= BenjaminiHochberg.ALLOWED ? Standing.LEANING : Standing.NOT_TOLD_APART;
        String counts = SideBySideWords.counted(
                        names.get(gap.first()), row.judged().get(gap.first())) + ", "
                + SideBySideWords.counted(names.get(gap.second()), row.judged().get(gap.second()));
        String sentence = SideBySideWords.say(row.finding(), counts, gap.difference(), gap.likely(), standing);
        return new Gap(
                gap.first(), gap.second(), gap.difference(), gap.likely(), gap.p(), adjusted, standing, sentence);
    }
}

package rushlight.web;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import rushlight.archive.Book;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.Profile;
import rushlight.findings.SideBySide;
import rushlight.index.Footage;

/**
 * A few prospects side by side.
 *
 * @param prospects who, in the order asked for
 * @param comparisons how many differences were tested together
 * @param findings what any of them has film of: what sets them apart first, then what matters more
 * @param moves their opening moves, most used first
 */
public record CompareAnswer(List<Who> prospects, int comparisons, List<Row> findings, List<MoveRow> moves) {
    /** One of them. */
    public record Who(@JsonUnwrapped ProspectBrief brief, Optional<AssessAnswer.Main> primary) {}

    /**
     * One finding.
     *
     * @param cells in the order of the prospects
     * @param apart whether the tape tells two of them apart
     * @param standing what it tells best of any two of them
     * @param differences each two of them; none where it is no rate that is compared
     * @param whyNot their counts, and why they are not compared; empty where they are
     */
    public record Row(
            String finding,
            String polarity,
            String severity,
            List<FindingCell> cells,
            boolean apart,
            String standing,
            List<DifferenceCell> differences,
            Optional<String> whyNot) {}

    /**
     * Two of them.
     *
     * @param more id of the one with the larger rate
     * @param less id of the other
     * @param difference of the two rates, 0 to 1; null where one has no chance
     * @param low end of its likely range
     * @param high end of its likely range
     * @param p two-sided mid-p of Fisher's test; null where it was not tested
     * @param adjusted the same for all comparisons together (Benjamini and Hochberg)
     */
    public record DifferenceCell(
            String more,
            String less,
            OptionalDouble difference,
            OptionalDouble low,
            OptionalDouble high,
            OptionalDouble p,
            OptionalDouble adjusted,
            String standing,
            String sentence) {}

    /** One opening move. */
    public record MoveRow(String move, List<MoveCell> cells) {}

    /** One of them with that move. */
    public record MoveCell(int reps, double share, int won) {}

    /** One of them before they are laid side by side. */
    public record Side(Assessment assessment, Profile profile) {
        /** The prospect of this id by what a book makes of his film; empty where there is none of him. */
        public static Optional<Side> of(Book book, Footage footage, String id) {
            return footage.tape(id).map(tape -> new Side(book.assess(tape), book.profile(tape, footage.reps(id))));
        }
    }

    /** Lays them side by side. */
    public static CompareAnswer of(List<Side> sides) {
        List<Assessment> all = sides.stream().map(Side::assessment).toList();
        SideBySide beside = SideBySide.of(all);
        return new CompareAnswer(
                all.stream().map(CompareAnswer::who).toList(),
                beside.comparisons(),
                findings(beside, all),
                moves(sides));
    }

    private static Who who(Assessment one) {
        return new Who(ProspectBrief.of(one), one.primary().map(AssessAnswer::main));
    }

    private static List<Row> findings(SideBySide beside, List<Assessment> all) {
        return beside.rows().stream()
                .filter(row -> row.judged().stream()
                        .anyMatch(one -> one.outcome().rate().opportunities() > 0))
                .sorted(Comparator.comparing((SideBySide.Row row) -> row.standing() != SideBySide.Standing.APART)
                        .thenComparing(SideBySide.Row::mostTelling, Judged.mostTellingFirst()))
                .map(row -> row(row, all))
                .toList();
    }

    private static Row row(SideBySide.Row row, List<Assessment> all) {
        return new Row(
                row.finding().slug(),
                row.finding().polarity().slug(),
                row.finding().severity().slug(),
                row.judged().stream().map(FindingCell::of).toList(),
                row.standing() == SideBySide.Standing.APART,
                row.standing().slug(),
                row.gaps().stream().map(gap -> difference(gap, all)).toList(),
                row.whyNot());
    }

    private static DifferenceCell difference(SideBySide.Gap gap, List<Assessment> all) {
        boolean known = gap.difference().first().opportunities() > 0
                && gap.difference().second().opportunities() > 0;
        boolean tested = gap.isTested();
        return new DifferenceCell(
                all.get(gap.first()).prospect().id(),
                all.get(gap.second()).prospect().id(),
                only(known, gap.difference().observed()),
                only(known, gap.likely().low()),
                only(known, gap.likely().high()),
                only(tested, gap.p()),
                only(tested, gap.adjusted()),
                gap.standing().slug(),
                gap.sentence());
    }

    private static OptionalDouble only(boolean known, double value) {
        return known ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    private static List<MoveRow> moves(List<Side> sides) {
        TreeMap<String, Integer> all = new TreeMap<>();
        sides.forEach(side -> side.profile()
                .moves()
                .forEach(move -> all.merge(move.move(), move.ended().reps(), Integer::sum)));
        return all.entrySet().stream()
                .sorted(Comparator.comparing(entry -> -entry.getValue()))
                .map(entry -> new MoveRow(
                        entry.getKey(),
                        sides.stream().map(side -> cell(side, entry.getKey())).toList()))
                .toList();
    }

    private static MoveCell cell(Side side, String move) {
        return side.profile().moves().stream()
                .filter(one -> one.move().equals(move))
                .map(one -> new MoveCell(
                        one.ended().reps(), one.share(), one.ended().won()))
                .findFirst()
                .orElse(new MoveCell(0, 0, 0));
    }
}

package rushlight.web;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.Profile;

/**
 * A few prospects side by side.
 *
 * @param prospects who, in the order asked for
 * @param findings what any of them has film of: what sets them apart first, then what matters more
 * @param moves their opening moves, most used first
 */
public record CompareAnswer(List<Who> prospects, List<Row> findings, List<MoveRow> moves) {
    /** One of them. */
    public record Who(@JsonUnwrapped ProspectBrief brief, Optional<AssessAnswer.Main> primary) {}

    /**
     * One finding.
     *
     * @param cells in the order of the prospects
     * @param apart whether the likely ranges of two of them do not touch
     */
    public record Row(String finding, String polarity, String severity, List<FindingCell> cells, boolean apart) {}

    /** One opening move. */
    public record MoveRow(String move, List<MoveCell> cells) {}

    /** One of them with that move. */
    public record MoveCell(int reps, double share, int won) {}

    /** One of them before they are laid side by side. */
    public record Side(Assessment assessment, Profile profile) {}

    /** Lays them side by side. */
    public static CompareAnswer of(List<Side> sides) {
        return new CompareAnswer(
                sides.stream().map(side -> who(side.assessment())).toList(), findings(sides), moves(sides));
    }

    private static Who who(Assessment one) {
        return new Who(ProspectBrief.of(one), one.primary().map(AssessAnswer::main));
    }

    private static List<Row> findings(List<Side> sides) {
        record Told(Row row, Judged most) {}
        List<Told> told = new ArrayList<>();
        for (Judged first : sides.get(0).assessment().findings()) {
            String slug = first.finding().slug();
            List<Judged> all = sides.stream()
                    .flatMap(side -> side.assessment().finding(slug).stream())
                    .toList();
            boolean seen = all.stream().anyMatch(j -> j.outcome().rate().opportunities() > 0);
            if (seen && all.size() == sides.size()) {
                List<FindingCell> cells = all.stream().map(FindingCell::of).toList();
                boolean apart = cells.stream().anyMatch(a -> cells.stream().anyMatch(a::isApartFrom));
                Row row = new Row(
                        slug,
                        first.finding().polarity().slug(),
                        first.finding().severity().slug(),
                        cells,
                        apart);
                told.add(new Told(
                        row, all.stream().min(Judged.mostTellingFirst()).orElse(first)));
            }
        }
        return told.stream()
                .sorted(Comparator.<Told, Boolean>comparing(one -> !one.row().apart())
                        .thenComparing(Told::most, Judged.mostTellingFirst()))
                .map(Told::row)
                .toList();
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

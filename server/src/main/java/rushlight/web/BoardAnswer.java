package rushlight.web;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.Polarity;

/**
 * Everybody, with the findings somebody chose.
 *
 * @param findings the findings that make the columns
 * @param prospects in order of their ids
 */
public record BoardAnswer(List<String> findings, List<Row> prospects) {
    /**
     * One prospect.
     *
     * @param brief who he is; his fields stand in the row itself
     * @param verdicts how many of what is held against him stands at each word
     * @param cells the chosen findings
     */
    public record Row(
            @JsonUnwrapped ProspectBrief brief,
            Optional<AssessAnswer.Main> primary,
            Map<String, Long> verdicts,
            Map<String, FindingCell> cells) {}

    /** The board over these assessments. */
    public static BoardAnswer of(List<String> findings, List<Assessment> assessments) {
        return new BoardAnswer(
                findings, assessments.stream().map(one -> row(findings, one)).toList());
    }

    private static Row row(List<String> findings, Assessment one) {
        Map<String, FindingCell> cells = new TreeMap<>();
        findings.forEach(slug -> one.finding(slug).ifPresent(judged -> cells.put(slug, FindingCell.of(judged))));
        return new Row(
                ProspectBrief.of(one),
                one.primary().map(AssessAnswer::main),
                one.findings().stream()
                        .filter(judged -> isHeldAgainstHim(judged.finding().polarity()))
                        .map(Judged::verdict)
                        .collect(Collectors.groupingBy(v -> v.slug(), TreeMap::new, Collectors.counting())),
                cells);
    }

    private static boolean isHeldAgainstHim(Polarity polarity) {
        return polarity == Polarity.GAP;
    }
}

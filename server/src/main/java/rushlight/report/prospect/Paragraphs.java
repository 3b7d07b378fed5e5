package rushlight.report.prospect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import rushlight.evidence.Interval;
import rushlight.evidence.Verdict;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.Polarity;
import rushlight.findings.Primary;
import rushlight.knowledge.Taxonomy;

/** The paragraphs of a report: the tape and its limits, what is open, who read it, the lines findings are held against. */
final class Paragraphs {
    private static final int MOST = 8;

    private final Material material;
    private final List<Judged> inOrder;
    private final Taxonomy taxonomy;

    Paragraphs(Material material, List<Judged> inOrder, Taxonomy taxonomy) {
        this.material = material;
        this.inOrder = inOrder;
        this.taxonomy = taxonomy;
    }

    /** The tape and his main rush. */
    List<String> lead() {
        Assessment assessment = material.assessment();
        List<String> lead = new ArrayList<>();
        lead.add(count(assessment.reps(), "rep") + ", " + count(assessment.games(), "game") + ".");
        assessment.primary().ifPresent(primary -> lead.add(main(primary)));
        if (assessment.twoMoves().size() == 2) {
            lead.add("Two moves: " + taxonomy.shown(assessment.twoMoves().get(0)) + " and "
                    + taxonomy.shown(assessment.twoMoves().get(1)) + ", neither clearly ahead.");
        }
        String notes = assessment.prospect().notes();
        if (!notes.isEmpty()) {
            lead.add(notes.endsWith(".") ? notes : notes + ".");
        }
        return lead;
    }

    private String main(Primary primary) {
        Interval shown = primary.shown();
        return "Main rush: " + taxonomy.shown(primary.move()) + ", "
                + primary.rate().events() + " of " + primary.rate().opportunities() + " first moves (likely range "
                + Math.round(100 * shown.low()) + " to " + Math.round(100 * shown.high()) + " %).";
    }

    /** The evaluator's words; where he wrote none, what the counts say most, as what it is. */
    List<String> summary() {
        Written written = material.written();
        if (written.summary().isBlank()) {
            List<String> suggested = Suggested.sentences(material.assessment(), taxonomy);
            return List.of("No evaluator has written a summary. What the counts say most: "
                    + (suggested.isEmpty() ? "nothing yet." : String.join(" ", suggested)));
        }
        List<String> paragraphs = new ArrayList<>(written.summary()
                .lines()
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList());
        String day = written.day().map(when -> ", " + when).orElse("");
        if (!written.author().isEmpty()) {
            paragraphs.add("Written by " + written.author() + day + ".");
        }
        return paragraphs;
    }

    List<String> open() {
        List<String> paragraphs = new ArrayList<>();
        paragraphs.add("Still open: " + listed(Sorts::isOpen) + ".");
        paragraphs.add("Cleared, no such problem: "
                + listed(
                        one -> one.verdict() == Verdict.CLEARED && one.finding().polarity() == Polarity.GAP) + ".");
        String note = listed(Sorts::isNote);
        if (!note.equals(NONE)) {
            paragraphs.add("Worth knowing: " + note + ".");
        }
        return paragraphs;
    }

    private static final String NONE = "nothing";

    private String listed(Predicate<Judged> which) {
        List<Judged> all = inOrder.stream().filter(which).toList();
        if (all.isEmpty()) {
            return NONE;
        }
        String some = all.stream()
                .limit(MOST)
                .map(one -> one.finding().shown() + " (" + one.outcome().rate().events() + " of "
                        + one.outcome().rate().opportunities() + ")")
                .collect(Collectors.joining(", "));
        return some + (all.size() > MOST ? ", and " + (all.size() - MOST) + " more on the screen" : "");
    }

    private static String leftOut(Assessment.LeftOut left) {
        List<String> some = new ArrayList<>();
        if (left.lowConfidence() > 0) {
            some.add(count(left.lowConfidence(), "rep") + " read with low confidence");
        }
        if (left.drops() > 0) {
            some.add(count(left.drops(), "drop"));
        }
        return some.isEmpty() ? "" : "; left out " + String.join(" and ", some);
    }

    /** What the tape cannot say. */
    List<String> limits() {
        Assessment assessment = material.assessment();
        List<Judged> thin = inOrder.stream()
                .filter(one -> one.verdict() == Verdict.NOT_ENOUGH_TAPE)
                .toList();
        long unseen = thin.stream()
                .filter(one -> one.outcome().rate().opportunities() == 0)
                .count();
        List<String> out = new ArrayList<>();
        Assessment.LeftOut left = assessment.leftOut();
        out.add("Counted: " + count(assessment.reps() - left.lowConfidence() - left.drops(), "rep") + " of "
                + assessment.reps() + leftOut(left) + ". A finding needs chances: " + thin.size() + " of "
                + assessment.findings().size() + " have too few to judge, " + unseen + " of them none at all.");
        String few = listed(one ->
                one.verdict() == Verdict.NOT_ENOUGH_TAPE && one.outcome().rate().opportunities() > 0);
        if (!few.equals(NONE)) {
            out.add("Too few chances: " + few + ".");
        }
        return out;
    }

    /** Who read which games. */
    List<String> readers() {
        Map<String, List<String>> byReader = new LinkedHashMap<>();
        material.readers()
                .forEach(reader -> byReader.computeIfAbsent(reader.evaluator(), r -> new ArrayList<>())
                        .add(reader.game() + reader.day().map(day -> ", " + day).orElse("") + " ("
                                + count(reader.readings(), "rep") + ")"));
        return byReader.entrySet().stream()
                .map(entry -> entry.getKey() + ": " + String.join("; ", entry.getValue()) + ".")
                .toList();
    }

    /** What the findings that stand are held against. */
    List<String> lines() {
        String lines = inOrder.stream()
                .filter(one -> Sorts.isGap(one) || Sorts.isStrength(one))
                .filter(one -> one.finding().standard().line().isPresent())
                .map(Paragraphs::line)
                .collect(Collectors.joining(", "));
        String about = "The lines are proposals of this house and can be set by its users; a likely range is the 90 %"
                + " Jeffreys interval. In each small drawing, from 0 to 100 %, the bar is that range, the dot the rate,"
                + " the dashed mark the line.";
        return lines.isEmpty() ? List.of(about) : List.of(about + " Here: " + lines + ".");
    }

    private static String line(Judged one) {
        String house = one.finding().standard().isYours()
                ? " (yours; house line "
                        + percent(one.finding().standard().houseLine().orElse(0)) + ")"
                : "";
        return one.finding().shown() + " "
                + percent(one.finding().standard().line().orElse(0)) + house;
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " %";
    }

    private static String count(int count, String what) {
        return count + " " + what + (count == 1 ? "" : "s");
    }
}

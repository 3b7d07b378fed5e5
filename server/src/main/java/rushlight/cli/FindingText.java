package rushlight.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rushlight.evidence.Verdict;
import rushlight.findings.Evidence;
import rushlight.findings.Judged;
import rushlight.findings.PeerRate;
import rushlight.findings.Polarity;
import rushlight.knowledge.Taxonomy;
import rushlight.report.VerdictMarks;

/** One finding as a coach reads it: the claim, why it matters, what hangs on his duty, what to train, which reps. */
final class FindingText {
    private static final String INDENT = "      ";

    private final Taxonomy taxonomy;
    private final Depth depth;
    private final Map<String, PeerRate> peers;

    /**
     * @param peers his rates among those of his peers, by finding; what is not in it is not told
     */
    FindingText(Taxonomy taxonomy, Depth depth, Map<String, PeerRate> peers) {
        this.taxonomy = taxonomy;
        this.depth = depth;
        this.peers = peers;
    }

    static boolean stands(Verdict verdict) {
        return verdict == Verdict.CONFIRMED || verdict == Verdict.LIKELY;
    }

    static boolean hangsOnDuty(Judged one) {
        return !one.conditional().isEmpty();
    }

    /** Writes the claim and, where {@code inFull}, what stands behind it. */
    void write(Page page, Judged one, boolean inFull) {
        String head = VerdictMarks.of(one.verdict()) + " " + VerdictMarks.word(one.verdict());
        String weight =
                one.finding().safety() ? "SAFETY" : one.finding().severity().slug();
        String label = capital(one.finding().shown());
        String line = "  " + head + " ".repeat(Math.max(1, 20 - head.length())) + label;
        boolean gap = one.finding().polarity() == Polarity.GAP;
        page.line(gap ? line + " ".repeat(Math.max(2, Page.WIDTH - line.length() - weight.length())) + weight : line);
        page.wrapped(INDENT, INDENT, one.sentence());
        Optional.ofNullable(peers.get(one.finding().slug()))
                .ifPresent(rate -> page.wrapped(INDENT + "Beside his peers: ", INDENT, rate.sentence()));
        if (inFull) {
            detail(page, one);
        }
    }

    private void detail(Page page, Judged one) {
        if (depth != Depth.SHORT && !one.finding().advice().because().isEmpty()) {
            page.wrapped(
                    INDENT + "Why it matters: ", INDENT, one.finding().advice().because());
        }
        duties(page, one);
        if (!one.mixedWith().isEmpty()) {
            page.wrapped(INDENT + "Mixed: ", INDENT, "the same reps also say \"" + labels(one.mixedWith()) + "\".");
        }
        if (!one.rootedIn().isEmpty()) {
            page.wrapped(INDENT + "May come from: ", INDENT, labels(one.rootedIn()) + ".");
        }
        if (depth != Depth.SHORT) {
            one.seenAlike().ifPresent(alike -> page.wrapped(INDENT, INDENT, alike.sentence()));
            train(page, one);
        }
        reps(page, one.evidence().reps());
    }

    private void duties(Page page, Judged one) {
        if (!hangsOnDuty(one)) {
            return;
        }
        Map<String, List<String>> byAnswer = new LinkedHashMap<>();
        for (Judged.Conditional c : one.conditional()) {
            String duty = c.assignment().equals("another") ? "another duty" : taxonomy.shown(c.assignment());
            String answer =
                    c.rate().events() + " of " + c.rate().opportunities() + ", " + VerdictMarks.word(c.verdict());
            byAnswer.computeIfAbsent(answer, a -> new ArrayList<>()).add(duty);
        }
        byAnswer.forEach((answer, duties) ->
                page.wrapped(INDENT + "If " + String.join(" or ", duties) + ": ", INDENT + "  ", answer + "."));
        one.finding()
                .advice()
                .question()
                .ifPresent(question -> page.wrapped(INDENT + "Ask his coach: ", INDENT + "  ", question));
    }

    private void train(Page page, Judged one) {
        boolean gap = one.finding().polarity() == Polarity.GAP && stands(one.verdict());
        if (gap && !one.finding().advice().trainFirst().isEmpty()) {
            String drill = one.finding()
                    .advice()
                    .starterDrill()
                    .map(d -> "; begin with " + taxonomy.shown(d))
                    .orElse("");
            page.wrapped(
                    INDENT + "Train first: ",
                    INDENT,
                    labels(one.finding().advice().trainFirst()) + drill + ".");
        }
        one.finding()
                .advice()
                .ruleOutFirst()
                .filter(text -> gap)
                .ifPresent(text -> page.wrapped(INDENT + "Rule out first: ", INDENT, text));
    }

    private void reps(Page page, List<Evidence.Rep> reps) {
        RepsText.list(
                page,
                INDENT,
                reps.stream()
                        .filter(Evidence.Rep::event)
                        .map(Evidence.Rep::sighting)
                        .toList(),
                depth.mostReps());
    }

    private String labels(List<String> slugs) {
        return slugs.stream().map(taxonomy::shown).collect(Collectors.joining(", "));
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}

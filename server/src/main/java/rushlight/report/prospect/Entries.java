package rushlight.report.prospect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rushlight.evidence.Interval;
import rushlight.evidence.Rate;
import rushlight.figure.Drawing;
import rushlight.figure.Heading;
import rushlight.findings.Finding;
import rushlight.findings.Judged;
import rushlight.findings.Measure;
import rushlight.findings.Polarity;
import rushlight.knowledge.Taxonomy;
import rushlight.report.VerdictMarks;

/** Findings as they stand in a report. */
final class Entries {
    private final Taxonomy taxonomy;

    Entries(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    ReportPage.Entry of(Judged one) {
        String safety = one.finding().safety() ? "Safety, " : "";
        String word = VerdictMarks.word(one.verdict());
        return new ReportPage.Entry(
                VerdictMarks.of(one.verdict()),
                capital(safety + word) + ": " + one.finding().shown(),
                one.sentence(),
                strip(one),
                notes(one),
                Places.of(one));
    }

    private static Optional<Drawing> strip(Judged one) {
        Optional<Interval> range = one.outcome().shown();
        Rate rate = one.outcome().rate();
        boolean isRate =
                one.finding().measure() == Measure.RATE || one.finding().measure() == Measure.SHARE;
        if (!isRate || range.isEmpty() || rate.opportunities() == 0) {
            return Optional.empty();
        }
        Heading heading = new Heading(
                "strip-" + one.finding().slug(),
                capital(one.finding().shown()),
                rate.events() + " of " + rate.opportunities() + ", likely range "
                        + Math.round(100 * range.get().low()) + " to "
                        + Math.round(100 * range.get().high()) + " %"
                        + one.finding().standard().line().stream()
                                .mapToObj(line -> ", line " + Math.round(100 * line) + " %")
                                .findFirst()
                                .orElse("")
                        + ".");
        return Optional.of(new rushlight.figure.Interval(
                        heading,
                        rate.events(),
                        rate.opportunities(),
                        range.get().low(),
                        range.get().high(),
                        one.finding().standard().line())
                .strip());
    }

    private List<String> notes(Judged one) {
        Finding.Advice advice = one.finding().advice();
        List<String> notes = new ArrayList<>();
        if (Sorts.hangsOnDuty(one)) {
            notes.addAll(duties(one));
            advice.question().ifPresent(question -> notes.add("Ask his coach: " + question));
        }
        if (!one.mixedWith().isEmpty()) {
            notes.add("Mixed: the same reps also say \u201c" + labels(one.mixedWith()) + "\u201d.");
        }
        if (!one.rootedIn().isEmpty()) {
            notes.add("May come from: " + labels(one.rootedIn()) + ".");
        }
        boolean gap = one.finding().polarity() == Polarity.GAP && one.verdict().stands();
        if (gap && !advice.trainFirst().isEmpty()) {
            notes.add("Train first: " + labels(advice.trainFirst())
                    + advice.starterDrill()
                            .map(drill -> "; begin with " + taxonomy.shown(drill))
                            .orElse("")
                    + ".");
        }
        advice.ruleOutFirst().filter(text -> gap).ifPresent(text -> notes.add("Rule out first: " + text));
        return notes;
    }

    /** "If contain: 5 of 9, likely", duties with one answer together. */
    private List<String> duties(Judged one) {
        Map<String, List<String>> byAnswer = new LinkedHashMap<>();
        for (Judged.Conditional c : one.conditional()) {
            String duty = c.assignment().equals("another") ? "another duty" : taxonomy.shown(c.assignment());
            String answer =
                    c.rate().events() + " of " + c.rate().opportunities() + ", " + VerdictMarks.word(c.verdict());
            byAnswer.computeIfAbsent(answer, a -> new ArrayList<>()).add(duty);
        }
        return byAnswer.entrySet().stream()
                .map(entry -> "If " + String.join(" or ", entry.getValue()) + ": " + entry.getKey() + ".")
                .toList();
    }

    private String labels(List<String> slugs) {
        return slugs.stream().map(taxonomy::shown).collect(Collectors.joining(", "));
    }

    static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}

package rushlight.report.prospect;

import java.util.ArrayList;
import java.util.List;
import rushlight.evidence.Verdict;
import rushlight.film.Projection;
import rushlight.findings.Evidence;
import rushlight.findings.RoleFit;
import rushlight.findings.Shown;
import rushlight.knowledge.Taxonomy;
import rushlight.report.VerdictMarks;
import rushlight.situation.Sighting;

/** Jobs on a front as they stand in a report: what film shows of each, and what evaluators think he will be. */
final class RoleEntries {
    private final Taxonomy taxonomy;

    RoleEntries(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    /** One job held against his film, with the reps on which he did what it asks for. */
    ReportPage.Entry of(RoleFit fit) {
        return ReportPage.Entry.told(
                VerdictMarks.of(mark(fit.fit())),
                Entries.capital(fit.fit().words()) + ": " + fit.role().shown(),
                fit.summary(),
                Places.of(showing(fit)));
    }

    /** One evaluator's projection: his name, the day, and what he wrote. */
    ReportPage.Entry of(Material.Foreseen foreseen) {
        Projection said = foreseen.projection();
        List<String> lines = new ArrayList<>();
        add(lines, "Sees him as", said.role().isEmpty() ? "" : taxonomy.shown(said.role()));
        add(lines, "Readiness", said.readiness());
        add(lines, "Ceiling", said.ceiling());
        add(lines, "Floor", said.floor());
        add(lines, "Risk", said.risk());
        add(lines, Entries.capital(said.scale()), said.tier());
        add(lines, "In his words", said.words());
        return ReportPage.Entry.told(
                "",
                said.evaluator() + ", " + foreseen.day() + ": his own judgement, no part of any count",
                String.join(" ", lines),
                List.of());
    }

    private static void add(List<String> lines, String name, String text) {
        if (!text.isEmpty()) {
            String said = text.strip().replaceAll("\\s+", " ");
            lines.add(name + ": " + said + (said.matches(".*[.!?]") ? "" : "."));
        }
    }

    /** The same shapes as verdicts have, as on the screen; the word always stands beside it. */
    private static Verdict mark(Shown shown) {
        return switch (shown) {
            case SHOWN -> Verdict.CONFIRMED;
            case NOT_SHOWN -> Verdict.WATCH;
            case NO_TAPE -> Verdict.NOT_ENOUGH_TAPE;
        };
    }

    /** A rep for each thing that was seen, then the second ones, each rep once. */
    private static List<Sighting> showing(RoleFit fit) {
        List<List<Sighting>> byNeed = fit.required().stream()
                .filter(need -> !need.asked().without())
                .map(need -> need.judged().evidence().reps().stream()
                        .filter(Evidence.Rep::event)
                        .map(Evidence.Rep::sighting)
                        .toList())
                .toList();
        int most = byNeed.stream().mapToInt(List::size).max().orElse(0);
        List<Sighting> reps = new ArrayList<>();
        for (int i = 0; i < most; i++) {
            for (List<Sighting> one : byNeed) {
                if (i < one.size() && !reps.contains(one.get(i))) {
                    reps.add(one.get(i));
                }
            }
        }
        return reps;
    }
}

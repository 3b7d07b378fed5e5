package rushlight.web.http;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import rushlight.film.Game;
import rushlight.film.Reading;
import rushlight.film.csv.Cells;
import rushlight.findings.Assessment;
import rushlight.findings.Evidence;
import rushlight.findings.Finding;
import rushlight.index.IndexedRep;
import rushlight.knowledge.Taxonomy;
import rushlight.web.FindingRepsAnswer;
import rushlight.web.RepSight;

/** Leads from a finding back to the readings behind it. */
final class Evidences {
    private final Taxonomy taxonomy;

    Evidences(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    FindingRepsAnswer of(Finding finding, Assessment assessment, List<IndexedRep> tape, Map<String, Game> games) {
        List<FindingRepsAnswer.Rep> reps = assessment.counted(finding.slug()).stream()
                .flatMap(judged -> judged.evidence().reps().stream())
                .map(rep -> rep(rep, tape.get(rep.place()).reading(), games))
                .toList();
        return new FindingRepsAnswer(finding.slug(), reps);
    }

    private FindingRepsAnswer.Rep rep(Evidence.Rep rep, Reading reading, Map<String, Game> games) {
        String id = reading.rep().game();
        Game game = games.getOrDefault(id, new Game(id, id, Optional.empty(), "", ""));
        return new FindingRepsAnswer.Rep(
                rep.event(),
                RepSight.of(reading, game, taxonomy),
                Cells.exchange(reading),
                reading.one("note").orElse(""));
    }
}

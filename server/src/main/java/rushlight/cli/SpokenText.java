package rushlight.cli;

import java.util.List;
import rushlight.findings.Assessment;
import rushlight.findings.OpinionsBeside;
import rushlight.findings.Spoken;

/** What was said of a player, with what his reps say to it; a part of its own, since it is no evidence. */
final class SpokenText {
    private SpokenText() {}

    static void write(Page page, Assessment assessment, Spoken spoken) {
        List<Spoken.Said> answered = assessment.findings().stream()
                .flatMap(one -> spoken.to(one.finding().slug()).stream())
                .toList();
        if (!answered.isEmpty()) {
            page.blank().line("What was said of him (no part of the counts)");
            answered.forEach(said -> page.wrapped("  - ", "    ", said.sentence()));
        }
        if (!spoken.apart().isEmpty()) {
            page.blank().line("Said of him, and no finding answers it");
            spoken.apart().forEach(said -> page.wrapped("  - ", "    ", OpinionsBeside.quoted(said)));
        }
    }
}

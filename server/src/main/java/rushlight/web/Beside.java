package rushlight.web;

import java.util.List;
import java.util.Map;
import rushlight.archive.Opinions;
import rushlight.archive.Projections;
import rushlight.findings.Assessment;
import rushlight.findings.PeerRate;
import rushlight.findings.Peers;
import rushlight.findings.Spoken;

/**
 * What is told of a player beside what his reps say, and in no verdict: what people said and think of him, and how his rates look
 * among those of his peers.
 *
 * @param spoken what was said of him
 * @param projections what evaluators think he will be
 * @param peers his rates among those of his position group, by finding; empty where nobody asked
 */
public record Beside(Spoken spoken, List<ProjectionAnswer> projections, Map<String, PeerRate> peers) {
    /** Nobody said anything. */
    public static final Beside NOTHING = new Beside(Spoken.NOTHING, List.of(), Map.of());

    public Beside {
        projections = List.copyOf(projections);
        peers = Map.copyOf(peers);
    }

    /** What a data folder keeps of the player of an assessment. */
    public static Beside of(Assessment assessment, Opinions opinions, Projections projections) {
        return new Beside(
                opinions.beside(assessment),
                projections.of(assessment.prospect().id()).stream()
                        .map(ProjectionAnswer::of)
                        .toList(),
                Map.of());
    }

    /** The same with his rates among those of his peers. */
    public Beside with(Peers league, Assessment assessment) {
        return new Beside(spoken, projections, league.beside(assessment));
    }
}

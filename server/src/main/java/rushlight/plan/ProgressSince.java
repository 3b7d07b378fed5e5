package rushlight.plan;

import java.util.List;
import rushlight.film.Prospect;
import rushlight.findings.Judged;
import rushlight.situation.Since;

/**
 * What became of a prospect's gaps since a game.
 *
 * @param prospect who
 * @param since where his tape was cut
 * @param findings the gaps that stood then, and the strengths that slip, most telling first
 * @param fresh the gaps that stand on the games since alone and did not stand then
 * @param cautions what to keep in mind when reading it
 */
public record ProgressSince(
        Prospect prospect, Since since, List<Progress> findings, List<Judged> fresh, List<String> cautions) {
    public ProgressSince {
        findings = List.copyOf(findings);
        fresh = List.copyOf(fresh);
        cautions = List.copyOf(cautions);
    }
}

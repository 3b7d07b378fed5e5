package rushlight.web;

import java.util.List;

/**
 * What the logs show of a concept.
 *
 * @param concept its slug
 * @param facets where it was looked for
 * @param reps reps that have it or something narrower, those of low confidence left out
 * @param won how many of them he won
 * @param lost how many he lost
 * @param prospects by prospect, those with most reps first
 * @param examples a few of the reps
 */
public record FilmOfAnswer(
        String concept,
        List<String> facets,
        int reps,
        int won,
        int lost,
        List<His> prospects,
        List<RepSight> examples) {
    /** One prospect's part. */
    public record His(String id, String name, int reps, int won, int lost) {}
}

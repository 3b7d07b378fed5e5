package rushlight.agreement;

import java.util.List;

/**
 * Two evaluators held against each other over the games that both have read.
 *
 * @param first name of the first evaluator
 * @param second name of the second
 * @param games the games both have read, prospect by prospect
 * @param facets a column each, in the order of the header; those that neither filled are left out
 * @param differences the reps they read differently
 */
public record CrossCheck(
        String first,
        String second,
        List<MatchedGame> games,
        List<FacetAgreement> facets,
        List<Difference> differences) {
    public CrossCheck {
        games = List.copyOf(games);
        facets = List.copyOf(facets);
        differences = List.copyOf(differences);
    }

    /** Every rep both have read. */
    public List<Pair> pairs() {
        return games.stream().flatMap(game -> game.pairs().stream()).toList();
    }
}

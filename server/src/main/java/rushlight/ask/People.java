package rushlight.ask;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The names that a question may use, from the data folder at hand.
 *
 * @param prospects names by id
 * @param games names by id; an id is the slug of the name, with the date where one is given
 * @param opponents as the logs write them
 * @param levels as the logs write them
 */
public record People(
        Map<String, String> prospects, Map<String, String> games, Set<String> opponents, Set<String> levels) {
    /** Nobody: only the book is asked. */
    public static final People NOBODY = new People(Map.of(), Map.of(), Set.of(), Set.of());

    public People {
        prospects = Map.copyOf(prospects);
        games = Map.copyOf(games);
        opponents = Set.copyOf(opponents);
        levels = Set.copyOf(levels);
    }

    /** Every name, for completion. */
    public List<String> names() {
        return prospects.values().stream().sorted().toList();
    }
}

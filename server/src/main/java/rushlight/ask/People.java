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
 * @param teams the teams the prospects play for, as the list of prospects writes them
 * @param classYears as the list of prospects writes them
 */
public record People(
        Map<String, String> prospects,
        Map<String, String> games,
        Set<String> opponents,
        Set<String> levels,
        Set<String> teams,
        Set<String> classYears) {
    /** Nobody: only the book is asked. */
    public static final People NOBODY = new People(Map.of(), Map.of(), Set.of(), Set.of(), Set.of(), Set.of());

    public People {
        prospects = Map.copyOf(prospects);
        games = Map.copyOf(games);
        opponents = Set.copyOf(opponents);
        levels = Set.copyOf(levels);
        teams = Set.copyOf(teams);
        classYears = Set.copyOf(classYears);
    }

    /** Every name, for completion. */
    public List<String> names() {
        return prospects.values().stream().sorted().toList();
    }
}

package rushlight.demo;

import java.util.Map;
import java.util.Set;

/**
 * A man of the league as the generator knows him.
 *
 * @param games how many games of his season were charted
 * @param reps about how many reps a game
 * @param favored second moves he goes to first
 * @param habits his own cards, by habit; the rest is {@link Ordinary}
 */
record Player(String name, String school, int games, int reps, Set<String> favored, Map<String, String> habits) {
    static Player of(String name, String school, int games, int reps, String favored, String habits) {
        return new Player(name, school, games, reps, Set.of(favored.split(" ", -1)), Ordinary.read(habits));
    }

    String file() {
        return League.slug(name) + ".csv";
    }
}

package rushlight.situation;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import rushlight.film.Prospect;
import rushlight.film.RepFacts;

/**
 * The reps of one prospect in the order they were played, one reading each, those of low confidence among them.
 * Everything is counted by cutting sets of reps: bit {@code i} stands for rep {@code i}. A set that was handed out is
 * shared and never to be changed.
 */
public interface Tape {
    /** Whose reps. */
    Prospect prospect();

    /** How many reps. */
    int size();

    /** The reps that are like this. */
    BitSet fitting(Situation situation);

    /** The reps by each value of a facet as it was tagged, nothing wider; a number as its digits. */
    SortedMap<String, BitSet> rows(String facet);

    /** The games in the order they were played. */
    List<TapedGame> games();

    /** Where a rep is to be seen. */
    Sighting sighting(int rep);

    /** The reps of his that two evaluators have read, however this tape is narrowed; empty where nobody else has. */
    default Optional<ReadTwice> readTwice() {
        return Optional.empty();
    }

    /** A tape in memory: sightings and facts stand in the same order. */
    static Tape of(Prospect prospect, List<TapedGame> games, List<Sighting> sightings, List<RepFacts> facts) {
        return new ListedTape(prospect, games, sightings, facts, Optional.empty());
    }
}

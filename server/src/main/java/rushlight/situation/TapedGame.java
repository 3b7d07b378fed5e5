package rushlight.situation;

import java.util.BitSet;

/**
 * One game on a tape.
 *
 * @param id id of the game
 * @param name as written
 * @param opponent the other team, may be empty
 * @param reps which reps of the tape are from this game; shared, never to be changed
 */
public record TapedGame(String id, String name, String opponent, BitSet reps) {}

package rushlight.situation;

import java.time.LocalDate;
import java.util.BitSet;
import java.util.Optional;

/**
 * One game on a tape.
 *
 * @param id id of the game
 * @param name as written
 * @param date local date of the game
 * @param opponent the other team, may be empty
 * @param reps which reps of the tape are from this game; shared, never to be changed
 */
public record TapedGame(String id, String name, Optional<LocalDate> date, String opponent, BitSet reps) {}

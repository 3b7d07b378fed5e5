package rushlight.film;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One game on film.
 *
 * @param id stable name in addresses: the slug of the name, with the date where one is given
 * @param name as written
 * @param date local date of the game
 * @param opponent free text, may be empty
 * @param level level of play, may be empty
 */
public record Game(String id, String name, Optional<LocalDate> date, String opponent, String level) {}

package rushlight.film;

import java.util.List;

/** Times on film, as evaluators write them. */
public final class FilmTime {
    private FilmTime() {}

    /**
     * Seconds from the start of the film.
     *
     * @param text {@code h:mm:ss.s}, {@code m:ss} or seconds, as a film log that was read holds it
     */
    public static double seconds(String text) {
        double seconds = 0;
        for (String part : List.of(text.split(":", -1))) {
            seconds = 60 * seconds + Double.parseDouble(part);
        }
        return seconds;
    }
}

package rushlight.film;

import java.util.Optional;

/**
 * One step of the exchange between him and the blocker.
 *
 * @param by whose step it is
 * @param concept slug of what was done
 * @param hand {@code inside}, {@code outside}, {@code left} or {@code right} where the reading names his hand
 */
public record Step(By by, String concept, Optional<String> hand) {
    /** The two men of an exchange. */
    public enum By {
        HIM,
        BLOCKER
    }
}

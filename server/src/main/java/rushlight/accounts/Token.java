package rushlight.accounts;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A secret that a program shows in place of a password. Only its hash is kept.
 *
 * @param id what it is called where it is listed or taken back
 * @param what what it is for, in words
 * @param hash SHA-256 of the secret, in hexadecimal digits
 * @param made when it was made, UTC
 * @param until when it ends, UTC; null where it does not
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Token(
        String id,
        String what,
        String hash,
        String made,
        @Nullable String until) {
    /** When it ends. */
    public Optional<Instant> end() {
        return Optional.ofNullable(until).map(Instant::parse);
    }

    boolean holds(Instant now) {
        return end().filter(now::isAfter).isEmpty();
    }
}

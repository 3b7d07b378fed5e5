package rushlight.accounts;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Who is signed in. Sessions are kept in memory alone, by the hash of their secret: nothing of them can be stolen from a disk
 * or a backup, and a server that starts anew asks everybody to sign in again.
 */
public final class Sessions {
    /** A session ends when nothing was asked for so long. */
    public static final Duration IDLE = Duration.ofHours(2);

    /** A session ends after so long, whatever is asked. */
    public static final Duration WHOLE = Duration.ofHours(12);

    private static final int MOST = 10_000;
    private static final int COST_OF_NOTHING = 4;

    private record Session(String name, String stamp, Instant begun, Instant seen) {
        boolean holds(Instant now) {
            return now.isBefore(seen.plus(IDLE)) && now.isBefore(begun.plus(WHOLE));
        }
    }

    private final Accounts accounts;
    private final Clock clock;
    private final Secrets secrets = new Secrets(COST_OF_NOTHING);
    private final Map<String, Session> sessions = new HashMap<>();

    /** None yet. */
    public Sessions(Accounts accounts, Clock clock) {
        this.accounts = accounts;
        this.clock = clock;
    }

    /** Begins a session and gives its secret. */
    public synchronized String begin(User user) {
        Instant now = clock.instant();
        sessions.values().removeIf(session -> !session.holds(now));
        if (sessions.size() >= MOST) {
            throw new AccountsException("Too many people are signed in. Try again later.");
        }
        String secret = secrets.secret();
        sessions.put(Secrets.hash(secret), new Session(user.name(), user.stamp(), now, now));
        return secret;
    }

    /** Whose session it is, where it still holds and his account and password are still the same. */
    public Optional<User> user(String secret) {
        String key = Secrets.hash(secret);
        Optional<Session> found = seen(key);
        return found.flatMap(session ->
                accounts.user(session.name()).filter(user -> user.stamp().equals(session.stamp())));
    }

    /** Ends a session. */
    public synchronized void end(String secret) {
        sessions.remove(Secrets.hash(secret));
    }

    private synchronized Optional<Session> seen(String key) {
        Instant now = clock.instant();
        Session session = sessions.get(key);
        if (session == null) {
            return Optional.empty();
        }
        if (!session.holds(now)) {
            sessions.remove(key);
            return Optional.empty();
        }
        sessions.put(key, new Session(session.name(), session.stamp(), session.begun(), now));
        return Optional.of(session);
    }
}

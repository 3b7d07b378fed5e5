package rushlight.web.http;

import io.github.bucket4j.Bandwidth;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import rushlight.web.http.Serving.Limits;

/** How often somebody may ask. What was not used up comes back by and by. */
final class Allowances {
    private static final int REMEMBERED = 10_000;
    private static final Duration MINUTE = Duration.ofMinutes(1);
    private static final Duration HOUR = Duration.ofHours(1);
    private static final int NAMES_PER_ADDRESS = 6;
    private static final int TRIES_PER_NAME = 60;
    private static final long NANOS = 1_000_000_000L;

    private final Limits limits;
    private final Map<String, Bucket> buckets = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Bucket> eldest) {
            return size() > REMEMBERED;
        }
    };

    Allowances(Limits limits) {
        this.limits = limits;
    }

    /** Lets a request pass, or ends it. */
    void ask(Context ctx, String who, boolean costly) {
        take(ctx, "all " + who, () -> each(limits.requestsPerMinute(), MINUTE));
        if (costly) {
            take(ctx, "costly " + who, () -> each(limits.costlyPerMinute(), MINUTE));
        }
    }

    /**
     * Lets somebody try a password, or ends the request. A name that nobody has is treated like any other; one who guesses
     * from one place does not keep the owner of the name from signing in at another, unless he guesses from many.
     *
     * @param name the name in the form it is compared by
     */
    void tryPassword(Context ctx, String name, String address) {
        int tries = limits.passwordTries();
        take(ctx, "from " + address, () -> each(tries * NAMES_PER_ADDRESS, MINUTE));
        take(ctx, "name " + name, () -> each(Math.max(tries, TRIES_PER_NAME), HOUR));
        take(ctx, "try " + name + " from " + address, () -> each(tries, Duration.ofMinutes(tries)));
    }

    /** Somebody shows a token that is not known. */
    void tryToken(Context ctx, String address) {
        take(ctx, "token from " + address, () -> each(limits.passwordTries() * NAMES_PER_ADDRESS, MINUTE));
    }

    private void take(Context ctx, String key, Supplier<Bucket> fresh) {
        ConsumptionProbe probe = bucket(key, fresh).tryConsumeAndReturnRemaining(1);
        if (!probe.isConsumed()) {
            long seconds = Math.max(1, (probe.getNanosToWaitForRefill() + NANOS - 1) / NANOS);
            ctx.header("Retry-After", Long.toString(seconds));
            throw Problem.of(
                            429,
                            "That was asked too often. Try again in " + seconds
                                    + (seconds == 1 ? " second." : " seconds."))
                    .thrown();
        }
    }

    private Bucket bucket(String key, Supplier<Bucket> fresh) {
        synchronized (buckets) {
            return buckets.computeIfAbsent(key, k -> fresh.get());
        }
    }

    private static Bucket each(int times, Duration time) {
        return Bucket.builder()
                .addLimit(Bandwidth.builder()
                        .capacity(times)
                        .refillGreedy(times, time)
                        .build())
                .build();
    }
}

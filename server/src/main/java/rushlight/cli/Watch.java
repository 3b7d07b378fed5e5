package rushlight.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import rushlight.archive.Following;

/** Looks, while film is served, whether others have changed it where it is kept, and fetches what they changed. */
final class Watch implements AutoCloseable {
    /** How often it looks: one small question. */
    static final Duration EVERY = Duration.ofSeconds(30);

    private final PrintWriter err;
    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(work -> {
        Thread thread = new Thread(work, "store-watch");
        thread.setDaemon(true);
        return thread;
    });

    Watch(PrintWriter err) {
        this.err = err;
    }

    void follow(Following following) {
        follow(following, EVERY);
    }

    void follow(Following following, Duration every) {
        if (!following.isElsewhere()) {
            return;
        }
        AtomicBoolean isAway = new AtomicBoolean();
        // What it does tells its own failures.
        ScheduledFuture<?> unused = clock.scheduleWithFixedDelay(
                () -> look(following, isAway), every.toMillis(), every.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Whatever happens is told once, and looked at again the next time. */
    private void look(Following following, AtomicBoolean isAway) {
        try {
            following.catchUp();
            if (isAway.getAndSet(false)) {
                say("The store that the film is kept in answers again.");
            }
        } catch (RuntimeException e) {
            if (!isAway.getAndSet(true)) {
                say(e.getMessage() + " The film is shown as it was; rushlight looks again every " + EVERY.toSeconds()
                        + " seconds.");
            }
        }
    }

    private void say(String what) {
        err.println(what);
        err.flush();
    }

    @Override
    public void close() {
        clock.shutdownNow();
        try {
            clock.awaitTermination(EVERY.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}

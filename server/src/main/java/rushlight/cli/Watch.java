package rushlight.cli;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
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
        AtomicReference<String> trouble = new AtomicReference<>("");
        // What it does tells its own failures.
        ScheduledFuture<?> unused = clock.scheduleWithFixedDelay(
                () -> look(following, trouble), every.toMillis(), every.toMillis(), TimeUnit.MILLISECONDS);
    }

    /** Whatever happens is told once, until something else does, and looked at again the next time. */
    private void look(Following following, AtomicReference<String> trouble) {
        try {
            following.catchUp();
            if (!trouble.getAndSet("").isEmpty()) {
                say("The store that the film is kept in answers again.");
            }
        } catch (RuntimeException e) {
            String now = String.valueOf(e.getMessage());
            if (!trouble.getAndSet(now).equals(now)) {
                say(now + " The film is shown as it was; rushlight looks again every " + EVERY.toSeconds()
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
        // Not by an interrupt: it would close the files of the store and the index under whoever reads them.
        clock.shutdown();
        try {
            clock.awaitTermination(EVERY.toSeconds(), TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}

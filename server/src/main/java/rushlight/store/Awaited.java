package rushlight.store;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** What comes over the line; where nothing comes for too long, it is broken off. */
final class Awaited extends FilterInputStream {
    private final Duration patience;
    private volatile long lastHeard = System.nanoTime();
    private volatile boolean closed;
    private volatile boolean isLate;
    private volatile @Nullable IOException broke;

    Awaited(InputStream in, Duration patience) {
        super(in);
        this.patience = patience;
        look();
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        int read = read(one, 0, 1);
        return read < 0 ? read : one[0] & 0xff;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        lastHeard = System.nanoTime();
        try {
            int read = super.read(into, offset, length);
            if (read < 0 && isLate) {
                throw new HttpTimeoutException("Nothing came any more.");
            }
            lastHeard = System.nanoTime();
            return read;
        } catch (IOException e) {
            broke = isLate ? new HttpTimeoutException("Nothing came any more.") : e;
            throw broke;
        }
    }

    /** What broke it off, where that happened; whoever reads it may make something else of that. */
    @Nullable
    IOException broke() {
        return broke;
    }

    @Override
    public void close() throws IOException {
        closed = true;
        super.close();
    }

    private void look() {
        Executor later = CompletableFuture.delayedExecutor(patience.toMillis(), TimeUnit.MILLISECONDS);
        later.execute(() -> {
            if (closed) {
                return;
            }
            if (System.nanoTime() - lastHeard < patience.toNanos()) {
                look();
                return;
            }
            isLate = true;
            try {
                close();
            } catch (IOException e) {
                closed = true; // whoever reads is told by his own reading
            }
        });
    }
}

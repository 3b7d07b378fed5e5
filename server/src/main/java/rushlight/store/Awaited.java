package rushlight.store;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;

/** What comes over the line; where nothing comes for too long, it is broken off. */
final class Awaited extends FilterInputStream {
    private final Duration patience;
    private volatile long lastHeard = System.nanoTime();
    private volatile boolean closed;

    Awaited(InputStream in, Duration patience) {
        super(in);
        this.patience = patience;
        look();
    }

    @Override
    public int read() throws IOException {
        int read = super.read();
        lastHeard = System.nanoTime();
        return read;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
        lastHeard = System.nanoTime();
        int read = super.read(into, offset, length);
        lastHeard = System.nanoTime();
        return read;
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
            try {
                close();
            } catch (IOException e) {
                closed = true; // whoever reads is told by his own reading
            }
        });
    }
}

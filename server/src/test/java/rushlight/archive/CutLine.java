package rushlight.archive;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;

/** A line to a store that can break: after a change went through and before its answer came back, or while film is fetched. */
final class CutLine implements AutoCloseable {
    private static final int PART = 1_000;

    private final ServerSocket door;
    private final int behind;
    private final ExecutorService threads = Executors.newCachedThreadPool(work -> {
        Thread thread = new Thread(work, "line");
        thread.setDaemon(true);
        return thread;
    });
    private final AtomicBoolean cutsNext = new AtomicBoolean();
    private final AtomicBoolean cutsFetch = new AtomicBoolean();
    private volatile boolean isDown;

    CutLine(int behind) throws IOException {
        this.behind = behind;
        this.door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
        threads.execute(this::accept);
    }

    String address() {
        return "http://localhost:" + door.getLocalPort() + "/film";
    }

    /** The answer to the next change is lost; what is asked afterwards comes through, unless the line stays down. */
    void cutNextAnswer(boolean andStayDown) {
        cutsNext.set(true);
        staysDown = andStayDown;
    }

    /** The next graph that is fetched comes in part. */
    void cutNextFetch() {
        cutsFetch.set(true);
    }

    void mend() {
        isDown = false;
    }

    private volatile boolean staysDown;

    private void accept() {
        while (!door.isClosed()) {
            try {
                Socket near = door.accept();
                if (isDown) {
                    near.close();
                    continue;
                }
                Socket far = new Socket(InetAddress.getLoopbackAddress(), behind);
                AtomicReference<String> asked = new AtomicReference<>("");
                threads.execute(() -> carry(near, far, asked, true));
                threads.execute(() -> carry(far, near, asked, false));
            } catch (IOException e) {
                return;
            }
        }
    }

    private void carry(Socket from, Socket to, AtomicReference<String> asked, boolean asks) {
        byte[] bytes = new byte[8192];
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            for (int read = in.read(bytes); read >= 0; read = in.read(bytes)) {
                if (asks) {
                    String text = new String(bytes, 0, read, StandardCharsets.ISO_8859_1);
                    if (text.startsWith("POST ") || text.startsWith("GET ")) {
                        asked.set(text.substring(0, text.indexOf(' ', text.indexOf(' ') + 1)));
                    }
                } else if ("POST /film/update".equals(asked.get()) && cutsNext.compareAndSet(true, false)) {
                    isDown = staysDown;
                    return;
                } else if (String.valueOf(asked.get()).startsWith("GET /film/data")
                        && cutsFetch.compareAndSet(true, false)) {
                    out.write(bytes, 0, Math.min(read, PART));
                    return;
                }
                out.write(bytes, 0, read);
                out.flush();
            }
        } catch (IOException e) {
            // The other end was closed; so is this one now.
        }
    }

    @Override
    public void close() throws IOException {
        door.close();
        threads.shutdownNow();
    }
}

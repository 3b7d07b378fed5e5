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

/** A line to a store that can break after a change went through and before its answer came back. */
final class CutLine implements AutoCloseable {
    private final ServerSocket door;
    private final int behind;
    private final ExecutorService threads = Executors.newCachedThreadPool(work -> {
        Thread thread = new Thread(work, "line");
        thread.setDaemon(true);
        return thread;
    });
    private final AtomicBoolean cutsNext = new AtomicBoolean();
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
                AtomicBoolean changing = new AtomicBoolean();
                threads.execute(() -> carry(near, far, changing, true));
                threads.execute(() -> carry(far, near, changing, false));
            } catch (IOException e) {
                return;
            }
        }
    }

    private void carry(Socket from, Socket to, AtomicBoolean changing, boolean asks) {
        byte[] bytes = new byte[8192];
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            for (int read = in.read(bytes); read >= 0; read = in.read(bytes)) {
                if (asks) {
                    String text = new String(bytes, 0, read, StandardCharsets.ISO_8859_1);
                    if (text.startsWith("POST ") || text.startsWith("GET ")) {
                        changing.set(text.startsWith("POST /film/update"));
                    }
                } else if (changing.get() && cutsNext.compareAndSet(true, false)) {
                    isDown = staysDown;
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

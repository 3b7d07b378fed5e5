package rushlight.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Counts and sums up what is written, and lets it through; closing it leaves open what is behind it. */
final class Measured extends OutputStream {
    private final OutputStream out;
    private final MessageDigest sum;
    private long bytes;

    Measured(OutputStream out) {
        this.out = out;
        try {
            this.sum = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] some, int from, int most) throws IOException {
        out.write(some, from, most);
        sum.update(some, from, most);
        bytes += most;
    }

    @Override
    public void flush() throws IOException {
        out.flush();
    }

    @Override
    public void close() throws IOException {
        out.flush();
    }

    BackupManifest.Part part(String name) {
        return new BackupManifest.Part(name, bytes, HexFormat.of().formatHex(sum.digest()));
    }
}

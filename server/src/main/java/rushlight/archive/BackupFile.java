package rushlight.archive;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/**
 * A backup that was found whole: every part is there, as long as it should be and with the sum it should have. No name in
 * the file is ever used as a path, and nothing is unpacked beyond what the manifest says and a film log can shrink to.
 */
public final class BackupFile implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Set<String> PARTS = Set.of(BackupManifest.STORE, Settings.FILE, Book.OVERLAY);
    private static final int LONGEST_MANIFEST = 1 << 20;

    /** A store shrinks to a twentieth or so; what shrinks to less than this was made to fill a disk. */
    private static final long MOST_SHRUNK = 200;

    private static final long SMALL = 1L << 20;

    private final String name;
    private final ZipFile zip;
    private final Map<String, ZipEntry> entries;
    private final BackupManifest manifest;

    private BackupFile(String name, ZipFile zip) throws IOException {
        this.name = name;
        this.zip = zip;
        this.entries = entries();
        this.manifest = read();
        verify();
    }

    /**
     * Opens a backup and holds it to its manifest.
     *
     * @throws RefusedBackupException where anything of it is not as it should be
     */
    public static BackupFile open(Path file) {
        String name = String.valueOf(file.getFileName());
        if (!Files.isRegularFile(file)) {
            throw new RefusedBackupException("There is no file " + file + ".");
        }
        ZipFile zip;
        try {
            zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
        } catch (IOException | IllegalArgumentException e) {
            throw broken(name, "it is no whole zip, cut off perhaps", e);
        }
        try {
            return new BackupFile(name, zip);
        } catch (IOException | RuntimeException e) {
            try {
                zip.close();
            } catch (IOException second) {
                e.addSuppressed(second);
            }
            if (e instanceof RefusedBackupException || e instanceof FolderException) {
                throw (RuntimeException) e;
            }
            throw broken(name, "a part of it cannot be unpacked", e);
        }
    }

    /** What it says of itself. */
    public BackupManifest manifest() {
        return manifest;
    }

    /** How long all parts are, bytes. */
    long bytes() {
        return manifest.parts().stream().mapToLong(BackupManifest.Part::bytes).sum();
    }

    InputStream part(String part) throws IOException {
        return open(part);
    }

    private Map<String, ZipEntry> entries() {
        Map<String, ZipEntry> found = new HashMap<>();
        for (ZipEntry entry : (Iterable<ZipEntry>) zip.stream().map(ZipEntry.class::cast)::iterator) {
            boolean isOurs = PARTS.contains(entry.getName()) || entry.getName().equals(BackupManifest.FILE);
            if (!isOurs || found.put(entry.getName(), entry) != null) {
                throw broken(name, "it holds \"" + printable(entry.getName()) + "\", which no backup of ours does");
            }
        }
        return found;
    }

    private BackupManifest read() throws IOException {
        if (!entries.containsKey(BackupManifest.FILE)) {
            throw broken(name, "it has no " + BackupManifest.FILE);
        }
        try (InputStream in = open(BackupManifest.FILE)) {
            byte[] text = in.readNBytes(LONGEST_MANIFEST + 1);
            if (text.length > LONGEST_MANIFEST) {
                throw broken(name, "its " + BackupManifest.FILE + " is far too long");
            }
            int format = JSON.readTree(text).path("format").asInt(0);
            if (format > BackupManifest.FORMAT) {
                throw new RefusedBackupException("The backup " + name + " was written by a newer Rushlight (format "
                        + format + ", this one knows " + BackupManifest.FORMAT + "). Use the newer program.");
            }
            BackupManifest read = JSON.readValue(text, BackupManifest.class);
            Objects.requireNonNull(read.holdings(), "holdings");
            if (read.layout() > Settings.FORMAT) {
                throw new RefusedBackupException("The backup " + name + " was written by a newer Rushlight (layout "
                        + read.layout() + ", this one knows " + Settings.FORMAT + "). Use the newer program.");
            }
            return read;
        } catch (com.fasterxml.jackson.core.JsonProcessingException | NullPointerException e) {
            throw broken(name, "its " + BackupManifest.FILE + " cannot be read", e);
        }
    }

    private void verify() throws IOException {
        List<String> named = manifest.parts().stream()
                .map(BackupManifest.Part::name)
                .sorted()
                .toList();
        List<String> there = entries.keySet().stream()
                .filter(entry -> !entry.equals(BackupManifest.FILE))
                .sorted()
                .toList();
        if (!named.equals(there) || !named.contains(BackupManifest.STORE)) {
            throw broken(name, "it should hold " + String.join(", ", named) + " and holds " + String.join(", ", there));
        }
        for (BackupManifest.Part part : manifest.parts()) {
            ZipEntry entry = entries.get(part.name());
            long packed = entry == null ? 0 : entry.getCompressedSize();
            if (part.bytes() > SMALL && part.bytes() / MOST_SHRUNK > packed) {
                throw broken(name, part.name() + " would grow to " + part.bytes() + " bytes, as no film does");
            }
            Measured measured = new Measured(OutputStream.nullOutputStream());
            try (InputStream in = new AtMost(open(part.name()), part.bytes() + 1)) {
                in.transferTo(measured);
            }
            if (!measured.part(part.name()).equals(part)) {
                throw broken(name, part.name() + " is not what was backed up: its checksum or its length is another");
            }
        }
    }

    private InputStream open(String part) throws IOException {
        InputStream in = zip.getInputStream(entries.get(part));
        if (in == null) {
            throw broken(name, part + " is missing");
        }
        return in;
    }

    private static RefusedBackupException broken(String name, String why) {
        return new RefusedBackupException(said(name, why));
    }

    private static RefusedBackupException broken(String name, String why, Throwable cause) {
        return new RefusedBackupException(said(name, why), cause);
    }

    private static String said(String name, String why) {
        return "The backup " + name + " cannot be used: " + why + ". Nothing was touched.";
    }

    private static String printable(String text) {
        String plain = text.replaceAll("[^\\x20-\\x7e]", "?");
        return plain.length() > 60 ? plain.substring(0, 60) + "..." : plain;
    }

    @Override
    public void close() {
        try {
            zip.close();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(name, e);
        }
    }

    /** Ends after so many bytes, whatever comes. */
    private static final class AtMost extends FilterInputStream {
        private long left;

        AtMost(InputStream in, long most) {
            super(in);
            this.left = most;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
        }

        @Override
        public int read(byte[] bytes, int from, int most) throws IOException {
            if (left <= 0) {
                return -1;
            }
            int some = super.read(bytes, from, (int) Math.min(most, left));
            left -= Math.max(0, some);
            return some;
        }
    }
}

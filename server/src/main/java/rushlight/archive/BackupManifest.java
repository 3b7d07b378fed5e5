package rushlight.archive;

import java.util.List;
import rushlight.store.Holdings;

/**
 * What a backup says of itself.
 *
 * @param format version of the way a backup is laid out
 * @param layout version of the data folder it was made of
 * @param made when, as ISO 8601 in UTC
 * @param book fingerprint of the book that had classified the film
 * @param holdings how much of everything is in it
 * @param parts its files
 */
public record BackupManifest(int format, int layout, String made, String book, Holdings holdings, List<Part> parts) {
    static final int FORMAT = 1;
    static final String FILE = "manifest.json";
    static final String STORE = "store.nq";

    /**
     * One file of a backup.
     *
     * @param name of the file
     * @param bytes its length
     * @param sha256 its SHA-256 in hexadecimal
     */
    public record Part(String name, long bytes, String sha256) {}

    public BackupManifest {
        parts = List.copyOf(parts);
    }
}

package rushlight.index;

import java.util.Map;
import java.util.Optional;

/**
 * Which state of the store, read with which book, an index holds.
 *
 * @param revision revision of the store
 * @param fingerprint fingerprint of the book
 */
public record IndexState(long revision, String fingerprint) {
    /** Raised whenever documents are laid out in another way: an index of another format counts as none. */
    static final String FORMAT = "3";

    static Optional<IndexState> read(Map<String, String> commitData) {
        String revision = commitData.get("revision");
        String fingerprint = commitData.get("fingerprint");
        if (revision == null || fingerprint == null || !FORMAT.equals(commitData.get("format"))) {
            return Optional.empty();
        }
        return Optional.of(new IndexState(Long.parseLong(revision), fingerprint));
    }

    Map<String, String> commitData() {
        return Map.of("revision", Long.toString(revision), "fingerprint", fingerprint, "format", FORMAT);
    }
}

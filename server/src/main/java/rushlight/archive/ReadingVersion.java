package rushlight.archive;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.TreeMap;
import rushlight.film.Reading;

/** Names one version of a reading by what it says: two versions that say the same have one name. */
public final class ReadingVersion {
    private static final int BYTES = 10;

    private ReadingVersion() {}

    /** The name of what this reading says. */
    public static String of(Reading reading) {
        StringBuilder text = new StringBuilder(reading.rep().rep());
        new TreeMap<>(reading.tags())
                .forEach((column, values) ->
                        text.append('\n').append(column).append('=').append(String.join(";", values)));
        reading.exchange()
                .forEach(step -> text.append('\n')
                        .append(step.by())
                        .append(' ')
                        .append(step.concept())
                        .append('@')
                        .append(step.hand().orElse("")));
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash, 0, BYTES);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}

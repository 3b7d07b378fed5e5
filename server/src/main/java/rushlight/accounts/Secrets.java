package rushlight.accounts;

import at.favre.lib.crypto.bcrypt.BCrypt;
import at.favre.lib.crypto.bcrypt.BCrypt.Version;
import at.favre.lib.crypto.bcrypt.LongPasswordStrategies;
import at.favre.lib.crypto.bcrypt.LongPasswordStrategy;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Makes secrets and the hashes that are kept of them. */
final class Secrets {
    private static final int BYTES = 32;
    private static final int HEX_OF_ID = 8;
    private static final LongPasswordStrategy LONG = LongPasswordStrategies.hashSha512(Version.VERSION_2A);

    private final SecureRandom random = new SecureRandom();
    private final int cost;

    /** @param cost the logarithm of bcrypt's rounds, 4 to 31 */
    Secrets(int cost) {
        this.cost = cost;
    }

    /** 256 random bits as a word that may stand in a header or a cookie. */
    String secret() {
        byte[] bytes = new byte[BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** A short random name. */
    String id() {
        return HexFormat.of()
                .formatHex(secret().getBytes(StandardCharsets.US_ASCII))
                .substring(0, HEX_OF_ID);
    }

    String password(char[] password) {
        return BCrypt.with(Version.VERSION_2A, LONG).hashToString(cost, password);
    }

    boolean isPassword(char[] password, String hash) {
        return BCrypt.verifyer(Version.VERSION_2A, LONG).verify(password, hash).verified;
    }

    /** Takes as long as a password that is looked at, and is never right. */
    void pretend(char[] password) {
        password(password);
    }

    /** What is kept of a secret that needs no slow hash, because nobody can guess 256 bits. */
    static String hash(String secret) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}

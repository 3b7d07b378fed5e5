package rushlight.web.http;

import io.javalin.http.Context;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import rushlight.web.Json;

/** Entity tags: what a browser has already is not made and sent again. */
final class Versions {
    private static final int BYTES = 12;

    private Versions() {}

    /** The tag of some content. */
    static String ofContent(byte[] content) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(content);
            return "\"" + HexFormat.of().formatHex(hash, 0, BYTES) + "\"";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }

    /** Puts the tag on the answer; where the browser has that version, answers 304 and gives true. */
    static boolean isKnown(Context ctx, String etag) {
        ctx.header("ETag", etag);
        if (matches(ctx.header("If-None-Match"), etag)) {
            ctx.status(304);
            return true;
        }
        return false;
    }

    /** Whether a header names this version, weakly compared. */
    static boolean matches(@Nullable String header, String etag) {
        return header != null
                && (header.strip().equals("*")
                        || Arrays.stream(header.split(",", -1))
                                .map(Versions::strong)
                                .anyMatch(strong(etag)::equals));
    }

    /** The version that a request says it changes, as it stands in its If-Match; ends the request where it says none. */
    static String changed(Context ctx, String what) {
        String match = ctx.header("If-Match");
        if (match == null) {
            throw Problem.of(428, "Say with If-Match which version you change: the etag you got with the " + what + ".")
                    .thrown();
        }
        return match;
    }

    /** Answers with JSON that holds for one version of film and book, made only where the browser lacks it. */
    static void json(Context ctx, String etag, Supplier<Object> answer) {
        ctx.header("Cache-Control", "no-cache");
        if (!isKnown(ctx, etag)) {
            json(ctx, answer.get());
        }
    }

    /** Answers with JSON. */
    static void json(Context ctx, Object answer) {
        ctx.contentType("application/json").result(Json.compact(answer));
    }

    /** The name of a version as it stands in a tag, bare. */
    static String plain(String etag) {
        return etag.strip().replaceFirst("^W/", "").replace("\"", "").replaceFirst("--(gzip|br)$", "");
    }

    /** The tag without the mark of weakness and without what a compressing proxy hangs on it. */
    private static String strong(String etag) {
        String plain = etag.strip();
        plain = plain.startsWith("W/") ? plain.substring(2) : plain;
        return plain.replaceFirst("--(gzip|br)\"$", "\"");
    }
}

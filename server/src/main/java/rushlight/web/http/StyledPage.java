package rushlight.web.http;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;

/**
 * A page that brings its style sheet with it, such as a report: it may use that one and nothing else, runs no scripts, and may
 * be shown in a frame by the pages of this program (Content Security Policy 3, hash sources).
 */
final class StyledPage {
    /** The policy of what uses nothing at all, such as a problem. */
    static final String BARE = "default-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";

    private static final String OPENS = "<style>";
    private static final String ENDS = "</style>";

    private StyledPage() {}

    static void send(Context ctx, String html) {
        ctx.header("Content-Security-Policy", policy(html))
                .contentType("text/html")
                .result(html);
    }

    private static String policy(String html) {
        int from = html.indexOf(OPENS) + OPENS.length();
        byte[] style = html.substring(from, html.indexOf(ENDS, from)).getBytes(StandardCharsets.UTF_8);
        return "default-src 'none'; style-src 'sha256-" + Base64.getEncoder().encodeToString(sha256(style))
                + "'; img-src data:; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256.", e);
        }
    }
}

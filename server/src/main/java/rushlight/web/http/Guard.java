package rushlight.web.http;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Keeps other sites out: a server for this machine answers to this machine's names alone, nothing is written for a page of
 * another origin, and a browser runs nothing but the files that came with the program.
 */
final class Guard {
    private static final Set<String> HERE = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS);
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; media-src 'self' blob:;"
                    + " connect-src 'self'; frame-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'self'; frame-ancestors"
                    + " 'none'";

    private final Caller caller;
    private final boolean answersToAnyName;

    Guard(Caller caller, boolean answersToAnyName) {
        this.caller = caller;
        this.answersToAnyName = answersToAnyName;
    }

    void before(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        ctx.header("Permissions-Policy", "camera=(), geolocation=(), microphone=()");
        if (caller.isSecret(ctx)) {
            ctx.header("Strict-Transport-Security", "max-age=31536000");
        }
        if (!answersToAnyName && !HERE.contains(name(ctx.header("Host")))) {
            throw Problem.of(421, "This server answers to localhost alone.").thrown();
        }
        if (!isWritten(ctx.path())) {
            throw Problem.of(400, "The address has a % that stands for no character.")
                    .thrown();
        }
        if (!READING.contains(ctx.method()) && isFromElsewhere(ctx)) {
            throw Problem.of(403, "Pages of other sites may not change anything here.")
                    .thrown();
        }
    }

    private static boolean isWritten(String path) {
        try {
            URLDecoder.decode(path, StandardCharsets.UTF_8);
            return true;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private boolean isFromElsewhere(Context ctx) {
        String origin = ctx.header("Origin");
        String site = ctx.header("Sec-Fetch-Site");
        boolean isOtherSite = site != null && !site.equals("same-origin") && !site.equals("none");
        return isOtherSite || (origin != null && !origin.equals(caller.origin(ctx)));
    }

    private static String name(@Nullable String host) {
        if (host == null) {
            return "";
        }
        int colon = host.lastIndexOf(':');
        return colon > host.lastIndexOf(']') ? host.substring(0, colon) : host;
    }
}

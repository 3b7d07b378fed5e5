package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import java.util.Optional;

/**
 * Where a request comes from, and under which name it asks. What a proxy says of that is believed only where the server was
 * told that there is one, and of several the nearest: whoever asks may have written the others himself.
 *
 * @param https whether the server itself speaks HTTPS
 * @param behindProxy whether there is a proxy in front of it
 */
record Caller(boolean https, boolean behindProxy) {
    private static final List<String> OF_PROXIES =
            List.of("Forwarded", "X-Forwarded-For", "X-Forwarded-Host", "X-Forwarded-Proto", "Via");

    boolean isSecret(Context ctx) {
        return scheme(ctx).equals("https");
    }

    /** What the address bar of the browser shows before the path. */
    String origin(Context ctx) {
        return scheme(ctx) + "://" + host(ctx);
    }

    String host(Context ctx) {
        return told(ctx, "X-Forwarded-Host")
                .orElseGet(() -> Optional.ofNullable(ctx.header("Host")).orElse(""));
    }

    String address(Context ctx) {
        return told(ctx, "X-Forwarded-For").orElseGet(ctx::ip);
    }

    /** Whether it came by a proxy that nobody spoke of. */
    boolean cameUnannounced(Context ctx) {
        return !behindProxy && OF_PROXIES.stream().anyMatch(name -> ctx.header(name) != null);
    }

    private String scheme(Context ctx) {
        return told(ctx, "X-Forwarded-Proto").orElse(https ? "https" : "http");
    }

    private Optional<String> told(Context ctx, String header) {
        if (!behindProxy) {
            return Optional.empty();
        }
        return Optional.ofNullable(ctx.header(header))
                .map(text -> text.substring(text.lastIndexOf(',') + 1).strip())
                .filter(text -> !text.isEmpty() && text.length() < 300);
    }
}

package rushlight.web.http;

import io.javalin.http.Context;
import java.util.Locale;
import rushlight.web.Json;

/** What is sent with a request, read with care. */
final class Body {
    private Body() {}

    /** The JSON that was sent. */
    static <T> T json(Context ctx, Class<T> type) {
        if (!mediaType(ctx).equals("application/json")) {
            throw Problem.of(415, "Send JSON, as Content-Type: application/json.")
                    .thrown();
        }
        try {
            return Json.read(ctx.bodyAsBytes(), type);
        } catch (IllegalArgumentException e) {
            throw Problem.of(400, "The body is not the JSON that is wanted here: " + e.getMessage())
                    .thrown();
        }
    }

    /** The media type of what was sent, without its parameters. */
    static String mediaType(Context ctx) {
        String type = ctx.contentType();
        return type == null ? "" : type.split(";", -1)[0].strip().toLowerCase(Locale.ROOT);
    }
}

package rushlight.web.http;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rushlight.web.Json;

/** What is sent with a request, read with care. */
final class Body {
    private static final Logger LOG = LoggerFactory.getLogger(Body.class);

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

    /** The part {@code file} of a form. */
    static UploadedFile file(Context ctx) {
        UploadedFile file;
        try {
            file = ctx.uploadedFile("file");
        } catch (Exception e) {
            LOG.debug("A form could not be read", e);
            throw Problem.of(400, "The form cannot be read: its parts are not as its Content-Type says.")
                    .thrown();
        }
        if (file == null) {
            throw Problem.of(400, "The form has no file in a part named \"file\".")
                    .thrown();
        }
        return file;
    }

    /** The media type of what was sent, without its parameters. */
    static String mediaType(Context ctx) {
        String type = ctx.contentType();
        return type == null ? "" : type.split(";", -1)[0].strip().toLowerCase(Locale.ROOT);
    }

    /** A field of a form without the blanks around it; empty where it is not there. */
    static String text(String name, @Nullable String given, int longest) {
        String text = Objects.requireNonNullElse(given, "").strip();
        if (text.length() > longest) {
            throw Problem.of(422, "\"" + name + "\" has at most " + longest + " characters.")
                    .thrown();
        }
        return text;
    }
}

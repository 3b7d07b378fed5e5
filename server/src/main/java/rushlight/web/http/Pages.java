package rushlight.web.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.PackedFiles;

/**
 * The files of the browser client. An address that names no file is a page: it gets the file of its first part, such as
 * {@code board.html}, where there is one, else {@code index.html}.
 */
final class Pages {
    private static final String FOLDER = "/rushlight/client/";
    private static final String START = "index.html";
    private static final Map<String, String> TYPES = Map.ofEntries(
            Map.entry("html", "text/html"),
            Map.entry("js", "text/javascript"),
            Map.entry("mjs", "text/javascript"),
            Map.entry("css", "text/css"),
            Map.entry("json", "application/json"),
            Map.entry("webmanifest", "application/manifest+json"),
            Map.entry("svg", "image/svg+xml"),
            Map.entry("png", "image/png"),
            Map.entry("ico", "image/x-icon"),
            Map.entry("woff2", "font/woff2"),
            Map.entry("txt", "text/plain"));

    /** One file, ready to be sent. */
    private static final class Ready {
        private final byte[] bytes;
        private final String type;
        private final String etag;

        Ready(byte[] bytes, String type) {
            this.bytes = bytes;
            this.type = type;
            this.etag = Versions.ofContent(bytes);
        }
    }

    private final Map<String, Ready> files = new HashMap<>();

    private Pages() {}

    /** Everything that was packed with the program, read once. */
    static Pages packed() {
        Pages pages = new Pages();
        if (Pages.class.getResource(FOLDER) != null) {
            PackedFiles.under(FOLDER).forEach(name -> pages.files.put(name, ready(name)));
        }
        return pages;
    }

    /** Sends the file or page at this address; false where there is none. */
    boolean send(Context ctx) {
        Optional<Ready> found = at(ctx.path());
        found.ifPresent(ready -> {
            ctx.header("Cache-Control", "no-cache");
            if (!Versions.isKnown(ctx, ready.etag)) {
                ctx.contentType(ready.type).result(ready.bytes);
            }
        });
        return found.isPresent();
    }

    private Optional<Ready> at(String address) {
        String path = address.substring(1);
        Ready file = files.get(path);
        if (file != null) {
            return Optional.of(file);
        }
        String last = path.substring(path.lastIndexOf('/') + 1);
        if (TYPES.containsKey(ending(last))) {
            return Optional.empty();
        }
        int slash = path.indexOf('/');
        String first = slash < 0 ? path : path.substring(0, slash);
        Ready page = files.get(first + ".html");
        return Optional.ofNullable(page == null ? files.get(START) : page);
    }

    private static Ready ready(String name) {
        try (InputStream in = Pages.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new BrokenBookException("The program was packed without its page " + name + ".");
            }
            byte[] bytes = in.readAllBytes();
            String type = TYPES.getOrDefault(ending(name), "application/octet-stream");
            return new Ready(bytes, type);
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    private static String ending(String name) {
        return name.substring(name.lastIndexOf('.') + 1);
    }
}

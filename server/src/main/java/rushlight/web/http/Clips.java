package rushlight.web.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rushlight.knowledge.PackedFiles;
import rushlight.web.Addresses;

/**
 * The clips that come with the program. A name is looked up among those that were packed, so no name leads out of them;
 * a part of a clip can be asked for, so that a player may jump.
 */
final class Clips {
    private static final String FOLDER = "/rushlight/demo/clips/";
    private static final Pattern RANGE = Pattern.compile("bytes=(\\d{0,18})-(\\d{0,18})");
    private static final Map<String, String> TYPES =
            Map.of("webm", "video/webm", "mp4", "video/mp4", "vtt", "text/vtt");

    private record Part(int from, int to) {}

    /** One clip of the list. */
    record Item(String name, String href, int bytes) {}

    private final Map<String, byte[]> clips = new HashMap<>();

    private Clips() {}

    static Clips packed() {
        Clips clips = new Clips();
        if (Clips.class.getResource(FOLDER) != null) {
            PackedFiles.under(FOLDER).forEach(name -> clips.clips.put(name, bytes(name)));
        }
        return clips;
    }

    List<Route> routes() {
        return List.of(Route.get("/api/clips", this::list), Route.get("/clips/{name}", this::send));
    }

    private void list(Context ctx) {
        List<Item> items = new ArrayList<>();
        for (String name : new TreeSet<>(clips.keySet())) {
            items.add(new Item(name, "/clips/" + Addresses.part(name), bytesOf(name).length));
        }
        Versions.json(ctx, Map.of("clips", items));
    }

    private byte[] bytesOf(String name) {
        byte[] clip = clips.get(name);
        if (clip == null) {
            throw Problem.of(404, "There is no clip of that name.")
                    .withNearest(List.copyOf(new TreeSet<>(clips.keySet())))
                    .thrown();
        }
        return clip;
    }

    private void send(Context ctx) {
        String name = ctx.pathParam("name");
        byte[] clip = bytesOf(name);
        ctx.header("Accept-Ranges", "bytes").header("Cache-Control", "no-cache").disableCompression();
        String etag = Versions.ofContent(clip);
        if (Versions.isKnown(ctx, etag)) {
            return;
        }
        ctx.res().setCharacterEncoding((String) null);
        ctx.contentType(TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "application/octet-stream"));
        Optional<Part> part = part(ctx, etag, clip.length);
        if (part.isEmpty()) {
            ctx.result(clip);
            return;
        }
        int from = part.get().from();
        int to = part.get().to();
        ctx.status(206)
                .header("Content-Range", "bytes " + from + "-" + to + "/" + clip.length)
                .result(java.util.Arrays.copyOfRange(clip, from, to + 1));
    }

    /** The part that is asked for; empty for the whole. Several parts at once, or another unit, get the whole. */
    private static Optional<Part> part(Context ctx, String etag, int length) {
        String range = ctx.header("Range");
        String onlyIf = ctx.header("If-Range");
        Matcher asked = RANGE.matcher(range == null ? "" : range.strip());
        if (!asked.matches()
                || (asked.group(1).isEmpty() && asked.group(2).isEmpty())
                || (onlyIf != null && !onlyIf.equals(etag))) {
            return Optional.empty();
        }
        long from = 0;
        long to = length - 1L;
        if (asked.group(1).isEmpty()) {
            long last = Long.parseLong(asked.group(2));
            from = last == 0 ? length : Math.max(0, length - last);
        } else {
            from = Long.parseLong(asked.group(1));
            to = asked.group(2).isEmpty() ? to : Math.min(to, Long.parseLong(asked.group(2)));
        }
        boolean isBackwards =
                !asked.group(1).isEmpty() && !asked.group(2).isEmpty() && Long.parseLong(asked.group(2)) < from;
        if (isBackwards) {
            return Optional.empty();
        }
        if (from >= length) {
            ctx.header("Content-Range", "bytes */" + length);
            throw Problem.of(416, "The clip has " + length + " bytes.").thrown();
        }
        return Optional.of(new Part((int) from, (int) to));
    }

    private static byte[] bytes(String name) {
        try (InputStream in = Clips.class.getResourceAsStream(FOLDER + name)) {
            return in == null ? new byte[0] : in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}

package rushlight.notes;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Narrations with what an annotator marked in them. */
record Gold(
        String id, String format, String prospect, String raw, String text, List<Stretch> segments, List<Mark> marks) {
    /** A stretch of the text, with the name of its rep. */
    record Stretch(String kind, String rep, int from, int to) {}

    /** A mention that was marked. */
    record Mark(
            int from,
            int to,
            String concept,
            String assertion,
            String actor,
            String rep,
            String scope,
            boolean restates,
            boolean aside,
            boolean optional) {
        boolean overlaps(int otherFrom, int otherTo) {
            return from < otherTo && otherFrom < to;
        }

        /** Whether a person would keep it as a tag of its rep. */
        boolean isTag() {
            return !scope.equals("summary") && !restates && !aside && !optional;
        }
    }

    static List<Gold> of(InputStream in) {
        ObjectMapper json = new ObjectMapper();
        List<Gold> all = new ArrayList<>();
        try (in) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)) {
                if (!line.isBlank()) {
                    all.add(of(json.readTree(line)));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return all;
    }

    static List<Gold> development() {
        return of(Objects.requireNonNull(Gold.class.getResourceAsStream("/notes/development.jsonl")));
    }

    private static Gold of(JsonNode node) {
        List<Stretch> segments = new ArrayList<>();
        node.path("segments")
                .forEach(s -> segments.add(new Stretch(
                        s.path("kind").asText(),
                        s.path("rep").asText(""),
                        s.path("span").get(0).asInt(),
                        s.path("span").get(1).asInt())));
        List<Mark> marks = new ArrayList<>();
        node.path("mentions")
                .forEach(m -> marks.add(new Mark(
                        m.path("span").get(0).asInt(),
                        m.path("span").get(1).asInt(),
                        m.path("concept").asText(),
                        m.path("assertion").asText(),
                        m.path("actor").asText(),
                        m.path("rep").asText(""),
                        m.path("scope").asText("rep"),
                        m.path("restates").asBoolean(),
                        m.has("retracted") || m.has("superseded") || m.has("refers_to"),
                        m.path("optional").asBoolean())));
        return new Gold(
                node.path("id").asText(),
                node.path("format").asText(),
                node.path("prospect").asText(),
                node.path("raw").asText(),
                node.path("text").asText(),
                segments,
                marks);
    }
}

package rushlight.notes;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** Narrations with what an annotator marked in them. */
record Gold(
        String id,
        String format,
        String style,
        String prospect,
        String raw,
        String text,
        List<Stretch> segments,
        List<Mark> marks,
        List<Place> distractors) {
    /** Words of the trade in another sense. */
    record Place(int from, int to) {}

    /** A stretch of the text, with the name of its rep. */
    record Stretch(String kind, String rep, int from, int to) {}

    /** A mention that was marked; what was not marked of it is empty or 0. */
    record Mark(
            int from,
            int to,
            String concept,
            String assertion,
            String actor,
            String rep,
            String scope,
            String side,
            String hand,
            String target,
            int order,
            int opinion,
            boolean restates,
            boolean aside,
            boolean optional) {
        boolean overlaps(int otherFrom, int otherTo) {
            return from < otherTo && otherFrom < to;
        }

        /** Whether a reader may set it aside: told again, taken back, of another rep. */
        boolean isAside() {
            return restates || aside;
        }

        /** Whether a person would keep it as a tag of its rep. */
        boolean isTag() {
            return !scope.equals("summary") && !isAside() && !optional;
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

    /** Narrations of a file, whether YAML or one JSON object a line. */
    static List<Gold> of(Path file) throws IOException {
        if (!file.toString().matches(".*\\.ya?ml")) {
            return of(Files.newInputStream(file));
        }
        List<Gold> all = new ArrayList<>();
        try (Reader in = Files.newBufferedReader(file)) {
            ObjectMapper json = new ObjectMapper();
            JsonNode list = json.valueToTree(new Yaml(new SafeConstructor(new LoaderOptions())).load(in));
            list.forEach(node -> all.add(of(node)));
        }
        return all;
    }

    private static int opinion(String word) {
        return switch (word) {
            case "strongly-negative" -> -2;
            case "negative" -> -1;
            case "positive" -> 1;
            case "strongly-positive" -> 2;
            default -> 0;
        };
    }

    private static Gold of(JsonNode node) {
        Map<String, String> reps = new HashMap<>();
        List<Stretch> segments = new ArrayList<>();
        node.path("segments")
                .forEach(s -> segments.add(new Stretch(
                        s.path("kind").asText(),
                        numbered(s.path("rep").asText(""), reps),
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
                        reps.getOrDefault(m.path("rep").asText(""), ""),
                        m.path("scope").asText("rep"),
                        m.path("side").asText(""),
                        m.path("hand").asText(""),
                        m.path("target").asText(""),
                        m.path("order").asInt(),
                        opinion(m.path("opinion").asText("")),
                        m.path("restates").asBoolean(),
                        m.has("retracted") || m.has("superseded") || m.has("refers_to"),
                        m.path("optional").asBoolean())));
        List<Place> distractors = new ArrayList<>();
        node.path("distractors")
                .forEach(d -> distractors.add(new Place(
                        d.path("span").get(0).asInt(), d.path("span").get(1).asInt())));
        return new Gold(
                node.path("id").asText(),
                node.path("format").asText(),
                node.path("style").asText(),
                node.path("prospect").asText(),
                node.path("raw").asText(),
                node.path("text").asText(),
                segments,
                marks,
                distractors);
    }

    /** Reps by their place, whatever the annotator called them. */
    private static String numbered(String rep, Map<String, String> known) {
        return rep.isEmpty() ? "" : known.computeIfAbsent(rep, r -> "r" + (known.size() + 1));
    }
}

package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rushlight.web.DecidedIn;

/** Decisions put on proposed reps, by the cases that the page's own arranging is held to as well ({@code notes-state.test.js}). */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ReviewingTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonNode FILE = file();

    private static JsonNode file() {
        try (InputStream in = ReviewingTest.class.getResourceAsStream("/notes/review-cases.json")) {
            return JSON.readTree(Objects.requireNonNull(in));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static Stream<JsonNode> cases() {
        List<JsonNode> all = new ArrayList<>();
        FILE.get("cases").forEach(all::add);
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void reps_are_as_a_person_left_them(JsonNode one) throws IOException {
        Decisions decided =
                JSON.treeToValue(one.get("decided"), DecidedIn.class).decisions();

        List<ReviewedRep> reps = DevelopmentSetTest.READER.reviewed(narration(), notes(), decided, false);

        List<List<Object>> got = new ArrayList<>();
        for (ReviewedRep rep : reps) {
            got.add(List.of(
                    rep.rep().ordinal() + rep.part(),
                    rep.rep().phase().orElse("null"),
                    rep.rep().start().orElse(-1),
                    rep.rep().end().orElse(-1),
                    rep.rep().tags().stream().map(Mention::concept).toList()));
        }
        List<List<Object>> wanted = new ArrayList<>();
        for (JsonNode rep : one.get("wanted")) {
            List<String> tags = new ArrayList<>();
            rep.get(4).forEach(tag -> tags.add(tag.asText()));
            wanted.add(List.of(
                    rep.get(0).asText(),
                    rep.get(1).asText(),
                    rep.get(2).asDouble(),
                    rep.get(3).asDouble(),
                    tags));
        }
        assertThat(got).as(one.get("name").asText()).isEqualTo(wanted);
    }

    @Test
    void what_nobody_decided_on_stays_in_where_that_is_wanted_and_what_was_rejected_does_not() {
        Decisions rejecting = new Decisions(
                java.util.Map.of("rip:rips", false),
                java.util.Map.of(),
                java.util.Map.of(),
                List.of(),
                java.util.Set.of(),
                java.util.Set.of());

        List<ReviewedRep> reps = DevelopmentSetTest.READER.reviewed(narration(), notes(), rejecting, true);

        assertThat(reps).hasSize(2);
        assertThat(reps.get(0).rep().tags()).extracting(Mention::concept).containsExactly("bull-rush", "spin", "sack");
    }

    @Test
    void who_acts_goes_by_what_a_tag_was_changed_to() {
        Decisions decided = new Decisions(
                java.util.Map.of("rip:rips", true),
                java.util.Map.of(),
                java.util.Map.of("rip:rips", "sits-down"),
                List.of(),
                java.util.Set.of(),
                java.util.Set.of());

        Mention tag = DevelopmentSetTest.READER
                .reviewed(narration(), notes(), decided, false)
                .get(0)
                .rep()
                .tags()
                .get(0);

        assertThat(tag.actor()).isEqualTo(Actor.BLOCKER);
    }

    private static Narration narration() {
        List<Cue> cues = new ArrayList<>();
        for (JsonNode cue : FILE.get("cues")) {
            cues.add(new Cue(
                    cues.size() + 1,
                    "",
                    OptionalDouble.of(cue.get(1).asDouble()),
                    OptionalDouble.empty(),
                    List.of(),
                    "words",
                    cue.get(0).asInt()));
        }
        return new Narration("cases.vtt", Format.WEBVTT, cues, "", List.of());
    }

    private static Notes notes() {
        List<ProposedRep> reps = new ArrayList<>();
        for (JsonNode rep : FILE.get("reps")) {
            List<Mention> tags = new ArrayList<>();
            for (JsonNode tag : rep.get("tags")) {
                int from = tag.get(2).asInt();
                String text = tag.get(1).asText();
                tags.add(new Mention(
                        tag.get(0).asText(),
                        Assertion.PERFORMED,
                        Actor.PROSPECT,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        0,
                        0,
                        text,
                        from,
                        from + text.length(),
                        Band.SURE,
                        List.of()));
            }
            reps.add(new ProposedRep(
                    rep.get("ordinal").asInt(),
                    Optional.of(rep.get("phase"))
                            .filter(phase -> !phase.isNull())
                            .map(JsonNode::asText),
                    OptionalDouble.of(rep.get("start").asDouble()),
                    OptionalDouble.of(rep.get("end").asDouble()),
                    rep.get("from").asInt(),
                    rep.get("to").asInt(),
                    List.of(),
                    tags));
        }
        return new Notes("cases.vtt", List.of(), List.of(), reps, List.of(), List.of());
    }
}

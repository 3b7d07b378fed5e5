package rushlight.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.StreamSupport;

/**
 * Four weeks of an invented player, whose best value two other solvers (CP-SAT 9.11, HiGHS) proved, with a plan made by hand and
 * seven plans that break known rules. The file stands in the test resources.
 */
final class WorkedExample {
    final JsonNode json = read();

    static final PlanLimits LIMITS =
            new PlanLimits(3, 4, 30, 60, 12, 3, List.of(2, 1, 1, 1), 3, 2, 1, 2, 2, 2, 3, 6, 600);

    /** The task, with what a person decided. */
    PlanTask task(Wish... wishes) {
        return new PlanTask(slots(0), foci(), exercises(), LIMITS, List.of(wishes));
    }

    /** The same where fewer men are there on Tuesday and Wednesday. */
    PlanTask taskWithThreeMen() {
        return new PlanTask(slots(3), foci(), exercises(), LIMITS, List.of());
    }

    /** The block twice as long, with doses for it. */
    PlanTask taskOfEightWeeks() {
        List<Slot> slots = new ArrayList<>(slots(0));
        for (Slot s : slots(0)) {
            slots.add(new Slot(
                    "later " + s.label(),
                    s.week() + 4,
                    s.day() + 28,
                    s.minutes(),
                    s.highest(),
                    s.people(),
                    s.without(),
                    s.teamContactMinutes()));
        }
        List<Focus> foci = foci().stream()
                .map(f -> new Focus(f.skill(), f.weight(), f.first(), f.fewest(), 2 * f.most(), f.gap(), f.safety()))
                .toList();
        List<Exercise> exercises = exercises().stream()
                .map(e -> new Exercise(
                        e.slug(),
                        e.skill(),
                        e.rank(),
                        e.minutes(),
                        e.people(),
                        e.equipment(),
                        2 * e.mostSets(),
                        e.check()))
                .toList();
        return new PlanTask(slots, foci, exercises, LIMITS, List.of());
    }

    private List<Slot> slots(int mostMen) {
        return all("slots")
                .map(s -> new Slot(
                        s.get("label").asText(),
                        s.get("week").asInt(),
                        s.get("day").asInt(),
                        s.get("minutes").asInt(),
                        s.get("highest").asInt(),
                        mostMen > 0
                                ? Math.min(mostMen, s.get("people").asInt())
                                : s.get("people").asInt(),
                        s.get("sled").asBoolean() ? Set.of() : Set.of("sled"),
                        s.get("team").asInt()))
                .toList();
    }

    private List<Focus> foci() {
        return all("foci")
                .map(f -> new Focus(
                        f.get("skill").asText(),
                        f.get("weight").asInt(),
                        Set.copyOf(texts(f.get("first"))),
                        f.get("fewest").asInt(),
                        f.get("most").asInt(),
                        f.get("gap").asBoolean(),
                        f.get("safety").asBoolean()))
                .toList();
    }

    private List<Exercise> exercises() {
        return all("drills")
                .map(d -> new Exercise(
                        d.get("slug").asText(),
                        d.get("skill").asText(),
                        d.get("rank").asInt(),
                        d.get("minutes").asInt(),
                        d.get("people").asInt(),
                        d.get("sled").asBoolean() ? Set.of("sled") : Set.of(),
                        d.get("most").asInt(),
                        d.get("check").asBoolean()))
                .toList();
    }

    /** Plans of the file: for each session its slugs. */
    static List<List<String>> sessions(JsonNode node) {
        return StreamSupport.stream(node.spliterator(), false)
                .map(WorkedExample::texts)
                .toList();
    }

    private static List<String> texts(JsonNode node) {
        return StreamSupport.stream(node.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }

    private java.util.stream.Stream<JsonNode> all(String name) {
        return StreamSupport.stream(json.get(name).spliterator(), false);
    }

    private static JsonNode read() {
        try (InputStream in = WorkedExample.class.getResourceAsStream("/plan/worked-example.json")) {
            return new ObjectMapper().readTree(Objects.requireNonNull(in));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}

package rushlight.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.jena.query.Dataset;
import org.apache.jena.query.QueryExecutionFactory;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepId;
import rushlight.film.Step;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

@DisplayNameGeneration(ReplaceUnderscores.class)
class StoreTest {
    private static final FilmColumns COLUMNS = Taxonomy.of(Ontology.packaged()).film();
    private static final Instant NOW = Instant.parse("2026-11-25T10:00:00Z");
    private static final LogId OPENER = new LogId("first-eyes", "jory-penwick", "opener-2025-09-05");

    private final Store store = Store.inMemory(COLUMNS);

    @Test
    void gives_back_the_log_it_was_given() {
        Log log = log("opener", kickOut("r1"), bullRush("r2"));

        store.replace(List.of(classified(log)), "book", NOW);

        assertThat(store.log(OPENER)).contains(log);
        assertThat(store.logs()).containsExactly(OPENER);
    }

    @Test
    void the_order_of_a_list_survives_because_design_comes_before_what_happened() {
        Reading cutback =
                reading("r1", Map.of("phase", List.of("run"), "direction", List.of("run-away", "cutback-to-him")));
        Reading reversed =
                reading("r2", Map.of("phase", List.of("run"), "direction", List.of("cutback-to-him", "run-away")));

        store.replace(List.of(classified(log("opener", cutback, reversed))), "book", NOW);

        assertThat(store.log(OPENER).orElseThrow().readings()).containsExactly(cutback, reversed);
    }

    @Test
    void the_same_log_again_takes_the_place_of_the_first() {
        store.replace(List.of(classified(log("opener", kickOut("r1"), bullRush("r2")))), "book", NOW);

        store.replace(List.of(classified(log("opener", bullRush("r9")))), "book", NOW);

        assertThat(store.log(OPENER).orElseThrow().readings())
                .extracting(r -> r.rep().rep())
                .containsExactly("r9");
        assertThat(count("?s <https://rushlight.example/def#does> ?what")).isEqualTo(3);
    }

    @Test
    void every_change_has_a_number_and_says_which_logs_it_touched() {
        long first = store.replace(List.of(classified(log("opener", kickOut("r1")))), "book", NOW);
        long second = store.replace(List.of(classified(log("harbor", kickOut("r1")))), "book", NOW);

        assertThat(second).isEqualTo(first + 1).isEqualTo(store.revision());
        assertThat(store.changedSince(first))
                .containsExactly(new LogId("first-eyes", "jory-penwick", "harbor-2025-09-05"));
        assertThat(store.changedSince(second)).isEmpty();
    }

    @Test
    void a_change_that_fails_half_way_leaves_nothing_behind() {
        store.replace(List.of(classified(log("opener", kickOut("r1")))), "book", NOW);
        List<Classified> breaking = new AbstractList<>() {
            @Override
            public Classified get(int index) {
                if (index == 1) {
                    throw new IllegalStateException("the disk is full");
                }
                return classified(log("opener", bullRush("r5")));
            }

            @Override
            public int size() {
                return 2;
            }
        };

        assertThatThrownBy(() -> store.replace(breaking, "book", NOW)).hasMessage("the disk is full");

        assertThat(store.revision()).isEqualTo(1);
        assertThat(store.log(OPENER).orElseThrow().readings())
                .extracting(r -> r.rep().rep())
                .containsExactly("r1");
    }

    @Test
    void what_a_log_came_from_is_told_in_prov_terms() {
        store.replace(List.of(classified(log("opener", kickOut("r1")))), "book", NOW);

        assertThat(count("?log a <https://rushlight.example/def#Log> ; "
                        + "<http://www.w3.org/ns/prov#wasAttributedTo> ?who ; "
                        + "<http://www.w3.org/ns/prov#generatedAtTime> \"2026-11-25T10:00:00Z\"^^"
                        + "<http://www.w3.org/2001/XMLSchema#dateTime> ; "
                        + "<http://www.w3.org/ns/prov#wasDerivedFrom> ?file . "
                        + "?file <https://rushlight.example/def#fileName> \"opener.csv\" ; "
                        + "<https://rushlight.example/def#sha256> \"00ff\""))
                .isEqualTo(1);
    }

    @Test
    void what_is_known_of_a_prospect_is_not_forgotten_by_a_log_that_only_names_him() {
        Prospect full = new Prospect(
                "jory-penwick",
                "Jory Penwick",
                "edge",
                OptionalDouble.of(193.04),
                OptionalDouble.of(118.4),
                OptionalDouble.of(86.36),
                "Harrow Vale",
                "junior",
                "");
        store.replace(List.of(classified(log("opener", kickOut("r1")))), "book", NOW);
        store.change(
                new Change(List.of(), List.of(), List.of(full), Change.Note.of(Change.Kind.IMPORT, "")), "book", NOW);

        store.replace(List.of(classified(log("opener", kickOut("r1")))), "book", NOW);

        assertThat(store.prospects()).containsExactly(full);
    }

    @Test
    void a_folder_keeps_what_was_written(@TempDir Path folder) {
        Log log = log("opener", kickOut("r1"), bullRush("r2"));
        try (Store first = Store.in(folder, COLUMNS)) {
            first.replace(List.of(classified(log)), "book", NOW);
        }

        try (Store second = Store.in(folder, COLUMNS)) {
            assertThat(second.log(OPENER)).contains(log);
            assertThat(second.revision()).isEqualTo(1);
        }
    }

    private int count(String pattern) {
        return store.ask((Dataset data) -> {
            try (var query = QueryExecutionFactory.create("SELECT (COUNT(*) AS ?n) { " + pattern + " }", data)) {
                return query.execSelect().next().getLiteral("n").getInt();
            }
        });
    }

    private static Classified classified(Log log) {
        return new Classified(
                log,
                log.readings().stream().map(r -> Set.of("first-move-stopped")).toList());
    }

    private static Log log(String game, Reading... readings) {
        String id = game + "-2025-09-05";
        return new Log(
                "First Eyes",
                Prospect.named("jory-penwick", "Jory Penwick"),
                new Game(id, game, Optional.of(LocalDate.parse("2025-09-05")), "Port Ellery", "college"),
                Set.of("faults", "results"),
                Arrays.stream(readings)
                        .map(r -> new Reading(
                                new RepId("jory-penwick", id, r.rep().rep()), "First Eyes", r.tags(), r.exchange()))
                        .toList(),
                new Log.Source("opener.csv", "00ff"));
    }

    private static Reading kickOut(String rep) {
        return new Reading(
                new RepId("jory-penwick", "opener-2025-09-05", rep),
                "First Eyes",
                Map.of(
                        "phase", List.of("run"),
                        "down", List.of("1"),
                        "bodies_taken", List.of("2"),
                        "assignment", List.of("spill-assignment"),
                        "faults", List.of("high-pads", "outside-arm-pinned"),
                        "note", List.of("=HYPERLINK(\"x\"), \"quoted\"\nand <script>")),
                List.of(
                        new Step(Step.By.BLOCKER, "kick-out-block", Optional.empty()),
                        new Step(Step.By.HIM, "wrong-arm", Optional.of("inside"))));
    }

    private static Reading bullRush(String rep) {
        return new Reading(
                new RepId("jory-penwick", "opener-2025-09-05", rep),
                "First Eyes",
                Map.of("phase", List.of("pass-rush"), "result", List.of("won"), "start", List.of("0:12.4")),
                List.of(
                        new Step(Step.By.HIM, "bull-rush", Optional.empty()),
                        new Step(Step.By.BLOCKER, "anchor-hop", Optional.empty()),
                        new Step(Step.By.HIM, "push-pull", Optional.of("inside"))));
    }

    private static Reading reading(String rep, Map<String, List<String>> tags) {
        return new Reading(new RepId("jory-penwick", "opener-2025-09-05", rep), "First Eyes", tags, List.of());
    }
}

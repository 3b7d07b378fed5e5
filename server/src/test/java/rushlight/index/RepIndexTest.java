package rushlight.index;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.film.RepFacts;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Facet;
import rushlight.situation.Facets;
import rushlight.situation.LogFacts;
import rushlight.situation.RandomSituations;
import rushlight.situation.Sighting;
import rushlight.situation.Situation;
import rushlight.situation.Tape;
import rushlight.situation.Tapes;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class RepIndexTest {
    private static final Ontology BOOK = Ontology.packaged();
    private static final Taxonomy TAXONOMY = Taxonomy.of(BOOK);
    private static final Facets FACETS = Facets.of(BOOK, TAXONOMY);
    private static final List<String> BELIEVED = List.of("Second Eyes", "First Eyes");
    private static final IndexState FIRST = new IndexState(1, "book");
    private static final IndexState SECOND = new IndexState(2, "book");

    private final RandomFilm film = new RandomFilm(7, FACETS, TAXONOMY);

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void a_tape_of_the_index_is_the_tape_in_memory(long seed) {
        List<LogFacts> logs = new RandomFilm(seed, FACETS, TAXONOMY).logs(5, 4, 12);
        RandomSituations random = new RandomSituations(seed, FACETS);
        List<Situation> situations =
                Stream.generate(() -> random.next(3)).limit(150).toList();
        List<Tape> inMemory = Tapes.of(logs, BELIEVED);

        try (RepIndex index = filled(logs)) {
            index.read(BELIEVED, footage -> {
                List<Tape> all = footage.tapes().toList();
                assertThat(all).hasSameSizeAs(inMemory);
                for (int i = 0; i < all.size(); i++) {
                    Tape memory = inMemory.get(i);
                    assertSame(all.get(i), memory, situations);
                    assertSame(footage.tape(memory.prospect().id()).orElseThrow(), memory, situations);
                }
                return true;
            });
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {5, 6})
    void counts_for_everybody_are_those_of_the_tapes_in_memory(long seed) {
        List<LogFacts> logs = new RandomFilm(seed, FACETS, TAXONOMY).logs(6, 3, 15);
        RandomSituations random = new RandomSituations(seed, FACETS);
        List<Tape> inMemory = Tapes.of(logs, BELIEVED);

        try (RepIndex index = filled(logs)) {
            for (int i = 0; i < 100; i++) {
                Situation opportunity = random.next(2);
                Situation event = random.next(2);

                assertThat(counts(index, opportunity, event)).isEqualTo(counted(inMemory, opportunity, event));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {8, 9})
    void after_any_changes_everybodys_tapes_and_counts_are_those_in_memory(long seed) {
        RandomFilm changing = new RandomFilm(seed, FACETS, TAXONOMY);
        RandomSituations random = new RandomSituations(seed, FACETS);
        Random dice = new Random(seed);
        SortedMap<String, LogFacts> now = new TreeMap<>();
        List<Situation> situations =
                Stream.generate(() -> random.next(2)).limit(12).toList();

        try (RepIndex index = filled(List.of())) {
            for (int revision = 2; revision < 120; revision++) {
                Map<String, LogFacts> put = new HashMap<>();
                Map<String, LogFacts> gone = new HashMap<>();
                for (int some = dice.nextInt(3); some >= 0; some--) {
                    LogFacts log = changing.log(
                            BELIEVED.get(dice.nextInt(2)),
                            RandomFilm.prospect(dice.nextInt(4)),
                            RandomFilm.game(dice.nextInt(3)),
                            dice.nextInt(1, 9));
                    put.put(Fields.key(id(log)), log);
                }
                now.forEach((key, log) -> {
                    if (dice.nextInt(12) == 0 && !put.containsKey(key)) {
                        gone.put(key, log);
                    }
                });
                now.putAll(put);
                now.keySet().removeAll(gone.keySet());
                List<LogId> goneIds =
                        gone.values().stream().map(RepIndexTest::id).toList();
                index.update(put.values().stream(), goneIds, List.of(), new IndexState(revision, "book"));

                List<Tape> inMemory = Tapes.of(List.copyOf(now.values()), BELIEVED);
                index.read(BELIEVED, footage -> {
                    List<Tape> all = footage.tapes().toList();
                    assertThat(all).hasSameSizeAs(inMemory);
                    for (int i = 0; i < all.size(); i++) {
                        assertSame(all.get(i), inMemory.get(i), situations);
                    }
                    return true;
                });
                Situation opportunity = situations.get(dice.nextInt(situations.size()));
                Situation event = situations.get(dice.nextInt(situations.size()));
                assertThat(counts(index, opportunity, event)).isEqualTo(counted(inMemory, opportunity, event));
            }
        }
    }

    private static LogId id(LogFacts log) {
        return new IndexedLog(
                        log.log().evaluator(), log.log().prospect(), log.log().game())
                .id();
    }

    @Test
    void a_reading_comes_back_whole() {
        List<LogFacts> logs = List.of(film.log("First Eyes", RandomFilm.prospect(1), RandomFilm.game(1), 10));

        try (RepIndex index = filled(logs)) {
            List<IndexedRep> reps = index.read(BELIEVED, footage -> footage.reps("p1"));

            assertThat(reps)
                    .extracting(IndexedRep::reading)
                    .isEqualTo(logs.get(0).log().readings());
            assertThat(reps).extracting(IndexedRep::facts).isEqualTo(logs.get(0).facts());
        }
    }

    @Test
    void a_log_that_is_read_again_takes_the_place_of_the_old_one() {
        LogFacts old = film.log("First Eyes", RandomFilm.prospect(1), RandomFilm.game(1), 9);
        LogFacts other = film.log("First Eyes", RandomFilm.prospect(1), RandomFilm.game(2), 5);
        LogFacts revised = film.log("First Eyes", RandomFilm.prospect(1), RandomFilm.game(1), 3);
        LogFacts stranger = film.log("First Eyes", RandomFilm.prospect(2), RandomFilm.game(1), 2);

        try (RepIndex index = filled(List.of(old, other, stranger))) {
            index.update(Stream.of(revised), List.of(new LogId("first-eyes", "p2", "g1")), List.of(), SECOND);

            assertThat(facts(index, "p1"))
                    .isEqualTo(Stream.of(other, revised)
                            .flatMap(l -> l.facts().stream())
                            .toList());
            assertThat(index.read(BELIEVED, Footage::prospects))
                    .extracting(Prospect::id)
                    .containsExactly("p1");
            assertThat(index.state()).contains(SECOND);
        }
    }

    @Test
    void what_is_known_of_a_prospect_is_shown_in_place_of_what_the_log_knew() {
        Prospect grown = Prospect.named("p1", "Prospect One");

        try (RepIndex index = filled(List.of(film.log("First Eyes", RandomFilm.prospect(1), RandomFilm.game(1), 2)))) {
            assertThat(index.read(BELIEVED, Footage::prospects)).containsExactly(RandomFilm.prospect(1));

            index.update(Stream.of(), List.of(), List.of(Prospect.named("p1", "Before")), SECOND);
            index.update(Stream.of(), List.of(), List.of(grown), SECOND);

            assertThat(index.read(BELIEVED, Footage::prospects)).containsExactly(grown);
            Prospect onTape =
                    index.read(BELIEVED, f -> f.tape("p1").orElseThrow().prospect());
            assertThat(onTape).isEqualTo(grown);
        }
    }

    @Test
    void there_is_no_tape_of_somebody_never_watched() {
        try (RepIndex index = filled(List.of())) {
            Optional<Tape> tape = index.read(BELIEVED, footage -> footage.tape("p1"));
            assertThat(tape).isEmpty();
            assertThat(counts(index, Situation.has("phase", "run"), Situation.has("outcome", "won")))
                    .isEmpty();
        }
    }

    @Test
    void a_question_sees_one_state_while_another_is_written() {
        LogFacts old = film.log("First Eyes", RandomFilm.prospect(1), RandomFilm.game(1), 9);
        LogFacts revised = film.log("First Eyes", RandomFilm.prospect(1), RandomFilm.game(1), 3);

        try (RepIndex index = filled(List.of(old))) {
            List<Integer> sizes = index.read(BELIEVED, before -> {
                index.update(Stream.of(revised), List.of(), List.of(), SECOND);
                int after = index.read(BELIEVED, f -> f.tape("p1").orElseThrow().size());
                return List.of(before.tape("p1").orElseThrow().size(), after);
            });

            assertThat(sizes).containsExactly(9, 3);
        }
    }

    @Test
    void it_is_still_there_when_the_folder_is_opened_again() {
        List<LogFacts> logs = film.logs(2, 2, 4);
        try (RepIndex index = RepIndex.in(folder, FACETS, List.of())) {
            assertThat(index.state()).isEmpty();
            index.rebuild(logs.stream(), List.of(), FIRST);
        }

        try (RepIndex index = RepIndex.in(folder, FACETS, List.of())) {
            assertThat(index.state()).contains(FIRST);
            assertThat(facts(index, "p1"))
                    .hasSize(Tapes.of(logs, BELIEVED).get(1).size());
        }
    }

    @Test
    void a_change_that_fails_leaves_what_was_committed() {
        List<LogFacts> logs = film.logs(2, 2, 4);
        try (RepIndex index = RepIndex.in(folder, FACETS, List.of())) {
            index.rebuild(logs.stream(), List.of(), FIRST);
            Stream<LogFacts> broken = Stream.of(1, 2).map(i -> {
                if (i == 2) {
                    throw new IllegalStateException("the store fell over");
                }
                return film.log("First Eyes", RandomFilm.prospect(9), RandomFilm.game(1), 3);
            });

            assertThatThrownBy(() -> index.update(broken, List.of(), List.of(), SECOND))
                    .hasMessage("the store fell over");
        }

        try (RepIndex index = RepIndex.in(folder, FACETS, List.of())) {
            assertThat(index.state()).contains(FIRST);
            assertThat(index.read(BELIEVED, Footage::prospects))
                    .extracting(Prospect::id)
                    .containsExactly("p0", "p1");
        }
    }

    @Test
    void a_damaged_index_is_emptied_and_asks_to_be_made_again() throws IOException {
        try (RepIndex index = RepIndex.in(folder, FACETS, List.of())) {
            index.rebuild(film.logs(2, 2, 4).stream(), List.of(), FIRST);
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.getFileName().toString().startsWith("segments_"))
                    .toList()) {
                Files.writeString(file, "not an index");
            }
        }

        try (RepIndex index = RepIndex.in(folder, FACETS, List.of())) {
            assertThat(index.state()).isEmpty();
            assertThat(index.read(BELIEVED, Footage::prospects)).isEmpty();
        }
    }

    @Test
    void an_index_of_another_format_counts_as_none() {
        assertThat(IndexState.read(new TreeMap<>(FIRST.commitData()))).contains(FIRST);

        SortedMap<String, String> older = new TreeMap<>(FIRST.commitData());
        older.put("format", "0");

        assertThat(IndexState.read(older)).isEqualTo(Optional.empty());
    }

    private static void assertSame(Tape tape, Tape memory, List<Situation> situations) {
        assertThat(tape.prospect()).isEqualTo(memory.prospect());
        assertThat(tape.size()).isEqualTo(memory.size());
        assertThat(tape.games()).isEqualTo(memory.games());
        assertThat(sightings(tape)).isEqualTo(sightings(memory));
        for (Situation situation : situations) {
            assertThat(tape.fitting(situation)).as(situation.toString()).isEqualTo(memory.fitting(situation));
        }
        for (Facet facet : FACETS.all()) {
            assertThat(tape.rows(facet.name())).as(facet.name()).isEqualTo(memory.rows(facet.name()));
        }
    }

    private static List<Sighting> sightings(Tape tape) {
        return IntStream.range(0, tape.size()).mapToObj(tape::sighting).toList();
    }

    private static SortedMap<String, Count> counted(List<Tape> tapes, Situation opportunity, Situation event) {
        SortedMap<String, Count> counts = new TreeMap<>();
        for (Tape tape : tapes) {
            BitSet events = (BitSet) tape.fitting(opportunity).clone();
            int opportunities = events.cardinality();
            events.and(tape.fitting(event));
            if (opportunities > 0) {
                counts.put(tape.prospect().id(), new Count(opportunities, events.cardinality()));
            }
        }
        return counts;
    }

    private static SortedMap<String, Count> counts(RepIndex index, Situation opportunity, Situation event) {
        return index.read(BELIEVED, footage -> footage.counts(opportunity, event));
    }

    private static List<RepFacts> facts(RepIndex index, String prospect) {
        return new ArrayList<>(index.read(BELIEVED, f -> f.reps(prospect)).stream()
                .map(IndexedRep::facts)
                .toList());
    }

    private static RepIndex filled(List<LogFacts> logs) {
        RepIndex index = RepIndex.inMemory(FACETS, List.of());
        index.rebuild(logs.stream(), List.of(), FIRST);
        return index;
    }
}

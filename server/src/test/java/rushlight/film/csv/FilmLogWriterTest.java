package rushlight.film.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepId;

@DisplayNameGeneration(ReplaceUnderscores.class)
class FilmLogWriterTest {
    private static final Game GAME = new Game("mill-night", "Mill Night", Optional.empty(), "", "");
    private static final Log.Source SOURCE = new Log.Source("log.csv", "");

    static LongStream seeds() {
        return LongStream.range(0, 120);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void what_is_written_reads_back_the_same(long seed) throws IOException {
        List<Log> logs = new RandomLogs(SmallLog.BOOK, seed).logs();

        ReadResult result = SmallLog.read(written(logs));

        assertThat(SmallLog.faults(result)).isEmpty();
        assertThat(((ReadResult.Accepted) result).logs())
                .map(FilmLogWriterTest::withoutSource)
                .containsExactlyElementsOf(logs);
    }

    @Test
    void writes_the_columns_of_the_book_without_lists_nobody_charted() throws IOException {
        String text = written(List.of(log("north", Set.of("faults"), Map.of("phase", List.of("run")))));

        assertThat(text.lines().findFirst().orElseThrow().split(",", -1))
                .startsWith("rep", "prospect", "game", "date")
                .contains("faults", "not_seen", "note")
                .doesNotContain("help", "results", "direction", "chances");
    }

    @Test
    void a_log_that_left_a_list_out_says_so_beside_one_that_did_not() throws IOException {
        Log charted = log("north", Set.of("faults", "help"), Map.of("phase", List.of("run")));
        Log uncharted = log("south", Set.of("help"), Map.of("phase", List.of("run"), "not_seen", List.of("hash")));

        List<Log> back = ((ReadResult.Accepted) SmallLog.read(written(List.of(charted, uncharted)))).logs();

        assertThat(back.get(0).readings().get(0).all("not_seen")).isEmpty();
        assertThat(back.get(1).readings().get(0).all("not_seen")).containsExactly("hash", "faults");
    }

    @Test
    void a_prospect_whose_id_is_not_his_name_is_written_by_his_id() throws IOException {
        Prospect listed = Prospect.named("p07", "Oren Halloway");
        Log log = new Log("north", listed, GAME, Set.of(), List.of(reading("p07", Map.of())), SOURCE);

        assertThat(written(List.of(log)).lines().skip(1).findFirst().orElseThrow())
                .startsWith("r1,p07,Mill Night,");
    }

    private static Log log(String evaluator, Set<String> charted, Map<String, List<String>> tags) {
        Prospect prospect = Prospect.named("oren-halloway", "Oren Halloway");
        return new Log(evaluator, prospect, GAME, charted, List.of(reading(prospect.id(), tags)), SOURCE);
    }

    private static Reading reading(String prospect, Map<String, List<String>> tags) {
        return new Reading(new RepId(prospect, GAME.id(), "r1"), "north", tags, List.of());
    }

    private static String written(List<Log> logs) throws IOException {
        StringBuilder out = new StringBuilder();
        FilmLogWriter.of(SmallLog.BOOK.film()).write(logs, out);
        return out.toString();
    }

    private static Log withoutSource(Log log) {
        return new Log(log.evaluator(), log.prospect(), log.game(), log.charted(), log.readings(), SOURCE);
    }
}

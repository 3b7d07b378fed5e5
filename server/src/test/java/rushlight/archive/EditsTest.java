package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.film.csv.TypedRow;
import rushlight.store.PastChange;

/** Film is mended a rep at a time: nobody's work is lost to a second writer, and every change can be taken back. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class EditsTest {
    private static final LogId OPENER = new LogId("ada", "jory-penwick", "opener");
    private static final String FILE = """
        rep,prospect,game,phase,exchange,result,faults,snap,evaluator
        r1,Jory Penwick,opener,pass-rush,bull-rush > [sits-down],lost,,1,Ada
        r2,Jory Penwick,opener,pass-rush,long-arm,won,,2,Ada
        """;

    @TempDir
    private Path folder;

    private Archive archive;

    @BeforeEach
    void open() {
        archive = Archive.open(folder);
        put(FILE, false);
    }

    @AfterEach
    void close() {
        archive.close();
    }

    @Test
    void an_edit_is_stored_classified_again_and_counted() {
        assertThat(won()).isEqualTo(1);

        EditResult.Done done = done(archive.edits()
                .edit(OPENER, "r1", version("r1"), typed("r1", "exchange", "bull-rush", "result", "won", "snap", "1")));

        assertThat(done.said()).isEqualTo("Changed r1 of Jory Penwick, opener.");
        assertThat(done.reading().orElseThrow().classes()).contains("first-move-won");
        assertThat(won()).isEqualTo(2);
        assertThat(reps()).containsExactly("r1", "r2");
    }

    @Test
    void whoever_saw_an_older_version_changes_nothing_and_gets_the_newer_one() {
        String seen = version("r1");
        done(archive.edits().edit(OPENER, "r1", seen, typed("r1", "exchange", "rip", "result", "won")));

        EditResult second = archive.edits().edit(OPENER, "r1", seen, typed("r1", "exchange", "spin", "result", "even"));

        assertThat(second)
                .isInstanceOfSatisfying(
                        EditResult.Stale.class,
                        stale -> assertThat(stale.current()
                                        .reading()
                                        .exchange()
                                        .get(0)
                                        .concept())
                                .isEqualTo("rip"));
        assertThat(reading("r1").reading().one("result")).contains("won");
    }

    @Test
    void an_edit_is_taken_back_and_brought_back() {
        KeptReading before = reading("r1");
        EditResult.Done edit = done(
                archive.edits().edit(OPENER, "r1", version("r1"), typed("r1", "exchange", "rip", "result", "won")));

        EditResult.Done undo = done(archive.edits().undo(Optional.empty()));

        assertThat(reading("r1")).isEqualTo(before);
        assertThat(undo.said()).isEqualTo("Took back: Changed r1 of Jory Penwick, opener.");
        assertThat(archive.edits().undo(Optional.of(edit.revision()))).isInstanceOf(EditResult.Refused.class);

        done(archive.edits().undo(Optional.of(undo.revision())));

        assertThat(reading("r1").reading().one("result")).contains("won");
    }

    @Test
    void undo_without_a_number_walks_back_change_by_change() {
        List<String> before = reps();
        done(archive.edits().add(typed("r3", "exchange", "rip", "result", "won")));
        done(archive.edits().remove(OPENER, "r1", Optional.empty()));
        assertThat(reps()).containsExactly("r2", "r3");

        done(archive.edits().undo(Optional.empty()));
        assertThat(reps()).containsExactly("r1", "r2", "r3");
        done(archive.edits().undo(Optional.empty()));

        assertThat(reps()).isEqualTo(before);
        assertThat(won()).isEqualTo(1);
    }

    @Test
    void a_change_under_a_newer_one_stays_until_the_newer_one_is_taken_back() {
        EditResult.Done first = done(
                archive.edits().edit(OPENER, "r1", version("r1"), typed("r1", "exchange", "rip", "result", "won")));
        EditResult.Done second = done(
                archive.edits().edit(OPENER, "r1", version("r1"), typed("r1", "exchange", "spin", "result", "even")));

        EditResult refused = archive.edits().undo(Optional.of(first.revision()));

        assertThat(refused)
                .isInstanceOfSatisfying(
                        EditResult.Refused.class,
                        r -> assertThat(r.reasons())
                                .containsExactly("Change " + second.revision()
                                        + " came after it: Changed r1 of Jory Penwick, opener. Take that back first."));
        done(archive.edits().undo(Optional.of(second.revision())));
        done(archive.edits().undo(Optional.of(first.revision())));
        assertThat(reading("r1").reading().one("result")).contains("lost");
    }

    @Test
    void an_import_that_replaced_a_log_is_taken_back_whole() {
        List<Log> before = archive.logs();
        put(FILE.replace("long-arm,won", "rip,lost").replace(",faults,", ",chances,"), false);
        assertThat(archive.logs()).isNotEqualTo(before);

        done(archive.edits().undo(Optional.empty()));

        assertThat(archive.logs()).isEqualTo(before);
        assertThat(won()).isEqualTo(1);
    }

    @Test
    void the_first_import_is_taken_back_to_nothing_and_brought_back() {
        List<Log> before = archive.logs();

        EditResult.Done undo = done(archive.edits().undo(Optional.empty()));

        assertThat(archive.logs()).isEmpty();
        assertThat(archive.assess("jory-penwick")).isEmpty();

        done(archive.edits().undo(Optional.of(undo.revision())));

        assertThat(archive.logs()).isEqualTo(before);
    }

    @Test
    void a_log_goes_with_its_last_rep_and_comes_back_with_it() {
        List<Log> before = archive.logs();
        done(archive.edits().remove(OPENER, "r1", Optional.empty()));
        done(archive.edits().remove(OPENER, "r2", Optional.of(version("r2"))));
        assertThat(archive.logs()).isEmpty();

        done(archive.edits().undo(Optional.empty()));
        done(archive.edits().undo(Optional.empty()));

        assertThat(archive.logs()).isEqualTo(before);
    }

    @Test
    void a_column_that_is_new_to_the_log_is_not_seen_on_the_other_reps_and_undo_takes_that_back_too() {
        List<Log> before = archive.logs();

        done(archive.edits()
                .edit(OPENER, "r1", version("r1"), typed("r1", "exchange", "rip", "chances", "opp-finish")));

        assertThat(archive.log(OPENER).orElseThrow().charted()).contains("chances");
        assertThat(reading("r2").reading().all("not_seen")).containsExactly("chances");
        done(archive.edits().undo(Optional.empty()));
        assertThat(archive.logs()).isEqualTo(before);
    }

    @Test
    void a_name_that_is_taken_is_refused() {
        assertThat(archive.edits().add(typed("R1", "result", "won"))).isInstanceOf(EditResult.Refused.class);
        assertThat(archive.edits().edit(OPENER, "r1", version("r1"), typed("r2", "result", "won")))
                .isInstanceOf(EditResult.Refused.class);
        assertThat(reps()).containsExactly("r1", "r2");
    }

    @Test
    void what_was_changed_can_be_read_the_newest_first() {
        done(archive.edits().edit(OPENER, "r1", version("r1"), typed("r1", "exchange", "rip", "result", "won")));

        List<History.Told> told = History.latest(archive.store(), 5);

        assertThat(told).extracting(one -> one.change().kind()).containsExactly("edit", "import");
        PastChange edit = told.get(0).change();
        assertThat(edit.before())
                .singleElement()
                .satisfies(was -> assertThat(was.reading().one("result")).contains("lost"));
    }

    @Test
    void an_import_can_be_taken_back_though_everything_was_indexed_again_since() {
        archive.rebuild();

        done(archive.edits().undo(Optional.empty()));

        assertThat(archive.logs()).isEmpty();
    }

    @Test
    void a_folder_closed_after_edits_opens_with_them() {
        done(archive.edits().remove(OPENER, "r1", Optional.empty()));
        archive.close();

        archive = Archive.open(folder);

        assertThat(reps()).containsExactly("r2");
        done(archive.edits().undo(Optional.empty()));
        assertThat(reps()).containsExactly("r1", "r2");
    }

    private void put(String csv, boolean add) {
        ReadResult read = FilmLogReader.of(archive.book().taxonomy())
                .read(
                        "friday.csv",
                        new ByteArrayInputStream(csv.getBytes(StandardCharsets.UTF_8)),
                        FilmLogReader.Options.none());
        assertThat(read).isInstanceOf(ReadResult.Accepted.class);
        assertThat(archive.put(((ReadResult.Accepted) read).logs(), add)).isInstanceOf(PutResult.Stored.class);
    }

    private Log typed(String rep, String... cells) {
        Map<String, String> row = new LinkedHashMap<>(Map.of(
                "rep", rep, "prospect", "Jory Penwick", "game", "opener", "phase", "pass-rush", "evaluator", "Ada"));
        for (int i = 0; i < cells.length; i += 2) {
            row.put(cells[i], cells[i + 1]);
        }
        TypedRow.Result result = TypedRow.of(archive.book().taxonomy())
                .read(row, Set.of(), FilmLogReader.Options.none(), new Log.Source("typed in", "00"));
        assertThat(result.faults()).isEmpty();
        return result.log().orElseThrow();
    }

    private KeptReading reading(String rep) {
        return archive.edits().reading(OPENER, rep).orElseThrow();
    }

    private String version(String rep) {
        return ReadingVersion.of(reading(rep).reading());
    }

    private List<String> reps() {
        return archive.log(OPENER).orElseThrow().readings().stream()
                .map(reading -> reading.rep().rep())
                .toList();
    }

    private int won() {
        return archive.watch(footage -> footage.tape("jory-penwick")
                .orElseThrow()
                .rows("outcome")
                .getOrDefault("won", new BitSet())
                .cardinality());
    }

    private static EditResult.Done done(EditResult result) {
        assertThat(result).isInstanceOf(EditResult.Done.class);
        return (EditResult.Done) result;
    }
}

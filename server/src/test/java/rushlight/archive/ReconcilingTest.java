package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Reconciling.Choice;
import rushlight.archive.Reconciling.Side;
import rushlight.film.LogId;
import rushlight.film.Reading;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;

/** Two evaluators settle on one reading: it counts before theirs, and theirs are left alone. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ReconcilingTest {
    private static final LogId ADA = new LogId("ada", "jory-penwick", "opener");
    private static final LogId BEN = new LogId("ben", "jory-penwick", "opener");
    private static final LogId SETTLED = new LogId("reconciled", "jory-penwick", "opener");

    @TempDir
    private Path folder;

    private Archive archive;

    @BeforeEach
    void open() {
        archive = Archive.open(folder);
        put("""
            rep,prospect,game,phase,exchange,result,assignment,assignment_source,faults,not_seen,snap,evaluator
            r1,Jory Penwick,opener,pass-rush,bull-rush > [sits-down],lost,,,feet-stop-at-contact,,1,Ada
            r2,Jory Penwick,opener,pass-rush,long-arm,won,,,,,2,Ada
            """);
        put("""
            rep,prospect,game,phase,exchange,result,assignment,assignment_source,shed,not_seen,snap,evaluator
            r1,Jory Penwick,opener,pass-rush,bull-rush > [sits-down] > rip,won,contain-force-assignment,stated,none,hands,1,Ben
            r2,Jory Penwick,opener,pass-rush,long-arm,lost,,,,,2,Ben
            """);
    }

    @AfterEach
    void close() {
        archive.close();
    }

    @Test
    void the_first_evaluators_reading_counts_until_the_two_have_settled_on_another() {
        assertThat(results()).containsExactly("lost", "won");

        EditResult.Done done = done(settle("r1", Map.of("result", Choice.SECOND)));

        assertThat(done.said()).isEqualTo("Added r1 of Jory Penwick, opener.");
        assertThat(results()).containsExactly("won", "won");
        assertThat(reading(ADA, "r1").one("result")).contains("lost");
        assertThat(reading(BEN, "r1").one("result")).contains("won");
        assertThat(archive.assess("jory-penwick").orElseThrow().reps()).isEqualTo(2);
    }

    @Test
    void a_column_nobody_chose_in_is_the_firsts_or_the_seconds_where_the_first_is_silent() {
        Reading settled = settled(Map.of("result", Choice.SECOND));

        assertThat(settled.exchange()).hasSize(2);
        assertThat(settled.one("result")).contains("won");
        assertThat(settled.one("shed")).contains("none");
        assertThat(settled.one("assignment")).contains("contain-force-assignment");
        assertThat(settled.one("assignment_source")).contains("stated");
        assertThat(settled.all("faults")).containsExactly("feet-stop-at-contact");
    }

    @Test
    void how_a_duty_is_known_goes_with_the_duty() {
        Reading settled = settled(Map.of("assignment", Choice.FIRST));

        assertThat(settled.one("assignment")).isEmpty();
        assertThat(settled.one("assignment_source")).contains("unknown");
    }

    @Test
    void what_the_chosen_one_did_not_see_stays_unseen() {
        assertThat(settled(Map.of()).all("not_seen")).isEmpty();
        done(archive.edits().undo(Optional.empty()));

        Reading settled = settled(Map.of("faults", Choice.SECOND));

        assertThat(settled.all("faults")).isEmpty();
        assertThat(settled.all("not_seen")).containsExactly("faults", "hands");
    }

    @Test
    void whoever_chose_by_an_older_reading_settles_nothing_and_gets_the_newer_one() {
        Side before = side(BEN, "r1");
        done(archive.edits().remove(BEN, "r1", Optional.empty()));
        put("""
            rep,prospect,game,phase,exchange,result,snap,evaluator
            r1,Jory Penwick,opener,pass-rush,spin,even,1,Ben
            """);

        EditResult result = Reconciling.of(archive).settle("r1", side(ADA, "r1"), before, Optional.empty(), Map.of());

        assertThat(result)
                .isInstanceOfSatisfying(
                        EditResult.Stale.class,
                        stale -> assertThat(stale.current().reading().one("result"))
                                .contains("even"));
        assertThat(archive.log(SETTLED)).isEmpty();
    }

    @Test
    void two_who_settle_at_once_do_not_overwrite_each_other() {
        String first = version(done(settle("r1", Map.of("result", Choice.SECOND))));

        assertThat(settle("r1", Map.of())).isInstanceOf(EditResult.Stale.class);
        EditResult again =
                Reconciling.of(archive).settle("r1", side(ADA, "r1"), side(BEN, "r1"), Optional.of(first), Map.of());

        assertThat(done(again).said()).isEqualTo("Changed r1 of Jory Penwick, opener.");
        assertThat(results()).containsExactly("lost", "won");
        assertThat(Reconciling.of(archive).settle("r1", side(ADA, "r1"), side(BEN, "r1"), Optional.of(first), Map.of()))
                .isInstanceOf(EditResult.Stale.class);
    }

    @Test
    void what_was_settled_is_taken_back() {
        done(settle("r1", Map.of("result", Choice.SECOND)));

        done(archive.edits().undo(Optional.empty()));

        assertThat(results()).containsExactly("lost", "won");
        assertThat(archive.log(SETTLED)).isEmpty();
    }

    @Test
    void only_two_evaluators_readings_of_one_rep_are_reconciled() {
        done(settle("r1", Map.of()));

        assertThat(reasons(Reconciling.of(archive)
                        .settle("r1", side(ADA, "r1"), side(SETTLED, "r1"), Optional.empty(), Map.of())))
                .containsExactly(
                        "A reconciled reading is not reconciled again: change it, or choose anew between the two.");
        assertThat(reasons(Reconciling.of(archive)
                        .settle("r1", side(ADA, "r1"), side(ADA, "r1"), Optional.empty(), Map.of())))
                .containsExactly("Two evaluators' readings of one rep can be reconciled, and these are not.");
        assertThat(reasons(settle("r2", Map.of("mood", Choice.FIRST))))
                .containsExactly("There is no column \"mood\" to choose in.");
        assertThat(Reconciling.of(archive).settle("r9", side(ADA, "r1"), side(BEN, "r1"), Optional.empty(), Map.of()))
                .isInstanceOf(EditResult.Missing.class);
    }

    private EditResult settle(String rep, Map<String, Choice> choices) {
        return Reconciling.of(archive).settle(rep, side(ADA, rep), side(BEN, rep), Optional.empty(), choices);
    }

    private Reading settled(Map<String, Choice> choices) {
        return done(settle("r1", choices)).reading().orElseThrow().reading();
    }

    private Side side(LogId log, String rep) {
        return new Side(log, ReadingVersion.of(reading(log, rep)));
    }

    private Reading reading(LogId log, String rep) {
        return archive.edits().reading(log, rep).orElseThrow().reading();
    }

    private static String version(EditResult.Done done) {
        return ReadingVersion.of(done.reading().orElseThrow().reading());
    }

    private List<String> results() {
        return archive.watch(footage -> footage.reps("jory-penwick").stream()
                .map(rep -> rep.reading().one("result").orElse(""))
                .toList());
    }

    private static List<String> reasons(EditResult result) {
        assertThat(result).isInstanceOf(EditResult.Refused.class);
        return ((EditResult.Refused) result).reasons();
    }

    private static EditResult.Done done(EditResult result) {
        assertThat(result).isInstanceOf(EditResult.Done.class);
        return (EditResult.Done) result;
    }

    private void put(String text) {
        ReadResult read = FilmLogReader.of(archive.book().taxonomy())
                .read(
                        "two.csv",
                        new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                        FilmLogReader.Options.none());
        assertThat(read).isInstanceOf(ReadResult.Accepted.class);
        assertThat(archive.put(((ReadResult.Accepted) read).logs(), false)).isInstanceOf(PutResult.Stored.class);
    }
}

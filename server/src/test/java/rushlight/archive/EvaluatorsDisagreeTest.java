package rushlight.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.evidence.Verdict;
import rushlight.film.Log;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.SeenAlike;

/** What two evaluators do not agree on carries no sure word, in memory, in the index and wherever it is asked for. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class EvaluatorsDisagreeTest {
    private static final String FINDING = "slow-get-off";
    private static final int REPS = 40;

    private final Book book = Book.packaged();

    @TempDir
    private Path folder;

    @Test
    void one_evaluator_alone_is_taken_at_his_word() {
        Judged judged = assessed(logs("Ada", EvaluatorsDisagreeTest::ada));

        assertThat(judged.verdict()).isEqualTo(Verdict.CONFIRMED);
        assertThat(judged.sentence()).doesNotContain("Held back");
    }

    @Test
    void two_who_agree_change_nothing() {
        assertThat(assessed(logs("Ada", EvaluatorsDisagreeTest::ada), logs("Ben", EvaluatorsDisagreeTest::ada))
                        .sentence())
                .isEqualTo(assessed(logs("Ada", EvaluatorsDisagreeTest::ada)).sentence());
    }

    /** Both late on 20, Ada alone on 10: Do = 10/40, De = 2 * 50 * 30 / (80 * 79), so alpha = 0.473 by hand. */
    @Test
    void too_little_agreement_leaves_the_word_open_and_says_why() {
        Judged judged = assessed(logs("Ada", EvaluatorsDisagreeTest::ada), logs("Ben", rep -> rep % 2 == 0));

        assertThat(judged.verdict()).isEqualTo(Verdict.WATCH);
        assertThat(judged.outcome().rate().events()).isEqualTo(30);
        assertThat(judged.sentence())
                .startsWith("Open: ")
                .endsWith(" Held back: two evaluators see it alike on 30 of the 40 reps both call a chance (alpha 0.47,"
                        + " 0.67 is needed to say more than open).");
    }

    /** Ada alone on 4: Do = 4/40, De = 2 * 56 * 24 / (80 * 79), so alpha = 0.765 by hand. */
    @Test
    void middling_agreement_takes_away_certainty_alone() {
        Judged judged = assessed(logs("Ada", EvaluatorsDisagreeTest::ada), logs("Ben", rep -> ada(rep) && rep > 4));

        assertThat(judged.verdict()).isEqualTo(Verdict.LIKELY);
        assertThat(judged.sentence()).contains("alpha 0.76, 0.80 is needed to be sure");
    }

    /** The counts of the two tests above; the range is of resamples and holds the coefficient. */
    @Test
    void how_far_two_see_it_alike_stands_beside_the_finding_with_the_reps() {
        SeenAlike alike = assessed(logs("Ada", EvaluatorsDisagreeTest::ada), logs("Ben", rep -> rep % 2 == 0))
                .seenAlike()
                .orElseThrow();

        assertThat(alike.reps()).hasSize(REPS);
        assertThat(alike.alike()).isEqualTo(30);
        assertThat(alike.name()).isEqualTo("alpha");
        assertThat(alike.value().orElseThrow()).isCloseTo(0.473, within(0.0005));
        assertThat(alike.likely().orElseThrow().contains(0.473)).isTrue();
        assertThat(alike.sentence())
                .startsWith("Two taggers both call 40 reps a chance and see it alike on 30 (alpha 0.47, likely ")
                .endsWith("; 1 is full agreement, 0 is luck).");
        assertThat(assessed(logs("Ada", EvaluatorsDisagreeTest::ada)).seenAlike())
                .isEmpty();
    }

    @Test
    void fewer_than_thirty_reps_in_common_hold_nothing_back() {
        List<Log> oneGame = logs("Ben", rep -> rep % 2 == 0).subList(0, 1);

        assertThat(assessed(logs("Ada", EvaluatorsDisagreeTest::ada), oneGame).verdict())
                .isEqualTo(Verdict.CONFIRMED);
    }

    @Test
    void the_index_says_the_same_as_the_logs_and_a_reconciled_reading_speaks_for_neither() {
        List<Log> ben = logs("Ben", rep -> rep % 2 == 0);
        List<Log> both = new ArrayList<>(logs("Ada", EvaluatorsDisagreeTest::ada));
        both.addAll(ben);
        both.addAll(logs("reconciled", EvaluatorsDisagreeTest::ada));
        try (Archive archive = Archive.open(folder)) {
            archive.put(both, false);

            Judged stored = archive.assess("jory-penwick")
                    .orElseThrow()
                    .finding(FINDING)
                    .orElseThrow();

            assertThat(stored.verdict()).isEqualTo(Verdict.WATCH);
            assertThat(stored.sentence()).isEqualTo(of(book.assess(both)).sentence());
            String asked = archive.watch(footage -> book.assessor()
                    .judge(footage.tape("jory-penwick").orElseThrow(), Set.of(FINDING))
                    .get(0)
                    .sentence());
            assertThat(asked).isEqualTo(stored.sentence());
        }
    }

    private Judged assessed(List<Log> ada) {
        return assessed(ada, List.of());
    }

    private Judged assessed(List<Log> ada, List<Log> ben) {
        List<Log> all = new ArrayList<>(ada);
        all.addAll(ben);
        return of(book.assess(all));
    }

    private static Judged of(List<Assessment> all) {
        return all.get(0).finding(FINDING).orElseThrow();
    }

    /** Two games of twenty reps each, off the ball late where told. */
    private List<Log> logs(String evaluator, IntPredicate late) {
        StringBuilder csv = new StringBuilder(
                "rep,prospect,game,phase,exchange,faults,chances,results,help,direction,get_off,snap,evaluator\n");
        for (int rep = 0; rep < REPS; rep++) {
            csv.append(String.join(
                            ",",
                            "r" + rep,
                            "Jory Penwick",
                            rep < REPS / 2 ? "Opener" : "Second",
                            "pass-rush",
                            "speed-rush,,,,,",
                            late.test(rep) ? "late" : "with",
                            Integer.toString(rep + 1),
                            evaluator))
                    .append('\n');
        }
        ReadResult read = FilmLogReader.of(book.taxonomy())
                .read(
                        "games.csv",
                        new ByteArrayInputStream(csv.toString().getBytes(StandardCharsets.UTF_8)),
                        FilmLogReader.Options.none());
        assertThat(read).isInstanceOf(ReadResult.Accepted.class);
        return ((ReadResult.Accepted) read).logs();
    }

    /** Late on 30 of 40. */
    private static boolean ada(int rep) {
        return rep % 4 != 3;
    }
}

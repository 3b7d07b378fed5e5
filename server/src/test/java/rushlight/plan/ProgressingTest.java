package rushlight.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Book;
import rushlight.evidence.Change;
import rushlight.evidence.Predictive;
import rushlight.evidence.Rate;
import rushlight.evidence.Trend;
import rushlight.evidence.Verdict;
import rushlight.findings.Evidence;
import rushlight.situation.Since;
import rushlight.situation.Tape;

/** One invented man's film, its later games as they are and as they might have gone. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ProgressingTest {
    private static final Book BOOK = Book.packaged();
    private static final String CUT = "2025-10-11";
    private static final String TACKLES = "misses-tackles-in-the-edge-lane";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void the_same_man_shows_no_evidence_of_a_change() throws IOException {
        ProgressSince told = since(line -> line);
        Progress tackles = of(told, TACKLES);

        assertThat(tackles.then()).isEqualTo(new Rate(11, 20));
        assertThat(tackles.now()).isEqualTo(new Rate(10, 18));
        assertThat(tackles.verdict()).isEqualTo(Verdict.CONFIRMED);
        assertThat(tackles.change()).isEqualTo(Change.NO_EVIDENCE_YET);
        assertThat(tackles.luck().orElseThrow())
                .isCloseTo(new Predictive(new Rate(9, 20), 18).atLeast(8), within(1e-12));
        assertThat(tackles.sentence())
                .startsWith("Missed 10 of 18 tackles he got to (56 %) since, 11 of 20 (55 %) before.");
        assertThat(of(told, "missed-finishes").change()).isEqualTo(Change.NOT_ENOUGH_TAPE);
    }

    @Test
    void tackles_made_from_then_on_clear_it() throws IOException {
        Progress tackles = of(since(line -> line.replace("missed-tackle", "tackle-made")), TACKLES);

        assertThat(tackles.now()).isEqualTo(new Rate(0, 18));
        assertThat(tackles.change()).isEqualTo(Change.CLEARED);
        assertThat(tackles.amongAll()).isTrue();
        assertThat(tackles.better().orElseThrow()).isGreaterThan(0.99);
        assertThat(tackles.trend().orElseThrow().rises()).isFalse();
        assertThat(tackles.trend().orElseThrow().amongAll()).isTrue();
        assertThat(tackles.trend().orElseThrow().p())
                .isEqualTo(Trend.of(tackles.byGame().stream()
                                .map(Evidence.OfGame::rate)
                                .toList())
                        .p());
        assertThat(tackles.sentence()).contains("Over all his games it falls");
    }

    @Test
    void some_made_show_him_improving_and_say_what_would_have_cleared_it() throws IOException {
        int[] missed = {0};
        Progress tackles = of(
                since(line -> line.contains("missed-tackle") && missed[0]++ >= 5
                        ? line.replace("missed-tackle", "tackle-made")
                        : line),
                TACKLES);

        assertThat(tackles.change()).isEqualTo(Change.IMPROVING);
        assertThat(tackles.now().events()).isBetween(2, 5);
        assertThat(tackles.sentence()).contains("At most 1 of 18 would have cleared it.");
    }

    @Test
    void all_missed_is_slipping() throws IOException {
        Progress tackles = of(since(line -> line.replaceAll("tackle-(made|shared)", "missed-tackle")), TACKLES);

        assertThat(tackles.change()).isEqualTo(Change.SLIPPING);
        assertThat(tackles.amongAll()).isFalse();
    }

    @Test
    void one_dropped_head_since_is_a_hold_though_there_was_none_before() throws IOException {
        boolean[] done = {false};
        ProgressSince told = since(line -> {
            boolean here = !done[0] && line.contains("2025-11-01") && line.contains(",fades-in-pursuit,");
            done[0] |= here;
            return here ? line.replace(",fades-in-pursuit,", ",fades-in-pursuit;head-down,") : line;
        });

        Progress head = of(told, "crown-first-contact");
        assertThat(head.change()).isEqualTo(Change.HOLD);
        assertThat(head.then().events()).isZero();
        assertThat(head.sentence()).contains("Hold: no full contact");
    }

    @Test
    void both_halves_together_are_the_whole() throws IOException {
        ProgressSince told = since(line -> line);

        told.findings().stream()
                .filter(one -> one.luck().isPresent())
                .forEach(one -> assertThat(one.then().plus(one.now()))
                        .isEqualTo(
                                one.byGame().stream().map(Evidence.OfGame::rate).reduce(new Rate(0, 0), Rate::plus)));
        Since since = told.since();
        assertThat(since.before().size() + since.after().size())
                .isEqualTo(since.whole().size());
        assertThat(since.first().name()).isEqualTo("Merrow Bay at Brackwater");
    }

    @Test
    void a_tape_is_cut_by_name_by_id_and_by_date_and_not_by_what_it_has_not() throws IOException {
        Tape tape = tape(line -> line);
        String id =
                Since.at(tape, "merrow bay at brackwater").orElseThrow().first().id();

        assertThat(Since.at(tape, id).orElseThrow().after().size())
                .isEqualTo(Since.at(tape, "2025-10-05").orElseThrow().after().size());
        assertThat(Since.at(tape, "2026-01-01")).isEmpty();
        assertThat(Since.at(tape, "Merrow Bay at Nowhere")).isEmpty();
    }

    private ProgressSince since(UnaryOperator<String> later) throws IOException {
        return new Progressing(BOOK.assessor()).of(Since.at(tape(later), CUT).orElseThrow());
    }

    /** His film with every row from the cut on changed. */
    private Tape tape(UnaryOperator<String> later) throws IOException {
        List<String> lines = new ArrayList<>();
        for (String line : Files.readAllLines(DemoFilm.path("teo-maravale"))) {
            String[] cells = line.split(",", 5);
            lines.add(cells[3].compareTo(CUT) >= 0 && !cells[3].equals("date") ? later.apply(line) : line);
        }
        Path file = folder.resolve("his.csv");
        Files.write(file, lines);
        return DemoFilm.tapes(BOOK, List.of(file)).get(0);
    }

    private static Progress of(ProgressSince told, String finding) {
        return told.findings().stream()
                .filter(one -> one.finding().slug().equals(finding))
                .findFirst()
                .orElseThrow();
    }
}

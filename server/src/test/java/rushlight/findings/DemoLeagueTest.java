package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Verdict;

/** The program says of the invented men what they were made to show (demo-data/intended.csv). */
@DisplayNameGeneration(ReplaceUnderscores.class)
class DemoLeagueTest {
    private static DemoLeague league = DemoLeague.none();

    @BeforeAll
    static void assessTheLeague() {
        league = DemoLeague.assessed();
    }

    @Test
    void every_man_shows_what_he_was_made_to_show() throws IOException {
        List<String> others = new ArrayList<>();
        List<String> intended = Files.readAllLines(DemoLeague.FOLDER.resolve("intended.csv"));
        for (String line : intended.subList(1, intended.size())) {
            String[] row = line.split(",", -1);
            String said = said(league.of(row[0]), row[1]);
            if (!Set.of(row[2].split("\\|", -1)).contains(said)) {
                others.add(line + ", not " + said);
            }
        }
        assertThat(intended).hasSizeGreaterThan(60);
        assertThat(others).isEmpty();
    }

    @Test
    void the_logs_are_read_without_a_warning() {
        assertThat(league.warnings()).isEmpty();
    }

    @Test
    void a_strength_and_a_gap_on_the_same_reps_are_mixed_evidence() {
        Assessment sorrelby = league.of("Jem Sorrelby");
        assertThat(judged(sorrelby, "sets-the-edge-consistently").mixedWith()).contains("hooked-on-reach-blocks");
        assertThat(judged(sorrelby, "hooked-on-reach-blocks").mixedWith()).contains("sets-the-edge-consistently");
    }

    @Test
    void where_the_duty_is_unknown_both_bounds_are_said_and_a_likely_duty_is_only_shown() {
        Assessment toll = league.of("Keverne Toll");
        assertThat(judged(toll, "wrong-arms-reliably").bounds())
                .extracting(Judged.Bound::unknownDuties, Judged.Bound::verdict)
                .containsExactly(tuple("none", Verdict.NOT_ENOUGH_TAPE), tuple("all", Verdict.CONFIRMED));
        assertThat(judged(toll, "surrenders-edge-to-pullers").bounds())
                .filteredOn(bound -> bound.unknownDuties().equals("all"))
                .singleElement()
                .satisfies(bound -> assertThat(bound.verdict().stands()).isTrue());
        assertThat(toll.likelyDuties()).extracting(Assessment.Conclusion::slug).containsExactly("spill-assignment");
    }

    @Test
    void an_edge_lost_by_a_spill_man_is_no_event() {
        Assessment quern = league.of("Tobias Quern");
        Judged lost = judged(quern, "surrenders-edge-to-pullers");
        Judged.Bound all = lost.bounds().stream()
                .filter(bound -> bound.unknownDuties().equals("all"))
                .findFirst()
                .orElseThrow();
        assertThat(lost.outcome().rate().opportunities()).isLessThan(all.rate().opportunities());
        assertThat(judged(quern, "wrong-arms-reliably").verdict().stands()).isTrue();
    }

    @Test
    void two_men_take_kick_outs_either_way_or_one_way_only() {
        assertThat(league.of("Anselm Corrigate").conclusions())
                .extracting(Assessment.Conclusion::slug)
                .contains("spill-and-box-versatile");
        assertThat(league.of("Lucan Whitlow").conclusions())
                .extracting(Assessment.Conclusion::slug)
                .contains("one-way-rusher");
    }

    @Test
    void two_games_are_not_enough_tape_for_nearly_everything() {
        Assessment aldersey = league.of("Bram Aldersey");
        assertThat(aldersey.findings())
                .filteredOn(one -> one.verdict() == Verdict.NOT_ENOUGH_TAPE)
                .hasSizeGreaterThan(aldersey.findings().size() * 9 / 10);
        assertThat(aldersey.findings()).noneMatch(one -> one.verdict().stands());
    }

    @Test
    void drops_and_unsure_reps_stay_out_of_the_counts_and_are_told() {
        Assessment harkaway = league.of("Desmo Harkaway");
        assertThat(harkaway.leftOut().drops()).isGreaterThan(harkaway.reps() / 3);
        assertThat(harkaway.leftOut().lowConfidence()).isPositive();
    }

    @Test
    void a_rep_read_by_two_evaluators_counts_once() {
        assertThat(league.of("Jem Sorrelby").reps()).isEqualTo(league.repsOf("Jem Sorrelby"));
    }

    private static Judged judged(Assessment assessment, String finding) {
        return assessment.finding(finding).orElseThrow();
    }

    private static String said(Assessment assessment, String finding) {
        if (finding.equals("primary")) {
            return assessment.primary().map(Primary::move).orElse("none");
        }
        Optional<Judged> judged = assessment.finding(finding);
        return judged.map(one -> one.verdict().slug()).orElse("not listed");
    }
}

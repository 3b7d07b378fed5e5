package rushlight.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.evidence.BenjaminiHochberg;

/** Two men and what the tape may say of their difference. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SideBySideTest {
    private static final World WORLD = World.with("""
            kb:high-beside a skos:Concept , rl:Finding ;
              skos:prefLabel "high pads beside"@en ;
              skos:definition "Plays high."@en ;
              rl:polarity rl:gap ; rl:severity rl:low ; rl:line 0.20 ; rl:trueSide rl:above ; rl:minimum 8 ;
              rl:opportunity shape:run-beside ; rl:event shape:high-beside .
            shape:run-beside a sh:NodeShape ; sh:property [ sh:path rl:phase ; sh:hasValue "run" ] .
            shape:high-beside a sh:NodeShape ; sh:property [ sh:path rl:fault ; sh:hasValue kb:high-pads ] .
            """);

    /** Newcombe's interval and Fisher's p were held to published tables in the tests of the statistics themselves. */
    @Test
    void nine_of_ten_and_three_of_ten_are_told_apart_with_the_range_of_the_difference() {
        SideBySide.Gap gap = gap(3, 10, 9, 10);

        assertThat(gap.first()).isEqualTo(1);
        assertThat(gap.difference().observed()).isCloseTo(0.6, within(1e-12));
        assertThat(gap.standing()).isEqualTo(SideBySide.Standing.APART);
        // Fisher two-sided by hand: (2 x 1200 + 2 x 45) / 125970; half of the 1200 of this very table is taken off.
        assertThat(gap.p()).isCloseTo(1890 / 125970.0, within(1e-6));
        assertThat(gap.sentence())
                .startsWith("Tam Orrin 9 of 10, Tam Orrin 3 of 10: the tape tells them apart (60 points between them,"
                        + " likely range ");
    }

    @Test
    void a_man_with_fewer_chances_than_the_finding_wants_is_not_compared() {
        SideBySide.Gap gap = gap(7, 7, 0, 30);

        assertThat(gap.standing()).isEqualTo(SideBySide.Standing.NOT_ENOUGH_TAPE);
        assertThat(gap.sentence())
                .isEqualTo("Tam Orrin 7 of 7, Tam Orrin 0 of 30: not enough tape to compare; each wants 8 chances.");
    }

    @Test
    void equal_rates_are_not_told_apart_and_not_called_equal() {
        assertThat(gap(4, 12, 5, 15).sentence())
                .contains("the tape cannot tell them apart (0 points between them, likely range -")
                .doesNotContain("equal");
    }

    @Test
    void in_the_league_the_more_is_compared_the_more_a_difference_must_show() {
        List<Assessment> league = DemoLeague.assessed().assessments().stream()
                .sorted((a, b) -> a.prospect().id().compareTo(b.prospect().id()))
                .limit(4)
                .toList();
        SideBySide four = SideBySide.of(league);
        List<SideBySide.Gap> all =
                four.rows().stream().flatMap(row -> row.gaps().stream()).toList();

        assertThat(four.comparisons())
                .isEqualTo((int) all.stream().filter(SideBySide.Gap::isTested).count());
        assertThat(all)
                .extracting(SideBySide.Gap::standing)
                .contains(
                        SideBySide.Standing.APART,
                        SideBySide.Standing.LEANING,
                        SideBySide.Standing.NOT_TOLD_APART,
                        SideBySide.Standing.NOT_ENOUGH_TAPE)
                .doesNotContain(SideBySide.Standing.NOT_COMPARED);
        assertThat(all).allSatisfy(gap -> {
            assertThat(gap.adjusted()).isGreaterThanOrEqualTo(gap.p());
            assertThat(gap.difference().observed()).isNotNegative();
            assertThat(gap.likely().contains(gap.difference().observed())).isTrue();
            assertThat(gap.standing() == SideBySide.Standing.APART)
                    .isEqualTo(gap.isTested() && gap.adjusted() <= BenjaminiHochberg.ALLOWED);
        });
        assertThat(four.rows())
                .allSatisfy(row -> assertThat(row.gaps()).hasSize(row.finding().measure() == Measure.RATE ? 6 : 0))
                .allSatisfy(row -> assertThat(row.whyNot().isPresent())
                        .isEqualTo(row.gaps().isEmpty())
                        .isEqualTo(row.standing() == SideBySide.Standing.NOT_COMPARED));
    }

    @Test
    void the_share_of_what_each_did_most_is_not_compared_and_that_is_said_with_both_counts() {
        SideBySide.Row row = row(demo("Tavish Mordell", "Teo Maravale"), "one-move-rusher");

        assertThat(row.standing()).isEqualTo(SideBySide.Standing.NOT_COMPARED);
        assertThat(row.whyNot())
                .contains(
                        "Tavish Mordell 41 of 50, Teo Maravale 21 of 57: not compared; each is counted by what that man"
                                + " did most often, which need not be the same for both.");
    }

    @Test
    void reps_on_which_nobody_knows_his_duty_are_not_told_as_no_chance() {
        SideBySide.Row row = row(demo("Keverne Toll", "Tavish Mordell"), "wrong-arms-reliably");

        assertThat(row.gaps().get(0).sentence())
                .contains("Keverne Toll duty unknown on 21 reps")
                .doesNotContain("Keverne Toll no chance");
    }

    private static SideBySide demo(String... names) {
        return SideBySide.of(Stream.of(names)
                .map(name -> DemoLeague.assessed().assessments().stream()
                        .filter(one -> one.prospect().name().equals(name))
                        .findFirst()
                        .orElseThrow())
                .toList());
    }

    private static SideBySide.Row row(SideBySide beside, String finding) {
        return beside.rows().stream()
                .filter(row -> row.finding().slug().equals(finding))
                .findFirst()
                .orElseThrow();
    }

    private static SideBySide.Gap gap(int x1, int n1, int x2, int n2) {
        return row(SideBySide.of(List.of(man(x1, n1), man(x2, n2))), "high-beside")
                .gaps()
                .get(0);
    }

    private static Assessment man(int events, int chances) {
        return WORLD.assess(WORLD.film()
                .game("Opener", "")
                .reps(events, "phase=run fault=high-pads")
                .reps(chances - events, "phase=run"));
    }
}

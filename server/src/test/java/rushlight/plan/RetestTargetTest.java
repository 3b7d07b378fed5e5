package rushlight.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.evidence.Change;
import rushlight.evidence.Rate;
import rushlight.evidence.Retest;
import rushlight.findings.Assessment;
import rushlight.findings.Judged;
import rushlight.findings.Measure;
import rushlight.findings.Polarity;

@DisplayNameGeneration(ReplaceUnderscores.class)
class RetestTargetTest {
    private static final int AHEAD = 4;
    private static List<Assessment> league = List.of();

    @BeforeAll
    static void assessTheLeague() {
        DemoFilm film = DemoFilm.of("jem-sorrelby", "teo-maravale", "lucan-whitlow", "ishan-velloor");
        league = film.tapes().stream().map(film.book()::assess).toList();
    }

    /** Every target of the demo league, tried as if it had been played: it does what its words say, and one less does not. */
    @Test
    void what_is_asked_for_clears_or_improves_and_one_less_does_not() {
        int cleared = 0;
        int improved = 0;
        for (Assessment one : league) {
            for (Judged gap : rates(one)) {
                RetestTarget target = RetestTarget.of(gap, one.games(), AHEAD);
                Retest retest = new Retest(
                        RetestTarget.line(gap.finding()), gap.outcome().rate());
                int worse = target.atMost() ? 1 : -1;
                if (target.clears().isPresent()) {
                    int events = target.clears().getAsInt();
                    assertThat(retest.change(halves(events, target.opportunities())))
                            .isEqualTo(Change.CLEARED);
                    assertThat(retest.change(halves(events + worse, target.opportunities())))
                            .isNotEqualTo(Change.CLEARED);
                    cleared++;
                }
                if (target.improves().isPresent() && target.opportunities() >= 6) {
                    int events = target.improves().getAsInt();
                    assertThat(retest.change(halves(events, target.opportunities())))
                            .isIn(Change.IMPROVING, Change.CLEARED);
                    improved++;
                }
            }
        }
        assertThat(cleared).isGreaterThan(8);
        assertThat(improved).isGreaterThan(10);
    }

    @Test
    void the_words_name_the_act_the_count_and_how_far_to_trust_it() {
        assertThat(target("Jem Sorrelby", "hooked-on-reach-blocks").sentence())
                .isEqualTo("\"Was hooked by at most 2 of the next 17 reach blocks with the outside his\" would clear it"
                        + " (from two games or more); at most 4 would show him improving, which luck alone brings"
                        + " an unchanged player 8 times in 100. One who truly comes down to 18 % is cleared 39"
                        + " times in 100 and shown to improve 82 times in 100. 20 chances would show it four times"
                        + " in five, some 5 games at his pace.");
    }

    @Test
    void where_few_chances_come_the_target_waits_for_as_many_as_can_clear_it() {
        RetestTarget target = target("Teo Maravale", "missed-finishes");

        assertThat(target.now().opportunities() * AHEAD / 9).isLessThan(10);
        assertThat(target.opportunities()).isEqualTo(10);
        assertThat(target.clears()).hasValue(0);
    }

    @Test
    void two_rates_that_are_compared_have_no_single_target() {
        league.forEach(one -> one.findings().stream()
                .filter(gap -> gap.finding().measure() == Measure.DIFFERENCE)
                .map(gap -> RetestTarget.of(gap, one.games(), AHEAD))
                .forEach(target -> {
                    assertThat(target.target()).isEmpty();
                    assertThat(target.sentence()).isEqualTo(RetestWords.TWO_RATES);
                }));
    }

    @Test
    void a_habit_that_could_hurt_somebody_is_cleared_by_none_in_its_own_number_of_chances() {
        RetestTarget target = target("Teo Maravale", "crown-first-contact");

        assertThat(target.opportunities()).isEqualTo(20);
        assertThat(target.target()).hasValue(0);
        assertThat(target.sentence())
                .isEqualTo("\"Dropped his head into contact not once in the next 20 contacts\" would clear it; one more"
                        + " opens it again.");
    }

    private static RetestTarget target(String name, String finding) {
        Assessment one = league.stream()
                .filter(a -> a.prospect().name().equals(name))
                .findFirst()
                .orElseThrow();
        return RetestTarget.of(one.finding(finding).orElseThrow(), one.games(), AHEAD);
    }

    private static List<Judged> rates(Assessment one) {
        return one.findings().stream()
                .filter(gap -> gap.finding().polarity() == Polarity.GAP
                        && gap.verdict().stands())
                .filter(gap ->
                        gap.finding().measure() == Measure.RATE || gap.finding().measure() == Measure.SHARE)
                .toList();
    }

    private static List<Rate> halves(int events, int all) {
        int bounded = Math.max(0, Math.min(all, events));
        return List.of(new Rate(bounded / 2, all / 2), new Rate(bounded - bounded / 2, all - all / 2));
    }
}

package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** The scorer scored: a reader without fault has full marks, and each fault costs what it should and nothing else. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ScoreTest {
    private static Score score(UnaryOperator<Proposal.All> damage) {
        Score score = new Score(String::equals, concept -> "all");
        Gold.development().forEach(gold -> score.add(gold, damage.apply(Proposal.of(gold))));
        return score;
    }

    private static UnaryOperator<Proposal.All> without(String concept) {
        return all -> new Proposal.All(
                all.segments(),
                all.mentions().stream()
                        .filter(m -> !m.concept().equals(concept))
                        .toList());
    }

    private static Proposal asserted(Proposal m, String assertion) {
        return new Proposal(
                m.concept(),
                assertion,
                m.actor(),
                m.rep(),
                m.side(),
                m.hand(),
                m.target(),
                m.order(),
                m.opinion(),
                m.from(),
                m.to(),
                m.aside());
    }

    private static Proposal ofRep(Proposal m, String rep) {
        return new Proposal(
                m.concept(),
                m.assertion(),
                m.actor(),
                rep,
                m.side(),
                m.hand(),
                m.target(),
                m.order(),
                m.opinion(),
                m.from(),
                m.to(),
                m.aside());
    }

    @Test
    void what_the_annotator_marked_has_full_marks() {
        Score score = score(UnaryOperator.identity());
        for (String measure : List.of(
                "concept precision",
                "concept recall",
                "assertion",
                "rep starts, F1",
                "rep tags, F1",
                "statements in general, F1")) {
            assertThat(score.value(measure)).as(measure).isEqualTo(1);
        }
        assertThat(score.of("inverted").right()).isZero();
        assertThat(score.of("rep count").right()).isEqualTo(40);
        assertThat(score.value("WindowDiff")).isZero();
        assertThat(score.macroF1()).isEqualTo(1);
    }

    @Test
    void a_concept_that_is_never_found_costs_its_mentions_and_no_precision() {
        int chops = (int) Gold.development().stream()
                .flatMap(gold -> gold.marks().stream())
                .filter(mark -> mark.concept().equals("chop") && !mark.optional())
                .count();
        Score score = score(without("chop"));
        assertThat(chops).isPositive();
        assertThat(score.of("concepts").missed()).isEqualTo(chops);
        assertThat(score.value("concept precision")).isEqualTo(1);
    }

    @Test
    void what_was_denied_and_is_told_as_done_is_inverted_each_time() {
        Score whole = score(UnaryOperator.identity());
        Score score = score(all -> new Proposal.All(
                all.segments(),
                all.mentions().stream().map(m -> asserted(m, "performed")).toList()));
        assertThat(score.of("inverted").right())
                .isEqualTo(whole.of("inverted").marked())
                .isGreaterThan(60);
        assertThat(score.value("concept precision")).isEqualTo(1);
    }

    @Test
    void a_rep_start_that_is_missed_moves_the_tags_of_the_reps_behind_it() {
        Score score = score(all -> {
            List<Proposal> moved = new ArrayList<>();
            all.mentions().forEach(m -> moved.add(m.rep().isEmpty() ? m : ofRep(m, m.rep() + "0")));
            return new Proposal.All(all.segments(), moved);
        });
        assertThat(score.of("rep tags").right()).isZero();
        assertThat(score.value("concept precision")).isEqualTo(1);
        assertThat(score.value("rep starts, F1")).isEqualTo(1);
    }

    /** Two concepts, 8 right and 2 false, 1 right and 3 missed; worked by hand from the definitions of the rates. */
    @Test
    void pooled_and_mean_rates_differ_as_they_should() {
        Tally often = new Tally(8, 2, 0);
        Tally seldom = new Tally(1, 0, 3);
        Tally both = often.plus(seldom);
        assertThat(both.precision()).isCloseTo(0.818, within(0.0005));
        assertThat(both.recall()).isCloseTo(0.750, within(0.0005));
        assertThat(both.f1()).isCloseTo(0.783, within(0.0005));
        assertThat((often.f1() + seldom.f1()) / 2).isCloseTo(0.644, within(0.0005));
    }
}

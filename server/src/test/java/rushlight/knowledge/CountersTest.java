package rushlight.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** What a coach asks of the book; the expected answers are common practice, as the book marks them. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CountersTest {
    private static final Taxonomy TAXONOMY = Taxonomy.of(Ontology.packaged());
    private static final Counters COUNTERS = new Counters(TAXONOMY);

    @Test
    void off_a_speed_rush_when_he_over_sets_the_answer_is_underneath() {
        assertThat(names(Optional.of("speed-rush"), Optional.of("over-set")))
                .startsWith("up-and-under", "inside-arm-over", "inside-spin");
    }

    @Test
    void off_a_bull_rush_when_he_sits_down_every_counter_stands_once() {
        assertThat(names(Optional.of("bull-rush"), Optional.of("sits-down")))
                .isNotEmpty()
                .doesNotHaveDuplicates();
    }

    @Test
    void a_coarse_word_for_the_answer_reaches_its_narrower_ones() {
        assertThat(names(Optional.of("bull-rush"), Optional.of("blocker-anchor")))
                .containsAll(names(Optional.of("bull-rush"), Optional.of("anchor-hop")));
    }

    @Test
    void a_move_alone_lists_its_general_counters_first() {
        List<Pairing> all = COUNTERS.of(Optional.of("bull-rush"), Optional.empty());

        assertThat(all.get(0).trigger()).isEmpty();
        assertThat(all.get(0).counter()).isEqualTo("bull-jerk");
        assertThat(all).anyMatch(p -> p.trigger().isPresent());
    }

    @Test
    void an_answer_alone_ranks_a_counter_by_its_best_rank_over_the_moves() {
        List<Pairing> all = COUNTERS.of(Optional.empty(), Optional.of("over-set"));

        assertThat(all).extracting(Pairing::counter).doesNotHaveDuplicates();
        assertThat(all.get(0).rank()).isEqualTo(1);
    }

    private static List<String> names(Optional<String> move, Optional<String> when) {
        return COUNTERS.of(move, when).stream().map(Pairing::counter).toList();
    }
}

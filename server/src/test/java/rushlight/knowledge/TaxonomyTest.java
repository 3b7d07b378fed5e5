package rushlight.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class TaxonomyTest {
    private static final Ontology BOOK = Ontology.packaged();
    private static final Taxonomy TAXONOMY = Taxonomy.of(BOOK);

    @Test
    void a_move_stands_for_itself_and_everything_wider() {
        assertThat(TAXONOMY.closure("inside-arm-over"))
                .contains("inside-arm-over", "arm-over", "inside-move", "hand-removal-move")
                .doesNotContain("outside-move");
        assertThat(TAXONOMY.narrower("power-move")).contains("bull-rush", "long-arm");
        assertThat(TAXONOMY.isA("bull-rush", "power-move")).isTrue();
    }

    @Test
    void a_concept_of_two_classes_is_found_in_both() {
        assertThat(TAXONOMY.ofClass("RunBlock")).extracting(Concept::slug).contains("double-team");
        assertThat(TAXONOMY.ofClass("BlockerBehavior"))
                .extracting(Concept::slug)
                .contains("double-team");
    }

    @Test
    void pairings_know_move_answer_and_counter() {
        assertThat(TAXONOMY.pairings())
                .filteredOn(p -> p.primary().filter("speed-rush"::equals).isPresent()
                        && p.trigger().filter("over-set"::equals).isPresent())
                .extracting(Pairing::counter)
                .contains("up-and-under", "inside-spin");
    }

    @Test
    void the_film_log_is_described_by_the_book() {
        FilmColumns film = TAXONOMY.film();

        assertThat(film.all()).hasSizeGreaterThan(45);
        assertThat(film.exchange().name()).isEqualTo("exchange");
        assertThat(film.named("faults").orElseThrow().classes()).containsExactly("Fault");
        assertThat(film.facets()).contains("openingMove", "repClass", "seen", "fault", "outcome");
    }

    @Test
    void an_address_keeps_its_leading_digits() {
        assertThat(Rl.slug(Rl.concept("4i-technique"))).isEqualTo("4i-technique");
    }

    @Test
    void two_readings_of_the_same_files_have_the_same_fingerprint() {
        assertThat(Ontology.packaged().fingerprint())
                .isEqualTo(BOOK.fingerprint())
                .hasSize(64);
    }
}

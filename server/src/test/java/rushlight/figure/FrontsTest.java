package rushlight.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rushlight.knowledge.Concept;
import rushlight.knowledge.FrontLine;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class FrontsTest {
    private static final Heading HEADING = new Heading("h", "title", "description");

    private final Ontology ontology = Ontology.packaged();
    private final Taxonomy taxonomy = Taxonomy.of(ontology);
    private final FrontLine line = FrontLine.of(ontology);
    private final Fronts fronts = Fronts.of(ontology, taxonomy);

    /** The usual chart: an even number is head up, the i is the inside half, the next odd one the outside half. */
    @ParameterizedTest
    @CsvSource({
        "technique-0, center, 0",
        "technique-1, center, 1",
        "technique-2i, right-guard, -1",
        "technique-2, right-guard, 0",
        "technique-3, right-guard, 1",
        "technique-4i, right-tackle, -1",
        "technique-4, right-tackle, 0",
        "technique-5, right-tackle, 1",
        "technique-7, tight-end, -1",
        "technique-6i, tight-end, -1",
        "technique-6, tight-end, 0",
        "technique-9, tight-end, 1",
        "technique-8, tight-end, 3",
        "ghost-7, tight-end, -1",
        "ghost-6, tight-end, 0",
        "ghost-9, tight-end, 1",
        "wing-head-up, wing, 0"
    })
    void a_spot_stands_on_its_man(String spot, String man, int beside) {
        int at = line.men().stream()
                .filter(m -> m.slug().equals(man))
                .mapToInt(FrontLine.Man::out)
                .findFirst()
                .orElseThrow();
        assertThat(line.spot(spot).orElseThrow().out()).isEqualTo(at + beside);
    }

    @Test
    void every_alignment_and_every_position_of_the_book_can_be_drawn_but_those_without_a_place() {
        List<String> without = java.util.stream.Stream.of("Alignment", "Position")
                .flatMap(kind -> taxonomy.ofClass(kind).stream())
                .map(Concept::slug)
                .filter(slug -> fronts.of(HEADING, slug).isEmpty())
                .toList();
        assertThat(without).as("moved inside, nobody said where").containsExactly("reduced-alignment");
    }

    @Test
    void a_ghost_spot_leaves_the_end_open_and_a_spot_on_him_draws_him() {
        assertThat(fronts.of(HEADING, "ghost-6").orElseThrow().svg()).contains("figure-man figure-open", ">TE<");
        String onHim = fronts.of(HEADING, "technique-9").orElseThrow().svg();
        assertThat(onHim).contains(">TE<").doesNotContain("figure-open");
        assertThat(fronts.of(HEADING, "wing-outside").orElseThrow().svg()).contains(">TE<", ">W<");
        assertThat(fronts.of(HEADING, "technique-0").orElseThrow().svg()).doesNotContain(">TE<");
    }

    @Test
    void a_word_for_several_spots_shows_each_of_them_hollow() {
        String svg =
                fronts.of(HEADING, "ambiguous-tight-end-shade").orElseThrow().svg();
        assertThat(Pattern.compile("figure-mark figure-open").matcher(svg).results())
                .hasSize(3);
    }

    @Test
    void reps_over_the_left_stand_on_the_left_and_the_table_keeps_every_count() {
        Drawing drawing = fronts.counts(
                HEADING,
                List.of(
                        new Fronts.Taken("technique-9", Fronts.Hand.LEFT, "9", 12),
                        new Fronts.Taken("technique-5", Fronts.Hand.RIGHT, "5", 30)));
        assertThat(drawing.table().rows())
                .containsExactly(List.of("9", "9-technique", "12"), List.of("5", "5-technique", "30"));
        assertThat(Pattern.compile(">TE<").matcher(drawing.svg()).results()).hasSize(2);
    }
}

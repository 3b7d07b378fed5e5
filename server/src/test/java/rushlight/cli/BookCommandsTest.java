package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.Book;
import rushlight.handbook.Handbook;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Taxonomy;

/** The pages of the book as people and programs read them. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class BookCommandsTest {
    @TempDir
    private static Path folder;

    @Test
    void a_page_tells_a_move_in_the_order_of_a_coach() {
        Said said = run("technique", "bull", "rush");

        assertThat(said.code()).isZero();
        assertThat(said.out())
                .startsWith("Bull rush")
                .containsSubsequence(
                        "When to use it",
                        "Footwork",
                        "Hands",
                        "Cue on film",
                        "Needs first",
                        "What goes wrong",
                        "Off it, when the blocker shows",
                        "Caution",
                        "Rule note",
                        "Rules risk.",
                        "Sources");
    }

    @Test
    void a_rule_note_names_its_edition_and_defers_to_the_current_book() {
        String page = run("technique", "bull rush").out().replaceAll("\\s+", " ");

        assertThat(page)
                .contains("Rules risk. Hands that land on the face mask")
                .contains("The current rule book and the local officials decide. (pro, 2025)");
    }

    @Test
    void every_page_of_the_book_fits_a_hundred_columns_and_shows_no_slug() {
        Book book = Book.packaged();
        Taxonomy taxonomy = book.taxonomy();
        Handbook handbook = Handbook.of(book.ontology(), book.taxonomy());
        for (Concept concept : taxonomy.concepts()) {
            String page = new TechniqueText(taxonomy)
                    .of(handbook.technique(concept.slug()).orElseThrow())
                    .toString();

            assertThat(page.lines()).as(concept.slug()).allMatch(line -> line.length() <= Page.WIDTH);
            assertThat(page).as(concept.slug()).doesNotContain("  \n\n\n", "[]", "null", "kb:", "()");
            assertThat(page).as(concept.slug()).doesNotContain("-assignment", "https://rushlight");
        }
    }

    @Test
    void every_way_of_teaching_puts_what_is_needed_first() {
        Book book = Book.packaged();
        Handbook handbook = Handbook.of(book.ontology(), book.taxonomy());
        for (Concept concept : book.taxonomy().concepts()) {
            List<String> taught = new ArrayList<>();
            handbook.teach(concept.slug()).ladder().forEach(rung -> {
                assertThat(taught).as(concept.slug()).containsAll(rung.requires());
                taught.add(rung.concept());
            });
            assertThat(taught).doesNotHaveDuplicates().endsWith(concept.slug());
        }
    }

    @Test
    void teaching_names_drills_and_cautions_of_contact() {
        Said said = run("teach", "wrong arm");

        assertThat(said.out())
                .startsWith("The way to the wrong-arm")
                .containsSubsequence("Step 1", "key the ball", "block recognition", "Before anybody does it")
                .contains("Drills: ", "certified coach", "medical staff");
        assertThat(said.out().lines()).allMatch(line -> line.length() <= Page.WIDTH);
    }

    @Test
    void a_seven_stays_open_until_somebody_names_the_system() {
        Said open = run("technique", "a", "7");
        Said named = run("technique", "a", "7", "--numbering", "b");

        assertThat(open.out())
                .contains(
                        "depends on whose numbers they are",
                        "numbering A   inside shade",
                        "numbering B   outside shade")
                .contains("shade not known");
        assertThat(named.out()).contains("A 7 in numbering B:", "9-technique").doesNotContain("numbering A   inside");
    }

    @Test
    void a_name_with_a_number_that_one_system_has_is_just_a_name() {
        assertThat(run("technique", "wide", "9").out()).startsWith("Wide 9");
    }

    @Test
    void a_seven_is_ambiguous_for_programs_too() throws IOException {
        JsonNode open = json("technique", "7 technique");

        assertThat(open.get("ambiguous").asBoolean()).isTrue();
        assertThat(open.get("unnamed").asText()).isEqualTo("ambiguous-tight-end-shade");
        assertThat(open.get("meanings").findValuesAsText("position")).contains("tight-end-inside", "tight-end-outside");
    }

    @Test
    void a_number_a_system_lacks_and_a_system_that_is_none_are_told() {
        assertThat(run("technique", "6i", "--numbering", "A").err()).startsWith("Numbering A has no 6i. It has 0, 1");
        Said stranger = run("technique", "7", "--numbering", "Q");
        assertThat(stranger.code()).isEqualTo(2);
        assertThat(stranger.err()).contains("There is no numbering \"Q\"; write one of A, B, C, D.");
    }

    @Test
    void an_unknown_word_gets_the_three_nearest_of_the_whole_book() {
        Said said = run("technique", "wrng arm");

        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err()).startsWith("The book has nothing called \"wrng arm\". Nearest: wrong arm, ");
        assertThat(said.err().split(", ", -1)).hasSize(3);
    }

    @Test
    void words_of_a_long_name_will_do_and_a_word_of_many_names_will_not() {
        assertThat(run("counters", "bull rush", "--when", "fake punch").out()).contains("flash / fake punch");
        assertThat(run("technique", "edge").err()).startsWith("The book has nothing called \"edge\". Nearest: ");
    }

    @Test
    void an_ambiguous_word_asks_which_and_says_how_to_tell() {
        Said said = run("technique", "arm over");

        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err())
                .contains("can mean 2 things. Say which:", "(rush move)", "(drill)", "On a rep it is the move.");
    }

    @Test
    void the_same_fit_is_right_for_one_duty_and_wrong_for_another() {
        Said spill = run("answers", "kick-out", "--assignment", "spill");
        Said box = run("answers", "kick-out", "--assignment", "box");

        assertThat(spill.out()).containsPattern("Right +wrong-arm").contains("Could turn around", "certified");
        assertThat(box.out()).containsPattern("Wrong .*wrong-arm").contains("outside arm");
    }

    @Test
    void conditions_of_a_rule_stand_each_by_itself() throws IOException {
        JsonNode crack = json("answers", "crack block", "--assignment", "force");

        assertThat(crack.get("answers").findValues("onlyIf"))
                .extracting(JsonNode::toString)
                .contains("[\"there is no replace call\"]", "[\"the corner replaces\"]");
    }

    @Test
    void counters_from_a_spot_say_what_was_left_out() throws IOException {
        JsonNode wide = json("counters", "bull rush", "--when", "over-set", "--from", "wide 9");

        assertThat(wide.get("from").asText()).isEqualTo("wide-9");
        assertThat(wide.get("leftOut")).extracting(JsonNode::asText).contains("hump");
        assertThat(wide.get("counters").findValuesAsText("counter"))
                .contains("inside-arm-over")
                .doesNotContain("hump");
    }

    @Test
    void a_page_is_the_same_object_for_programs() throws IOException {
        JsonNode page = json("technique", "bull rush");

        assertThat(page.get("slug").asText()).isEqualTo("bull-rush");
        assertThat(page.get("parts").findValuesAsText("part")).contains("cue", "hands", "footwork");
        assertThat(page.get("relations").findValuesAsText("relation")).contains("requires", "beats", "inverse-beats");
        assertThat(page.get("pairings").get(0).get("counters").get(0).asText()).isEqualTo("bull-jerk");
    }

    private static JsonNode json(String... words) throws IOException {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--format", "json"));
        Said said = run(all.toArray(String[]::new));
        assertThat(said.err()).isEmpty();
        return new ObjectMapper().readTree(said.out());
    }

    private static Said run(String... words) {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--data", folder.resolve("none").toString()));
        return Said.to(all.toArray(String[]::new));
    }
}

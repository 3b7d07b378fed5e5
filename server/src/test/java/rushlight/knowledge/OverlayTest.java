package rushlight.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.jena.graph.Node;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A staff keeps its own words and lines in a file of its own; the shipped files stay as they are. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class OverlayTest {
    private static final String PREFIXES = """
            @prefix dct: <http://purl.org/dc/terms/> .
            @prefix kb: <https://rushlight.example/id/> .
            @prefix rl: <https://rushlight.example/def#> .
            @prefix skos: <http://www.w3.org/2004/02/skos/core#> .
            """;

    @TempDir
    private Path folder;

    @Test
    void the_book_as_shipped_has_nothing_to_mend() {
        assertThat(BookCheck.of(Ontology.packaged()))
                .filteredOn(t -> !t.warning())
                .isEmpty();
    }

    @Test
    void a_house_line_of_your_own_takes_the_place_of_the_shipped_one() throws IOException {
        Ontology book = with("kb:surrenders-edge-to-pullers rl:line 0.4 .");
        Node finding = Rl.concept("surrenders-edge-to-pullers");

        assertThat(new Facts(book.graph()).text(finding, "line")).isEqualTo(Optional.of("0.4"));
        assertThat(new Facts(book.shipped()).text(finding, "line")).isNotEqualTo(Optional.of("0.4"));
        assertThat(hardTroubles(book)).isEmpty();
    }

    @Test
    void a_label_of_your_own_is_one_more_name() throws IOException {
        Ontology book = with("kb:bull-rush skos:altLabel \"the freight train\"@en .");

        assertThat(Taxonomy.of(book).concept("bull-rush").orElseThrow().altLabels())
                .contains("the freight train")
                .hasSizeGreaterThan(1);
        assertThat(hardTroubles(book)).isEmpty();
    }

    @Test
    void saying_something_else_of_a_shipped_term_is_a_clash_that_says_what_to_do() throws IOException {
        Ontology book = with("kb:bull-rush rl:requires kb:spin .");

        assertThat(hardTroubles(book))
                .extracting(BookCheck.Trouble::about, BookCheck.Trouble::message, BookCheck.Trouble::local)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(
                        "bull-rush",
                        "Your file says requires of a shipped term. Add labels to it or set its line, minimum or "
                                + "severity; for anything else make a term of your own.",
                        true));
    }

    @Test
    void a_term_of_your_own_is_held_to_the_same_shapes() throws IOException {
        Ontology book = with("kb:freight-train a skos:Concept , rl:RushMove ; skos:prefLabel \"freight train\"@en .");

        assertThat(hardTroubles(book))
                .extracting(BookCheck.Trouble::message)
                .contains("A technique needs a definition, in our own words.");
    }

    @Test
    void a_file_that_is_no_turtle_says_where_it_breaks() throws IOException {
        Path file = Files.writeString(folder.resolve("overlay.ttl"), "kb:bull-rush skos:altLabel \"x\" .");

        assertThatThrownBy(() -> Ontology.withOverlay(file))
                .isInstanceOf(BrokenBookException.class)
                .hasMessageContaining("overlay.ttl cannot be read as Turtle")
                .hasMessageContaining("line: 1");
    }

    @Test
    void another_overlay_is_another_fingerprint() throws IOException {
        assertThat(with("kb:bull-rush skos:altLabel \"x\"@en .").fingerprint())
                .isNotEqualTo(Ontology.packaged().fingerprint());
    }

    private Ontology with(String statements) throws IOException {
        return Ontology.withOverlay(Files.writeString(folder.resolve("overlay.ttl"), PREFIXES + statements));
    }

    private static List<BookCheck.Trouble> hardTroubles(Ontology book) {
        return BookCheck.of(book).stream().filter(t -> !t.warning()).toList();
    }
}

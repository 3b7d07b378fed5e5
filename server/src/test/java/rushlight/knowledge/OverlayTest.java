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

    @Test
    void a_term_of_your_own_says_that_it_is_yours_and_a_shipped_one_does_not() throws IOException {
        Ontology book = with("""
                kb:bull-rush skos:altLabel "the freight train"@en .
                kb:freight-train a skos:Concept , rl:RushMove ; skos:prefLabel "freight train"@en .
                """);
        Taxonomy taxonomy = Taxonomy.of(book);

        assertThat(taxonomy.concept("freight-train").orElseThrow().local()).isTrue();
        assertThat(taxonomy.concept("bull-rush").orElseThrow().local()).isFalse();
        assertThat(taxonomy.shown("freight-train")).isEqualTo("freight train (yours)");
        assertThat(taxonomy.shown("bull-rush")).isEqualTo("bull rush");
        assertThat(taxonomy.pairings()).noneMatch(Pairing::local);
    }

    @Test
    void what_you_tell_of_a_term_is_part_of_its_lesson() throws IOException {
        Node told = Rl.concept("rip--cue--9");
        Ontology book = with("""
                kb:rip--cue--9 a rl:Teaching ; rl:about kb:rip ; rl:part rl:cue ; rl:text "His sleeve shows."@en .
                """);

        assertThat(new Facts(book.lessons()).text(told, "text")).isEqualTo(Optional.of("His sleeve shows."));
        assertThat(book.isLocal(told)).isTrue();
        assertThat(book.lessons().size())
                .isEqualTo(Ontology.packaged().lessons().size() + 4);
    }

    private Ontology with(String statements) throws IOException {
        return Ontology.withOverlay(Files.writeString(folder.resolve("overlay.ttl"), PREFIXES + statements));
    }

    private static List<BookCheck.Trouble> hardTroubles(Ontology book) {
        return BookCheck.of(book).stream().filter(t -> !t.warning()).toList();
    }
}

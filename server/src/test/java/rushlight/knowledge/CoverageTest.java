package rushlight.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The book is whole where it has to be, and what is lacking is counted and named. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CoverageTest {
    private final Ontology book = Ontology.packaged();
    private final Coverage shipped = Coverage.of(book);

    @ParameterizedTest
    @CsvSource({"RushMove, 67", "Finish, 6", "RunBlock, 35", "RunFit, 47", "BlockerBehavior, 53"})
    void moves_blocks_fits_and_blocker_behaviors_have_definition_cue_and_source(String name, int atLeast) {
        Coverage.Kind kind = kind(shipped, name);

        assertThat(kind.terms()).isGreaterThanOrEqualTo(atLeast);
        for (String heading : List.of("definition", "cue", "source")) {
            Coverage.Part part = part(kind, heading);
            assertThat(part.must()).as(heading).isTrue();
            assertThat(part.missing()).as(heading).isEmpty();
            assertThat(part.have()).as(heading).isEqualTo(kind.terms());
        }
    }

    @Test
    void nothing_stands_alone_and_nothing_that_must_be_there_is_lacking() {
        assertThat(shipped.orphans()).isEmpty();
        assertThat(shipped.whole()).isTrue();
    }

    @Test
    void every_kind_of_term_has_its_row() {
        Set<String> rows = new TreeSet<>();
        shipped.kinds().forEach(kind -> rows.add(kind.kind()));
        Set<String> kinds = new TreeSet<>();
        Taxonomy.of(book).concepts().forEach(concept -> kinds.addAll(concept.classes()));

        assertThat(rows).containsAll(kinds);
    }

    @Test
    void a_term_of_your_own_that_nobody_told_and_nobody_links_is_named(@TempDir Path folder) throws IOException {
        Path overlay = Files.writeString(folder.resolve("overlay.ttl"), """
                @prefix kb: <https://rushlight.example/id/> .
                @prefix rl: <https://rushlight.example/def#> .
                @prefix skos: <http://www.w3.org/2004/02/skos/core#> .
                kb:lonely a skos:Concept , rl:RushMove ; skos:prefLabel "lonely"@en ; skos:definition "Alone."@en .
                """);
        Coverage with = Coverage.of(Ontology.withOverlay(overlay));
        Coverage.Kind moves = kind(with, "RushMove");

        assertThat(with.orphans()).containsExactly("lonely");
        assertThat(with.whole()).isFalse();
        assertThat(moves.yours()).isEqualTo(1);
        assertThat(part(moves, "definition").missing()).isEmpty();
        assertThat(part(moves, "cue").missing()).containsExactly("lonely");
        assertThat(part(moves, "source").missing()).containsExactly("lonely");
        assertThat(part(moves, "cue").broken()).isTrue();
        assertThat(part(moves, "needs").broken()).isFalse();
    }

    private static Coverage.Kind kind(Coverage coverage, String name) {
        return coverage.kinds().stream()
                .filter(kind -> kind.kind().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Coverage.Part part(Coverage.Kind kind, String heading) {
        return kind.parts().stream()
                .filter(part -> part.heading().equals(heading))
                .findFirst()
                .orElseThrow();
    }
}

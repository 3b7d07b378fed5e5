package rushlight.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/** Old film logs still find what was retired: its labels and its slug lead to the concept in its place. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RetiredLabelsTest {
    private Taxonomy taxonomy = Taxonomy.of(Ontology.packaged());

    @BeforeAll
    void retire_two_terms_one_after_the_other(@TempDir Path folder) throws IOException {
        taxonomy = Taxonomy.of(Ontology.withOverlay(Files.writeString(folder.resolve("overlay.ttl"), """
                @prefix dct: <http://purl.org/dc/terms/> .
                @prefix kb: <https://rushlight.example/id/> .
                @prefix owl: <http://www.w3.org/2002/07/owl#> .
                @prefix rl: <https://rushlight.example/def#> .
                @prefix skos: <http://www.w3.org/2004/02/skos/core#> .
                kb:arm-sling a skos:Concept , rl:RushMove ; skos:prefLabel "arm sling"@en ;
                  skos:hiddenLabel "slung his arm"@en ; owl:deprecated true ; dct:isReplacedBy kb:arm-grab-throw .
                kb:arm-whip a skos:Concept , rl:RushMove ; skos:prefLabel "arm whip"@en ;
                  owl:deprecated true ; dct:isReplacedBy kb:arm-sling .
                """)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"arm sling", "Arm-Sling", "slung his arm", "arm-sling", "arm whip", "arm-whip"})
    void what_was_said_of_it_means_the_concept_in_its_place(String text) {
        assertThat(Vocabulary.of(taxonomy).meaning(text)).isEqualTo(new Meaning.One("arm-grab-throw"));
    }

    @Test
    void it_is_no_concept_of_its_own_any_more() {
        assertThat(taxonomy.concepts()).extracting(Concept::slug).doesNotContain("arm-sling", "arm-whip");
        assertThat(taxonomy.concept("arm-whip"))
                .hasValueSatisfying(c -> assertThat(c.slug()).isEqualTo("arm-grab-throw"));
        assertThat(taxonomy.label("arm-sling")).isEqualTo("arm grab and throw");
    }

    @Test
    void a_rep_stored_under_the_old_slug_counts_as_the_new_one() {
        assertThat(taxonomy.closure("arm-sling")).contains("arm-grab-throw", "hand-removal-move");
        assertThat(taxonomy.isA("arm-whip", "hand-removal-move")).isTrue();
        assertThat(taxonomy.requires("arm-sling")).isEqualTo(taxonomy.requires("arm-grab-throw"));
    }

    @Test
    void nothing_else_changes() {
        assertThat(taxonomy.inUse("rip")).isEqualTo("rip");
        assertThat(Vocabulary.of(taxonomy).meaning("rip")).isEqualTo(new Meaning.One("rip"));
    }
}

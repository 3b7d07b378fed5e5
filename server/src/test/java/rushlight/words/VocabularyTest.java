package rushlight.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

@DisplayNameGeneration(ReplaceUnderscores.class)
class VocabularyTest {
    private static final Taxonomy BOOK = Taxonomy.of(Ontology.packaged());
    private static final Vocabulary HIS_STEPS = Vocabulary.of(
            BOOK, Set.of("RushMove", "RushFamily", "Finish", "RunFit", "Drop", "RushGame"), Optional.empty());

    @ParameterizedTest
    @ValueSource(strings = {"wrong-arm", "wrong arm", "Wrong Arm", "WRONG_ARM", " wrong  arm ", "wrong\u2011arm"})
    void capitals_hyphens_and_blanks_do_not_matter(String text) {
        assertThat(HIS_STEPS.meaning(text)).isEqualTo(new Meaning.One("wrong-arm"));
    }

    @Test
    void neither_do_apostrophes() {
        assertThat(LabelKey.of("Blocker\u2019s 'Stab'/Post")).isEqualTo("blockers stab post");
    }

    @ParameterizedTest
    @CsvSource({
        "run through, run-through;run-through-puller",
        "crosses face, cross-face;cross-face-run",
        "keeps contain, contain;contain-rush"
    })
    void a_label_with_two_meanings_names_them(String label, String slugs) {
        assertThat(HIS_STEPS.meaning(label)).isEqualTo(new Meaning.Several(List.of(slugs.split(";", -1))));
    }

    @Test
    void a_slug_is_itself_whatever_it_would_mean_as_a_label() {
        assertThat(HIS_STEPS.meaning("run-through")).isEqualTo(new Meaning.One("run-through"));
    }

    @Test
    void a_place_knows_only_the_concepts_of_its_kind() {
        Vocabulary faults = Vocabulary.of(BOOK, Set.of("Fault"), Optional.empty());
        Vocabulary hashes = Vocabulary.of(BOOK, Set.of("Context"), Optional.of("hash"));

        assertThat(faults.meaning("wrong arm")).isEqualTo(new Meaning.None());
        assertThat(hashes.meaning("left hash")).isEqualTo(new Meaning.One("left-hash"));
        assertThat(hashes.meaning("red zone")).isEqualTo(new Meaning.None());
    }

    @Test
    void a_label_that_needs_context_counts_where_nothing_else_has_it() {
        Vocabulary one = Vocabulary.of(List.of(concept("spill", "spill", "spill it")));
        Vocabulary two = Vocabulary.of(List.of(concept("spill", "spill", "spill it"), concept("mop", "spill it", "")));

        assertThat(one.meaning("Spill it")).isEqualTo(new Meaning.One("spill"));
        assertThat(two.meaning("spill it")).isEqualTo(new Meaning.Several(List.of("mop", "spill")));
    }

    @Test
    void what_is_offered_for_an_unknown_label_would_be_understood() {
        for (String text : List.of("cros face", "run thru", "bul rsh", "x", "")) {
            assertThat(HIS_STEPS.nearest(text, 3))
                    .hasSize(3)
                    .allSatisfy(
                            offered -> assertThat(HIS_STEPS.meaning(offered)).isInstanceOf(Meaning.One.class));
        }
        assertThat(HIS_STEPS.nearest("run trough", 2))
                .extracting(HIS_STEPS::meaning)
                .containsExactlyInAnyOrder(new Meaning.One("run-through"), new Meaning.One("run-through-puller"));
    }

    @ParameterizedTest
    @CsvSource({
        "hgih pads, high pads",
        "pads hihg, high pads",
        "spil, spill",
        "slides, slide protection",
        "protection sliding, slide protection"
    })
    void letters_swapped_words_turned_and_words_left_out_are_near(String text, String label) {
        NearestLabels labels = NearestLabels.words(
                List.of("high pads", "late hands", "spill", "spin", "slide protection", "full line"));

        assertThat(labels.to(text, 1)).containsExactly(label);
    }

    @Test
    void the_same_text_always_gets_the_same_offer() {
        NearestLabels labels = NearestLabels.words(List.of("bb", "ab", "ac", "ca"));
        NearestLabels turned = NearestLabels.words(List.of("ca", "ac", "ab", "bb"));

        assertThat(labels.to("aa", 3)).isEqualTo(turned.to("aa", 3)).containsExactly("ab", "ac", "ca");
    }

    private static Concept concept(String slug, String label, String needsContext) {
        List<String> context = needsContext.isEmpty() ? List.of() : List.of(needsContext);
        return new Concept(slug, Set.of("Fault"), label, List.of(), List.of(), context, "", List.of(), false);
    }
}

package rushlight.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

@DisplayNameGeneration(ReplaceUnderscores.class)
class MatcherTest {
    private static final Taxonomy TAXONOMY = Taxonomy.of(Ontology.packaged());
    private static final Matcher<Label> MATCHER = matcher();

    private static Matcher<Label> matcher() {
        var builder = new Matcher.Builder<Label>(Tokenizer.ofBook()).withBookWords();
        TAXONOMY.concepts().forEach(concept -> Label.each(concept, builder::add));
        return builder.build();
    }

    private static List<String> found(String text) {
        return MATCHER.best(MATCHER.repaired(MATCHER.tokens(text))).stream()
                .map(match -> text.substring(match.from(), match.to()) + "=" + slugs(match))
                .toList();
    }

    private static String slugs(Match<Label> match) {
        return String.join(
                "|",
                Label.telling(match.values()).stream()
                        .map(Label::slug)
                        .distinct()
                        .sorted()
                        .toList());
    }

    @Test
    void every_label_of_the_book_is_found_whole_and_names_its_concept() {
        TAXONOMY.concepts()
                .forEach(concept -> Label.each(concept, (label, means) -> {
                    List<Token> tokens = MATCHER.tokens(label);
                    if (tokens.stream().allMatch(Token::word)) {
                        assertThat(MATCHER.from(tokens, 0))
                                .as(label + " of " + concept.slug())
                                .anyMatch(match -> match.end() == tokens.size()
                                        && match.values().stream()
                                                .anyMatch(l -> l.slug().equals(concept.slug())));
                    }
                }));
    }

    @Test
    void capitals_hyphens_inflection_and_small_words_do_not_hide_a_label() {
        assertThat(found("He Wrong-Arms the kickouts"))
                .containsExactly("Wrong-Arms=wrong-arm", "kickouts=kick-out-block");
        assertThat(found("setting the edge")).containsExactly("setting the edge=set-the-edge");
        assertThat(found("bullrushed him")).containsExactly("bullrushed=bull-rush");
    }

    @Test
    void numbers_may_be_words() {
        assertThat(found("lined up as a nine tech")).containsExactly("nine tech=technique-9");
        assertThat(found("a 4i")).containsExactly("4i=technique-4i");
        assertThat(found("in a 9t")).containsExactly("9t=technique-9");
    }

    @Test
    void a_misspelled_word_is_taken_for_the_nearest_label_and_marked() {
        List<Match<Label>> matches = MATCHER.best(MATCHER.repaired(MATCHER.tokens("cross chpo and a long arm")));
        assertThat(matches).extracting(MatcherTest::slugs).containsExactly("cross-chop", "long-arm");
        assertThat(matches).extracting(Match::guessed).containsExactly(true, false);
    }

    @Test
    void a_word_that_is_common_is_never_taken_for_a_slip() {
        assertThat(found("the weather tonight is fine")).isEmpty();
    }

    @Test
    void where_labels_overlap_those_that_say_the_most_are_taken() {
        assertThat(found("a chop and a long arm")).containsExactly("chop=chop|cut-block", "long arm=long-arm");
        assertThat(found("takes a kick out block")).containsExactly("kick out block=kick-out-block");
    }

    @Test
    void a_mark_parts_two_labels_and_a_hyphen_does_not() {
        assertThat(found("bull. rush")).doesNotContain("bull. rush=bull-rush");
        assertThat(found("club-rip")).containsExactly("club-rip=club-rip");
    }

    @Test
    void offsets_count_utf_16_units() {
        String text = "\uD83C\uDFC8 bull rush";
        Match<Label> match = MATCHER.best(MATCHER.tokens(text)).get(0);
        assertThat(text.substring(match.from(), match.to())).isEqualTo("bull rush");
        assertThat(match.from()).isEqualTo(3);
    }
}

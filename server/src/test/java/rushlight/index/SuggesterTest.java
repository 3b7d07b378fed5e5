package rushlight.index;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class SuggesterTest {
    private static final Suggester WORDS = Suggester.of(List.of(
            new Suggester.Entry("bull rush", "bull-rush", Set.of("move"), 10),
            new Suggester.Entry("bull", "bull-rush", Set.of("move"), 9),
            new Suggester.Entry("long arm", "long-arm", Set.of("move"), 10),
            new Suggester.Entry("5 technique", "technique-5", Set.of("place"), 10),
            new Suggester.Entry("Ódran Bullivant", "odran", Set.of("prospect"), 50)));

    @Test
    void words_are_looked_up_in_any_order_and_the_last_one_may_be_unfinished() {
        assertThat(ids("b")).containsExactly("odran", "bull-rush");
        assertThat(ids("rush bul")).containsExactly("bull-rush");
        assertThat(ids("5 t")).containsExactly("technique-5");
        assertThat(ids("odr")).containsExactly("odran");
        assertThat(ids("bulls")).isEmpty();
    }

    @Test
    void a_question_may_keep_to_some_kinds() {
        assertThat(WORDS.to("b", Set.of("move"), 5))
                .containsExactly(new Suggester.Suggestion("bull rush", "bull-rush"));
    }

    @Test
    void no_more_are_suggested_than_asked_for() {
        assertThat(WORDS.to("b", Set.of(), 1)).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "<script>", "\"(", "\u0000", "мяч"})
    void any_text_may_be_typed(String text) {
        assertThat(WORDS.to(text, Set.of(), 5)).isEmpty();
        assertThat(WORDS.to(text.repeat(1_000), Set.of(), 5)).isEmpty();
    }

    private static List<String> ids(String text) {
        return WORDS.to(text, Set.of(), 5).stream()
                .map(Suggester.Suggestion::id)
                .toList();
    }
}

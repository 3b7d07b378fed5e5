package rushlight.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

@DisplayNameGeneration(ReplaceUnderscores.class)
class PhrasingsTest {
    @Test
    void choices_stand_for_every_way_to_say_it() {
        assertThat(Phrasings.of("(can|should) he (now|) do"))
                .containsExactly("can he now do", "can he do", "should he now do", "should he do");
    }

    @Test
    void a_pattern_without_choices_is_its_only_way() {
        assertThat(Phrasings.of("edge players")).containsExactly("edge players");
    }

    @Test
    void an_open_bracket_is_named() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Phrasings.of("what (now"))
                .withMessageContaining("what (now");
    }
}

package rushlight.film;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class IdentityTest {
    @ParameterizedTest
    @CsvSource({
        "Oren Halloway, oren-halloway",
        "Andr\u00e9 D'Vell-Ross, andre-d-vell-ross",
        "'  Mill  Night (2nd) ', mill-night-2nd",
        "\uff21\uff22\u00b2, ab2",
        "\u0141ukasz, \u0142ukasz",
        "already-a-slug-7, already-a-slug-7",
        "double--hyphen, double-hyphen",
        "-edge-, edge"
    })
    void a_name_becomes_small_letters_digits_and_hyphens(String name, String slug) {
        assertThat(Identity.slug(name)).isEqualTo(slug);
        assertThat(Identity.slug(slug)).isEqualTo(slug);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "???", "--", " "})
    void a_name_without_letter_or_digit_has_no_slug(String name) {
        assertThat(Identity.slug(name)).isEmpty();
    }
}

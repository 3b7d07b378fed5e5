package rushlight.film.csv;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class SafeCellTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {"=1+1, '=1+1", "+1, '+1", "-1, '-1", "@sum, '@sum", "'=1, ''=1", "''-x, '''-x"})
    void a_value_that_starts_a_formula_gets_an_apostrophe(String value, String cell) {
        assertThat(SafeCell.written(value)).isEqualTo(cell);
        assertThat(SafeCell.read(cell)).isEqualTo(value);
    }

    @Test
    void so_does_a_tab() {
        assertThat(SafeCell.written("\tx")).isEqualTo("'\tx");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "plain", "'", "''", "'quoted'", "a=b", " =1", "1-2"})
    void anything_else_stays_as_it_is(String value) {
        assertThat(SafeCell.written(value)).isEqualTo(value);
        assertThat(SafeCell.read(value)).isEqualTo(value);
    }
}

package rushlight.film;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class TimesTest {
    @ParameterizedTest
    @CsvSource({
        "0:12.4, 0:12.4, 12.4",
        "12.40, 0:12.4, 12.4",
        "75, 1:15, 75",
        "1:02:03.5, 1:02:03.5, 3723.5",
        "62:03, 1:02:03, 3723",
        "0:00, 0:00, 0",
        "100, 1:40, 100"
    })
    void a_time_on_the_film_has_one_form(String written, String form, double seconds) {
        assertThat(Times.film(written)).contains(form);
        assertThat(Times.film(form)).contains(form);
        assertThat(Times.seconds(written)).hasValue(seconds);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0:61", "1:2", "1:60:00", "1:2:03", "-1", "noon", "", "1:", ":30", "1:30.", "1e3"})
    void anything_else_is_no_time(String text) {
        assertThat(Times.film(text)).isEmpty();
        assertThat(Times.seconds(text)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"09:40, 9:40", "9:40, 9:40", "15:00, 15:00", "0:05, 0:05"})
    void a_game_clock_has_one_form(String written, String form) {
        assertThat(Times.clock(written)).contains(form);
    }

    @ParameterizedTest
    @ValueSource(strings = {"14:75", "60:00", "14:12:00", "9", "9:5", ""})
    void anything_else_is_no_game_clock(String text) {
        assertThat(Times.clock(text)).isEmpty();
    }
}

package rushlight.report.prospect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rushlight.notes.Narration;
import rushlight.notes.Narrations;

/** Chapters are written as the W3C's parser reads them. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class ChaptersTest {
    @ParameterizedTest
    @CsvSource({
        "0, 00:00:00.000",
        "12.4, 00:00:12.400",
        "59.9996, 00:01:00.000",
        "61.05, 00:01:01.050",
        "1241, 00:20:41.000",
        "3600, 01:00:00.000",
        "360000.001, 100:00:00.001"
    })
    void a_time_has_two_digits_of_hours_or_more_and_three_of_thousandths(double seconds, String written) {
        assertThat(Chapters.stamp(seconds)).isEqualTo(written);
    }

    @Test
    void what_was_written_is_read_back_whatever_the_words_hold() {
        List<Chapters.Chapter> chapters = List.of(
                chapter("r01", 12.4, 19.8, "takes <his> time & waits --> too long"),
                chapter("r02", 3600, 3607.125, "NOTE of a fault"),
                chapter("r03\nr04", 360000.5, 360001, "WEBVTT"));

        Narration read = Narrations.read(
                "film.vtt", new Chapters.Film("film.mp4", chapters).vtt().getBytes(StandardCharsets.UTF_8));

        assertThat(read.diagnostics()).isEmpty();
        assertThat(read.text())
                .isEqualTo("r01: takes <his> time & waits --> too long\nr02: NOTE of a fault\nr03 r04: WEBVTT");
        assertThat(read.cues()).hasSize(3);
        for (int i = 0; i < 3; i++) {
            assertThat(read.cues().get(i).start().orElseThrow())
                    .isCloseTo(chapters.get(i).start(), within(0.0005));
            assertThat(read.cues().get(i).end().orElseThrow())
                    .isCloseTo(chapters.get(i).end(), within(0.0005));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "at-stonefen-cutup.mp4, at-stonefen-cutup.vtt",
        "https://film.example/a/b%20c.webm?x=1#t=3, b-20c.vtt",
        "..\\..\\secret, secret.vtt",
        "../.., film.vtt",
        "week 3: film.mov, week-3-film.vtt"
    })
    void a_file_of_chapters_is_named_after_its_film_and_leads_nowhere_else(String video, String file) {
        assertThat(new Chapters.Film(video, List.of()).fileName()).isEqualTo(file);
    }

    private static Chapters.Chapter chapter(String rep, double start, double end, String finding) {
        return new Chapters.Chapter(rep, "A at B", start, end, List.of(finding), "film.mp4#t=" + start);
    }
}

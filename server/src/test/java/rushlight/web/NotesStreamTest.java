package rushlight.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.archive.Book;
import rushlight.notes.Narrations;
import rushlight.notes.NoteFile;
import rushlight.notes.NoteReader;

/** Long notes are written while they are read, and nobody can tell by what comes out. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class NotesStreamTest {
    private static final NoteReader READER = NoteReader.of(Book.packaged().taxonomy());

    private static final String REP =
            "Next one. Wide 9. Tackle oversets. Chop, dip, chop \u201Cagain\u201D. Didn't spin. Sack.";

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "[0:01] ",
                "[0:75] rip",
                "WEBVTT\n\nlost words\n\n00:01.000 --> 00:02.000\nHe rips. Overall he plays high.",
                "1\r\n00:00:01,000 --> 00:00:02,000\r\nWide 9, chop. No, club. Sack.\r\n\r\n2\r\n00:00:04,000 --> 00:00:03,000"
                        + "\r\nNext one. Five technique.\r\n",
                "[0:04] Wide 9. Chop, sack.\n[0:09] Look at that again. Chop.\n\nstray words, rip\n[0:20] Bull rush."
            })
    void short_notes_are_written_as_their_answer_is(String text) throws IOException {
        assertThat(streamed(text)).isEqualTo(Json.text(List.of(answer(text))));
    }

    @Test
    void long_notes_and_several_files_are_written_as_their_answers_are() throws IOException {
        String season = IntStream.range(0, 1_800)
                .mapToObj(i -> "[%d:%02d] %s".formatted(i / 6, i % 6 * 10, REP))
                .collect(Collectors.joining("\n", "", "\n[301:00] Overall he needs a counter, and plays high.\n"));

        assertThat(streamed(season, "[0:01] rip", season + "[302:00] Next one. Spins."))
                .isEqualTo(Json.text(
                        List.of(answer(season), answer("[0:01] rip"), answer(season + "[302:00] Next one. Spins."))));
    }

    @Test
    void no_file_makes_an_empty_list() throws IOException {
        assertThat(streamed()).isEqualTo(Json.text(List.of()));
    }

    private static NotesAnswer answer(String text) {
        return NotesAnswer.of(READER.read(Narrations.read("a \"b\".txt", text.getBytes(StandardCharsets.UTF_8))));
    }

    private static String streamed(String... texts) throws IOException {
        StringWriter out = new StringWriter();
        NotesStream stream = new NotesStream(out);
        for (String text : texts) {
            NoteFile file = NoteFile.of("a \"b\".txt", text.getBytes(StandardCharsets.UTF_8));
            stream.file(file.source(), file.each(cue -> {}), use -> READER.each(file, "", List.of(), use));
        }
        stream.end();
        return out.toString();
    }
}

package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

/** Lines that are made when they are asked for are those of the text, in whatever order one asks. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class LinesTest {
    private static final String[] PIECES = {
        "\n", "\r", "\r\n", "rip", "caf\u00E9", "\uD83C\uDFC8", " ", "\u2028", "", "\uFEFF"
    };

    @Test
    void any_text_has_the_lines_it_would_have_cut_at_once() {
        Random random = new Random(31);
        for (int i = 0; i < 5_000; i++) {
            String text = IntStream.range(0, random.nextInt(60))
                    .mapToObj(n -> PIECES[random.nextInt(PIECES.length)])
                    .collect(Collectors.joining());
            Lines lines = Lines.of(text.getBytes(StandardCharsets.UTF_8), 0);
            List<String> wanted =
                    List.of(text.replace("\r\n", "\n").replace('\r', '\n').split("\n", -1));

            assertThat(lines).isEqualTo(wanted);
            int at = random.nextInt(wanted.size());
            assertThat(lines.get(at)).isEqualTo(wanted.get(at));
        }
    }

    @Test
    void a_mark_of_byte_order_and_bytes_that_are_no_text_make_no_difference_to_the_lines() {
        assertThat(Decoded.of("\uFEFFrip\r\nspin".getBytes(StandardCharsets.UTF_8))
                        .lines())
                .containsExactly("rip", "spin");
        assertThat(Decoded.of(new byte[] {'r', (byte) 0xE9, '\r', 's', 0, 'x'}).lines())
                .containsExactly("r\uFFFD", "s\uFFFDx");
        assertThat(Decoded.of(new byte[] {'r', 0, '\n'}).lines()).containsExactly("r\uFFFD", "");
    }
}

package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Keys of tags hold for a file whose times were all shifted. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class TagKeysTest {
    private static final Pattern TIME = Pattern.compile("(\\d\\d):(\\d\\d)\\.(\\d{3})");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "lark-hollow-at-harrow-vale",
                "lark-hollow-v-thornmere",
                "merrow-bay-at-calder-mill",
            })
    void times_are_no_part_of_a_key_and_no_two_keys_are_alike(String name) throws IOException {
        String text = text(name);
        Notes before = read(text);
        List<List<String>> keys = TagKeys.ofReps(before);
        Random random = new Random(31);

        assertThat(keys.stream().flatMap(List::stream)).hasSizeGreaterThan(40).doesNotHaveDuplicates();
        for (int i = 0; i < 5; i++) {
            int millis = 1 + random.nextInt(3_000_000);
            Notes shifted = read(shifted(text, millis));
            assertThat(shifted.reps().get(0).start())
                    .isNotEqualTo(before.reps().get(0).start());
            assertThat(TagKeys.ofReps(shifted)).as("%d ms later", millis).isEqualTo(keys);
            assertThat(TagKeys.ofStatements(shifted)).isEqualTo(TagKeys.ofStatements(before));
        }
    }

    private static Notes read(String text) {
        return DevelopmentSetTest.READER.read(
                Narrations.read("any.vtt", text.getBytes(StandardCharsets.UTF_8)), "Teo Maravale");
    }

    private static String shifted(String text, int millis) {
        return TIME.matcher(text).replaceAll(found -> {
            long all = (Long.parseLong(found.group(1)) * 60 + Long.parseLong(found.group(2))) * 1000
                    + Long.parseLong(found.group(3))
                    + millis;
            return String.format(
                    Locale.ROOT,
                    "%02d:%02d:%02d.%03d",
                    all / 3_600_000,
                    all / 60_000 % 60,
                    all / 1000 % 60,
                    all % 1000);
        });
    }

    private static String text(String name) throws IOException {
        try (InputStream in = Objects.requireNonNull(
                TagKeysTest.class.getResourceAsStream("/rushlight/demo/notes/" + name + ".vtt"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}

package rushlight.notes;

import static org.assertj.core.api.Assertions.assertThat;
import static rushlight.notes.DevelopmentSetTest.READER;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Small notes, each with a way of saying that is easily read wrongly; {@code sentences.tsv} says how they are written. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class SmallNotesTest {
    private static final Pattern SAID =
            Pattern.compile("(s:)?([a-z0-9-]+)=([a-z-]+)(@[a-z]+)?(/[a-z]+)?(\\^[a-z]+)?(>[a-z]+)?(#[0-9]+)?");

    record Case(String number, String notes, String says, int reps) {
        @Override
        public String toString() {
            return number + ": " + notes;
        }
    }

    private record Said(boolean general, Mention mention) {}

    static Stream<Case> cases() {
        try (InputStream in = SmallNotesTest.class.getResourceAsStream("/notes/sentences.tsv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                            .lines()
                            .filter(line -> !line.startsWith("#") && !line.startsWith("number\t"))
                            .map(line -> line.split("\t", -1))
                            .map(cells -> new Case(
                                    cells[0], cells[1].replace("\\n", "\n"), cells[2], Integer.parseInt(cells[3])))
                            .toList()
                            .stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void small_notes_say_what_was_said(Case small) {
        Notes read = READER.read(Narrations.read("small", small.notes().getBytes(StandardCharsets.UTF_8)));
        List<Said> all = new ArrayList<>();
        read.statements().forEach(mention -> all.add(new Said(true, mention)));
        read.reps().forEach(rep -> rep.tags().forEach(mention -> all.add(new Said(false, mention))));
        all.sort(Comparator.comparingInt(said -> said.mention().from()));
        List<String> expected =
                small.says().equals("-") ? List.of() : List.of(small.says().split(" "));
        List<String> found = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            found.add(written(all.get(i), i < expected.size() ? expected.get(i) : ""));
        }
        assertThat(found).as(read.toString()).isEqualTo(expected);
        assertThat(read.reps()).hasSize(small.reps());
    }

    /** What was said, with as much of it as the expectation tells. */
    private static String written(Said said, String expected) {
        Matcher told = SAID.matcher(expected);
        boolean known = told.matches();
        Mention mention = said.mention();
        String actor =
                mention.actor() == Actor.PROSPECT ? "" : "@" + mention.actor().slug();
        String side = known && told.group(5) != null ? "/" + mention.side().orElse("none") : "";
        String hand = known && told.group(6) != null ? "^" + mention.hand().orElse("none") : "";
        String target = known && told.group(7) != null ? ">" + mention.target().orElse("none") : "";
        String order = known && told.group(8) != null ? "#" + mention.order() : "";
        return (said.general() ? "s:" : "")
                + mention.concept()
                + "="
                + mention.assertion().slug()
                + actor
                + side
                + hand
                + target
                + order;
    }
}

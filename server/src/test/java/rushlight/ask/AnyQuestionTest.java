package rushlight.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.situation.Situation;

@DisplayNameGeneration(ReplaceUnderscores.class)
class AnyQuestionTest {
    private static Asked read(String question) {
        return QuestionsTest.QUESTIONS.read(question, QuestionsTest.PEOPLE);
    }

    private static void holds(Asked asked) {
        String question = asked.question();
        assertThat(asked.text()).isNotBlank();
        int at = 0;
        for (Chip chip : asked.chips()) {
            assertThat(chip.from()).isBetween(at, chip.to());
            assertThat(question.substring(chip.from(), chip.to()))
                    .isEqualTo(
                            chip.role() == Chip.Role.NOTE ? question.substring(chip.from(), chip.to()) : chip.text());
            at = chip.to();
        }
        for (Asked.Unread unread : asked.unread()) {
            assertThat(question.substring(unread.from(), unread.to())).isEqualTo(unread.word());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "the of and a",
                "?",
                "!!! ... ???",
                "\u0000\u0001\u0007\u001b[31m",
                "\u200b\u202e\ufeff",
                "\ud83c\udfc8\ud83c\udfc8",
                "\ud83c",
                "\u0627\u0644\u0644\u0627\u0639\u0628 bull rush",
                "\u30d6\u30eb\u30e9\u30c3\u30b7\u30e5",
                "<script>alert(1)</script>",
                "' OR 1=1 --",
                "\"",
                "\"\"",
                "99999999999999999999 sacks",
                "at least -5 sacks",
                "not not never without",
                "better than",
                "top",
                "at least",
                "kick-out kick-out kick-out kick-out",
                "\t\n\r",
                "i\u0307nside sp\u0131n"
            })
    void there_is_a_reading_of_any_text(String question) {
        holds(read(question));
    }

    @Test
    void an_empty_question_asks_for_nothing_and_leaves_nothing_unread() {
        Asked asked = read("");
        assertThat(asked.situation()).isEmpty();
        assertThat(asked.filters()).isEmpty();
        assertThat(asked.chips()).isEmpty();
        assertThat(asked.unread()).isEmpty();
    }

    @Test
    void words_of_another_script_are_unread_and_the_rest_is_read() {
        Asked asked = read("\u0627\u0644\u0644\u0627\u0639\u0628 bull rush");
        assertThat(asked.unread()).hasSize(1);
        assertThat(asked.about(Filter.Relation.ITSELF)).containsExactly("bull-rush");
    }

    @Test
    void a_question_of_two_thousand_characters_is_read() {
        Asked asked = read("who wrong-arms kick-outs and ".repeat(69));
        assertThat(asked.question()).hasSizeGreaterThan(2_000);
        assertThat(asked.situation().orElseThrow().event()).isEqualTo(Situation.has("fit", "wrong-arm"));
        holds(asked);
    }

    @Test
    void what_stands_behind_the_longest_question_is_unread() {
        String question = "bull rush " + "x".repeat(Questions.LONGEST);
        assertThat(read(question).unread()).last().extracting(Asked.Unread::to).isEqualTo(question.length());
    }

    @Test
    void any_row_of_words_signs_and_names_has_one_reading() {
        List<String> stock = new ArrayList<>(List.of(
                "who",
                "never",
                "not",
                "without",
                "at least",
                "10",
                "top",
                "5",
                "better",
                "than",
                "against",
                "off",
                "?",
                "\"",
                "'",
                "Mordell",
                "Toll",
                "confirmed",
                "gaps",
                "drills for",
                "counters to",
                "like",
                "\u00e9",
                "\ud83c\udfc8",
                "\u0000",
                "-",
                "/",
                "or",
                "and",
                "\n",
                "xyzzy",
                "bul",
                "rsuh",
                "what sets up",
                "need",
                "mentioning"));
        QuestionsTest.TAXONOMY.concepts().stream().limit(400).forEach(concept -> stock.add(concept.label()));
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            String question = IntStream.range(0, 1 + random.nextInt(12))
                    .mapToObj(i -> stock.get(random.nextInt(stock.size())))
                    .collect(Collectors.joining(" "));
            Asked asked = read(question);
            holds(asked);
            assertThat(read(question)).as("seed " + seed + ": " + question).isEqualTo(asked);
            for (Chip chip : asked.chips()) {
                assertThatCode(() -> read(asked.without(chip))).doesNotThrowAnyException();
            }
        }
    }

    @Test
    void any_row_of_characters_has_a_reading() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            StringBuilder question = new StringBuilder();
            for (int i = random.nextInt(80); i > 0; i--) {
                question.append((char) (random.nextBoolean() ? random.nextInt(128) : random.nextInt(65_536)));
            }
            holds(read(question.toString()));
        }
    }
}

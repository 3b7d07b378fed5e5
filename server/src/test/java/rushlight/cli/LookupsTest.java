package rushlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rushlight.archive.Book;
import rushlight.knowledge.TeachingOrder;
import rushlight.web.CountersAnswer;

/**
 * What a coach types, and the first three answers he should get. Counters are in the order in which the trade teaches them.
 * Fits have no rank of their own: those that hang on nothing, and that most rules call right, come first.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class LookupsTest {
    private static final Book BOOK = Book.packaged();

    @ParameterizedTest(name = "{0} {1}, {2} {3}")
    @CsvFileSource(resources = "/rushlight/lookups.csv", numLinesToSkip = 1, delimiter = ';')
    void the_first_answers_are_those_a_coach_would_give(
            String command,
            String name,
            @Nullable String condition,
            @Nullable String from,
            @Nullable String first,
            @Nullable String second,
            @Nullable String third) {
        List<String> expected = Stream.of(
                        Optional.ofNullable(first), Optional.ofNullable(second), Optional.ofNullable(third))
                .flatMap(Optional::stream)
                .toList();
        StringWriter said = new StringWriter();
        Lookup lookup = new Lookup(BOOK, new PrintWriter(said));

        List<String> found = answers(lookup, command, name, Optional.ofNullable(condition), Optional.ofNullable(from));

        assertThat(said.toString()).isEmpty();
        assertThat(found.stream().map(BOOK.taxonomy()::label).limit(expected.size()))
                .isNotEmpty()
                .containsExactlyElementsOf(expected);
    }

    private static List<String> answers(
            Lookup lookup, String command, String name, Optional<String> condition, Optional<String> from) {
        return switch (command) {
            case "counters" ->
                CountersCommand.answer(
                                BOOK,
                                lookup,
                                new CountersCommand.Typed(Optional.of(name), condition, from, Optional.empty()),
                                Optional.empty())
                        .map(answer -> answer.counters().stream()
                                .map(CountersAnswer.Entry::counter)
                                .toList())
                        .orElse(List.of());
            case "answers" ->
                AnswersCommand.answer(BOOK, lookup, name, condition)
                        .map(answer -> answer.answers().get(0).right())
                        .orElse(List.of());
            case "teach" ->
                TeachCommand.answer(BOOK, lookup, name)
                        .map(answer -> answer.ladder().stream()
                                .map(TeachingOrder.Rung::concept)
                                .toList())
                        .orElse(List.of());
            default -> throw new IllegalArgumentException(command);
        };
    }
}

package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayNameGeneration(ReplaceUnderscores.class)
class LexiconTest {
    private static final Pattern SUBJECT = Pattern.compile("^kb:(\\S+) a ", Pattern.MULTILINE);

    static List<Path> lists() {
        return OntologyFiles.endingWith("lexicon", ".tsv");
    }

    private static List<List<String>> table(Path file) {
        return OntologyFiles.text(file)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> List.of(line.split("\t", -1)))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("lists")
    void every_word_list_opens_with_one_line_that_says_what_it_holds(Path file) {
        assertThat(OntologyFiles.text(file).lines().findFirst().orElse("")).matches("# [A-Z].{20,}\\.");
    }

    @ParameterizedTest
    @MethodSource("lists")
    void every_row_has_a_value_for_every_column(Path file) {
        List<List<String>> table = table(file);
        assertThat(table.size()).isGreaterThan(1);
        assertThat(table).allSatisfy(row -> {
            assertThat(row).hasSameSizeAs(table.get(0));
            assertThat(row).noneMatch(String::isBlank).allMatch(value -> value.equals(value.strip()));
        });
    }

    @ParameterizedTest
    @MethodSource("lists")
    void no_row_stands_twice(Path file) {
        assertThat(table(file).stream().skip(1)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("lists")
    void words_are_written_in_lower_case(Path file) {
        boolean words = !Set.of("term", "question").contains(table(file).get(0).get(0));
        assertThat(table(file).stream().skip(1).filter(row -> words).map(row -> row.get(0)))
                .allMatch(word -> word.equals(word.toLowerCase(Locale.ROOT)));
    }

    @Test
    void every_term_a_word_list_names_stands_in_the_book() {
        Set<String> slugs = OntologyFiles.turtle().stream()
                .flatMap(file -> SUBJECT.matcher(OntologyFiles.text(file)).results())
                .map(found -> found.group(1))
                .collect(Collectors.toSet());
        List<List<String>> questions = table(OntologyFiles.file("lexicon/questions.tsv"));
        List<List<String>> spoken = table(OntologyFiles.file("lexicon/narration-lists.tsv")).stream()
                .skip(1)
                .flatMap(list -> table(OntologyFiles.file("lexicon/" + list.get(0) + ".tsv")).stream()
                        .skip(1))
                .toList();
        Stream<String> named = Stream.of(
                        spoken.stream().map(row -> row.get(1)),
                        questions.stream()
                                .filter(row -> row.get(1).matches("means|else"))
                                .map(row -> row.get(2)))
                .flatMap(names -> names);
        assertThat(named.filter(name -> !name.equals("-"))).isNotEmpty().allMatch(slugs::contains);
    }
}

package rushlight.ontology;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.jena.query.QueryExecution;
import org.apache.jena.query.QueryFactory;
import org.apache.jena.query.ResultSetFormatter;
import org.apache.jena.rdf.model.Model;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The questions the book was written for, each with the answer a person worked out beside it. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CompetencyQuestionsTest {
    private static final String FOLDER = "questions";

    @TestFactory
    Stream<DynamicTest> the_book_answers() {
        Model facts = OntologyFiles.facts();
        return questions().stream()
                .map(file -> dynamicTest(
                        asked(file),
                        file.toUri(),
                        () -> assertThat(answer(facts, file))
                                .isEqualToNormalizingNewlines(OntologyFiles.text(expected(file)))));
    }

    @Test
    void there_are_at_least_seventy_and_every_answer_has_its_question() {
        assertThat(questions()).hasSizeGreaterThanOrEqualTo(70);
        assertThat(OntologyFiles.endingWith(FOLDER, ".csv"))
                .containsExactlyElementsOf(questions().stream()
                        .map(CompetencyQuestionsTest::expected)
                        .toList());
    }

    @Test
    void every_question_is_asked_in_words_and_answered_in_a_fixed_order() {
        assertThat(questions()).allSatisfy(file -> {
            assertThat(asked(file)).matches("[A-Z].*[?.]");
            assertThat(OntologyFiles.text(file)).contains("ORDER BY");
        });
    }

    @Test
    void an_answer_to_nothing_is_no_answer() {
        assertThat(questions())
                .allSatisfy(file ->
                        assertThat(OntologyFiles.text(expected(file)).lines()).hasSizeGreaterThan(1));
    }

    private static List<Path> questions() {
        return OntologyFiles.endingWith(FOLDER, ".rq");
    }

    private static Path expected(Path question) {
        return question.resolveSibling(question.getFileName().toString().replace(".rq", ".csv"));
    }

    private static String asked(Path question) {
        return OntologyFiles.text(question).lines().findFirst().orElse("").replaceFirst("^# ", "");
    }

    private static String answer(Model facts, Path question) {
        try (QueryExecution run = QueryExecution.create(QueryFactory.create(OntologyFiles.text(question)), facts)) {
            ByteArrayOutputStream csv = new ByteArrayOutputStream();
            ResultSetFormatter.outputAsCSV(csv, run.execSelect());
            return csv.toString(StandardCharsets.UTF_8);
        }
    }
}

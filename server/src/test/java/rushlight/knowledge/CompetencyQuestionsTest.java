package rushlight.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.compose.Union;
import org.apache.jena.query.QueryExecution;
import org.apache.jena.query.QueryFactory;
import org.apache.jena.query.QuerySolution;
import org.apache.jena.query.ResultSet;
import org.apache.jena.rdf.model.ModelFactory;
import org.eclipse.rdf4j.query.BindingSet;
import org.eclipse.rdf4j.query.TupleQueryResult;
import org.eclipse.rdf4j.repository.sail.SailRepository;
import org.eclipse.rdf4j.repository.sail.SailRepositoryConnection;
import org.eclipse.rdf4j.rio.RDFFormat;
import org.eclipse.rdf4j.sail.memory.MemoryStore;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.TestInstance;

/** The packed book answers its questions the same in Jena and in an engine that shares no code with it. */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class CompetencyQuestionsTest {
    private final Graph book =
            new Union(Ontology.packaged().graph(), Ontology.packaged().lessons());
    private final SailRepository other = new SailRepository(new MemoryStore());

    @BeforeAll
    void load_the_other_engine() throws IOException {
        try (SailRepositoryConnection connection = other.getConnection()) {
            connection.begin();
            for (String file : Ontology.files()) {
                if (file.endsWith(".ttl")) {
                    connection.add(new StringReader(Ontology.text(file)), RDFFormat.TURTLE);
                }
            }
            connection.commit();
        }
    }

    @AfterAll
    void close_the_other_engine() {
        other.shutDown();
    }

    @Test
    void both_engines_hold_the_same_book() {
        try (SailRepositoryConnection connection = other.getConnection()) {
            assertThat(connection.size()).isEqualTo(book.size());
        }
    }

    @TestFactory
    Stream<DynamicTest> both_engines_answer_alike() {
        List<String> questions = Ontology.files().stream()
                .filter(file -> file.startsWith("questions/") && file.endsWith(".rq"))
                .toList();
        assertThat(questions).hasSizeGreaterThanOrEqualTo(70);
        return questions.stream()
                .map(file -> dynamicTest(asked(file), () -> {
                    List<List<String>> expected = rows(Ontology.text(file.replace(".rq", ".csv")));
                    assertThat(byJena(Ontology.text(file))).isEqualTo(expected);
                    assertThat(byRdf4j(Ontology.text(file))).isEqualTo(expected);
                }));
    }

    private static String asked(String file) {
        return Ontology.text(file).lines().findFirst().orElse("").replaceFirst("^# ", "");
    }

    /** The table of a CSV file: the header first, then each row in its order. */
    private static List<List<String>> rows(String csv) throws IOException {
        try (CSVParser parser = CSVParser.parse(csv, CSVFormat.RFC4180)) {
            return parser.stream().map(CSVRecord::toList).toList();
        }
    }

    private List<List<String>> byJena(String question) {
        try (QueryExecution run =
                QueryExecution.create(QueryFactory.create(question), ModelFactory.createModelForGraph(book))) {
            ResultSet answers = run.execSelect();
            List<String> names = answers.getResultVars();
            List<List<String>> table = new ArrayList<>(List.of(names));
            while (answers.hasNext()) {
                QuerySolution answer = answers.next();
                table.add(names.stream()
                        .map(name -> answer.get(name).asLiteral().getLexicalForm())
                        .toList());
            }
            return table;
        }
    }

    private List<List<String>> byRdf4j(String question) {
        try (SailRepositoryConnection connection = other.getConnection();
                TupleQueryResult answers =
                        connection.prepareTupleQuery(question).evaluate()) {
            List<String> names = answers.getBindingNames();
            List<List<String>> table = new ArrayList<>(List.of(names));
            for (BindingSet answer : answers) {
                table.add(names.stream()
                        .map(name -> answer.getValue(name).stringValue())
                        .toList());
            }
            return table;
        }
    }
}

package rushlight.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.query.QueryExecution;
import org.apache.jena.query.QueryExecutionFactory;
import org.apache.jena.query.QueryFactory;
import org.apache.jena.rdf.model.ModelFactory;
import org.apache.jena.sparql.core.DatasetGraphFactory;
import org.apache.jena.sparql.graph.GraphFactory;
import org.apache.jena.update.UpdateAction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.Prospect;
import rushlight.film.RepFacts;
import rushlight.film.csv.FilmLogReader;
import rushlight.film.csv.ReadResult;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Rl;
import rushlight.store.LogGraph;

/**
 * The rules conclude what SPARQL concludes from the stored triples by a formulation of its own (property paths instead of
 * the closure, FILTER NOT EXISTS instead of strata), on the demo league and on reps made by dice.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RepClassesInSparqlTest {
    private static final Path QUERIES = Path.of("src", "test", "resources", "rep-classes");
    private static final Set<String> CONCLUDED_BY_NO_RULE =
            Set.of("opp-long-game", "opp-opening", "rush-opportunity", "run-opportunity");

    private static final Graph STORED = GraphFactory.createGraphMem();
    private static final Map<Node, Set<String>> BY_RULES = new HashMap<>();
    private static final Map<String, Set<Node>> BY_SPARQL = new TreeMap<>();

    @BeforeAll
    static void classify_both_ways() {
        Reps.BOOK.graph().find().forEachRemaining(STORED::add);
        LogGraph writer = new LogGraph(Reps.TAXONOMY.film());
        for (Log log : logs()) {
            writer.write(
                    log, log.readings().stream().map(r -> Set.<String>of()).toList(), "", Instant.EPOCH, STORED::add);
            Map<String, Node> nodes = readings(log);
            for (RepFacts facts : Reps.RULES.factsOf(log)) {
                BY_RULES.put(Optional.ofNullable(nodes.get(facts.rep().rep())).orElseThrow(), facts.tagged("repClass"));
            }
        }
        UpdateAction.parseExecute(text("0-views.ru"), DatasetGraphFactory.wrap(STORED));
        for (String repClass : asked()) {
            Set<Node> reps = new TreeSet<>((a, b) -> a.getURI().compareTo(b.getURI()));
            try (QueryExecution query = QueryExecutionFactory.create(
                    QueryFactory.create(text(repClass + ".rq")), ModelFactory.createModelForGraph(STORED))) {
                query.execSelect()
                        .forEachRemaining(row -> reps.add(row.getResource("rep").asNode()));
            }
            BY_SPARQL.put(repClass, reps);
        }
    }

    @Test
    void every_class_has_a_query_of_its_own() {
        Set<String> classes = Stream.of("RepClass", "Opportunity")
                .flatMap(name -> Reps.TAXONOMY.ofClass(name).stream())
                .map(Concept::slug)
                .filter(slug -> !CONCLUDED_BY_NO_RULE.contains(slug))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(asked()).isEqualTo(classes).hasSizeGreaterThan(65);
    }

    @Test
    void rules_and_queries_agree_on_every_rep() {
        List<String> differences = new ArrayList<>();
        BY_SPARQL.forEach((repClass, reps) -> BY_RULES.forEach((rep, classes) -> {
            if (classes.contains(repClass) != reps.contains(rep)) {
                differences.add(
                        (reps.contains(rep) ? "only SPARQL says " : "only the rules say ") + repClass + ": " + rep);
            }
        }));
        assertThat(BY_RULES).hasSizeGreaterThan(3000);
        assertThat(differences).isEmpty();
    }

    @Test
    void every_class_holds_of_some_reps_and_not_of_all() {
        assertThat(BY_SPARQL)
                .allSatisfy(
                        (repClass, reps) -> assertThat(reps.size()).isPositive().isLessThan(BY_RULES.size()));
    }

    private static List<Log> logs() {
        List<Log> logs = new ArrayList<>();
        FilmLogReader reader = FilmLogReader.of(Reps.TAXONOMY);
        for (Path file : files(Path.of("..", "demo-data", "logs"))) {
            ReadResult read = reader.read(file, FilmLogReader.Options.none());
            assertThat(read).as(file.toString()).isInstanceOf(ReadResult.Accepted.class);
            logs.addAll(((ReadResult.Accepted) read).logs());
        }
        logs.add(new Log(
                "dice",
                Prospect.named("nobody", "Nobody"),
                new Game("nowhere", "Nowhere", Optional.empty(), "", ""),
                Reps.CHARTED,
                new RandomReps(Reps.TAXONOMY, 20260101).some(1500),
                new Log.Source("dice.csv", "0")));
        return logs;
    }

    /** The stored readings of a log by the name of their rep. */
    private static Map<String, Node> readings(Log log) {
        String end = "/" + LogGraph.idOf(log).evaluator() + "/" + log.prospect().id() + "/"
                + log.game().id();
        Map<String, Node> readings = new HashMap<>();
        STORED.find(Node.ANY, Rl.term("log"), Node.ANY)
                .filterKeep(t -> t.getObject().getURI().endsWith(end))
                .forEachRemaining(t -> STORED.find(t.getSubject(), Rl.term("rep"), Node.ANY)
                        .forEachRemaining(
                                rep -> readings.put(rep.getObject().getLiteralLexicalForm(), t.getSubject())));
        assertThat(readings).hasSameSizeAs(log.readings());
        return readings;
    }

    private static Set<String> asked() {
        return files(QUERIES).stream()
                .map(file -> file.getFileName().toString())
                .filter(name -> name.endsWith(".rq"))
                .map(name -> name.substring(0, name.length() - 3))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String text(String name) {
        try {
            return Files.readString(QUERIES.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

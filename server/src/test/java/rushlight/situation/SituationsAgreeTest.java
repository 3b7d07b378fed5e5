package rushlight.situation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import org.apache.jena.riot.Lang;
import org.apache.jena.riot.RDFParser;
import org.apache.jena.sparql.graph.GraphFactory;
import org.apache.jena.vocabulary.RDF;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import rushlight.film.RepFacts;
import rushlight.findings.Assessment;
import rushlight.findings.Counting;
import rushlight.findings.DemoLeague;
import rushlight.findings.Finding;
import rushlight.findings.FindingBook;
import rushlight.findings.Judged;
import rushlight.findings.Measure;
import rushlight.index.Count;
import rushlight.index.Footage;
import rushlight.index.IndexState;
import rushlight.index.RepIndex;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/**
 * Every situation of every finding says the same of every reading of the demo league, whoever is asked: the facts in
 * memory, the index, SPARQL, and jena-shacl by the shape as it stands in the book. The last two look at the stored
 * triples, closed by property paths; jena-shacl at those that somebody says fit and at an eighth of the others.
 */
@DisplayNameGeneration(ReplaceUnderscores.class)
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SituationsAgreeTest {
    private static final int SHOWN = 20;

    private final Ontology book = Ontology.packaged();
    private final Taxonomy taxonomy = Taxonomy.of(book);
    private final Situations situations = Situations.of(book, taxonomy);
    private final List<Finding> findings =
            FindingBook.of(book, taxonomy, situations).all();
    private final DemoLeague league = DemoLeague.assessed();
    private final ClosedFilm film = new ClosedFilm(book, taxonomy, league.facts());
    private final RepIndex index = RepIndex.inMemory(situations.facets(), List.of());

    /** The shapes of the book as they stand there, and what is counted for each finding written as a shape. */
    private final Graph shapes = GraphFactory.createDefaultGraph();

    private final SortedMap<String, Situation> asked = new TreeMap<>();

    SituationsAgreeTest() {
        index.rebuild(league.facts().stream(), List.of(), new IndexState(1, "book"));
        for (String file : Ontology.files()) {
            if (file.matches("findings-.*\\.ttl|counting\\.ttl")) {
                RDFParser.fromString(Ontology.text(file), Lang.TURTLE).parse(shapes);
            }
        }
        for (Node shape : named(shapes)) {
            asked.put(shape.getURI(), situations.read(shape));
        }
        for (Finding finding : findings) {
            finding.counting().scope().ifPresent(scope -> {
                ask("counted/" + finding.slug(), scope.opportunity());
                scope.perhaps().ifPresent(perhaps -> ask("perhaps/" + finding.slug(), perhaps));
            });
        }
    }

    @AfterAll
    void close() {
        index.close();
    }

    @Test
    void every_engine_says_the_same_of_every_reading() {
        Map<String, Map<String, Set<ClosedFilm.Of>>> said = new TreeMap<>();
        said.put("memory", inMemory());
        said.put("index", inIndex());
        said.put("SPARQL", inSparql());
        SortedMap<String, Set<ClosedFilm.Of>> fitting = new TreeMap<>();
        asked.keySet().forEach(shape -> fitting.put(shape, anybody(said, shape)));
        said.put("SHACL", film.validate(shapes, fitting));

        List<String> differences = new ArrayList<>();
        for (String shape : asked.keySet()) {
            anybody(said, shape).stream()
                    .filter(reading -> !said.values().stream().allMatch(engine -> fits(engine, shape, reading)))
                    .map(reading -> shape.substring(Rl.SHAPE.length()) + " on " + reading + ": "
                            + said.entrySet().stream()
                                    .map(engine -> engine.getKey() + " says "
                                            + (fits(engine.getValue(), shape, reading) ? "yes" : "no"))
                                    .collect(Collectors.joining(", ")))
                    .forEach(differences::add);
        }
        assertThat(differences.stream().limit(SHOWN))
                .as("The first of %d differences", differences.size())
                .isEmpty();
    }

    @Test
    void the_facts_of_every_reading_are_those_of_the_closed_triples() {
        List<String> differences = new ArrayList<>();
        for (LogFacts log : league.facts()) {
            for (int i = 0; i < log.facts().size(); i++) {
                RepFacts facts = log.facts().get(i);
                ClosedFilm.Of reading =
                        ClosedFilm.Of.reading(log.log().readings().get(i));
                for (Facet facet : situations.facets().all()) {
                    Set<String> made = made(facts, facet);
                    Set<String> closed = film.values(reading, facet.name());
                    if (facet.name().equals("seen")) { // the words nobody can ask for, such as "note", do not matter
                        made.retainAll(facet.values());
                        closed.retainAll(facet.values());
                    }
                    if (!made.equals(closed)) {
                        differences.add(facet.name() + " of " + reading + ": made " + made + ", closed " + closed);
                    }
                }
            }
        }
        assertThat(differences.stream().limit(SHOWN))
                .as("The first of %d differences", differences.size())
                .isEmpty();
    }

    @Test
    void nearly_every_situation_fits_some_reading_and_none_fits_all() {
        Map<String, Set<ClosedFilm.Of>> said = inMemory();
        assertThat(film.readings()).hasSizeGreaterThan(2500);
        assertThat(asked).hasSizeGreaterThan(300);
        assertThat(said.values())
                .allSatisfy(
                        reps -> assertThat(reps).hasSizeLessThan(film.readings().size()));
        assertThat(said.keySet()).hasSizeGreaterThan(asked.size() * 9 / 10);
    }

    @Test
    void the_counts_of_every_finding_are_those_of_SPARQL() {
        List<String> differences = new ArrayList<>();
        int compared = 0;
        for (Finding finding : findings) {
            Optional<Counting.Scope> scope = finding.counting().scope();
            if (scope.isPresent()) {
                Situation opportunity = scope.orElseThrow().opportunity();
                Situation event = scope.orElseThrow().event();
                SortedMap<String, Count> expected = counts(opportunity, event);
                SortedMap<String, Count> found = index.read(believed(), footage -> footage.counts(opportunity, event));
                compared += expected.size();
                if (!found.equals(expected)) {
                    differences.add(finding.slug() + ": the index counts " + found + ", SPARQL " + expected);
                }
            }
        }
        assertThat(differences).isEmpty();
        assertThat(compared).isGreaterThan(1000);
    }

    @Test
    void the_rates_of_every_assessment_are_those_of_SPARQL() {
        Situation leftOut =
                Situation.any(List.of(situations.named("low-confidence-rep"), situations.named("drop-rep")));
        List<String> differences = new ArrayList<>();
        int compared = 0;
        for (Finding finding : findings) {
            if (isPlainRate(finding)) {
                Counting.Scope scope = finding.counting().scope().orElseThrow();
                List<Situation> certain = new ArrayList<>(List.of(scope.opportunity(), Situation.not(leftOut)));
                if (!scope.duties().isEmpty()) {
                    certain.add(Situation.anyOf("assignment", scope.duties()));
                }
                SortedMap<String, Count> expected = counts(Situation.all(certain), scope.event());
                for (Assessment assessment : league.assessments()) {
                    Judged judged = assessment.finding(finding.slug()).orElseThrow();
                    Count found = new Count(
                            judged.outcome().rate().opportunities(),
                            judged.outcome().rate().events());
                    Count wanted = expected.getOrDefault(assessment.prospect().id(), new Count(0, 0));
                    compared++;
                    if (!found.equals(wanted)) {
                        differences.add(finding.slug() + " of "
                                + assessment.prospect().name() + ": assessed " + found + ", by SPARQL " + wanted);
                    }
                }
            }
        }
        assertThat(differences).isEmpty();
        assertThat(compared).isGreaterThan(1000);
    }

    private static Set<String> made(RepFacts facts, Facet facet) {
        return new TreeSet<>(
                facet.kind() == Facet.Kind.NUMBER
                        ? facts.number(facet.name()).stream()
                                .mapToObj(Integer::toString)
                                .toList()
                        : facts.closed().getOrDefault(facet.name(), Set.of()));
    }

    private static boolean isPlainRate(Finding finding) {
        Counting counting = finding.counting();
        return finding.measure() == Measure.RATE
                && counting.scope().isPresent()
                && counting.split().isEmpty();
    }

    private static Set<ClosedFilm.Of> anybody(Map<String, Map<String, Set<ClosedFilm.Of>>> said, String shape) {
        Set<ClosedFilm.Of> some = new HashSet<>();
        said.values().forEach(engine -> some.addAll(engine.getOrDefault(shape, Set.of())));
        return some;
    }

    private static boolean fits(Map<String, Set<ClosedFilm.Of>> engine, String shape, ClosedFilm.Of reading) {
        return engine.getOrDefault(shape, Set.of()).contains(reading);
    }

    private Map<String, Set<ClosedFilm.Of>> inMemory() {
        Map<String, Set<ClosedFilm.Of>> said = new HashMap<>();
        for (LogFacts log : league.facts()) {
            for (int i = 0; i < log.facts().size(); i++) {
                RepFacts facts = log.facts().get(i);
                ClosedFilm.Of reading =
                        ClosedFilm.Of.reading(log.log().readings().get(i));
                asked.forEach((shape, situation) -> {
                    if (situation.fits(facts)) {
                        add(said, shape, reading);
                    }
                });
            }
        }
        return said;
    }

    /** A tape holds one reading a rep: so everybody is believed first once. */
    private Map<String, Set<ClosedFilm.Of>> inIndex() {
        Map<String, Set<ClosedFilm.Of>> said = new HashMap<>();
        Set<ClosedFilm.Of> looked = new HashSet<>();
        for (String evaluator : believed()) {
            index.read(List.of(evaluator), footage -> {
                footage.tapes().forEach(tape -> look(footage, tape, said, looked));
                return true;
            });
        }
        assertThat(looked).isEqualTo(film.readings());
        return said;
    }

    private void look(Footage footage, Tape tape, Map<String, Set<ClosedFilm.Of>> said, Set<ClosedFilm.Of> looked) {
        List<ClosedFilm.Of> readings = footage.reps(tape.prospect().id()).stream()
                .map(rep -> ClosedFilm.Of.reading(rep.reading()))
                .toList();
        looked.addAll(readings);
        asked.forEach(
                (shape, situation) -> tape.fitting(situation).stream().forEach(i -> add(said, shape, readings.get(i))));
    }

    private Map<String, Set<ClosedFilm.Of>> inSparql() {
        Map<String, Set<ClosedFilm.Of>> said = new HashMap<>();
        asked.forEach((shape, situation) ->
                said.put(shape, film.ask(new SituationSparql(situations.facets()).readings(situation))));
        return said;
    }

    private SortedMap<String, Count> counts(Situation opportunity, Situation event) {
        SortedMap<String, Integer> events = count(Situation.all(List.of(opportunity, event)));
        SortedMap<String, Count> counts = new TreeMap<>();
        count(opportunity)
                .forEach((prospect, n) -> counts.put(prospect, new Count(n, events.getOrDefault(prospect, 0))));
        return counts;
    }

    private SortedMap<String, Integer> count(Situation situation) {
        return film.count(new SituationSparql(situations.facets()).counts(situation));
    }

    private List<String> believed() {
        return league.facts().stream()
                .map(log -> log.log().evaluator())
                .distinct()
                .toList();
    }

    private void ask(String name, Situation situation) {
        Node shape = NodeFactory.createURI(Rl.SHAPE + name);
        situations.write(situation, shapes, shape);
        asked.put(shape.getURI(), situation);
    }

    private static Set<Node> named(Graph shapes) {
        Set<Node> named = new TreeSet<>((a, b) -> a.getURI().compareTo(b.getURI()));
        shapes.find(Node.ANY, RDF.type.asNode(), NodeFactory.createURI(Sh.NS + "NodeShape"))
                .mapWith(Triple::getSubject)
                .filterKeep(Node::isURI)
                .forEachRemaining(named::add);
        return named;
    }

    private static void add(Map<String, Set<ClosedFilm.Of>> said, String shape, ClosedFilm.Of reading) {
        said.computeIfAbsent(shape, s -> new HashSet<>()).add(reading);
    }
}

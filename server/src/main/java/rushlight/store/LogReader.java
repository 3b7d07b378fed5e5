package rushlight.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.vocabulary.RDFS;
import rushlight.film.Game;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.RepId;
import rushlight.film.Step;
import rushlight.knowledge.Column;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Rl;

/** Reads stored triples back into logs. */
final class LogReader {
    private static final Node LABEL = RDFS.label.asNode();

    private final Graph graph;
    private final Map<String, Column> byFacet = new HashMap<>();

    LogReader(Graph graph, FilmColumns columns) {
        this.graph = graph;
        columns.all().stream().filter(c -> c.kind() != Column.Kind.EXCHANGE).forEach(c -> byFacet.put(c.facet(), c));
    }

    Log log(LogId id) {
        Log head = head(id);
        return new Log(
                head.evaluator(),
                head.prospect(),
                head.game(),
                head.charted(),
                readings(Addresses.log(id), id, head.evaluator()),
                head.source());
    }

    /** A log without its readings. */
    Log head(LogId id) {
        return head(id, graph, Addresses.log(id));
    }

    /** A log without its readings, where what can change of it stands in another graph. */
    Log head(LogId id, Graph from, Node node) {
        Set<String> charted = new TreeSet<>();
        from.find(node, Terms.CHARTED, Node.ANY)
                .forEachRemaining(t -> charted.add(t.getObject().getLiteralLexicalForm()));
        return new Log(
                text(Addresses.person(id.evaluator()), LABEL),
                prospect(Addresses.prospect(id.prospect())),
                game(Addresses.game(id.game())),
                charted,
                List.of(),
                source(from, node));
    }

    Log.Source source(Node log) {
        return source(graph, log);
    }

    private Log.Source source(Graph from, Node log) {
        Node file = from.find(log, Terms.DERIVED, Node.ANY).next().getObject();
        return new Log.Source(text(file, Terms.FILE_NAME), text(file, Terms.SHA256));
    }

    Prospect prospect(Node node) {
        return new Prospect(
                Addresses.last(node),
                text(node, LABEL),
                text(node, Terms.POSITION),
                number(node, Terms.HEIGHT),
                number(node, Terms.WEIGHT),
                number(node, Terms.ARM),
                text(node, Terms.TEAM),
                text(node, Terms.CLASS_YEAR),
                text(node, Terms.NOTE));
    }

    Game game(Node node) {
        return new Game(
                Addresses.last(node),
                text(node, LABEL),
                Optional.of(text(node, Terms.DATE)).filter(d -> !d.isEmpty()).map(LocalDate::parse),
                text(node, Terms.OPPONENT),
                text(node, Terms.LEVEL));
    }

    /** The place of a reading in its log, from 0. */
    int order(Node reading) {
        return Integer.parseInt(text(reading, Terms.ORDER)) - 1;
    }

    String name(Node node) {
        return text(node, LABEL);
    }

    private List<Reading> readings(Node log, LogId id, String evaluator) {
        record Placed(int order, Reading reading) {}
        List<Placed> placed = new ArrayList<>();
        for (Triple t : graph.find(Node.ANY, Terms.LOG, log).toList()) {
            Node reading = t.getSubject();
            placed.add(new Placed(order(reading), reading(reading, id, evaluator)));
        }
        return placed.stream()
                .sorted(Comparator.comparingInt(Placed::order))
                .map(Placed::reading)
                .toList();
    }

    Reading reading(Node node, LogId id, String evaluator) {
        Map<String, List<String>> tags = new HashMap<>();
        Map<Integer, Step> steps = new TreeMap<>();
        List<String> listed = new ArrayList<>();
        for (Triple t : graph.find(node, Node.ANY, Node.ANY).toList()) {
            Node property = t.getPredicate();
            Node value = t.getObject();
            Column column = property.getURI().startsWith(Rl.SCHEMA) ? byFacet.get(Rl.slug(property)) : null;
            if (property.equals(Terms.HIS_STEP) || property.equals(Terms.BLOCKER_STEP)) {
                Step.By by = property.equals(Terms.HIS_STEP) ? Step.By.HIM : Step.By.BLOCKER;
                steps.put(Integer.parseInt(text(value, Terms.ORDER)), step(value, by));
            } else if (property.equals(Terms.AS_LISTED)) {
                listed.add(value.getLiteralLexicalForm());
            } else if (column != null && !property.equals(Terms.REP)) {
                tags.computeIfAbsent(column.name(), n -> new ArrayList<>())
                        .add(value.isURI() ? Rl.slug(value) : value.getLiteralLexicalForm());
            }
        }
        tags.values().forEach(values -> values.sort(Comparator.naturalOrder()));
        for (String cell : listed) {
            int equals = cell.indexOf('=');
            tags.put(
                    cell.substring(0, equals),
                    List.of(cell.substring(equals + 1).split(";")));
        }
        RepId rep = new RepId(id.prospect(), id.game(), text(node, Terms.REP));
        return new Reading(rep, evaluator, tags, List.copyOf(steps.values()));
    }

    private Step step(Node node, Step.By by) {
        return new Step(
                by,
                Rl.slug(object(node, Terms.DOES).orElseThrow()),
                Optional.of(text(node, Terms.HAND)).filter(hand -> !hand.isEmpty()));
    }

    private Optional<Node> object(Node subject, Node property) {
        return graph.find(subject, property, Node.ANY).mapWith(Triple::getObject).toList().stream()
                .findFirst();
    }

    private String text(Node subject, Node property) {
        return object(subject, property).map(Node::getLiteralLexicalForm).orElse("");
    }

    private OptionalDouble number(Node subject, Node property) {
        String value = text(subject, property);
        return value.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Double.parseDouble(value));
    }
}

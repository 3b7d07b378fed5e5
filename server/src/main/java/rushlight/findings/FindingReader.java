package rushlight.findings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.apache.jena.graph.Node;
import rushlight.evidence.Side;
import rushlight.evidence.Tally;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.RefusedShapeException;
import rushlight.situation.Situation;
import rushlight.situation.Situations;

/** Reads findings from the graph of the book. */
final class FindingReader {
    private final Ontology ontology;
    private final Facts facts;
    private final Facts shipped;
    private final Taxonomy taxonomy;
    private final Situations situations;
    private final SeenFirst seen;

    FindingReader(Ontology ontology, Taxonomy taxonomy, Situations situations) {
        this.ontology = ontology;
        this.facts = new Facts(ontology.graph());
        this.shipped = new Facts(ontology.shipped());
        this.taxonomy = taxonomy;
        this.situations = situations;
        this.seen = new SeenFirst(ontology, taxonomy);
    }

    /** Every finding that the film log can carry. */
    List<Finding> all() {
        return facts.ofClass("Finding").stream()
                .filter(node -> facts.text(node, "notCarried").isEmpty())
                .map(this::read)
                .toList();
    }

    /** Every task that roles may ask for: it counts as a strength does. */
    List<Finding> tasks() {
        return facts.ofClass("RoleTask").stream().map(this::task).toList();
    }

    /** Why findings and tasks cannot be read, by their slugs. */
    Map<String, String> refused() {
        Map<String, String> refused = new TreeMap<>();
        refused(refused, "Finding", this::read);
        refused(refused, "RoleTask", this::task);
        return refused;
    }

    private void refused(Map<String, String> refused, String kind, Consumer<Node> read) {
        for (Node node : facts.ofClass(kind)) {
            try {
                read.accept(node);
            } catch (RefusedShapeException | BrokenBookException | IllegalArgumentException e) {
                refused.put(Rl.slug(node), String.valueOf(e.getMessage()));
            }
        }
    }

    private Finding task(Node node) {
        return read(node, Polarity.STRENGTH);
    }

    private Finding read(Node node) {
        return read(
                node,
                word(node, "polarity", Polarity.class)
                        .orElseThrow(() -> new BrokenBookException(
                                "The finding " + Rl.slug(node) + " does not say its rl:polarity.")));
    }

    private Finding read(Node node, Polarity polarity) {
        String slug = Rl.slug(node);
        Counting counting = counting(node);
        Standard standard = standard(node);
        return new Finding(
                slug,
                taxonomy.label(slug),
                taxonomy.concept(slug).map(Concept::definition).orElse(""),
                polarity,
                word(node, "severity", Severity.class).orElse(Severity.NONE),
                facts.yes(node, "safety"),
                counting.measure(polarity, standard.line()),
                counting,
                standard,
                advice(node),
                links(node),
                ontology.isLocal(node));
    }

    private Counting counting(Node node) {
        List<Counting.Pair> pairs = new ArrayList<>();
        pair(node).ifPresent(pairs::add);
        facts.all(node, Rl.term("pair")).stream()
                .sorted((a, b) -> name(a, "first").compareTo(name(b, "first")))
                .forEach(pair -> pair(pair).ifPresent(pairs::add));
        return new Counting(
                scope(node), split(node), pairs, slugs(facts.list(node, "parents")), tape(node), tally(node));
    }

    private Optional<Counting.Scope> scope(Node node) {
        Optional<Situation> opportunity = situation(node, "opportunity");
        Optional<Situation> event = situation(node, "event");
        if (opportunity.isEmpty() || event.isEmpty()) {
            return Optional.empty();
        }
        Situation happens = event.orElseThrow();
        return Optional.of(new Counting.Scope(
                seen.opportunity(opportunity.orElseThrow(), happens, facts.texts(node, Rl.term("needs"))),
                happens,
                Set.copyOf(facts.slugs(node, "duty")),
                situation(node, "perhaps").map(perhaps -> seen.perhaps(perhaps, happens))));
    }

    private Optional<Counting.Split> split(Node node) {
        return facts.slug(node, "splitBy")
                .flatMap(facet -> word(node, "row", Counting.Row.class)
                        .map(row -> new Counting.Split(facet, row, slugs(facts.list(node, "among")), check(node))));
    }

    private Optional<Counting.Check> check(Node node) {
        Optional<Counting.Check> exempt = check(node, "exemptShare", "exemptEvent");
        return exempt.isPresent() ? exempt : check(node, "mainShare", "mainEvent");
    }

    private Optional<Counting.Check> check(Node node, String share, String event) {
        return situation(node, event)
                .flatMap(of -> facts.text(node, share).map(text -> new Counting.Check(Double.parseDouble(text), of)));
    }

    private Optional<Counting.Pair> pair(Node node) {
        return situation(node, "first")
                .flatMap(first -> situation(node, "second")
                        .map(second -> new Counting.Pair(first, second, name(node, "first"), name(node, "second"))));
    }

    /** The name of a row's shape, without the finding's own name before it. */
    private String name(Node node, String property) {
        String name = facts.slug(node, property).orElse("");
        String own = node.isURI() ? Rl.slug(node) + "-" : "";
        return name.startsWith(own) ? name.substring(own.length()) : name;
    }

    private List<Counting.Wanted> tape(Node node) {
        return facts.all(node, Rl.term("tape")).stream()
                .sorted((a, b) -> a.toString().compareTo(b.toString()))
                .map(shape -> new Counting.Wanted(situations.read(shape), integer(facts, shape, "atLeast", 1)))
                .toList();
    }

    private Optional<Tally> tally(Node node) {
        int events = integer(facts, node, "count", 0);
        return events == 0
                ? Optional.empty()
                : Optional.of(new Tally(events, Math.max(events, integer(facts, node, "within", events))));
    }

    private Standard standard(Node node) {
        Optional<Side> side = facts.slug(node, "trueSide").equals(Optional.of("either"))
                ? Optional.empty()
                : Optional.of(word(node, "trueSide", Side.class).orElse(Side.ABOVE));
        return new Standard(
                decimal(facts, node, "line"),
                decimal(shipped, node, "line"),
                side,
                integer(facts, node, "minimum", 0),
                integer(shipped, node, "minimum", 0),
                facts.text(node, "atMost").isPresent());
    }

    private Finding.Advice advice(Node node) {
        return new Finding.Advice(
                facts.text(node, "because").orElse(""),
                facts.text(node, "sentence"),
                facts.text(node, "question"),
                slugs(facts.list(node, "trainFirst")),
                facts.slug(node, "starterDrill"),
                facts.text(node, "ruleOutFirst"));
    }

    private Finding.Links links(Node node) {
        return new Finding.Links(
                facts.slug(node, "twin"),
                new TreeSet<>(facts.slugs(node, "contradicts")),
                new TreeSet<>(facts.slugs(node, "explainedBy")),
                slugs(facts.list(node, "combines")));
    }

    private Optional<Situation> situation(Node node, String property) {
        return facts.all(node, Rl.term(property)).stream().findFirst().map(situations::read);
    }

    private <E extends Enum<E>> Optional<E> word(Node node, String property, Class<E> type) {
        return facts.slug(node, property).map(word -> Enum.valueOf(type, word.toUpperCase(Locale.ROOT)));
    }

    private static List<String> slugs(List<Node> nodes) {
        return nodes.stream().map(Rl::slug).toList();
    }

    private static OptionalDouble decimal(Facts facts, Node node, String property) {
        return facts.text(node, property).stream()
                .mapToDouble(Double::parseDouble)
                .findFirst();
    }

    private static int integer(Facts facts, Node node, String property, int otherwise) {
        return facts.text(node, property).map(Integer::parseInt).orElse(otherwise);
    }
}

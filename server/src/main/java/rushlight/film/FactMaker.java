package rushlight.film;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;
import rushlight.knowledge.Column;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Facts;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/**
 * Turns a reading into facts: every facet closed upward, the facets of the exchange, and what was seen. What a blank
 * cell means is said by the book where it means something; everywhere else blank stays blank.
 */
public final class FactMaker {
    private static final String SEEN = "seen";
    private static final String NOT_SEEN = "not_seen";
    private static final String FAULT = "fault";

    /** A column that says how another one is known: its value where the cell is blank. */
    private record Telling(Column column, Column about, String ifSaid, String ifUnsaid) {}

    private final Taxonomy taxonomy;
    private final FilmColumns film;
    private final Openings openings;
    private final Map<String, String> unsaid;
    private final List<Telling> tellings;
    private final Set<String> views;
    private final Optional<String> viewedColumn;
    private final Map<Step.By, Map<String, List<String>>> stepFacets;

    /** Makes facts with the columns and concepts of a book. */
    public FactMaker(Ontology ontology, Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
        this.film = taxonomy.film();
        this.openings = Openings.of(taxonomy);
        Facts facts = new Facts(ontology.graph());
        this.unsaid = facts.ofClass("Column").stream()
                .filter(c -> facts.slug(c, "unsaid").isPresent())
                .collect(Collectors.toUnmodifiableMap(
                        c -> name(facts, c), c -> facts.slug(c, "unsaid").orElseThrow()));
        this.tellings = facts.ofClass("Column").stream()
                .filter(c -> facts.slug(c, "tellsOf").isPresent())
                .map(c -> telling(facts, c))
                .toList();
        this.views = film.named(NOT_SEEN).map(c -> Set.copyOf(c.oneOf())).orElse(Set.of()).stream()
                .filter(word -> film.named(word).isEmpty())
                .collect(Collectors.toUnmodifiableSet());
        this.stepFacets = Map.of(Step.By.HIM, stepFacets("him"), Step.By.BLOCKER, stepFacets("blocker"));
        this.viewedColumn = film.ofFacet(FAULT).map(Column::name);
    }

    /** Where an exchange opens, by the same book. */
    public Openings openings() {
        return openings;
    }

    /**
     * The facts of one reading; the rep classes are not among them yet.
     *
     * @param charted list columns that stood in the header
     */
    public RepFacts facts(Reading reading, Set<String> charted) {
        Map<String, Set<String>> tagged = new HashMap<>();
        Map<String, Set<String>> closed = new HashMap<>();
        Map<String, Integer> numbers = new HashMap<>();
        Set<String> spoken = new HashSet<>();
        for (Map.Entry<String, List<String>> cell : reading.tags().entrySet()) {
            film.named(cell.getKey())
                    .filter(c -> c.kind() != Column.Kind.EXCHANGE)
                    .ifPresent(column -> put(column, cell.getValue(), tagged, closed, numbers));
        }
        fillBlanks(reading, tagged, closed, spoken);
        for (Step step : reading.exchange()) {
            facetsOf(step).forEach(facet -> add(facet, step, tagged, closed));
        }
        openings.opening(reading.exchange())
                .ifPresent(i -> add(openings.facet(), reading.exchange().get(i), tagged, closed));
        Set<String> seen = seen(reading, charted, spoken);
        tagged.put(SEEN, seen);
        closed.put(SEEN, seen);
        return new RepFacts(reading.rep(), reading.evaluator(), tagged, closed, numbers);
    }

    /** Whether a facet holds the value that says nobody knows. */
    public boolean isUnsaid(String facet, RepFacts facts) {
        return film.ofFacet(facet)
                .map(column -> unsaid.get(column.name()))
                .filter(value -> facts.tagged(facet).contains(value))
                .isPresent();
    }

    /** The facts with rep classes, exact and closed upward. */
    public RepFacts with(RepFacts facts, Set<String> classes) {
        Set<String> wider = new HashSet<>();
        classes.forEach(name -> wider.addAll(taxonomy.closure(name)));
        return facts.with("repClass", classes, wider);
    }

    private void put(
            Column column,
            List<String> values,
            Map<String, Set<String>> tagged,
            Map<String, Set<String>> closed,
            Map<String, Integer> numbers) {
        if (values.isEmpty()) {
            return;
        }
        if (column.kind() == Column.Kind.INTEGER) {
            numbers.put(column.facet(), Integer.parseInt(values.get(0)));
        }
        tagged.put(column.facet(), Set.copyOf(values));
        closed.put(column.facet(), column.kind() == Column.Kind.CONCEPT ? closed(values) : Set.copyOf(values));
    }

    private Set<String> closed(List<String> values) {
        if (values.size() == 1) {
            return taxonomy.closure(values.get(0));
        }
        Set<String> all = new HashSet<>();
        values.forEach(value -> all.addAll(taxonomy.closure(value)));
        return all;
    }

    private void fillBlanks(
            Reading reading, Map<String, Set<String>> tagged, Map<String, Set<String>> closed, Set<String> spoken) {
        for (Telling telling : tellings) {
            String about = telling.about().name();
            Optional<String> nobodyKnows = Optional.ofNullable(unsaid.get(about));
            Optional<String> told = reading.one(telling.column().name());
            boolean known = reading.one(about).isPresent()
                    && !reading.one(about).equals(nobodyKnows)
                    && !told.equals(Optional.of(telling.ifUnsaid()));
            if (!known) {
                nobodyKnows.ifPresent(value -> {
                    tagged.put(telling.about().facet(), Set.of(value));
                    closed.put(telling.about().facet(), taxonomy.closure(value));
                });
            }
            Set<String> value = Set.of(known ? told.orElse(telling.ifSaid()) : telling.ifUnsaid());
            tagged.put(telling.column().facet(), value);
            closed.put(telling.column().facet(), value);
            spoken.add(about);
            spoken.add(telling.column().name());
        }
    }

    private Map<String, List<String>> stepFacets(String by) {
        Map<String, List<String>> facets = new HashMap<>();
        film.stepFacets().stream()
                .filter(f -> f.by().equals(by) && !f.facet().equals(openings.facet()))
                .forEach(facet -> facet.classes().stream()
                        .flatMap(name -> taxonomy.ofClass(name).stream())
                        .map(Concept::slug)
                        .distinct()
                        .forEach(slug -> facets.computeIfAbsent(slug, s -> new ArrayList<>())
                                .add(facet.facet())));
        return facets;
    }

    private List<String> facetsOf(Step step) {
        Map<String, List<String>> facets = stepFacets.getOrDefault(step.by(), Map.of());
        return facets.getOrDefault(step.concept(), List.of());
    }

    private void add(String facet, Step step, Map<String, Set<String>> tagged, Map<String, Set<String>> closed) {
        tagged.merge(facet, Set.of(step.concept()), FactMaker::union);
        closed.merge(facet, taxonomy.closure(step.concept()), FactMaker::union);
    }

    private static Set<String> union(Set<String> some, Set<String> more) {
        if (some.containsAll(more)) {
            return some;
        }
        Set<String> all = new HashSet<>(some);
        all.addAll(more);
        return all;
    }

    private Set<String> seen(Reading reading, Set<String> charted, Set<String> spoken) {
        Set<String> hidden = Set.copyOf(reading.all(NOT_SEEN));
        Set<String> seen = new HashSet<>(spoken);
        for (Column column : film.all()) {
            boolean looked = column.kind() == Column.Kind.EXCHANGE
                    ? !reading.exchange().isEmpty()
                    : column.list()
                            ? charted.contains(column.name())
                            : !reading.all(column.name()).isEmpty();
            if (looked) {
                seen.add(column.name());
            }
        }
        if (viewedColumn.filter(seen::contains).isPresent() && !hidden.contains(viewedColumn.get())) {
            seen.addAll(views);
        }
        seen.removeAll(hidden);
        return seen;
    }

    private Telling telling(Facts facts, Node column) {
        Node about = Rl.term(facts.slug(column, "tellsOf").orElseThrow());
        return new Telling(
                film.named(name(facts, column)).orElseThrow(),
                film.named(name(facts, about)).orElseThrow(),
                facts.text(column, "ifSaid").orElse(""),
                facts.text(column, "ifUnsaid").orElse(""));
    }

    private static String name(Facts facts, Node column) {
        return facts.text(column, "columnName").orElse("");
    }
}

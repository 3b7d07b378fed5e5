package rushlight.situation;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.vocabulary.RDFS;
import rushlight.knowledge.Column;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Facts;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/** Everything a situation may ask about: the columns of the film log, the exchange, and what the rules conclude. */
public final class Facets {
    private static final String NOT_SEEN = "notSeen";

    private final Taxonomy taxonomy;
    private final Graph book;
    private final Map<String, Facet> byName = new TreeMap<>();

    private Facets(Ontology ontology, Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
        this.book = ontology.graph();
        FilmColumns film = taxonomy.film();
        film.all().forEach(this::add);
        film.stepFacets().forEach(step -> addConcepts(step.facet(), step.classes()));
        Facts facts = new Facts(book);
        for (Node added : facts.ofClass("Facet")) {
            List<String> classes = facts.slugs(added, "ofClass");
            if (classes.isEmpty()) {
                film.ofFacet(NOT_SEEN).ifPresent(c -> addWords(Rl.slug(added), c.oneOf()));
            } else {
                addConcepts(Rl.slug(added), classes);
            }
        }
    }

    /** The facets that the book describes. */
    public static Facets of(Ontology ontology, Taxonomy taxonomy) {
        return new Facets(ontology, taxonomy);
    }

    /** The facet with this name. */
    public Optional<Facet> named(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** Every facet, in order of the names. */
    public Collection<Facet> all() {
        return Collections.unmodifiableCollection(byName.values());
    }

    private void add(Column column) {
        if (column.kind() == Column.Kind.CONCEPT) {
            addConcepts(column.facet(), column.classes());
        } else if (column.kind() == Column.Kind.WORDS) {
            addWords(column.facet(), column.oneOf());
        } else if (column.kind() == Column.Kind.INTEGER) {
            byName.put(column.facet(), new Facet(column.facet(), Facet.Kind.NUMBER, Set.of(), "numbers"));
        }
    }

    private void addWords(String name, List<String> words) {
        byName.put(name, new Facet(name, Facet.Kind.WORD, Set.copyOf(words), String.join(", ", words)));
    }

    private void addConcepts(String name, Collection<String> classes) {
        Set<String> values = new HashSet<>();
        Set<String> known = withNarrower(classes);
        for (String type : known) {
            for (Concept concept : taxonomy.ofClass(type)) {
                values.addAll(taxonomy.closure(concept.slug()));
            }
        }
        byName.put(name, new Facet(name, Facet.Kind.CONCEPT, values, String.join(", ", new TreeSet<>(classes))));
    }

    private Set<String> withNarrower(Collection<String> classes) {
        Set<String> found = new TreeSet<>();
        List<String> open = new ArrayList<>(classes);
        while (!open.isEmpty()) {
            String name = open.remove(open.size() - 1);
            if (found.add(name)) {
                book.find(Node.ANY, RDFS.subClassOf.asNode(), Rl.term(name))
                        .mapWith(Triple::getSubject)
                        .filterKeep(Node::isURI)
                        .forEachRemaining(sub -> open.add(Rl.slug(sub)));
            }
        }
        return found;
    }
}

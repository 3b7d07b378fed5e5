package rushlight.situation;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/** Reads and writes situations as SHACL, and says them in words, by the facets and labels of one book. */
public final class Situations {
    private final Graph book;
    private final Taxonomy taxonomy;
    private final Facets facets;
    private final FacetPhrases phrases;

    private Situations(Ontology ontology, Taxonomy taxonomy, Facets facets) {
        this.book = ontology.graph();
        this.taxonomy = taxonomy;
        this.facets = facets;
        this.phrases = new FacetPhrases(ontology);
    }

    /** By this book. */
    public static Situations of(Ontology ontology, Taxonomy taxonomy) {
        return new Situations(ontology, taxonomy, Facets.of(ontology, taxonomy));
    }

    /** What a situation may ask about. */
    public Facets facets() {
        return facets;
    }

    /**
     * The situation of the book with this name, the part after {@code shape:}.
     *
     * @throws RefusedShapeException where the shape says what no situation says, or there is no such shape
     */
    public Situation named(String name) {
        return read(NodeFactory.createURI(Rl.SHAPE + name));
    }

    /**
     * The situation of the book at this node.
     *
     * @throws RefusedShapeException where the shape says what no situation says, or there is no such shape
     */
    public Situation read(Node shape) {
        return read(book, shape);
    }

    /**
     * A situation of another graph, such as a saved question.
     *
     * @throws RefusedShapeException where the shape says what no situation says, or there is no such shape
     */
    public Situation read(Graph graph, Node shape) {
        String name = PropertyReader.show(shape);
        if (!graph.contains(shape, Node.ANY, Node.ANY)) {
            throw new RefusedShapeException(name + ": there is no such shape.");
        }
        return new ShapeReader(graph, facets, name).read(shape);
    }

    /** Adds the situation to a graph as a node shape. */
    public void write(Situation situation, Graph graph, Node shape) {
        new ShapeWriter(graph, facets).write(situation, shape);
    }

    /** The situation as a phrase a coach can read. */
    public String phrase(Situation situation) {
        return phrase(situation, false);
    }

    private String phrase(Situation situation, boolean inside) {
        if (situation instanceof Situation.And and) {
            return joined(and.parts(), " and ", inside);
        }
        if (situation instanceof Situation.Or or) {
            return joined(or.parts(), " or ", inside);
        }
        if (situation instanceof Situation.Not not) {
            return denied(not.inner());
        }
        return condition(situation, false);
    }

    private String denied(Situation inner) {
        boolean leaf = inner instanceof Situation.Has
                || inner instanceof Situation.AnyOf
                || inner instanceof Situation.Between;
        return leaf ? condition(inner, true) : "it was not so that " + phrase(inner, true);
    }

    private String joined(List<Situation> parts, String word, boolean inside) {
        String text = parts.stream().map(p -> phrase(p, true)).collect(Collectors.joining(word));
        return inside ? "(" + text + ")" : text;
    }

    private String condition(Situation leaf, boolean denied) {
        if (leaf instanceof Situation.Has has) {
            return phrases.said(has.facet(), List.of(has.value()), denied, taxonomy::shown);
        }
        if (leaf instanceof Situation.AnyOf any) {
            return phrases.said(any.facet(), any.values(), denied, taxonomy::shown);
        }
        Situation.Between between = (Situation.Between) leaf;
        return phrases.said(
                between.facet(), List.of(range(between.least(), between.most())), denied, Function.identity());
    }

    private static String range(OptionalInt least, OptionalInt most) {
        if (least.isEmpty()) {
            return "at most " + most.orElseThrow();
        }
        if (most.isEmpty()) {
            return "at least " + least.orElseThrow();
        }
        return least.equals(most) ? Integer.toString(least.getAsInt()) : least.getAsInt() + " to " + most.getAsInt();
    }
}

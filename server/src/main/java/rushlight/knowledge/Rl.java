package rushlight.knowledge;

import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;

/** The namespaces of the book, and the one place where a slug is cut from an address. */
public final class Rl {
    /** Classes and properties. */
    public static final String SCHEMA = "https://rushlight.example/def#";

    /** Concepts. */
    public static final String CONCEPT = "https://rushlight.example/id/";

    /** Situations and other shapes. */
    public static final String SHAPE = "https://rushlight.example/shape/";

    /** The slug of the source, and the support level, of what the trade takes for granted. */
    public static final String COMMON_PRACTICE = "common-practice";

    private Rl() {}

    /** The property or class with this local name. */
    public static Node term(String name) {
        return NodeFactory.createURI(SCHEMA + name);
    }

    /** The concept with this slug. */
    public static Node concept(String slug) {
        return NodeFactory.createURI(CONCEPT + slug);
    }

    /**
     * What follows the last slash or hash of an address. Jena's own local name drops leading digits, and many
     * alignments start with one.
     */
    public static String slug(Node node) {
        String iri = node.getURI();
        return iri.substring(Math.max(iri.lastIndexOf('/'), iri.lastIndexOf('#')) + 1);
    }

    /** Whether the node is the address of a concept. */
    public static boolean isConcept(Node node) {
        return node.isURI() && node.getURI().startsWith(CONCEPT);
    }
}

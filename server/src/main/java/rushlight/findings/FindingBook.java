package rushlight.findings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situations;

/** Every finding of the book, ready to be counted. */
public final class FindingBook {
    private final Map<String, Finding> bySlug = new TreeMap<>();
    private final Conventions conventions;

    private FindingBook(List<Finding> findings, Conventions conventions) {
        findings.forEach(finding -> bySlug.put(finding.slug(), finding));
        this.conventions = conventions;
    }

    /**
     * The findings of a book, overlay included.
     *
     * @throws rushlight.situation.RefusedShapeException where a finding's shape says what no situation says
     */
    public static FindingBook of(Ontology ontology, Taxonomy taxonomy, Situations situations) {
        var reader = new FindingReader(ontology, taxonomy, situations);
        return new FindingBook(reader.all(), Conventions.of(new Facts(ontology.graph()), situations));
    }

    /** The findings that cannot be counted, each with the reason; empty where the book is sound. */
    public static Map<String, String> refused(Ontology ontology, Taxonomy taxonomy, Situations situations) {
        return new FindingReader(ontology, taxonomy, situations).refused();
    }

    /** The findings in order of their slugs. */
    public List<Finding> all() {
        return List.copyOf(bySlug.values());
    }

    /** The finding with this slug. */
    public Optional<Finding> finding(String slug) {
        return Optional.ofNullable(bySlug.get(slug));
    }

    Conventions conventions() {
        return conventions;
    }
}

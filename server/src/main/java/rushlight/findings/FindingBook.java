package rushlight.findings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Situations;

/** Every finding of the book, ready to be counted. */
public final class FindingBook {
    private final Map<String, Finding> bySlug = new TreeMap<>();
    private final Map<String, Finding> tasks = new TreeMap<>();
    private final List<Role> roles;
    private final Conventions conventions;

    private FindingBook(List<Finding> findings, List<Finding> tasks, List<Role> roles, Conventions conventions) {
        findings.forEach(finding -> bySlug.put(finding.slug(), finding));
        tasks.forEach(task -> this.tasks.put(task.slug(), task));
        this.roles = List.copyOf(roles);
        roles.stream()
                .flatMap(role -> Stream.concat(role.required().stream(), role.preferred().stream()))
                .forEach(one -> asked(one.slug()));
        this.conventions = conventions;
    }

    /**
     * The findings of a book, overlay included.
     *
     * @throws rushlight.situation.RefusedShapeException where a finding's shape says what no situation says
     */
    public static FindingBook of(Ontology ontology, Taxonomy taxonomy, Situations situations) {
        var reader = new FindingReader(ontology, taxonomy, situations);
        return new FindingBook(
                reader.all(),
                reader.tasks(),
                Role.all(ontology, taxonomy),
                Conventions.of(new Facts(ontology.graph()), situations));
    }

    /** The findings and tasks that cannot be counted, each with the reason; empty where the book is sound. */
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

    /** The finding, or the task of a role, with this slug. */
    public Optional<Finding> counted(String slug) {
        return finding(slug).or(() -> Optional.ofNullable(tasks.get(slug)));
    }

    /** The jobs on a front that a prospect is held against, in order of their slugs. */
    public List<Role> roles() {
        return roles;
    }

    Finding asked(String slug) {
        return counted(slug)
                .orElseThrow(() -> new BrokenBookException(
                        "A role asks for " + slug + ", which is no finding or task that reps can show."));
    }

    Conventions conventions() {
        return conventions;
    }
}

package rushlight.findings;

import java.util.List;
import java.util.stream.Stream;
import org.apache.jena.graph.Node;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Local;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/**
 * A job on a front, as the book describes it.
 *
 * @param slug its name that never changes
 * @param label its name for people
 * @param definition one sentence
 * @param required what film must show for it, by slug
 * @param preferred what would be welcome, by slug
 * @param local whether the user's own file added it
 */
public record Role(
        String slug, String label, String definition, List<Asked> required, List<Asked> preferred, boolean local) {
    /**
     * One thing a role asks for.
     *
     * @param slug of a strength or a task to be shown, or of a gap he is to be without
     * @param without whether it is a gap, which is shown by being cleared
     */
    public record Asked(String slug, boolean without) {}

    public Role {
        required = List.copyOf(required);
        preferred = List.copyOf(preferred);
    }

    /** The label as people read it: with a mark where the role is the user's own. */
    public String shown() {
        return Local.shown(label, local);
    }

    static List<Role> all(Ontology ontology, Taxonomy taxonomy) {
        Facts facts = new Facts(ontology.graph());
        return facts.ofClass("Role").stream()
                .map(node -> new Role(
                        Rl.slug(node),
                        taxonomy.label(Rl.slug(node)),
                        taxonomy.concept(Rl.slug(node)).map(Concept::definition).orElse(""),
                        asked(facts, node, "mustShow", "mustBeWithout"),
                        asked(facts, node, "mayShow", "betterWithout"),
                        ontology.isLocal(node)))
                .toList();
    }

    private static List<Asked> asked(Facts facts, Node role, String shown, String without) {
        return Stream.concat(
                        facts.slugs(role, shown).stream().sorted().map(slug -> new Asked(slug, false)),
                        facts.slugs(role, without).stream().sorted().map(slug -> new Asked(slug, true)))
                .toList();
    }
}

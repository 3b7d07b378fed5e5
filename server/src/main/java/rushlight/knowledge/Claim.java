package rushlight.knowledge;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.jena.graph.Node;

/**
 * What may be said of a player in general, and the finding that the words claim.
 *
 * @param slug the claim
 * @param concept slug of the term that is named
 * @param does whether it is said that he does it, or has it; else that he does not
 * @param against slug of what he meets when it holds, or of something wider; empty for whatever he meets
 * @param finding slug of the finding
 * @param local whether the user's own file added it
 */
public record Claim(
        String slug, String concept, boolean does, Optional<String> against, String finding, boolean local) {
    private static final String DOES = "performed";

    /**
     * The claims of a book, its user's own among them: those against something before those against anything, then in order of
     * their slugs.
     *
     * @throws BrokenBookException where a claim lacks its term, its word or its finding
     */
    public static List<Claim> of(Ontology ontology) {
        Facts facts = new Facts(ontology.graph());
        return facts.ofClass("Claim").stream()
                .map(node -> new Claim(
                        Rl.slug(node),
                        linked(facts, node, "speaksOf"),
                        facts.needed(node, "asserted").equals(DOES),
                        facts.slug(node, "claimedAgainst"),
                        linked(facts, node, "claimOf"),
                        ontology.isLocal(node)))
                .sorted(Comparator.comparing((Claim claim) -> claim.against().isEmpty())
                        .thenComparing(Claim::slug))
                .toList();
    }

    private static String linked(Facts facts, Node node, String property) {
        return facts.slug(node, property)
                .orElseThrow(
                        () -> new BrokenBookException("The book's " + Rl.slug(node) + " lacks rl:" + property + "."));
    }

    /** Whether it is about this term, said to be done or not, with what he meets. */
    public boolean says(String named, boolean done, List<String> met, Taxonomy taxonomy) {
        return concept.equals(named)
                && does == done
                && (against.isEmpty() || met.stream().anyMatch(one -> taxonomy.isA(one, against.get())));
    }
}

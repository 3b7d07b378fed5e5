package rushlight.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rushlight.findings.Counting;
import rushlight.findings.Finding;
import rushlight.findings.FindingBook;
import rushlight.findings.Polarity;
import rushlight.knowledge.Claim;
import rushlight.knowledge.FitRule;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Relations;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Facets;
import rushlight.situation.Situation;

/** What is said of him and the finding it claims; else the opening that owed what he did not do. */
final class Claims {
    private static final String DUTY = "assignment";

    private final List<Claim> known;
    private final Relations relations;
    private final Taxonomy taxonomy;
    private final FindingBook findings;
    private final Facets facets;

    private Claims(List<Claim> known, Relations relations, Taxonomy taxonomy, FindingBook findings, Facets facets) {
        this.known = known;
        this.relations = relations;
        this.taxonomy = taxonomy;
        this.findings = findings;
        this.facets = facets;
    }

    /** Those of a book. */
    static Claims of(Ontology ontology, Taxonomy taxonomy, FindingBook findings, Facets facets) {
        return new Claims(Claim.of(ontology), new Relations(ontology), taxonomy, findings, facets);
    }

    /**
     * A finding that says what the question says.
     *
     * @param finding its slug
     * @param rest what the question asks beside it
     */
    record Claimed(String finding, List<Condition> rest) {}

    /** The finding that states what he does, or does not do, among these conditions. */
    Optional<Claimed> of(List<Condition> conditions) {
        List<Condition> acts = conditions.stream().filter(Condition::event).toList();
        if (acts.size() != 1 || acts.get(0).slug().isEmpty()) {
            return Optional.empty();
        }
        Condition act = acts.get(0);
        List<Condition> rest = conditions.stream().filter(c -> !c.equals(act)).toList();
        for (Claim claim : known) {
            List<Condition> against = rest.stream()
                    .filter(c -> c.slug()
                            .flatMap(slug -> claim.against().filter(wider -> taxonomy.isA(slug, wider)))
                            .isPresent())
                    .toList();
            List<String> met = rest.stream().flatMap(c -> c.slug().stream()).toList();
            if (claim.says(act.slug().get(), !act.denied(), met, taxonomy)) {
                return Optional.of(new Claimed(
                        claim.finding(),
                        rest.stream().filter(c -> !against.contains(c)).toList()));
            }
        }
        return Optional.empty();
    }

    /** The finding that shows on film what is not seen on a rep, such as a trait; one of the wanted kind before any other. */
    Optional<Finding> shows(String slug, Polarity wanted) {
        return Stream.concat(Stream.of(slug), relations.near(slug).stream().sorted())
                .flatMap(near -> relations.from(near, "shownBy").stream())
                .flatMap(shown -> findings.finding(shown).stream())
                .filter(finding -> pair(finding.slug()).isPresent())
                .min(Comparator.comparing(finding -> finding.polarity() != wanted));
    }

    Optional<Finding> finding(String slug) {
        return findings.finding(slug);
    }

    /** The reps a finding counts, his duties among them. */
    Optional<SituationPair> pair(String finding) {
        return findings.finding(finding)
                .flatMap(found -> found.counting().scope())
                .map(this::pair);
    }

    private SituationPair pair(Counting.Scope scope) {
        List<Situation> parts = new ArrayList<>(List.of(scope.opportunity()));
        Set<String> duties = scope.duties();
        Optional<String> unsaid = taxonomy.film().unsaid(DUTY);
        if (unsaid.isPresent() && duties.contains(unsaid.get())) {
            parts.add(Situation.not(Situation.has("seen", DUTY)));
        } else if (!duties.isEmpty()) {
            parts.add(Situation.anyOf(DUTY, duties));
        }
        return new SituationPair(Situation.all(parts), scope.event());
    }

    /** The reps that owed it: what a blocker shows for a counter, the blocks that call for a fit. */
    Optional<Situation> owed(String slug) {
        List<String> triggers = taxonomy.pairings().stream()
                .filter(pairing -> pairing.counter().equals(slug))
                .map(Pairing::trigger)
                .flatMap(Optional::stream)
                .filter(trigger -> holds("behavior", trigger))
                .distinct()
                .toList();
        if (!triggers.isEmpty()) {
            return Optional.of(Situation.anyOf("behavior", triggers));
        }
        List<String> blocks = taxonomy.fitRules().stream()
                .filter(rule -> rule.right().contains(slug))
                .map(FitRule::block)
                .filter(block -> holds("block", block))
                .distinct()
                .toList();
        return blocks.isEmpty() ? Optional.empty() : Optional.of(Situation.anyOf("block", blocks));
    }

    private boolean holds(String facet, String value) {
        return facets.named(facet).filter(f -> f.values().contains(value)).isPresent();
    }
}

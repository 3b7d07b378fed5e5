package rushlight.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.vocabulary.RDF;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/**
 * The part of the book about moves and behaviors that given steps touch. Everything is worked out once for a concept or
 * a pair of concepts and then remembered.
 */
final class BookSlice {
    private static final String FOLDS_TO = "foldsTo";

    /** Two concepts, the earlier first. */
    private record Two(String first, String second) {}

    /** A pairing that two steps touch, and whether the trigger is met by the very word or only by a wide one. */
    record Touched(Pairing pairing, Node node, boolean exact, List<Triple> shared) {}

    private final Taxonomy taxonomy;
    private final Facts facts;
    private final Mentions mentions;
    private final Set<Node> stated;
    private final Map<String, List<Pairing>> byTrigger;
    private final Map<String, Set<String>> general;
    private final Map<String, Set<String>> parts = new HashMap<>();
    private final Map<String, List<Link>> ofConcept = new ConcurrentHashMap<>();
    private final Map<Two, List<Touched>> touched = new ConcurrentHashMap<>();
    private final Map<String, Set<String>> counts = new ConcurrentHashMap<>();
    private final Map<String, Set<String>> mayBe = new ConcurrentHashMap<>();
    private final Map<Two, Boolean> taught = new ConcurrentHashMap<>();

    BookSlice(Ontology ontology, Taxonomy taxonomy, Mentions mentions) {
        this.taxonomy = taxonomy;
        this.facts = new Facts(ontology.graph());
        this.mentions = mentions;
        Set<Node> properties = new HashSet<>(mentions.predicates());
        properties.remove(RDF.type.asNode());
        this.stated = Set.copyOf(properties);
        this.byTrigger = taxonomy.pairings().stream()
                .filter(p -> p.trigger().isPresent())
                .collect(Collectors.groupingBy(p -> p.trigger().orElseThrow()));
        this.general = general(taxonomy.pairings());
        taxonomy.concepts()
                .forEach(part -> facts.slugs(Rl.concept(part.slug()), "partOf")
                        .forEach(whole -> parts.computeIfAbsent(whole, w -> new TreeSet<>())
                                .add(part.slug())));
    }

    /** What a concept is, as far as rules ask, and what the book states of it or of a wider one. */
    List<Link> ofConcept(String slug) {
        return ofConcept.computeIfAbsent(slug, key -> {
            List<Link> out = new ArrayList<>();
            Set<String> closure = taxonomy.closure(slug);
            closure.forEach(up -> out.add(new Link(Term.IS, Rl.concept(up))));
            facts.classes(Rl.concept(slug)).forEach(name -> out.add(new Link(RDF.type.asNode(), Rl.term(name))));
            for (Node property : stated) {
                closure.forEach(
                        up -> facts.all(Rl.concept(up), property).forEach(value -> out.add(new Link(property, value))));
            }
            out.removeIf(link -> !mentions.canUse(link.property(), link.object()));
            return out.stream().distinct().toList();
        });
    }

    /** The pairings whose move and trigger a step of his and an answer of the blocker's are or may be. */
    List<Touched> touched(String his, String blockers) {
        return touched.computeIfAbsent(new Two(his, blockers), key -> {
            Set<String> moves = taxonomy.closure(his);
            Set<String> shown = taxonomy.closure(blockers);
            return near(blockers).stream()
                    .flatMap(trigger -> byTrigger.getOrDefault(trigger, List.of()).stream())
                    .filter(p ->
                            p.primary().isEmpty() || moves.contains(p.primary().get()))
                    .map(p -> new Touched(
                            p, Rl.concept(p.id()), shown.contains(p.trigger().orElseThrow()), ofPairing(p)))
                    .toList();
        });
    }

    /** Whether a step is a counter: itself, something wider, or a step that it is made of. */
    boolean counts(String step, String counter) {
        return counts.computeIfAbsent(step, s -> counts(s, new HashSet<>())).contains(counter);
    }

    /** Whether the word for a step is a wide one that may stand for another. */
    boolean mayBe(String step, String other) {
        return mayBe(step).contains(other);
    }

    /** The general counters of a move. */
    Set<String> general(String move) {
        Set<String> counters = new TreeSet<>();
        taxonomy.closure(move).forEach(up -> counters.addAll(general.getOrDefault(up, Set.of())));
        return counters;
    }

    /** Whether his concept is taught for what the blocker showed. */
    boolean isTaughtFor(String his, String blockers) {
        return taught.computeIfAbsent(new Two(his, blockers), key -> {
            Set<String> mine = near(his);
            return near(blockers).stream()
                    .flatMap(trigger -> byTrigger.getOrDefault(trigger, List.of()).stream())
                    .anyMatch(p -> mine.contains(p.counter()));
        });
    }

    private static List<Triple> ofPairing(Pairing pairing) {
        Node node = Rl.concept(pairing.id());
        List<Triple> out = new ArrayList<>();
        out.add(Triple.create(node, Term.SIDE, Term.text(pairing.side())));
        pairing.timing().forEach(timing -> out.add(Triple.create(node, Term.TIMING, Term.text(timing))));
        if (pairing.primary().isEmpty()) {
            out.add(Triple.create(node, Term.ANY_MOVE, Term.YES));
        }
        return List.copyOf(out);
    }

    private Set<String> mayBe(String slug) {
        return mayBe.computeIfAbsent(slug, s -> {
            Set<String> narrower = new HashSet<>(taxonomy.narrower(s));
            narrower.remove(s);
            narrower.addAll(facts.slugs(Rl.concept(s), FOLDS_TO));
            return Set.copyOf(narrower);
        });
    }

    private Set<String> near(String slug) {
        Set<String> near = new TreeSet<>(taxonomy.closure(slug));
        near.addAll(mayBe(slug));
        return near;
    }

    private Set<String> counts(String slug, Set<String> walked) {
        Set<String> found = new HashSet<>(taxonomy.closure(slug));
        if (walked.add(slug)) {
            parts.getOrDefault(slug, Set.of()).forEach(part -> found.addAll(counts(part, walked)));
        }
        return found;
    }

    /** The general counters of each move; a move without a row of its own takes those of its pairings together. */
    private static Map<String, Set<String>> general(List<Pairing> pairings) {
        Map<String, Set<String>> own = new HashMap<>();
        Map<String, Set<String>> all = new HashMap<>();
        for (Pairing pairing : pairings) {
            boolean inRep =
                    pairing.timing().contains("in-rep") || pairing.timing().contains("read");
            if (inRep && pairing.primary().isPresent()) {
                (pairing.trigger().isEmpty() ? own : all)
                        .computeIfAbsent(pairing.primary().get(), m -> new TreeSet<>())
                        .add(pairing.counter());
            }
        }
        all.putAll(own);
        return Map.copyOf(all);
    }
}

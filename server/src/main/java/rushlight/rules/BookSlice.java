package rushlight.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.vocabulary.RDF;
import rushlight.knowledge.Facts;
import rushlight.knowledge.FitRule;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/**
 * The part of the book that given concepts touch, as facts for the rules: closures, what wide words may stand for,
 * pairings, fit rules. Everything is worked out once for a concept or a pair of concepts and then remembered.
 */
final class BookSlice {
    private static final String FOLDS_TO = "foldsTo";

    private final Taxonomy taxonomy;
    private final Facts facts;
    private final Set<Node> mentioned;
    private final Map<String, List<Pairing>> byTrigger;
    private final Map<String, Set<String>> general;
    private final Map<String, List<FitRule>> fitsByBlock;
    private final Map<String, Set<String>> parts;
    private final Set<String> duties;
    private final Map<String, List<Triple>> ofConcept = new ConcurrentHashMap<>();
    private final Map<List<String>, List<Triple>> ofPair = new ConcurrentHashMap<>();
    private final Map<List<String>, List<Triple>> ofFit = new ConcurrentHashMap<>();

    BookSlice(Ontology ontology, Taxonomy taxonomy, Set<Node> mentioned) {
        this.taxonomy = taxonomy;
        this.facts = new Facts(ontology.graph());
        this.mentioned = Set.copyOf(mentioned);
        this.byTrigger = taxonomy.pairings().stream()
                .filter(p -> p.trigger().isPresent())
                .collect(Collectors.groupingBy(p -> p.trigger().orElseThrow()));
        this.general = general(taxonomy.pairings());
        this.fitsByBlock = taxonomy.fitRules().stream().collect(Collectors.groupingBy(FitRule::block));
        this.duties = taxonomy.fitRules().stream().map(FitRule::assignment).collect(Collectors.toUnmodifiableSet());
        this.parts = new ConcurrentHashMap<>();
        taxonomy.concepts()
                .forEach(part -> facts.slugs(Rl.concept(part.slug()), "partOf")
                        .forEach(whole -> parts.computeIfAbsent(whole, w -> new TreeSet<>())
                                .add(part.slug())));
    }

    /** Whether some fit rule judges this block. */
    boolean isJudged(String block) {
        return taxonomy.closure(block).stream().anyMatch(fitsByBlock::containsKey);
    }

    /** The duties of the fit rules. */
    Set<String> duties() {
        return duties;
    }

    /** What a concept is, may be and is made of, and what the book states of it. */
    List<Triple> ofConcept(String slug) {
        return ofConcept.computeIfAbsent(slug, this::makeConcept);
    }

    /** The pairings that his concept and the blocker's together touch. */
    List<Triple> ofPair(String his, String blockers) {
        return ofPair.computeIfAbsent(List.of(his, blockers), pair -> makePairings(his, blockers));
    }

    /** Whether his concept is taught for what the blocker showed. */
    boolean taughtFor(String his, String blockers) {
        Set<String> mine = near(his);
        return near(blockers).stream()
                .flatMap(trigger -> byTrigger.getOrDefault(trigger, List.of()).stream())
                .anyMatch(p -> mine.contains(p.counter()));
    }

    /** The fit rules of the most specific block that has one for the duty. */
    List<Triple> ofFit(String block, String duty) {
        return ofFit.computeIfAbsent(List.of(block, duty), key -> makeFits(block, duty));
    }

    private List<Triple> makeConcept(String slug) {
        List<Triple> out = new ArrayList<>();
        Node node = Rl.concept(slug);
        Set<String> closure = taxonomy.closure(slug);
        closure.forEach(up -> out.add(Triple.create(node, Term.IS, Rl.concept(up))));
        mayBe(slug).forEach(down -> out.add(Triple.create(node, Term.MAY_BE, Rl.concept(down))));
        counts(slug, new HashSet<>()).forEach(c -> out.add(Triple.create(node, Term.COUNTS, Rl.concept(c))));
        facts.classes(node).forEach(name -> out.add(Triple.create(node, RDF.type.asNode(), Rl.term(name))));
        for (String up : closure) {
            Node wider = Rl.concept(up);
            for (Node property : mentioned) {
                facts.all(wider, property).forEach(value -> out.add(Triple.create(wider, property, value)));
            }
            general.getOrDefault(up, Set.of())
                    .forEach(c -> out.add(Triple.create(wider, Term.GENERAL_COUNTER, Rl.concept(c))));
        }
        return List.copyOf(out);
    }

    private Set<String> mayBe(String slug) {
        Set<String> narrower = new TreeSet<>(taxonomy.narrower(slug));
        narrower.remove(slug);
        narrower.addAll(facts.slugs(Rl.concept(slug), FOLDS_TO));
        return narrower;
    }

    private Set<String> near(String slug) {
        Set<String> near = new HashSet<>(taxonomy.closure(slug));
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

    private List<Triple> makePairings(String his, String blockers) {
        Set<String> moves = taxonomy.closure(his);
        List<Triple> out = new ArrayList<>();
        for (String trigger : near(blockers)) {
            for (Pairing pairing : byTrigger.getOrDefault(trigger, List.of())) {
                if (pairing.primary().filter(p -> !moves.contains(p)).isEmpty()) {
                    addPairing(pairing, out);
                }
            }
        }
        return List.copyOf(out);
    }

    private static void addPairing(Pairing pairing, List<Triple> out) {
        Node node = Rl.concept(pairing.id());
        Optional<String> primary = pairing.primary();
        out.add(
                primary.isPresent()
                        ? Triple.create(node, Term.PRIMARY, Rl.concept(primary.get()))
                        : Triple.create(node, Term.ANY_MOVE, Term.YES));
        out.add(Triple.create(node, Term.TRIGGER, Rl.concept(pairing.trigger().orElseThrow())));
        out.add(Triple.create(node, Term.COUNTER, Rl.concept(pairing.counter())));
        out.add(Triple.create(node, Term.SIDE, Term.text(pairing.side())));
        pairing.timing().forEach(timing -> out.add(Triple.create(node, Term.TIMING, Term.text(timing))));
    }

    private List<Triple> makeFits(String block, String duty) {
        List<Triple> out = new ArrayList<>();
        Set<String> level = Set.of(block);
        while (!level.isEmpty()) {
            List<FitRule> rules = level.stream()
                    .flatMap(b -> fitsByBlock.getOrDefault(b, List.of()).stream())
                    .filter(rule -> rule.assignment().equals(duty))
                    .toList();
            if (!rules.isEmpty()) {
                rules.forEach(rule -> addFit(block, rule, out));
                break;
            }
            level = level.stream()
                    .flatMap(b -> taxonomy.concept(b).stream())
                    .flatMap(c -> c.broader().stream())
                    .collect(Collectors.toUnmodifiableSet());
        }
        return List.copyOf(out);
    }

    private void addFit(String block, FitRule rule, List<Triple> out) {
        Node node = Rl.concept(rule.id());
        List<String> onlyIf = facts.texts(node, Rl.term("onlyIf"));
        out.add(Triple.create(Rl.concept(block), Term.JUDGED_BY, node));
        out.add(Triple.create(node, Term.FOR_DUTY, Rl.concept(rule.assignment())));
        out.add(Triple.create(node, Term.CONDITIONS, Term.number(onlyIf.size())));
        onlyIf.forEach(words -> out.add(Triple.create(node, Term.ONLY_IF, Term.text(words))));
        rule.right().forEach(right -> out.add(Triple.create(node, Term.RIGHT, Rl.concept(right))));
        rule.wrong().forEach(wrong -> out.add(Triple.create(node, Term.WRONG, Rl.concept(wrong))));
    }

    /** The general counters of each move; a move without a row of its own takes those of its pairings together. */
    private static Map<String, Set<String>> general(Collection<Pairing> pairings) {
        Map<String, Set<String>> own = new ConcurrentHashMap<>();
        Map<String, Set<String>> union = new ConcurrentHashMap<>();
        for (Pairing pairing : pairings) {
            boolean inRep =
                    pairing.timing().contains("in-rep") || pairing.timing().contains("read");
            if (inRep && pairing.primary().isPresent()) {
                Map<String, Set<String>> into = pairing.trigger().isEmpty() ? own : union;
                into.computeIfAbsent(pairing.primary().get(), m -> new TreeSet<>())
                        .add(pairing.counter());
            }
        }
        own.forEach(union::put);
        return Map.copyOf(union);
    }
}

package rushlight.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
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
import rushlight.knowledge.Facts;
import rushlight.knowledge.FitRule;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/** The fit rules that a block and a duty touch, as facts for the rules: the most specific block wins. */
final class FitSlice {
    /** A block and a duty. */
    private record Key(String block, String duty) {}

    /** A fit rule with its node and the facts about it that many reps share. */
    record Rule(FitRule rule, Node node, List<Triple> shared) {}

    private final Taxonomy taxonomy;
    private final Map<String, List<FitRule>> byBlock;
    private final Map<String, List<String>> onlyIf = new HashMap<>();
    private final Set<String> duties;
    private final Map<String, Boolean> judged = new ConcurrentHashMap<>();
    private final Map<Key, List<Rule>> ofBlock = new ConcurrentHashMap<>();

    FitSlice(Ontology ontology, Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
        this.byBlock = taxonomy.fitRules().stream().collect(Collectors.groupingBy(FitRule::block));
        this.duties = new TreeSet<>();
        taxonomy.fitRules().forEach(rule -> duties.add(rule.assignment()));
        Facts facts = new Facts(ontology.graph());
        taxonomy.fitRules()
                .forEach(rule -> onlyIf.put(rule.id(), facts.texts(Rl.concept(rule.id()), Rl.term("onlyIf"))));
    }

    /** Whether some fit rule judges this block. */
    boolean isJudged(String block) {
        return judged.computeIfAbsent(block, b -> taxonomy.closure(b).stream().anyMatch(byBlock::containsKey));
    }

    /** The duties of the fit rules. */
    Set<String> duties() {
        return Collections.unmodifiableSet(duties);
    }

    /** The rules for a block under a duty. */
    List<Rule> ofBlock(String block, String duty) {
        return ofBlock.computeIfAbsent(
                new Key(block, duty),
                key -> nearest(block, duty).stream()
                        .map(rule -> new Rule(rule, Rl.concept(rule.id()), facts(rule)))
                        .toList());
    }

    /** Whether a fit rule calls something he did right. */
    boolean isRight(Rule rule, String did) {
        return meets(taxonomy.closure(did), rule.rule().right());
    }

    /** Whether a fit rule calls something he did, an answer or a fault, wrong. */
    boolean isWrong(Rule rule, String did) {
        return meets(taxonomy.closure(did), rule.rule().wrong());
    }

    private List<Triple> facts(FitRule rule) {
        List<Triple> out = new ArrayList<>();
        Node node = Rl.concept(rule.id());
        List<String> conditions = onlyIf.getOrDefault(rule.id(), List.of());
        out.add(Triple.create(node, Term.FOR_DUTY, Rl.concept(rule.assignment())));
        out.add(Triple.create(node, Term.CONDITIONS, Term.number(conditions.size())));
        conditions.forEach(words -> out.add(Triple.create(node, Term.ONLY_IF, Term.text(words))));
        if (!rule.right().isEmpty()) {
            out.add(Triple.create(node, Term.JUDGES, Term.YES));
        }
        return List.copyOf(out);
    }

    private static boolean meets(Collection<String> some, Collection<String> others) {
        return some.stream().anyMatch(others::contains);
    }

    private List<FitRule> nearest(String block, String duty) {
        Set<String> level = Set.of(block);
        while (!level.isEmpty()) {
            List<FitRule> rules = level.stream()
                    .sorted()
                    .flatMap(b -> byBlock.getOrDefault(b, List.of()).stream())
                    .filter(rule -> rule.assignment().equals(duty))
                    .toList();
            if (!rules.isEmpty()) {
                return rules;
            }
            Set<String> wider = new HashSet<>();
            level.forEach(b -> taxonomy.concept(b).ifPresent(c -> wider.addAll(c.broader())));
            level = wider;
        }
        return List.of();
    }
}

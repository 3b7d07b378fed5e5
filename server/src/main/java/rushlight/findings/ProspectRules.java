package rushlight.findings;

import java.io.BufferedReader;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import org.apache.jena.reasoner.Derivation;
import org.apache.jena.reasoner.InfGraph;
import org.apache.jena.reasoner.rulesys.GenericRuleReasoner;
import org.apache.jena.reasoner.rulesys.Rule;
import org.apache.jena.reasoner.rulesys.RuleDerivation;
import org.apache.jena.sparql.graph.GraphFactory;
import rushlight.knowledge.BrokenBookException;
import rushlight.knowledge.Rl;

/** What follows from several findings together. Verdicts, rates and counts go in as facts; the rules only combine. */
final class ProspectRules {
    private static final Node HE = NodeFactory.createURI("urn:rushlight:prospect");
    private static final String VERDICT = "urn:rushlight:verdict:";
    private static final Node FINDING = Rl.term("finding");
    private static final Pattern SENTENCE = Pattern.compile("^# \"(.+)\"\\s*$\\s*^\\[([\\w-]+):", Pattern.MULTILINE);

    private final GenericRuleReasoner reasoner;
    private final Map<String, String> sentences = new TreeMap<>();
    private final List<Rule> rules;

    /** Reads the rules of a file with the sentence that stands before each. */
    ProspectRules(String text) {
        this.rules = Rule.parseRules(Rule.rulesParserFromReader(new BufferedReader(new StringReader(text))));
        Matcher matcher = SENTENCE.matcher(text);
        while (matcher.find()) {
            sentences.put(matcher.group(2), matcher.group(1));
        }
        rules.stream()
                .filter(rule -> !sentences.containsKey(rule.getName()))
                .findFirst()
                .ifPresent(rule -> {
                    throw new BrokenBookException("rules/prospect.rules: the rule " + rule.getName()
                            + " has no sentence in quotes on the line before it.");
                });
        this.reasoner = new GenericRuleReasoner(rules);
        reasoner.setMode(GenericRuleReasoner.FORWARD_RETE);
        reasoner.setDerivationLogging(true);
    }

    /** How many rules there are. */
    int size() {
        return rules.size();
    }

    /**
     * What the rules concluded.
     *
     * @param is what he is said to be, one for each rule that says so
     * @param likelyDuties the duties he seems to have
     * @param mixed by finding, the standing findings it contradicts
     * @param rooted by finding, the standing findings that may explain it
     */
    record Concluded(
            List<Assessment.Conclusion> is,
            List<Assessment.Conclusion> likelyDuties,
            Map<String, Set<String>> mixed,
            Map<String, Set<String>> rooted) {}

    /** Runs the rules over facts about one prospect, as {@link ProspectFacts} puts them. */
    Concluded conclude(Graph facts) {
        InfGraph concluded = reasoner.bind(facts);
        return new Concluded(
                all(concluded, "is"),
                all(concluded, "likelyDuty"),
                between(concluded, "mixedWith"),
                between(concluded, "rootedIn"));
    }

    static Graph facts(ProspectFacts facts) {
        Graph graph = GraphFactory.createDefaultGraph();
        facts.triples(HE, VERDICT).forEach(graph::add);
        return graph;
    }

    private List<Assessment.Conclusion> all(InfGraph concluded, String property) {
        List<Assessment.Conclusion> all = new ArrayList<>();
        for (Triple triple : concluded.find(HE, Rl.term(property), Node.ANY).toList()) {
            Iterator<Derivation> derivations = concluded.getDerivation(triple);
            while (derivations.hasNext()) {
                if (derivations.next() instanceof RuleDerivation derivation) {
                    String rule = derivation.getRule().getName();
                    all.add(new Assessment.Conclusion(
                            Rl.slug(triple.getObject()), rule, sentences.getOrDefault(rule, rule), from(derivation)));
                }
            }
        }
        return all.stream()
                .distinct()
                .sorted((a, b) -> (a.slug() + " " + a.rule()).compareTo(b.slug() + " " + b.rule()))
                .toList();
    }

    private static List<String> from(RuleDerivation derivation) {
        return derivation.getMatches().stream()
                .filter(match -> match.getPredicate().equals(FINDING))
                .map(match -> Rl.slug(match.getObject()))
                .distinct()
                .sorted()
                .toList();
    }

    private static Map<String, Set<String>> between(InfGraph concluded, String property) {
        Map<String, Set<String>> all = new TreeMap<>();
        concluded
                .find(Node.ANY, Rl.term(property), Node.ANY)
                .forEachRemaining(triple -> all.computeIfAbsent(finding(triple.getSubject()), one -> new TreeSet<>())
                        .add(finding(triple.getObject())));
        return all;
    }

    private static String finding(Node verdict) {
        return verdict.getURI().substring(VERDICT.length());
    }
}

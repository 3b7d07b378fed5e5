package rushlight.rules;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.reasoner.TriplePattern;
import org.apache.jena.reasoner.rulesys.ClauseEntry;
import org.apache.jena.reasoner.rulesys.Functor;
import org.apache.jena.reasoner.rulesys.Rule;
import rushlight.knowledge.BrokenBookException;

/** What the bodies of a set of rules ask about, so that no fact is laid out which no rule can use. */
final class Mentions {
    private final Set<Node> anyObject = new HashSet<>();
    private final Map<Node, Set<Node>> objects = new HashMap<>();

    Mentions(Collection<Rule> rules) {
        for (Rule rule : rules) {
            for (ClauseEntry clause : rule.getBody()) {
                if (clause instanceof TriplePattern pattern) {
                    note(rule, pattern.getPredicate(), pattern.getObject());
                } else if (clause instanceof Functor functor
                        && functor.getName().equals("noValue")) {
                    Node[] args = functor.getArgs();
                    note(rule, args[1], args.length > 2 ? args[2] : Node.ANY);
                }
            }
        }
    }

    /** Whether some rule could match a fact. */
    boolean canUse(Triple fact) {
        return canUse(fact.getPredicate(), fact.getObject());
    }

    /** Whether some rule asks about a property at all. */
    boolean asks(Node predicate) {
        return anyObject.contains(predicate) || objects.containsKey(predicate);
    }

    /** Whether some rule asks about a property with any object. */
    boolean asksAny(Node predicate) {
        return anyObject.contains(predicate);
    }

    /** The objects that rules name beside a property. */
    Set<Node> objects(Node predicate) {
        return objects.getOrDefault(predicate, Set.of());
    }

    /** Whether some rule could match a fact with this predicate and object. */
    boolean canUse(Node predicate, Node object) {
        return anyObject.contains(predicate)
                || objects.getOrDefault(predicate, Set.of()).contains(object);
    }

    /** The predicates that are asked about. */
    Set<Node> predicates() {
        Set<Node> all = new HashSet<>(anyObject);
        all.addAll(objects.keySet());
        return all;
    }

    private void note(Rule rule, Node predicate, Node object) {
        if (!predicate.isConcrete()) {
            throw new BrokenBookException("The rule " + rule.getName() + " asks with a variable property.");
        }
        if (object.isConcrete()) {
            objects.computeIfAbsent(predicate, p -> new HashSet<>()).add(object);
        } else {
            anyObject.add(predicate);
        }
    }
}

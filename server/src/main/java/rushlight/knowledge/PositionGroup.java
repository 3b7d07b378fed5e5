package rushlight.knowledge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.jena.graph.Node;
import org.apache.jena.vocabulary.RDFS;

/**
 * Men who are read beside each other, by the names that lists of prospects give their positions.
 *
 * @param label of several men, such as "ends"
 * @param names the positions of the group and of all groups within it, each as {@link #key} has it
 * @param wider the group around it; empty for the widest
 */
public record PositionGroup(String label, Set<String> names, Optional<PositionGroup> wider) {
    public PositionGroup {
        names = Set.copyOf(names);
    }

    /** The groups of a book, each within its wider one, by every position that they name. */
    public static Map<String, PositionGroup> byPosition(Ontology ontology) {
        Facts facts = new Facts(ontology.graph());
        Map<Node, Set<String>> names = new HashMap<>();
        List<Node> all = facts.ofClass("PositionGroup");
        all.forEach(group -> facts.texts(group, Rl.term("positionName"))
                .forEach(name -> chain(facts, group)
                        .forEach(one ->
                                names.computeIfAbsent(one, n -> new TreeSet<>()).add(key(name)))));
        Map<String, PositionGroup> found = new HashMap<>();
        for (Node group : all) {
            PositionGroup read = read(facts, chain(facts, group), names);
            facts.texts(group, Rl.term("positionName")).forEach(name -> found.put(key(name), read));
        }
        return Map.copyOf(found);
    }

    /** A position in lower case, with one blank for hyphens, slashes and blanks: two spellings of one have one key. */
    public static String key(String position) {
        return position.strip().toLowerCase(Locale.ROOT).replaceAll("[-/\\s]+", " ");
    }

    /** The men of this position alone, where no group of the book has it. */
    public static PositionGroup ofNoGroup(String position) {
        return new PositionGroup("players listed as " + position.strip(), Set.of(key(position)), Optional.empty());
    }

    private static PositionGroup read(Facts facts, List<Node> chain, Map<Node, Set<String>> names) {
        Node first = chain.get(0);
        String label =
                facts.texts(first, RDFS.label.asNode()).stream().findFirst().orElse(Rl.slug(first));
        return new PositionGroup(
                label,
                names.getOrDefault(first, Set.of()),
                chain.size() == 1 ? Optional.empty() : Optional.of(read(facts, chain.subList(1, chain.size()), names)));
    }

    /** A group and those around it, the narrowest first; a circle in a user's own file ends where it began. */
    private static List<Node> chain(Facts facts, Node group) {
        List<Node> chain = new ArrayList<>();
        Optional<Node> at = Optional.of(group);
        while (at.isPresent() && !chain.contains(at.get())) {
            chain.add(at.get());
            at = facts.all(at.get(), Rl.term("withinGroup")).stream().findFirst();
        }
        return chain;
    }
}

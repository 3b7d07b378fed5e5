package rushlight.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Lays patterns out by their words, each by its base, written together as well as apart. */
final class Trie<T> {
    private final Node<T> root = new Node<>();
    private final Inflections inflections;

    /** What may stand for the name of each group, the words of one member apart by blanks. */
    private final Map<String, List<String>> members = new HashMap<>();

    /**
     * @param groups the words of each member of a group, by its name
     */
    Trie(Inflections inflections, Map<String, List<List<String>>> groups) {
        this.inflections = inflections;
        groups.forEach((name, all) ->
                members.put(name, all.stream().map(this::row).distinct().toList()));
    }

    Node<T> root() {
        return root;
    }

    void insert(List<String> keys, T value) {
        Node.Entry<T> entry = new Node.Entry<>(value, keys);
        put(keys, entry);
        for (int i = 0; i + 1 < keys.size(); i++) {
            if (isFusible(keys, i, members.keySet())) {
                List<String> fused = new ArrayList<>(keys);
                fused.set(i, keys.get(i) + keys.get(i + 1));
                fused.remove(i + 1);
                put(fused, entry);
            }
        }
    }

    /** Whether two words of a pattern may be written as one; the name of a group is no word. */
    static boolean isFusible(List<String> keys, int at, Set<String> groups) {
        return !groups.contains(keys.get(at)) && !groups.contains(keys.get(at + 1));
    }

    private void put(List<String> keys, Node.Entry<T> entry) {
        Node<T> node = root;
        for (String key : keys) {
            node = node.towards(inflections.base(key), members.getOrDefault(key, List.of()));
        }
        node.entries.add(entry);
    }

    private String row(List<String> keys) {
        return String.join(" ", keys.stream().map(inflections::base).toList());
    }
}

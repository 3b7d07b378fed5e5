package rushlight.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Where patterns that begin with the same words part. */
final class Node<T> {
    /** What a pattern stands for, with its words as they are written; each is itself only, and quickly told apart. */
    static final class Entry<T> {
        private final T value;
        private final List<String> keys;

        Entry(T value, List<String> keys) {
            this.value = value;
            this.keys = keys;
        }

        T value() {
            return value;
        }

        List<String> keys() {
            return keys;
        }
    }

    final Map<String, Node<T>> next = new HashMap<>();
    final List<Entry<T>> entries = new ArrayList<>();

    /** Where patterns go on that have a group next, by the words that may stand for it. */
    final Map<String, List<Node<T>>> members = new HashMap<>();

    /** Of so many words is the longest of them. */
    int longest;

    /**
     * Where patterns go on with a word, made where none did before.
     *
     * @param group what may stand for the word; empty where it is no name of a group
     */
    Node<T> towards(String word, List<String> group) {
        Node<T> known = next.get(word);
        if (known != null) {
            return known;
        }
        Node<T> made = new Node<>();
        next.put(word, made);
        for (String member : group) {
            members.computeIfAbsent(member, m -> new ArrayList<>(1)).add(made);
            longest = Math.max(longest, member.split(" ").length);
        }
        return made;
    }
}

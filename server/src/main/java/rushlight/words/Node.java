package rushlight.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

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

    /** The groups of words that any pattern goes on with. */
    final Set<String> grouped = new HashSet<>();

    /** Which of some groups a pattern goes on with, whichever are fewer being looked through. */
    List<String> among(Set<String> groups) {
        if (groups.isEmpty()) {
            return List.of();
        }
        Set<String> fewer = groups.size() < grouped.size() ? groups : grouped;
        Set<String> more = groups.size() < grouped.size() ? grouped : groups;
        return fewer.stream().filter(more::contains).toList();
    }
}

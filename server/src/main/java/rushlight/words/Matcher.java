package rushlight.words;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * Finds every place of a text where one of many patterns stands: whatever the capitals, hyphens and inflection, words written
 * together or apart, with small words in between. Built once, then used by any number of threads.
 */
public final class Matcher<T> {
    private static final int MOST_SKIPPED = 2;

    /** No pattern is so long, whatever small words stand in it. */
    private static final int LONGEST = 64;

    private final Tokenizer tokenizer;
    private final Set<String> skipped;
    private final Set<String> light;
    private final Inflections inflections;
    private final Slips slips;
    private final Node<T> root;

    private Matcher(Builder<T> builder) {
        this.tokenizer = builder.tokenizer;
        this.skipped = Set.copyOf(builder.skipped);
        this.light = Set.copyOf(builder.light);
        Set<String> words = new LinkedHashSet<>(builder.alsoKnown);
        builder.patterns.forEach((keys, values) -> {
            words.addAll(keys);
            for (int i = 0; i + 1 < keys.size(); i++) {
                if (Trie.isFusible(keys, i, builder.groups.keySet())) {
                    words.add(keys.get(i) + keys.get(i + 1));
                }
            }
        });
        builder.groups.values().forEach(members -> members.forEach(words::addAll));
        this.inflections = Inflections.of(words, builder.irregular);
        Trie<T> trie = new Trie<>(inflections, builder.groups);
        builder.patterns.forEach((keys, values) -> values.forEach(value -> trie.insert(keys, value)));
        this.root = trie.root();
        this.slips = new Slips(builder.patterns.keySet(), inflections, builder.neverSlips);
    }

    /** Collects patterns. */
    public static final class Builder<T> {
        private final Tokenizer tokenizer;
        private final Set<String> skipped = new HashSet<>();
        private final Set<String> light = new HashSet<>();
        private final Map<String, String> irregular = new HashMap<>();
        private final Set<String> alsoKnown = new LinkedHashSet<>();
        private final Set<String> neverSlips = new HashSet<>();
        private final Map<List<String>, Set<T>> patterns = new LinkedHashMap<>();
        private final Map<String, List<List<String>>> groups = new LinkedHashMap<>();

        /** Nothing yet; texts and patterns are cut by this tokenizer. */
        public Builder(Tokenizer tokenizer) {
            this.tokenizer = tokenizer;
        }

        /** Uses the small words, the irregular forms and the common words of the book. */
        public Builder<T> withBookWords() {
            for (List<String> row :
                    Lexicon.named("small-words", "word", "weight").rows()) {
                (row.get(1).equals("light") ? light : skipped).add(row.get(0));
            }
            Lexicon.named("irregular-forms", "form", "base")
                    .rows()
                    .forEach(row -> irregular.put(row.get(0), row.get(1)));
            Lexicon.named("common-words", "word").rows().forEach(row -> neverSlips.add(row.get(0)));
            return this;
        }

        /** Words any of which may stand where a pattern has the name of their group, a word that no text has. */
        public Builder<T> group(String name, List<String> members) {
            groups.put(name, members.stream().map(this::keys).toList());
            return this;
        }

        private List<String> keys(String words) {
            return tokenizer.tokens(words).stream()
                    .filter(Token::word)
                    .map(Token::key)
                    .toList();
        }

        /** One more pattern; a pattern without a word is passed over. */
        public Builder<T> add(String pattern, T value) {
            List<String> keys = keys(pattern);
            List<String> kept = new ArrayList<>();
            for (int i = 0; i < keys.size(); i++) {
                if (i == 0 || i == keys.size() - 1 || !skipped.contains(keys.get(i))) {
                    kept.add(keys.get(i));
                }
            }
            if (!kept.isEmpty()) {
                patterns.computeIfAbsent(List.copyOf(kept), k -> new LinkedHashSet<>())
                        .add(value);
            }
            return this;
        }

        /** The matcher of all that was added. */
        public Matcher<T> build() {
            return new Matcher<>(this);
        }
    }

    /** As this matcher reads a text. */
    public List<Token> tokens(String text) {
        return tokenizer.tokens(text);
    }

    /** The base of a word form, such as {@code spin} of {@code spun}. */
    public String base(String key) {
        return inflections.base(key);
    }

    /** Whether a word stands in some pattern, in any form. */
    public boolean knows(String key) {
        return inflections.knows(key);
    }

    /**
     * The tokens with words that nobody knows replaced by the nearest known one, where that makes a longer match than
     * leaving it; the others as they are.
     */
    public List<Token> repaired(List<Token> tokens) {
        return repaired(tokens, word -> false);
    }

    /** The same, leaving words alone that are known elsewhere. */
    public List<Token> repaired(List<Token> tokens, Predicate<String> known) {
        return new Repairs<>(this, slips).of(tokens, known);
    }

    /** Every match, overlapping ones too, in the order of their first tokens, the longest of each first. */
    public List<Match<T>> all(List<Token> tokens) {
        List<Match<T>> found = new ArrayList<>();
        Reading text = new Reading(tokens, 0, tokens.size(), inflections, slips);
        for (int i = 0; i < tokens.size(); i++) {
            found.addAll(from(text, i));
        }
        return List.copyOf(found);
    }

    /**
     * The matches that together say the most, no two of which overlap: a long pattern says more than two short ones, and small
     * words say little. Of two that say as much, the one further left.
     */
    public List<Match<T>> best(List<Token> tokens) {
        return best(tokens, all(tokens));
    }

    /** The same among matches that were already found, and perhaps narrowed, of one matcher or several. */
    public <S> List<Match<S>> best(List<Token> tokens, List<Match<S>> matches) {
        return new Cover(tokens, skipped, light).best(matches);
    }

    /** The matches that begin at a token, the longest first. */
    public List<Match<T>> from(List<Token> tokens, int first) {
        int end = Math.min(tokens.size(), first + LONGEST);
        return from(new Reading(tokens, first, end, inflections, slips), first);
    }

    private List<Match<T>> from(Reading text, int first) {
        Map<Integer, Set<Node.Entry<T>>> ends = new HashMap<>();
        walk(text, first, root, 0, ends);
        if (ends.isEmpty()) {
            return List.of();
        }
        return ends.entrySet().stream()
                .sorted(Map.Entry.<Integer, Set<Node.Entry<T>>>comparingByKey().reversed())
                .map(end -> match(text.tokens(), first, end.getKey(), end.getValue()))
                .toList();
    }

    private void walk(Reading text, int at, Node<T> node, int passed, Map<Integer, Set<Node.Entry<T>>> ends) {
        if (passed == 0 && !node.entries.isEmpty()) {
            ends.computeIfAbsent(at, e -> new LinkedHashSet<>()).addAll(node.entries);
        }
        if (!text.isWord(at)) {
            return;
        }
        follow(text, at + 1, node, text.base(at), ends);
        if (text.isWord(at + 1)) {
            follow(text, at + 2, node, text.fused(at), ends);
        }
        for (int words = 1; words <= node.longest; words++) {
            for (Node<T> next : node.members.getOrDefault(text.words(at, words), List.of())) {
                walk(text, at + words, next, 0, ends);
            }
        }
        if (node != root && passed < MOST_SKIPPED && skipped.contains(text.key(at))) {
            walk(text, at + 1, node, passed + 1, ends);
        }
    }

    private void follow(Reading text, int at, Node<T> node, String key, Map<Integer, Set<Node.Entry<T>>> ends) {
        @Nullable Node<T> next = node.next.get(key);
        if (next != null) {
            walk(text, at, next, 0, ends);
        }
    }

    private Match<T> match(List<Token> tokens, int first, int end, Set<Node.Entry<T>> entries) {
        boolean guessed = tokens.subList(first, end).stream().anyMatch(Token::repaired);
        return new Match<>(
                first,
                end,
                tokens.get(first).from(),
                tokens.get(end - 1).to(),
                values(tokens.subList(first, end), entries),
                guessed);
    }

    private static <T> List<T> values(List<Token> words, Set<Node.Entry<T>> entries) {
        if (entries.size() == 1) {
            return List.of(entries.iterator().next().value());
        }
        List<String> keys = words.stream().map(Token::key).toList();
        List<T> exact = entries.stream()
                .filter(entry -> entry.keys().equals(keys))
                .map(Node.Entry::value)
                .distinct()
                .toList();
        return exact.isEmpty()
                ? entries.stream().map(Node.Entry::value).distinct().toList()
                : exact;
    }
}

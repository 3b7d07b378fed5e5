package rushlight.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.lucene.search.suggest.InputIterator;
import org.apache.lucene.search.suggest.Lookup;
import org.apache.lucene.search.suggest.analyzing.AnalyzingInfixSuggester;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.util.BytesRef;
import org.jspecify.annotations.Nullable;

/** What a person may be about to type: looked up by the beginnings of its words while he types. */
public final class Suggester implements AutoCloseable {
    private static final int SHORTEST = 1;
    private static final int SPARE = 4;
    private static final int LONGEST = 200;

    private final AnalyzingInfixSuggester words;

    /**
     * Something to suggest.
     *
     * @param text what is found and typed
     * @param id what it stands for; several texts may stand for one thing, and it is suggested once
     * @param kinds what it is; a question may keep to some kinds
     * @param weight what weighs more comes first
     */
    public record Entry(String text, String id, Set<String> kinds, long weight) {
        public Entry {
            kinds = Set.copyOf(kinds);
        }
    }

    /**
     * What is suggested.
     *
     * @param text what to type
     * @param id what it stands for
     */
    public record Suggestion(String text, String id) {}

    private Suggester(AnalyzingInfixSuggester words) {
        this.words = words;
    }

    /** Suggests among these. */
    public static Suggester of(Collection<Entry> entries) {
        try {
            AnalyzingInfixSuggester words = new AnalyzingInfixSuggester(
                    new ByteBuffersDirectory(), Prose.typed(), Prose.typed(), SHORTEST, false, true, false);
            words.build(new Entries(entries.iterator()));
            return new Suggester(words);
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /**
     * What has every word of the text, in any order; the last word may be unfinished. Nothing for no text.
     *
     * @param kinds only what is of one of these kinds; empty means all
     */
    public List<Suggestion> to(String text, Set<String> kinds, int most) {
        if (text.isBlank()) {
            return List.of();
        }
        try {
            Set<BytesRef> contexts = kinds.stream().map(BytesRef::new).collect(Collectors.toSet());
            String start = text.length() > LONGEST ? text.substring(0, LONGEST) : text;
            Map<String, Suggestion> once = new LinkedHashMap<>();
            for (Lookup.LookupResult found : words.lookup(start, contexts, SPARE * most, true, false)) {
                String id = found.payload.utf8ToString();
                once.putIfAbsent(id, new Suggestion(found.key.toString(), id));
            }
            return once.values().stream().limit(most).toList();
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    @Override
    public void close() {
        try {
            words.close();
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    private static UncheckedIOException unreadable(IOException e) {
        return new UncheckedIOException("What can be suggested cannot be looked up.", e);
    }

    /** The entries as the library wants them. */
    private static final class Entries implements InputIterator {
        private final Iterator<Entry> entries;
        private Entry at = new Entry("", "", Set.of(), 0);

        Entries(Iterator<Entry> entries) {
            this.entries = entries;
        }

        @Override
        public @Nullable BytesRef next() {
            if (!entries.hasNext()) {
                return null;
            }
            at = entries.next();
            return new BytesRef(at.text());
        }

        @Override
        public long weight() {
            return at.weight();
        }

        @Override
        public BytesRef payload() {
            return new BytesRef(at.id().getBytes(StandardCharsets.UTF_8));
        }

        @Override
        public boolean hasPayloads() {
            return true;
        }

        @Override
        public Set<BytesRef> contexts() {
            return at.kinds().stream().map(BytesRef::new).collect(Collectors.toSet());
        }

        @Override
        public boolean hasContexts() {
            return true;
        }
    }
}

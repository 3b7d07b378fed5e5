package rushlight.index;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.stream.Stream;
import org.apache.lucene.document.Document;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.SearcherManager;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.Directory;
import org.apache.lucene.store.FSDirectory;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.situation.Facets;
import rushlight.situation.LogFacts;

/**
 * Every reading with its facts, to be counted fast. The index is made from the store and can be made again; it says
 * which revision it holds. One thread writes at a time; readers never wait, and see a change once it is whole.
 */
public final class RepIndex implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(RepIndex.class);

    /** How old what lies on the disk may be while changes follow each other, nanoseconds. */
    private static final long SELDOM = TimeUnit.SECONDS.toNanos(2);

    private final Directory directory;
    private final Documents documents;
    private final Collection<Page> pages;
    private final IndexWriter writer;
    private final SearcherManager searchers;
    private final Segments segments = new Segments();
    private @Nullable Opened opened;
    private long committed = System.nanoTime() - SELDOM;
    private volatile long shown;

    /** The film last looked at, kept so that the next question need not lay it out again. */
    private record Opened(IndexSearcher searcher, List<String> evaluators, Footage footage) {}

    private RepIndex(Directory directory, Facets counted, Collection<Page> pages) throws IOException {
        this.directory = directory;
        this.documents = new Documents(counted);
        this.pages = pages;
        this.writer = IndexFiles.writer(directory);
        this.searchers = new SearcherManager(writer, new IndexFiles.Uncached());
        this.shown = state().map(IndexState::revision).orElse(0L);
    }

    /**
     * Opens the index of a folder, where these facets are counted. One that cannot be read is emptied: {@link #state()}
     * then asks for a new one.
     *
     * @param pages what of the book can be looked up; written whenever the whole index is
     */
    public static RepIndex in(Path folder, Facets counted, Collection<Page> pages) {
        try {
            return new RepIndex(FSDirectory.open(folder), counted, pages);
        } catch (IOException e) {
            throw new UncheckedIOException("The index in " + folder + " cannot be opened.", e);
        }
    }

    /** An index of these facets that is gone when it is closed. */
    public static RepIndex inMemory(Facets counted, Collection<Page> pages) {
        try {
            return new RepIndex(new ByteBuffersDirectory(), counted, pages);
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /** What the index holds; empty where it must be made again. */
    public Optional<IndexState> state() {
        Map<String, String> data = new HashMap<>();
        Iterable<Map.Entry<String, String>> live = writer.getLiveCommitData();
        if (live != null) {
            live.forEach(entry -> data.put(entry.getKey(), entry.getValue()));
        }
        return IndexState.read(data);
    }

    /** The revision of the film that questions are answered from; 0 where there is none. */
    public long shown() {
        return shown;
    }

    /**
     * Puts logs in the place of what was there of them and takes out those that are gone. Questions see it at once; it may
     * reach the disk with a later change, or when the index is closed: until then {@link #state()} of an index that is opened
     * after a crash names the revision before, and the change is made again. If it fails, the index must be opened anew.
     *
     * @param prospects what is known of prospects, where it changed
     */
    public void update(
            Stream<LogFacts> logs, Collection<LogId> gone, Collection<Prospect> prospects, IndexState state) {
        write(state, System.nanoTime() - committed >= SELDOM, () -> {
            for (LogId log : gone) {
                writer.deleteDocuments(new Term(Fields.LOG, Fields.key(log)));
            }
            add(logs, prospects);
        });
    }

    /** Names another state for what it holds; the disk has it at once. */
    public void mark(IndexState state) {
        write(state, true, () -> {});
    }

    /** Makes the whole index again. */
    public void rebuild(Stream<LogFacts> logs, Collection<Prospect> prospects, IndexState state) {
        write(state, true, () -> {
            writer.deleteAll();
            for (Page page : pages) {
                writer.addDocument(Documents.of(page));
            }
            add(logs, prospects);
        });
    }

    /**
     * Answers a question from one state of the film, whatever is written meanwhile.
     *
     * @param evaluators whose reading of a rep counts, those believed first standing first
     */
    public <T> T read(List<String> evaluators, Function<Footage, T> question) {
        try {
            IndexSearcher searcher = searchers.acquire();
            try {
                return question.apply(footage(searcher, evaluators));
            } finally {
                searchers.release(searcher);
            }
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /** Closes it. What had not reached the disk does so now; where it cannot, whoever opens the index next makes it again. */
    @Override
    public synchronized void close() {
        try (directory;
                writer;
                searchers) {
            opened = null;
            commitLast();
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    static UncheckedIOException unreadable(IOException e) {
        return new UncheckedIOException("The index cannot be read or written.", e);
    }

    private synchronized Footage footage(IndexSearcher searcher, List<String> evaluators) {
        if (opened == null
                || opened.searcher() != searcher
                || !opened.evaluators().equals(evaluators)) {
            opened = new Opened(searcher, List.copyOf(evaluators), new Footage(searcher, segments, evaluators));
        }
        return opened.footage();
    }

    /** Something that changes the index. */
    private interface Change {
        void make() throws IOException;
    }

    private synchronized void write(IndexState state, boolean isToLast, Change change) {
        boolean done = false;
        try {
            change.make();
            writer.setLiveCommitData(state.commitData().entrySet());
            if (isToLast) {
                commit();
            }
            searchers.maybeRefreshBlocking();
            shown = state.revision();
            done = true;
            opened = null;
        } catch (IOException e) {
            throw unreadable(e);
        } finally {
            if (!done) {
                rollback();
            }
        }
    }

    private void commit() throws IOException {
        writer.commit();
        committed = System.nanoTime();
    }

    private void commitLast() {
        try {
            if (writer.isOpen() && writer.hasUncommittedChanges()) {
                commit();
            }
        } catch (IOException e) {
            LOG.debug("The last changes did not reach the index on the disk", e);
        }
    }

    private void rollback() {
        try {
            writer.rollback();
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    private void add(Stream<LogFacts> logs, Collection<Prospect> prospects) throws IOException {
        for (Prospect prospect : prospects) {
            writer.deleteDocuments(
                    both(new Term(Fields.KIND, Fields.PROSPECT), new Term(Fields.PROSPECT, prospect.id())));
            writer.addDocument(Documents.of(prospect));
        }
        for (LogFacts log : (Iterable<LogFacts>) logs::iterator) {
            List<Document> its = documents.of(log);
            writer.updateDocuments(new Term(Fields.LOG, its.get(0).get(Fields.LOG)), its);
        }
    }

    private static Query both(Term one, Term other) {
        return new BooleanQuery.Builder()
                .add(new TermQuery(one), Occur.FILTER)
                .add(new TermQuery(other), Occur.FILTER)
                .build();
    }
}

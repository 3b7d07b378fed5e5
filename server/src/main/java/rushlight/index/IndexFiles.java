package rushlight.index;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import org.apache.lucene.index.CorruptIndexException;
import org.apache.lucene.index.IndexFormatTooNewException;
import org.apache.lucene.index.IndexFormatTooOldException;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.SearcherFactory;
import org.apache.lucene.store.Directory;
import org.jspecify.annotations.Nullable;

/** How the files of an index are written and read. */
final class IndexFiles {
    private static final double BUFFER_MB = 64;

    private IndexFiles() {}

    /** Opens them for writing, and empties them first where they cannot be read. */
    static IndexWriter writer(Directory directory) throws IOException {
        try {
            return new IndexWriter(directory, config());
        } catch (CorruptIndexException
                | IndexFormatTooOldException
                | IndexFormatTooNewException
                | EOFException
                | NoSuchFileException e) {
            for (String file : directory.listAll()) {
                if (!file.equals(IndexWriter.WRITE_LOCK_NAME)) {
                    directory.deleteFile(file);
                }
            }
            return new IndexWriter(directory, config());
        }
    }

    private static IndexWriterConfig config() {
        return new IndexWriterConfig(Prose.read()).setRAMBufferSizeMB(BUFFER_MB).setCommitOnClose(false);
    }

    /** Searchers that remember nothing of their own: what is worth remembering is remembered by the tapes. */
    static final class Uncached extends SearcherFactory {
        @Override
        public IndexSearcher newSearcher(IndexReader reader, @Nullable IndexReader previous) {
            IndexSearcher searcher = new IndexSearcher(reader);
            searcher.setQueryCache(null);
            return searcher;
        }
    }
}

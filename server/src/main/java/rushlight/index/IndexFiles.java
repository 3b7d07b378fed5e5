package rushlight.index;

import java.io.EOFException;
import java.io.IOException;
import java.nio.file.NoSuchFileException;
import org.apache.lucene.index.CorruptIndexException;
import org.apache.lucene.index.IndexFormatTooNewException;
import org.apache.lucene.index.IndexFormatTooOldException;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.store.Directory;

/** The files of an index. */
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
}

package rushlight.store;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import org.apache.jena.dboe.base.file.BufferChannelFile;
import org.apache.jena.dboe.sys.Names;
import org.apache.jena.dboe.transaction.txn.TransactionException;
import org.apache.jena.dboe.transaction.txn.journal.Journal;
import org.apache.jena.dboe.transaction.txn.journal.JournalEntry;

/**
 * Cuts off what a program that was killed had only half written at the end of a store's journal. The library writes an entry
 * in two steps, reads the journal when it opens the store, and gives up at an entry that is not whole; so without this a kill
 * between the two steps would leave a store that nobody can open. Nothing acknowledged is lost: a change counts once the entry
 * that ends it is whole and on the disk, and what goes before that entry is not touched.
 */
final class TornJournal {
    private TornJournal() {}

    /** Mends a store that no program has open. */
    static void mend(Path store) {
        if (!Files.isDirectory(store)) {
            return;
        }
        try (DirectoryStream<Path> generations = Files.newDirectoryStream(store, "Data-*")) {
            for (Path generation : generations) {
                File journal = generation.resolve(Names.journalFile).toFile();
                if (journal.length() > 0) {
                    cut(journal);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void cut(File file) {
        Journal journal = Journal.create(BufferChannelFile.createUnmanaged(file.getPath(), "rw"));
        try {
            long whole = wholeUpTo(journal, file.length());
            if (whole < file.length()) {
                journal.truncate(whole);
                journal.sync();
            }
        } finally {
            journal.close();
        }
    }

    private static long wholeUpTo(Journal journal, long length) {
        long whole = 0;
        try {
            Iterator<JournalEntry> entries = journal.entries();
            while (whole < length && entries.hasNext()) {
                entries.next();
                whole = journal.position();
            }
        } catch (TransactionException e) {
            return whole; // the entry that was being written
        }
        return whole;
    }
}

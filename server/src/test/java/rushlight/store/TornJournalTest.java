package rushlight.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.apache.jena.dboe.base.file.BufferChannelFile;
import org.apache.jena.dboe.transaction.txn.ComponentId;
import org.apache.jena.dboe.transaction.txn.journal.Journal;
import org.apache.jena.dboe.transaction.txn.journal.JournalEntry;
import org.apache.jena.dboe.transaction.txn.journal.JournalEntryType;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.sse.SSE;
import org.apache.jena.system.Txn;
import org.apache.jena.tdb2.DatabaseMgr;
import org.apache.jena.tdb2.sys.TDBInternal;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A program can be killed at any byte of what it writes. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class TornJournalTest {
    private static final int HEADER = 16;
    private static final int DATA = 24;

    @TempDir
    Path folder;

    private Path journal;

    @BeforeEach
    void film_is_stored_and_the_program_ends() {
        DatasetGraph data = DatabaseMgr.connectDatasetGraph(folder.toString());
        Txn.executeWrite(data, () -> data.add(SSE.parseQuad("(_ <ex:rep> <ex:has> 'bull rush')")));
        TDBInternal.expel(data, true);
        journal = folder.resolve("Data-0001").resolve("journal.jrnl");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, HEADER - 1, HEADER, HEADER + 1, HEADER + DATA - 1})
    void an_entry_of_which_only_so_many_bytes_were_written_is_cut_off_and_the_store_opens(int written)
            throws IOException {
        appendEntry();
        cutTo(written);

        TornJournal.mend(folder);

        assertThat(Files.size(journal)).isZero();
        assertThat(stored()).isEqualTo(1);
    }

    @Test
    void whole_entries_before_it_are_left_for_the_library_to_judge() throws IOException {
        appendEntry();
        long whole = Files.size(journal);
        appendEntry();
        cutTo(whole + HEADER);

        TornJournal.mend(folder);

        assertThat(Files.size(journal)).isEqualTo(whole);
    }

    @Test
    void a_change_that_was_ended_is_not_touched() throws IOException {
        appendEntry();
        try (Open open = new Open(journal)) {
            open.journal.writeJournal(JournalEntry.COMMIT);
        }
        byte[] before = Files.readAllBytes(journal);

        TornJournal.mend(folder);

        assertThat(Files.readAllBytes(journal)).isEqualTo(before);
    }

    @Test
    void a_folder_without_a_store_stays_as_it_is() {
        TornJournal.mend(folder.resolve("none"));

        assertThat(folder.resolve("none")).doesNotExist();
    }

    private void appendEntry() {
        try (Open open = new Open(journal)) {
            open.journal.write(JournalEntryType.REDO, ComponentId.allocLocal(), ByteBuffer.allocate(DATA));
        }
    }

    private void cutTo(long length) throws IOException {
        try (FileChannel channel = FileChannel.open(journal, StandardOpenOption.WRITE)) {
            channel.truncate(length);
        }
    }

    private long stored() {
        DatasetGraph data = DatabaseMgr.connectDatasetGraph(folder.toString());
        try {
            return Txn.calculateRead(data, () -> (long) data.getDefaultGraph().size());
        } finally {
            TDBInternal.expel(data, true);
        }
    }

    /** A journal opened behind what it holds. */
    private static final class Open implements AutoCloseable {
        private final Journal journal;

        Open(Path file) {
            BufferChannelFile channel = BufferChannelFile.createUnmanaged(file.toString(), "rw");
            channel.position(channel.size());
            this.journal = Journal.create(channel);
        }

        @Override
        public void close() {
            journal.close();
        }
    }
}

package rushlight.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.sparql.core.DatasetGraph;
import org.apache.jena.sparql.core.DatasetGraphFactory;
import org.apache.jena.sparql.core.DatasetGraphWrapper;
import org.apache.jena.sparql.core.Quad;
import org.apache.jena.system.Txn;
import org.apache.jena.tdb2.DatabaseMgr;
import org.apache.jena.vocabulary.RDFS;
import org.junit.jupiter.api.AutoClose;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.archive.PlayedStore;
import rushlight.store.Aligned.How;
import rushlight.store.RemoteStoreException.Kind;

/** A store and its copy, statement by statement. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CopyOfStoreTest {
    @TempDir
    private Path home;

    private final DatasetGraph data = DatasetGraphFactory.createTxnMem();

    @AutoClose
    private final PlayedStore store = PlayedStore.of(data);

    private final RemoteStore there =
            RemoteStore.at(RemoteAddress.of(store.address()), Optional.empty(), Duration.ofSeconds(60));

    @Test
    void film_that_is_too_large_for_memory_is_compared_on_the_disk_and_nothing_of_it_is_left_there()
            throws IOException {
        Path store = home.resolve("store");
        Transactions first = copy(DatabaseMgr.createDatasetGraph());
        new Replica(first, there, Optional.empty()).align(true, () -> {});
        first.write(CopyOfStoreTest::thirty);
        Files.createDirectories(Beside.of(store));
        Files.writeString(Beside.of(store).resolve("left.dat"), "Jory Penwick, who is erased since");
        Transactions second = copy(DatabaseMgr.createDatasetGraph());
        AtomicBoolean isOnDisk = new AtomicBoolean();

        Aligned done = new Fetching(second, there, Optional.of(store), 10)
                .fetch(() -> isOnDisk.set(Files.exists(Beside.of(store))));

        assertThat(done.statements()).isEqualTo(30);
        assertThat(isOnDisk).isTrue();
        assertThat(Beside.of(store)).doesNotExist();
        assertThat(second.read(DatasetGraph::isEmpty)).isFalse();
        assertThat(new Replica(second, there, Optional.empty()).isInStep()).isTrue();
    }

    @Test
    void what_a_fetch_that_was_killed_left_behind_goes_when_the_folder_is_opened() throws IOException {
        Path store = home.resolve("store");
        Files.createDirectories(Beside.of(store).resolve("Data-0001"));
        Files.writeString(Beside.of(store).resolve("Data-0001/nodes.dat"), "Jory Penwick");

        new Elsewhere(copy(DatabaseMgr.createDatasetGraph()), Optional.of(store)).tidy();

        assertThat(Beside.of(store)).doesNotExist();
    }

    @Test
    void a_change_that_the_store_has_and_the_folder_could_not_write_is_said_to_be_there_and_fetched() {
        AtomicBoolean isBroken = new AtomicBoolean();
        Transactions here = copy(new DatasetGraphWrapper(DatabaseMgr.createDatasetGraph()) {
            @Override
            public void commit() {
                if (isBroken.getAndSet(false)) {
                    super.abort();
                    throw new IllegalStateException("The disk has gone.");
                }
                super.commit();
            }
        });
        Replica replica = new Replica(here, there, Optional.empty());
        replica.align(true, () -> {});
        isBroken.set(true);

        assertThatThrownBy(() -> here.write(CopyOfStoreTest::thirty))
                .hasMessageContaining("has the change")
                .hasMessageContaining("The disk has gone.")
                .hasMessageContaining("do not make the change again")
                .extracting(e -> ((RemoteStoreException) e).kind())
                .isEqualTo(Kind.AHEAD);

        assertThat(knows(here, label(7))).isFalse();
        assertThat(Txn.calculateRead(data, () -> data.contains(label(7)))).isTrue();
        assertThat(replica.align(false, () -> {}).how()).isEqualTo(How.REPLACED);
        assertThat(knows(here, label(7))).isTrue();
    }

    @Test
    void the_trail_of_changes_does_not_grow_with_them() {
        Transactions here = copy(DatabaseMgr.createDatasetGraph());
        new Replica(here, there, Optional.empty()).align(true, () -> {});
        for (int i = 0; i < 40; i++) {
            Quad quad = label(i);
            here.write(copy -> {
                copy.add(quad);
                return quad;
            });
        }

        Standing now = there.state();
        assertThat(now).isEqualTo(here.read(Standing::of));
        assertThat(now.wasAt(now.stamp().orElseThrow())).isTrue();
        assertThat(now.made().orElseThrow().split(" ")).hasSize(16);
    }

    private Transactions copy(DatasetGraph graphs) {
        return new Transactions(graphs, Room.boundless(), Optional.of(there));
    }

    private static boolean knows(Transactions here, Quad quad) {
        return here.read(copy -> copy.contains(quad));
    }

    private static boolean thirty(DatasetGraph graphs) {
        for (int i = 0; i < 30; i++) {
            graphs.add(label(i));
        }
        return true;
    }

    private static Quad label(int number) {
        return Quad.create(
                Quad.defaultGraphNodeGenerated,
                NodeFactory.createURI(Addresses.DATA + "thing/" + number),
                RDFS.label.asNode(),
                Literals.of("Thing " + number));
    }
}

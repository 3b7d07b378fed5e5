package rushlight.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rushlight.film.Prospect;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;

/** No change begins where there is no room for it to end. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class RoomTest {
    @TempDir
    private Path folder;

    @Test
    void with_too_little_room_nothing_changes_everything_can_be_read_and_with_room_work_goes_on() {
        AtomicLong free = new AtomicLong(Long.MAX_VALUE);
        Room room = new Room(folder.toString(), free::get);
        try (Store store = Store.in(folder, Taxonomy.of(Ontology.packaged()).film(), room, Optional.empty())) {
            change(store, "first");
            free.set(Room.LEAST - 1);

            assertThatThrownBy(() -> change(store, "second"))
                    .isInstanceOf(FullDiskException.class)
                    .hasMessageContaining("The disk of " + folder + " is nearly full: 63 MB are free")
                    .hasMessageContaining("Nothing was changed. Make room and do it again.");
            assertThat(store.revision()).isEqualTo(1);
            assertThat(store.prospects()).extracting(Prospect::id).containsExactly("first");
            free.set(Room.LEAST);

            change(store, "second");

            assertThat(store.prospects()).extracting(Prospect::id).containsExactly("first", "second");
        }
    }

    @Test
    void a_full_disk_is_known_by_what_systems_say_and_nothing_else_is() {
        assertThat(FullDiskException.isBehind(new UncheckedIOException(new IOException("No space left on device"))))
                .isTrue();
        assertThat(FullDiskException.isBehind(new IllegalStateException(
                        "x", new FileSystemException("/a", null, "There is not enough space on the disk"))))
                .isTrue();
        assertThat(FullDiskException.isBehind(new IOException("Disk quota exceeded")))
                .isTrue();
        assertThat(FullDiskException.isBehind(new IOException("File too large")))
                .isTrue();
        assertThat(FullDiskException.isBehind(new IOException("Permission denied")))
                .isFalse();
        assertThat(FullDiskException.isBehind(new FileSystemException("/no space left", null, "Is a directory")))
                .isFalse();
        assertThat(FullDiskException.isBehind(null)).isFalse();
    }

    private static void change(Store store, String prospect) {
        store.change(
                new Change(List.of(), List.of(), List.of(prospect(prospect)), Change.Note.of(Change.Kind.IMPORT, "")),
                "book",
                Instant.EPOCH);
    }

    private static Prospect prospect(String id) {
        return Prospect.named(id, id);
    }
}

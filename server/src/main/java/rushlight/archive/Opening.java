package rushlight.archive;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rushlight.store.FullDiskException;
import rushlight.store.RemoteAddress;
import rushlight.store.Store;

/** Opens a data folder, piece by piece; what was opened is closed again where a later piece fails. */
final class Opening {
    private static final Logger LOG = LoggerFactory.getLogger(Opening.class);

    private final Path folder;
    private final KeptAt place;

    Opening(Path folder, KeptAt place) {
        this.folder = folder;
        this.place = place;
    }

    Archive open(Supplier<Book> read, Layouts layouts) {
        FolderLock.make(folder);
        FolderLock lock = FolderLock.take(folder);
        Store store = null;
        Indexing index = null;
        try {
            Settings settings = Settings.in(folder);
            Optional<RemoteAddress> address = place.address(settings);
            Book book = read.get();
            FolderLock.make(folder.resolve(Archive.STORE));
            store = Store.in(folder.resolve(Archive.STORE), book.taxonomy().film(), address.map(place::store));
            layouts.bring(folder, settings, store);
            index = new Indexing(folder.resolve("index"), book, store);
            Following following = new Following(folder, store, index);
            begin(following, address.map(RemoteAddress::text));
            index.catchUpNow();
            finishErasing(following.erasing());
            return new Archive(folder, lock, book, store, index, following);
        } catch (RuntimeException e) {
            close(lock, store, index);
            throw e;
        }
    }

    private static void finishErasing(Erasing erasing) {
        try {
            erasing.finishLast();
        } catch (FullDiskException e) {
            LOG.warn("An erasing that was cut short waits for room on the disk: {}", e.getMessage());
        }
    }

    static void close(FolderLock lock, @Nullable Store store, @Nullable Indexing index) {
        try (lock;
                store;
                index) {
            // Each is closed, whatever becomes of the one before it.
        }
    }

    /** The address is remembered before anything is sent: whatever breaks off then, the folder knows whose it is. */
    private void begin(Following following, Optional<String> address) {
        Settings before = Settings.in(folder);
        Settings now = before.withStore(address);
        Optional<String> film = following.film();
        now.saveAfter(before, folder);
        try {
            following.begin(place.wanted().isPresent(), before.keptAt().equals(address));
        } catch (RuntimeException e) {
            if (film.equals(following.film())) {
                before.saveAfter(now, folder);
            }
            throw e;
        }
    }
}

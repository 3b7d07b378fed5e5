package rushlight.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Room on the disk. A store maps its files into memory, where a full disk shows only when it is too late to say so; so no
 * change begins with less room than a change may take.
 */
final class Room {
    /** What stays free, bytes: several times what the largest change we measured adds before it is known to be whole. */
    static final long LEAST = 64L << 20;

    private static final long MB = 1L << 20;

    private final String where;
    private final LongSupplier free;

    Room(String where, LongSupplier free) {
        this.where = where;
        this.free = free;
    }

    static Room on(Path folder) {
        return new Room(folder.toString(), () -> free(folder));
    }

    static Room boundless() {
        return new Room("memory", () -> Long.MAX_VALUE);
    }

    /**
     * Makes a change where there is room for it.
     *
     * @throws FullDiskException where there is none; nothing was changed then
     */
    <T> T guarded(Supplier<T> change) {
        long left = free.getAsLong();
        if (left < LEAST) {
            throw new FullDiskException(
                    "The disk of " + where + " is nearly full: " + left / MB + " MB are free, and a change needs "
                            + LEAST / MB + " MB. Nothing was changed. Make room and do it again.",
                    null);
        }
        return told(change);
    }

    /**
     * Does what may write, and says so in words where the disk is full.
     *
     * @throws FullDiskException where it is; nothing was changed then
     */
    <T> T told(Supplier<T> work) {
        try {
            return work.get();
        } catch (RuntimeException | InternalError e) {
            if (FullDiskException.isBehind(e) || e instanceof InternalError) {
                throw new FullDiskException(
                        "The disk of " + where + " is full. Nothing was changed. Make room and do it again.", e);
            }
            throw e;
        }
    }

    private static long free(Path folder) {
        try {
            return Files.getFileStore(folder).getUsableSpace();
        } catch (IOException e) {
            return Long.MAX_VALUE; // a system that cannot say; the write itself will tell
        }
    }
}

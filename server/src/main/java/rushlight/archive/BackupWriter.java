package rushlight.archive;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.locks.ReentrantLock;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import rushlight.store.Holdings;
import rushlight.store.Store;

/**
 * Writes a data folder as one zip: the store as N-Quads of one state, the settings and the user's own terms of the same
 * moment, and last the manifest with their sums, so that what was cut off is known by what it lacks. The index is not in it:
 * it is made again. A writer waits only for as long as the small files take.
 */
final class BackupWriter {
    private static final ObjectMapper JSON = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private final Path folder;
    private final Book book;
    private final Store store;
    private final ReentrantLock one;

    BackupWriter(Path folder, Book book, Store store, ReentrantLock one) {
        this.folder = folder;
        this.book = book;
        this.store = store;
        this.one = one;
    }

    BackupManifest write(OutputStream out) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(out), StandardCharsets.UTF_8);
        Map<String, byte[]> small = new LinkedHashMap<>();
        List<BackupManifest.Part> parts = new ArrayList<>();
        zip.putNextEntry(new ZipEntry(BackupManifest.STORE));
        Measured measured = new Measured(zip);
        Holdings holdings;
        one.lock();
        try {
            holdings = store.whole().write(measured, () -> {
                readSmall(small);
                one.unlock();
            });
        } finally {
            if (one.isHeldByCurrentThread()) {
                one.unlock();
            }
        }
        zip.closeEntry();
        parts.add(measured.part(BackupManifest.STORE));
        for (Map.Entry<String, byte[]> file : small.entrySet()) {
            parts.add(put(zip, file.getKey(), file.getValue()));
        }
        BackupManifest manifest = new BackupManifest(
                BackupManifest.FORMAT,
                Settings.FORMAT,
                Writing.now().toString(),
                book.ontology().fingerprint(),
                holdings,
                parts);
        put(zip, BackupManifest.FILE, JSON.writeValueAsBytes(manifest));
        zip.finish();
        zip.flush();
        return manifest;
    }

    private void readSmall(Map<String, byte[]> small) {
        for (String name : List.of(Settings.FILE, Book.OVERLAY)) {
            Path file = folder.resolve(name);
            try {
                if (Files.exists(file)) {
                    small.put(name, Files.readAllBytes(file));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(file.toString(), e);
            }
        }
    }

    private static BackupManifest.Part put(ZipOutputStream zip, String name, byte[] content) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        Measured measured = new Measured(zip);
        measured.write(content);
        zip.closeEntry();
        return measured.part(name);
    }
}

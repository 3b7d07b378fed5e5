package rushlight.archive;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Objects;
import org.apache.commons.io.FileUtils;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import rushlight.MemoryDisk;

/** The invented league in a data folder of its own, imported once for a class of tests that only ask it. */
public final class ImportedLeague implements BeforeAllCallback, AfterAllCallback {
    private @Nullable Path folder;
    private @Nullable Archive archive;

    @Override
    public void beforeAll(ExtensionContext tests) throws IOException {
        folder = MemoryDisk.folder();
        archive = Archive.open(folder);
        DemoLeague.into(archive);
    }

    /** The league, open for the class. */
    public Archive archive() {
        return Objects.requireNonNull(archive, "The league is open only while its class of tests runs.");
    }

    @Override
    public void afterAll(ExtensionContext tests) throws IOException {
        archive().close();
        FileUtils.deleteDirectory(Objects.requireNonNull(folder, "folder").toFile());
    }
}

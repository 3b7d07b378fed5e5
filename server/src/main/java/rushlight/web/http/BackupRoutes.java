package rushlight.web.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import rushlight.archive.Archive;

/** Everything the folder holds as one file, made while others go on working. */
final class BackupRoutes {
    private static final String ZIP = "application/zip";

    private final Archive archive;

    BackupRoutes(Archive archive) {
        this.archive = archive;
    }

    List<Route> routes() {
        return List.of(Route.get("/api/backup", this::backup));
    }

    /** Sent as it is written, so the whole of it is never in memory; the manifest comes last and tells what was cut off. */
    private void backup(Context ctx) {
        Accepts.check(ctx, List.of(ZIP));
        ctx.contentType(ZIP)
                .header("Cache-Control", "no-store")
                .header("Content-Disposition", "attachment; filename=\"rushlight-backup.zip\"");
        try {
            archive.backup(ctx.outputStream());
        } catch (IOException e) {
            throw new UncheckedIOException("The reader of the backup went away.", e);
        }
    }
}

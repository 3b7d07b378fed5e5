package rushlight.web.http;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import rushlight.archive.Archive;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.csv.FilmLogWriter;
import rushlight.web.ImportReport;
import rushlight.web.JobAnswer;

/** Film logs in and out, as CSV. */
final class ImportRoutes {
    private static final String CSV = "text/csv";
    private static final double READ = 0.5;

    private final Archive archive;
    private final Importing importing;
    private final Jobs jobs;
    private final Meters meters;

    ImportRoutes(Archive archive, Jobs jobs, Meters meters) {
        this.archive = archive;
        this.importing = new Importing(archive);
        this.jobs = jobs;
        this.meters = meters;
    }

    List<Route> routes() {
        return List.of(
                Route.post("/api/import/check", this::check),
                Route.post("/api/import", this::take),
                Route.get("/api/jobs/{job}", this::job),
                Route.get("/api/export", this::export),
                Route.get("/api/logs/{evaluator}/{prospect}/{game}", this::log));
    }

    private void check(Context ctx) {
        Importing.Wish wish = new Importing.Wish(
                false, false, false, Request.word(ctx, "evaluator"), Request.word(ctx, "numbering"), "");
        try (Upload file = Upload.of(ctx)) {
            Versions.json(ctx, importing.of(file, wish, done -> {}));
        }
    }

    private void take(Context ctx) {
        Importing.Wish wish = new Importing.Wish(
                true,
                isAdding(ctx),
                Request.flag(ctx, "keepGood", false),
                Request.word(ctx, "evaluator"),
                Request.word(ctx, "numbering"),
                Visitor.of(ctx).name());
        if (Jobs.areWanted(ctx)) {
            Upload file = Upload.of(ctx);
            JobAnswer job = jobs.begin(progress -> {
                try (file) {
                    return taken(
                            file,
                            wish,
                            done -> progress.tell(done < 1 ? "Reading" : "Classifying and storing", done * READ));
                }
            });
            Jobs.accepted(ctx, job);
            return;
        }
        try (Upload file = Upload.of(ctx)) {
            Versions.json(ctx, taken(file, wish, done -> {}));
        }
    }

    private ImportReport taken(Upload file, Importing.Wish wish, DoubleConsumer progress) {
        return meters.importing(() -> taken(importing.of(file, wish, progress)));
    }

    /** The report of an import that kept something; every other ends in a problem. */
    private static ImportReport taken(ImportReport report) {
        if (!report.reasons().isEmpty()) {
            throw Problem.of(409, "Nothing was imported: " + report.reasons().get(0))
                    .withReasons(report.reasons())
                    .thrown();
        }
        if (!report.imported()) {
            int faults = report.faults().size();
            throw Problem.of(
                            422, "Nothing was imported: " + faults + (faults == 1 ? " fault" : " faults") + " to mend.")
                    .withFaults(report.faults())
                    .thrown();
        }
        return report;
    }

    private static boolean isAdding(Context ctx) {
        String mode = Request.word(ctx, "mode").orElse("replace");
        if (!mode.equals("replace") && !mode.equals("add")) {
            throw Problem.of(400, "\"mode\" is replace or add.").thrown();
        }
        return mode.equals("add");
    }

    private void job(Context ctx) {
        ctx.header("Cache-Control", "no-store");
        Versions.json(
                ctx,
                jobs.job(ctx.pathParam("job"))
                        .orElseThrow(
                                () -> Problem.of(404, "There is no such work.").thrown()));
    }

    private void export(Context ctx) {
        send(ctx, archive.logs(), "rushlight.csv");
    }

    private void log(Context ctx) {
        LogId id = new LogId(ctx.pathParam("evaluator"), ctx.pathParam("prospect"), ctx.pathParam("game"));
        Optional<Log> log = archive.log(id);
        send(
                ctx,
                List.of(log.orElseThrow(
                        () -> Problem.of(404, "There is no such log.").thrown())),
                "log.csv");
    }

    private void send(Context ctx, Collection<Log> logs, String name) {
        Accepts.check(ctx, List.of(CSV));
        ctx.contentType(CSV + "; charset=utf-8").header("Content-Disposition", "attachment; filename=\"" + name + "\"");
        try {
            Writer out = new OutputStreamWriter(ctx.outputStream(), StandardCharsets.UTF_8);
            FilmLogWriter.of(archive.book().taxonomy().film()).write(logs, out);
            out.flush();
        } catch (IOException e) {
            throw new UncheckedIOException("The reader of the CSV went away.", e);
        }
    }
}

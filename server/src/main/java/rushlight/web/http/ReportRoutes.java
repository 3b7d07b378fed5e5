package rushlight.web.http;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.archive.Plans;
import rushlight.archive.ReportSheets;
import rushlight.film.Prospect;
import rushlight.report.prospect.Chapters;
import rushlight.report.prospect.Material;
import rushlight.report.prospect.Paper;
import rushlight.report.prospect.Part;
import rushlight.report.prospect.ProspectReports;
import rushlight.report.prospect.Written;
import rushlight.web.ChaptersAnswer;
import rushlight.web.ReportAnswer;
import rushlight.web.ReportMaterial;
import rushlight.web.ReportPlans;
import rushlight.web.StandingPlans;

/** One prospect on two pages: what the evaluator puts in, the page, the PDF, and his reps as chapters. */
final class ReportRoutes {
    /** What is sent to be kept. */
    record In(
            @Nullable String summary,
            @Nullable String author,
            @Nullable List<String> parts) {}

    private static final int LONGEST_NAME = 120;

    private final Archive archive;
    private final FilmVersion version;
    private final ReportSheets sheets;
    private final ProspectReports reports;
    private final ReportPlans plans;
    private final Plans kept;

    ReportRoutes(Archive archive, FilmVersion version) {
        this.archive = archive;
        this.version = version;
        this.sheets = ReportSheets.of(archive);
        Book book = archive.book();
        this.reports = new ProspectReports(book.ontology(), book.taxonomy(), book.handbook());
        this.plans = new StandingPlans(archive, new RememberedPlans(ReportPlans.made(book), version::now));
        this.kept = Plans.of(archive);
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/prospects/{id}/report", this::sheet),
                Route.put("/api/prospects/{id}/report", this::keep),
                Route.get("/api/prospects/{id}/report.html", this::html),
                Route.get("/api/prospects/{id}/report.pdf", this::pdf),
                Route.post("/api/prospects/{id}/report/preview", this::preview),
                Route.get("/api/prospects/{id}/clips", this::clips),
                Route.get("/api/prospects/{id}/clips.vtt", this::vtt));
    }

    private void sheet(Context ctx) {
        answer(ctx, material(ctx));
    }

    private void answer(Context ctx, Material material) {
        ReportSheets.Sheet sheet = sheets.of(ctx.pathParam("id"));
        ctx.header("Cache-Control", "no-cache").header("ETag", ReportAnswer.etag(sheet));
        Versions.json(ctx, ReportAnswer.of(material, sheet, archive.book().taxonomy()));
    }

    private void keep(Context ctx) {
        Material material = material(ctx);
        String match = Versions.changed(ctx, "report");
        In in = Body.json(ctx, In.class);
        String summary = text("summary", in.summary(), Written.LONGEST);
        String author = text("author", in.author(), LONGEST_NAME);
        List<String> parts = parts(Objects.requireNonNullElse(in.parts(), List.of()));
        ReportSheets.Sheet now = sheets.of(ctx.pathParam("id"));
        boolean isKept = Versions.matches(match, ReportAnswer.etag(now))
                && sheets.keep(ctx.pathParam("id"), summary, author, parts, now.revision())
                        .isPresent();
        if (!isKept) {
            throw Problem.of(
                            412,
                            "Somebody changed this report after you opened it. Yours was not kept: copy your words,"
                                    + " open it again and save.")
                    .thrown();
        }
        answer(ctx, material);
    }

    private static String text(String name, @Nullable String given, int longest) {
        String text = Objects.requireNonNullElse(given, "").strip();
        if (text.length() > longest) {
            throw Problem.of(
                            422,
                            "\"" + name + "\" has " + text.length() + " characters; two pages have room for " + longest
                                    + ".")
                    .thrown();
        }
        return text;
    }

    private static List<String> parts(List<String> given) {
        List<String> known = Part.all().stream().map(Part::slug).toList();
        Set<String> strangers =
                given.stream().filter(part -> !known.contains(part)).collect(Collectors.toSet());
        if (!strangers.isEmpty()) {
            throw Problem.of(
                            422,
                            "A report has no part \"" + strangers.iterator().next() + "\".")
                    .withNearest(known)
                    .thrown();
        }
        return given.stream().distinct().toList();
    }

    private void html(Context ctx) {
        Paper paper = paper(ctx);
        if (isNew(ctx, paper, "html")) {
            StyledPage.send(ctx, reports.html(planned(material(ctx)), paper));
        }
    }

    private void pdf(Context ctx) {
        Paper paper = paper(ctx);
        if (isNew(ctx, paper, "pdf")) {
            Material material = planned(material(ctx));
            ctx.header(
                    "Content-Disposition",
                    "inline; filename=\""
                            + material.assessment().prospect().id().replaceAll("[^A-Za-z0-9-]", "-") + ".pdf\"");
            ctx.contentType("application/pdf")
                    .result(reports.print(material, paper).pdf());
        }
    }

    /** Whether the browser lacks this version of the report: it changes with the film, the book, the sheet and the plan. */
    private boolean isNew(Context ctx, Paper paper, String form) {
        long sheet = sheets.of(ctx.pathParam("id")).revision();
        ctx.header("Cache-Control", "no-cache");
        String film = Versions.plain(version.now());
        int plan = kept.newest(ctx.pathParam("id"));
        return !Versions.isKnown(
                ctx, "W/\"" + film + "-" + sheet + "-" + plan + "-" + paper.slug() + "-" + form + "\"");
    }

    private void clips(Context ctx) {
        Material material = material(ctx);
        Versions.json(ctx, ChaptersAnswer.of(ctx.pathParam("id"), Chapters.of(material.assessment())));
    }

    private void vtt(Context ctx) {
        List<Chapters.Film> films = Chapters.of(material(ctx).assessment());
        String video = Request.word(ctx, "video")
                .orElseThrow(
                        () -> Problem.of(400, "Say with video= which film.").thrown());
        Chapters.Film film = films.stream()
                .filter(one -> one.video().equals(video))
                .findFirst()
                .orElseThrow(() -> Problem.of(404, "None of his reps that stand for something is on that film.")
                        .withNearest(films.stream().map(Chapters.Film::video).toList())
                        .thrown());
        ctx.header("Content-Disposition", "inline; filename=\"" + film.fileName() + "\"");
        ctx.contentType("text/vtt").result(film.vtt());
    }

    private static Paper paper(Context ctx) {
        return paper(Request.word(ctx, "paper"));
    }

    private static Paper paper(Optional<String> word) {
        return word.map(one -> Paper.of(one)
                        .orElseThrow(() ->
                                Problem.of(400, "\"paper\" is letter or a4.").thrown()))
                .orElse(Paper.LETTER);
    }

    /** The report as it would be with what a form sends; nothing is kept. */
    private void preview(Context ctx) {
        if (!Body.mediaType(ctx).equals("application/x-www-form-urlencoded")) {
            throw Problem.of(415, "Send a form, as Content-Type: application/x-www-form-urlencoded.")
                    .thrown();
        }
        Paper paper = paper(Optional.ofNullable(ctx.formParam("paper")));
        ReportSheets.Sheet now = sheets.of(ctx.pathParam("id"));
        String sent = Objects.requireNonNullElse(ctx.formParam("summary"), "");
        String summary = text("summary", sent.replace("\r\n", "\n"), Written.LONGEST);
        String author = text("author", ctx.formParam("author"), LONGEST_NAME);
        boolean isKept = summary.equals(now.summary()) && author.equals(now.author());
        ReportSheets.Sheet draft = new ReportSheets.Sheet(
                summary,
                author,
                parts(ctx.formParams("parts")),
                now.revision(),
                isKept ? now.when() : Optional.of(Instant.now()));
        Material material = material(ctx).with(ReportMaterial.written(draft));
        ctx.header("Cache-Control", "no-store");
        StyledPage.send(ctx, reports.html(planned(material), paper));
    }

    private Material planned(Material material) {
        return ReportMaterial.with(material, plans);
    }

    private Material material(Context ctx) {
        String id = ctx.pathParam("id");
        return ReportMaterial.of(archive, id)
                .orElseThrow(() -> FilmRoutes.noFilm(
                        id, archive.prospects().stream().map(Prospect::id).toList()));
    }
}

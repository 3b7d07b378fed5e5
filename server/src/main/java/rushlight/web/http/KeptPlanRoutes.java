package rushlight.web.http;

import io.javalin.http.Context;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import rushlight.archive.Archive;
import rushlight.archive.Plans;
import rushlight.findings.Assessment;
import rushlight.report.practice.FieldSheet;
import rushlight.report.practice.Practice;
import rushlight.report.practice.PracticeCalendar;
import rushlight.store.KeptPlans;
import rushlight.web.Json;
import rushlight.web.KeptPlanAnswer;
import rushlight.web.PlanChangeIn;
import rushlight.web.PlanSheet;
import rushlight.web.Practices;

/** The plan that is kept of a prospect: looked at, changed, taken back, brought back, put into a calendar and on paper. */
final class KeptPlanRoutes {
    private static final String HOME = "/api/prospects/{id}/plan";
    private static final int LONGEST_NOTE = 1_000;
    private static final int LONGEST_NAME = 120;

    private final Archive archive;
    private final Planning planning;
    private final Plans plans;
    private final FieldSheet paper = new FieldSheet();

    KeptPlanRoutes(Archive archive, Planning planning) {
        this.archive = archive;
        this.planning = planning;
        this.plans = Plans.of(archive);
    }

    List<Route> routes() {
        return List.of(
                Route.get(HOME, this::look),
                Route.put(HOME, this::keep),
                Route.delete(HOME, this::takeBack),
                Route.post(HOME + "/restore", this::restore),
                Route.get(HOME + ".ics", this::calendar),
                Route.get(HOME + ".html", this::sheet));
    }

    private void look(Context ctx) {
        List<KeptPlans.Kept> history = history(ctx);
        Optional<KeptPlans.Kept> one = Request.word(ctx, "version").isPresent()
                ? Optional.of(version(ctx, history))
                : history.stream().findFirst();
        answer(ctx, history, one);
    }

    private void answer(Context ctx, List<KeptPlans.Kept> history, Optional<KeptPlans.Kept> one) {
        KeptPlanAnswer answer = KeptPlanAnswer.of(
                ctx.pathParam("id"), history, one, archive.store().revision());
        ctx.header("Cache-Control", "no-cache").header("ETag", answer.etag());
        Versions.json(ctx, answer);
    }

    private void keep(Context ctx) {
        Assessment assessment = planning.assessment(ctx);
        int version = changed(ctx, history(ctx));
        PlanChangeIn in = Body.json(ctx, PlanChangeIn.class);
        String note = Body.text("note", in.note(), LONGEST_NOTE);
        String by = Body.text("by", in.by(), LONGEST_NAME);
        String sheet = Json.compact(PlanSheet.of(planning.sound(assessment, in)));
        done(ctx, plans.keep(id(ctx), new Plans.Written(Json.compact(in.asked()), sheet, by, note), version));
    }

    private void takeBack(Context ctx) {
        List<KeptPlans.Kept> history = history(ctx);
        int version = changed(ctx, history);
        if (history.isEmpty() || history.get(0).takenBack()) {
            throw Problem.of(404, "No plan of his is kept.").thrown();
        }
        done(ctx, plans.takeBack(history.get(0), version));
    }

    private void restore(Context ctx) {
        List<KeptPlans.Kept> history = history(ctx);
        int version = changed(ctx, history);
        done(ctx, plans.bringBack(version(ctx, history), version));
    }

    private void done(Context ctx, Optional<KeptPlans.Kept> now) {
        if (now.isEmpty()) {
            throw stale();
        }
        answer(ctx, history(ctx), now);
    }

    private void calendar(Context ctx) {
        KeptPlans.Kept one = version(ctx, history(ctx));
        PracticeCalendar calendar = new PracticeCalendar(practice(one), at(ctx));
        if (!calendar.hasDates()) {
            throw Problem.of(422, "A calendar wants dates: name the first day of the plan and keep it again.")
                    .thrown();
        }
        StringWriter text = new StringWriter();
        calendar.write(text, one.when());
        ctx.header("Content-Disposition", "attachment; filename=\"" + file(ctx) + ".ics\"");
        ctx.contentType("text/calendar; charset=utf-8").result(text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private void sheet(Context ctx) {
        StyledPage.send(ctx, paper.of(practice(version(ctx, history(ctx)))));
    }

    private Practice practice(KeptPlans.Kept one) {
        PlanSheet sheet;
        try {
            sheet = PlanSheet.of(one);
        } catch (IllegalArgumentException e) {
            throw Problem.of(409, "This plan was kept by another edition of the program. Plan again and keep it.")
                    .thrown();
        }
        return new Practices(archive.book().taxonomy(), archive.book().training()).of(sheet);
    }

    private static Optional<LocalTime> at(Context ctx) {
        return Request.word(ctx, "at").map(text -> {
            try {
                return LocalTime.parse(text);
            } catch (DateTimeException e) {
                throw Problem.of(400, "\"at\" is a time of the day such as 15:30.")
                        .thrown();
            }
        });
    }

    /** The version of an address; the newest one that stands where none is named. */
    private static KeptPlans.Kept version(Context ctx, List<KeptPlans.Kept> history) {
        Optional<String> named = Request.word(ctx, "version");
        int wanted = Request.number(ctx, "version", 0, 0, Integer.MAX_VALUE);
        return history.stream()
                .filter(one ->
                        named.isPresent() ? one.version() == wanted : !one.takenBack() && one.equals(history.get(0)))
                .findFirst()
                .orElseThrow(() -> Problem.of(
                                404,
                                named.isPresent()
                                        ? "No plan of his has the version " + wanted + "."
                                        : "No plan of his is kept.")
                        .thrown());
    }

    private List<KeptPlans.Kept> history(Context ctx) {
        if (archive.store().prospect(id(ctx)).isEmpty()) {
            planning.assessment(ctx);
        }
        return plans.history(id(ctx));
    }

    /** The version that a request changes: that of its If-Match, where it is the newest. */
    private static int changed(Context ctx, List<KeptPlans.Kept> history) {
        String match = Versions.changed(ctx, "plan");
        int newest = history.isEmpty() ? 0 : history.get(0).version();
        if (!Versions.matches(match, KeptPlanAnswer.etag(newest))) {
            throw stale();
        }
        return newest;
    }

    private static ProblemException stale() {
        return Problem.of(
                        412,
                        "Somebody kept another plan of his after you opened this one. Yours was not kept: look at what"
                                + " stands there, then keep again.")
                .thrown();
    }

    private static String id(Context ctx) {
        return ctx.pathParam("id");
    }

    private static String file(Context ctx) {
        return id(ctx).replaceAll("[^A-Za-z0-9-]", "-") + "-plan";
    }
}

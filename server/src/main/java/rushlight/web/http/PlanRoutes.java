package rushlight.web.http;

import io.javalin.http.Context;
import java.util.List;
import rushlight.archive.Archive;
import rushlight.findings.Assessment;
import rushlight.web.JobAnswer;
import rushlight.web.PlanChangeIn;
import rushlight.web.PlanCheckAnswer;
import rushlight.web.PlanChoices;
import rushlight.web.PlanIn;
import rushlight.web.PlanSheet;

/** What can be chosen for a plan, plans made of what was chosen, and sessions changed by hand held against the limits. */
final class PlanRoutes {
    private final Archive archive;
    private final Planning planning;
    private final Jobs jobs;

    PlanRoutes(Archive archive, Planning planning, Jobs jobs) {
        this.archive = archive;
        this.planning = planning;
        this.jobs = jobs;
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/plan/choices", this::choices),
                Route.post("/api/prospects/{id}/plan", this::make),
                Route.post("/api/prospects/{id}/plan/check", this::check));
    }

    private void choices(Context ctx) {
        Versions.json(ctx, PlanChoices.of(archive.book().training()));
    }

    private void make(Context ctx) {
        Assessment assessment = planning.assessment(ctx);
        PlanIn in = Body.json(ctx, PlanIn.class);
        Planning.meant(in::request);
        if (Jobs.areWanted(ctx)) {
            JobAnswer job = jobs.beginPlan(progress -> sheet(assessment, in, progress));
            Jobs.accepted(ctx, job);
        } else {
            Versions.json(ctx, sheet(assessment, in, (step, done) -> {}));
        }
    }

    private PlanSheet sheet(Assessment assessment, PlanIn in, Jobs.Progress progress) {
        return PlanSheet.of(
                assessment.prospect(),
                planning.plan(assessment, in, progress::tell),
                archive.book().training().notices());
    }

    private void check(Context ctx) {
        Assessment assessment = planning.assessment(ctx);
        Versions.json(ctx, PlanCheckAnswer.of(planning.held(assessment, Body.json(ctx, PlanChangeIn.class))));
    }
}

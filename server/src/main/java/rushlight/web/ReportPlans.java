package rushlight.web;

import rushlight.archive.Book;
import rushlight.findings.Assessment;
import rushlight.plan.PlanRequest;
import rushlight.report.prospect.Material;

/** Which plan a report tells of. */
@FunctionalInterface
public interface ReportPlans {
    /** The plan for the man of this assessment, or why there is none. */
    Material.Planned of(Assessment assessment);

    /** The plan of a request that leaves everything open, made when it is asked for. */
    static ReportPlans made(Book book) {
        return assessment -> new Material.Planned(book.planner().plan(assessment, PlanRequest.open()), "");
    }
}

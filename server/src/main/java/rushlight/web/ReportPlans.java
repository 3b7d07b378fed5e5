package rushlight.web;

import rushlight.archive.Book;
import rushlight.findings.Assessment;
import rushlight.plan.PlanAnswer;
import rushlight.plan.PlanRequest;

/**
 * Which plan a report tells of: that of a request that leaves everything open. A plan that somebody kept has a sheet of its own.
 */
@FunctionalInterface
public interface ReportPlans {
    /** The plan for the man of this assessment, or why there is none. */
    PlanAnswer of(Assessment assessment);

    /** The plan of a request that leaves everything open, made when it is asked for. */
    static ReportPlans made(Book book) {
        return assessment -> book.planner().plan(assessment, PlanRequest.open());
    }
}

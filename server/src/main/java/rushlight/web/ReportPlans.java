package rushlight.web;

import rushlight.archive.Book;
import rushlight.findings.Assessment;
import rushlight.plan.PlanAnswer;
import rushlight.plan.PlanRequest;

/**
 * Which plan a report tells of. This is the place for a plan that somebody kept: until one is, it is the plan of a request that
 * leaves everything open.
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

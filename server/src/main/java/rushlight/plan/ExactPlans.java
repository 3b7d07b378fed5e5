package rushlight.plan;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Schedules by constraint solving. One worker, a fixed seed and a limit that counts work and not time: the same task gives the
 * same schedule on every run. The limit is {@value #WORK} for a schedule and {@value #WORK_OF_A_QUESTION} for a question about
 * rules that clash, in units of the solver that take a second or less.
 */
final class ExactPlans {
    /** The most work for a schedule, in the solver's own units. */
    static final double WORK = 3.0;
    /** The most work for one question about a clash. */
    static final double WORK_OF_A_QUESTION = 1.0;

    private ExactPlans() {}

    /** Whether the solver's library can be loaded on this machine. */
    static boolean available() {
        try {
            Loader.loadNativeLibraries();
            return true;
        } catch (RuntimeException | LinkageError missing) {
            return false;
        }
    }

    /**
     * Solves a task; the library must be there.
     *
     * @param tell whether to look for the rules that clash where there is no schedule
     */
    static Schedule solve(PlanTask task, boolean tell) {
        CpPlan plan = new CpPlan(task, Set.of(), false);
        plan.maximizeWorth();
        CpSolver solver = solver(WORK);
        CpSolverStatus status = solver.solve(plan.model);
        if (status == CpSolverStatus.INFEASIBLE) {
            return tell ? clash(task) : new Schedule.Clash(List.of(), List.of(), List.of());
        }
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
            return new Schedule.Unknown("the search ended at its limit of work without a schedule and without a proof");
        }
        List<List<String>> sessions = new ArrayList<>();
        for (int t = 0; t < plan.sessions; t++) {
            int session = t;
            sessions.add(task.exercises().stream()
                    .filter(e -> solver.booleanValue(plan.stands(e, session)))
                    .map(Exercise::slug)
                    .toList());
        }
        boolean best = status == CpSolverStatus.OPTIMAL;
        return new Schedule.Found(
                sessions,
                (int) Math.round(solver.objectiveValue()),
                (int) Math.round(Math.floor(solver.bestObjectiveBound() + 1e-6)),
                best ? Schedule.Proof.BEST : Schedule.Proof.BOUNDED);
    }

    private static Schedule clash(PlanTask task) {
        Set<Rule> out = new HashSet<>();
        List<Rule> clash = new ArrayList<>();
        for (Rule rule : CpPlan.rules(task)) {
            Set<Rule> without = new HashSet<>(out);
            without.add(rule);
            CpPlan plan = new CpPlan(task, without, false);
            if (solver(WORK_OF_A_QUESTION).solve(plan.model) == CpSolverStatus.INFEASIBLE) {
                out.add(rule);
            } else {
                clash.add(rule);
            }
        }
        CpPlan elastic = new CpPlan(task, Set.of(), true);
        elastic.minimizeGivenUp();
        CpSolver solver = solver(WORK);
        CpSolverStatus status = solver.solve(elastic.model);
        boolean known = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        List<Rule> giveUp = new ArrayList<>();
        if (known) {
            elastic.gives().forEach((rule, given) -> {
                if (solver.booleanValue(given)) {
                    giveUp.add(rule);
                }
            });
        }
        return new Schedule.Clash(
                Outright.reasons(task), clash.stream().sorted().toList(), giveUp);
    }

    private static CpSolver solver(double work) {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setNumWorkers(1)
                .setRandomSeed(1)
                .setMaxDeterministicTime(work)
                .setLogSearchProgress(false);
        return solver;
    }
}

package rushlight.web.http;

import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import rushlight.web.ImportReport;
import rushlight.web.JobAnswer;
import rushlight.web.PlanSheet;

/** Long work, one after the other, that one can ask how far it is. */
final class Jobs implements AutoCloseable {
    private static final int REMEMBERED = 100;

    /** Tells how far work is. */
    interface Progress {
        void tell(String step, double done);
    }

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "import");
        thread.setDaemon(true);
        return thread;
    });
    private final Map<String, JobAnswer> jobs = new LinkedHashMap<>() {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, JobAnswer> eldest) {
            return size() > REMEMBERED;
        }
    };
    private final ServerLog log;
    private int last;

    /** What came of work. */
    private record Outcome(Optional<ImportReport> report, Optional<PlanSheet> plan) {}

    /** Work of which nothing is told but what broke. */
    Jobs() {
        this(ServerLog.quiet());
    }

    Jobs(ServerLog log) {
        this.log = log;
    }

    /** Whether a request would rather be told later (RFC 7240, section 4.1). */
    static boolean areWanted(Context ctx) {
        String prefer = ctx.header("Prefer");
        return prefer != null && prefer.contains("respond-async");
    }

    /** Answers that the work has begun, and where to ask how far it is. */
    static void accepted(Context ctx, JobAnswer job) {
        ctx.status(202).header("Location", "/api/jobs/" + job.job()).header("Preference-Applied", "respond-async");
        Versions.json(ctx, job);
    }

    /** Begins an import and gives its first answer. */
    JobAnswer begin(Function<Progress, ImportReport> work) {
        return started(progress -> new Outcome(Optional.of(work.apply(progress)), Optional.empty()));
    }

    /** Begins the search for a plan and gives its first answer. */
    JobAnswer beginPlan(Function<Progress, PlanSheet> work) {
        return started(progress -> new Outcome(Optional.empty(), Optional.of(work.apply(progress))));
    }

    private JobAnswer started(Function<Progress, Outcome> work) {
        JobAnswer begun;
        synchronized (jobs) {
            last++;
            begun = running(Integer.toString(last), "Waiting", 0);
            jobs.put(begun.job(), begun);
        }
        worker.execute(() -> run(begun.job(), work));
        return begun;
    }

    /** How far work is. */
    Optional<JobAnswer> job(String name) {
        synchronized (jobs) {
            return Optional.ofNullable(jobs.get(name));
        }
    }

    /** Lets what was begun end, as long as the server may take to stop. */
    @Override
    public void close() {
        worker.shutdown();
        try {
            if (!worker.awaitTermination(Server.STOPS_WITHIN.toSeconds(), TimeUnit.SECONDS)) {
                log.say("stopped-before-an-import-ended");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run(String name, Function<Progress, Outcome> work) {
        try {
            Outcome outcome = work.apply((step, done) -> put(running(name, step, done)));
            put(new JobAnswer(name, "done", "Done", 1, outcome.report(), outcome.plan(), Optional.empty()));
        } catch (ProblemException e) {
            put(failed(name, e.problem()));
        } catch (RuntimeException e) {
            log.broke("Long work", "job " + name, e);
            put(failed(
                    name,
                    Problems.unwritable(e)
                            .orElse(Problem.of(500, "Something broke; nothing was half stored. The log says where."))));
        }
    }

    private static JobAnswer running(String name, String step, double done) {
        return new JobAnswer(name, "running", step, done, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static JobAnswer failed(String name, Problem problem) {
        return new JobAnswer(name, "failed", "Failed", 1, Optional.empty(), Optional.empty(), Optional.of(problem));
    }

    private void put(JobAnswer answer) {
        synchronized (jobs) {
            jobs.put(answer.job(), answer);
        }
    }
}

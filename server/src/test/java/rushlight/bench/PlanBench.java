package rushlight.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import rushlight.archive.Archive;
import rushlight.archive.Book;
import rushlight.archive.DemoLeague;
import rushlight.findings.Assessment;
import rushlight.plan.PlanAnswer;
import rushlight.plan.PlanRequest;
import rushlight.plan.Planner;

/** Plans the weeks of every prospect of the demo league; prints how long each took and what is proven of it. */
public final class PlanBench {
    private static final double A_SECOND = 1e9;

    private PlanBench() {}

    /** Arguments: the weeks to plan (4 and 8). */
    public static void main(String[] args) throws IOException {
        List<Integer> weeks = args.length == 0
                ? List.of(4, 8)
                : List.of(args).stream().map(Integer::valueOf).toList();
        Book book = Book.packaged();
        List<Assessment> league;
        Path folder = Files.createTempDirectory("plan-bench");
        try (Archive archive = Archive.open(folder)) {
            DemoLeague.into(archive);
            league = archive.assess();
        }
        Planner planner = book.planner();
        for (int number : weeks) {
            double most = 0;
            for (Assessment one : league) {
                long wall = System.nanoTime();
                long before = cpu();
                PlanAnswer answer = planner.plan(one, request(number));
                double took = (System.nanoTime() - wall) / A_SECOND;
                double worked = (cpu() - before) / A_SECOND;
                most = Math.max(most, took);
                System.out.printf(
                        Locale.ROOT,
                        "%d weeks  %-20s %5.1f s  CPU %5.1f s  %s%n",
                        number,
                        one.prospect().name(),
                        took,
                        worked,
                        said(answer));
            }
            System.out.printf(Locale.ROOT, "%d weeks: the slowest %.1f s%n", number, most);
        }
    }

    /** Of the whole process: the solver works in a thread of its own. */
    private static long cpu() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    private static PlanRequest request(int weeks) {
        PlanRequest open = PlanRequest.open();
        PlanRequest.Time time = new PlanRequest.Time(
                Optional.empty(), OptionalInt.of(weeks), OptionalInt.of(3), OptionalInt.empty(), Optional.empty());
        return new PlanRequest(time, open.there(), open.rules(), open.wants());
    }

    private static String said(PlanAnswer answer) {
        if (answer instanceof PlanAnswer.Made made) {
            var plan = made.plan();
            return plan.work().targets().size() + " skills, " + plan.blocks().count() + " sets, "
                    + plan.result().words();
        }
        return answer.toString();
    }
}

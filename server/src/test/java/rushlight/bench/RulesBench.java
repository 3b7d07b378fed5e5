package rushlight.bench;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.film.RepId;
import rushlight.film.Step;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Taxonomy;
import rushlight.rules.RepRules;

/**
 * Reps a second through the rules, on one thread, logs of a given length. Arguments: reps in all (20000), reps a log (65).
 */
public final class RulesBench {
    private static final Set<String> CHARTED = Set.of("help", "faults", "results", "direction", "chances");

    private final Taxonomy taxonomy;
    private final Random random = new Random(20260101);

    private RulesBench(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    public static void main(String[] args) {
        int reps = args.length > 0 ? Integer.parseInt(args[0]) : 20_000;
        int log = args.length > 1 ? Integer.parseInt(args[1]) : 65;
        Ontology book = Ontology.packaged();
        Taxonomy taxonomy = Taxonomy.of(book);
        RepRules rules = RepRules.of(book, taxonomy);
        RulesBench bench = new RulesBench(taxonomy);
        for (int round = 1; round <= 4; round++) {
            List<List<Reading>> logs = bench.logs(reps, log);
            long start = System.nanoTime();
            long cpu = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            long classes = 0;
            for (List<Reading> readings : logs) {
                for (RepFacts facts : rules.classify(readings, CHARTED)) {
                    classes += facts.tagged("repClass").size();
                }
            }
            double seconds = (System.nanoTime() - start) / 1e9;
            double busy = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - cpu) / 1e9;
            System.out.printf(
                    "round %d: %d reps in logs of %d, %.2f s (%.2f s CPU), %.0f reps/s (%.0f a CPU second), %.1f classes a rep%n",
                    round, reps, log, seconds, busy, reps / seconds, reps / busy, (double) classes / reps);
        }
        Reading one = bench.logs(1, 1).get(0).get(0);
        long start = System.nanoTime();
        for (int i = 0; i < 200; i++) {
            rules.explain(one, CHARTED);
        }
        System.out.printf("explained one rep in %.2f ms%n", (System.nanoTime() - start) / 200e6);
    }

    private List<List<Reading>> logs(int reps, int length) {
        List<List<Reading>> logs = new ArrayList<>();
        for (int from = 0; from < reps; from += length) {
            List<Reading> log = new ArrayList<>();
            for (int i = from; i < Math.min(reps, from + length); i++) {
                log.add(i % 5 < 3 ? rush(i) : run(i));
            }
            logs.add(log);
        }
        return logs;
    }

    private Reading rush(int i) {
        List<Step> steps = new ArrayList<>();
        steps.add(his("RushMove"));
        steps.add(blockers("BlockerBehavior"));
        if (random.nextInt(2) == 0) {
            steps.add(his("RushMove"));
        }
        Map<String, List<String>> tags = new HashMap<>(Map.of(
                "phase", List.of("pass-rush"),
                "play", List.of("dropback"),
                "blocker", List.of("left-tackle"),
                "assignment", List.of("free-rush-assignment"),
                "second_move_time", List.of(random.nextInt(3) == 0 ? "no" : "yes"),
                "result", List.of(List.of("won", "even", "lost").get(random.nextInt(3)))));
        tags.put("faults", random.nextInt(3) == 0 ? List.of(any("Fault")) : List.of());
        tags.put("results", List.of(any("Result")));
        return reading(i, tags, steps);
    }

    private Reading run(int i) {
        List<Step> steps = new ArrayList<>();
        steps.add(blockers("RunBlock"));
        steps.add(his("RunFit"));
        if (random.nextInt(3) == 0) {
            steps.add(his("RunFit"));
        }
        Map<String, List<String>> tags = new HashMap<>(Map.of(
                "phase", List.of("run"),
                "direction", List.of(random.nextInt(2) == 0 ? "run-at-him" : "run-away"),
                "movement", List.of("no"),
                "blocker", List.of("tight-end")));
        if (random.nextInt(4) > 0) {
            tags.put("assignment", List.of(any("Assignment")));
        }
        tags.put("faults", random.nextInt(3) == 0 ? List.of(any("Fault")) : List.of());
        tags.put("results", List.of(any("Result")));
        return reading(i, tags, steps);
    }

    private static Reading reading(int i, Map<String, List<String>> tags, List<Step> steps) {
        return new Reading(new RepId("p", "g", "r" + i), "bench", tags, steps);
    }

    private Step his(String of) {
        return new Step(Step.By.HIM, any(of), Optional.empty());
    }

    private Step blockers(String of) {
        return new Step(Step.By.BLOCKER, any(of), Optional.empty());
    }

    private String any(String of) {
        List<Concept> all = taxonomy.ofClass(of);
        return all.get(random.nextInt(all.size())).slug();
    }
}

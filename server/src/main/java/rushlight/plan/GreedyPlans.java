package rushlight.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/**
 * Schedules without a solver: checks and pins first, then session after session whatever is worth most and breaks nothing.
 * Several tries with a little noise from a fixed seed; the best that keeps every rule is kept. Nothing is proven of it.
 */
final class GreedyPlans {
    private static final int TRIES = 60;
    private static final long SEED = 20_260_101L;

    private final PlanTask task;
    private final Map<String, Exercise> known;

    private GreedyPlans(PlanTask task) {
        this.task = task;
        this.known = task.bySlug();
    }

    static Schedule solve(PlanTask task) {
        GreedyPlans plans = new GreedyPlans(task);
        SplittableRandom random = new SplittableRandom(SEED);
        Optional<Schedule.Found> best = Optional.empty();
        for (int i = 0; i < TRIES; i++) {
            List<List<String>> sessions = plans.attempt(random);
            if (PlanCheck.of(task, sessions).isEmpty()) {
                int worth = Worth.of(task, sessions);
                if (best.isEmpty() || worth > best.get().value()) {
                    best = Optional.of(new Schedule.Found(sessions, worth, worth, Schedule.Proof.NOT_PROVEN));
                }
            }
        }
        List<String> reasons = Outright.reasons(task);
        if (best.isEmpty() && !reasons.isEmpty()) {
            return new Schedule.Unknown(String.join("; ", reasons));
        }
        return best.isPresent()
                ? best.get()
                : new Schedule.Unknown("the simple search found none; the exact one does not run on this machine");
    }

    private List<List<String>> attempt(SplittableRandom random) {
        List<List<String>> sessions = new ArrayList<>();
        task.slots().forEach(slot -> sessions.add(new ArrayList<>()));
        for (Wish wish : task.wishes()) {
            if (wish instanceof Wish.Pin pin) {
                sessions.get(pin.session()).add(pin.exercise());
            }
        }
        List<Exercise> checks = task.exercises().stream()
                .filter(Exercise::check)
                .sorted(noisy(random, e -> -e.people()))
                .toList();
        for (Exercise check : checks) {
            for (int t = sessions.size() - 1; t >= 0 && !placed(sessions, check); t--) {
                tryAt(sessions, t, check);
            }
        }
        for (int t = 0; t < sessions.size(); t++) {
            fill(sessions, t, random);
        }
        return sessions;
    }

    private void fill(List<List<String>> sessions, int t, SplittableRandom random) {
        List<Exercise> drills = task.exercises().stream()
                .filter(e -> !e.check())
                .sorted(noisy(random, e -> -urgency(sessions, t, e)))
                .toList();
        for (Exercise drill : drills) {
            tryAt(sessions, t, drill);
        }
    }

    /** What to do first: what opens the block, what the week would lose, what still lacks sets, then weight. */
    private double urgency(List<List<String>> sessions, int t, Exercise drill) {
        Focus focus = task.foci().stream()
                .filter(f -> f.skill().equals(drill.skill()))
                .findFirst()
                .orElseThrow();
        int week = task.slots().get(t).week();
        int sets = 0;
        boolean thisWeek = false;
        for (int s = 0; s < sessions.size(); s++) {
            for (String slug : sessions.get(s)) {
                Exercise e = known(slug);
                boolean same = e.skill().equals(drill.skill());
                sets += same && !e.check() ? 1 : 0;
                thisWeek |= same && task.slots().get(s).week() == week;
            }
        }
        double urgency = focus.weight() * 0.002 + drill.rank() * 0.2;
        urgency += focus.safety() && t == 0 ? 100 : 0;
        urgency += sets > 0 && !thisWeek ? 5 : 0;
        urgency += sets < focus.fewest() ? 1 : 0;
        urgency += task.foci().stream()
                        .filter(f -> f.first().contains(focus.skill()))
                        .count()
                * 0.3;
        return urgency;
    }

    private void tryAt(List<List<String>> sessions, int t, Exercise exercise) {
        sessions.get(t).add(exercise.slug());
        if (PlanCheck.of(task, sessions).stream().anyMatch(breach -> !breach.lacking())) {
            sessions.get(t).remove(sessions.get(t).size() - 1);
        }
    }

    private static boolean placed(List<List<String>> sessions, Exercise exercise) {
        return sessions.stream().anyMatch(session -> session.contains(exercise.slug()));
    }

    private Exercise known(String slug) {
        return Objects.requireNonNull(known.get(slug));
    }

    private static Comparator<Exercise> noisy(SplittableRandom random, ToDoubleFunction<Exercise> rank) {
        Map<Exercise, Double> ranks = new HashMap<>();
        return Comparator.comparingDouble(
                e -> ranks.computeIfAbsent(e, k -> rank.applyAsDouble(k) + random.nextDouble() * 1.5));
    }
}

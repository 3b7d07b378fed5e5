package rushlight.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Small blocks, each held to what trying every plan finds; and many chance blocks, held to the checker. */
class SmallPlansTest {
    /** More with {@code -Drushlight.plan.cases=500}, which takes half a minute. */
    private static final int CASES = Integer.getInteger("rushlight.plan.cases", 80);

    /** Plans that keep every rule, how many of them are best, and what those are worth. */
    private static final class Tally {
        int plans;
        int best = Integer.MIN_VALUE;
        int bestPlans;
    }

    @Test
    void the_tiny_block_has_48_plans_and_two_of_them_are_worth_470() {
        PlanTask tiny = tiny();
        Tally tally = everyPlan(tiny);
        assertThat(tally.plans).isEqualTo(48);
        assertThat(tally.best).isEqualTo(470);
        assertThat(tally.bestPlans).isEqualTo(2);
        assertThat(((Schedule.Found) Scheduler.best().solve(tiny)).value()).isEqualTo(470);
    }

    @Test
    void what_the_solver_finds_is_what_trying_every_plan_finds() {
        Random random = new Random(7);
        int found = 0;
        for (int i = 0; i < 40; i++) {
            PlanTask task = chance(random, 3 + random.nextInt(2), 2, 4);
            Tally tally = everyPlan(task);
            Schedule schedule = Scheduler.best().solve(task);
            if (tally.plans == 0) {
                assertThat(schedule).as("case %d", i).isInstanceOf(Schedule.Clash.class);
            } else {
                assertThat(((Schedule.Found) schedule).value()).as("case %d", i).isEqualTo(tally.best);
                found++;
            }
        }
        assertThat(found).isBetween(10, 39);
    }

    @Test
    void chance_blocks_give_plans_that_keep_every_rule_or_say_what_clashes() {
        Random random = new Random(11);
        int found = 0;
        for (int i = 0; i < CASES; i++) {
            PlanTask task = chance(random, 4 + random.nextInt(4), 3, 6);
            Schedule exact = Scheduler.best().solve(task);
            Schedule simple = Scheduler.simple().solve(task);
            if (exact instanceof Schedule.Found best) {
                found++;
                assertThat(PlanCheck.of(task, best.sessions())).as("case %d", i).isEmpty();
                if (simple instanceof Schedule.Found other) {
                    assertThat(PlanCheck.of(task, other.sessions())).isEmpty();
                    assertThat(other.value()).as("case %d", i).isLessThanOrEqualTo(best.bound());
                }
            } else {
                assertThat(((Schedule.Clash) exact).clash()).as("case %d", i).isNotEmpty();
                assertThat(simple).as("case %d", i).isInstanceOf(Schedule.Unknown.class);
            }
        }
        assertThat(found).isBetween(CASES / 10, CASES - 1);
    }

    private static PlanTask tiny() {
        List<Slot> slots = new ArrayList<>();
        int[] highest = {1, 2, 2, 3};
        int[] minutes = {10, 10, 10, 11};
        for (int t = 0; t < 4; t++) {
            slots.add(new Slot("session " + (t + 1), 1, 2 * t, minutes[t], highest[t], 9, Set.of(), 0));
        }
        PlanLimits limits = new PlanLimits(3, 3, 99, 99, 99, 2, List.of(1), 9, 2, 1, 1, 2, 2, 3, 9, 999);
        List<Focus> foci = List.of(
                new Focus("A", 100, Set.of("B"), 2, 3, false, false), new Focus("B", 60, Set.of(), 2, 3, false, false));
        List<Exercise> drills = List.of(
                new Exercise("b-bag", "B", 1, 5, 1, Set.of(), 9, false),
                new Exercise("a-bag", "A", 1, 5, 1, Set.of(), 9, false),
                new Exercise("a-control", "A", 2, 5, 1, Set.of(), 9, false),
                new Exercise("a-thud", "A", 3, 6, 1, Set.of(), 9, false));
        return new PlanTask(slots, foci, drills, limits, List.of());
    }

    private static PlanTask chance(Random random, int sessions, int skills, int drills) {
        List<Slot> slots = new ArrayList<>();
        int day = 0;
        for (int t = 0; t < sessions; t++) {
            int week = 1 + t * 2 / sessions;
            int people = 1 + random.nextInt(4);
            int team = random.nextInt(4) == 0 ? 10 : 0;
            Set<String> without = random.nextInt(3) == 0 ? Set.of("sled") : Set.of();
            slots.add(
                    new Slot("s" + t, week, day, 5 + random.nextInt(12), 1 + random.nextInt(3), people, without, team));
            day += 1 + random.nextInt(2);
        }
        List<Focus> foci = new ArrayList<>();
        List<Exercise> exercises = new ArrayList<>();
        for (int k = 0; k < skills; k++) {
            Set<String> first = k > 0 && random.nextInt(2) == 0 ? Set.of("k" + (k - 1)) : Set.of();
            int fewest = random.nextInt(2);
            boolean gap = k == 0 && random.nextInt(2) == 0;
            int most = fewest + 1 + random.nextInt(3);
            foci.add(new Focus(
                    "k" + k, 20 + random.nextInt(80), first, fewest, most, gap, gap && random.nextInt(3) == 0));
            if (gap) {
                exercises.add(new Exercise("check", "k" + k, random.nextInt(3), 4, 1, Set.of(), 1, true));
            }
        }
        for (int d = 0; d < drills; d++) {
            int rank = d < skills ? random.nextInt(2) : random.nextInt(4);
            Set<String> equipment = random.nextInt(4) == 0 ? Set.of("sled") : Set.of();
            int people = 1 + random.nextInt(3);
            exercises.add(new Exercise(
                    "d" + d,
                    "k" + d % skills,
                    rank,
                    4 + random.nextInt(4),
                    people,
                    equipment,
                    1 + random.nextInt(3),
                    false));
        }
        PlanLimits limits = new PlanLimits(
                3,
                2 + random.nextInt(2),
                20,
                30,
                12,
                2,
                List.of(2, 1),
                2,
                2,
                1,
                1,
                1,
                1,
                2,
                3,
                20 + random.nextInt(20));
        List<Wish> wishes = new ArrayList<>();
        if (random.nextInt(4) == 0) {
            wishes.add(new Wish.Pin(random.nextInt(sessions), "d" + random.nextInt(drills)));
        }
        if (random.nextInt(4) == 0) {
            wishes.add(new Wish.Before("d0", "d" + (1 + random.nextInt(drills - 1))));
        }
        return new PlanTask(slots, foci, exercises, limits, wishes);
    }

    private static Tally everyPlan(PlanTask task) {
        Tally tally = new Tally();
        everyPlan(task, new ArrayList<>(), tally);
        return tally;
    }

    private static void everyPlan(PlanTask task, List<List<String>> sessions, Tally tally) {
        int t = sessions.size();
        if (t == task.slots().size()) {
            if (PlanCheck.of(task, sessions).isEmpty()) {
                tally.plans++;
                int worth = Worth.of(task, sessions);
                tally.bestPlans = worth > tally.best ? 1 : tally.bestPlans + (worth == tally.best ? 1 : 0);
                tally.best = Math.max(tally.best, worth);
            }
            return;
        }
        for (List<String> choice : choices(task, t)) {
            sessions.add(choice);
            everyPlan(task, sessions, tally);
            sessions.remove(sessions.size() - 1);
        }
    }

    /** Every set of exercises, none twice, one or none of each skill, that fits the minutes: what else is wrong the checker tells. */
    private static List<List<String>> choices(PlanTask task, int t) {
        List<List<String>> choices = new ArrayList<>();
        int n = task.exercises().size();
        for (int bits = 0; bits < 1 << n; bits++) {
            List<Exercise> items = new ArrayList<>();
            for (int d = 0; d < n; d++) {
                if ((bits >> d & 1) == 1) {
                    items.add(task.exercises().get(d));
                }
            }
            Slot slot = task.slots().get(t);
            boolean fits = items.stream().mapToInt(Exercise::minutes).sum() <= slot.minutes()
                    && items.stream().map(Exercise::skill).distinct().count() == items.size()
                    && items.stream().allMatch(e -> e.rank() <= slot.highest());
            if (fits) {
                choices.add(items.stream().map(Exercise::slug).toList());
            }
        }
        return choices;
    }
}

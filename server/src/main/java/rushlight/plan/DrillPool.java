package rushlight.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.knowledge.Drill;
import rushlight.knowledge.Training;

/** The drills that can be run in the sessions there are, skill by skill, and the check of a skill. */
final class DrillPool {
    static final String CHECK = "check-";

    private final Training training;
    private final List<Slot> slots;
    private final int heaviest;
    private final int lightest;
    private final Map<String, List<Drill>> bySkill = new HashMap<>();

    /**
     * @param heaviest the highest rank that the plan may use at all
     * @param lightest the highest rank with which a skill can be begun
     */
    DrillPool(Training training, List<Slot> slots, int heaviest, int lightest) {
        this.lightest = lightest;
        this.training = training;
        this.slots = List.copyOf(slots);
        this.heaviest = heaviest;
    }

    /** The drills chosen for a skill that fit a session, the lightest first; none where none is light enough to begin with. */
    List<Drill> drills(String skill) {
        return bySkill.computeIfAbsent(skill, s -> {
            List<Drill> fitting = training.drillsFor(s).stream()
                    .filter(d -> d.level().planned() && d.level().rank() <= heaviest)
                    .filter(d -> slots.stream().anyMatch(slot -> fits(d, slot)))
                    .toList();
            return fitting.stream().allMatch(d -> d.level().rank() > lightest) ? List.of() : fitting;
        });
    }

    /** The drill in which a skill is checked: the lightest in which it can be judged, without full contact. */
    Optional<Drill> check(String skill) {
        int from = training.skill(skill).map(s -> s.judgedAt().rank()).orElse(0);
        int last = slots.isEmpty() ? 0 : slots.get(slots.size() - 1).week();
        return drills(skill).stream()
                .filter(d -> d.level().rank() >= from && !d.level().fullContact())
                .filter(d -> slots.stream().anyMatch(slot -> slot.week() == last && fits(d, slot)))
                .min(Comparator.<Drill>comparingInt(d -> d.level().rank())
                        .thenComparingInt(Drill::people)
                        .thenComparing(Drill::slug));
    }

    /** Why nothing trains a skill here; empty where something does. */
    Optional<String> lacks(String skill) {
        if (!drills(skill).isEmpty()) {
            return Optional.empty();
        }
        List<Drill> all = training.drillsFor(skill);
        return Optional.of(
                all.isEmpty()
                        ? "The book has no drill for it."
                        : "No session has what its drills take: "
                                + all.stream().limit(3).map(DrillPool::takes).collect(Collectors.joining("; ")) + ".");
    }

    /** The exercises of a target. */
    List<Exercise> exercises(String skill, int mostSets, int mostInAll, boolean withCheck) {
        List<Exercise> exercises = new ArrayList<>();
        long light =
                drills(skill).stream().filter(d -> !d.level().fullContact()).count();
        for (Drill d : drills(skill)) {
            exercises.add(exercise(d, d.slug(), skill, light <= 1 ? mostInAll : mostSets, false));
        }
        if (withCheck) {
            check(skill).ifPresent(d -> exercises.add(exercise(d, CHECK + skill, skill, 1, true)));
        }
        return exercises;
    }

    private static Exercise exercise(Drill d, String slug, String skill, int most, boolean check) {
        Set<String> equipment =
                d.equipment().stream().map(Drill.Equipment::slug).collect(Collectors.toSet());
        return new Exercise(slug, skill, d.level().rank(), d.minutes(), d.people(), equipment, most, check);
    }

    private static boolean fits(Drill d, Slot slot) {
        return d.level().rank() <= slot.highest()
                && d.people() <= slot.people()
                && d.minutes() <= slot.minutes()
                && d.equipment().stream().noneMatch(e -> slot.without().contains(e.slug()));
    }

    private static String takes(Drill d) {
        String gear = d.equipment().stream().map(Drill.Equipment::label).collect(Collectors.joining(", "));
        return d.label() + " takes " + d.minutes() + " min, " + d.people() + (d.people() == 1 ? " man" : " men")
                + ", contact " + d.level().label() + (gear.isEmpty() ? "" : ", " + gear);
    }
}

package rushlight.plan;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import rushlight.knowledge.Taxonomy;

/** Holds sessions that a person changed against the task they were made from; the task is found again by its skills. */
final class ByHand {
    /** More in one session is no session any more. */
    private static final int MOST_BLOCKS = 20;

    /** Makes weeks of a schedule. */
    interface Assembler {
        Plan plan(Work work, PlanTask task, Schedule.Found found);
    }

    private final Taxonomy taxonomy;
    private final Tasking tasking;

    ByHand(Taxonomy taxonomy, Tasking tasking) {
        this.taxonomy = taxonomy;
        this.tasking = tasking;
    }

    PlanByHand held(List<String> skills, List<List<String>> sessions, OptionalInt bound, Assembler assembler) {
        Optional<Work> work = work(Set.copyOf(skills));
        if (work.isEmpty()) {
            return refused(
                    "The film, the book or what was asked for has changed since this plan was made. Plan again.");
        }
        PlanTask task = tasking.task(work.get());
        if (sessions.size() != task.slots().size()) {
            return refused("These weeks have " + task.slots().size() + " sessions, but " + sessions.size()
                    + " were sent. Plan again.");
        }
        Map<String, Exercise> known = task.bySlug();
        Optional<String> stranger = sessions.stream()
                .flatMap(List::stream)
                .filter(slug -> !known.containsKey(slug))
                .findFirst();
        if (stranger.isPresent()) {
            return refused("\"" + name(stranger.get()) + "\" is not among the drills of this plan. Plan again.");
        }
        if (sessions.stream().anyMatch(session -> session.size() > MOST_BLOCKS)) {
            return refused("A session has at most " + MOST_BLOCKS + " blocks.");
        }
        List<Breach> breaches = PlanCheck.of(task, sessions, this::name);
        return new PlanByHand.Held(assembler.plan(work.get(), task, found(task, sessions, bound)), breaches);
    }

    private static Schedule.Found found(PlanTask task, List<List<String>> sessions, OptionalInt bound) {
        int value = Worth.of(task, sessions);
        if (bound.isEmpty() || bound.getAsInt() < value) {
            return new Schedule.Found(sessions, value, value, Schedule.Proof.NOT_PROVEN);
        }
        return new Schedule.Found(
                sessions,
                value,
                bound.getAsInt(),
                bound.getAsInt() == value ? Schedule.Proof.BEST : Schedule.Proof.BOUNDED);
    }

    /** The choice with these skills, among those that the search goes through. */
    private Optional<Work> work(Set<String> skills) {
        int room = tasking.room();
        while (room >= 1) {
            Work work = tasking.work(room);
            Set<String> its = work.targets().stream().map(Work.Target::skill).collect(Collectors.toSet());
            if (!its.isEmpty() && its.equals(skills)) {
                return Optional.of(work);
            }
            room = Math.min(room, its.size()) - 1;
        }
        return Optional.empty();
    }

    private String name(String slug) {
        return slug.startsWith(DrillPool.CHECK)
                ? "the check of " + taxonomy.label(slug.substring(DrillPool.CHECK.length()))
                : taxonomy.label(slug).toLowerCase(Locale.ROOT);
    }

    private static PlanByHand refused(String why) {
        return new PlanByHand.Refused(List.of(why));
    }
}

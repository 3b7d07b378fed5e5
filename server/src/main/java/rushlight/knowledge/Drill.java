package rushlight.knowledge;

import java.util.List;

/**
 * Something done in practice to train skills, with what it takes to run it.
 *
 * @param slug the drill
 * @param label its name
 * @param trains slugs of the skills it trains; the one it is chosen for stands first, the others follow in order of their slugs
 * @param phase slug of the step of the progression it belongs to
 * @param phaseOrder the place of that step, 1 for the first
 * @param level the contact level it is run at
 * @param equipment what it cannot be run without, in order of the slugs; empty where open ground is enough
 * @param people how many men it takes, the man himself among them, the coach not
 * @param minutes one set with setting up and talking, in minutes
 * @param repetitions reps of one set; 0 where nothing is said
 * @param success when a set was good; empty where nothing is said
 * @param hazards what can hurt, in order of the slugs
 * @param support {@code strong}, {@code fair} or {@code common-practice}
 * @param sources where it is described
 * @param local whether the user's own file added it
 */
public record Drill(
        String slug,
        String label,
        List<String> trains,
        String phase,
        int phaseOrder,
        ContactLevel level,
        List<Equipment> equipment,
        int people,
        int minutes,
        int repetitions,
        String success,
        List<Hazard> hazards,
        String support,
        List<Source> sources,
        boolean local) {
    /** Something a drill cannot be run without. */
    public record Equipment(String slug, String label) {}

    /**
     * What can hurt.
     *
     * @param slug the hazard
     * @param label its name
     * @param text what is said on the field against it, and who decides
     * @param because why it is one
     * @param support {@code strong}, {@code fair} or {@code common-practice}
     * @param sources where that comes from
     * @param local whether the user's own file added it
     */
    public record Hazard(
            String slug,
            String label,
            String text,
            String because,
            String support,
            List<Source> sources,
            boolean local) {
        public Hazard {
            sources = List.copyOf(sources);
        }
    }

    public Drill {
        trains = List.copyOf(trains);
        equipment = List.copyOf(equipment);
        hazards = List.copyOf(hazards);
        sources = List.copyOf(sources);
    }

    /** The skill the drill is chosen for. */
    public String first() {
        return trains.get(0);
    }
}

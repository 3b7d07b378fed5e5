package rushlight.knowledge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What has to be owned before a technique can be taught, in an order in which it can be taught. */
public final class TeachingOrder {
    private static final int MOST_DEEP = 100;

    /**
     * One thing to teach.
     *
     * @param concept what
     * @param step 1 is taught first; what stands on one step can be taught side by side
     * @param requires what it needs directly
     * @param oneOf of each list, one must be owned
     * @param helpedBy what makes it easier and is no must
     * @param drills what trains it
     */
    public record Rung(
            String concept,
            int step,
            List<String> requires,
            List<List<String>> oneOf,
            List<String> helpedBy,
            List<String> drills) {
        public Rung {
            requires = List.copyOf(requires);
            oneOf = List.copyOf(oneOf);
            helpedBy = List.copyOf(helpedBy);
            drills = List.copyOf(drills);
        }
    }

    private final Taxonomy taxonomy;
    private final Relations relations;

    /** Reads the musts of a taxonomy and the rest from its relations. */
    public TeachingOrder(Taxonomy taxonomy, Relations relations) {
        this.taxonomy = taxonomy;
        this.relations = relations;
    }

    /**
     * Everything a concept needs and the concept itself, last. No rung stands before one it needs; among those that may
     * change places the label decides.
     */
    public List<Rung> to(String concept) {
        Map<String, Integer> steps = new HashMap<>();
        step(concept, steps, new HashSet<>(), 0);
        return steps.keySet().stream()
                .map(slug -> rung(slug, steps.getOrDefault(slug, 1)))
                .sorted(Comparator.comparingInt(Rung::step)
                        .thenComparing(rung -> taxonomy.label(rung.concept()))
                        .thenComparing(Rung::concept))
                .toList();
    }

    /** The drills that train a concept, in order of their labels. */
    public List<String> drills(String concept) {
        return byLabel(relations.to(concept, "trains"));
    }

    private int step(String slug, Map<String, Integer> steps, Set<String> open, int depth) {
        Integer known = steps.get(slug);
        if (known != null) {
            return known;
        }
        if (depth > MOST_DEEP || !open.add(slug)) {
            throw new BrokenBookException("The book says that " + slug + " needs itself first (rl:requires).");
        }
        int step = 1;
        for (String need : taxonomy.requires(slug)) {
            step = Math.max(step, 1 + step(need, steps, open, depth + 1));
        }
        open.remove(slug);
        steps.put(slug, step);
        return step;
    }

    private Rung rung(String slug, int step) {
        return new Rung(
                slug,
                step,
                byLabel(taxonomy.requires(slug)),
                relations.choices(slug, "requiresOneOf"),
                byLabel(relations.from(slug, "helpedBy")),
                drills(slug));
    }

    private List<String> byLabel(List<String> slugs) {
        List<String> sorted = new ArrayList<>(slugs);
        sorted.sort(Comparator.comparing(taxonomy::label).thenComparing(slug -> slug));
        return sorted;
    }
}

package rushlight.situation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;

/** Situations by chance from a seed, over the facets of the book. */
public final class RandomSituations {
    private final Random random;
    private final List<Facet> facets;
    private final Map<String, List<String>> values = new HashMap<>();

    public RandomSituations(long seed, Facets facets) {
        this.random = new Random(seed);
        this.facets = List.copyOf(facets.all());
        facets.all()
                .forEach(f -> values.put(f.name(), f.values().stream().sorted().toList()));
    }

    public Situation next(int depth) {
        int choice = depth == 0 ? random.nextInt(3) : random.nextInt(6);
        return switch (choice) {
            case 3 -> Situation.all(several(depth - 1));
            case 4 -> Situation.any(several(depth - 1));
            case 5 -> Situation.not(next(depth - 1));
            default -> condition();
        };
    }

    private List<Situation> several(int depth) {
        List<Situation> parts = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            parts.add(next(depth));
        }
        return parts;
    }

    private Situation condition() {
        Facet facet = facets.get(random.nextInt(facets.size()));
        if (facet.kind() == Facet.Kind.NUMBER) {
            OptionalInt least = OptionalInt.of(random.nextInt(5));
            OptionalInt most = OptionalInt.of(least.getAsInt() + random.nextInt(4));
            return switch (random.nextInt(3)) {
                case 0 -> new Situation.Between(facet.name(), least, OptionalInt.empty());
                case 1 -> new Situation.Between(facet.name(), OptionalInt.empty(), most);
                default -> new Situation.Between(facet.name(), least, most);
            };
        }
        List<String> values = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(4); i++) {
            values.add(pick(facet));
        }
        return Situation.anyOf(facet.name(), values);
    }

    private String pick(Facet facet) {
        List<String> known = values.getOrDefault(facet.name(), List.of());
        return known.get(random.nextInt(known.size()));
    }
}

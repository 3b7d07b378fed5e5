package rushlight.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import rushlight.evidence.Shares;
import rushlight.findings.Countable;
import rushlight.index.Count;
import rushlight.index.Footage;
import rushlight.index.Slice;
import rushlight.situation.Situation;

/**
 * What everybody does, as shares: how he opens, what he goes to where a counter is paired, how he fits. Few reps are drawn
 * toward what everybody does.
 *
 * @param parts the kinds of shares
 */
record Profiles(List<Part> parts) {
    /**
     * One kind of shares.
     *
     * @param facet the facet whose values are counted
     * @param league what everybody does
     * @param counts what was counted, by prospect and value
     * @param shares his shares, by prospect and value
     */
    record Part(
            String facet,
            Shares league,
            Map<String, Map<String, Integer>> counts,
            Map<String, Map<String, Double>> shares) {
        static Part of(String facet, SortedMap<String, SortedMap<String, Count>> values) {
            Map<String, Map<String, Integer>> counts = new HashMap<>();
            values.forEach((prospect, his) -> {
                Map<String, Integer> plain = new HashMap<>();
                his.forEach((value, count) -> plain.put(value, count.opportunities()));
                counts.put(prospect, plain);
            });
            Shares league = Shares.of(counts.values());
            Map<String, Map<String, Double>> shares = new HashMap<>();
            counts.forEach((prospect, his) -> shares.put(prospect, league.of(his)));
            return new Part(facet, league, counts, shares);
        }

        /** His shares; the league's where nothing was counted of him. */
        Map<String, Double> of(String prospect) {
            Map<String, Double> his = shares.get(prospect);
            return his == null ? league.of(Map.of()) : his;
        }

        int reps(String prospect) {
            return counts.getOrDefault(prospect, Map.of()).values().stream()
                    .mapToInt(Integer::intValue)
                    .sum();
        }
    }

    static Profiles of(Footage footage, Countable countable) {
        Situation any = countable.anyRep();
        Situation paired = Situation.all(List.of(any, Situation.has("repClass", "paired-counter")));
        Slice all = Slice.everything();
        Situation opens = countable.primaryReps();
        List<Part> parts = new ArrayList<>();
        parts.add(Part.of(countable.primaryFacet(), footage.valuesOfEach(countable.primaryFacet(), opens, opens, all)));
        parts.add(Part.of("move", footage.valuesOfEach("move", paired, paired, all)));
        parts.add(Part.of("fit", footage.valuesOfEach("fit", any, any, all)));
        return new Profiles(parts);
    }

    /** How far two players lie apart: the mean of the parts, 0 for the same and 1 for nothing in common. */
    double distance(String one, String other) {
        return parts.stream()
                .mapToDouble(part -> Shares.distance(part.of(one), part.of(other)))
                .average()
                .orElse(0);
    }

    int reps(String prospect) {
        return parts.stream().mapToInt(part -> part.reps(prospect)).sum();
    }
}

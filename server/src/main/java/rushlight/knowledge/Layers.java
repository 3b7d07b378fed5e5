package rushlight.knowledge;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** How far each skill stands from the skills that want none first: the longest way, in links. */
final class Layers {
    private final Map<String, Set<String>> needs;
    private final Map<String, Integer> known = new HashMap<>();

    Layers(List<Prerequisite> links) {
        this.needs = links.stream()
                .collect(Collectors.groupingBy(
                        Prerequisite::skill, Collectors.mapping(Prerequisite::needs, Collectors.toSet())));
    }

    /** The layer of a skill; a link that leads back on its own way counts as none. */
    int of(String skill) {
        return layer(skill, new LinkedHashSet<>());
    }

    private int layer(String skill, Set<String> way) {
        Integer found = known.get(skill);
        if (found != null) {
            return found;
        }
        way.add(skill);
        int layer = needs.getOrDefault(skill, Set.of()).stream()
                .filter(next -> !way.contains(next))
                .mapToInt(next -> layer(next, way) + 1)
                .max()
                .orElse(0);
        way.remove(skill);
        known.put(skill, layer);
        return layer;
    }
}

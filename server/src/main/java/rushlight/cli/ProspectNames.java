package rushlight.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import rushlight.film.Prospect;
import rushlight.words.NearestLabels;

/** Finds prospects by the names or ids that a person typed. */
final class ProspectNames {
    private ProspectNames() {}

    /** Those that were named, in that order; empty, and told, where one of the names is nobody's. */
    static Optional<List<Prospect>> named(List<String> names, List<Prospect> known, PrintWriter err) {
        List<String> strangers = names.stream()
                .filter(name -> known.stream().noneMatch(p -> isNamed(p, name)))
                .toList();
        NearestLabels nearest =
                NearestLabels.words(known.stream().map(Prospect::name).toList());
        strangers.forEach(name -> err.println(
                "There is no film of \"" + name + "\". Nearest: " + String.join(", ", nearest.to(name, 3)) + "."));
        return strangers.isEmpty()
                ? Optional.of(names.stream()
                        .flatMap(name -> known.stream().filter(p -> isNamed(p, name)))
                        .distinct()
                        .toList())
                : Optional.empty();
    }

    /** The one man of a name; empty, and told, where it is nobody's or that of several. */
    static Optional<Prospect> one(String name, List<Prospect> known, PrintWriter err) {
        List<Prospect> found = named(List.of(name), known, err).orElse(List.of());
        if (found.size() > 1) {
            err.println("Several are called \"" + name + "\". Name him by his id: "
                    + String.join(", ", found.stream().map(Prospect::id).toList()) + ".");
            return Optional.empty();
        }
        return found.stream().findFirst();
    }

    private static boolean isNamed(Prospect prospect, String name) {
        return prospect.id().equals(name) || prospect.name().equalsIgnoreCase(name);
    }
}

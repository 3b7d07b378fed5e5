package rushlight.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;
import rushlight.film.Prospect;
import rushlight.words.LabelKey;
import rushlight.words.NearestLabels;

/**
 * Finds prospects by what a person typed: the id or the whole name; else a first or last name; else one of these with one
 * slip in it. Whoever was not named by his id or his whole name is told of, for he is taken where he is the only one meant.
 */
final class ProspectNames {
    private static final int OFFERED = 3;

    /** In a shorter word a slip makes another word as often as not. */
    private static final int SHORTEST_WITH_A_SLIP = 5;

    private static final DamerauLevenshteinDistance DISTANCE = new DamerauLevenshteinDistance(1);

    /** From the surest to the least sure. */
    private static final List<BiPredicate<Prospect, String>> PARTLY = List.of(
            ProspectNames::hasWord,
            (prospect, name) -> isSlip(LabelKey.of(prospect.name()), name),
            (prospect, name) -> words(prospect).stream().anyMatch(word -> isSlip(word, name)));

    private ProspectNames() {}

    /** Those that were named, in that order; empty, and told, where one of the names is nobody's or not clear. */
    static Optional<List<Prospect>> named(List<String> names, List<Prospect> known, PrintWriter err) {
        Set<Prospect> all = new LinkedHashSet<>();
        boolean clear = true;
        for (String name : names) {
            List<Prospect> found = found(name, known, err);
            all.addAll(found);
            clear &= !found.isEmpty();
        }
        return clear ? Optional.of(List.copyOf(all)) : Optional.empty();
    }

    /** The one man of a name; empty, and told, where it is nobody's or that of several. */
    static Optional<Prospect> one(String name, List<Prospect> known, PrintWriter err) {
        List<Prospect> found = found(name, known, err);
        if (found.size() > 1) {
            err.println("Several are called \"" + name + "\". Name him by his id: "
                    + String.join(", ", found.stream().map(Prospect::id).toList()) + ".");
            return Optional.empty();
        }
        return found.stream().findFirst();
    }

    /** Everybody of that id or whole name, else the only one who may be meant; none, and told, where nobody is. */
    private static List<Prospect> found(String name, List<Prospect> known, PrintWriter err) {
        List<Prospect> named =
                known.stream().filter(prospect -> isNamed(prospect, name)).toList();
        if (!named.isEmpty()) {
            return named;
        }
        String key = LabelKey.of(name);
        for (BiPredicate<Prospect, String> partly : PARTLY) {
            List<Prospect> meant = known.stream()
                    .filter(prospect -> partly.test(prospect, key))
                    .toList();
            if (meant.size() == 1) {
                err.println("\"" + name + "\" is taken for " + meant.get(0).name() + ".");
                return meant;
            }
            if (!meant.isEmpty()) {
                err.println("\"" + name + "\" can be " + either(meant) + ". Say which, by whole name or id.");
                return List.of();
            }
        }
        NearestLabels nearest =
                NearestLabels.words(known.stream().map(Prospect::name).toList());
        err.println(
                "There is no film of \"" + name + "\". Nearest: " + String.join(", ", nearest.to(name, OFFERED)) + ".");
        return List.of();
    }

    private static String either(List<Prospect> several) {
        List<String> shown = new ArrayList<>(
                several.stream().map(one -> one.name() + " (" + one.id() + ")").toList());
        String last = shown.remove(shown.size() - 1);
        return String.join(", ", shown) + " or " + last;
    }

    private static boolean isNamed(Prospect prospect, String name) {
        return prospect.id().equals(name) || LabelKey.of(prospect.name()).equals(LabelKey.of(name));
    }

    private static boolean hasWord(Prospect prospect, String key) {
        return words(prospect).contains(key);
    }

    private static boolean isSlip(String right, String key) {
        return right.length() >= SHORTEST_WITH_A_SLIP && DISTANCE.apply(right, key) == 1;
    }

    private static List<String> words(Prospect prospect) {
        return Arrays.asList(LabelKey.of(prospect.name()).split(" ", -1));
    }
}

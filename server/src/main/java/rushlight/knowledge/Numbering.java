package rushlight.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** How the numbering systems of the trade name one and the same spot, and which numbers mean nothing without one. */
public final class Numbering {
    /**
     * One number of one system.
     *
     * @param system letter of the system; empty for a number given without one
     * @param number as written, such as {@code 4i} or {@code wide 9}
     * @param rank 1 is the usual reading
     * @param position the spot it stands for
     */
    record Label(String system, String number, int rank, String position) {}

    private final List<Label> labels;
    private final Map<String, Map<String, List<String>>> spots;
    private final Map<String, String> positions;

    Numbering(Collection<Label> labels, Map<String, String> positions) {
        this.labels =
                labels.stream().sorted(Comparator.comparingInt(Label::rank)).toList();
        this.spots = this.labels.stream()
                .collect(Collectors.groupingBy(
                        Label::system,
                        Collectors.groupingBy(
                                label -> key(label.number()),
                                Collectors.mapping(Label::position, Collectors.toUnmodifiableList()))));
        this.positions = Map.copyOf(positions);
    }

    /** The letters of the systems. */
    public Set<String> systems() {
        Set<String> names = new TreeSet<>();
        labels.stream().map(Label::system).filter(name -> !name.isEmpty()).forEach(names::add);
        return names;
    }

    /** The spots a number may stand for in a system, the usual one first; none where the system lacks the number. */
    public List<String> positions(String system, String number) {
        return spots.getOrDefault(system, Map.of()).getOrDefault(key(number), List.of());
    }

    /** What a number stands for when nobody says which system, where the book settles it. */
    public Optional<String> unnamed(String number) {
        return positions("", number).stream().findFirst();
    }

    /** The numbers of a system, in order. */
    public List<String> numbers(String system) {
        return labels.stream()
                .filter(label -> label.system().equals(system))
                .map(Label::number)
                .distinct()
                .sorted()
                .toList();
    }

    /** Every number of every system, by its key. */
    public Map<String, String> numbers() {
        Map<String, String> numbers = new TreeMap<>();
        labels.forEach(label -> numbers.putIfAbsent(key(label.number()), label.number()));
        return numbers;
    }

    /** The spot of an alignment. */
    public Optional<String> positionOf(String alignment) {
        return Optional.ofNullable(positions.get(alignment));
    }

    /** The alignments at a spot, in order. */
    public List<String> alignmentsAt(String position) {
        List<String> found = new ArrayList<>();
        positions.forEach((alignment, at) -> {
            if (at.equals(position)) {
                found.add(alignment);
            }
        });
        return found.stream().sorted().toList();
    }

    /** A number without blanks, hyphens and capitals, so that {@code 4-i} and {@code 4i} are one. */
    public static String key(String number) {
        StringBuilder key = new StringBuilder(number.length());
        number.toLowerCase(Locale.ROOT)
                .chars()
                .filter(Character::isLetterOrDigit)
                .forEach(c -> key.append((char) c));
        return key.toString();
    }
}

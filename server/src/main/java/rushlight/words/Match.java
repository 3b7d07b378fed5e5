package rushlight.words;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * A place of a text where something known stands.
 *
 * @param first its first token
 * @param end the token behind its last one
 * @param from where it begins, in UTF-16 units
 * @param to where it ends
 * @param values what the words may mean, in the order in which they were added
 * @param guessed whether the spelling was repaired
 */
public record Match<T>(int first, int end, int from, int to, List<T> values, boolean guessed) {
    public Match {
        values = List.copyOf(values);
    }

    /** How many tokens it takes. */
    public int length() {
        return end - first;
    }

    /** Whether the two share a token. */
    public boolean overlaps(Match<?> other) {
        return first < other.end && other.first < end;
    }

    /** The same place with those of the meanings only that are wanted; none where there are none. */
    public Optional<Match<T>> only(Predicate<T> wanted) {
        if (values.size() == 1) {
            return wanted.test(values.get(0)) ? Optional.of(this) : Optional.empty();
        }
        List<T> fewer = values.stream().filter(wanted).toList();
        return fewer.isEmpty() ? Optional.empty() : Optional.of(with(fewer));
    }

    /** The same place with some of the meanings only. */
    public Match<T> with(List<T> fewer) {
        return new Match<>(first, end, from, to, fewer, guessed);
    }
}

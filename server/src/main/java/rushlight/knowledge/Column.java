package rushlight.knowledge;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One column of the film log, as the book describes it.
 *
 * @param name header in the CSV file
 * @param otherNames what others head it with, in small letters; offered {@code name} for, never read
 * @param position place in the header, from 1
 * @param facet local name of the property that carries it in the graph and in situations
 * @param kind what a value is
 * @param oneOf the values allowed where {@code kind} is {@link Kind#WORDS}
 * @param classes classes a concept must have where {@code kind} is {@link Kind#CONCEPT}
 * @param narrowerThan where given, only concepts under this one are allowed
 * @param list whether a cell may hold several values
 * @param required whether every row needs a value
 * @param meaning one sentence for people
 */
public record Column(
        String name,
        List<String> otherNames,
        int position,
        String facet,
        Kind kind,
        List<String> oneOf,
        Set<String> classes,
        Optional<String> narrowerThan,
        boolean list,
        boolean required,
        String meaning) {
    /** What a value of a column is. */
    public enum Kind {
        TEXT,
        INTEGER,
        DATE,
        CLOCK,
        TIME,
        WORDS,
        CONCEPT,
        EXCHANGE
    }

    public Column {
        otherNames = List.copyOf(otherNames);
        oneOf = List.copyOf(oneOf);
        classes = Set.copyOf(classes);
    }
}

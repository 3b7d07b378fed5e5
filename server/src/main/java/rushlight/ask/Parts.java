package rushlight.ask;

import java.util.List;
import java.util.Optional;

/**
 * A question cut into what means something.
 *
 * @param question as it was asked
 * @param parts in order
 * @param unread words nothing was made of, in order
 * @param quoted what stands in quotation marks
 */
record Parts(String question, List<Part> parts, List<Asked.Unread> unread, Optional<Part> quoted) {
    Parts {
        parts = List.copyOf(parts);
        unread = List.copyOf(unread);
    }

    List<Part> doing(Act act) {
        return parts.stream().filter(part -> part.does(act)).toList();
    }

    boolean has(Act act) {
        return parts.stream().anyMatch(part -> part.does(act));
    }

    List<Sense.Name> names(Sense.Name.Kind kind) {
        return parts.stream()
                .flatMap(part -> part.names(kind).stream())
                .distinct()
                .toList();
    }
}

package rushlight.ask;

import java.util.List;
import java.util.Optional;

/**
 * Two circumstances of one kind set against each other: "from the left versus from the right".
 *
 * @param first the one named first
 * @param by the words between them
 * @param second the other
 */
record Contrast(Condition first, Part by, Condition second) {
    /** The first such pair of a question. */
    static Optional<Contrast> of(Parts parts, List<Condition> conditions) {
        for (int i = 0; i + 1 < conditions.size(); i++) {
            Condition first = conditions.get(i);
            Condition second = conditions.get(i + 1);
            Optional<Part> by = parts.parts().stream()
                    .filter(part -> part.does(Act.THAN) || part.does(Act.FACED))
                    .filter(part -> part.from() >= first.part().to()
                            && part.to() <= second.part().from())
                    .findFirst();
            boolean alike = !first.event() && !second.event() && first.role() == second.role();
            if (alike && by.isPresent() && !first.part().equals(second.part())) {
                return Optional.of(new Contrast(first, by.get(), second));
            }
        }
        return Optional.empty();
    }
}

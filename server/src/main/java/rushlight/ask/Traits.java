package rushlight.ask;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import rushlight.findings.Finding;
import rushlight.findings.Polarity;

/** "The best get-off": what no single rep shows is told by the finding that film shows it with, or not at all. */
final class Traits {
    private final Claims claims;
    private final Topics topics;

    Traits(Claims claims, Topics topics) {
        this.claims = claims;
        this.topics = topics;
    }

    /** Whether the best, or the worst, is asked for of a term that is no part of a rep, or of words the book does not know. */
    boolean isOfOne(Parts parts, Set<Part> used) {
        return term(parts, used).isPresent()
                || parts.doing(Act.ORDER).stream()
                        .anyMatch(order -> parts.unread().stream().anyMatch(word -> isBehind(parts, order, word)));
    }

    /**
     * The reps of the finding that shows it; empty where none does. What is a gap is best where there is the least of it.
     *
     * @param good whether the best are asked for, and not the worst
     */
    Optional<SituationPair> shown(Parts parts, boolean good, List<Filter> filters, Set<Part> used) {
        Optional<Part> part = term(parts, used);
        Optional<Finding> shown =
                part.flatMap(topics::best).flatMap(slug -> claims.shows(slug, good ? Polarity.STRENGTH : Polarity.GAP));
        shown.ifPresent(finding -> {
            boolean least = good == (finding.polarity() == Polarity.GAP);
            filters.removeIf(Filter.Order.class::isInstance);
            filters.add(new Filter.Order(least ? Filter.Direction.LEAST : Filter.Direction.MOST));
            filters.add(new Filter.Findings(List.of(finding.slug())));
            used.add(part.orElseThrow());
        });
        return shown.flatMap(finding -> claims.pair(finding.slug()));
    }

    private static Optional<Part> term(Parts parts, Set<Part> used) {
        return parts.parts().stream()
                .filter(part -> part.isTerm() && !used.contains(part))
                .findFirst();
    }

    /** Whether an unread word stands right behind the word that asks for the best. */
    private static boolean isBehind(Parts parts, Part order, Asked.Unread word) {
        return word.from() >= order.to()
                && parts.parts().stream().noneMatch(p -> p.from() >= order.to() && p.to() <= word.from());
    }
}

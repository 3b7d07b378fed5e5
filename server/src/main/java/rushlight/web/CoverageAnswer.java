package rushlight.web;

import java.util.List;
import rushlight.knowledge.Coverage;

/**
 * How far the book goes, as programs read it.
 *
 * @param whole whether every kind has what it must have and no term stands alone
 * @param kinds the kinds of terms
 * @param orphans slugs of the terms that nothing points to or from
 */
public record CoverageAnswer(boolean whole, List<Kind> kinds, List<String> orphans) {
    /** One kind of terms, and how many of them are the user's own. */
    public record Kind(String kind, String label, int terms, int local, List<Part> parts) {}

    /** One part: how many have it, the share from 0 to 1, whether none may lack it, and the slugs of those that do. */
    public record Part(String part, int have, double share, boolean must, List<String> missing) {}

    /** The answer for one book. */
    public static CoverageAnswer of(Coverage coverage) {
        return new CoverageAnswer(
                coverage.whole(),
                coverage.kinds().stream().map(CoverageAnswer::kind).toList(),
                coverage.orphans());
    }

    private static Kind kind(Coverage.Kind kind) {
        return new Kind(
                kind.kind(),
                kind.label(),
                kind.terms(),
                kind.yours(),
                kind.parts().stream()
                        .map(part -> new Part(
                                part.heading(),
                                part.have(),
                                kind.terms() == 0 ? 1 : (double) part.have() / kind.terms(),
                                part.must(),
                                part.missing()))
                        .toList());
    }
}

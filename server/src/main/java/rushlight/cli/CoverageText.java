package rushlight.cli;

import java.util.List;
import java.util.Optional;
import rushlight.knowledge.Coverage;
import rushlight.knowledge.Local;
import rushlight.knowledge.Taxonomy;

/** How far the book goes, as a table for people. */
final class CoverageText {
    private static final int KIND = 20;
    private static final int CELL = 12;

    private final Taxonomy taxonomy;

    CoverageText(Taxonomy taxonomy) {
        this.taxonomy = taxonomy;
    }

    /** The table, what must be there and is not, and, where {@code all}, everything that is not there. */
    String of(Coverage coverage, boolean all) {
        Page page = new Page();
        List<String> headings = coverage.kinds().stream()
                .flatMap(kind -> kind.parts().stream())
                .map(Coverage.Part::heading)
                .distinct()
                .toList();
        List<String> inOrder = coverage.kinds().stream()
                .map(kind -> kind.parts().stream().map(Coverage.Part::heading).toList())
                .filter(some -> some.size() == headings.size())
                .findFirst()
                .orElse(headings);
        StringBuilder head = new StringBuilder(left("kind", KIND) + right("terms", 6));
        inOrder.forEach(heading -> head.append(right(heading, CELL)));
        page.line(head.toString()).line("=".repeat(Math.min(Page.WIDTH, head.length())));
        coverage.kinds().forEach(kind -> page.line(row(kind, inOrder)));
        page.blank().wrapped("", "", "* must be whole. An empty cell: that part is not asked of the kind.");
        yours(page, coverage);
        coverage.kinds().forEach(kind -> missing(page, kind, all));
        orphans(page, coverage.orphans());
        page.blank()
                .line(
                        coverage.whole()
                                ? "Every kind has what it must have, and every term is linked to another."
                                : "The book is not whole yet: see above.");
        return page.toString();
    }

    private static String row(Coverage.Kind kind, List<String> headings) {
        StringBuilder row = new StringBuilder(left(kind.label(), KIND) + right(Integer.toString(kind.terms()), 6));
        for (String heading : headings) {
            Optional<Coverage.Part> part = kind.parts().stream()
                    .filter(one -> one.heading().equals(heading))
                    .findFirst();
            row.append(right(part.map(one -> cell(one, kind.terms())).orElse(""), CELL));
        }
        return row.toString();
    }

    private static String cell(Coverage.Part part, int terms) {
        String share = terms == 0 ? "-" : (int) Math.floor(100.0 * part.have() / terms) + " %";
        return part.have() + right(share, 6) + (part.must() ? "*" : " ");
    }

    private static void yours(Page page, Coverage coverage) {
        coverage.kinds().stream()
                .filter(kind -> kind.yours() > 0)
                .forEach(kind ->
                        page.line(kind.label() + ": " + kind.yours() + " of " + kind.terms() + Local.mark(true) + "."));
    }

    private void missing(Page page, Coverage.Kind kind, boolean all) {
        for (Coverage.Part part : kind.parts()) {
            if (!part.missing().isEmpty() && (all || part.must())) {
                String word = part.must() ? "must have" : "could have";
                page.blank()
                        .wrapped(
                                "",
                                "  ",
                                kind.label() + " without " + part.heading() + " (" + word + " it): "
                                        + String.join(", ", shown(part.missing())) + ".");
            }
        }
    }

    private void orphans(Page page, List<String> orphans) {
        if (!orphans.isEmpty()) {
            page.blank()
                    .wrapped(
                            "",
                            "  ",
                            "Nothing points to these, and they point to nothing: " + String.join(", ", shown(orphans))
                                    + ".");
        }
    }

    private List<String> shown(List<String> slugs) {
        return slugs.stream().map(taxonomy::shown).toList();
    }

    private static String left(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    private static String right(String text, int width) {
        return " ".repeat(Math.max(1, width - text.length())) + text;
    }
}

package rushlight.web;

import java.util.List;
import java.util.OptionalDouble;
import rushlight.findings.Finding;
import rushlight.findings.FindingBook;

/** Every finding of the book with what it is held against. */
public record FindingsAnswer(List<Item> findings) {
    /** One finding. */
    public record Item(
            String finding,
            String label,
            String polarity,
            String severity,
            boolean safety,
            String measure,
            OptionalDouble line,
            OptionalDouble houseLine,
            int minimum,
            String because,
            String definition,
            boolean local) {}

    /** The findings of a book. */
    public static FindingsAnswer of(FindingBook book) {
        return new FindingsAnswer(book.all().stream().map(FindingsAnswer::item).toList());
    }

    private static Item item(Finding finding) {
        return new Item(
                finding.slug(),
                finding.label(),
                finding.polarity().slug(),
                finding.severity().slug(),
                finding.safety(),
                finding.measure().slug(),
                finding.standard().line(),
                finding.standard().houseLine(),
                finding.standard().minimum(),
                finding.advice().because(),
                finding.definition(),
                finding.local());
    }
}

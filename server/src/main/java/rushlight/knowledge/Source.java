package rushlight.knowledge;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.jena.graph.Node;
import org.apache.jena.vocabulary.DCTerms;

/**
 * Where a statement comes from.
 *
 * @param slug the slug of the source
 * @param title its title
 * @param author who wrote or gave it; empty where nobody is named
 * @param year when, as written; empty where it shows none
 * @param howSeen how much of it was read
 * @param printed whether it is something that was published, and not the trade's own habit
 */
public record Source(String slug, String title, String author, String year, String howSeen, boolean printed) {
    /** The sources a subject of {@code statements} names, as the book of sources describes them, in order of their slugs. */
    static List<Source> of(Node subject, Facts statements, Facts book) {
        return statements.all(subject, DCTerms.source.asNode()).stream()
                .filter(Node::isURI)
                .distinct()
                .map(node -> read(node, book))
                .sorted((a, b) -> a.slug().compareTo(b.slug()))
                .toList();
    }

    /** Author, title and year, as far as they are known. */
    public String text() {
        return Stream.of(author, title, year).filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
    }

    private static Source read(Node node, Facts book) {
        String slug = Rl.slug(node);
        String title = first(node, DCTerms.title.asNode(), book);
        return new Source(
                slug,
                title.isEmpty() ? slug : title,
                String.join(", ", book.texts(node, DCTerms.contributor.asNode())),
                first(node, DCTerms.date.asNode(), book),
                book.text(node, "howSeen").orElse(""),
                !slug.equals(Rl.COMMON_PRACTICE));
    }

    private static String first(Node node, Node property, Facts book) {
        return book.texts(node, property).stream().findFirst().orElse("");
    }
}

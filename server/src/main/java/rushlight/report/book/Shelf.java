package rushlight.report.book;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Local;
import rushlight.knowledge.Relations;
import rushlight.knowledge.Source;
import rushlight.knowledge.Taxonomy;

/** Where each page of the book lies and what a link to it says. */
final class Shelf {
    /** The way from a page in a folder back to the root. */
    static final String UP = "../";

    private static final Pattern CAPITAL = Pattern.compile("(?<=.)(\\p{Lu})");

    private final Taxonomy taxonomy;
    private final Relations relations;

    Shelf(Taxonomy taxonomy, Relations relations) {
        this.taxonomy = taxonomy;
        this.relations = relations;
    }

    static String conceptFile(String slug) {
        return "concept/" + fileName(slug) + ".html";
    }

    static String kindFile(String className) {
        return "kind/" + fileName(kebab(className)) + ".html";
    }

    /** A link to a concept from a page in a folder; the label alone where the book has no such concept. */
    Link link(String slug) {
        return link(slug, UP);
    }

    Link link(String slug, String root) {
        return new Link(
                taxonomy.concept(slug).isPresent() ? root + conceptFile(taxonomy.inUse(slug)) : "", label(slug));
    }

    /** The label a reader sees, marked where the term is his own. */
    String label(String slug) {
        return taxonomy.shown(slug);
    }

    /** Links in order of their labels. */
    List<Link> links(Collection<String> slugs) {
        return slugs.stream()
                .sorted(Comparator.comparing(taxonomy::label).thenComparing(slug -> slug))
                .map(this::link)
                .toList();
    }

    /** What a kind is called. */
    String kind(String className) {
        String name = relations.kind(className);
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    Link kindLink(String className, String root) {
        return new Link(root + kindFile(className), kind(className));
    }

    static Link source(Source source) {
        String text = source.printed() ? source.text() : source.title();
        return new Link(UP + "sources.html#" + fileName(source.slug()), text);
    }

    static String mark(Concept concept) {
        return Local.mark(concept.local());
    }

    /** A name that every file system and every address takes as it is. */
    static String fileName(String slug) {
        StringBuilder name = new StringBuilder();
        slug.codePoints().forEach(c -> {
            boolean plain = c < 128 && (Character.isLetterOrDigit(c) || c == '-');
            name.append(plain ? Character.toString(c) : "_" + Integer.toHexString(c));
        });
        return name.toString();
    }

    private static String kebab(String className) {
        return CAPITAL.matcher(className).replaceAll("-$1").toLowerCase(Locale.ROOT);
    }
}

package rushlight.report.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;
import org.apache.jena.vocabulary.DCTerms;
import org.apache.jena.vocabulary.RDFS;
import org.apache.jena.vocabulary.SKOS;
import rushlight.knowledge.Concept;
import rushlight.knowledge.Facts;
import rushlight.knowledge.Lessons;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Relations;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Source;
import rushlight.knowledge.Taxonomy;

/** The pages that lead to the others: kinds, all names from A to Z, sources. */
public final class ListPages {
    /** A kind with how many concepts it has, and what it is. */
    public record Kind(String name, Link link, String comment, List<Entry> entries) {}

    /** A concept in a list. */
    public record Entry(Link link, String definition) {}

    /** A letter with its names. */
    public record Letter(String letter, String id, List<Name> names) {}

    /** A name, and what it is another name for. */
    public record Name(Link link, Optional<String> of) {}

    /** A source with what rests on it. */
    public record Cited(String id, Source source, List<Link> by) {}

    /** A term that went, and what stands in its place. */
    public record Retired(String slug, String label, Link instead) {}

    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz";

    private final Ontology ontology;
    private final Taxonomy taxonomy;
    private final Relations relations;
    private final Shelf shelf;

    ListPages(Ontology ontology, Taxonomy taxonomy, Relations relations, Shelf shelf) {
        this.ontology = ontology;
        this.taxonomy = taxonomy;
        this.relations = relations;
        this.shelf = shelf;
    }

    /** Every kind that has concepts, in order of the names; links lead from a page in {@code root}'s place. */
    List<Kind> kinds(String root) {
        Facts facts = new Facts(ontology.graph());
        TreeSet<String> classes = new TreeSet<>();
        taxonomy.concepts().forEach(concept -> classes.addAll(concept.classes()));
        return classes.stream()
                .map(name -> new Kind(
                        name,
                        shelf.kindLink(name, root),
                        facts.texts(Rl.term(name), RDFS.comment.asNode()).stream()
                                .findFirst()
                                .orElse(""),
                        entries(name, root)))
                .sorted(Comparator.comparing(kind -> kind.link().label()))
                .toList();
    }

    private List<Entry> entries(String className, String root) {
        return taxonomy.ofClass(className).stream()
                .sorted(Comparator.comparing((Concept c) -> key(c.label())).thenComparing(Concept::slug))
                .map(c -> new Entry(shelf.link(c.slug(), root), c.definition()))
                .toList();
    }

    /** All preferred and other names. */
    List<Letter> letters() {
        List<Name> names = new ArrayList<>();
        for (Concept concept : taxonomy.concepts()) {
            names.add(new Name(shelf.link(concept.slug(), ""), Optional.empty()));
            for (String other : concept.altLabels()) {
                if (!other.equals(concept.label())) {
                    Link link = new Link(Shelf.conceptFile(concept.slug()), other);
                    names.add(new Name(link, Optional.of(shelf.label(concept.slug()))));
                }
            }
        }
        retired()
                .forEach(r -> names.add(new Name(
                        new Link(Shelf.conceptFile(taxonomy.inUse(r.slug())), r.label()),
                        Optional.of(r.instead().label()))));
        names.sort(Comparator.comparing((Name n) -> key(n.link().label()))
                .thenComparing(n -> n.link().label())
                .thenComparing(n -> n.link().href()));
        Map<String, List<Name>> byLetter = names.stream()
                .collect(Collectors.groupingBy(n -> letter(n.link().label()), TreeMap::new, Collectors.toList()));
        return byLetter.entrySet().stream()
                .map(e -> new Letter(e.getKey(), "letter-" + e.getKey().toLowerCase(Locale.ROOT), e.getValue()))
                .toList();
    }

    private static String letter(String label) {
        String first = key(label).substring(0, 1);
        return LETTERS.contains(first) ? first.toUpperCase(Locale.ROOT) : "0-9";
    }

    /** What a name is sorted by: no capitals, no signs before it. */
    private static String key(String label) {
        String key = label.toLowerCase(Locale.ROOT).replaceAll("^[^\\p{L}\\p{N}]+", "");
        return key.isEmpty() ? label + " " : key;
    }

    /** The terms that went, in order of their slugs. */
    List<Retired> retired() {
        Facts facts = new Facts(ontology.graph());
        return facts.withProperty(DCTerms.isReplacedBy.asNode()).stream()
                .filter(Rl::isConcept)
                .map(node -> new Retired(
                        Rl.slug(node),
                        facts.texts(node, SKOS.prefLabel.asNode()).stream()
                                .findFirst()
                                .orElse(Rl.slug(node)),
                        shelf.link(Rl.slug(node))))
                .filter(retired -> !taxonomy.inUse(retired.slug()).equals(retired.slug()))
                .sorted(Comparator.comparing(Retired::slug))
                .toList();
    }

    /** Every source that something rests on, with what rests on it. */
    List<Cited> sources(Lessons lessons) {
        Map<String, Source> known = new TreeMap<>();
        Map<String, TreeSet<String>> by = new TreeMap<>();
        for (Concept concept : taxonomy.concepts()) {
            List<Source> own = new ArrayList<>(relations.sources(concept.slug()));
            lessons.about(concept.slug()).forEach(part -> part.statements().forEach(s -> own.addAll(s.sources())));
            own.forEach(source -> {
                known.put(source.slug(), source);
                by.computeIfAbsent(source.slug(), s -> new TreeSet<>()).add(concept.slug());
            });
        }
        everybodyElse(known);
        return known.values().stream()
                .sorted(Comparator.comparing((Source s) -> key(s.title())).thenComparing(Source::slug))
                .map(source -> new Cited(
                        Shelf.fileName(source.slug()),
                        source,
                        source.printed()
                                ? by.getOrDefault(source.slug(), new TreeSet<>()).stream()
                                        .sorted(Comparator.comparing(taxonomy::label))
                                        .map(slug -> shelf.link(slug, ""))
                                        .toList()
                                : List.of()))
                .toList();
    }

    /** Sources of pairings, fit rules and the rest, which have no page of their own. */
    private void everybodyElse(Map<String, Source> known) {
        ontology
                .graph()
                .find(Node.ANY, DCTerms.source.asNode(), Node.ANY)
                .mapWith(t -> t.getSubject())
                .filterKeep(Rl::isConcept)
                .toList()
                .stream()
                .map(Rl::slug)
                .distinct()
                .flatMap(slug -> relations.sources(slug).stream())
                .forEach(source -> known.put(source.slug(), source));
    }
}

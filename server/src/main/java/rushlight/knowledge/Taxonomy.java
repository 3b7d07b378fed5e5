package rushlight.knowledge;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The concepts of the book with what lies above and below each, and the relations between them, as values. */
public final class Taxonomy {
    private final Map<String, Concept> concepts;
    private final Map<String, String> retired;
    private final Map<String, Set<String>> wider;
    private final Map<String, Set<String>> narrower;
    private final Map<String, List<Concept>> byClass;
    private final List<Pairing> pairings;
    private final List<FitRule> fitRules;
    private final FilmColumns film;
    private final Map<String, List<String>> requires;
    private final Numbering numbering;

    private Taxonomy(TaxonomyReader reader) {
        this.concepts = reader.concepts();
        this.retired = reader.retired();
        this.wider = closures(concepts);
        this.narrower = inverted(wider);
        this.byClass = byClass(concepts.values());
        this.pairings = reader.pairings();
        this.fitRules = reader.fitRules();
        this.film = reader.film();
        this.requires = reader.links("requires");
        this.numbering = reader.numbering();
    }

    /** Reads everything once; the result does not change. */
    public static Taxonomy of(Ontology ontology) {
        return new Taxonomy(new TaxonomyReader(ontology));
    }

    /** The concept with this slug; for one that was retired, the concept in its place. */
    public Optional<Concept> concept(String slug) {
        return Optional.ofNullable(concepts.get(inUse(slug)));
    }

    /** The slug itself, or the slug of the concept that stands in its place since it was retired. */
    public String inUse(String slug) {
        return retired.getOrDefault(slug, slug);
    }

    /** The preferred label of a concept, or the text itself where it is no concept. */
    public String label(String slug) {
        return concept(slug).map(Concept::label).orElse(slug);
    }

    /** The label as people read it: with a mark where the term is the user's own. */
    public String shown(String slug) {
        return Local.shown(label(slug), concept(slug).filter(Concept::local).isPresent());
    }

    /** All concepts, in order of their slugs. */
    public Collection<Concept> concepts() {
        return concepts.values();
    }

    /** The concepts of a class, such as {@code Fault}, in order of their slugs. */
    public List<Concept> ofClass(String name) {
        return byClass.getOrDefault(name, List.of());
    }

    /** The concept itself, or the one in its place, and everything wider; just itself where the book does not know it. */
    public Set<String> closure(String slug) {
        Set<String> found = wider.get(inUse(slug));
        return found == null ? Set.of(slug) : found;
    }

    /** The concept itself and everything narrower. */
    public Set<String> narrower(String slug) {
        Set<String> found = narrower.get(inUse(slug));
        return found == null ? Set.of(slug) : found;
    }

    /** Whether a concept is the other one or narrower. */
    public boolean isA(String slug, String widerSlug) {
        return closure(slug).contains(widerSlug);
    }

    /** What must be owned before this can be learned, one step back. */
    public List<String> requires(String slug) {
        return requires.getOrDefault(inUse(slug), List.of());
    }

    /** Every pairing of the book. */
    public List<Pairing> pairings() {
        return pairings;
    }

    /** Every fit rule of the book. */
    public List<FitRule> fitRules() {
        return fitRules;
    }

    /** The columns and facets of a film log. */
    public FilmColumns film() {
        return film;
    }

    /** The numbering systems of the alignments. */
    public Numbering numbering() {
        return numbering;
    }

    private static Map<String, Set<String>> closures(Map<String, Concept> concepts) {
        Map<String, Set<String>> result = new HashMap<>();
        for (String slug : concepts.keySet()) {
            Set<String> seen = new LinkedHashSet<>();
            Deque<String> open = new ArrayDeque<>(List.of(slug));
            while (!open.isEmpty()) {
                String at = open.pop();
                if (seen.add(at) && concepts.containsKey(at)) {
                    open.addAll(concepts.get(at).broader());
                }
            }
            result.put(slug, Set.copyOf(seen));
        }
        return result;
    }

    private static Map<String, Set<String>> inverted(Map<String, Set<String>> wider) {
        Map<String, Set<String>> result = new HashMap<>();
        wider.forEach((slug, above) -> above.forEach(
                up -> result.computeIfAbsent(up, u -> new TreeSet<>()).add(slug)));
        result.replaceAll((slug, below) -> Set.copyOf(below));
        return result;
    }

    private static Map<String, List<Concept>> byClass(Collection<Concept> concepts) {
        Map<String, List<Concept>> result = new TreeMap<>();
        for (Concept concept : concepts) {
            concept.classes()
                    .forEach(name ->
                            result.computeIfAbsent(name, n -> new ArrayList<>()).add(concept));
        }
        result.replaceAll((name, list) -> List.copyOf(list));
        return result;
    }
}

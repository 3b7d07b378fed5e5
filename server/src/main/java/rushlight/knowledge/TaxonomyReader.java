package rushlight.knowledge;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;
import org.apache.jena.vocabulary.DCTerms;
import org.apache.jena.vocabulary.RDFS;
import org.apache.jena.vocabulary.SKOS;

/** Turns the statements of the book into records. */
final class TaxonomyReader {
    private static final Node PREF = SKOS.prefLabel.asNode();
    private static final Node ALT = SKOS.altLabel.asNode();
    private static final Node HIDDEN = SKOS.hiddenLabel.asNode();
    private static final Node DEFINITION = SKOS.definition.asNode();
    private static final Node BROADER = SKOS.broader.asNode();
    private static final Node COMMENT = RDFS.comment.asNode();
    private static final Node REPLACED_BY = DCTerms.isReplacedBy.asNode();

    private final Facts facts;
    private final Ontology ontology;

    TaxonomyReader(Ontology ontology) {
        this.facts = new Facts(ontology.graph());
        this.ontology = ontology;
    }

    /** The concepts in use; what was said of a retired one is a hidden label of the concept in its place. */
    Map<String, Concept> concepts() {
        Map<String, String> retired = retired();
        Map<String, List<String>> inherited = new TreeMap<>();
        retired.forEach((old, live) ->
                inherited.computeIfAbsent(live, l -> new ArrayList<>()).addAll(everyLabel(old)));
        Map<String, Concept> result = new TreeMap<>();
        for (Node subject : facts.withProperty(PREF)) {
            String slug = Rl.slug(subject);
            if (Rl.isConcept(subject) && !retired.containsKey(slug)) {
                result.put(slug, concept(subject, inherited.getOrDefault(slug, List.of())));
            }
        }
        return result;
    }

    /** The concept that stands in the place of each retired one, at the end of the chain. */
    Map<String, String> retired() {
        Map<String, String> next = new TreeMap<>();
        for (Node old : facts.withProperty(REPLACED_BY)) {
            next.put(
                    Rl.slug(old), Rl.slug(facts.all(old, REPLACED_BY).iterator().next()));
        }
        Map<String, String> last = new TreeMap<>();
        for (String old : next.keySet()) {
            Set<String> passed = new HashSet<>();
            String at = old;
            while (next.containsKey(at) && passed.add(at)) {
                at = next.get(at);
            }
            if (!next.containsKey(at)) {
                last.put(old, at);
            }
        }
        return last;
    }

    private List<String> everyLabel(String slug) {
        List<String> labels = new ArrayList<>(List.of(slug));
        for (Node property : List.of(PREF, ALT, HIDDEN)) {
            labels.addAll(facts.texts(Rl.concept(slug), property));
        }
        return labels;
    }

    private List<String> hidden(Node subject, List<String> inherited) {
        List<String> labels = new ArrayList<>(facts.texts(subject, HIDDEN));
        labels.addAll(inherited);
        return labels.stream().distinct().toList();
    }

    private Concept concept(Node subject, List<String> inherited) {
        return new Concept(
                Rl.slug(subject),
                facts.classes(subject),
                facts.texts(subject, PREF).stream().findFirst().orElse(Rl.slug(subject)),
                facts.texts(subject, ALT),
                hidden(subject, inherited),
                facts.texts(subject, Rl.term("needsContext")),
                facts.texts(subject, DEFINITION).stream().findFirst().orElse(""),
                facts.all(subject, BROADER).stream().map(Rl::slug).sorted().toList(),
                ontology.isLocal(subject));
    }

    /** Where a property of the schema leads from each concept that has it. */
    Map<String, List<String>> links(String property) {
        Map<String, List<String>> result = new TreeMap<>();
        for (Node subject : facts.withProperty(Rl.term(property))) {
            if (Rl.isConcept(subject)) {
                result.put(Rl.slug(subject), facts.slugs(subject, property));
            }
        }
        return result;
    }

    List<Pairing> pairings() {
        return facts.ofClass("Pairing").stream()
                .map(p -> new Pairing(
                        Rl.slug(p),
                        facts.slug(p, "primary"),
                        facts.slug(p, "trigger"),
                        one(p, "counter"),
                        Integer.parseInt(text(p, "rank")),
                        facts.text(p, "side").orElse(""),
                        Set.copyOf(facts.texts(p, Rl.term("timing"))),
                        facts.text(p, "because").orElse(""),
                        facts.text(p, "support").orElse(""),
                        ontology.isLocal(p)))
                .toList();
    }

    List<FitRule> fitRules() {
        return facts.ofClass("FitRule").stream()
                .map(r -> new FitRule(
                        Rl.slug(r),
                        one(r, "block"),
                        one(r, "assignment"),
                        Set.copyOf(facts.slugs(r, "right")),
                        Set.copyOf(facts.slugs(r, "wrong")),
                        joined(facts.texts(r, Rl.term("onlyIf"))),
                        facts.texts(r, Rl.term("dependsOn")),
                        facts.all(r, Rl.term("caveat")).stream()
                                .map(c -> new FitRule.Caveat(
                                        Set.copyOf(facts.slugs(c, "flips")),
                                        facts.text(c, "dependsOn").orElse("")))
                                .toList(),
                        ontology.isLocal(r)))
                .toList();
    }

    FilmColumns film() {
        List<Column> columns =
                facts.ofClass("Column").stream().map(this::column).toList();
        List<StepFacet> steps = facts.ofClass("StepFacet").stream()
                .map(f -> new StepFacet(
                        Rl.slug(f),
                        text(f, "by"),
                        Set.copyOf(facts.slugs(f, "ofClass")),
                        facts.slug(f, "passesOver"),
                        facts.slug(f, "finishing")))
                .toList();
        Set<String> derived = facts.ofClass("Facet").stream().map(Rl::slug).collect(Collectors.toSet());
        return new FilmColumns(columns, steps, derived, implausible(), unsaid());
    }

    private List<ImplausiblePair> implausible() {
        return facts.ofClass("ImplausiblePair").stream()
                .map(p -> new ImplausiblePair(
                        text(p, "columnName"),
                        text(p, "value"),
                        text(p, "besideColumn"),
                        Set.copyOf(facts.slugs(p, "beside"))))
                .toList();
    }

    private Map<String, String> unsaid() {
        Map<String, String> result = new TreeMap<>();
        for (Node column : facts.ofClass("Column")) {
            facts.slug(column, "unsaid").ifPresent(slug -> result.put(text(column, "columnName"), slug));
        }
        return result;
    }

    Numbering numbering() {
        List<Numbering.Label> labels = facts.ofClass("NumberedLabel").stream()
                .map(n -> new Numbering.Label(
                        facts.all(n, Rl.term("numberingSystem")).stream()
                                .findFirst()
                                .map(system -> text(system, "systemName"))
                                .orElse(""),
                        text(n, "number"),
                        Integer.parseInt(text(n, "rank")),
                        one(n, "atPosition")))
                .toList();
        Map<String, String> positions = new TreeMap<>();
        for (Node alignment : facts.ofClass("Alignment")) {
            facts.slug(alignment, "atPosition").ifPresent(at -> positions.put(Rl.slug(alignment), at));
        }
        return new Numbering(labels, positions);
    }

    private String text(Node subject, String property) {
        return facts.text(subject, property).orElseThrow(() -> lacks(subject, property));
    }

    private Column column(Node c) {
        String kind = text(c, "valueKind");
        return new Column(
                text(c, "columnName"),
                facts.texts(c, Rl.term("otherColumnName")),
                Integer.parseInt(text(c, "order")),
                facts.slug(c, "facet").orElse(""),
                Column.Kind.valueOf(kind.toUpperCase(Locale.ROOT)),
                facts.list(c, "oneOf").stream().map(Node::getLiteralLexicalForm).toList(),
                Set.copyOf(facts.slugs(c, "ofClass")),
                facts.slug(c, "narrowerThan"),
                facts.yes(c, "list"),
                facts.yes(c, "required"),
                facts.texts(c, COMMENT).stream().findFirst().orElse(""));
    }

    private static Optional<String> joined(List<String> conditions) {
        return conditions.isEmpty() ? Optional.empty() : Optional.of(String.join(" and ", conditions));
    }

    private String one(Node subject, String property) {
        return facts.slug(subject, property).orElseThrow(() -> lacks(subject, property));
    }

    private static BrokenBookException lacks(Node subject, String property) {
        return new BrokenBookException("The book's " + Rl.slug(subject) + " lacks rl:" + property + ".");
    }
}

package rushlight.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.Triple;
import org.apache.jena.reasoner.Derivation;
import org.apache.jena.reasoner.InfGraph;
import org.apache.jena.reasoner.rulesys.RuleDerivation;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.film.Step;
import rushlight.knowledge.Column;
import rushlight.knowledge.FitRule;
import rushlight.knowledge.Pairing;
import rushlight.knowledge.Rl;
import rushlight.knowledge.StepFacet;
import rushlight.knowledge.Taxonomy;

/** Walks the derivations of one reading back to the tags and to the book. */
final class Explainer {
    /** What one conclusion rests on, gathered on the way down. */
    private static final class Found {
        private final Set<String> through = new LinkedHashSet<>();
        private final Set<Integer> steps = new TreeSet<>();
        private final Set<Explanation.Tag> cells = new LinkedHashSet<>();
        private final Set<String> book = new TreeSet<>();
        private final Set<Triple> walked = new HashSet<>();
    }

    private final RuleBook rules;
    private final Reading reading;
    private final RepFacts facts;
    private final InfGraph tags;
    private final InfGraph absence;
    private final Taxonomy taxonomy;
    private final Map<String, FitRule> fits;
    private final Set<String> pairings;

    Explainer(RuleBook rules, Taxonomy taxonomy, Reading reading, RepFacts facts, InfGraph tags, InfGraph absence) {
        this.rules = rules;
        this.taxonomy = taxonomy;
        this.reading = reading;
        this.facts = facts;
        this.tags = tags;
        this.absence = absence;
        this.fits = taxonomy.fitRules().stream().collect(Collectors.toMap(FitRule::id, Function.identity()));
        this.pairings = taxonomy.pairings().stream().map(Pairing::id).collect(Collectors.toUnmodifiableSet());
    }

    /** Every firing that concluded a class, by class and then by rule. */
    List<Explanation> explain() {
        Set<Explanation> all = new LinkedHashSet<>();
        for (InfGraph stratum : List.of(tags, absence)) {
            stratum.getDeductionsGraph()
                    .find(Node.ANY, Term.REP_CLASS, Node.ANY)
                    .forEachRemaining(concluded -> derivations(stratum, concluded)
                            .forEach(d -> all.add(explanation(Rl.slug(concluded.getObject()), d))));
        }
        return all.stream()
                .sorted(Comparator.comparing(Explanation::repClass).thenComparing(Explanation::rule))
                .toList();
    }

    private Explanation explanation(String repClass, RuleDerivation derivation) {
        Found found = new Found();
        derivation.getMatches().forEach(fact -> walk(fact, found));
        List<Explanation.Tag> all = new ArrayList<>(found.cells);
        found.steps.forEach(i ->
                all.add(new Explanation.Tag("exchange", step(reading.exchange().get(i)))));
        String rule = derivation.getRule().getName();
        return new Explanation(
                repClass,
                rule,
                rules.sentence(rule),
                List.copyOf(found.through),
                all,
                List.copyOf(found.book),
                hangsOn(found));
    }

    private void walk(Triple fact, Found found) {
        if (!found.walked.add(fact)) {
            return;
        }
        noteNode(fact.getSubject(), found);
        noteNode(fact.getObject(), found);
        List<RuleDerivation> deeper = derivations(tags, fact);
        if (deeper.isEmpty()) {
            deeper = derivations(absence, fact);
        }
        if (deeper.isEmpty()) {
            cell(fact).ifPresent(found.cells::add);
            noteSteps(fact, found);
            return;
        }
        RuleDerivation first = deeper.get(0);
        found.through.add(rules.sentence(first.getRule().getName()));
        first.getMatches().forEach(match -> walk(match, found));
    }

    private void noteNode(Node node, Found found) {
        OptionalInt step = RepLayout.step(node);
        step.ifPresent(found.steps::add);
        if (Rl.isConcept(node) && (pairings.contains(Rl.slug(node)) || fits.containsKey(Rl.slug(node)))) {
            found.book.add(Rl.slug(node));
        }
    }

    /** The steps that a facet of the exchange was read from. */
    private void noteSteps(Triple fact, Found found) {
        Optional<StepFacet> facet = taxonomy.film().stepFacet(Rl.slug(fact.getPredicate()));
        if (facet.isEmpty() || !fact.getObject().isURI()) {
            return;
        }
        Step.By by = facet.get().by().equals("him") ? Step.By.HIM : Step.By.BLOCKER;
        for (int i = 0; i < reading.exchange().size(); i++) {
            Step step = reading.exchange().get(i);
            if (step.by() == by && taxonomy.isA(step.concept(), Rl.slug(fact.getObject()))) {
                found.steps.add(i);
            }
        }
    }

    /** The cell that a fact about the rep as a whole was read from. */
    private Optional<Explanation.Tag> cell(Triple fact) {
        String facet = Rl.slug(fact.getPredicate());
        if (fact.getPredicate().equals(Term.BLANK)) {
            return Optional.of(new Explanation.Tag(fact.getObject().getLiteralLexicalForm(), ""));
        }
        Optional<Column> column = taxonomy.film()
                .ofFacet(facet)
                .or(() -> taxonomy.film()
                        .ofFacet(facet.replaceFirst("First$", ""))
                        .filter(c -> facet.endsWith("First")));
        if (column.isEmpty() || RepLayout.step(fact.getSubject()).isPresent() || Rl.isConcept(fact.getSubject())) {
            return Optional.empty();
        }
        String value = fact.getObject().isURI()
                ? Rl.slug(fact.getObject())
                : fact.getObject().getLiteralLexicalForm();
        String tagged = facts.tagged(column.get().facet()).stream()
                .sorted()
                .filter(v -> taxonomy.isA(v, value))
                .findFirst()
                .orElse(value);
        return Optional.of(new Explanation.Tag(column.get().name(), tagged));
    }

    private List<String> hangsOn(Found found) {
        Set<String> words = new LinkedHashSet<>();
        Set<String> done = new HashSet<>(facts.tagged("fault"));
        found.steps.forEach(
                i -> done.addAll(taxonomy.closure(reading.exchange().get(i).concept())));
        for (String id : found.book) {
            FitRule rule = fits.get(id);
            if (rule != null) {
                words.addAll(rule.dependsOn());
                rule.caveats().stream()
                        .filter(caveat -> caveat.flips().stream().anyMatch(done::contains))
                        .forEach(caveat -> words.add(caveat.dependsOn()));
            }
        }
        return List.copyOf(words);
    }

    private static List<RuleDerivation> derivations(InfGraph stratum, Triple fact) {
        List<RuleDerivation> all = new ArrayList<>();
        Iterator<Derivation> each = stratum.getDerivation(fact);
        while (each != null && each.hasNext()) {
            if (each.next() instanceof RuleDerivation derivation) {
                all.add(derivation);
            }
        }
        return all;
    }

    private static String step(Step step) {
        String words = step.concept() + step.hand().map(hand -> "@" + hand).orElse("");
        return step.by() == Step.By.HIM ? words : "[" + words + "]";
    }
}

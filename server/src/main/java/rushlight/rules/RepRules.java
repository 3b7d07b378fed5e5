package rushlight.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.reasoner.InfGraph;
import org.apache.jena.reasoner.rulesys.GenericRuleReasoner;
import org.apache.jena.reasoner.rulesys.Rule;
import rushlight.film.FactMaker;
import rushlight.film.Log;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.knowledge.Ontology;
import rushlight.knowledge.Rl;
import rushlight.knowledge.Taxonomy;

/**
 * Says which classes a rep belongs to. The first stratum has no negation; the second runs over the same facts and
 * everything the first concluded, in a pass of its own.
 */
public final class RepRules {
    private static final int BATCH = 100;

    private final RuleBook rules;
    private final Taxonomy taxonomy;
    private final FactMaker maker;
    private final RepLayout layout;
    private final Mentions inTags;
    private final Mentions inAbsence;

    private RepRules(RuleBook rules, Ontology ontology, Taxonomy taxonomy) {
        this.rules = rules;
        this.taxonomy = taxonomy;
        this.maker = new FactMaker(ontology, taxonomy);
        this.inTags = new Mentions(rules.tags());
        this.inAbsence = new Mentions(rules.absence());
        List<Rule> all = new ArrayList<>(rules.tags());
        all.addAll(rules.absence());
        Mentions both = new Mentions(all);
        this.layout = new RepLayout(
                maker,
                new FacetFacts(taxonomy, both),
                new BookSlice(ontology, taxonomy, both),
                new FitSlice(ontology, taxonomy));
    }

    /** The shipped rules over a book. */
    public static RepRules of(Ontology ontology, Taxonomy taxonomy) {
        return of(RuleBook.packaged(), ontology, taxonomy);
    }

    static RepRules of(RuleBook rules, Ontology ontology, Taxonomy taxonomy) {
        return new RepRules(rules, ontology, taxonomy);
    }

    /**
     * The facts of each reading with its rep classes, in the same order.
     *
     * @param charted list columns that stood in the header
     */
    public List<RepFacts> classify(List<Reading> readings, Set<String> charted) {
        List<RepFacts> out = new ArrayList<>(readings.size());
        for (int from = 0; from < readings.size(); from += BATCH) {
            out.addAll(classifyBatch(readings.subList(from, Math.min(from + BATCH, readings.size())), charted));
        }
        return out;
    }

    /** The facts of each reading of a log with its rep classes, in the order of the log. */
    public List<RepFacts> factsOf(Log log) {
        return classify(log.readings(), log.charted());
    }

    /** The facts of one reading with its rep classes. */
    public RepFacts classify(Reading reading, Set<String> charted) {
        return classify(List.of(reading), charted).get(0);
    }

    /** Why a reading has its classes: every rule that fired, what it says, and the tags it fired on. */
    public List<Explanation> explain(Reading reading, Set<String> charted) {
        RepFacts facts = maker.facts(reading, charted);
        Pass pass = trace(reading, facts);
        return new Explainer(rules, taxonomy, reading, facts, pass.tags(), pass.absence()).explain();
    }

    /** Both strata over one reading, with every derivation kept. */
    Pass trace(Reading reading, RepFacts facts) {
        return run(List.of(reading), List.of(facts), true);
    }

    private List<RepFacts> classifyBatch(List<Reading> readings, Set<String> charted) {
        List<RepFacts> facts =
                readings.stream().map(reading -> maker.facts(reading, charted)).toList();
        Pass pass = run(readings, facts, false);
        List<Set<String>> classes = new ArrayList<>();
        readings.forEach(reading -> classes.add(new TreeSet<>()));
        for (InfGraph concluded : List.of(pass.tags(), pass.absence())) {
            concluded
                    .getDeductionsGraph()
                    .find(Node.ANY, Term.REP_CLASS, Node.ANY)
                    .forEachRemaining(
                            t -> classes.get(RepLayout.place(t.getSubject())).add(Rl.slug(t.getObject())));
        }
        List<RepFacts> out = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            out.add(maker.with(facts.get(i), classes.get(i)));
        }
        return out;
    }

    /** What both strata concluded. */
    record Pass(InfGraph tags, InfGraph absence) {}

    private Pass run(List<Reading> readings, List<RepFacts> facts, boolean logged) {
        Sheet sheet = new Sheet(inTags, inAbsence);
        for (int i = 0; i < readings.size(); i++) {
            layout.write(i, readings.get(i), facts.get(i), sheet);
        }
        InfGraph first = run(rules.tags(), sheet.tags(), logged);
        first.getDeductionsGraph().find().filterKeep(inAbsence::canUse).forEachRemaining(sheet.absence()::add);
        return new Pass(first, run(rules.absence(), sheet.absence(), logged));
    }

    private static InfGraph run(List<Rule> stratum, Graph facts, boolean logged) {
        GenericRuleReasoner reasoner = new GenericRuleReasoner(stratum);
        reasoner.setMode(GenericRuleReasoner.FORWARD_RETE);
        reasoner.setDerivationLogging(logged);
        InfGraph concluded = reasoner.bind(facts);
        concluded.prepare();
        return concluded;
    }
}

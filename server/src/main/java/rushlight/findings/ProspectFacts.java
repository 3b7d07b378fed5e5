package rushlight.findings;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.jena.datatypes.xsd.XSDDatatype;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import rushlight.evidence.Rate;
import rushlight.evidence.Verdict;
import rushlight.knowledge.Rl;

/**
 * What the prospect rules are told of one prospect: of every finding with an opportunity its word and counts, his main move,
 * and how the findings hang together.
 *
 * @param findings the judged findings
 * @param primary the slug of his main move
 * @param primaryIs the move and everything wider
 * @param combining the findings that are concluded from others
 */
record ProspectFacts(
        Collection<Judged> findings, Optional<String> primary, Set<String> primaryIs, Collection<Finding> combining) {
    /** From which share on a rate counts as good in a rule about two of them. */
    private static final double GOOD = 0.60;

    private static final Node YES = NodeFactory.createLiteralString("yes");

    List<Triple> triples(Node he, String verdicts) {
        List<Triple> facts = new ArrayList<>();
        List<Judged> told = findings.stream()
                .filter(one -> one.outcome().rate().opportunities() > 0)
                .toList();
        told.forEach(one -> addVerdict(facts, he, verdicts, one));
        primary.ifPresent(move -> facts.add(Triple.create(he, Rl.term("primary"), Rl.concept(move))));
        primaryIs.forEach(wider -> facts.add(Triple.create(he, Rl.term("primaryIs"), Rl.concept(wider))));
        Set<String> slugs = told.stream().map(one -> one.finding().slug()).collect(Collectors.toUnmodifiableSet());
        told.forEach(one -> {
            link(facts, one.finding(), "contradicts", one.finding().links().contradicts(), slugs);
            link(facts, one.finding(), "explainedBy", one.finding().links().explainedBy(), slugs);
        });
        combining.forEach(
                finding -> link(facts, finding, "combines", finding.links().combines(), slugs));
        return facts;
    }

    private static void addVerdict(List<Triple> facts, Node he, String verdicts, Judged judged) {
        Node verdict = NodeFactory.createURI(verdicts + judged.finding().slug());
        Rate rate = judged.outcome().rate();
        facts.add(Triple.create(he, Rl.term("verdict"), verdict));
        facts.add(Triple.create(
                verdict, Rl.term("finding"), Rl.concept(judged.finding().slug())));
        facts.add(Triple.create(
                verdict,
                Rl.term("word"),
                NodeFactory.createLiteralString(judged.verdict().slug())));
        facts.add(Triple.create(verdict, Rl.term("opportunities"), integer(rate.opportunities())));
        facts.add(Triple.create(verdict, Rl.term("events"), integer(rate.events())));
        judged.outcome().share().ifPresent(share -> facts.add(Triple.create(verdict, Rl.term("rate"), decimal(share))));
        if (judged.verdict().stands()) {
            facts.add(Triple.create(verdict, Rl.term("fires"), YES));
        }
        if (judged.verdict() != Verdict.NOT_ENOUGH_TAPE) {
            facts.add(Triple.create(verdict, Rl.term("enough"), YES));
        }
        if (rate.share().orElse(0) >= GOOD) {
            facts.add(Triple.create(verdict, Rl.term("above60"), YES));
        }
    }

    private static void link(
            List<Triple> facts, Finding from, String property, Collection<String> to, Set<String> known) {
        to.stream()
                .filter(known::contains)
                .forEach(
                        slug -> facts.add(Triple.create(Rl.concept(from.slug()), Rl.term(property), Rl.concept(slug))));
    }

    private static Node integer(int value) {
        return NodeFactory.createLiteralDT(Integer.toString(value), XSDDatatype.XSDinteger);
    }

    private static Node decimal(double value) {
        return NodeFactory.createLiteralDT(
                BigDecimal.valueOf(value)
                        .setScale(4, java.math.RoundingMode.HALF_EVEN)
                        .toPlainString(),
                XSDDatatype.XSDdecimal);
    }
}

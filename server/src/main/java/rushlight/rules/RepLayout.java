package rushlight.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import rushlight.film.FactMaker;
import rushlight.film.Openings;
import rushlight.film.Reading;
import rushlight.film.RepFacts;
import rushlight.film.Step;
import rushlight.knowledge.Rl;

/** Lays out one reading for the rules: its facets, its steps and their order, and the part of the book they touch. */
final class RepLayout {
    private static final String REP = "urn:rep:";
    private static final String STEP = "/step/";
    private static final String DUTY = "assignment";
    private static final String FAULT = "fault";

    private final FactMaker maker;
    private final FacetFacts facets;
    private final BookSlice book;
    private final FitSlice fits;

    RepLayout(FactMaker maker, FacetFacts facets, BookSlice book, FitSlice fits) {
        this.maker = maker;
        this.facets = facets;
        this.book = book;
        this.fits = fits;
    }

    /** The node of the reading at a place of its batch. */
    static Node rep(int place) {
        return NodeFactory.createURI(REP + place);
    }

    /** The place in its batch of the reading a node stands for. */
    static int place(Node rep) {
        return Integer.parseInt(rep.getURI().substring(REP.length()));
    }

    /** The place in the exchange of the step a node stands for; empty where it is no step. */
    static OptionalInt step(Node node) {
        int at = node.isURI() && node.getURI().startsWith(REP) ? node.getURI().indexOf(STEP) : -1;
        return at < 0
                ? OptionalInt.empty()
                : OptionalInt.of(Integer.parseInt(node.getURI().substring(at + STEP.length())));
    }

    /** Puts the facts of one reading on a sheet. */
    void write(int place, Reading reading, RepFacts facts, Sheet out) {
        Node rep = rep(place);
        facets.write(rep, reading, facts, out::put);
        for (String duty : facts.tagged(DUTY)) {
            book.ofConcept(duty).forEach(link -> out.put(link.of(Rl.concept(duty))));
        }
        List<Step> exchange = reading.exchange();
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < exchange.size(); i++) {
            nodes.add(NodeFactory.createURI(rep.getURI() + STEP + i));
        }
        for (int i = 0; i < exchange.size(); i++) {
            Node step = nodes.get(i);
            String concept = exchange.get(i).concept();
            out.put(Triple.create(rep, isHis(exchange.get(i)) ? Term.HIS_STEP : Term.BLOCKER_STEP, step));
            out.put(Triple.create(step, Term.DOES, Rl.concept(concept)));
            book.ofConcept(concept).forEach(link -> out.put(link.of(step)));
            writeOrder(exchange, nodes, i, out);
        }
        writeMoves(rep, exchange, nodes, out);
        writeBlocks(facts, exchange, nodes, out);
    }

    private void writeOrder(List<Step> exchange, List<Node> nodes, int i, Sheet out) {
        if (i + 1 < exchange.size()) {
            out.put(Triple.create(nodes.get(i), Term.NEXT, nodes.get(i + 1)));
        }
        boolean his = isHis(exchange.get(i));
        for (int j = i + 1; j < exchange.size(); j++) {
            boolean alsoHis = isHis(exchange.get(j));
            if (his && !alsoHis) {
                out.put(Triple.create(nodes.get(i), Term.ANSWERED_BY, nodes.get(j)));
                writePairings(exchange, nodes, i, j, out);
            } else if (alsoHis) {
                out.put(Triple.create(nodes.get(i), his ? Term.BEFORE : Term.FOLLOWED_BY, nodes.get(j)));
            }
        }
    }

    private void writePairings(List<Step> exchange, List<Node> nodes, int his, int blockers, Sheet out) {
        for (BookSlice.Touched touched :
                book.touched(exchange.get(his).concept(), exchange.get(blockers).concept())) {
            Node pairing = touched.node();
            out.putShared(touched.shared());
            out.put(Triple.create(
                    nodes.get(blockers), touched.exact() ? Term.TRIGGER_OF : Term.PERHAPS_TRIGGER_OF, pairing));
            if (touched.pairing().primary().isPresent()) {
                out.put(Triple.create(nodes.get(his), Term.PRIMARY_OF, pairing));
            }
            for (int k = blockers + 1; k < exchange.size(); k++) {
                if (isHis(exchange.get(k))) {
                    String step = exchange.get(k).concept();
                    link(
                            nodes.get(k),
                            step,
                            touched.pairing().counter(),
                            Term.COUNTER_OF,
                            Term.PERHAPS_COUNTER_OF,
                            pairing,
                            out);
                }
            }
        }
    }

    private void link(Node step, String concept, String counter, Node sure, Node perhaps, Node to, Sheet out) {
        if (book.counts(concept, counter)) {
            out.put(Triple.create(step, sure, to));
        } else if (book.mayBe(concept, counter)) {
            out.put(Triple.create(step, perhaps, to));
        }
    }

    private void writeMoves(Node rep, List<Step> exchange, List<Node> nodes, Sheet out) {
        Openings openings = maker.openings();
        OptionalInt opening = openings.opening(exchange);
        if (opening.isEmpty()) {
            return;
        }
        int first = opening.getAsInt();
        List<Integer> later = openings.laterMoves(exchange);
        out.put(Triple.create(rep, Term.OPENING, nodes.get(first)));
        out.put(Triple.create(rep, Term.LATER_MOVES, Term.number(later.size())));
        later.forEach(i -> out.put(Triple.create(rep, Term.LATER_MOVE, nodes.get(i))));
        int last = later.isEmpty() ? first : later.get(later.size() - 1);
        out.put(Triple.create(rep, Term.LAST_MOVE, nodes.get(last)));
        writeTaught(exchange, nodes, first, out);
        if (!later.isEmpty()) {
            out.put(Triple.create(rep, Term.SECOND_MOVE, nodes.get(later.get(0))));
            writeTaught(exchange, nodes, later.get(0), out);
        }
        Set<String> general = book.general(exchange.get(first).concept());
        for (int i = first + 1; i < exchange.size(); i++) {
            if (isHis(exchange.get(i))) {
                for (String counter : general) {
                    link(
                            nodes.get(i),
                            exchange.get(i).concept(),
                            counter,
                            Term.GENERAL_COUNTER_TO,
                            Term.PERHAPS_GENERAL_COUNTER_TO,
                            nodes.get(first),
                            out);
                }
            }
        }
    }

    private void writeTaught(List<Step> exchange, List<Node> nodes, int his, Sheet out) {
        for (int i = 0; i < exchange.size(); i++) {
            if (!isHis(exchange.get(i))
                    && book.isTaughtFor(
                            exchange.get(his).concept(), exchange.get(i).concept())) {
                out.put(Triple.create(nodes.get(his), Term.TAUGHT_FOR, nodes.get(i)));
            }
        }
    }

    private void writeBlocks(RepFacts facts, List<Step> exchange, List<Node> nodes, Sheet out) {
        List<Integer> blocks = new ArrayList<>();
        for (int i = 0; i < exchange.size(); i++) {
            if (!isHis(exchange.get(i)) && fits.isJudged(exchange.get(i).concept())) {
                blocks.add(i);
            }
        }
        Set<String> duties = blocks.isEmpty() ? Set.of() : duties(facts);
        for (int b = 0; b < blocks.size(); b++) {
            List<Integer> answers = new ArrayList<>();
            int to = b + 1 < blocks.size() ? blocks.get(b + 1) : exchange.size();
            for (int i = b == 0 ? 0 : blocks.get(b); i < to; i++) {
                if (isHis(exchange.get(i))) {
                    answers.add(i);
                    out.put(Triple.create(nodes.get(blocks.get(b)), Term.ANSWER, nodes.get(i)));
                }
            }
            for (String duty : duties) {
                for (FitSlice.Rule rule :
                        fits.ofBlock(exchange.get(blocks.get(b)).concept(), duty)) {
                    out.put(Triple.create(nodes.get(blocks.get(b)), Term.JUDGED_BY, rule.node()));
                    writeFit(rule, facts, exchange, nodes, answers, out);
                }
            }
        }
    }

    private void writeFit(
            FitSlice.Rule rule,
            RepFacts facts,
            List<Step> exchange,
            List<Node> nodes,
            List<Integer> answers,
            Sheet out) {
        out.putShared(rule.shared());
        for (int i : answers) {
            if (fits.isRight(rule, exchange.get(i).concept())) {
                out.put(Triple.create(nodes.get(i), Term.RIGHT_BY, rule.node()));
            }
            if (fits.isWrong(rule, exchange.get(i).concept())) {
                out.put(Triple.create(nodes.get(i), Term.WRONG_BY, rule.node()));
            }
        }
        for (String fault : facts.tagged(FAULT)) {
            if (fits.isWrong(rule, fault)) {
                out.put(Triple.create(Rl.concept(fault), Term.LOSES_BY, rule.node()));
            }
        }
    }

    /** His duty; where the reading says that nobody knows it, every duty for which there are rules. */
    private Set<String> duties(RepFacts facts) {
        if (maker.isUnsaid(DUTY, facts)) {
            return fits.duties();
        }
        Set<String> his = new HashSet<>(facts.closed().getOrDefault(DUTY, Set.of()));
        his.retainAll(fits.duties());
        return his;
    }

    private static boolean isHis(Step step) {
        return step.by() == Step.By.HIM;
    }
}

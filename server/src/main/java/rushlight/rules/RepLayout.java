package rushlight.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
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

    private final FactMaker maker;
    private final FacetFacts facets;
    private final BookSlice book;

    RepLayout(FactMaker maker, FacetFacts facets, BookSlice book) {
        this.maker = maker;
        this.facets = facets;
        this.book = book;
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

    /** Hands the facts of one reading to {@code out}; some are handed over more than once. */
    void write(int place, Reading reading, RepFacts facts, Consumer<Triple> out) {
        Node rep = rep(place);
        facets.write(rep, reading, facts, out);
        facts.tagged("assignment").forEach(duty -> book.ofConcept(duty).forEach(out));
        List<Step> exchange = reading.exchange();
        List<Node> nodes = new ArrayList<>();
        for (int i = 0; i < exchange.size(); i++) {
            nodes.add(NodeFactory.createURI(rep.getURI() + STEP + i));
        }
        for (int i = 0; i < exchange.size(); i++) {
            Step step = exchange.get(i);
            out.accept(Triple.create(rep, isHis(step) ? Term.HIS_STEP : Term.BLOCKER_STEP, nodes.get(i)));
            out.accept(Triple.create(nodes.get(i), Term.DOES, Rl.concept(step.concept())));
            book.ofConcept(step.concept()).forEach(out);
            writeOrder(exchange, nodes, i, out);
        }
        writeMoves(rep, exchange, nodes, out);
        writeBlocks(rep, facts, exchange, nodes, out);
    }

    private void writeOrder(List<Step> exchange, List<Node> nodes, int i, Consumer<Triple> out) {
        if (i + 1 < exchange.size()) {
            out.accept(Triple.create(nodes.get(i), Term.NEXT, nodes.get(i + 1)));
        }
        boolean his = isHis(exchange.get(i));
        for (int j = i + 1; j < exchange.size(); j++) {
            boolean alsoHis = isHis(exchange.get(j));
            if (his && !alsoHis) {
                out.accept(Triple.create(nodes.get(i), Term.ANSWERED_BY, nodes.get(j)));
                book.ofPair(exchange.get(i).concept(), exchange.get(j).concept())
                        .forEach(out);
            } else if (alsoHis) {
                out.accept(Triple.create(nodes.get(i), his ? Term.BEFORE : Term.FOLLOWED_BY, nodes.get(j)));
            }
        }
    }

    private void writeMoves(Node rep, List<Step> exchange, List<Node> nodes, Consumer<Triple> out) {
        Openings openings = maker.openings();
        OptionalInt opening = openings.opening(exchange);
        if (opening.isEmpty()) {
            return;
        }
        int first = opening.getAsInt();
        List<Integer> later = openings.laterMoves(exchange);
        out.accept(Triple.create(rep, Term.OPENING, nodes.get(first)));
        out.accept(Triple.create(rep, Term.LATER_MOVES, Term.number(later.size())));
        later.forEach(i -> out.accept(Triple.create(rep, Term.LATER_MOVE, nodes.get(i))));
        int last = later.isEmpty() ? first : later.get(later.size() - 1);
        out.accept(Triple.create(rep, Term.LAST_MOVE, nodes.get(last)));
        writeTaught(exchange, first, out);
        if (!later.isEmpty()) {
            out.accept(Triple.create(rep, Term.SECOND_MOVE, nodes.get(later.get(0))));
            writeTaught(exchange, later.get(0), out);
        }
        for (int i = first + 1; i < exchange.size(); i++) {
            if (isHis(exchange.get(i))) {
                out.accept(Triple.create(rep, Term.AFTER_OPENING, nodes.get(i)));
            }
        }
    }

    private void writeTaught(List<Step> exchange, int his, Consumer<Triple> out) {
        String move = exchange.get(his).concept();
        for (Step step : exchange) {
            if (!isHis(step) && book.taughtFor(move, step.concept())) {
                out.accept(Triple.create(Rl.concept(move), Term.TAUGHT_FOR, Rl.concept(step.concept())));
            }
        }
    }

    private void writeBlocks(Node rep, RepFacts facts, List<Step> exchange, List<Node> nodes, Consumer<Triple> out) {
        List<Integer> blocks = new ArrayList<>();
        for (int i = 0; i < exchange.size(); i++) {
            if (!isHis(exchange.get(i)) && book.isJudged(exchange.get(i).concept())) {
                blocks.add(i);
            }
        }
        if (blocks.isEmpty()) {
            return;
        }
        Set<String> duties = duties(facts);
        duties.forEach(duty -> out.accept(Triple.create(rep, Term.DUTY_MAY_BE, Rl.concept(duty))));
        for (int b = 0; b < blocks.size(); b++) {
            int from = b == 0 ? 0 : blocks.get(b);
            int to = b + 1 < blocks.size() ? blocks.get(b + 1) : exchange.size();
            for (int i = from; i < to; i++) {
                if (isHis(exchange.get(i))) {
                    out.accept(Triple.create(nodes.get(blocks.get(b)), Term.ANSWER, nodes.get(i)));
                }
            }
            String block = exchange.get(blocks.get(b)).concept();
            duties.forEach(duty -> book.ofFit(block, duty).forEach(out));
        }
    }

    /** His duty; where the reading says that nobody knows it, every duty for which there are rules. */
    private Set<String> duties(RepFacts facts) {
        if (maker.isUnsaid("assignment", facts)) {
            return book.duties();
        }
        Set<String> his = new HashSet<>(facts.closed().getOrDefault("assignment", Set.of()));
        his.retainAll(book.duties());
        return his;
    }

    private static boolean isHis(Step step) {
        return step.by() == Step.By.HIM;
    }
}

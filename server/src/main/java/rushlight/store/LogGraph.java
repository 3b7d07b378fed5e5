package rushlight.store;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.apache.jena.datatypes.xsd.XSDDatatype;
import org.apache.jena.graph.Graph;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import org.apache.jena.graph.Triple;
import org.apache.jena.vocabulary.RDF;
import org.apache.jena.vocabulary.RDFS;
import rushlight.film.Game;
import rushlight.film.Identity;
import rushlight.film.Log;
import rushlight.film.LogId;
import rushlight.film.Prospect;
import rushlight.film.Reading;
import rushlight.film.Step;
import rushlight.knowledge.Column;
import rushlight.knowledge.FilmColumns;
import rushlight.knowledge.Rl;

/**
 * The triples a log becomes: as charted, nothing derived but the rep classes. Who, which game and which columns were
 * charted stand once, on the log.
 */
public final class LogGraph {
    private static final Node TYPE = RDF.type.asNode();
    private static final Node LABEL = RDFS.label.asNode();
    private static final Set<String> ON_THE_LOG =
            Set.of("rep", "prospect", "game", "date", "level", "opponent", "evaluator");

    private final List<Column> perReading;

    /** Writes with the columns of the book. */
    public LogGraph(FilmColumns columns) {
        this.perReading = columns.all().stream()
                .filter(c -> c.kind() != Column.Kind.EXCHANGE && !ON_THE_LOG.contains(c.name()))
                .toList();
    }

    /** The address parts of a log. */
    public static LogId idOf(Log log) {
        return new LogId(
                Identity.slug(log.evaluator()), log.prospect().id(), log.game().id());
    }

    /**
     * Hands every triple of a log to {@code out}.
     *
     * @param classes rep classes of each reading, in the order of the readings
     * @param rules fingerprint of the book whose rules concluded the classes
     * @param when time of the import
     */
    public void write(Log log, List<Set<String>> classes, String rules, Instant when, Consumer<Triple> out) {
        LogId id = idOf(log);
        Node node = Addresses.log(id);
        writeHead(log, id, node, out);
        add(out, node, Terms.RULES_REVISION, Literals.of(rules));
        add(out, node, Terms.GENERATED, Literals.of(when));
        for (int i = 0; i < log.readings().size(); i++) {
            Reading reading = log.readings().get(i);
            writeReading(reading, Addresses.reading(reading.rep(), id.evaluator()), node, i, classes.get(i), out);
        }
    }

    static void reclassify(Graph film, LogId id, Classified classified, String rules) {
        Node log = Addresses.log(id);
        film.remove(log, Terms.RULES_REVISION, Node.ANY);
        film.add(Triple.create(log, Terms.RULES_REVISION, Literals.of(rules)));
        for (int i = 0; i < classified.classes().size(); i++) {
            Node reading = Addresses.reading(classified.log().readings().get(i).rep(), id.evaluator());
            film.remove(reading, Terms.REP_CLASS, Node.ANY);
            classified.classes().get(i).forEach(name -> add(film::add, reading, Terms.REP_CLASS, Rl.concept(name)));
        }
    }

    /** Hands the triples of a log, but not those of its readings, to {@code out}. */
    void writeHead(Log log, LogId id, Node node, Consumer<Triple> out) {
        Node person = Addresses.person(id.evaluator());
        Node file = Addresses.file(log.source().sha256());
        add(out, node, TYPE, Terms.LOG_CLASS);
        add(out, node, Terms.PROSPECT, Addresses.prospect(id.prospect()));
        add(out, node, Terms.GAME, Addresses.game(id.game()));
        add(out, node, Terms.EVALUATOR, person);
        add(out, node, Terms.ATTRIBUTED, person);
        add(out, person, LABEL, Literals.of(log.evaluator()));
        add(out, node, Terms.DERIVED, file);
        add(out, file, Terms.FILE_NAME, Literals.of(log.source().file()));
        add(out, file, Terms.SHA256, Literals.of(log.source().sha256()));
        log.charted().forEach(column -> add(out, node, Terms.CHARTED, Literals.of(column)));
        writeProspect(log.prospect(), out);
        writeGame(log.game(), out);
    }

    /** Hands the triples of a prospect to {@code out}. */
    void writeProspect(Prospect prospect, Consumer<Triple> out) {
        Node node = Addresses.prospect(prospect.id());
        add(out, node, LABEL, Literals.of(prospect.name()));
        addText(out, node, Terms.POSITION, prospect.position());
        prospect.heightCm().ifPresent(cm -> add(out, node, Terms.HEIGHT, decimal(cm)));
        prospect.weightKg().ifPresent(kg -> add(out, node, Terms.WEIGHT, decimal(kg)));
        prospect.armCm().ifPresent(cm -> add(out, node, Terms.ARM, decimal(cm)));
        addText(out, node, Terms.TEAM, prospect.team());
        addText(out, node, Terms.CLASS_YEAR, prospect.classYear());
        addText(out, node, Terms.NOTE, prospect.notes());
    }

    private static void writeGame(Game game, Consumer<Triple> out) {
        Node node = Addresses.game(game.id());
        add(out, node, LABEL, Literals.of(game.name()));
        game.date()
                .ifPresent(date ->
                        add(out, node, Terms.DATE, NodeFactory.createLiteralDT(date.toString(), XSDDatatype.XSDdate)));
        addText(out, node, Terms.OPPONENT, game.opponent());
        addText(out, node, Terms.LEVEL, game.level());
    }

    /** Hands the triples of a reading that stands at {@code node} to {@code out}. */
    void writeReading(Reading reading, Node node, Node log, int order, Set<String> classes, Consumer<Triple> out) {
        add(out, node, TYPE, Terms.READING_CLASS);
        add(out, node, Terms.LOG, log);
        add(out, node, Terms.REP, Literals.of(reading.rep().rep()));
        add(out, node, Terms.ORDER, Literals.of(order + 1));
        for (Column column : perReading) {
            writeCell(node, column, reading.all(column.name()), out);
        }
        int number = 0;
        for (Step step : reading.exchange()) {
            number++;
            Node stepNode = Addresses.step(node, number);
            add(out, node, step.by() == Step.By.HIM ? Terms.HIS_STEP : Terms.BLOCKER_STEP, stepNode);
            add(out, stepNode, Terms.ORDER, Literals.of(number));
            add(out, stepNode, Terms.DOES, Rl.concept(step.concept()));
            step.hand().ifPresent(hand -> add(out, stepNode, Terms.HAND, Literals.of(hand)));
        }
        classes.forEach(name -> add(out, node, Terms.REP_CLASS, Rl.concept(name)));
    }

    private static void writeCell(Node node, Column column, List<String> values, Consumer<Triple> out) {
        Node facet = Rl.term(column.facet());
        values.forEach(value -> add(out, node, facet, object(column, value)));
        boolean sorted = values.stream().sorted().toList().equals(values);
        if (!sorted) {
            add(out, node, Terms.AS_LISTED, Literals.of(column.name() + "=" + String.join(";", values)));
        }
    }

    private static Node object(Column column, String value) {
        return switch (column.kind()) {
            case CONCEPT -> Rl.concept(value);
            case INTEGER -> NodeFactory.createLiteralDT(value, XSDDatatype.XSDinteger);
            case TEXT, DATE, CLOCK, TIME, WORDS, EXCHANGE -> Literals.of(value);
        };
    }

    private static void addText(Consumer<Triple> out, Node subject, Node property, String value) {
        if (!value.isEmpty()) {
            add(out, subject, property, Literals.of(value));
        }
    }

    private static void add(Consumer<Triple> out, Node subject, Node property, Node object) {
        out.accept(Triple.create(subject, property, object));
    }

    private static Node decimal(double value) {
        return NodeFactory.createLiteralDT(
                BigDecimal.valueOf(value).stripTrailingZeros().toPlainString(), XSDDatatype.XSDdecimal);
    }
}

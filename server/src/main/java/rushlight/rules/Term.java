package rushlight.rules;

import org.apache.jena.datatypes.xsd.XSDDatatype;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import rushlight.knowledge.Rl;

/** The properties in which facts are laid out for the rules. */
final class Term {
    static final Node ANSWER = Rl.term("answer");
    static final Node ANSWERED_BY = Rl.term("answeredBy");
    static final Node ANY_MOVE = Rl.term("anyMove");
    static final Node BEFORE = Rl.term("before");
    static final Node BLANK = Rl.term("blank");
    static final Node BLOCKER_STEP = Rl.term("blockerStep");
    static final Node CONDITIONS = Rl.term("conditions");
    static final Node COUNTER_OF = Rl.term("counterOf");
    static final Node DOES = Rl.term("does");
    static final Node FOLLOWED_BY = Rl.term("followedBy");
    static final Node FOR_DUTY = Rl.term("forDuty");
    static final Node GENERAL_COUNTER_TO = Rl.term("generalCounterTo");
    static final Node HIS_STEP = Rl.term("hisStep");
    static final Node IS = Rl.term("is");
    static final Node JUDGED_BY = Rl.term("judgedBy");
    static final Node JUDGES = Rl.term("judges");
    static final Node LAST_MOVE = Rl.term("lastMove");
    static final Node LATER_MOVE = Rl.term("laterMove");
    static final Node LATER_MOVES = Rl.term("laterMoves");
    static final Node LOSES_BY = Rl.term("losesBy");
    static final Node NEXT = Rl.term("next");
    static final Node ONLY_IF = Rl.term("onlyIf");
    static final Node OPENING = Rl.term("opening");
    static final Node PERHAPS_COUNTER_OF = Rl.term("perhapsCounterOf");
    static final Node PERHAPS_GENERAL_COUNTER_TO = Rl.term("perhapsGeneralCounterTo");
    static final Node PERHAPS_TRIGGER_OF = Rl.term("perhapsTriggerOf");
    static final Node PRIMARY_OF = Rl.term("primaryOf");
    static final Node REP_CLASS = Rl.term("repClass");
    static final Node RIGHT_BY = Rl.term("rightBy");
    static final Node SECOND_MOVE = Rl.term("secondMove");
    static final Node SIDE = Rl.term("side");
    static final Node TAUGHT_FOR = Rl.term("taughtFor");
    static final Node TIMING = Rl.term("timing");
    static final Node TRIGGER_OF = Rl.term("triggerOf");
    static final Node WRONG_BY = Rl.term("wrongBy");
    static final Node YES = text("yes");

    private Term() {}

    static Node text(String value) {
        return NodeFactory.createLiteralString(value);
    }

    static Node number(int value) {
        return NodeFactory.createLiteralDT(Integer.toString(value), XSDDatatype.XSDinteger);
    }
}

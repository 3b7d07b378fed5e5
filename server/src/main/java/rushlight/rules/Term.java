package rushlight.rules;

import org.apache.jena.datatypes.xsd.XSDDatatype;
import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import rushlight.knowledge.Rl;

/** The properties in which facts are laid out for the rules. */
final class Term {
    static final Node AFTER_OPENING = Rl.term("afterOpening");
    static final Node ANSWER = Rl.term("answer");
    static final Node ANSWERED_BY = Rl.term("answeredBy");
    static final Node ANY_MOVE = Rl.term("anyMove");

    static final Node BEFORE = Rl.term("before");
    static final Node BLANK = Rl.term("blank");
    static final Node BLOCKER_STEP = Rl.term("blockerStep");
    static final Node CONDITIONS = Rl.term("conditions");
    static final Node COUNTER = Rl.term("counter");
    static final Node COUNTS = Rl.term("counts");
    static final Node DOES = Rl.term("does");
    static final Node DUTY_MAY_BE = Rl.term("dutyMayBe");
    static final Node FOR_DUTY = Rl.term("forDuty");
    static final Node FOLLOWED_BY = Rl.term("followedBy");
    static final Node GENERAL_COUNTER = Rl.term("generalCounter");
    static final Node HIS_STEP = Rl.term("hisStep");
    static final Node IS = Rl.term("is");
    static final Node JUDGED_BY = Rl.term("judgedBy");
    static final Node LAST_MOVE = Rl.term("lastMove");
    static final Node LATER_MOVE = Rl.term("laterMove");
    static final Node LATER_MOVES = Rl.term("laterMoves");
    static final Node MAY_BE = Rl.term("mayBe");
    static final Node NEXT = Rl.term("next");
    static final Node ONLY_IF = Rl.term("onlyIf");
    static final Node OPENING = Rl.term("opening");
    static final Node PRIMARY = Rl.term("primary");
    static final Node REP_CLASS = Rl.term("repClass");
    static final Node RIGHT = Rl.term("right");
    static final Node SECOND_MOVE = Rl.term("secondMove");
    static final Node SIDE = Rl.term("side");
    static final Node TAUGHT_FOR = Rl.term("taughtFor");
    static final Node TIMING = Rl.term("timing");
    static final Node TRIGGER = Rl.term("trigger");
    static final Node WRONG = Rl.term("wrong");
    static final Node YES = text("yes");

    private Term() {}

    static Node text(String value) {
        return NodeFactory.createLiteralString(value);
    }

    static Node number(int value) {
        return NodeFactory.createLiteralDT(Integer.toString(value), XSDDatatype.XSDinteger);
    }
}

package rushlight.store;

import org.apache.jena.graph.Node;
import org.apache.jena.graph.NodeFactory;
import rushlight.knowledge.Rl;

/** The properties a stored log is written with, beside the facets that the book's columns name. */
final class Terms {
    static final Node LOG_CLASS = Rl.term("Log");
    static final Node READING_CLASS = Rl.term("Reading");
    static final Node PROSPECT = Rl.term("prospect");
    static final Node GAME = Rl.term("game");
    static final Node EVALUATOR = Rl.term("evaluator");
    static final Node CHARTED = Rl.term("charted");
    static final Node LOG = Rl.term("log");
    static final Node REP = Rl.term("rep");
    static final Node ORDER = Rl.term("order");
    static final Node HIS_STEP = Rl.term("hisStep");
    static final Node BLOCKER_STEP = Rl.term("blockerStep");
    static final Node DOES = Rl.term("does");
    static final Node HAND = Rl.term("hand");
    static final Node REP_CLASS = Rl.term("repClass");
    static final Node AS_LISTED = Rl.term("asListed");
    static final Node REVISION = Rl.term("revision");
    static final Node RULES_REVISION = Rl.term("rulesRevision");
    static final Node CHANGED = Rl.term("changed");
    static final Node CHANGE_KIND = Rl.term("changeKind");
    static final Node CHANGED_BY = Rl.term("changedBy");
    static final Node UNDOES = Rl.term("undoes");
    static final Node DATE = Rl.term("date");
    static final Node OPPONENT = Rl.term("opponent");
    static final Node LEVEL = Rl.term("level");
    static final Node FILE_NAME = Rl.term("fileName");
    static final Node SHA256 = Rl.term("sha256");
    static final Node POSITION = Rl.term("plays");
    static final Node HEIGHT = Rl.term("heightCm");
    static final Node WEIGHT = Rl.term("weightKg");
    static final Node ARM = Rl.term("armCm");
    static final Node TEAM = Rl.term("team");
    static final Node CLASS_YEAR = Rl.term("classYear");
    static final Node NOTE = Rl.term("note");
    static final Node ATTRIBUTED = prov("wasAttributedTo");
    static final Node GENERATED = prov("generatedAtTime");
    static final Node MADE = prov("generated");
    static final Node VERSION_OF = prov("specializationOf");
    static final Node ENDED_BY = prov("wasInvalidatedBy");
    static final Node DERIVED = prov("wasDerivedFrom");

    private Terms() {}

    private static Node prov(String name) {
        return NodeFactory.createURI("http://www.w3.org/ns/prov#" + name);
    }
}

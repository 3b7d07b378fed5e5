package rushlight.film.csv;

import java.util.Set;

/** The columns of a film log that the reader itself must know by name. */
final class Columns {
    static final String REP = "rep";
    static final String PROSPECT = "prospect";
    static final String GAME = "game";
    static final String DATE = "date";
    static final String LEVEL = "level";
    static final String OPPONENT = "opponent";
    static final String EVALUATOR = "evaluator";
    static final String START = "start";
    static final String END = "end";
    static final String ALIGNMENT = "alignment";
    static final String NUMBERING = "numbering";
    static final String ASSIGNMENT = "assignment";
    static final String ASSIGNMENT_SOURCE = "assignment_source";
    static final String NOT_SEEN = "not_seen";
    static final String NOTE = "note";

    /** Who, which and when: told once for a log, not by each reading. */
    static final Set<String> OF_THE_LOG = Set.of(REP, PROSPECT, GAME, DATE, LEVEL, OPPONENT, EVALUATOR);

    private Columns() {}
}

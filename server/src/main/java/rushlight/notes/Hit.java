package rushlight.notes;

/**
 * A term where it stands.
 *
 * @param first its first token
 * @param end the token behind its last
 * @param from where its words begin
 * @param to where they end
 * @param term what is meant
 * @param kind what such terms are
 */
record Hit(int first, int end, int from, int to, Terms.Term term, Kinds.Kind kind) {
    private static final int PLACES_FROM = 7;
    private static final int PLACES_TO = 8;
    private static final int ENDS = 6;
    private static final int FAULT = 11;

    /** Whether it says where he lined up. */
    boolean isPlace() {
        return kind.rank() >= PLACES_FROM && kind.rank() <= PLACES_TO;
    }

    /** Whether it says how the rep ended. */
    boolean isEnd() {
        return kind.rank() == ENDS;
    }

    /** Whether it is a fault. */
    boolean isFault() {
        return kind.rank() == FAULT;
    }

    /** Whether something happens: a step, a block, an answer or a result. */
    boolean happens() {
        return kind.rank() <= ENDS;
    }

    /** Whether it belongs to what happens in a rep. */
    boolean tellsOfRep() {
        return kind.rank() <= PLACES_TO + 1;
    }
}

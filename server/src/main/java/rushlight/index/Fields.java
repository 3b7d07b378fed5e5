package rushlight.index;

import rushlight.film.LogId;

/** The names of the fields, and the keys that stand in them. */
final class Fields {
    /** What a document is: {@link #REP}, {@link #LOG}, {@link #PROSPECT} or {@link #PAGE}. */
    static final String KIND = "kind";

    static final String REP = "rep";
    static final String LOG = "log";
    static final String PROSPECT = "prospect";

    /** A page of the book: a move, a drill, a finding. */
    static final String PAGE = "page";

    /** Prospect and log of a reading as doc values; a field has one form in all documents, so these have their own. */
    static final String BY_PROSPECT = "by-prospect";

    static final String BY_LOG = "by-log";

    /** Id of the game of a reading; the other team and the level of play, as written. */
    static final String GAME = "game";

    static final String OPPONENT = "opponent";
    static final String LEVEL = "level";

    /** The evaluator's note on a rep, as text. */
    static final String NOTE = "note";

    /** Names of a page or a prospect, as they are compared whole; and their words. */
    static final String NAME = "name";

    static final String NAMES = "names";

    /** What is told of a page or a prospect, as text. */
    static final String ABOUT = "about";

    /** Place of a reading in its log, as doc values. */
    static final String PLACE = "place";

    /** Where a rep is to be seen, as doc values. */
    static final String SIGHTING = "sighting";

    /** Everything of a document, stored. */
    static final String WHOLE = "whole";

    private Fields() {}

    /** Values of a facet with everything wider. */
    static String closed(String facet) {
        return "closed." + facet;
    }

    /** The number of a facet. */
    static String number(String facet) {
        return "number." + facet;
    }

    /** Values of a facet as tagged, and numbers as digits. */
    static String exact(String facet) {
        return "exact." + facet;
    }

    static String key(LogId id) {
        return String.join("\n", id.evaluator(), id.prospect(), id.game());
    }
}

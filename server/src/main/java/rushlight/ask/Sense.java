package rushlight.ask;

import java.util.Optional;
import rushlight.words.Label;

/** What words of a question may mean. */
sealed interface Sense {
    /** A term of the book. */
    record Term(Label label) implements Sense {}

    /** Words that do something in the question. */
    record Cue(Act act, String value) implements Sense {}

    /** A name of the data folder at hand. */
    record Name(Kind kind, String id, String shown) implements Sense {
        enum Kind {
            PROSPECT,
            GAME,
            OPPONENT,
            TEAM,
            CLASS_YEAR,
            LEVEL
        }
    }

    /**
     * How tall, heavy or long somebody is.
     *
     * @param measure what is measured; empty where no list of players holds it
     * @param value in centimeters or kilograms
     */
    record Size(Optional<ManSize.Measure> measure, double value) implements Sense {}
}

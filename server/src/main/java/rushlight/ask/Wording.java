package rushlight.ask;

import rushlight.situation.Situation;
import rushlight.situation.Situations;

/** Counts and situations as sentences. */
final class Wording {
    private static final int LONG = 160;

    private final Situations situations;

    Wording(Situations situations) {
        this.situations = situations;
    }

    String phrase(Situation situation) {
        String phrase = situations.phrase(situation);
        return phrase.length() <= LONG ? phrase : phrase.substring(0, phrase.lastIndexOf(' ', LONG)) + " \u2026";
    }

    /** A count of an event, first in words. */
    String happened(SituationPair pair, Answer.Count count) {
        if (pair.opportunity().equals(pair.event())) {
            int reps = count.rate().events();
            return (reps == 1 ? "1 rep" : reps + " reps") + " on which " + phrase(pair.event()) + ".";
        }
        String event = phrase(pair.event());
        return Character.toUpperCase(event.charAt(0)) + event.substring(1) + " on " + Counted.times(count)
                + " reps on which " + phrase(pair.opportunity()) + " (" + Counted.range(count) + ").";
    }

    /** "of the film", or of the part a question keeps to. */
    String where(Scene scene) {
        boolean part = scene.asked().filters().stream()
                .anyMatch(filter -> filter instanceof Filter.Prospects
                        || filter instanceof Filter.Games
                        || filter instanceof Filter.Opponents
                        || filter instanceof Filter.Levels
                        || filter instanceof Filter.Note);
        return part ? "of the part of the film you ask about" : "of the film";
    }
}

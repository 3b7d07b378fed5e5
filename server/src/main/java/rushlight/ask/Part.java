package rushlight.ask;

import java.util.List;
import java.util.Optional;
import rushlight.words.Label;

/**
 * Words of a question that mean something.
 *
 * @param text as they stand there
 * @param from where they begin, in UTF-16 units
 * @param to where they end
 * @param first the first token
 * @param guessed whether the spelling was repaired
 * @param senses what they may mean
 * @param within terms that shorter parts of the words name
 * @param number the number they are, or -1
 */
record Part(
        String text, int from, int to, int first, boolean guessed, List<Sense> senses, List<Label> within, int number) {
    Part {
        senses = List.copyOf(senses);
        within = List.copyOf(within);
    }

    boolean does(Act act) {
        return value(act).isPresent();
    }

    Optional<String> value(Act act) {
        return senses.stream()
                .filter(Sense.Cue.class::isInstance)
                .map(Sense.Cue.class::cast)
                .filter(cue -> cue.act() == act)
                .map(Sense.Cue::value)
                .findFirst();
    }

    List<Label> terms() {
        return Label.telling(senses.stream()
                .filter(Sense.Term.class::isInstance)
                .map(sense -> ((Sense.Term) sense).label())
                .toList());
    }

    /** The terms, where the words do nothing else. */
    boolean isTerm() {
        return !terms().isEmpty();
    }

    Optional<Sense.Size> size() {
        return senses.stream()
                .filter(Sense.Size.class::isInstance)
                .map(Sense.Size.class::cast)
                .findFirst();
    }

    List<Sense.Name> names(Sense.Name.Kind kind) {
        return senses.stream()
                .filter(Sense.Name.class::isInstance)
                .map(Sense.Name.class::cast)
                .filter(name -> name.kind() == kind)
                .toList();
    }
}

package rushlight.web;

import java.util.Optional;
import java.util.stream.Collectors;
import rushlight.film.Game;
import rushlight.film.Identity;
import rushlight.film.Reading;
import rushlight.film.RepId;
import rushlight.film.Step;
import rushlight.knowledge.Taxonomy;
import rushlight.situation.Sighting;

/**
 * A rep that can be opened.
 *
 * @param prospect id of the prospect
 * @param game id of the game
 * @param gameName the game as written
 * @param rep the evaluator's name for it
 * @param evaluator slug of the evaluator
 * @param href where the reading is
 * @param sentence what happened, in words
 * @param result who won
 * @param seconds where it lies on film
 */
public record RepSight(
        String prospect,
        String game,
        String gameName,
        String rep,
        String evaluator,
        String href,
        String sentence,
        Optional<String> result,
        Optional<AssessAnswer.Seconds> seconds) {
    /** The rep of a reading. */
    public static RepSight of(Reading reading, Game game, Taxonomy taxonomy) {
        RepId rep = reading.rep();
        return new RepSight(
                rep.prospect(),
                rep.game(),
                game.name(),
                rep.rep(),
                Identity.slug(reading.evaluator()),
                Addresses.reading(rep, Identity.slug(reading.evaluator())),
                sentence(reading, taxonomy),
                reading.one("result"),
                AssessAnswer.Seconds.of(Sighting.of(reading, game.name())));
    }

    /** The exchange with the labels of its steps, the blocker's in brackets, then how it ended. */
    static String sentence(Reading reading, Taxonomy taxonomy) {
        String steps =
                reading.exchange().stream().map(step -> label(step, taxonomy)).collect(Collectors.joining(", "));
        String ended = reading.all("results").stream().map(taxonomy::label).collect(Collectors.joining(", "));
        return steps.isEmpty() || ended.isEmpty() ? steps + ended : steps + ": " + ended;
    }

    private static String label(Step step, Taxonomy taxonomy) {
        String label = taxonomy.label(step.concept());
        return step.by() == Step.By.BLOCKER ? "[" + label + "]" : label;
    }
}

package rushlight.web;

import java.util.List;
import java.util.Optional;
import rushlight.archive.LogSummary;
import rushlight.film.Game;

/**
 * One log in a list.
 *
 * @param id evaluator, prospect and game, parted by slashes
 * @param evaluator who read it
 * @param prospect whose film
 * @param game which game
 * @param readings how many readings it holds
 * @param charted list columns that were looked at
 * @param file name of the file it came from
 */
public record LogBrief(
        String id, Named evaluator, Named prospect, GameNamed game, int readings, List<String> charted, String file) {
    /** Something with an id and a name. */
    public record Named(String id, String name) {}

    /** A game without its reps. */
    public record GameNamed(String id, String name, Optional<String> date, String opponent, String level) {
        static GameNamed of(Game game) {
            return new GameNamed(
                    game.id(), game.name(), game.date().map(Object::toString), game.opponent(), game.level());
        }
    }

    /** One log of the folder. */
    public static LogBrief of(LogSummary log) {
        return new LogBrief(
                log.id().evaluator() + "/" + log.id().prospect() + "/"
                        + log.id().game(),
                new Named(log.id().evaluator(), log.evaluator()),
                new Named(log.prospect().id(), log.prospect().name()),
                GameNamed.of(log.game()),
                log.readings(),
                log.charted().stream().sorted().toList(),
                log.file());
    }
}

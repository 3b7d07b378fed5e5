package rushlight.handbook;

import java.util.List;
import java.util.Optional;
import rushlight.knowledge.FitAnswers;
import rushlight.knowledge.Lesson;

/**
 * What is right and wrong against a block, as programs read it.
 *
 * @param block slug of the block
 * @param assignment slug of the duty, absent where every duty was meant
 * @param answers the block's own rules before those of wider blocks, then by duty
 * @param cautions what can hurt, and what the rules of the game say of the block and of wider blocks
 */
public record FitAnswer(
        String block, Optional<String> assignment, List<FitAnswers.Answer> answers, List<Lesson.Statement> cautions) {}

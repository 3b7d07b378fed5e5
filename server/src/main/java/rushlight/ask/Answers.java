package rushlight.ask;

import java.util.List;
import java.util.Optional;

/**
 * What answers a question.
 *
 * @param asked how it was read
 * @param total how many answers there are, those not listed among them
 * @param answers those listed, the best first
 * @param leftOut reps that fit and were kept out of the counts because their evaluator was not sure
 * @param why where there is no answer: the reason, in a sentence
 * @param tries what to ask instead, each a sentence
 * @param cautions what to mind before anybody trains, each a sentence
 */
public record Answers(
        Asked asked,
        int total,
        List<Answer> answers,
        int leftOut,
        Optional<String> why,
        List<String> tries,
        List<String> cautions) {
    public Answers {
        answers = List.copyOf(answers);
        tries = List.copyOf(tries);
        cautions = List.copyOf(cautions);
    }

    /**
     * Which answers are listed.
     *
     * @param offset how many of the best are passed over
     * @param limit how many are listed at most
     */
    public record Window(int offset, int limit) {
        /** The first {@code limit}. */
        public static Window first(int limit) {
            return new Window(0, limit);
        }

        <T> List<T> of(List<T> all) {
            int from = Math.min(Math.max(0, offset), all.size());
            return all.subList(from, Math.min(all.size(), from + Math.max(0, limit)));
        }
    }

    /**
     * The answers of one kind of question, before they are put beside the reading.
     *
     * @param total how many there are
     * @param answers those listed
     * @param why the reason where there is none
     */
    record Listed(int total, List<Answer> answers, Optional<String> why) {
        static Listed of(int total, List<? extends Answer> answers) {
            return new Listed(total, List.copyOf(answers), Optional.empty());
        }

        static Listed nothing(String why) {
            return new Listed(0, List.of(), Optional.of(why));
        }
    }
}

package rushlight.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rushlight.ask.Answer;
import rushlight.ask.Answers;
import rushlight.ask.Asked;
import rushlight.ask.Chip;
import rushlight.ask.SeenRep;
import rushlight.evidence.Interval;
import rushlight.index.Marked;
import rushlight.situation.Situations;

/**
 * A question with how it was read and what answers it, as programs read it. Texts are plain: whoever shows them escapes them.
 *
 * @param question as it was asked
 * @param reading how it was read
 * @param total how many answers there are, those not listed among them
 * @param answers the best first
 * @param leftOut reps kept out of the counts because their evaluator was not sure
 * @param why the reason where there is no answer, else null
 * @param tries what to ask instead
 * @param cautions what to mind before anybody trains
 */
public record AskAnswer(
        String question,
        Reading reading,
        int total,
        List<One> answers,
        int leftOut,
        Optional<String> why,
        List<String> tries,
        List<String> cautions) {
    /** How a question was read; {@code situation} says in words what is counted. */
    public record Reading(
            String find,
            String text,
            Optional<Pair> situation,
            List<FilterAnswer> filters,
            List<String> unread,
            List<Part> chips) {}

    /** The reps that could show it, and those of them that do. */
    public record Pair(String opportunity, String event) {}

    /** A part of the question and what it was taken for; {@code from} and {@code to} are UTF-16 offsets in the question. */
    public record Part(
            String role,
            String label,
            String text,
            int from,
            int to,
            Optional<String> concept,
            boolean guessed,
            List<Chip.Choice> choices) {}

    /** One answer; what does not go with its kind is left out. */
    @JsonInclude(JsonInclude.Include.NON_ABSENT)
    public record One(
            String id,
            String kind,
            String label,
            double score,
            OptionalInt opportunities,
            OptionalInt events,
            OptionalDouble rate,
            OptionalDouble low,
            OptionalDouble high,
            boolean thin,
            String sentence,
            Optional<String> prospect,
            Optional<String> game,
            Optional<String> rep,
            Optional<String> concept,
            Optional<String> trigger,
            Optional<List<String>> timing,
            Optional<Integer> rank,
            Optional<String> side,
            Optional<String> support,
            Optional<List<String>> requires,
            Optional<List<String>> trains,
            Optional<String> finding,
            Optional<String> verdict,
            Optional<String> polarity,
            Optional<String> severity,
            Optional<List<Row>> rows,
            Optional<Gap> difference,
            Optional<List<String>> apart,
            Optional<String> text,
            Optional<List<List<Integer>>> highlight,
            List<String> cautions,
            List<Rep> reps) {}

    /** One row of a comparison. */
    public record Row(
            String name, int opportunities, int events, OptionalDouble rate, double low, double high, boolean thin) {}

    /** How far the first row lies over the second, with its likely range and the chance that it does at all. */
    public record Gap(double value, double low, double high, double probability) {}

    /** A rep behind an answer; {@code game} is its name, {@code gameId} stands in addresses. */
    public record Rep(
            String rep,
            String game,
            String prospect,
            String gameId,
            boolean event,
            Optional<AssessAnswer.Seconds> seconds) {}

    /** The answers of a question; situations are said in the words of the book. */
    public static AskAnswer of(Answers answers, Situations situations) {
        Asked asked = answers.asked();
        Reading reading = new Reading(
                asked.find().slug(),
                asked.text(),
                asked.situation()
                        .map(pair -> new Pair(situations.phrase(pair.opportunity()), situations.phrase(pair.event()))),
                asked.filters().stream()
                        .map(filter -> FilterAnswer.of(filter, situations))
                        .toList(),
                asked.unread().stream().map(Asked.Unread::word).toList(),
                asked.chips().stream().map(AskAnswer::part).toList());
        return new AskAnswer(
                asked.question(),
                reading,
                answers.total(),
                answers.answers().stream().map(AskAnswer::one).toList(),
                answers.leftOut(),
                answers.why(),
                answers.tries(),
                answers.cautions());
    }

    private static Part part(Chip chip) {
        return new Part(
                chip.role().slug(),
                chip.label(),
                chip.text(),
                chip.from(),
                chip.to(),
                chip.concept(),
                chip.guessed(),
                chip.choices());
    }

    private static One one(Answer answer) {
        return new AnswerFields(answer).one();
    }

    static Row row(Answer.Compared.Row row) {
        Answer.Count count = row.count();
        return new Row(
                row.name(),
                count.rate().opportunities(),
                count.rate().events(),
                count.rate().share(),
                count.shown().low(),
                count.shown().high(),
                count.thin());
    }

    static Gap gap(Answer.Compared.Gap gap) {
        Interval shown = gap.shown();
        return new Gap(gap.observed(), shown.low(), shown.high(), gap.probability());
    }

    static Rep rep(SeenRep rep) {
        return new Rep(
                rep.sighting().rep(),
                rep.sighting().game(),
                rep.prospect().id(),
                rep.game(),
                rep.event(),
                AssessAnswer.Seconds.of(rep.sighting()));
    }

    static List<List<Integer>> spans(Marked marked) {
        return marked.marks().stream()
                .map(span -> List.of(span.from(), span.to()))
                .toList();
    }
}

package rushlight.web;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rushlight.ask.Answer;
import rushlight.ask.SeenRep;
import rushlight.findings.Judged;
import rushlight.index.Marked;

/** The fields of one answer, gathered by its kind. */
final class AnswerFields {
    private final Answer answer;
    private final String kind;
    private Optional<String> prospect = Optional.empty();
    private Optional<String> game = Optional.empty();
    private Optional<String> rep = Optional.empty();
    private Optional<String> concept = Optional.empty();
    private Optional<String> trigger = Optional.empty();
    private Optional<List<String>> timing = Optional.empty();
    private Optional<Integer> rank = Optional.empty();
    private Optional<String> side = Optional.empty();
    private Optional<String> support = Optional.empty();
    private Optional<List<String>> requires = Optional.empty();
    private Optional<List<String>> trains = Optional.empty();
    private Optional<Judged> judged = Optional.empty();
    private Optional<List<AskAnswer.Row>> rows = Optional.empty();
    private Optional<AskAnswer.Gap> difference = Optional.empty();
    private Optional<List<String>> apart = Optional.empty();
    private Optional<Marked> text = Optional.empty();
    private List<String> cautions = List.of();

    AnswerFields(Answer answer) {
        this.answer = answer;
        this.kind = kind();
    }

    private String kind() {
        if (answer instanceof Answer.Player player) {
            prospect = Optional.of(player.prospect().id());
            judged = player.judged();
            return "prospect";
        }
        if (answer instanceof Answer.Rep one) {
            rep(one.rep());
            return "rep";
        }
        if (answer instanceof Answer.Term term) {
            concept = Optional.of(term.slug());
            text = Optional.of(term.about());
            return "technique";
        }
        if (answer instanceof Answer.Counter counter) {
            counter(counter);
            return "counter";
        }
        if (answer instanceof Answer.Drill drill) {
            concept = Optional.of(drill.slug());
            trains = Optional.of(drill.trains());
            text = Optional.of(new Marked(drill.about(), List.of()));
            cautions = drill.cautions();
            return "drill";
        }
        if (answer instanceof Answer.Finding finding) {
            prospect = Optional.of(finding.prospect().id());
            judged = Optional.of(finding.judged());
            return "finding";
        }
        if (answer instanceof Answer.Compared compared) {
            prospect = Optional.of(compared.prospect().id());
            rows = Optional.of(compared.rows().stream().map(AskAnswer::row).toList());
            difference = compared.gap().map(AskAnswer::gap);
            return "compare";
        }
        Answer.Alike alike = (Answer.Alike) answer;
        prospect = Optional.of(alike.prospect().id());
        apart = Optional.of(alike.apart());
        return "similar";
    }

    private void rep(SeenRep seen) {
        prospect = Optional.of(seen.prospect().id());
        game = Optional.of(seen.game());
        rep = Optional.of(seen.sighting().rep());
        text = Optional.of(seen.note());
    }

    private void counter(Answer.Counter counter) {
        concept = Optional.of(counter.pairing().counter());
        trigger = counter.pairing().trigger();
        timing = Optional.of(counter.pairing().timing().stream().sorted().toList());
        rank = Optional.of(counter.pairing().rank());
        side = Optional.of(counter.pairing().side());
        support = Optional.of(counter.pairing().support());
        requires = Optional.of(counter.requires());
    }

    AskAnswer.One one() {
        Optional<Answer.Count> count = answer.count();
        return new AskAnswer.One(
                answer.id(),
                kind,
                answer.label(),
                answer.score(),
                whole(count.map(c -> c.rate().opportunities())),
                whole(count.map(c -> c.rate().events())),
                count.map(c -> c.rate().share()).orElseGet(OptionalDouble::empty),
                real(count.map(c -> c.shown().low())),
                real(count.map(c -> c.shown().high())),
                count.map(Answer.Count::thin).orElse(false),
                answer.sentence(),
                prospect,
                game,
                rep,
                concept,
                trigger,
                timing,
                rank,
                side,
                support,
                requires,
                trains,
                judged.map(j -> j.finding().slug()),
                judged.map(j -> j.verdict().slug()),
                judged.map(j -> j.finding().polarity().slug()),
                judged.map(j -> j.finding().severity().slug()),
                rows,
                difference,
                apart,
                text.map(Marked::text).filter(t -> !t.isEmpty()),
                text.filter(t -> !t.text().isEmpty()).map(AskAnswer::spans),
                cautions,
                answer.reps().stream().map(AskAnswer::rep).toList());
    }

    private static OptionalInt whole(Optional<Integer> number) {
        return number.map(OptionalInt::of).orElseGet(OptionalInt::empty);
    }

    private static OptionalDouble real(Optional<Double> number) {
        return number.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}

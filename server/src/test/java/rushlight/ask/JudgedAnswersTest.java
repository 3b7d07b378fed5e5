package rushlight.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.extension.RegisterExtension;
import rushlight.archive.ImportedLeague;

/** The answers to the judged questions, held to what was counted from the data by other means (ask/judge.py). */
@DisplayNameGeneration(DisplayNameGenerator.ReplaceUnderscores.class)
class JudgedAnswersTest {
    private static final Answers.Window ALL = Answers.Window.first(5_000);

    @RegisterExtension
    private static final ImportedLeague LEAGUE = new ImportedLeague();

    private final Judgment judgment = Judgment.read();

    @Test
    void right_readings_get_right_answers(TestReporter reporter) {
        measured("right readings", questions(), 0.95, reporter);
    }

    /** The whole way: the question as it was asked, read by the reader. */
    @Test
    void questions_get_right_answers(TestReporter reporter) {
        People people = LEAGUE.archive().watch(Asker::people);
        Map<String, Asked> read = new LinkedHashMap<>();
        questions()
                .forEach((id, asked) ->
                        read.put(id, LEAGUE.archive().book().questions().read(asked.question(), people)));
        measured("questions", read, 0.95, reporter);
    }

    private void measured(String what, Map<String, Asked> questions, double least, TestReporter reporter) {
        double precision = 0;
        double ndcg = 0;
        StringBuilder wrong = new StringBuilder();
        for (Map.Entry<String, Asked> question : questions.entrySet()) {
            List<String> answers = answers(question.getKey(), question.getValue());
            double p = judgment.precisionAt5(question.getKey(), answers);
            double n = judgment.ndcgAt10(question.getKey(), answers);
            precision += p / questions.size();
            ndcg += n / questions.size();
            if (p < 1 || n < 0.9) {
                wrong.append(String.format(
                        Locale.ROOT,
                        "%n%s %s: P@5 %.2f, nDCG@10 %.2f; %s",
                        question.getKey(),
                        question.getValue().question(),
                        p,
                        n,
                        answers.stream().limit(6).toList()));
            }
        }
        reporter.publishEntry(Map.of(
                "asked", what + ", " + questions.size(),
                "precision at 5", String.format(Locale.ROOT, "%.3f", precision),
                "nDCG at 10", String.format(Locale.ROOT, "%.3f", ndcg)));
        assertThat(questions).hasSizeGreaterThanOrEqualTo(80);
        assertThat(precision).as("precision at 5" + wrong).isGreaterThanOrEqualTo(least);
        assertThat(ndcg).as("nDCG at 10" + wrong).isGreaterThanOrEqualTo(0.9);
    }

    @Test
    void reps_are_exactly_those_that_were_counted_by_hand() {
        questions().forEach((id, asked) -> {
            if (asked.find() == Find.REPS) {
                assertThat(answers(id, asked))
                        .as(id + " " + asked.question())
                        .containsExactlyInAnyOrderElementsOf(
                                new TreeSet<>(judgment.of(id).keySet()));
            }
        });
    }

    @Test
    void the_measures_are_those_of_the_books() {
        Judgment own = Judgment.read();
        List<String> right = List.copyOf(own.of("q01").keySet());

        assertThat(own.precisionAt5("q01", right)).isEqualTo(1);
        assertThat(own.precisionAt5("q01", List.of("nobody", right.get(0), "none", right.get(1), "zero")))
                .isEqualTo(0.4);
        assertThat(own.ndcgAt10("q01", List.of())).isZero();
        List<String> best = right.stream()
                .sorted(Comparator.comparingInt(a -> -own.of("q01").getOrDefault(a, 0)))
                .toList();
        assertThat(own.ndcgAt10("q01", best)).isEqualTo(1);
        assertThat(own.ndcgAt10("q01", List.of("nobody", best.get(0))))
                .isLessThan(own.ndcgAt10("q01", List.of(best.get(0), "nobody")));
    }

    private Map<String, Asked> questions() {
        Map<String, String> games = LEAGUE.archive().watch(Asker::people).games();
        return new RightReadings(LEAGUE.archive().book().assessor().book(), games).all();
    }

    private List<String> answers(String id, Asked asked) {
        Answers answers = LEAGUE.archive()
                .watch(footage -> LEAGUE.archive().book().asker().answer(footage, asked, ALL));
        List<String> ids =
                answers.answers().stream().map(a -> name(asked, a)).distinct().toList();
        boolean partly = asked.find() == Find.FINDINGS
                || asked.filter(Filter.Verdicts.class).isPresent()
                || (asked.find() == Find.COMPARE && asked.situation().isEmpty());
        return partly ? judgment.condensed(id, ids) : ids;
    }

    /** A counter goes by its own slug, with the answer it is taught for where nobody asked about one. */
    private static String name(Asked asked, Answer answer) {
        if (answer instanceof Answer.Counter counter) {
            boolean open = asked.about(Filter.Relation.TRIGGER).isEmpty();
            return counter.pairing().counter()
                    + (open ? "@" + counter.pairing().trigger().orElse("") : "");
        }
        return answer.id();
    }
}

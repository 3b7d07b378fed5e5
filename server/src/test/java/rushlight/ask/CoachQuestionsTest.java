package rushlight.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rushlight.archive.ImportedLeague;
import rushlight.film.Prospect;
import rushlight.situation.Situation;

/** What a coach asks in his own words, the whole way from the question to the answer, on the invented league. */
@DisplayNameGeneration(ReplaceUnderscores.class)
class CoachQuestionsTest {
    @RegisterExtension
    private static final ImportedLeague LEAGUE = new ImportedLeague();

    @ParameterizedTest
    @ValueSource(
            strings = {
                "edge rushers from Stonefen",
                "Stonefen's ends",
                "Stonefen players",
                "who plays for Stonefen",
                "ends of Stonefen who bull rush",
                "Stonefen"
            })
    void a_team_is_the_players_own_unless_they_are_said_to_play_against_it(String question) {
        Answers answers = ask(question);

        assertThat(answers.asked().text()).contains("from Stonefen").doesNotContain("against");
        assertThat(answers.answers())
                .hasSize(2)
                .allSatisfy(one ->
                        assertThat(((Answer.Player) one).prospect().team()).isEqualTo("Stonefen"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sacks against Stonefen", "sacks vs Stonefen", "sacks versus Stonefen"})
    void a_team_behind_against_is_the_opponent(String question) {
        assertThat(ask(question).asked().filters()).containsExactly(new Filter.Opponents(List.of("Stonefen")));
    }

    @Test
    void a_class_year_keeps_to_the_players_of_that_year() {
        assertThat(men("seniors who bull rush"))
                .isNotEmpty()
                .allSatisfy(man -> assertThat(man.classYear()).isEqualTo("senior"));
    }

    @Test
    void a_number_of_pounds_is_a_weight_and_no_count_of_chances() {
        List<Prospect> heavy = men("players over 260 lb who bull rush");

        assertThat(heavy)
                .isNotEmpty()
                .allSatisfy(man -> assertThat(man.weightKg().orElseThrow()).isGreaterThan(260 * 0.45359237));
        assertThat(men("ends under 250 pounds")).isNotEmpty().doesNotContainAnyElementsOf(heavy);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ends 6-4 or taller who bull rush",
                "ends at least 6'4 who bull rush",
                "ends 6 feet 4 inches or taller who bull rush",
                "ends at least 76 inches who bull rush"
            })
    void a_height_may_be_written_as_people_write_it(String question) {
        assertThat(men(question))
                .isNotEmpty()
                .extracting(Prospect::heightCm)
                .extracting(OptionalDouble::getAsDouble)
                .allMatch(height -> height > 192.9);
    }

    @ParameterizedTest
    @CsvSource({"ends over 21 years old, 21 years old", "260-pound ends who bull rush, 260-pound"})
    void a_size_that_cannot_be_used_is_unread_and_no_count(String question, String unread) {
        Asked asked = ask(question).asked();

        assertThat(asked.filters()).isEmpty();
        assertThat(asked.unread()).extracting(Asked.Unread::word).containsExactly(unread);
    }

    @Test
    void a_finding_speaks_in_its_own_sentence() {
        assertThat(ask("who has no inside counter").answers().get(0).sentence())
                .isEqualTo("Left the inside untaken on 16 of 17 reps on which it was open (likely range 79 to 99 %).");
        assertThat(ask("who has no inside counter against left tackles").answers())
                .allSatisfy(one -> assertThat(one.sentence())
                        .startsWith("Left the inside untaken on ")
                        .endsWith("Counted only where the left tackle blocked him."));
    }

    @Test
    void how_often_is_a_rate() {
        Answers answers = ask("how often does Tavish Mordell win with speed");

        assertThat(answers.asked().unread()).isEmpty();
        assertThat(answers.answers())
                .singleElement()
                .extracting(Answer::sentence)
                .asString()
                .startsWith("He won the rep on 1 of 3 reps on which he used the speed rush");
    }

    @Test
    void is_he_any_good_is_a_rate() {
        assertThat(ask("is Teo Maravale any good against the run").answers())
                .singleElement()
                .extracting(Answer::sentence)
                .asString()
                .startsWith("He won the rep on 40 of 87 reps on which he played the run");
    }

    @Test
    void one_thing_or_another_is_told_how_often_each() {
        Answer.Compared toll = (Answer.Compared)
                ask("does Keverne Toll spill or box").answers().get(0);

        assertThat(toll.rows()).extracting(Answer.Compared.Row::name).containsExactly("spill", "box (and squeeze)");
        assertThat(toll.rows())
                .extracting(row -> row.count().rate().opportunities())
                .containsOnly(45);
        assertThat(toll.sentence()).contains("spill on 23", "box (and squeeze) on 1");
    }

    @Test
    void the_difference_between_two_terms_is_told_by_both() {
        assertThat(ask("what's the difference between spill and box").answers())
                .extracting(Answer::id)
                .containsExactlyInAnyOrder("spill", "box-and-squeeze");
    }

    @ParameterizedTest
    @ValueSource(strings = {"who should I draft", "fastest pass rushers", "who has the best motor"})
    void what_film_cannot_count_ranks_nobody_and_offers_what_can_be_asked(String question) {
        Answers answers = ask(question);

        assertThat(answers.answers()).isEmpty();
        assertThat(answers.why().orElseThrow()).contains("can be counted");
        assertThat(answers.tries()).isNotEmpty().first().asString().startsWith("Ask what film shows");
    }

    @Test
    void a_trait_is_ranked_by_the_finding_that_shows_it() {
        Answers best = ask("who has the best get-off");

        assertThat(best.asked().unread()).isEmpty();
        assertThat(best.asked().filters())
                .contains(new Filter.Findings(List.of("slow-get-off")), new Filter.Order(Filter.Direction.LEAST));
        assertThat(best.answers().get(0).sentence()).startsWith("Was late off the ball on 0 of 175 snaps");
    }

    @Test
    void the_best_counters_are_those_that_won_after_another_move() {
        SituationPair pair = ask("best inside counters").asked().situation().orElseThrow();

        assertThat(pair.event()).isEqualTo(Situation.has("outcome", "won"));
        assertThat(pair.opportunity())
                .isEqualTo(Situation.all(List.of(
                        Situation.has("move", "inside-move"),
                        Situation.not(Situation.has("openingMove", "inside-move")))));
    }

    @Test
    void a_move_is_any_step_of_the_rep_unless_he_opens_with_it() {
        Answers spins = ask("spin moves that won inside");

        assertThat(spins.asked().situation().orElseThrow().opportunity()).isEqualTo(Situation.has("move", "spin"));
        assertThat(spins.total()).isPositive();
    }

    private static List<Prospect> men(String question) {
        return ask(question).answers().stream()
                .map(one -> ((Answer.Player) one).prospect())
                .toList();
    }

    private static Answers ask(String question) {
        return LEAGUE.archive().watch(footage -> {
            Asked asked = LEAGUE.archive().book().questions().read(question, Asker.people(footage));
            return LEAGUE.archive().book().asker().answer(footage, asked, Answers.Window.first(100));
        });
    }
}
